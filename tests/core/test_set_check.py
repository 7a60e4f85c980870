"""What is said about a set, what mends it, and which order is best; each case can be counted through on paper."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from core.accent_plan import parse_plan
from core.check import RULES, check
from core.set_check import SET_RULES, SetFinding, Severity, check_set, name, seam_text, times_text
from core.set_orders import MOST_ORDERED, orders
from core.set_remedies import mend, set_remedies
from core.tune_set import Entry, TuneSet
from tests.core.builders import bowed

EVEN = "A4B4|c4d4|"  # D U D U
ODD = "A4B4|c4d2e2|"  # D U D U D


def set_of(*texts: str, times: tuple[int, ...] = (), plan: str = "none") -> TuneSet:
    """Tunes named A, B, C ..."""
    entries = []
    for place, text in enumerate(texts):
        tune, bowing = bowed(text, accents=parse_plan(plan))
        entries.append(Entry(replace(tune, title="ABCDEFGH"[place]), bowing, times[place] if times else 1))
    return TuneSet(tuple(entries))


def told(*texts: str, times: tuple[int, ...] = ()) -> list[str]:
    return [finding.text for finding in check_set(set_of(*texts, times=times)).findings]


def finding_of(tune_set: TuneSet, rule: str) -> SetFinding:
    return next(finding for finding in check_set(tune_set).findings if finding.rule == rule)


TRIPPED = {
    "next-tune-on-other-bow": (ODD, EVEN),
    "next-tune-retake": (ODD, "v" + EVEN),
    "next-time-on-other-bow": (ODD, ODD),
    "next-time-retake": ("v" + ODD, EVEN),
    "set-on-other-bow": (EVEN, ODD),
    "set-round-retake": ("v" + EVEN, ODD),
}


class TestTheTableOfRules:
    @pytest.mark.parametrize("rule", SET_RULES)
    def test_each_rule_is_tripped_by_its_set(self, rule: str) -> None:
        times = (2, 1) if rule.startswith("next-time") else (1, 1)
        finding = finding_of(set_of(*TRIPPED[rule], times=times), rule)
        assert finding.severity is SET_RULES[rule].severity

    def test_every_rule_has_a_title_and_says_what_it_rests_on(self) -> None:
        for rule in SET_RULES.values():
            assert rule.title
            assert rule.why.endswith(".")
            assert "practice" in rule.why

    def test_no_rule_is_told_by_its_number_which_only_developers_know(self) -> None:
        for rule in (*RULES.values(), *SET_RULES.values()):
            assert not re.search(r"B\d", rule.why)


class TestFindings:
    def test_a_set_that_goes_on_by_itself_has_none(self) -> None:
        assert told(EVEN, EVEN, times=(2, 3)) == []

    def test_a_tune_turned_round_by_the_one_before(self) -> None:
        (finding, _) = check_set(set_of(ODD, EVEN)).findings
        assert finding.text == "“B” begins up after “A”, and is turned round to its end (alone it begins down)."
        assert (finding.severity, finding.bars, finding.notes) == (Severity.WARNING, (1,), ("b0n1",))
        assert finding.entry == 1

    def test_where_a_mark_sets_it_right_is_said(self) -> None:
        assert told(ODD, "A4B4|vc4d4|") == [
            "“B” begins up after “A”, and is turned round up to the first note of bar 2 (alone it begins down)."
        ]

    def test_a_pick_up_is_bar_0(self) -> None:
        finding = finding_of(set_of(EVEN, "A2|B4c4|"), "next-tune-on-other-bow")
        assert finding.bars == (0,)

    def test_a_retake_and_one_over_a_rest(self) -> None:
        assert told(ODD, "v" + EVEN) == ["“B” begins with a retake: “A” ends on a down-bow and it begins with another."]
        assert told("A4B4|c4d2ez|", "v" + EVEN) == [
            "“B” begins with a retake over a rest: “A” ends on a down-bow and it begins with another."
        ]

    def test_times_through_that_are_turned_are_one_finding(self) -> None:
        assert told(ODD, times=(4,)) == [
            "“A” begins up the second and fourth time, and is turned round to its end (alone it begins down)."
        ]

    def test_what_follows_from_the_tune_before_is_told_with_it(self) -> None:
        assert told(ODD, EVEN, times=(1, 3))[0] == (
            "“B” begins up after “A”, every time, and is turned round to its end (alone it begins down)."
        )
        assert told(ODD, ODD, times=(1, 3))[:1] == [
            "“B” begins up after “A”, the first and third time, and is turned round to its end (alone it begins down)."
        ]
        assert len(told(ODD, ODD, times=(1, 3))) == 1

    def test_retakes_between_times_are_one_finding(self) -> None:
        assert told("v" + ODD, times=(3,))[0] == (
            "“A” takes a retake to begin the second and third time: it ends on a down-bow and begins with another."
        )

    def test_the_way_back_to_the_start(self) -> None:
        assert told(EVEN, ODD) == ["Played again from the start, the set begins up (the first time down)."]
        assert told("v" + EVEN, ODD) == [
            "Played again from the start, the set takes a retake: it ends on a down-bow and begins with another."
        ]

    def test_whether_it_comes_round(self) -> None:
        assert check_set(set_of(EVEN, EVEN)).comes_round
        assert check_set(set_of("v" + EVEN, ODD)).comes_round
        assert not check_set(set_of(EVEN, ODD)).comes_round


class TestWords:
    def test_tunes_go_by_their_titles_and_by_their_places_where_those_do_not_tell_them_apart(self) -> None:
        first, second = set_of(EVEN, ODD).entries
        untitled = replace(second, tune=replace(second.tune, title=""))
        tune_set = TuneSet((first, untitled, first))
        assert [name(tune_set, place) for place in range(3)] == ["“A” (tune 1)", "tune 2", "“A” (tune 3)"]

    def test_seams_are_told_in_a_sentence(self) -> None:
        tune_set = set_of(ODD, "v" + EVEN, EVEN, times=(2, 1, 1))
        assert [seam_text(tune_set, seam) for seam in check_set(tune_set).seams] == [
            "“A” ends down and begins up the second time: turned round to its end (alone it begins down).",
            "“A” ends up, “B” begins down: the bow goes on by itself.",
            "“B” ends up, “C” begins down: the bow goes on by itself.",
            "Back to the start: “C” ends up, “A” begins down: the bow goes on by itself.",
        ]

    def test_a_rest_leaves_room(self) -> None:
        tune_set = set_of("A4B4|c4d2ez|", EVEN)
        assert seam_text(tune_set, check_set(tune_set).seams[0]) == (
            "“A” ends down, “B” begins up: turned round to its end (alone it begins down), "
            "a rest leaves room for a retake."
        )

    def test_times(self) -> None:
        assert [times_text(times) for times in (1, 2, 3, 7)] == ["once", "twice", "three times", "7 times"]


class TestRemedies:
    @staticmethod
    def offered(tune_set: TuneSet, rule: str) -> list[tuple[int, str, int]]:
        found = set_remedies(tune_set, finding_of(tune_set, rule), at_most=9)
        return [(remedy.entry, remedy.remedy.label, remedy.remedy.slurs) for remedy in found]

    def test_a_slur_in_the_last_phrase_goes_before_a_retake(self) -> None:
        tune_set = set_of(ODD, EVEN)
        offered = self.offered(tune_set, "next-tune-on-other-bow")
        assert offered[0] == (0, "Slur notes 2 and 3 of bar 2", 1)
        assert (1, "Take the first note of bar 1 down every time", 0) in offered

    def test_every_one_of_them_mends_it(self) -> None:
        tune_set = set_of(ODD, EVEN)
        finding = finding_of(tune_set, "next-tune-on-other-bow")
        found = set_remedies(tune_set, finding)
        assert found
        for remedy in found:
            mended = check_set(mend(tune_set, remedy))
            assert "next-tune-on-other-bow" not in {other.rule for other in mended.findings}

    def test_over_a_rest_the_retake_is_best(self) -> None:
        offered = self.offered(set_of("A4B4|c4d2ez|", EVEN), "next-tune-on-other-bow")
        assert offered[0] == (1, "Take the first note of bar 1 down every time", 0)

    def test_a_slur_too_many_is_parted(self) -> None:
        offered = self.offered(set_of("A4B4|c4(d2e2)|f8|", EVEN), "next-tune-on-other-bow")
        assert (0, "Part the slur between notes 2 and 3 of bar 2", -1) in offered

    def test_a_pick_up_may_be_slurred(self) -> None:
        # one stroke then, and up: the two that it had began down
        offered = self.offered(set_of("A4B4|c8|", "AB|c4d2e2|"), "next-tune-on-other-bow")
        assert (1, "Slur notes 1 and 2 of the pick-up", 1) in offered

    def test_a_change_that_would_turn_a_part_round_is_not_offered(self) -> None:
        # in a repeated last part one slur more turns its second time round and leaves the end as it was
        labels = [label for _, label, _ in self.offered(set_of("A4B2c2|:d4e4:|", EVEN), "next-tune-on-other-bow")]
        assert not any("bar 2" in label for label in labels)
        assert "Slur notes 2 and 3 of bar 1" in labels

    def test_where_a_mark_on_every_pass_would_do_harm_it_holds_on_the_first(self) -> None:
        # a mark on both passes of bar 1 would turn the rest round, and bar 3 brings bar 1 again
        tune_set = set_of(ODD, "|:A4B2c2:|d4e4|A4B2c2|")
        labels = [label for _, label, _ in self.offered(tune_set, "next-tune-on-other-bow")]
        assert "Take the first note of bar 1 down the first time" in labels
        assert "Take the first note of bar 1 down every time" not in labels

    def test_a_retake_can_be_made_a_stroke_by_itself(self) -> None:
        tune_set = set_of(ODD, "v" + EVEN)
        offered = self.offered(tune_set, "next-tune-retake")
        assert offered[0] == (0, "Slur notes 2 and 3 of bar 2", 1)
        assert not any(label.startswith("Take") for _, label, _ in offered)

    def test_the_way_back_to_the_start_may_take_a_retake(self) -> None:
        offered = self.offered(set_of(EVEN, ODD), "set-on-other-bow")
        assert (0, "Take the first note of bar 1 down every time", 0) in offered

    def test_the_same_tune_elsewhere_in_the_set_changes_with_it(self) -> None:
        first, second = set_of(ODD, EVEN).entries
        tune_set = TuneSet((first, second, first))
        (remedy, *_) = set_remedies(tune_set, finding_of(tune_set, "next-tune-on-other-bow"))
        mended = mend(tune_set, remedy)
        assert mended.entries[0].bowing == mended.entries[2].bowing != first.bowing

    def test_no_other_seam_gets_worse(self) -> None:
        tune_set = set_of(ODD, ODD, EVEN)  # the slur that lets the second begin right turns the third round
        before = {(f.rule, f.entry) for f in check_set(tune_set).findings if f.severity is Severity.WARNING}
        for remedy in set_remedies(tune_set, finding_of(tune_set, "next-tune-on-other-bow")):
            after = check_set(mend(tune_set, remedy)).findings
            assert {(f.rule, f.entry) for f in after if f.severity is Severity.WARNING} < before

    def test_the_tune_itself_is_not_warned_of_more(self) -> None:
        tune_set = set_of("A4B4|c4d2e2|", EVEN, plan="on-beat")
        for remedy in set_remedies(tune_set, finding_of(tune_set, "next-tune-on-other-bow")):
            entry = tune_set.entries[remedy.entry]
            reports = [check(entry.tune, b) for b in (entry.bowing, remedy.remedy.edit(entry.tune, entry.bowing))]
            missed = [report.totals.up + report.totals.buried for report in reports]
            assert missed[1] <= missed[0]

    def test_no_more_are_offered_than_asked_for(self) -> None:
        tune_set = set_of(ODD, EVEN)
        assert len(set_remedies(tune_set, finding_of(tune_set, "next-tune-on-other-bow"), at_most=1)) == 1


class TestOrders:
    def test_of_two_tunes_both_orders_are_compared(self) -> None:
        # ODD, EVEN: turned. EVEN, ODD: not, though it comes round turned.
        found = orders(set_of(ODD, EVEN))
        assert [(order.places, order.turned, order.comes_round) for order in found] == [
            ((1, 0), 0, False),
            ((0, 1), 1, False),
        ]

    def test_retakes_count_after_turned_joins_and_rests_make_them_nothing(self) -> None:
        found = orders(set_of(ODD, "v" + EVEN))
        assert [(order.places, order.turned, order.retakes) for order in found] == [((1, 0), 0, 0), ((0, 1), 0, 1)]
        over_a_rest = orders(set_of("A4B4|c4d2ez|", "v" + EVEN))
        assert [(order.places, order.retakes) for order in over_a_rest] == [((0, 1), 0), ((1, 0), 0)]

    def test_the_order_as_it_stands_comes_first_among_equals(self) -> None:
        assert orders(set_of(EVEN, EVEN, EVEN))[0].places == (0, 1, 2)

    def test_all_orders_up_to_seven_tunes(self) -> None:
        assert len(orders(set_of(*[EVEN] * 4))) == 24
        assert len(orders(set_of(*[EVEN] * (MOST_ORDERED + 1)))) == 1

    def test_times_turned_inside_a_tune_count_in_every_order(self) -> None:
        assert {order.turned for order in orders(set_of(ODD, EVEN, times=(2, 1)))} == {1}

    def test_a_tune_of_rests_is_a_rest_between_its_neighbours(self) -> None:
        found = {order.places: order.retakes for order in orders(set_of(ODD, "z8|", "v" + EVEN))}
        assert (found[0, 1, 2], found[0, 2, 1]) == (0, 1)

    def test_an_empty_set_has_one_order(self) -> None:
        assert [(order.places, order.turned, order.comes_round) for order in orders(TuneSet(()))] == [((), 0, True)]
