from dataclasses import fields, replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Mark
from core.lesson_fields import (
    BAR_ROWS,
    BOWING_ROWS,
    TUNE_ROWS,
    BarFacts,
    BowingFields,
    Fields,
    TuneFields,
    from_fields,
    to_fields,
)
from core.reach import ReachSettings
from core.severity import Severity
from core.sheet_plan import SheetKind, SheetPlan, TextBlock
from core.strings import Tuning
from core.tune import BarLine, Key, Tempo

TUNE = TuneFields(
    number=7,
    dance="reel",
    other_titles=("The Otter", "a; b, “c”"),
    part_order=("A", "A", "B"),
    credit_order=(1, 0),
    quiet=immutabledict({"retake": None, "accent-up": Severity.NOTE}),
    reach=ReachSettings(hair_cm=60, even_cm_s=27.5, tempo=Tempo(Fraction(3, 2), Fraction(225, 2))),
    tuning=Tuning(("A3", "E4", "A4", "C#5")),
    sheet=SheetPlan(SheetKind.CLASS, after=TextBlock("Homework", "Bars 1–4,\nslowly"), copies=2),
    bars={
        "0": BarFacts(start=Fraction(3, 2)),
        "8X1": BarFacts(Fraction(1, 2), 3, BarLine.FINAL, Key(-1, "dorian", (("B", -1), ("F", 0)))),
    },
)
BOWING = BowingFields(
    accents=AccentPlan(PlanKind.PLACES, (Fraction(0), Fraction(3, 2))),
    accent_changes={0: AccentPlan(PlanKind.NONE), 12: AccentPlan(PlanKind.PLACES, (Fraction(0), Fraction(3, 2)))},
    marks={"b0n1": Mark(Bow.UP), "b2n3": Mark(Bow.DOWN, 2)},
    retakes=frozenset({"b1n1", "b1n2"}),
    slurs=frozenset({"b1n3"}),
    dots=frozenset({"b1n2"}),
)
# The texts as they stand in the file: other programs may show them, so they shall not change unnoticed.
TEXTS = [
    ("bowbench:format", "1"),
    ("bowbench:number", "7"),
    ("bowbench:dance", "reel"),
    ("bowbench:other-titles", '["The Otter", "a; b, “c”"]'),
    ("bowbench:part-order", '["A", "A", "B"]'),
    ("bowbench:credit-order", "1 0"),
    ("bowbench:quiet", "accent-up=note retake=off"),
    ("bowbench:reach", "hair-cm=60 even-cm-s=27.5 tempo=3/2:225/2"),
    ("bowbench:tuning", "A3 E4 A4 C#5"),
    ("bowbench:sheet", '{"kind": "class", "after": ["Homework", "Bars 1\\u20134,\\nslowly"], "copies": 2}'),
    ("bowbench:bars", "0 start=3/2; 8X1 start=1/2 times=3 line=final key=-1,dorian,B-1,F0"),
    ("bowbench:P1.accents", "0,3/2"),
    ("bowbench:P1.accent-changes", "0=none 12=0,3/2"),
    ("bowbench:P1.marks", "b0n1=up b2n3=down/2"),
    ("bowbench:P1.retakes", "b1n1 b1n2"),
    ("bowbench:P1.slurs", "b1n3"),
    ("bowbench:P1.dots", "b1n2"),
    ("bowbench:credit.origin", "Quillandale"),
    ("mood", "wet"),
]


def test_every_value_has_a_row() -> None:
    for values, rows in ((TuneFields, TUNE_ROWS), (BowingFields, BOWING_ROWS), (BarFacts, BAR_ROWS)):
        assert [value.name for value in fields(values)] == list(rows)


def test_fields_are_written_as_typed() -> None:
    assert to_fields(TUNE, {"P1": BOWING}, [("origin", "Quillandale")], {"mood": "wet"}) == TEXTS


def test_fields_are_read_as_typed() -> None:
    read = from_fields(TEXTS)
    assert read == Fields(True, False, TUNE, {"P1": BOWING}, (("origin", "Quillandale"),), {"mood": "wet"}, ())


