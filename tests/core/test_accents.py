from dataclasses import replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind, parse_plan
from core.accents import Accents, Met, Silence, phrases, toggle_place, weigh
from core.bowing import Articulation, Bowing, Signs, set_plan, set_signs
from core.strokes import work_out
from tests.core.builders import bowed, tune_of


def weighed(text: str, plan: str = "on-beat", meter: str = "4/4") -> Accents:
    tune, bowing = bowed(text, meter, parse_plan(plan))
    return weigh(tune, bowing, work_out(tune, bowing))


def met(text: str, plan: str = "on-beat", meter: str = "4/4") -> list[str]:
    return [accent.met.value for accent in weighed(text, plan, meter).met]


def test_driven_up_buried() -> None:
    assert met("A2B2c2d2|") == ["driven", "driven"]
    assert met("A4 (B2c2)|") == ["driven", "up"]
    assert met("(A2 B2 c2) d2|") == ["driven", "buried"]


@pytest.mark.parametrize(
    ("text", "why"),
    [("A4 z4|", Silence.REST), ("A4- A4|", Silence.HELD), ("A6 B2|", Silence.SOUNDING), ("A2 z6|", Silence.REST)],
)
def test_an_unstruck_place_says_why(text: str, why: Silence) -> None:
    accent = weighed(text).met[1]
    assert (accent.met, accent.silence) == (Met.UNSTRUCK, why)


def test_a_hooked_note_is_struck_in_its_direction() -> None:
    assert met("A4 =B4|") == ["driven", "driven"]
    assert met("uA4 =B4|") == ["up", "up"]


def test_each_pass_is_weighed_for_itself() -> None:
    accents = weighed("|:A4 B2 c2:|").met
    assert [(accent.pass_number, accent.met) for accent in accents] == [
        (1, Met.DRIVEN), (1, Met.UP), (2, Met.UP), (2, Met.DRIVEN),
    ]  # fmt: skip


def test_a_held_note_that_is_struck_after_a_jump_is_driven_or_up() -> None:
    accents = weighed("A8-||A4 B4:|").met
    assert [accent.met for accent in accents if accent.bar == 1] == [Met.UNSTRUCK, Met.UP, Met.DRIVEN, Met.UP]


def test_a_short_bar_takes_its_places_from_the_full_bar() -> None:
    assert met("A2|B4c4|") == ["driven", "up"]  # a pick-up holds no beat of the plan
    assert [accent.place for accent in weighed("A4 B2|c8|").met] == [2, 0, 2]
    assert [accent.place for accent in weighed("A8|B2:|").met] == [0, 2, 0, 0, 2, 0]


def test_no_plan_has_no_places() -> None:
    assert met("A2B2c2d2|", "none") == []


def test_places_of_ones_own() -> None:
    assert met("A2B2c2d2|", "1,3") == met("A2B2c2d2|", "backbeat") == ["up", "up"]


def test_written_accents_count_beside_the_plan() -> None:
    accents = weighed("LA2 LB2 c2 d2|").met
    assert [(accent.place, accent.met, accent.written) for accent in accents] == [
        (Fraction(0), Met.DRIVEN, False), (Fraction(1), Met.UP, True), (Fraction(2), Met.DRIVEN, False),
    ]  # fmt: skip
    assert met("A2 LB2 c2 d2|", "none") == ["up"]


def test_six_eight() -> None:
    assert met("ABc def|(ABc) def|", meter="6/8") == ["driven", "up", "driven", "up"]


class TestByPhrase:
    def test_each_phrase_takes_what_it_drives_more_of(self) -> None:
        accents = weighed("A2B2c2d2|" * 4 + "A2uB2uc2d2|" + "uA2B2c2d2|" * 3, "by-phrase")
        assert [(phrase.bars, phrase.kind) for phrase in accents.phrases] == [
            ((0, 1, 2, 3), PlanKind.ON_BEAT), ((4, 5, 6, 7), PlanKind.BACKBEAT),
        ]  # fmt: skip
        assert accents.met[:8] == weighed("A2B2c2d2|" * 4).met

    def test_equal_counts_take_the_beat(self) -> None:
        accents = weighed("vA2vB2z4|" * 4, "by-phrase")
        assert [phrase.kind for phrase in accents.phrases] == [PlanKind.ON_BEAT]

    def test_no_other_plan_tells_phrases(self) -> None:
        assert weighed("A8|").phrases == ()


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A8|" * 8, ["0-3", "4-7"]),
        ("A8|" * 5, ["0-3", "4-4"]),
        ("A|" + "A8|" * 8, ["0-4", "5-8"]),  # the pick-up goes with the first phrase
        ("A||" + "A8|" * 4, ["0-4"]),
        ("A8|" * 2 + "A8||" + "A8|" * 4, ["0-2", "3-6"]),  # a section begins a phrase
        ("|:" + "A8|" * 7 + "[1A8:|[2B8||c8|", ["0-3", "4-8", "9-9"]),
        ("|:" + "A8|" * 4 + "[1" + "A8|" * 3 + "A8:|[2" + "A8|" * 3 + "A8|]", ["0-3", "4-7", "8-11"]),
    ],
)
def test_phrases_of_four_full_bars(text: str, expected: list[str]) -> None:
    assert [f"{phrase.start}-{phrase.stop - 1}" for phrase in phrases(tune_of(text))] == expected


