import pickle
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.accent_plan import parse_plan
from core.bowing import Bow, Bowing, can_join, fix_bow, join
from core.check import RULES, Report, Severity, check
from core.order import Visit, playing_order
from core.strokes import work_out
from core.tune import Bar, Tune
from tests.core.builders import bowed

SEVEN = "A2Bc defg|B2cd efga|c2de fgab|cdef gabg|"  # 7, 7, 7 and 8 separate strokes
EIGHT = "ABcd efgf|Bcde fgaf|cdef gabf|cdef gabg|"


def report(text: str, plan: str = "none") -> Report:
    return check(*bowed(text, accents=parse_plan(plan)))


def told(text: str, plan: str = "none") -> list[str]:
    return [finding.text for finding in report(text, plan).findings]


class TestReports:
    """What is worked out only when it is asked for is the same whenever that is."""

    def test_what_was_worked_out_is_kept(self) -> None:
        found = report(SEVEN * 2)
        assert found.findings is found.findings
        assert found.worked_out() is found

    def test_reports_of_the_same_are_equal_however_much_was_asked_of_them(self) -> None:
        asked, fresh = report(SEVEN).worked_out(), report(SEVEN)
        assert asked == fresh
        assert asked != report(EIGHT)
        assert (asked.findings, asked.totals) == (fresh.findings, fresh.totals)

    def test_a_report_can_be_copied_and_sent(self) -> None:
        found = report(SEVEN * 2, "on-beat").worked_out()
        sent = pickle.loads(pickle.dumps(found))
        assert sent == found
        assert (sent.findings, sent.strokes.played, sent.accents.met) == (
            found.findings, found.strokes.played, found.accents.met,
        )  # fmt: skip

    def test_threads_are_told_the_same(self) -> None:
        found = report(SEVEN * 8, "on-beat")
        with ThreadPoolExecutor(4) as threads:
            told_each = list(threads.map(lambda _: (found.findings, found.totals, found.reach.moves), range(8)))
        assert told_each == told_each[:1] * 8


class TestTheTableOfRules:
    def test_every_rule_has_a_title_and_says_what_it_rests_on(self) -> None:
        for rule in RULES.values():
            assert rule.title
            assert rule.why.endswith(".")

    def test_findings_carry_the_id_of_their_rule(self) -> None:
        seen = set()
        for text, plan in TRIPPED.values():
            tune, bowing = bowed(text, accents=parse_plan(plan))
            for finding in check(tune, bowing).findings:
                assert finding.rule in RULES
                seen.add(finding.rule)
        assert seen == set(RULES)


TRIPPED = {
    "mark-against-slur": ("(AuB)c2d4|", "none"),
    "redundant-mark": ("(AvB)c2d4|", "none"),
    "tune-on-other-bow": ("A4B2c2|", "none"),
    "round-retake": ("vA4B2c2|", "none"),
    "part-on-other-bow": ("|:A4B2c2:|", "none"),
    "ending-on-other-bow": ("|:A4B4|[1c4d4:|[2uc4d4|]", "none"),
    "phrase-on-other-bow": ("A4B2c2|A4B2c2|", "none"),
    "phrase-slurred-differently": ("A4B2c2|A4(B2c2)|", "none"),
    "like-on-other-bow": ("A2B2c2Bc|B2c2d2cd|", "none"),
    "like-slurred-differently": ("A2B2c2BA|B2c2d2(cB)|", "none"),
    "accent-up": ("A4(B2c2)|", "on-beat"),
    "accent-buried": ("(A4B4)|c4d2e2|", "on-beat"),
    "accent-unstruck": ("A8|B8|", "on-beat"),
    "phrase-plans": ("A4B4|", "by-phrase"),
    "retake-on-some-passes": ("|:A4B2c2|vd8:|", "none"),
    "retake": ("A2vB2c2d2|", "none"),
    "equal-notes-slurred": ("A2(B2B2)c2|", "none"),
    "long-stroke": ("(ABcdefga|b8)|", "none"),
    "stroke-beyond-bow": ("A8-|" * 10 + "A8|", "none"),
    "bow-runs-out": ("A8-|A8-|A8-|A8-|A7B|" * 4, "none"),
    "bow-drift": ("(ABcdefg)a|" * 6, "none"),
    "slur-leaps-string": ("(G4g4)|", "none"),
}


@pytest.mark.parametrize("rule", RULES)
def test_each_rule_is_tripped_by_its_tune(rule: str) -> None:
    text, plan = TRIPPED[rule]
    assert rule in {finding.rule for finding in report(text, plan).findings}


