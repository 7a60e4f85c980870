from fractions import Fraction

import pytest

from core.tempos import BEATS_A_MINUTE, beat_of, pace
from core.tune import Bar, Meter, Note, Pitch, Tempo, Tune

FOUR_FOUR = Meter((4,), 4)
A_NOTE = Note("b0n1", Fraction(0), Fraction(1), (Pitch(4, "A"),))


def tune(dance: str = "", meter: Meter = FOUR_FOUR, tempo: Tempo | None = None) -> Tune:
    return Tune("", (Bar(1, (A_NOTE,), meter),), dance=dance, tempo=tempo)


@pytest.mark.parametrize(
    ("dance", "meter", "bars_a_minute"),
    [  # Breathnach (1963), p. ix, as quoted: reels 112 halves, double jigs 127, slip jigs 144, hornpipes 90 halves
        ("reel", Meter((4,), 4), 56),
        ("reel", Meter((2,), 2), 56),
        ("reel", Meter((2,), 4), 56),  # written in sixteenths: the same dance, the same bars
        ("double jig", Meter((6,), 8), 63.5),
        ("slip jig", Meter((9,), 8), 48),
        ("hornpipe", Meter((4,), 4), 45),
        ("slide", Meter((12,), 8), 34),  # four beats a bar
        ("slide", Meter((6,), 8), 68),
        ("polka", Meter((2,), 4), 68),
        ("waltz", Meter((3,), 4), 130 / 3),
    ],
)
def test_a_dance_goes_at_its_usual_pace(dance: str, meter: Meter, bars_a_minute: float) -> None:
    length = meter.bar_length
    assert length is not None
    assert 60 / (float(length) * pace(tune(dance, meter)).seconds_a_quarter) == pytest.approx(bars_a_minute)


def test_the_tunes_own_tempo_goes_before_its_dance_and_a_setting_before_both() -> None:
    slow, slower = Tempo(Fraction(2), Fraction(80)), Tempo(Fraction(1), Fraction(60))
    assert pace(tune("reel", tempo=slow)).tempo == slow
    assert pace(tune("reel", tempo=slow), slower).tempo == slower
    assert pace(tune("reel", tempo=slow)).dance is None


@pytest.mark.parametrize(
    ("said", "row"),
    [
        ("reels", "reel"), ("slip jig", "slip jig"), ("double jig in g", "double jig"), ("old slow air", "air"),
        ("fairground", ""), ("", ""),
    ],
)  # fmt: skip
def test_the_dance_is_found_by_whole_words_the_longest_first(said: str, row: str) -> None:
    assert pace(tune(said)).dance == row


def test_every_figure_says_where_it_is_from() -> None:
    assert all(beats > 0 and source for beats, source in BEATS_A_MINUTE.values())


@pytest.mark.parametrize(
    ("meter", "beat"),
    [
        (Meter((4,), 4), 2), (Meter((2,), 4), 1), (Meter((6,), 4), 3), (Meter((3,), 8), Fraction(1, 2)),
        (Meter((2, 3, 2), 8), Fraction(1, 2)), (Meter(()), 1),
    ],
)  # fmt: skip
def test_the_beat_that_dancers_count(meter: Meter, beat: Fraction) -> None:
    assert beat_of(meter) == beat
