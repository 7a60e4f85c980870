"""Digests of whole numbers in columns: 64 bits that are the same on every machine.

Equal keys have equal digests; unequal ones too in one of 2**64 cases, which is never. They are made for all rows at
once, and a digest of a sequence is the sum over its parts, so that sequences of any length need no loop.
"""

from __future__ import annotations

from hashlib import blake2b
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Column: TypeAlias = NDArray[np.int64]  # an entry for each row
Digests: TypeAlias = NDArray[np.uint64]

# The last step of the SplitMix64 generator (Steele, Lea and Flood 2014), its numbers from memory.
_FIRST, _SECOND = np.uint64(0xBF58476D1CE4E5B9), np.uint64(0x94D049BB133111EB)
_SHIFTS = np.uint64(30), np.uint64(27), np.uint64(31)
_APART = np.uint64(0x9E3779B97F4A7C15)  # odd: its multiples are all different


def mixed(numbers: NDArray[np.int64] | Digests) -> Digests:
    """Each number as 64 bits that look drawn by lot; different numbers stay different."""
    bits = numbers.astype(np.uint64)
    bits ^= bits >> _SHIFTS[0]
    bits *= _FIRST
    bits ^= bits >> _SHIFTS[1]
    bits *= _SECOND
    bits ^= bits >> _SHIFTS[2]
    return bits


def salt(name: str) -> np.uint64:
    """A digest of a name."""
    return np.uint64(int.from_bytes(blake2b(name.encode(), digest_size=8).digest(), "little"))


def salts(name: str, count: int) -> Digests:
    """Different digests for the parts of what has this name."""
    return mixed(salt(name) + _APART * np.arange(1, count + 1, dtype=np.uint64))


def of_runs(parts: Digests, starts: NDArray[np.int64]) -> Digests:
    """One digest for each run of parts, whatever their order.

    Args:
        parts: Digests of the parts, which say themselves where in the run they stand; 0 for one that does not count.
        starts: Index of the first part of each run, rising, the first 0.
    """
    return mixed(np.add.reduceat(parts, starts)) if len(starts) else np.zeros(0, np.uint64)
