"""What a planner found out about tunes, kept so that they can be put in order by it without planning again.

Figures belong to what is played (``core.shelf.facts.content_hash``), not to a file: equal tunes share them, and a tune
that moves keeps them. The three numbers are those by which plans are compared (smaller is better).
"""

from __future__ import annotations

from dataclasses import astuple

from core.shelf.catalogue import Catalogue
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Figures:
    """The best plan of a tune for one accent plan.

    Attributes:
        missed: Accents with an attack that no new down-bow drives.
        broken: Seams and like bars that do not agree.
        cost: Of its slurs and retakes.
        slurs: Written strokes of two or more notes.
        playings: Of bars, once through the tune: what the three numbers add up over.
    """

    missed: int
    broken: int
    cost: int
    slurs: int
    playings: int


def put_figures(catalogue: Catalogue, content: bytes, accents: str, version: int, figures: Figures) -> None:
    """Keep the figures of a tune; those of a later planner are not written over.

    Args:
        content: ``content_hash`` of the tune.
        accents: The accent plan, as ``str(AccentPlan)`` writes it.
        version: Of the planner; one more whenever it would find other figures.
    """
    row = (content, accents, version, *astuple(figures))
    catalogue.write(
        lambda db: db.execute(
            """INSERT INTO figures VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO UPDATE SET version = excluded.version,
            missed = excluded.missed, broken = excluded.broken, cost = excluded.cost, slurs = excluded.slurs,
            playings = excluded.playings WHERE excluded.version >= figures.version""",
            row,
        )
    )


def figures_of(catalogue: Catalogue, content: bytes, accents: str, version: int) -> Figures | None:
    """The figures of a tune from this version of the planner; None where it has not been planned by it."""
    question = "SELECT missed, broken, cost, slurs, playings FROM figures WHERE (content, accents, version) = (?, ?, ?)"
    row = catalogue.read(lambda db: db.execute(question, (content, accents, version)).fetchone())
    return Figures(*row) if row is not None else None
