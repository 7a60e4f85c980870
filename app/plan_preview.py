"""A bowing that is looked at before it is taken. No Qt."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from core.bowing import Bowing


@dataclass(frozen=True)
class PlanPreview:
    """What the page shows in the place of the document's bowing.

    Attributes:
        bowing: The bowing, with the name of the one that it would replace.
        sentence: What it is, for the banner.
        changes: Sentences about what would change and why, by index in ``Tune.bars``.
    """

    bowing: Bowing
    sentence: str
    changes: Mapping[int, str] = field(default_factory=dict)
