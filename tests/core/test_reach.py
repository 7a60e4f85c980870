import re
from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.bowing import Ornament, Signs, set_signs
from core.reach import Move, Reach, ReachSettings, drift_cm, rooms, runs_out, work_out_reach
from core.strokes import work_out
from core.tune import Tempo
from tests.core.builders import bowed

SLOW = ReachSettings(tempo=Tempo(Fraction(1, 2), Fraction(60)))  # an eighth lasts a second: at 30 cm/s 30 cm


def reach(text: str, settings: ReachSettings = SLOW) -> Reach:
    tune, bowing = bowed(text)
    return work_out_reach(tune, bowing, work_out(tune, bowing), settings)


def seconds(text: str) -> list[float]:
    """Seconds of each move, up-bows negative."""
    return [move.seconds if move.down else -move.seconds for move in reach(text).moves]


class TestMoves:
    def test_slurred_hooked_and_held_notes_lengthen_their_stroke(self) -> None:
        assert seconds("(AB)c d2=efg-|g4a4|") == [2, -1, 3, -1, 5, -4]

    def test_every_pass_is_drawn_and_turns_with_it(self) -> None:
        assert seconds("|:A4 B2 c2:|") == [4, -2, 2, -4, 2, -2]

    def test_a_bowed_triplet_turns_twice_and_ends_as_it_began(self) -> None:
        tune, bowing = bowed("(A3B)c4|")
        cracked = set_signs(bowing, "b0n1", Signs(ornaments=(Ornament.BOWED_TRIPLET,)))
        moves = work_out_reach(tune, cracked, work_out(tune, cracked), SLOW).moves
        assert [(move.down, move.seconds) for move in moves] == [(True, 1), (False, 1), (True, 2), (False, 4)]

    @pytest.mark.parametrize(
        ("text", "set_down"),
        [
            ("A2B2c2d2|", [True, False, False, False]),
            ("A2B2rc2d2|", [True, False, True, False]),  # a retake
            ("A2z2c2d2|", [True, True, False]),  # a rest
            ("A4 z4|B4 c4|", [True, True, False]),  # a rest at the end of the bar before
            ("A8|z8|B4 c4|", [True, True, False]),
            ("|:A4 B2z2:|", [True, False, True, False]),
            ("z4 A4|B4 c4|", [True, False, False]),
        ],
    )
    def test_the_bow_is_set_down_anew(self, text: str, set_down: list[bool]) -> None:
        assert [move.set_down for move in reach(text).moves] == set_down

    def test_totals(self) -> None:
        found = reach("A4 (B2c)d|")
        assert (found.longest_s, found.bow_used_cm) == (4, 240)
        nothing = reach("z8|")
        assert (nothing.longest_s, nothing.bow_used_cm, nothing.even, nothing.can_be_evened) == (0, 0, (), True)
        assert nothing.drift_of_visits_cm == ()

    def test_drift_of_each_bar_as_played(self) -> None:
        assert reach("A4 B2c2|A4 B3c|").drift_of_visits_cm == (30 * (4 - 2 + 2), 30 * (-4 + 3 - 1))


class TestEvenBow:
    def test_what_fits_lies_in_the_middle_of_the_hair(self) -> None:
        found = reach("AzBcd4|", replace(SLOW, even_cm_s=10))
        assert found.even == ((27.5, 37.5), (52.5, 42.5), (42.5, 52.5), (52.5, 12.5))
        assert found.runs_out_even == ()

    def test_what_drifts_to_the_tip_begins_at_the_frog_and_is_set_down_anew_after_it_ran_out(self) -> None:
        found = reach("A3Bc3d|e3fg2a2|", replace(SLOW, even_cm_s=20))
        assert found.even[:3] == ((0, 60), (60, 40), (40, 100))
        assert found.even[3:7] == ((20, 0), (0, 60), (60, 40), (40, 80))
        assert found.even[7:] == ((52.5, 12.5),)
        assert found.runs_out_even == (2, 6)

    def test_what_drifts_to_the_frog_begins_at_the_tip(self) -> None:
        found = reach("uA3Bc3d|", replace(SLOW, even_cm_s=20))
        assert found.even == ((65, 5), (5, 25), (25, -35), (22.5, 42.5))
        assert found.runs_out_even == (2,)

    def test_a_retake_takes_the_bow_back(self) -> None:
        settings = replace(SLOW, even_cm_s=20)
        assert reach("A2rB2rc2rd2|", settings).even == ((12.5, 52.5),) * 4
        assert reach("(A2B2)c2d2|", settings).runs_out_even == (0,)


