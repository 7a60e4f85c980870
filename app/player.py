"""Plays the tune: what the document shows now, from the caret, round and round, faster and faster.

The player reads document and set like every view, and edits nothing. Takes are made and rendered in a thread; what is
edited is heard the next time round, another bowing or speed at once and at the same musical place. What is heard now
comes from the sound device, or from a silent clock where there is none: marks on the page follow either.
"""

from __future__ import annotations

from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import replace
from enum import Enum
from functools import partial
from time import monotonic

from PySide6.QtCore import QCoreApplication, QObject, Qt, QTimer, Signal

from app.document import Document, State
from app.plan_preview import PlanPreview
from app.player_choice import LEAST_SPEED, MOST_SPEED, PlayerChoice
from app.player_clock import Now
from app.player_device import Devices
from app.player_feed import Feed, Place
from app.player_output import PlayerOutput
from app.player_programme import Programme, Recipe, Step, recipe_of
from app.player_take import BLOCK, Moment, Take, make_take
from app.player_wanted import wanted
from app.set_list import SetList
from core.sound.part import Part
from core.sound.track import SAMPLES_A_SECOND
from core.translation import tr
from core.tune import Tune

LOOK_MS = 3  # while a take is awaited
TICK_MS = 12
AHEAD = 20 * SAMPLES_A_SECOND  # rendered before it is heard
BLOCKS_A_PIECE = 4


class _For(Enum):
    """What a take is made for."""

    START = "to begin with"
    SWAP = "to go on with at once"
    NEXT = "to follow"


