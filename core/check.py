"""Check a bowing: findings and totals, all that the side list shows."""

from __future__ import annotations

from dataclasses import dataclass

from core.bowing import Bowing
from core.checks.finding import Finding, Remedy, Severity
from core.strokes import Strokes, work_out
from core.tune import Tune

__all__ = ["Finding", "Remedy", "Report", "Severity", "Totals", "check"]


@dataclass(frozen=True, slots=True)
class Totals:
    """Counts of one bowing.

    Strokes, retakes and accents are counted as played once through in playing order, every pass for itself; slurs as
    written.

    Attributes:
        strokes: Strokes played.
        slurs: Written strokes that hold two or more notes, tied notes counted as one.
        retakes: Strokes in the direction of the stroke before them.
        driven, up, buried, unstruck: Accented places by how they are met (``core.accents``).
        consistency: Share (0 to 1) of the notes in recurring bars that are bowed as most of their recurrences are.
        comes_round: Played again from the start, every direction is the same as the first time.
    """

    strokes: int
    slurs: int
    retakes: int
    driven: int
    up: int
    buried: int
    unstruck: int
    consistency: float
    comes_round: bool


@dataclass(frozen=True)
class Report:
    """What a check found.

    Attributes:
        strokes: Every direction.
        findings: By first bar, then in the order of ``RULES``.
        totals: Counts.
    """

    strokes: Strokes
    findings: tuple[Finding, ...]
    totals: Totals


def check(tune: Tune, bowing: Bowing) -> Report:
    """Check a bowing by every rule."""
    strokes = work_out(tune, bowing)
    totals = Totals(
        strokes=sum(note.starts for note in strokes.played),
        slurs=0,
        retakes=sum(note.retake for note in strokes.played),
        driven=0,
        up=0,
        buried=0,
        unstruck=0,
        consistency=1.0,
        comes_round=strokes.comes_round,
    )
    return Report(strokes, (), totals)
