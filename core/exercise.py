"""Exercises: a bowing with its signs left out from a bar on, to be filled in."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from immutabledict import immutabledict

from core.bowing import Bowing
from core.drills import DRILLS, drill_bowing
from core.translation import tr
from core.tune import Tune
from core.values import dataclass


@dataclass(frozen=True)
class Exercise:
    """One exercise.

    Attributes:
        task: What the player is to do, in one sentence.
        asked: The bowing as far as it is given: slurs and hooks stand where they are shown.
        answer: The whole bowing.
        shown: Ids of the notes whose bow signs are shown.
    """

    task: str
    asked: Bowing
    answer: Bowing
    shown: frozenset[str]


def pose_exercise(
    tune: Tune, bowing: Bowing, from_bar: int = 0, drill: str = "", go_on: Callable[[], None] = lambda: None
) -> Exercise:
    """Make an exercise of a bowing.

    Args:
        tune: The tune.
        bowing: What is to be found; with a drill its ornaments and fingering only.
        from_bar: Printed number of the bar from which on the bowing is left out; 0 for all of it.
        drill: Key of ``core.drills.DRILLS``; "" for the bowing itself.
        go_on: As for ``core.drills.drill_bowing``.
    Raises:
        RefusedEditError: the tune has no notes that the drill is about.
    """
    answer = drill_bowing(tune, bowing, drill, go_on) if drill else bowing
    shown = frozenset(note.id for bar in tune.bars if bar.number < from_bar for note in bar.notes)
    asked = replace(
        answer,
        joins=immutabledict({note_id: how for note_id, how in answer.joins.items() if note_id in shown}),
        marks=immutabledict({note_id: mark for note_id, mark in answer.marks.items() if note_id in shown}),
        retakes=answer.retakes & shown,
    )
    return Exercise(_task(drill, from_bar if shown else 0), asked, answer, shown)


def _task(drill: str, from_bar: int) -> str:
    """What is to be done, in a sentence or two; ``from_bar`` is 0 where it is asked of all bars."""
    if drill and from_bar:
        return tr("{task} Write slurs and bows in from bar {bar} on.", task=tr(DRILLS[drill].task), bar=from_bar)
    if drill:
        return tr("{task} Write slurs and bows in.", task=tr(DRILLS[drill].task))
    if from_bar:
        return tr("Write in how the bow goes from bar {bar} on.", bar=from_bar)
    return tr("Write in how the bow goes.")
