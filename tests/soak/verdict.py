"""Whether a process has grown by what it neither keeps on purpose nor holds for undo."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import inf

from tests.soak.health import Health, growing, slope

TOLD = 15  # types of which more are gathered
SLOW = 20.0  # objects of one type a thousand gestures


@dataclass(frozen=True)
class Verdict:
    """What is to be said of a session.

    Attributes:
        grows: Something is gathered faster than it may be.
        lines: Why, one for each thing that was measured, then the types that are gathered.
    """

    grows: bool
    lines: tuple[str, ...]


def verdict(states: Sequence[Health], most: Mapping[str, float], told: Sequence[str] = ()) -> Verdict:
    """Hold states that were taken with nothing kept on purpose and nothing to undo against what growth is allowed.

    The first state comes from the first chapter, when not all has been used yet; the others say how fast it goes on.

    Args:
        states: In order, at least one.
        most: For attributes of ``Health``, how much may be gathered in a thousand gestures.
        told: Others of which only the rate is told.
    Returns:
        Nothing grows in fewer than three states: what is used for the first time is not told from what is gathered.
    """
    judged = states[1:]
    if len(judged) < 2:
        return Verdict(False, ("too short a session to say what is gathered",))
    lines, grows = [], False
    for name in (*most, *told):
        allowed = most.get(name, inf)
        values = [getattr(state, name) for state in states]
        rate = 1000 * slope([(state.gestures, getattr(state, name)) for state in judged])
        grows = grows or rate > allowed
        lines.append(
            f"{name} with nothing kept: {', '.join(map(str, values))}; from {judged[0].gestures} gestures on "
            f"{rate:+.1f} a thousand{f' (at most {allowed:.0f})' if name in most else ''}"
            f"{': IT GROWS' if rate > allowed else ''}"
        )
    return Verdict(
        grows, (*lines, *(f"  {name}: {rate:+.0f} a thousand" for name, rate in growing(judged, SLOW)[:TOLD]))
    )
