"""What the user wants on paper, as the sheet dialog hands it on."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from core.sheet_plan import SheetPlan


class Way(Enum):
    """Where a sheet goes."""

    KEEP = "&Keep"  # in the lesson only
    PRINT = "Pri&nt…"
    EXPORT = "E&xport as PDF…"


@dataclass(frozen=True)
class SheetChoice:
    """What the user wants on paper.

    Attributes:
        plan: What goes on it.
        way: Where it goes.
    """

    plan: SheetPlan
    way: Way
