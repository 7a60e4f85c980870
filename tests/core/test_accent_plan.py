from fractions import Fraction

import pytest

from core.accent_plan import BACKBEAT, ON_BEAT, AccentPlan, PlanKind, accented_places, parse_plan, plan_of_dance
from core.tune import Meter


def eighths(plan: PlanKind, groups: tuple[int, ...], unit: int) -> list[int]:
    """Accented eighths of a bar, counted from 1."""
    return [int(place * 2) + 1 for place in accented_places(AccentPlan(plan), Meter(groups, unit))]


@pytest.mark.parametrize(
    ("meter", "expected"),
    [  # L. Mozart, Violinschule (1756), XII §9: 4/4 quarters 1 and 3; 6/8 and 6/4 notes 1 and 4; 12/8 1, 4, 7, 10
        (((4,), 4), [1, 5]),
        (((6,), 8), [1, 4]),
        (((6,), 4), [1, 7]),
        (((12,), 8), [1, 4, 7, 10]),
        # common practice, no source
        (((2,), 2), [1, 5]),
        (((2,), 4), [1, 3]),
        (((9,), 8), [1, 4, 7]),
        (((3,), 4), [1]),
    ],
)
def test_strong_beats(meter: tuple[tuple[int, ...], int], expected: list[int]) -> None:
    assert eighths(PlanKind.ON_BEAT, *meter) == expected


@pytest.mark.parametrize(  # common practice, no source
    ("meter", "expected"), [(((4,), 4), [3, 7]), (((2,), 2), [3, 7]), (((2,), 4), [2, 4]), (((6,), 8), [4])]
)
def test_backbeats(meter: tuple[tuple[int, ...], int], expected: list[int]) -> None:
    assert eighths(PlanKind.BACKBEAT, *meter) == expected


def test_every_bar_of_a_strong_beat_plan_begins_strong() -> None:
    assert all(places[0] == 0 for places in ON_BEAT.values())
    assert all(0 not in places for places in BACKBEAT.values())


@pytest.mark.parametrize(
    ("groups", "unit", "expected"),
    [((2, 3, 2), 8, [1, 3, 6]), ((5,), 8, [1, 3, 5]), ((15,), 8, [1, 4, 7, 10, 13]), ((7,), 8, [1, 3, 5, 7])],
)
def test_other_metres_go_by_their_groups(groups: tuple[int, ...], unit: int, expected: list[int]) -> None:
    assert eighths(PlanKind.ON_BEAT, groups, unit) == expected
    assert eighths(PlanKind.BACKBEAT, groups, unit) == expected[1::2]


def test_free_metre_and_no_plan_have_no_places() -> None:
    assert accented_places(AccentPlan(), Meter(())) == ()
    assert accented_places(AccentPlan(PlanKind.NONE), Meter()) == ()


def test_places_of_ones_own_stop_at_the_bar_line() -> None:
    plan = parse_plan("0,1,3")
    assert accented_places(plan, Meter((2,), 4)) == (0, 1)
    assert accented_places(plan, Meter(())) == (0, 1, 3)


def test_a_plan_by_phrase_has_none_of_its_own() -> None:
    with pytest.raises(ValueError, match="phrase by phrase"):
        accented_places(AccentPlan(PlanKind.BY_PHRASE), Meter())


class TestReading:
    @pytest.mark.parametrize("text", ["on-beat", "backbeat", "by-phrase", "none", "0,2", "3/2"])
    def test_a_plan_reads_back_as_it_was_written(self, text: str) -> None:
        assert str(parse_plan(text)) == text

    def test_places_are_sorted_and_none_comes_twice(self) -> None:
        assert parse_plan(" 2, 0,2,1/2").places == (0, Fraction(1, 2), 2)

    @pytest.mark.parametrize("text", ["", "offbeat", "-1", "1,x", "1/0", "places"])
    def test_anything_else_is_refused_with_what_was_expected(self, text: str) -> None:
        with pytest.raises(ValueError, match="expected on-beat, backbeat, by-phrase, none"):
            parse_plan(text)


@pytest.mark.parametrize(
    ("dance", "groups", "unit", "expected"),
    [  # accents: Breathnach's and L. Mozart's metres; strathspey second-hand; reel, polka, waltz common practice
        ("reel", (4,), 4, [1, 5]),
        ("Double jig", (6,), 8, [1, 4]),
        ("slip jig", (9,), 8, [1, 4, 7]),
        ("slide", (12,), 8, [1, 4, 7, 10]),
        ("hornpipe", (4,), 4, [1, 5]),
        ("polka", (2,), 4, [1, 3]),
        ("Strathspey", (4,), 4, [1, 5]),
        ("waltz", (3,), 4, [1]),
        ("march", (6,), 8, [1, 4]),
        ("barndance", (4,), 4, [1, 5]),
        ("polska", (3,), 4, [1, 5]),  # common practice, no source
        ("", (3,), 4, [1]),
    ],
)
def test_a_dance_begins_with_its_own_accents(dance, groups, unit, expected) -> None:
    meter = Meter(groups, unit)
    assert [int(place * 2) + 1 for place in accented_places(plan_of_dance(dance, meter), meter)] == expected


def test_a_dance_whose_accents_are_the_beats_of_its_metre_has_the_named_plan() -> None:
    assert plan_of_dance("waltz", Meter((3,), 4)) == AccentPlan()
    assert plan_of_dance("polska", Meter((4,), 4)) == AccentPlan()  # not a metre that the dance is known in