class TestReturnsAndAlternation:
    """Common practice, no source: what odd and even bars do to a phrase."""

    def test_bars_of_7_7_7_and_8_strokes_come_back_on_the_other_bow(self) -> None:
        tune, bowing = bowed(SEVEN * 2, accents=parse_plan("none"))
        found = check(tune, bowing)
        begins = [found.strokes.bows[bar.notes[0].id][0] for bar in tune.bars]
        assert begins == [Bow.DOWN, Bow.UP, Bow.DOWN, Bow.UP, Bow.UP, Bow.DOWN, Bow.UP, Bow.DOWN]
        (finding,) = found.findings
        assert finding.text == ("Bars 5–8 bring bars 1–4 again on the other bow (bar 1 began down, bar 5 begins up).")
        assert (finding.severity, finding.bars) == (Severity.WARNING, (5, 6, 7, 8))

    def test_its_remedy_brings_the_phrase_back_as_it_was(self) -> None:
        tune, bowing = bowed(SEVEN * 2, accents=parse_plan("none"))
        remedy = check(tune, bowing).findings[0].remedy
        assert remedy is not None
        mended = check(tune, remedy.edit(tune, bowing))
        assert {finding.rule for finding in mended.findings} == {"retake", "tune-on-other-bow"}

    def test_four_bars_of_8_strokes_begin_down_and_nothing_is_told(self) -> None:
        tune, bowing = bowed(EIGHT * 2)
        found = check(tune, bowing)
        assert {found.strokes.bows[bar.notes[0].id] for bar in tune.bars} == {(Bow.DOWN,)}
        assert found.findings == ()


class TestTotals:
    def test_every_pass_counts_for_itself(self) -> None:
        totals = report("|:A4 B2 c2:|", "on-beat").totals
        assert (totals.strokes, totals.driven, totals.up, totals.buried, totals.unstruck) == (6, 2, 2, 0, 0)

    def test_slurs_count_as_written_and_ties_are_no_slurs(self) -> None:
        assert report("|:(AB)cd e2-e2:|").totals.slurs == 1
        assert report("(A2-A2 B4)|c2=d2 e4|").totals.slurs == 2

    def test_retakes(self) -> None:
        assert report("|:A2vB2vc2d2:|").totals.retakes == 4

    @pytest.mark.parametrize(
        ("text", "expected"),
        [
            ("A2B2c2d2|", Fraction(1)),  # nothing recurs
            ("A2B2c2d2|" * 3, Fraction(1)),
            ("A4B2c2|" * 3, Fraction(2, 3)),  # down, up, down
            ("A4B4|" * 3 + "A4 =B4|", Fraction(7, 8)),  # the last note goes down like no other
            ("A4 B4|c8|(A4 B4)|", Fraction(1, 2)),  # one up, one slurred: no two are bowed alike
        ],
    )
    def test_consistency(self, text: str, expected: Fraction) -> None:
        assert report(text).totals.consistency == pytest.approx(float(expected))

    def test_comes_round(self) -> None:
        assert report("A4B4|").totals.comes_round
        assert not report("A4B2c2|").totals.comes_round


class TestOneThingIsToldOnce:
    def test_a_part_that_comes_round_turned_tells_its_accents_for_the_first_pass_only(self) -> None:
        assert told("|:A2B2c4|d4e2f2|g4a4|g8:|", "on-beat") == [
            "Bars 1–4 come round on the other bow the second time (the first note of bar 1 is down the first time).",
            "In bars 2–3 the first time, 2 accents fall on up-bows.",
        ]

    def test_a_return_with_other_slurs_tells_the_directions_of_later_bars_only(self) -> None:
        assert told("A4B4|c8|d8|e4f4|(A4B4)|c8|d8|z8|") == [
            "Played again from the start, the tune begins up (the first time down).",
            "Bar 5 brings bar 1 again slurred differently.",
            "Bars 6–7 bring bars 2–3 again on the other bow (bar 2 began down, bar 6 begins up).",
        ]


