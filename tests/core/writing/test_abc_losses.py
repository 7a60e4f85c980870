"""Every sentence about what ABC cannot keep of a lesson, on a lesson that loses just that."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Articulation, Bow, Grace, Mark, Ornament, Signs
from core.engraving.bow_signs import MarkDensity
from core.lesson import AS_WRITTEN, Lesson
from core.reach import ReachSettings
from core.reading.abc import read_abc
from core.sheet_plan import SheetPlan
from core.tune import ChordSymbol, Credit, Meter, Pitch, Tempo, Words
from core.writing.abc_losses import abc_losses
from tests.core.builders import bowed
from tests.outside.abc_collections import sources

Change = Callable[[Lesson], Lesson]


def typed(text: str = "|:A4 B4|c8:|d8|]") -> Lesson:
    tune, bowing = bowed(text)
    return Lesson(tune, (replace(bowing, name=AS_WRITTEN),))


def bars(**changes: object) -> Change:
    """Change the first bar."""
    return lambda lesson: replace(
        lesson, tune=replace(lesson.tune, bars=(replace(lesson.tune.bars[0], **changes), *lesson.tune.bars[1:]))
    )


def tune(**changes: object) -> Change:
    return lambda lesson: replace(lesson, tune=replace(lesson.tune, **changes))


def bowing(**changes: object) -> Change:
    return lambda lesson: replace(lesson, bowings=(replace(lesson.bowings[0], **changes),))


def signs(**kinds: tuple[object, ...]) -> Change:
    """Put signs on the second note."""
    return bowing(signs=immutabledict({"b0n2": Signs(**kinds)}))


HELD = typed("A4-A4|B8|]")
SLURRED = typed("(A4 B4)|c8|]")
LOSSES: list[tuple[str, Lesson, Change]] = [
    ("Accent plans are left out.", typed(), bowing(accents=AccentPlan(PlanKind.BACKBEAT))),
    ("Accent plans are left out.", typed(), bowing(accent_changes=immutabledict({1: AccentPlan(PlanKind.NONE)}))),
    ("Rules that are turned down are left out.", typed(), lambda found: replace(found, quiet=immutabledict(late=None))),
    ("Fields of other programs are left out.", typed(), lambda found: replace(found, fields=immutabledict(a="b"))),
    ("What is set for printed sheets is left out.", typed(), lambda found: replace(found, sheet=SheetPlan())),
    ("What is set for reach and tuning is left out.", typed(),
     lambda found: replace(found, reach=ReachSettings(hair_cm=60.0))),
    ("Bows fixed on one pass only are left out.", typed(), bowing(marks=immutabledict({"b1n1": Mark(Bow.DOWN, 1)}))),
    ("Bows fixed on held notes are left out.", HELD, bowing(marks=immutabledict({"b0n2": Mark(Bow.DOWN)}))),
    ("Retakes are written as fixed bows.", typed("A4 B4|c8|d8|]"), bowing(retakes=frozenset({"b1n1"}))),
    ("Slurred notes with dots or lines of their own come back as hooked notes. "
     "Some dots, lines or other signs on notes do not come back.", SLURRED,
     bowing(signs=immutabledict(dict.fromkeys(("b0n1", "b0n2"), Signs(articulations=(Articulation.STACCATO,)))))),
    ("Ornaments for which ABC has no sign are left out: bowed triplet.", typed(),
     signs(ornaments=(Ornament.ROLL, Ornament.BOWED_TRIPLET))),
    ("Some dots, lines or other signs on notes do not come back.", typed(),
     signs(articulations=(Articulation.DETACHED_LEGATO,))),
    ("Some grace notes do not come back.", typed(), signs(graces=(Grace((Pitch(5, "C"),), Fraction(8)),))),
    ("A name of a bowing does not come back.", typed(), bowing(name="long " * 50)),
    ("The order of parts is left out: each of them needs a letter.", typed(), tune(part_order=("Trio",))),
    ("The tempo is rounded.", typed(), tune(tempo=Tempo(Fraction(1), Fraction(200, 3)))),
    ("Credits for which ABC has no letter are written as notes: arranger, rights.", typed(),
     tune(credits=(Credit("arranger", "Orla Fenn"), Credit("source", "a book"), Credit("rights", "free")))),
    ("Chord symbols within a note move to its beginning, and what is no chord becomes words.", typed(),
     bars(chords=(ChordSymbol(Fraction(1), "G"),))),
    ("Words within a note move to its beginning, and those that name a jump or a sign are left out.", typed(),
     bars(words=(Words(Fraction(0), "Fine"),))),
    ("Endings stop at double bar lines.", typed("|:A8|[1B8:|[2c8|d8|]"),
     lambda lesson: replace(lesson, tune=replace(lesson.tune, bars=(
         *lesson.tune.bars[:3], replace(lesson.tune.bars[3], ending=()))))),
    ("Only the first coda is kept.", typed("A8!tocoda!|!coda!B8!D.C.!|c8|]"),
     lambda lesson: replace(lesson, tune=replace(lesson.tune, bars=(
         *lesson.tune.bars[:2], replace(lesson.tune.bars[2], coda=True))))),
    ("Bars are numbered anew.", typed(), bars(number=9)),
    ("Where short bars begin is worked out anew.", typed("A4|B4|c8|]"), bars(start=Fraction(1))),
    ("A metre is written otherwise.", typed("A8|]"), bars(meter=Meter((4,), 4, "cut"))),
    ("Names of parts are shortened.", typed(), bars(part="a name of a part that is longer than forty letters")),
    ("Some strokes go another way when the text is read again. Endings and repeats are not all kept.",
     typed("A8|[1B8|]"), lambda lesson: replace(lesson, tune=replace(lesson.tune, bars=(
         lesson.tune.bars[0], replace(lesson.tune.bars[1], ending=(70,)))))),
]  # fmt: skip


@pytest.mark.parametrize(("text", "lesson", "change"), LOSSES, ids=[row[0] for row in LOSSES])
def test_a_loss_is_told_in_its_sentence(text: str, lesson: Lesson, change: Change) -> None:
    assert abc_losses(lesson) == ()
    assert " ".join(abc_losses(change(lesson))) == text


def test_an_empty_bar_is_told() -> None:
    lesson = typed("A8|B8|]")
    told = abc_losses(
        replace(lesson, tune=replace(lesson.tune, bars=(lesson.tune.bars[0], replace(lesson.tune.bars[1], notes=()))))
    )
    assert told == ("Notes are not all kept.",)


def test_a_retake_that_turns_with_the_passes_is_told_with_what_follows_from_it() -> None:
    told = abc_losses(typed("|:A4 B4|rc4 d4:|"))
    assert "Retakes that go another way on another pass are left out." in told
    assert "Some strokes go another way when the text is read again." in told


def test_a_finger_on_a_rest_is_told() -> None:
    told = abc_losses(replace_first_signs(typed("z4 A4|B8|]"), Signs(fingerings=("1",))))
    assert told == ("Some fingers do not come back.",)


def replace_first_signs(lesson: Lesson, found: Signs) -> Lesson:
    return bowing(signs=immutabledict({"b0n1": found}))(lesson)


def test_marks_added_for_other_programs_are_no_loss() -> None:
    assert abc_losses(typed("A4 B4|c8|]"), MarkDensity.EVERY) == ()


def test_names_of_notes_are_no_loss() -> None:
    lesson = typed("vA4 (BcBc)|~d8|]")
    renamed = {note.id: f"mine-{place}" for place, note in enumerate(lesson.tune.sequence)}
    found = lesson.bowings[0]
    again = Lesson(
        replace(
            lesson.tune,
            bars=tuple(
                replace(bar, notes=tuple(replace(note, id=renamed[note.id]) for note in bar.notes))
                for bar in lesson.tune.bars
            ),
        ),
        (
            replace(
                found,
                joins=immutabledict({renamed[i]: how for i, how in found.joins.items()}),
                marks=immutabledict({renamed[i]: mark for i, mark in found.marks.items()}),
                signs=immutabledict({renamed[i]: kept for i, kept in found.signs.items()}),
            ),
        ),
    )
    assert abc_losses(again) == ()


def test_tunes_of_the_collections_lose_nothing() -> None:
    for source in sources("oneills1850")[::60]:
        assert abc_losses(read_abc(source.text).lessons[0]) == (), source.place
