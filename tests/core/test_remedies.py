from functools import cached_property

import pytest

from core.accent_plan import parse_plan
from core.bowing import Bowing
from core.check import Finding, Report, Severity, check
from core.checks.finding import Remedy
from core.remedies import remedies
from core.tune import Tune
from tests.core.builders import bowed


def offered(text: str, rule: str, plan: str = "none", meter: str = "4/4") -> list[tuple[str, int]]:
    """Labels and slurs of the remedies for the first finding of a rule."""
    return [(remedy.label, remedy.slurs) for remedy in search(text, rule, plan, meter)[2]]


def search(
    text: str, rule: str, plan: str = "none", meter: str = "4/4"
) -> tuple[Tune, Bowing, tuple[Remedy, ...], Report]:
    tune, bowing = bowed(text, meter, parse_plan(plan))
    report = check(tune, bowing)
    finding = next(finding for finding in report.findings if finding.rule == rule)
    return tune, bowing, remedies(tune, bowing, finding), report


def rules(found: Report) -> set[str]:
    return {finding.rule for finding in found.findings}


class TestAPartThatTurnsRound:
    def test_a_slur_or_a_retake_mends_it(self) -> None:
        assert offered("|:A4B2c2|d4f4:|", "part-on-other-bow") == [
            ("Slur notes 2 and 3 of bar 1", 1),
            ("Slur notes 1 and 2 of bar 1", 1),
            ("Take the first note of bar 1 down every time", 0),
        ]

    def test_after_the_change_every_pass_is_bowed_alike(self) -> None:
        tune, bowing, found, _ = search("|:A4B2c2|d4f4:|", "part-on-other-bow")
        for remedy in found:
            bows = check(tune, remedy.edit(tune, bowing)).strokes.bows
            assert all(len(set(directions)) == 1 for directions in bows.values())

    def test_a_slur_that_is_one_too_many_is_parted(self) -> None:
        labels = dict(offered("|:A2(B2c2)B2|A4A4:|", "part-on-other-bow"))
        assert labels["Part the slur between notes 2 and 3 of bar 1"] == -1

    def test_parting_three_notes_leaves_one_slur(self) -> None:
        labels = dict(offered("|:(ABc)B B4|A4A4:|", "part-on-other-bow"))
        assert labels["Part the slur between notes 1 and 2 of bar 1"] == 0

    def test_equal_pitches_are_never_slurred(self) -> None:
        assert offered("|:A4A2A2|A4A4:|", "part-on-other-bow") == [("Take the first note of bar 1 down every time", 0)]

    def test_a_rest_at_the_seam_makes_the_retake_cheapest(self) -> None:
        assert offered("|:A4B2c2|d4f2z2:|", "part-on-other-bow")[0] == (
            "Take the first note of bar 1 down every time", 0,
        )  # fmt: skip

    def test_fixed_notes_are_left_as_they_are(self) -> None:
        labels = [label for label, _ in offered("|:A4uB2c2|d4f4:|", "part-on-other-bow")]
        assert "Slur notes 1 and 2 of bar 1" not in labels

    def test_in_a_first_ending_only_the_way_back_is_mended(self) -> None:
        tune, bowing, found, _ = search("|:A4B4|[1c4d2e2:|[2c4d4|]", "part-on-other-bow")
        assert found[0].label == "Slur notes 2 and 3 of bar 2"
        assert "part-on-other-bow" not in rules(check(tune, found[0].edit(tune, bowing)))