class TestEvenedBow:
    def test_a_stroke_too_long_at_the_slowest_speed_runs_out(self) -> None:
        assert reach("A8-|A5B3|").can_be_evened  # 13 s at 5 cm/s are 65 cm
        assert not reach("A8-|A6B2|").can_be_evened

    @pytest.mark.parametrize(("fastest_cm_s", "expected"), [(10, (4,)), (20, ())])
    def test_one_second_brings_back_what_six_took_or_does_not(
        self, fastest_cm_s: float, expected: tuple[int, ...]
    ) -> None:
        settings = replace(SLOW, even_cm_s=8, fastest_cm_s=fastest_cm_s)  # at 5 cm/s six seconds take 30 cm
        assert reach("A6Bc-|c5de2-|e4fg3|", settings).runs_out == expected

    @given(
        st.lists(st.tuples(st.booleans(), st.integers(1, 4), st.integers(0, 5)), max_size=12),
        st.integers(4, 12), st.integers(1, 2), st.integers(0, 3),
    )  # fmt: skip
    def test_the_interval_is_what_trying_every_speed_finds(
        self, drawn: list[tuple[bool, int, int]], hair: int, slowest: int, more: int
    ) -> None:
        moves = [Move(0, 0, down, length, lift == 0) for down, length, lift in drawn]
        everywhere = set(range(hair + 1))
        found = rooms(moves, hair, slowest, slowest + more)
        places, expected = everywhere, []
        for index, move in enumerate(moves):
            begin = everywhere if move.set_down else places
            ways = range(slowest * int(move.seconds), (slowest + more) * int(move.seconds) + 1)
            places = {place + (way if move.down else -way) for place in begin for way in ways} & everywhere
            low, high = found[index]
            if places:
                assert (low, high) == (min(places), max(places))
            else:
                assert low > high
                expected.append(index)
                places = everywhere
        assert runs_out(moves, hair, slowest, slowest + more) == tuple(expected)


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"hair_cm": 0}, "The hair must be 10 to 100 cm, not 0."),
        ({"hair_cm": float("nan")}, "The hair must be 10 to 100 cm, not nan."),
        ({"even_cm_s": -1}, "The even bow speed must be 0.5 to 300 cm/s, not -1."),
        ({"fastest_cm_s": float("inf")}, "The fastest bow speed must be 0.5 to 300 cm/s, not inf."),
        ({"slowest_cm_s": 101}, "The slowest bow speed must not be above the fastest."),
        ({"even_cm_s": 4}, "The even bow speed must lie between the slowest and the fastest."),
        ({"tempo": Tempo(Fraction(1), Fraction(0))}, "The tempo must be 5 to 500 beats a minute, not 0."),
        ({"tempo": Tempo(Fraction(9), Fraction(60))}, "The beat must be 0.125 to 8 quarter notes, not 9."),
    ],
)
def test_settings_without_sense_are_refused_in_one_sentence(wrong: dict[str, Any], sentence: str) -> None:
    with pytest.raises(ValueError, match=f"^{re.escape(sentence)}$"):
        ReachSettings(**wrong)


def test_words_beside_a_tempo_set_are_dropped() -> None:
    assert ReachSettings(tempo=Tempo(Fraction(1), Fraction(60), "Gently")).tempo == Tempo(Fraction(1), Fraction(60))


def test_drift_at_two_speeds() -> None:
    moves = [Move(0, 0, True, 3.0, True), Move(1, 0, False, 1.0, False)]
    assert drift_cm(moves, 30, 30) == 60
    assert drift_cm(moves, 10, 30) == 0


def test_a_bowed_triplet_on_a_held_note_turns_nothing():
    tune, bowing = bowed("A2- A2 B4|")
    signed = set_signs(bowing, tune.sequence[1].id, Signs(ornaments=(Ornament.BOWED_TRIPLET,)))
    plain, with_triplet = (work_out_reach(tune, one, work_out(tune, one)).moves for one in (bowing, signed))
    assert with_triplet == plain