def test_count_adds_up_over_all_passes() -> None:
    accents = weighed("|:A4 B2 c2:|")
    assert [accents.count(way) for way in Met] == [2, 2, 0, 0]


def test_an_empty_bar_has_no_places() -> None:
    assert AccentPlan().kind is PlanKind.ON_BEAT
    assert met("z8|") == ["unstruck", "unstruck"]


BACKBEAT = AccentPlan(PlanKind.BACKBEAT)


class TestPlansThatChange:
    FOUR = "A2B2c2d2|" * 4

    def places(self, bowing: Bowing) -> list[tuple[int, Fraction]]:
        tune = self.tune
        return [(accent.bar, accent.place) for accent in weigh(tune, bowing, work_out(tune, bowing)).met]

    def begin(self, plan: str = "on-beat", text: str = FOUR) -> Bowing:
        self.tune, bowing = bowed(text, "4/4", parse_plan(plan))
        return bowing

    def test_a_plan_holds_for_its_bars_and_what_follows_is_kept(self) -> None:
        bowing = self.begin()
        bowing = set_plan(self.tune, bowing, BACKBEAT, 1, 3)
        assert self.places(bowing) == [(0, 0), (0, 2), (1, 1), (1, 3), (2, 1), (2, 3), (3, 0), (3, 2)]
        assert bowing.accents == AccentPlan()

    def test_a_plan_for_the_whole_tune_leaves_no_changes(self) -> None:
        bowing = self.begin()
        bowing = set_plan(self.tune, bowing, BACKBEAT, 1, 3)
        assert set_plan(self.tune, bowing, BACKBEAT) == replace(
            bowing, accents=BACKBEAT, accent_changes=immutabledict()
        )

    def test_the_first_bar_can_have_a_plan_of_its_own(self) -> None:
        bowing = self.begin()
        bowing = set_plan(self.tune, bowing, AccentPlan(PlanKind.NONE), 0, 1)
        assert (bowing.accents, dict(bowing.accent_changes)) == (
            AccentPlan(), {0: AccentPlan(PlanKind.NONE), 1: AccentPlan()},
        )  # fmt: skip
        assert self.places(bowing)[0] == (1, 0)

    def test_a_place_is_accented_in_one_bar_and_back_again(self) -> None:
        bowing = self.begin()
        changed = toggle_place(self.tune, bowing, 1, Fraction(3))
        assert [place for bar, place in self.places(changed) if bar == 1] == [0, 2, 3]
        assert [place for bar, place in self.places(changed) if bar == 2] == [0, 2]
        assert toggle_place(self.tune, changed, 1, Fraction(3)) == bowing

    def test_a_bar_without_its_last_place_has_no_accents(self) -> None:
        bowing = self.begin("0")
        assert toggle_place(self.tune, bowing, 2, Fraction(0)).plan_in(2) == AccentPlan(PlanKind.NONE)

    def test_a_place_is_added_to_what_the_phrase_takes(self) -> None:
        bowing = self.begin("by-phrase", "uA2B2c2d2|" + "A2B2c2d2|" * 3)
        assert weigh(self.tune, bowing, work_out(self.tune, bowing)).phrases[0].kind is PlanKind.BACKBEAT
        changed = toggle_place(self.tune, bowing, 1, Fraction(0))
        assert changed.plan_in(1).places == (0, 1, 3)

    def test_a_phrase_counts_only_its_bars_that_are_by_phrase(self) -> None:
        bowing = self.begin("on-beat", "uA2B2c2d2|" * 3 + "vA2B2c2d2|")
        bowing = set_plan(self.tune, bowing, parse_plan("by-phrase"), 3, 4)
        told = weigh(self.tune, bowing, work_out(self.tune, bowing)).phrases
        assert [(phrase.bars, phrase.kind) for phrase in told] == [((3,), PlanKind.ON_BEAT)]

    def test_written_accents_count_beside_every_plan(self) -> None:
        bowing = set_signs(self.begin("none"), "b1n2", Signs(articulations=(Articulation.ACCENT,)))
        assert self.places(bowing) == [(1, 1)]