class TestWhereASlurLies:
    def test_steps_go_before_leaps(self) -> None:
        assert offered("|:A2e2B2c2|f4B4|d8:|", "part-on-other-bow")[0] == ("Slur notes 3 and 4 of bar 1", 1)

    def test_no_accent_is_buried(self) -> None:
        labels = [label for label, _ in offered("|:A2B2c2d2|e8:|", "part-on-other-bow", "2")]
        assert labels
        assert "Slur notes 2 and 3 of bar 1" not in labels

    def test_a_bar_that_comes_again_is_slurred_in_both_places(self) -> None:
        part = "A2Bc dcBA|c2Bc d4"
        assert offered(f"|:{part}::{part}:|", "part-on-other-bow")[0] == (
            "Slur notes 2 and 3 of bars 1 and 3", 2,
        )  # fmt: skip

    def test_more_driven_accents_go_before_a_better_place(self) -> None:
        # beat 1 of bars 2 and 3 comes up because bar 1 has seven strokes
        tune, bowing, found, before = search("|:A2Bc dcBA|B2c2d2e2|f2g2a2b2:|", "part-on-other-bow", "on-beat")
        after = check(tune, found[0].edit(tune, bowing))
        assert before.totals.up > 0
        assert (after.totals.up, after.totals.buried) == (0, 0)


class TestAccentsOnUpBows:
    def test_a_slur_behind_the_last_driven_accent_mends_all_that_follow(self) -> None:
        # three strokes from the accent on beat 3 of bar 1 to that on beat 1 of bar 2
        tune, bowing, found, before = search("A2B2c2de|g2a2b2a2|g2f2e2d2|", "accent-up", "on-beat")
        assert before.totals.up == 4
        left = {remedy.label: check(tune, remedy.edit(tune, bowing)).totals.up for remedy in found}
        assert left == {
            "Slur notes 4 and 5 of bar 1": 0,
            "Slur notes 3 and 4 of bar 1": 0,
            "Slur notes 1 and 2 of bar 1": 1,  # before the accent on beat 3, which then is missed for the four
        }

    def test_only_what_lies_between_is_changed(self) -> None:
        labels = [label for label, _ in offered("A2B2c2d2|A2B2c2de|f2g2a2b2|a2g2f2e2|", "accent-up", "on-beat")]
        assert labels
        assert {label[-len("of bar 2") :] for label in labels} == {"of bar 2"}

    def test_one_of_many_is_not_mended_where_more_are_lost(self) -> None:
        # a slur before beat 3 of bar 1 would turn the three that come after
        assert offered("A2uB2uc2d2|ve2f2g2a2|ve2f2g2a2|", "accent-up", "on-beat") == []

    def test_a_part_may_be_turned_round_by_it(self) -> None:
        tune, bowing, found, before = search("|:A2Bc dcBA|B2cd e2dc|A2B2c2d2|e2d2c2Bc:|", "accent-up", "on-beat")
        after = check(tune, found[0].edit(tune, bowing))
        assert after.totals.up + after.totals.buried < before.totals.up + before.totals.buried


class TestTwoChanges:
    def test_where_one_turns_all_that_follows_a_second_turns_it_back(self) -> None:
        assert offered("|:A2B2c2d2|e2fg a2b2|a2g2f2ed|c2B2A2G2:|", "accent-up", "on-beat")[0] == (
            "Slur notes 2 and 3 of bar 2, and slur notes 4 and 5 of bar 3", 2,
        )  # fmt: skip

    def test_they_are_one_edit_with_the_cost_of_both(self) -> None:
        text = "|:A2B2c2d2|e2fg a2b2|a2g2f2ed|c2B2A2G2:|"
        tune, bowing, found, before = search(text, "accent-up", "on-beat")
        pair = next(remedy for remedy in found if ", and " in remedy.label)
        after = check(tune, pair.edit(tune, bowing))
        assert pair.slurs == after.totals.slurs - before.totals.slurs == 2
        assert after.totals.up + after.totals.buried < before.totals.up + before.totals.buried
        assert "part-on-other-bow" not in rules(after)


class TestAccentsInsideASlur:
    def test_the_slur_is_parted_where_that_drives_them(self) -> None:
        assert offered("A2(B2c2)d2|e2f2g2a2|", "accent-buried", "on-beat")[0] == (
            "Part the slur between notes 2 and 3 of bar 1", -1,
        )  # fmt: skip

    def test_no_other_accent_is_lost_for_it(self) -> None:
        _, _, found, before = search("(A2B2c2)d2|e2f2g2a2|", "accent-buried", "on-beat")
        tune, bowing = bowed("(A2B2c2)d2|e2f2g2a2|", accents=parse_plan("on-beat"))
        for remedy in found:
            after = check(tune, remedy.edit(tune, bowing)).totals
            assert after.up + after.buried < before.totals.up + before.totals.buried


