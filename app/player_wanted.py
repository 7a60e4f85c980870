"""What is to be played by what is open and chosen now."""

from __future__ import annotations

from app.document import State
from app.plan_preview import PlanPreview
from app.player_choice import PlayerChoice
from app.player_programme import Passage, Programme
from app.set_list import SetState
from core.tune import Tune


def wanted(choice: PlayerChoice, state: State | None, plan: PlanPreview | None, tunes: SetState) -> Programme | None:
    """The programme; None where there is nothing to play.

    Args:
        choice: What is chosen.
        state: The open lesson.
        plan: What is played in the place of its bowing.
        tunes: The set, which is played in the place of the lesson where that is chosen.
    """
    passages = _of_set(tunes) if choice.plays_set else _of_tune(choice, state, plan)
    if not passages:
        return None
    ladder = choice.ladder if choice.climbs else None
    return Programme(passages, choice.loops, choice.share, ladder, choice.count_in)


def bars_numbered(tune: Tune, numbers: tuple[int, int]) -> tuple[int, int] | None:
    """Indexes in ``tune.bars`` of the first and last bar with printed numbers in a range; None where there is none."""
    first, last = numbers
    found = [index for index, bar in enumerate(tune.bars) if first <= bar.number <= last]
    return (found[0], found[-1]) if found else None


def _of_tune(choice: PlayerChoice, state: State | None, plan: PlanPreview | None) -> tuple[Passage, ...]:
    if state is None:
        return ()
    bars = bars_numbered(state.tune, choice.bars) if choice.bars is not None else None
    return (Passage(state.tune, plan.bowing if plan is not None else state.bowing, bars, state.lesson.reach),)


def _of_set(tunes: SetState) -> tuple[Passage, ...]:
    return tuple(
        Passage(tune.lesson.tune, tune.entry.bowing, None, tune.lesson.reach)
        for tune in tunes.tunes
        for _ in range(tune.times)
    )
