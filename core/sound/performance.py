"""A playing of a tune, timed to the fraction of a second: its attacks, its bars and its beats."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import field
from fractions import Fraction
from functools import cached_property

from core.bowing import Bowing
from core.sound.attacks import Attack, Tone, attacks_of
from core.sound.bar_times import Click, PlayedBar, bar_times, count_in_quarters, counted_in
from core.sound.swing import MOST_SWING, SwungBar, swing_of, swung
from core.strokes import Strokes, work_out
from core.tempos import pace
from core.translation import percent, tr
from core.tune import Tempo, Tune
from core.values import dataclass

MOST_COUNT_IN = 8  # bars
SPEEDS = (Fraction(1, 10), Fraction(3))


@dataclass(frozen=True, slots=True)
class Manner:
    """How a tune is to be played.

    Attributes:
        tempo: In place of that of the tune or its dance.
        speed: Share of the tempo, 1 for all of it.
        swing: First of two written eighths to the second, 1 to 4, in place of that of the dance.
        count_in: Bars that are counted before the tune; a pick-up comes at the end of the last of them.
    Raises:
        ValueError: a value is out of its limits; the text is one sentence.
    """

    tempo: Tempo | None = None
    speed: Fraction = Fraction(1)
    swing: Fraction | None = None
    count_in: int = 0

    def __post_init__(self) -> None:
        slowest, fastest = SPEEDS
        if not slowest <= self.speed <= fastest:
            raise ValueError(
                tr(
                    "The speed must be {slowest} to {fastest} of the tempo.",
                    slowest=percent(float(slowest)),
                    fastest=percent(float(fastest)),
                )
            )
        if self.swing is not None and not 1 <= self.swing <= MOST_SWING:
            raise ValueError(tr("The swing must be 1 to {most}.", most=MOST_SWING))
        if not 0 <= self.count_in <= MOST_COUNT_IN:
            raise ValueError(tr("The bars counted in must be 0 to {most}.", most=MOST_COUNT_IN))


PLAIN = Manner()


@dataclass(frozen=True)
class Performance:
    """A playing of a tune.

    Attributes:
        tune: The tune.
        strokes: What was played, and in which order of bars.
        quarter_s: Seconds in a quarter note.
        begin: Seconds until the tune begins, all that is counted in.
        end: Seconds until its last bar is over.
        bars: The visits.
        attacks: By time; rests leave gaps between them.
        clicks: By time.
        swung: For each bar of the tune where its places are played.
    """

    tune: Tune = field(repr=False)
    strokes: Strokes = field(repr=False)
    quarter_s: Fraction
    begin: Fraction
    end: Fraction
    bars: tuple[PlayedBar, ...]
    attacks: tuple[Attack, ...]
    clicks: tuple[Click, ...]
    swung: tuple[SwungBar, ...]

    def visit_at(self, seconds: float | Fraction) -> int:
        """Index of the visit that is played at a time: the first before all, the last behind all."""
        return max(bisect_right(self._bar_begins, seconds) - 1, 0)

    def attack_at(self, seconds: float | Fraction) -> int:
        """Index of the attack that sounds at a time, or sounded last; -1 before all."""
        return bisect_right(self._attack_begins, seconds) - 1

    def tone_at(self, seconds: float | Fraction) -> Tone | None:
        """The tone that sounds at a time; None in a rest."""
        index = self.attack_at(seconds)
        if index < 0 or seconds >= self.attacks[index].end:
            return None
        tones = self.attacks[index].tones
        return tones[bisect_right(tones, seconds, key=lambda tone: tone.begin) - 1]

    def second_of(self, visit: int, place: Fraction) -> Fraction:
        """Seconds at which a place of a bar, in quarter notes from the beginning of the full bar, is played."""
        played = self.bars[visit]
        bar, places = self.tune.bars[played.bar], self.swung[played.bar]
        return played.begin + (places.at(place) - places.at(bar.start)) * self.quarter_s

    @cached_property
    def _bar_begins(self) -> tuple[Fraction, ...]:
        return tuple(bar.begin for bar in self.bars)

    @cached_property
    def _attack_begins(self) -> tuple[Fraction, ...]:
        return tuple(attack.begin for attack in self.attacks)


def perform(tune: Tune, bowing: Bowing, strokes: Strokes | None = None, manner: Manner = PLAIN) -> Performance:
    """Play a tune in a bowing.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        strokes: Directions of the same bowing and the bars to play, in any order (``core.sound.loops``); once through
            the tune where None.
        manner: Tempo, speed, swing and count-in.
    """
    strokes = work_out(tune, bowing) if strokes is None else strokes
    tempo = pace(tune, manner.tempo).tempo
    quarter_s = Fraction(60) / (tempo.per_minute * tempo.beat * manner.speed)
    ratio = swing_of(tune) if manner.swing is None else manner.swing
    places = tuple(swung(bar, ratio) for bar in tune.bars)
    first = tune.bars[strokes.order[0].bar]
    now = begin = count_in_quarters(first, manner.count_in) * quarter_s
    clicks = list(counted_in(first, manner.count_in, begin, quarter_s))
    times = [bar_times(bar, played_at, quarter_s) for bar, played_at in zip(tune.bars, places, strict=True)]
    bars = []
    for bar_index, pass_number in strokes.order:
        of_bar = times[bar_index]
        end = now + of_bar.notes[-1]
        bars.append(PlayedBar(now, end, bar_index, pass_number))
        clicks += [Click(now + at, strong, counting_in=False) for at, strong in of_bar.beats]
        now = end
    attacks = attacks_of(tune, bowing, strokes, times, bars)
    return Performance(tune, strokes, quarter_s, begin, now, tuple(bars), attacks, tuple(clicks), places)