class TestOtherTurns:
    def test_a_phrase_that_comes_again_is_mended_between_the_two(self) -> None:
        seven = "A2Bc defg|B2cd efga|c2de fgab|cdef gabg|"
        tune, bowing, found, _ = search(seven * 2, "phrase-on-other-bow")
        assert found[0].label == "Slur notes 2 and 3 of bars 2 and 6"
        assert "phrase-on-other-bow" not in rules(check(tune, found[0].edit(tune, bowing)))

    def test_the_tune_itself(self) -> None:
        tune, bowing, found, _ = search("A4B2c2|]", "tune-on-other-bow")
        assert [remedy.label for remedy in found] == [
            "Slur notes 2 and 3 of bar 1",
            "Take the first note of bar 1 down every time",
            "Slur notes 1 and 2 of bar 1",
        ]
        assert check(tune, found[0].edit(tune, bowing)).totals.comes_round

    def test_a_retake_inside_a_phrase_on_one_pass_only(self) -> None:
        tune, bowing, found, _ = search("|:A4B4|vd4e2f2:|", "retake-on-some-passes")
        assert found[0].label == "Slur notes 2 and 3 of bar 2"
        assert check(tune, found[0].edit(tune, bowing)).findings == ()

    def test_like_phrases(self) -> None:
        tune, bowing, found, _ = search("A2B2c2Bc|B2c2d2cd|e8|", "like-on-other-bow")
        assert found
        for remedy in found:
            assert "like-on-other-bow" not in rules(check(tune, remedy.edit(tune, bowing)))


class TestWhatIsNotSearched:
    def test_other_rules_keep_their_own_remedies(self) -> None:
        assert offered("A2(B2B2)c2|", "equal-notes-slurred") == [
            ("Put a cut on the third note of bar 1 (C5, the next note up)", 0)
        ]
        assert offered("A4z4|", "accent-unstruck", "on-beat") == []

    def test_no_change_brings_a_new_warning(self) -> None:
        text = "|:A2Bc dcBA|B2cd e2dc|A2Bc dcBA|d2cB A4|g8:|"
        tune, bowing, found, before = search(text, "part-on-other-bow", "on-beat")
        loud = {finding.rule for finding in before.findings if finding.severity is not Severity.NOTE}
        for remedy in found:
            after = check(tune, remedy.edit(tune, bowing))
            assert {finding.rule for finding in after.findings if finding.severity is not Severity.NOTE} <= loud

    def test_the_judge_decides_what_is_worse(self) -> None:
        tune, bowing = bowed("|:A4B2c2|d4f4:|", accents=parse_plan("none"))
        (finding,) = check(tune, bowing).findings

        class Strict(Report):
            """Warns of every slur."""

            @cached_property
            def findings(self) -> tuple[Finding, ...]:
                joins = self.view.bowing.joins
                slurs = (Finding("redundant-mark", Severity.WARNING, (1,), None, (note_id,), "") for note_id in joins)
                return (*super().findings, *slurs)

        def judge(tune: Tune, bowing: Bowing) -> Report:
            report = check(tune, bowing)
            return Strict(report.view, report.quiet)

        assert [remedy.label for remedy in remedies(tune, bowing, finding, judge)] == [
            "Take the first note of bar 1 down every time"
        ]

    @pytest.mark.parametrize("at_most", [1, 2])
    def test_as_many_as_asked_for(self, at_most: int) -> None:
        tune, bowing = bowed("|:A4B2c2|d4f4:|", accents=parse_plan("none"))
        (finding,) = check(tune, bowing).findings
        assert len(remedies(tune, bowing, finding, at_most=at_most)) == at_most
