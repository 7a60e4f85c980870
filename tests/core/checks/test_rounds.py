import pytest

from core.accent_plan import parse_plan
from core.check import Finding, Severity, check
from tests.core.builders import bowed


def findings(text: str, part_order: str = "") -> list[Finding]:
    tune, bowing = bowed(text, accents=parse_plan("none"), part_order=part_order)
    return list(check(tune, bowing).findings)


def told(text: str, part_order: str = "") -> list[str]:
    return [finding.text for finding in findings(text, part_order)]


def test_a_part_that_comes_round_turned_is_one_finding() -> None:
    (finding,) = findings("|:A4B2c2|d4e4:|")
    assert finding.text == (
        "Bars 1–2 come round on the other bow the second time (the first note of bar 1 is down the first time)."
    )
    assert (finding.rule, finding.severity) == ("part-on-other-bow", Severity.WARNING)
    assert (finding.bars, finding.pass_number, len(finding.notes)) == ((1, 2), 2, 5)


@pytest.mark.parametrize("text", ["|:A4B4|d4e4:|", "|:A4B2c2|d8:|", "vA4B2c2|A4B2d2|]"])
def test_a_part_that_comes_round_alike_is_none(text: str) -> None:
    assert [finding for finding in findings(text) if finding.rule == "part-on-other-bow"] == []


def test_a_named_part_is_called_by_its_name() -> None:
    assert told("{A}A4B2c2||{B}A4B2d2||", "AABB")[0] == (
        "Part A (bar 1) comes round on the other bow the second time (the first note of bar 1 is down the first time)."
    )


def test_all_later_passes_that_differ_are_named() -> None:
    assert told("{A}A4B2c2||{B}A4B4||", "ABABABAB")[0] == (
        "Part A (bar 1) comes round on the other bow the second and fourth time "
        "(the first note of bar 1 is down the first time)."
    )


def test_only_the_bars_before_a_mark_turn_round() -> None:
    (finding,) = (f for f in findings("|:A4B2c2|vd4e2f2:|") if f.rule == "part-on-other-bow")
    assert finding.text == (
        "Bar 1 comes round on the other bow the second time (the first note of bar 1 is down the first time)."
    )


def test_endings_that_are_played_once_are_left_out() -> None:
    (finding,) = (f for f in findings("|:A4B4|[1c4d2e2:|[2c4d4|]") if f.rule == "part-on-other-bow")
    assert finding.bars == (1,)


def test_the_remedy_bows_every_pass_alike() -> None:
    tune, bowing = bowed("|:A4B2c2|d4e4:|")
    (finding,) = (f for f in check(tune, bowing).findings if f.rule == "part-on-other-bow")
    assert finding.remedy is not None
    assert finding.remedy.label == "Take the first note of bar 1 down every time"
    mended = check(tune, finding.remedy.edit(tune, bowing))
    assert all(len(set(directions)) == 1 for directions in mended.strokes.bows.values())


def test_a_tune_that_begins_on_the_other_bow_when_played_again() -> None:
    (finding,) = findings("A4B2c2|]")
    assert finding.text == "Played again from the start, the tune begins up (the first time down)."
    assert (finding.rule, finding.severity, finding.notes) == ("tune-on-other-bow", Severity.WARNING, ("b0n1",))


def test_a_tune_that_comes_round_by_a_retake() -> None:
    (finding,) = findings("vA4B2c2|]")
    assert finding.text == (
        "Played again from the start, the tune takes a retake: it ends on a down-bow and begins with another."
    )
    assert (finding.rule, finding.severity) == ("round-retake", Severity.NOTE)


def test_a_tune_that_comes_round_by_itself_says_nothing() -> None:
    assert findings("A4B4|]") == findings("vA4B4|]") == []


def endings(text: str) -> list[Finding]:
    return [finding for finding in findings(text) if finding.rule == "ending-on-other-bow"]


class TestEndings:
    def test_one_that_begins_on_the_other_bow_is_told(self) -> None:
        (finding,) = endings("|:A4B4|[1c4d4:|[2uc4d4|]")
        assert finding.text == "The second ending (bar 3) begins up, the first (bar 2) down."
        assert (finding.severity, finding.bars, finding.pass_number) == (Severity.WARNING, (3,), None)
        assert finding.notes == ("b2n1", "b2n2")

    def test_a_slur_into_the_first_ending_alone_turns_the_second(self) -> None:
        (finding,) = endings("|:A4(B4|[1c4)d2e2:|[2c4d4|]")  # played D U=U D U, D U D U: no slur leads into the second
        assert finding.text == "The second ending (bar 3) begins down, the first (bar 2) up."

    def test_where_its_part_is_turned_round_it_only_follows_from_that(self) -> None:
        (finding,) = endings("|:A4B2c2|[1d4f4:|[2e4g4|]")
        assert finding.severity is Severity.NOTE
        assert finding.text == (
            "The second ending (bar 3) begins down, the first (bar 2) up, for its part comes round on the other bow."
        )

    def test_each_later_ending_is_held_against_the_first(self) -> None:
        told = [f.text for f in endings("|:A4B4|[1c4d4:|[2uc4d2e2:|[3uc4d4:|")]
        assert told[1:] == ["The third ending (bar 4) begins up, the first (bar 2) down."]

    @pytest.mark.parametrize(
        "text",
        [
            "|:A4B4|[1c4d4:|[2e4f4|]",  # the same bow
            "|:A4B4|[1c4d4:|[2ve4f2g2|]",  # a mark that says what is so anyhow
            "|:A4B4|[1z8:|[2e4f4|]",  # nothing sounds in the first
            "|:A4B2c2:|d8|",  # no endings
            "|:A4B4|[1c4d4:|e8|",  # one ending, and no other to hold it against
        ],
    )
    def test_others_are_not(self, text: str) -> None:
        assert endings(text) == []

    def test_the_remedy_makes_them_begin_alike(self) -> None:
        tune, bowing = bowed("|:A4(B4|[1c4)d2e2:|[2c4d4|]")
        (finding,) = (f for f in check(tune, bowing).findings if f.rule == "ending-on-other-bow")
        assert finding.remedy is not None
        assert finding.remedy.label == "Take the first note of bar 3 up every time"
        after = check(tune, finding.remedy.edit(tune, bowing))
        assert "ending-on-other-bow" not in {f.rule for f in after.findings}
