"""What a check says: one finding, one sentence, and where there are any, remedies."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import field

from core.bowing import Bowing
from core.severity import Severity
from core.translation import plural
from core.tune import Tune
from core.values import dataclass

__all__ = ["Finding", "Remedy", "Severity"]


@dataclass(frozen=True, slots=True)
class Remedy:
    """An edit that makes a finding go away.

    Attributes:
        label: What it does and where, for a button or menu.
        slurs: Slurs more (positive) or fewer (negative) than before.
        edit: Takes the tune and the bowing that was checked and returns the mended bowing. Left out of comparisons.
    """

    label: str
    edit: Callable[[Tune, Bowing], Bowing] = field(compare=False)
    slurs: int = 0

    @property
    def text(self) -> str:
        """What it does and what it costs in slurs, as "Slur notes 3 and 4 of bar 8 · 1 slur more"."""
        if self.slurs > 0:
            return plural("{edit} · 1 slur more", "{edit} · {n} slurs more", self.slurs, edit=self.label)
        if self.slurs < 0:
            return plural("{edit} · 1 slur fewer", "{edit} · {n} slurs fewer", -self.slurs, edit=self.label)
        return self.label


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
        remedies: Edits that mend it, where any are obvious without a search (``core.remedies`` finds more), best first.
    """

    rule: str
    severity: Severity
    bars: tuple[int, ...]
    pass_number: int | None
    notes: tuple[str, ...]
    text: str
    remedies: tuple[Remedy, ...] = ()

    @property
    def remedy(self) -> Remedy | None:
        """The first remedy."""
        return self.remedies[0] if self.remedies else None
