"""What a check says: one finding, one sentence, and where there is one, a remedy."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import Enum

from core.bowing import Bowing
from core.tune import Tune


class Severity(Enum):
    """How much a finding matters."""

    FAULT = "fault"  # the writing contradicts itself
    WARNING = "warning"  # it can be played, and is probably not meant
    NOTE = "note"  # worth knowing


@dataclass(frozen=True, slots=True)
class Remedy:
    """An edit that makes a finding go away.

    Attributes:
        label: What it does, for a button or menu.
        edit: Takes the tune and the bowing that was checked and returns the mended bowing. Left out of comparisons.
    """

    label: str
    edit: Callable[[Tune, Bowing], Bowing] = field(compare=False)


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing to say about a bowing.

    Attributes:
        rule: Key in ``core.check.RULES``.
        severity: How much it matters.
        bars: Printed bar numbers, in written order, none twice.
        pass_number: The pass on which it happens, counted from 1; None where it holds on every pass or has none.
        notes: Ids of the notes to show, in written order.
        text: One sentence.
        remedy: An edit that mends it, if one is obvious and safe.
    """

    rule: str
    severity: Severity
    bars: tuple[int, ...]
    pass_number: int | None
    notes: tuple[str, ...]
    text: str
    remedy: Remedy | None = None