class TestAwkwardTunes:
    @pytest.mark.parametrize("text", ["z8|", "z8|z8:|", "A|", "A8|", "A-|A8|", "(A|B8)|", "vA8-|vA8|"])
    @pytest.mark.parametrize("plan", ["on-beat", "backbeat", "by-phrase", "none", "1/3,5"])
    def test_nothing_much_can_be_checked(self, text: str, plan: str) -> None:
        assert report(text, plan).totals.consistency == 1.0

    def test_a_bar_without_any_note(self) -> None:
        assert check(Tune("", (Bar(1, ()), Bar(2, ()))), Bowing("")).findings == ()

    def test_parts_that_are_not_played(self) -> None:
        tune, bowing = bowed("{A}A4B4||{B}A4B4||{C}(A4B4)|]", accents=parse_plan("none"), part_order="AB")
        assert check(tune, bowing).findings == ()
        assert check(tune, bowing).totals.consistency == 1.0


def test_findings_are_told_by_bar_and_then_in_the_order_of_the_rules() -> None:
    text = "A2vB2(Bc)d2|(AuB)c2d4|z2A2B2vc2|(defg)a4|"
    tune, bowing = bowed(text)
    findings = check(tune, bowing).findings
    places = [(tune.bar_of[finding.notes[0]], list(RULES).index(finding.rule)) for finding in findings]
    assert places == sorted(places)
    assert len(findings) > 4


@st.composite
def bowed_tunes(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """A few bars of anything."""
    note = st.sampled_from(["A", "B2", "c", "z", "d2-", "e", "(fg)", "(a2B)", "=c", "A/", "LB"])
    mark = st.sampled_from(["", "", "", "", "u", "v", "r"])
    bar = st.lists(st.tuples(mark, note), min_size=1, max_size=8)
    line = st.sampled_from(["|", "|", "||", ":|", "|:"])
    text = ""
    for notes, bar_line in draw(st.lists(st.tuples(bar, line), min_size=1, max_size=6)):
        for sign, typed in notes:
            text += typed if typed[0] in "=Lz(" else sign + typed
        text += bar_line
    plan = draw(st.sampled_from(["on-beat", "backbeat", "by-phrase", "none"]))
    return bowed(text.replace("-z", "z").removesuffix("-|") + "A|", accents=parse_plan(plan))


class TestLaws:
    @given(bowed_tunes())
    @settings(deadline=None)
    def test_a_check_changes_nothing_and_says_the_same_twice(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        kept = replace(tune), replace(bowing)
        first = check(tune, bowing)
        assert check(replace(tune), replace(bowing)) == first
        assert (tune, bowing) == kept

    @given(bowed_tunes())
    @settings(deadline=None)
    def test_notes_are_played_once_and_in_order(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        expected = [note.id for visit in playing_order(tune) for note in tune.bars[visit.bar].notes if not note.is_rest]
        assert [played.note_id for played in check(tune, bowing).strokes.played] == expected

    @given(bowed_tunes())
    @settings(deadline=None)
    def test_fixing_the_first_stroke_the_other_way_flips_all_where_nothing_else_is_fixed(
        self, typed: tuple[Tune, Bowing]
    ) -> None:
        tune, bowing = typed
        free = replace(bowing, marks=type(bowing.marks)())
        for first in work_out(tune, free).played[:1]:
            free = replace(free, retakes=free.retakes - {first.note_id})
            before = work_out(tune, free).played
            flipped = work_out(tune, fix_bow(tune, free, first.note_id, before[0].bow.turned, only_pass=1)).played
            assert [note.bow for note in flipped] == [note.bow.turned for note in before]

    @given(bowed_tunes())
    @settings(deadline=None)
    def test_a_new_slur_flips_what_follows_up_to_the_next_mark(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        order = tuple(Visit(bar, 1) for bar in range(len(tune.bars)))
        if tune.bars[0].is_pickup or tune.bars[0].notes[0].is_rest:
            return  # there the slur would turn the first stroke instead (rule B6)
        before = work_out(tune, bowing, order).played
        for k, note in enumerate(before):
            fixed = note.note_id in bowing.marks or note.note_id in bowing.retakes
            if not note.starts or fixed or not can_join(tune, note.note_id):
                continue
            after = work_out(tune, join(tune, bowing, note.note_id), order).played
            marks = (place for place in range(k, len(before)) if before[place].note_id in bowing.marks)
            stop = next((place for place in marks if before[place].starts), len(before))
            assert [n.bow for n in after[k:stop]] == [n.bow.turned for n in before[k:stop]]
            assert [n.bow for n in after[stop:]] == [n.bow for n in before[stop:]]

    @given(bowed_tunes())
    @settings(deadline=None)
    def test_every_remedy_takes_its_finding_away(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        for finding in check(tune, bowing).findings:
            if finding.remedy:
                mended = check(tune, finding.remedy.edit(tune, bowing))
                assert finding.text not in [other.text for other in mended.findings]
