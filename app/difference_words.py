"""What tells a note of one bowing from the same note of another, in words. No Qt."""

from __future__ import annotations

from collections.abc import Sequence

from app.note_words import place_text
from core.bowing import Articulation, Bow, Join, Signs
from core.checks.words import bow_name
from core.differences import Difference
from core.ornamenting import ornament_name
from core.translation import plural, tr, translatable
from core.tune import Tune

JOIN_WORDS = translatable({
    None: "on a bow of its own",
    Join.SLUR: "slurred to the note before",
    Join.HOOK: "hooked to the note before",
})  # fmt: skip
ARTICULATIONS = translatable({
    Articulation.ACCENT: "accent", Articulation.STRONG_ACCENT: "strong accent", Articulation.STACCATO: "staccato",
    Articulation.TENUTO: "tenuto", Articulation.DETACHED_LEGATO: "detached legato",
    Articulation.STACCATISSIMO: "staccatissimo", Articulation.SPICCATO: "spiccato", Articulation.STRESS: "stress",
    Articulation.UNSTRESS: "unstress", Articulation.BREATH_MARK: "breath mark", Articulation.FERMATA: "fermata",
    Articulation.OPEN_STRING: "open string", Articulation.HARMONIC: "harmonic",
    Articulation.SNAP_PIZZICATO: "snap pizzicato",
}, "articulation")  # fmt: skip
UNSIGNED = translatable("without a sign")


def difference_text(tune: Tune, note_id: str, difference: Difference, other: str) -> str:
    """A sentence, as "Bar 3, note 2: slurred to the note before, on a bow of its own in “Separate bows”.".

    Args:
        other: Name of the bowing from which it is told apart.
    """
    place = place_text(tune, note_id)
    pairs: list[tuple[str, str]] = []
    if difference.joins is not None:
        here, there = difference.joins
        pairs.append((tr(JOIN_WORDS[here]), tr(JOIN_WORDS[there])))
    if difference.bows is not None:
        pairs.append((_bow_text(difference.bows[0]), _bow_text(difference.bows[1])))
    if difference.signs is not None:
        pairs.append((signs_text(difference.signs[0]), signs_text(difference.signs[1])))
    comma = tr(", ", "between parts of a sentence")
    return tr(
        "{place}: {here}; in “{other}” {there}.",
        place=place[:1].upper() + place[1:], other=other,
        here=comma.join(here for here, _ in pairs), there=comma.join(there for _, there in pairs),
    )  # fmt: skip


def count_text(differences: Sequence[Difference], other: str) -> str:
    """How much differs, as "9 notes differ from “Backbeat”: 4 in slur, 7 in direction, 1 in sign.".

    Args:
        other: Name of the bowing from which they are told apart.
    """
    if not differences:
        return tr("nothing differs from “{other}”.", other=other)
    slurs = sum(found.joins is not None for found in differences)
    bows = sum(found.bows is not None for found in differences)
    signs = sum(found.signs is not None for found in differences)
    what = []
    if slurs:
        what.append(plural("1 in slur", "{n} in slur", slurs))
    if bows:
        what.append(plural("1 in direction", "{n} in direction", bows))
    if signs:
        what.append(plural("1 in sign", "{n} in sign", signs))
    return plural(
        "1 note differs from “{other}”: {what}.", "{n} notes differ from “{other}”: {what}.",
        len(differences), other=other, what=tr(", ", "between parts of a sentence").join(what),
    )  # fmt: skip


def signs_text(signs: Signs) -> str:
    """What stands on a note beside its bow, as "a cut, a roll"."""
    words = []
    if signs.graces:
        words.append(plural("1 grace note", "{n} grace notes", len(signs.graces)))
    words += [ornament_name(ornament) for ornament in signs.ornaments]
    words += [tr(ARTICULATIONS[articulation], "articulation") for articulation in signs.articulations]
    words += [tr("finger {finger}", finger=finger) for finger in signs.fingerings]
    if not words:
        return tr(UNSIGNED)
    signs_named = words[0]
    for word in words[1:]:
        signs_named = tr("{row} and {word}", "the end of a row", row=signs_named, word=word)
    return tr("with {signs}", signs=signs_named)


def _bow_text(bows: tuple[Bow, ...]) -> str:
    if not bows:
        return tr("never played")
    if len(set(bows)) == 1:
        return bow_name(bows[0])
    return tr(", ", "between parts of a sentence").join(
        tr("{bow} on pass {number}", bow=bow_name(bow), number=number) for number, bow in enumerate(bows, 1)
    )
