from core.accent_plan import parse_plan
from core.check import Finding, Severity, check
from tests.core.builders import bowed


def findings(text: str, meter: str = "4/4") -> list[Finding]:
    found = check(*bowed(text, meter, parse_plan("none"))).findings
    return [finding for finding in found if finding.rule.startswith("retake")]


def test_a_retake_is_noted() -> None:
    (finding,) = findings("A2vB2c2d2|")
    assert finding.text == "The second note of bar 1 is a retake (down after down)."
    assert (finding.rule, finding.severity, finding.pass_number) == ("retake", Severity.NOTE, None)


def test_a_mark_that_alternation_reaches_is_no_retake() -> None:
    assert findings("A2uB2c2d2|") == []


def test_a_rest_before_it_is_said() -> None:
    (finding,) = findings("A2z2vB2c2|")
    assert finding.text == "The second note of bar 1 is a retake over a rest (down after down)."


def test_retakes_in_neighbouring_bars_are_one_finding() -> None:
    (finding,) = findings("A2B2c2|vd2e2f2|vg2a2b2|", "3/4")
    assert finding.text == "Bars 2–3 hold 2 retakes (down after down)."
    assert finding.notes == ("b1n1", "b2n1")


def test_a_retake_inside_a_phrase_on_one_pass_only_is_a_warning() -> None:
    (finding,) = findings("|:A4B2c2|vd8:|")
    assert finding.text == "The first note of bar 2 is a retake (down after down), the first time."
    assert (finding.rule, finding.severity, finding.pass_number) == ("retake-on-some-passes", Severity.WARNING, 1)


def test_a_retake_that_begins_a_part_again_is_a_note() -> None:
    (finding,) = findings("|:vA4B2c2:|")
    assert finding.text == "The first note of bar 1 is a retake (down after down), the second time."
    assert (finding.rule, finding.severity, finding.pass_number) == ("retake", Severity.NOTE, 2)


def test_a_retake_that_begins_the_next_part_is_a_note() -> None:
    (finding,) = findings("|:A4B2c2::vd8:|")
    assert finding.text == "The first note of bar 2 is a retake (down after down), the second time."
    assert (finding.rule, finding.severity) == ("retake", Severity.NOTE)


def test_a_rest_makes_it_a_note_again() -> None:
    (finding,) = findings("|:vA4B2z2|c4z4:|")
    assert (finding.rule, finding.severity, finding.pass_number) == ("retake", Severity.NOTE, 2)


def test_a_retake_whose_direction_changes_with_the_pass() -> None:
    (finding,) = findings("|:A4 rB4|c4d4:|")
    assert finding.text == "The second note of bar 1 is a retake (the same way as the stroke before)."