def test_defaults_are_not_written() -> None:
    assert to_fields(TuneFields(), {"P1": BowingFields()}, [], {}) == [("bowbench:format", "1")]


def test_a_part_without_fields_has_the_defaults() -> None:
    assert from_fields(TEXTS).bowing("P9") == BowingFields()


@pytest.mark.parametrize("kind", PlanKind)
def test_every_plan_comes_back(kind: PlanKind) -> None:
    texts = to_fields(TuneFields(), {"P1": BowingFields(AccentPlan(kind))}, [], {})
    assert from_fields(texts).bowing("P1").accents == AccentPlan(kind)


def test_files_of_others_have_only_others() -> None:
    read = from_fields([("mood", "wet"), ("mood", "and cold"), ("bowbench-like", "x")])
    assert not read.is_ours
    assert read.others == {"mood": "wet\nand cold", "bowbench-like": "x"}


def test_a_later_version_is_told_and_its_fields_are_kept() -> None:
    read = from_fields([("bowbench:format", "2"), ("bowbench:weather", "wet"), ("bowbench:P1.rosin", "much")])
    assert read.is_newer
    assert read.others == {"bowbench:weather": "wet", "bowbench:P1.rosin": "much"}


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("number", "seven"),
        ("number", "9" * 5000),
        ("other-titles", "[1, 2]"),
        ("other-titles", "[" * 100_000),
        ("part-order", "A A B"),
        ("credit-order", "1 x"),
        ("reach", "hair-cm=0"),
        ("reach", "hair-cm=1e1"),
        ("reach", "hair-cm=6" + "5" * 100_000),
        ("reach", "rosin-cm=5"),
        ("reach", "slowest-cm-s=40"),
        ("reach", "tempo=112"),
        ("reach", "tempo=0:112"),
        ("reach", "tempo=2:0"),
        ("tuning", "G3"),
        ("tuning", "G3 H4"),
        ("tuning", "E5 A4 D4 G3"),
        ("sheet", "teacher"),
        ("sheet", "[]"),
        ("sheet", '{"kind": "poster"}'),
        ("sheet", '{"copies": 3}'),
        ("sheet", '{"copies": true}'),
        ("sheet", '{"before": ["Homework"]}'),
        ("sheet", '{"rosin": "much"}'),
        ("bars", "0 start=3/0"),
        ("bars", "0 start=1e99999999"),
        ("bars", "0 weather=wet"),
        ("bars", "0 line=crooked"),
        ("bars", "0 key=1"),
        ("bars", "0 key=1,sideways"),
        ("bars", "0 key=1,dorian,"),
        ("P1.accents", "sometimes"),
        ("P1.accent-changes", "0=sometimes"),
        ("P1.accent-changes", "-1=none"),
        ("P1.accent-changes", "4"),
        ("P1.marks", "b0n1=sideways"),
        ("P1.marks", "b0n1=up/0"),
    ],
)
def test_a_field_that_cannot_be_read_is_told_and_reads_as_the_default(name: str, text: str) -> None:
    read = from_fields([("bowbench:format", "1"), ("bowbench:" + name, text)])
    assert (read.tune, read.bowing("P1")) == (TuneFields(), BowingFields())
    assert len(read.problems) == 1
    assert read.problems[0].startswith(f"The field “bowbench:{name}” says “{text[:60]}”")


def test_a_field_of_the_lesson_that_cannot_be_read_stays_until_a_value_takes_its_place() -> None:
    read = from_fields([("bowbench:format", "1"), ("bowbench:tuning", "G3 H4")])
    assert to_fields(read.tune, {}, [], read.others) == [("bowbench:format", "1"), ("bowbench:tuning", "G3 H4")]
    tuned = replace(read.tune, tuning=Tuning(("A3", "D4", "A4", "E5")))
    assert to_fields(tuned, {}, [], read.others)[1:] == [("bowbench:tuning", "A3 D4 A4 E5")]
