"""Ornaments that a player adds to or takes from notes in one bowing.

An ornament belongs to its note's stroke and so changes no direction (rule B8). The tune's own notes never change.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from core.bowing import Bowing, Grace, Ornament, Signs, set_signs
from core.errors import RefusedEditError
from core.translation import tr, translatable
from core.tune import STEPS, Pitch, Tune

ONE_OF = frozenset({  # figures that take the whole note: one of them at most
    Ornament.ROLL, Ornament.TURN, Ornament.INVERTED_TURN, Ornament.TRILL, Ornament.MORDENT, Ornament.UPPER_MORDENT,
    Ornament.BOWED_TRIPLET,
})  # fmt: skip


ORNAMENT_NAMES = translatable({
    Ornament.ROLL: "roll", Ornament.CUT: "cut", Ornament.TURN: "turn", Ornament.INVERTED_TURN: "inverted turn",
    Ornament.TRILL: "trill", Ornament.MORDENT: "mordent", Ornament.UPPER_MORDENT: "upper mordent",
    Ornament.SLIDE: "slide", Ornament.BOWED_TRIPLET: "bowed triplet",
}, "ornament")  # fmt: skip


def ornament_name(ornament: Ornament) -> str:
    """What an ornament is called in the language of the reader."""
    return tr(ORNAMENT_NAMES[ornament], "ornament")


def upper_neighbour(tune: Tune, note_id: str) -> Pitch:
    """The pitch one step above a note (above the highest of a double stop).

    An accidental that stands on that step in the same bar before the note holds, else the key signature.
    """
    return _neighbour(tune, note_id, 1)


def lower_neighbour(tune: Tune, note_id: str) -> Pitch:
    """The pitch one step below a note (below the highest of a double stop), with the accidental as above."""
    return _neighbour(tune, note_id, -1)


def _neighbour(tune: Tune, note_id: str, steps: int) -> Pitch:
    note = tune.note(note_id)
    bar = tune.bars[tune.bar_of[note_id]]
    octave, place = divmod(max(pitch.height for pitch in note.pitches) + steps, len(STEPS))
    step = STEPS[place]
    alter = bar.key.alters()[step]
    for earlier in bar.notes:
        if earlier.at >= note.at:
            break
        alter = next((p.alter for p in earlier.pitches if (p.octave, p.step) == (octave, step)), alter)
    return Pitch(octave, step, alter)


def toggle_ornament(tune: Tune, bowing: Bowing, note_ids: Iterable[str], ornament: Ornament) -> Bowing:
    """Put an ornament sign on notes, or take it away where all of them have it.

    A figure that takes the whole note replaces another such figure. Rests and held notes among the notes are passed
    over.

    Raises:
        RefusedEditError: there is no struck note among them.
    """
    struck = _struck(tune, note_ids)
    if ornament is Ornament.CUT:
        return _toggle_cut(tune, bowing, struck)
    everywhere = all(ornament in bowing.signs_on(note_id).ornaments for note_id in struck)
    for note_id in struck:
        signs = bowing.signs_on(note_id)
        kept = tuple(
            other
            for other in signs.ornaments
            if other is not ornament and (everywhere or not {ornament, other} <= ONE_OF)
        )
        bowing = set_signs(bowing, note_id, replace(signs, ornaments=kept if everywhere else (*kept, ornament)))
    return bowing


def has_ornament(bowing: Bowing, note_id: str, ornament: Ornament) -> bool:
    """Whether a note has an ornament; a cut may be a sign or a single slashed grace note just before it."""
    signs = bowing.signs_on(note_id)
    return ornament in signs.ornaments or (ornament is Ornament.CUT and _has_cut_grace(signs))


def _toggle_cut(tune: Tune, bowing: Bowing, note_ids: list[str]) -> Bowing:
    """Put a cut, a slashed grace note of the upper neighbour, before notes, or take it away where all have one."""
    everywhere = all(has_ornament(bowing, note_id, Ornament.CUT) for note_id in note_ids)
    for note_id in note_ids:
        signs = bowing.signs_on(note_id)
        if everywhere:
            ornaments = tuple(other for other in signs.ornaments if other is not Ornament.CUT)
            graces = signs.graces[:-1] if _has_cut_grace(signs) else signs.graces
            bowing = set_signs(bowing, note_id, replace(signs, ornaments=ornaments, graces=graces))
        elif not has_ornament(bowing, note_id, Ornament.CUT):
            cut = Grace((upper_neighbour(tune, note_id),), slashed=True)
            bowing = set_signs(bowing, note_id, replace(signs, graces=(*signs.graces, cut)))
    return bowing


def _has_cut_grace(signs: Signs) -> bool:
    return bool(signs.graces) and signs.graces[-1].slashed


def _struck(tune: Tune, note_ids: Iterable[str]) -> list[str]:
    wanted = [tune.note(note_id) for note_id in note_ids]
    struck = [note.id for note in wanted if not note.is_rest and not note.held]
    if not struck:
        is_held = any(note.held for note in wanted)
        raise RefusedEditError(tr("A held note takes no ornament.") if is_held else tr("A rest takes no ornament."))
    return struck
