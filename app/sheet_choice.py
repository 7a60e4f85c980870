"""What the user wants on paper, as the sheet dialog hands it on."""

from __future__ import annotations

from enum import Enum

from core.sheet_plan import SheetPlan
from core.translation import translatable
from core.values import dataclass


class Way(Enum):
    """Where a sheet goes."""

    KEEP = "keep"  # in the lesson only
    PRINT = "print"
    EXPORT = "export"


WAY_TEXTS = translatable({Way.KEEP: "&Keep", Way.PRINT: "Pri&nt…", Way.EXPORT: "E&xport as PDF…"})
"""What the buttons say, to be translated where they are shown."""


@dataclass(frozen=True)
class SheetChoice:
    """What the user wants on paper.

    Attributes:
        plan: What goes on it.
        way: Where it goes.
    """

    plan: SheetPlan
    way: Way
