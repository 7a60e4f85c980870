"""A bowing that is looked at before it is taken. No Qt."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from app.sureness import sure_sentence
from core.bowing import Bowing
from core.translation import tr
from core.values import dataclass


@dataclass(frozen=True)
class PlanPreview:
    """What the page shows in the place of the document's bowing.

    Attributes:
        bowing: The bowing, with the name of the one that it would replace.
        sentence: What it is, for the banner.
        changes: Sentences about what would change and why, by index in ``Tune.bars``.
        sure: How sure each proposed bar is (0 to 1), by index; none for a plan, which is proven or not as a whole.
    """

    bowing: Bowing
    sentence: str
    changes: Mapping[int, str] = field(default_factory=dict)
    sure: Mapping[int, float] = field(default_factory=dict)

    @property
    def takes_bars(self) -> bool:
        """Whether bars of it can be taken one by one."""
        return bool(self.sure)

    def tell(self, bar: int) -> str:
        """What there is to say of a bar; "" for nothing."""
        told = [self.changes.get(bar, "")]
        if bar in self.sure:
            told = [told[0] or tr("Nothing changes here."), sure_sentence(self.sure[bar])]
        return " ".join(filter(None, told))
