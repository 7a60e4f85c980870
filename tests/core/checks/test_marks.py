from dataclasses import replace

import pytest

from core.accent_plan import parse_plan
from core.bowing import Bow, Mark
from core.check import Finding, Severity, check
from tests.core.builders import bowed


def findings(text: str) -> list[Finding]:
    return [f for f in check(*bowed(text, accents=parse_plan("none"))).findings if "mark" in f.rule]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("(AuB)c2d4|", "In bar 1, the second note is marked up inside a down-bow."),
        ("A4B4|c2 =ud2 e4|", "In bar 2, the second note is marked up inside a down-bow."),  # hooked
        ("A4B4-|vB4 c4|", "In bar 2, the first note is marked down inside an up-bow."),  # held
    ],
)
def test_a_mark_against_its_stroke_is_a_fault(text: str, said: str) -> None:
    (finding,) = findings(text)
    assert (finding.rule, finding.severity, finding.text) == ("mark-against-slur", Severity.FAULT, said)


def test_a_mark_that_agrees_with_its_stroke_is_redundant() -> None:
    (finding,) = findings("(AvB)c2d4|")
    assert (finding.rule, finding.severity) == ("redundant-mark", Severity.NOTE)
    assert finding.text == "In bar 1, the second note is marked down inside a down-bow, which says nothing new."


def test_a_mark_where_its_stroke_begins_is_neither() -> None:
    assert findings("(vAB)uc2vd4|") == []


def test_a_mark_that_is_wrong_on_one_pass_only_says_which() -> None:
    (finding,) = findings("|:A2(B2uc2)d2|e4f4|g4a4:|")  # seven strokes: turned round the second time
    assert finding.rule == "mark-against-slur"
    assert finding.text == "In bar 1, the third note is marked up inside a down-bow, the second time."
    assert finding.pass_number == 2


def test_a_mark_does_not_count_on_passes_where_it_does_not_hold() -> None:
    tune, bowing = bowed("|:A2(B2c2)d2|e4f4|g4a4:|")
    limited = replace(bowing, marks=bowing.marks.set("b0n3", Mark(Bow.UP, only_pass=1)))
    assert [f.rule for f in check(tune, limited).findings if "mark" in f.rule] == ["redundant-mark"]


def test_a_mark_that_begins_a_stroke_on_one_pass_is_needed() -> None:
    assert findings("A4(B4||uc4)d4:|") == []  # the slur leads into the repeat the first time only


def test_the_remedy_takes_that_mark_away_and_no_other() -> None:
    tune, bowing = bowed("(vAuB)c2d4|")
    (finding,) = (f for f in check(tune, bowing).findings if f.rule == "mark-against-slur")
    assert finding.remedy is not None
    assert set(finding.remedy.edit(tune, bowing).marks) == {"b0n1"}
