"""A take: one step of a programme, played out and rendered block by block.

A block is rendered when it is first read, or before, in a thread (``fill``). It always has the same samples, so that
it does no harm if both happen at once.
"""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import replace
from fractions import Fraction
from functools import cached_property
from threading import Lock

import numpy as np

from app.player_programme import Recipe
from core.bowing import Bow
from core.sound.backing import Backing, back
from core.sound.bow_place import BowMoment, BowPlaces, bow_places
from core.sound.mix import Levels, Mix, mix
from core.sound.performance import Manner, Performance, perform
from core.sound.track import SAMPLES_A_SECOND, Samples, sample_at
from core.values import dataclass

BLOCK = 8192  # samples
BLOCKS_KEPT = 1024  # 32 MB, three minutes


class Sound:
    """The samples of a mix, kept once they are rendered."""

    def __init__(self, heard: Mix) -> None:
        self._mix = heard
        self._blocks: OrderedDict[int, Samples] = OrderedDict()
        self._lock = Lock()

    def read(self, start: int, count: int) -> Samples:
        """Samples from ``start`` on; silence behind the end."""
        pieces = []
        while count > 0:
            number, within = divmod(start, BLOCK)
            piece = self._block(number)[within : within + count]
            pieces.append(piece)
            start += len(piece)
            count -= len(piece)
        return np.concatenate(pieces) if pieces else np.zeros(0, np.float32)

    def has(self, sample: int) -> bool:
        """Whether a sample is rendered."""
        return sample // BLOCK in self._blocks

    def fill(self, start: int, count: int) -> None:
        """Render what is not rendered yet of a stretch."""
        for number in range(start // BLOCK, min(start + count, self._mix.length) // BLOCK + 1):
            self._block(number)

    def _block(self, number: int) -> Samples:
        with self._lock:
            block = self._blocks.get(number)
            if block is not None:
                self._blocks.move_to_end(number)
                return block
        block = np.zeros(BLOCK, np.float32)
        heard = self._mix.render(number * BLOCK, BLOCK)
        block[: len(heard)] = heard
        with self._lock:
            self._blocks[number] = block
            if len(self._blocks) > BLOCKS_KEPT:
                self._blocks.popitem(last=False)
        return block


@dataclass(frozen=True, eq=False)
class Take:
    """A playing that can be heard.

    Attributes:
        recipe: What it was made of.
        performance: Its notes.
        backing: Its backing.
        levels: How loud its parts are.
        places: Where the bow is.
        sound: Its samples.
    """

    recipe: Recipe
    performance: Performance
    backing: Backing
    levels: Levels
    places: BowPlaces
    sound: Sound

    @cached_property
    def begin(self) -> int:
        """The sample with which the tune begins, all counted in."""
        return sample_at(self.performance.begin)

    @property
    def start(self) -> int:
        """The sample with which it is begun: of the count-in or of the tune."""
        return 0 if self.recipe.counts else self.begin

    @cached_property
    def end(self) -> int:
        """The sample at which the last bar is over; then it rings on for ``core.sound.mix.TAIL`` samples."""
        return sample_at(self.performance.end)

    @property
    def last_bow(self) -> Bow | None:
        """The last stroke; None where nothing is bowed."""
        return self.performance.attacks[-1].bow if self.performance.attacks else self.recipe.after

    def sample_like(self, other: Take, sample: int) -> int:
        """The sample at the musical place at which another take of the same bars has one."""
        return round(sample * (self.performance.quarter_s / other.performance.quarter_s))

    def moment(self, sample: int) -> Moment:
        """What is played at a sample."""
        performance = self.performance
        seconds = Fraction(sample, SAMPLES_A_SECOND)
        visit = performance.visit_at(seconds)
        bar, pass_number = performance.strokes.order[visit]
        if seconds < performance.begin:
            beats = sum(1 for click in performance.clicks if click.counting_in and click.at <= seconds)
            return Moment(self.recipe, "", bar, pass_number, None, beats)
        tone = performance.tone_at(seconds)
        note = performance.strokes.played[tone.note].note_id if tone is not None else ""
        return Moment(self.recipe, note, bar, pass_number, self.places.at(float(seconds)))


@dataclass(frozen=True, slots=True)
class Moment:
    """What is heard at one moment.

    Attributes:
        recipe: Of which step.
        note_id: The written note; "" in a rest and while it is counted in.
        bar: Index in ``tune.bars``.
        pass_number: Which time that bar is played.
        bow: Where the bow is; None before it is set down.
        counted: Beats counted in so far; 0 in the tune.
    """

    recipe: Recipe
    note_id: str
    bar: int
    pass_number: int
    bow: BowMoment | None = None
    counted: int = 0


def make_take(recipe: Recipe, levels: Levels, like: Take | None = None) -> Take:
    """Play out a step.

    Args:
        recipe: What to play.
        levels: How loud each part is.
        like: A take that may be the same but for a little; what is the same is shared.
    """
    passage = recipe.passage
    strokes = passage.strokes(recipe.after, recipe.first_bar)
    if like is not None and _plays_same(like, recipe, strokes == like.performance.strokes):
        if like.levels == levels:
            return replace(like, recipe=recipe)
        heard = mix(like.performance, like.backing, levels)
        return replace(like, recipe=recipe, levels=levels, sound=Sound(heard))
    manner = Manner(passage.reach.tempo, recipe.speed, count_in=recipe.count_in)
    performance = perform(passage.tune, passage.bowing, strokes, manner)
    backing = back(performance)
    sound = Sound(mix(performance, backing, levels))
    return Take(recipe, performance, backing, levels, bow_places(performance, passage.reach), sound)


def _plays_same(like: Take, recipe: Recipe, same_strokes: bool) -> bool:
    mine, other = recipe, like.recipe
    return (
        same_strokes and (mine.speed, mine.count_in) == (other.speed, other.count_in) and mine.passage == other.passage
    )
