"""What the runs over all 4,248 tunes by hand share: which tunes, how far they are, what was counted.

    [FOLDER ...] [--first N] [--count M]

Tunes are counted from 1 in the order of ``abc_collections.sources``. After every hundred a line tells what was counted
since the first; a run that was ended goes on with the next ``--first``, and its counts are added to those of the last
line that stands.
"""

from __future__ import annotations

import argparse
from collections import Counter
from collections.abc import Callable, Iterable

from tests.outside.abc_collections import FOLDERS, Source, sources

TOLD_EVERY = 100  # tunes


def run(what: str, examine: Callable[[Source], Iterable[tuple[str, str]]]) -> None:
    """Examine tunes and print what is found.

    Args:
        what: One sentence, for ``--help``.
        examine: Gives what is to be counted of a tune, each with a sentence that is printed where it is not empty.
    """
    parser = argparse.ArgumentParser(description=what)
    parser.add_argument("folders", nargs="*", default=FOLDERS, metavar="FOLDER")
    parser.add_argument("--first", type=int, default=1, metavar="N")
    parser.add_argument("--count", type=int, metavar="M")
    options = parser.parse_args()
    found = sources(*options.folders)
    last = min(len(found), options.first + options.count - 1) if options.count else len(found)
    counts: Counter[str] = Counter()
    for number in range(options.first, last + 1):
        source = found[number - 1]
        for name, told in examine(source):
            counts[name] += 1
            if told:
                print(f"{number} {source.place}: {told}", flush=True)
        if number % TOLD_EVERY == 0 or number == last:
            said = "; ".join(f"{count} {name}" for name, count in counts.most_common())
            print(f"tunes {options.first} to {number}: {said}", flush=True)
