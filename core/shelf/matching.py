"""Which tune of a file is which of those that the catalogue knows, after the file was edited.

The surest likeness goes first: what is played and the title and the number in the book, then less and less of that,
down to the title alone. So a tune keeps what the teacher said of it when it is bowed, given another title, moved within
its book, or mended in a note; a tune that changes title and notes at once is a new one.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Callable, Hashable, Sequence

from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Likeness:
    """What of a tune is compared; see ``core.shelf.facts.Facts``.

    Attributes:
        title: As ``core.shelf.folding.sort_key`` makes it plain.
    """

    content: bytes
    title: str
    number: int


# From the surest; None where the likeness says nothing
MEASURES: tuple[Callable[[Likeness], Hashable | None], ...] = (
    lambda one: one,
    lambda one: (one.content, one.title),
    lambda one: one.content,
    lambda one: (one.title, one.number) if one.title else None,
    lambda one: one.title or None,
)


def pair(tunes: Sequence[Likeness], known: Sequence[Likeness]) -> dict[int, int]:
    """Pair the tunes of a file with those known of it.

    Args:
        tunes: As they now stand in the file.
        known: Of several equal ones, the first is taken first.
    Returns:
        Index in ``known`` by index in ``tunes``; tunes without a partner are not listed.
    """
    pairs: dict[int, int] = {}
    free = set(range(len(known)))
    for measure in MEASURES:
        waiting: defaultdict[Hashable, deque[int]] = defaultdict(deque)
        for index in sorted(free):
            waiting[measure(known[index])].append(index)
        for index, tune in enumerate(tunes):
            key = measure(tune)
            if index not in pairs and key is not None and waiting.get(key):
                pairs[index] = waiting[key].popleft()
                free.remove(pairs[index])
    return pairs
