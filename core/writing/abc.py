"""Lessons as ABC 2.1 (December 2011), in the way a careful typist would: a tune of its own for each bowing.

All that ABC has words for is written so that ``core.reading.abc`` reads it back equal. Four bars stand on a line, notes
under one beam touch. A bowing's name stands in a note, ``N:Bowing: NAME``, where the reader finds it again. Fixed bows
are written as ``u`` and ``v``, hooked notes as dots under a slur.

ABC has no place for accent plans, rules turned down, fields of other programs, bows fixed on one pass only, bowed
triplets, and names of parts longer than a letter in the order of parts. A retake is written as a fixed bow, a credit
without a letter of its own as a note with its kind before it, a chord or words within a long note stand at the
beginning of that note. Bar numbers follow from the music. So a lesson's home is MusicXML; what a given lesson loses is
told by ``core.writing.abc_losses``.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from itertools import count

from core.bowing import Bowing
from core.engraving.bow_signs import MarkDensity
from core.lesson import AS_WRITTEN, Lesson
from core.reading.abc_fields import BOWING_NOTE, CREDIT_LETTERS, bowing_of_note
from core.tune import Credit, Tune
from core.writing.abc_bars import tune_lines
from core.writing.abc_fields import key_text, meter_text, part_order_text, tempo_text, unit_text
from core.writing.abc_notes import NoteWriter
from core.writing.abc_rhythm import choose_unit
from core.writing.abc_text import field, one_line

VERSION_LINE = "%abc-2.1"


def write_abc(lessons: Iterable[Lesson], density: MarkDensity | None = None) -> str:
    """Write a tune book.

    Args:
        lessons: In order; each bowing of each becomes a tune. For one bowing: ``[Lesson(tune, (bowing,))]``.
        density: None for the bow marks that the player fixed and no others, which reads back as the same bowing; else
            all that a printed sheet would show, for other programs: read back, they are fixed marks. Strokes that
            turn from pass to pass have no mark.
    Returns:
        The text. A tune keeps its number unless one before it has that number; else it takes the next free one.
    """
    taken: set[int] = set()
    tunes = [
        "\n".join(_lines(lesson.tune, bowing, _free_number(lesson.tune.number, taken), density))
        for lesson in lessons
        for bowing in lesson.bowings
    ]
    return f"{VERSION_LINE}\n" + "\n\n".join(tunes) + "\n"


def _free_number(wanted: int, taken: set[int]) -> int:
    number = next(number for number in count(max(wanted, 0)) if number not in taken)
    taken.add(number)
    return number


def _lines(tune: Tune, bowing: Bowing, number: int, density: MarkDensity | None) -> Iterator[str]:
    unit = choose_unit(tune.bars)
    yield from _header(tune, bowing, number, unit)
    yield from tune_lines(tune, NoteWriter(tune, bowing, unit, density))


def _header(tune: Tune, bowing: Bowing, number: int, unit: Fraction) -> Iterator[str]:
    """Fields before the music; X, T and K stand where the standard wants them (2.2.1)."""
    yield f"X:{number}"
    for title in (tune.title, *tune.other_titles):
        yield field("T", title)
    if tune.dance:
        yield field("R", tune.dance)
    for credit in tune.credits:
        yield _credit(credit)
    if one_line(bowing.name) != AS_WRITTEN or any(bowing_of_note(credit.text) for credit in tune.credits):
        yield field("N", BOWING_NOTE + bowing.name)
    yield f"M:{meter_text(tune.bars[0].meter)}"
    yield f"L:{unit_text(unit)}"
    if tune.tempo:
        yield f"Q:{tempo_text(tune.tempo)}"
    if order := part_order_text(tune.part_order, {one_line(bar.part) for bar in tune.bars}):
        yield f"P:{order}"
    yield f"K:{key_text(tune.bars[0].key)}"


def _credit(credit: Credit) -> str:
    letter = CREDIT_LETTERS.get(credit.kind)
    return field(letter, credit.text) if letter else field("N", f"{credit.kind.capitalize()}: {credit.text}")
