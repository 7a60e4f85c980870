"""What a teacher chooses for the planner, and the question that it is asked. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum
from fractions import Fraction

from core.accent_plan import AccentPlan
from core.bowing import Bowing, set_plan
from core.errors import RefusedEditError
from core.planner import Flow, PlannerSettings
from core.translation import tr
from core.tune import Tune
from core.values import dataclass


class Span(Enum):
    """Which notes may change."""

    ALL = "all"
    SELECTED = "selected"
    ONWARD = "onward"


@dataclass(frozen=True)
class Choices:
    """What the pane is set to.

    Attributes:
        accents: The plan to drive; None for the accents that the bowing has.
        flow: How much is slurred.
        span: Which notes may change.
        keep: Of those the slurs, marks and retakes that are there stay.
        most_notes: Notes in a planned stroke at most.
        longest: How long it may last, as a share of a bar.
    """

    accents: AccentPlan | None = None
    flow: Flow = Flow.FEWEST_SLURS
    span: Span = Span.ALL
    keep: bool = True
    most_notes: int = 4
    longest: Fraction = Fraction(1, 2)

    @property
    def settings(self) -> PlannerSettings:
        """The planner's settings."""
        return PlannerSettings(flow=self.flow, most_notes=self.most_notes, longest=self.longest)


@dataclass(frozen=True)
class Question:
    """What the planner is asked, as ``core.planner.work_out_plan`` takes it.

    Attributes:
        tune, bowing: The tune, and the bowing with the accents to drive.
        settings: Limits and costs.
        keep, free, keep_start: As there.
    """

    tune: Tune
    bowing: Bowing
    settings: PlannerSettings
    keep: bool = True
    free: frozenset[str] | None = None
    keep_start: bool = False


def pose_question(choices: Choices, tune: Tune, bowing: Bowing, selection: Sequence[str]) -> Question:
    """Put choices as a question.

    Args:
        choices: What is chosen.
        tune: The tune.
        bowing: The bowing on the page.
        selection: Ids of the selected notes in written order, or of the focus note alone.
    Raises:
        RefusedEditError: some notes are to change, and none is chosen.
    """
    first_bar, stop_bar, free = 0, len(tune.bars), None
    if choices.span is not Span.ALL:
        if not selection:
            raise RefusedEditError(tr("Choose a note on the page first."))
        first_bar = tune.bar_of[selection[0]]
        if choices.span is Span.SELECTED:
            stop_bar = tune.bar_of[selection[-1]] + 1
            free = frozenset(note.id for bar in tune.bars[first_bar:stop_bar] for note in bar.notes)
        else:
            free = frozenset(note.id for note in tune.sequence[tune.places[selection[0]] :])
    if choices.accents is not None:
        bowing = set_plan(tune, bowing, choices.accents, first_bar, stop_bar)
    return Question(tune, bowing, choices.settings, choices.keep, free, choices.span is Span.ONWARD)
