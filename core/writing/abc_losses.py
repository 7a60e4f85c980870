"""What a lesson loses when it is written as ABC, told in sentences: found by reading the text back and comparing.

A row of ``_LOSSES`` is a sentence and what must come back equal for it not to be said.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction

from immutabledict import immutabledict

from core.bowing import Bowing, Ornament, Signs
from core.engraving.bow_signs import MarkDensity
from core.lesson import Lesson
from core.ornamenting import ornament_name
from core.reach import ORDINARY
from core.reading.abc import read_abc
from core.reading.abc_fields import CREDIT_LETTERS
from core.strings import STANDARD
from core.strokes import work_out
from core.translation import tr, translatable
from core.tune import Tune
from core.writing.abc import write_abc
from core.writing.abc_notes import ORNAMENTS
from core.writing.abc_text import one_line


def abc_losses(lesson: Lesson, density: MarkDensity | None = None) -> tuple[str, ...]:
    """Sentences for what ``write_abc`` cannot keep of a lesson; none where all of it comes back.

    Args:
        lesson: The lesson.
        density: As for ``write_abc``; the bow marks that it adds are no loss.
    """
    said: dict[str, None] = {}
    if lesson.quiet:
        said[tr("Rules that are turned down are left out.")] = None
    if (lesson.reach, lesson.tuning) != (ORDINARY, STANDARD):
        said[tr("What is set for reach and tuning is left out.")] = None
    if lesson.sheet is not None:
        said[tr("What is set for printed sheets is left out.")] = None
    if lesson.fields:
        said[tr("Fields of other programs are left out.")] = None
    for bowing in lesson.bowings:
        alone = replace(lesson, bowings=(bowing,))
        again = read_abc(write_abc([alone], density)).lessons[0]
        said.update(dict.fromkeys(_losses(*_by_place(lesson.tune, bowing), again.tune, again.bowings[0])))
    return tuple(said)


def _losses(tune: Tune, bowing: Bowing, tune_again: Tune, bowing_again: Bowing) -> Iterator[str]:
    for text, kept in _LOSSES:
        if kept(tune, bowing) != kept(tune_again, bowing_again):
            yield tr(text)
    kinds = dict.fromkeys(credit.kind for credit in tune.credits if credit.kind not in CREDIT_LETTERS)
    if kinds:
        yield tr("Credits for which ABC has no letter are written as notes: {kinds}.", kinds=", ".join(kinds))
    ornaments = [ornament_name(sign) for sign in Ornament if sign not in ORNAMENTS and _has(bowing, sign)]
    if ornaments:
        yield tr("Ornaments for which ABC has no sign are left out: {signs}.", signs=", ".join(ornaments))
    if any(bowing_again.marks.get(note_id) != mark for note_id, mark in bowing.marks.items() if not mark.only_pass):
        yield tr("Bows fixed on held notes are left out.")
    if any(mark.only_pass for mark in bowing.marks.values()):
        yield tr("Bows fixed on one pass only are left out.")
    if bowing.retakes:
        yield tr("Retakes are written as fixed bows.")
    if not bowing.retakes <= bowing_again.marks.keys():
        yield tr("Retakes that go another way on another pass are left out.")


def _has(bowing: Bowing, ornament: Ornament) -> bool:
    return any(ornament in signs.ornaments for signs in bowing.signs.values())


def _of_bars(*names: str) -> Callable[[Tune, Bowing], object]:
    """These fields of every bar."""
    return lambda tune, _: [[getattr(bar, name) for name in names] for bar in tune.bars]


def _of_signs(kept: Callable[[Signs], tuple[object, ...]]) -> Callable[[Tune, Bowing], object]:
    """Part of the signs on each note that has any such sign, none twice."""
    return lambda _, bowing: {
        note_id: list(dict.fromkeys(kept(signs))) for note_id, signs in bowing.signs.items() if kept(signs)
    }


def _chord_places(tune: Tune) -> list[tuple[int, Fraction, str]]:
    return [(index, chord.at, one_line(chord.text)) for index, bar in enumerate(tune.bars) for chord in bar.chords]


def _words_places(tune: Tune) -> list[tuple[int, Fraction, str, bool]]:
    return [
        (index, words.at, one_line(words.text), words.above)
        for index, bar in enumerate(tune.bars)
        for words in bar.words
        if one_line(words.text)
    ]


def _tempo(tune: Tune) -> object:
    return tune.tempo and (tune.tempo.beat, tune.tempo.per_minute, one_line(tune.tempo.text))


_LOSSES: tuple[tuple[str, Callable[[Tune, Bowing], object]], ...] = translatable((
    ("Accent plans are left out.", lambda tune, bowing: bowing.plans(len(tune.bars))),
    ("Some strokes go another way when the text is read again.", lambda tune, bowing: work_out(tune, bowing).bows),
    ("Slurred notes with dots or lines of their own come back as hooked notes.", lambda _, bowing: bowing.joins),
    ("Some dots, lines or other signs on notes do not come back.", _of_signs(lambda signs: signs.articulations)),
    ("Some grace notes do not come back.", _of_signs(lambda signs: signs.graces)),
    ("Some fingers do not come back.", _of_signs(lambda signs: signs.fingerings)),
    ("A name of a bowing does not come back.", lambda _, bowing: one_line(bowing.name)),
    ("The order of parts is left out: each of them needs a letter.", lambda tune, _: tune.part_order),
    ("The tempo is rounded.", lambda tune, _: _tempo(tune)),
    ("Chord symbols within a note move to its beginning, and what is no chord becomes words.",
     lambda tune, _: _chord_places(tune)),
    ("Words within a note move to its beginning, and those that name a jump or a sign are left out.",
     lambda tune, _: _words_places(tune)),
    ("Endings stop at double bar lines.", _of_bars("line")),
    ("Only the first coda is kept.", _of_bars("coda", "to_coda")),
    ("Bars are numbered anew.", _of_bars("number")),
    ("Where short bars begin is worked out anew.", _of_bars("start")),
    ("A metre is written otherwise.", _of_bars("meter")),
    ("Names of parts are shortened.", lambda tune, _: [one_line(bar.part) for bar in tune.bars]),
    ("Endings and repeats are not all kept.", _of_bars("ending", "opens_repeat", "repeats")),
    ("Notes are not all kept.", lambda tune, _: [
        (note.at, note.length, note.pitches, note.held, note.hidden) for note in tune.sequence]),
))  # fmt: skip


def _by_place(tune: Tune, bowing: Bowing) -> tuple[Tune, Bowing]:
    """A tune and its bowing with the note ids that the reader of ABC gives, which tell bar and place."""
    ids = {
        note.id: f"b{index}n{place}" for index, bar in enumerate(tune.bars) for place, note in enumerate(bar.notes, 1)
    }
    bars = tuple(replace(bar, notes=tuple(replace(note, id=ids[note.id]) for note in bar.notes)) for bar in tune.bars)
    return replace(tune, bars=bars), replace(
        bowing,
        joins=immutabledict({ids[note_id]: join for note_id, join in bowing.joins.items()}),
        marks=immutabledict({ids[note_id]: mark for note_id, mark in bowing.marks.items()}),
        retakes=frozenset(ids[note_id] for note_id in bowing.retakes),
        signs=immutabledict({ids[note_id]: signs for note_id, signs in bowing.signs.items()}),
    )