class Player(QObject):
    """Plays what the document and the choice say.

    Args:
        document: The open lesson.
        sets: The set of tunes.
        choice: What is chosen at first.
        devices: Where sound goes.
        now: The clock for silent playing.

    Signals:
        changed: Playing began or ended, or something else is chosen.
        moved: The ``Moment`` that is heard now; None when nothing is played any more.
        hinted: A sentence for the status line.
    """

    changed = Signal()
    moved = Signal(object)
    hinted = Signal(str)

    def __init__(
        self,
        document: Document,
        sets: SetList,
        choice: PlayerChoice | None = None,
        devices: Devices | None = None,
        now: Now = monotonic,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._sets = document, sets
        self._choice = choice or PlayerChoice()
        self._plan: PlanPreview | None = None
        self._programme: Programme | None = None
        self._feed = Feed(self._take_after)
        self._output = PlayerOutput(self._feed, devices or Devices(self), now, self)
        self._output.silenced.connect(self.hinted)
        self._output.changed.connect(self.changed)
        self._plays = False
        self._moment: Moment | None = None
        self._threads = ThreadPoolExecutor(max_workers=1)
        self._making: tuple[_For, Future[Take], Take | None] | None = None
        self._filling: Future[None] | None = None
        self._first: Recipe | None = None  # to be begun with
        self._following: Take | None = None
        self._swap_due = self._next_due = False
        self._climbs_anew = False
        self._timer = QTimer(self, timerType=Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self.tick)
        document.lesson_changed.connect(self._on_lesson_changed)
        sets.changed.connect(self._on_set_changed)
        app = QCoreApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.close_down)

    # ------------------------------------------------------------------------------------------------- what it does

    @property
    def choice(self) -> PlayerChoice:
        return self._choice

    @property
    def plays(self) -> bool:
        """Whether it plays, or is about to."""
        return self._plays

    @property
    def moment(self) -> Moment | None:
        """What is heard now."""
        return self._moment

    @property
    def silence(self) -> str:
        """Why nothing is heard, one sentence; "" where there is sound."""
        return self._output.silence

    @property
    def tune(self) -> Tune | None:
        """The open tune; only its notes are on the page."""
        return self._document.state.tune if self._document.state is not None else None

    # ------------------------------------------------------------------------------------------------- what it is told

    def toggle(self, note_id: str = "") -> None:
        """Stop, or play from the bar of a note on."""
        if self._plays:
            self.stop()
        else:
            self.play(note_id)

    def play(self, note_id: str = "") -> None:
        """Play from the bar of a note on; from the beginning where there is no note or its bar is not to be played."""
        self.stop()
        self._programme = self._wanted()
        state = self._document.state
        if self._programme is None or state is None:
            self.hinted.emit(
                tr("There is nothing to play: no tune is open.") if state is None else tr("The set is empty.")
            )
            return
        first_bar = state.tune.bar_of[note_id] if note_id and not self._choice.plays_set else None
        self._first = recipe_of(self._programme, Step(), None, first_bar)
        self._plays = True
        self._ask()
        self._look()
        self.changed.emit()

    def play_round(self, note_ids: tuple[str, ...]) -> None:
        """Play the bars of some notes round and round."""
        state = self._document.state
        if state is None or not note_ids:
            return
        bars = [state.tune.bars[state.tune.bar_of[note_id]].number for note_id in note_ids]
        self.stop()
        self.choose(bars=(min(bars), max(bars)), loops=True, plays_set=False)
        self.play()

    def stop(self) -> None:
        """Play no more."""
        if not self._plays:
            return
        self._plays = False
        self._timer.stop()
        self._first = self._making = self._following = None
        self._swap_due = self._next_due = False
        self._output.close()
        self._tell(None)
        self.changed.emit()

    def choose(self, **changes: object) -> None:
        """Choose something else of ``PlayerChoice``; what it means for what is being played happens at once.

        Raises:
            TypeError: there is no such choice.
        """
        before, self._choice = self._choice, replace(self._choice, **changes)
        after = self._choice
        if after == before:
            return
        if self._plays:
            if (after.bars, after.plays_set) != (before.bars, before.plays_set):
                self.play()
            else:
                self._climbs_anew |= (after.climbs, after.ladder) != (before.climbs, before.ladder)
                audible = self._climbs_anew or (after.speed, after.heard) != (before.speed, before.heard)
                self._renew(at_once=audible)
        self.changed.emit()

    def hear(self, part: Part, heard: bool) -> None:
        """Let a part be heard, or not."""
        muted = self._choice.muted
        self.choose(muted=muted - {part} if heard else muted | {part})

    def set_level(self, part: Part, level: float) -> None:
        """Turn a part up or down: decibels above its usual level."""
        self.choose(levels=self._choice.levels.set(part, float(level)))

    def change_speed(self, by: int) -> None:
        """Play faster or slower by some percent of the tempo; leaves the ladder."""
        speed = min(max(self.speed + by, LEAST_SPEED), MOST_SPEED)
        self.choose(speed=speed, climbs=False)
        self.hinted.emit(tr("Speed: {speed} % of the tempo.", speed=speed))

    @property
    def speed(self) -> int:
        """Percent of the tempo that is played, or would be."""
        if self._choice.climbs:
            return round(self._moment.recipe.speed * 100) if self._moment else self._choice.ladder.first
        return self._choice.speed

    def show_plan(self, plan: PlanPreview | None) -> None:
        """Play a previewed bowing in the place of the document's, as the page shows it; None for its own again."""
        if plan is not self._plan:
            self._plan = plan
            self._renew(at_once=True)

    def warm_up(self) -> None:
        """Load in the thread what the first note will need."""
        if self._document.state is not None and not self._plays:
            programme = self._wanted()
            if programme is not None:
                self._threads.submit(_warm, recipe_of(programme, Step()), self._choice)

    def close_down(self) -> None:
        """Stop for good."""
        self.stop()
        self._threads.shutdown(wait=False, cancel_futures=True)

    # ------------------------------------------------------------------------------------------------- the programme

    def _wanted(self) -> Programme | None:
        return wanted(self._choice, self._document.state, self._plan, self._sets.state)

    def _renew(self, *, at_once: bool) -> None:
        """Go by what is wanted now: from the next take on, or in the middle of this one."""
        if not self._plays:
            return
        programme = self._wanted()
        if programme is None:
            self.stop()
            return
        self._programme = programme
        if self._first is not None:  # not begun yet
            self._first = recipe_of(programme, Step(), None, self._first.first_bar)
        self._next_due = True
        self._swap_due |= at_once and self._output.is_open
        self._look()

    def _look(self) -> None:
        """Look for takes that are being made more often than playing needs."""
        self._timer.start(LOOK_MS)

    # -------------------------------------------------------------------------------------------- from moment to moment

    def tick(self) -> None:
        """Do what is due; called by a timer while it plays."""
        if not self._plays:
            return
        self._take_answer()
        if self._output.is_open:
            self._follow()
        if self._plays:
            self._ask()
            pace = LOOK_MS if self._making is not None else TICK_MS
            if self._timer.interval() != pace:
                self._timer.setInterval(pace)

    def _follow(self) -> None:
        """Tell what is heard now; end where all was heard."""
        sample = self._output.heard(self._choice.delay_ms)
        if sample is None:
            self.stop()
            return
        place = self._feed.heard(sample)
        if place is not None:
            self._tell(place.take.moment(place.sample))

    def _tell(self, moment: Moment | None) -> None:
        before, self._moment = self._moment, moment
        if moment != before:
            self.moved.emit(moment)
            if moment is not None and (before is None or moment.recipe is not before.recipe):
                self.changed.emit()  # the speed may be another

    def _take_answer(self) -> None:
        if self._making is None or not self._making[1].done():
            return
        purpose, future, like = self._making
        self._making = None
        try:
            take = future.result()
        except Exception:
            self.stop()
            raise
        if purpose is _For.START:
            if self._first == take.recipe:
                self._first = None
                self._next_due = True
                self._feed.start(take)
                self._output.open()
        elif purpose is _For.SWAP:
            self._swap_due |= not self._feed.swap(partial(_same_place, take, like))
        else:
            self._following = take

    def _ask(self) -> None:
        """Let the thread make the take that is wanted most, or else render what will be heard."""
        if self._making is not None or self._programme is None:
            return
        place = self._feed.place if self._output.is_open else None
        if self._first is not None:
            self._make(_For.START, self._first, None)
        elif place is None:
            return
        elif self._swap_due:
            self._swap_due = False
            recipe = self._recipe_now(place.take)
            if (recipe, self._choice.heard) != (place.take.recipe, place.take.levels):
                self._make(_For.SWAP, recipe, place.take)
        elif self._next_due:
            self._next_due = False
            recipe = self._recipe_after(place.take)
            if recipe is not None:
                self._make(_For.NEXT, recipe, place.take)
        elif self._filling is None or self._filling.done():
            self._fill(place)

    def _make(self, purpose: _For, recipe: Recipe, like: Take | None) -> None:
        self._making = purpose, self._threads.submit(make_take, recipe, self._choice.heard, like), like

    def _fill(self, place: Place) -> None:
        take, sample = place
        until = min(sample + AHEAD, take.end)
        missing = next((at for at in range(sample, until, BLOCK) if not take.sound.has(at)), None)
        if missing is not None:
            self._filling = self._threads.submit(take.sound.fill, missing, BLOCKS_A_PIECE * BLOCK)
        elif until == take.end and self._following is not None:
            following = self._following
            if not following.sound.has(following.start):
                self._filling = self._threads.submit(following.sound.fill, following.start, BLOCK)

    def _recipe_now(self, take: Take) -> Recipe:
        """The step that is being played, by what is wanted now."""
        assert self._programme is not None
        step = take.recipe.step
        if self._climbs_anew:
            step, self._climbs_anew = Step(0, step.passage), False
        passage = self._programme.passage_at(step)
        if passage.tune is not take.recipe.passage.tune:  # the set was put together otherwise
            passage = take.recipe.passage
        return replace(take.recipe, step=step, passage=passage, speed=self._programme.speed_at(step))

    def _recipe_after(self, take: Take) -> Recipe | None:
        """The step that follows a take; None where nothing does."""
        programme = self._programme
        step = programme.step_after(take.recipe.step) if programme is not None else None
        if programme is None or step is None:
            return None
        recipe = recipe_of(programme, step)
        return recipe if recipe.passage.bars is not None else replace(recipe, after=take.last_bow)

    def _take_after(self, take: Take) -> Take | None:
        """What follows a take that is over; made here and now where it is not at hand."""
        recipe = self._recipe_after(take)
        following, self._following = self._following, None
        self._next_due = True
        if recipe is None:
            return None
        if following is not None and following.recipe == recipe and following.levels == self._choice.heard:
            return following
        return make_take(recipe, self._choice.heard, take)

    # ------------------------------------------------------------------------------------------------- what it follows

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        self._plan = None
        if before is None or before.tune is not after.tune:
            if not self._choice.plays_set:
                self.stop()
            self.choose(bars=None)
            return
        if not self._choice.plays_set:
            self._renew(at_once=before.shown != after.shown)

    def _on_set_changed(self) -> None:
        if self._choice.plays_set:
            self._renew(at_once=False)


def _same_place(take: Take, like: Take, place: Place) -> Place | None:
    """Where a take goes on for the one that it was made like; None where another is being played by now."""
    return Place(take, take.sample_like(like, place.sample)) if place.take is like else None


def _warm(recipe: Recipe, choice: PlayerChoice) -> None:
    take = make_take(recipe, choice.heard)
    take.sound.fill(take.begin, BLOCK)
