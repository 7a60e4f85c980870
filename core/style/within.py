"""What the marked bars of a tune say of its other bars, with nothing learned elsewhere.

The contexts of ``core.style.contexts`` are gone through from the roughest to the closest: each moves what is known so
far towards the share of its own marked places, the more the more of them there are.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping

import numpy as np
from immutabledict import immutabledict

from core.bowing import Bowing
from core.style.counts import logit
from core.style.evidence import PLACES, SHARE, Numbers
from core.style.style import Facts, agreed, facts, marks_of
from core.tune import Tune

HELD = 1.5  # so many places count for what is known so far


def log_odds_within(tune: Tune, bowing: Bowing, marked: Collection[int]) -> Mapping[str, float]:
    """What marked bars say of the notes of a tune; as ``core.style.style.log_odds``."""
    read = facts(tune)
    joined = marks_of(read, bowing, marked)
    said = agreed(read, say_within(read, joined), joined)
    return immutabledict(zip(read.found.ids, said.tolist(), strict=True))


def say_within(read: Facts, joined: Numbers) -> Numbers:
    """Log-odds for every place of a tune from those that are known (1 joined, 0 not, else not a number)."""
    known = np.flatnonzero(~np.isnan(joined))
    yes = joined[known]
    chances = np.full(len(joined), (yes.sum() + SHARE * PLACES) / (len(yes) + PLACES))
    alike, slurred = (read.likeness.sums(values, known) for values in (np.ones(len(known)), yes))
    for joined_there, all_of_them in zip(slurred[::-1], alike[::-1], strict=True):
        chances = (joined_there + HELD * chances) / (all_of_them + HELD)
    return logit(chances)
