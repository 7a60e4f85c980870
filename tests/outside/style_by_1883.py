"""A style learned from the fiddle book of 1883, measured on tunes of the book that it was not learned from.

``python -m tests.outside.style_by_1883 measure [FILE]`` learns from four fifths of the tunes with at least ten slurs
and carries on in the last fifth, five times over, given the first four bars, the first section, or nothing; prints the
figures beside the baselines; and keeps what was said in FILE (``.npz``) for the next ones.
``... decoded FILE`` puts what was said through the planner and counts what comes round, and what is missed and broken.
``... unused`` learns from all of them and writes out 20 other tunes, as printed and as proposed.
``... write OUT.npz`` writes the style that comes with the program.

A joined pair is two notes next to each other in one stroke. Behind the word "segue" nothing is counted: slurs are left
to the player there. A tune's notes are counted where they can be joined: not behind a rest, not across a repeat.
"""

from __future__ import annotations

import sys
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import cache
from multiprocessing import get_context
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from core.bowing import Bowing
from core.style.learning import Example, example, first_bars, first_section, learn, marked_only, nothing
from core.style.style import Style, chance, say, to_bytes
from core.tune import Tune
from tests.outside.book_of_1883 import all_tunes

FEWEST_SLURS = 10
UNUSED_SLURS, UNUSED = (8, 9), 20
FOLDS = 5
WORKERS = 2
VIEWS: dict[str, Callable[[Example], NDArray[np.bool_]]] = {
    "four bars": first_bars, "first section": first_section, "nothing": nothing,
}  # fmt: skip
THRESHOLD = 0.42  # of probability: joined from here on; about half the F1 that is reached
NAME = "Fiddle book of 1883"
NOTICE = """Learned from the slurs of an 1883 collection of fiddle tunes, in the public domain by age, in the ABC \
transcription by John Chambers and others that comes with music21 (corpus folder ryansMammoth; see music21's \
corpus/license.txt). Only counts and decision trees are kept, no tune."""

Said = dict[str, dict[str, NDArray[np.float64]]]  # by view, by tune: a probability for each place


def slurs(tune: Tune, bowing: Bowing) -> int:
    """How many slurs are printed."""
    count, inside = 0, False
    for note in tune.sequence:
        joined = note.id in bowing.joins
        count += joined and not inside
        inside = joined or (note.held and inside)
    return count


@cache
def examples() -> dict[str, Example]:
    """The tunes with enough slurs, by name."""
    return {name: example(*each) for name, each in all_tunes().items() if slurs(*each) >= FEWEST_SLURS}


def fold_of() -> dict[str, int]:
    """Which part of the tunes each belongs to."""
    names = sorted(examples())
    return dict(zip(names, (np.random.default_rng(0).permutation(len(names)) % FOLDS).tolist(), strict=True))


def say_of_fold(fold: int) -> Said:
    """Learn from the other folds and say what follows in this one."""
    parts = fold_of()
    style = learn([one for name, one in examples().items() if parts[name] != fold], NAME)
    own = {name: one for name, one in examples().items() if parts[name] == fold}
    return {
        title: {name: chance(say(style, one.read, marked_only(one, view(one)))) for name, one in own.items()}
        for title, view in VIEWS.items()
    }


def say_of_all(folds: Sequence[int] = tuple(range(FOLDS))) -> Said:
    """The same of every tune."""
    said: Said = {title: {} for title in VIEWS}
    with ProcessPoolExecutor(WORKERS, get_context("spawn")) as pool:
        for part in pool.map(say_of_fold, folds):
            for title, tunes in part.items():
                said[title] |= tunes
    return said


def pooled(title: str, said: dict[str, NDArray[np.float64]]) -> tuple[NDArray[np.bool_], ...]:
    """What counts of all tunes: (joined in print, probability, inside a tuplet)."""
    columns: list[list[NDArray[np.float64]]] = [[], [], []]
    for name, probabilities in said.items():
        one = examples()[name]
        asked = ~np.isnan(one.joined) & ~VIEWS[title](one)
        tuplet = np.array([place.inside_tuplet for place in one.read.found])
        for column, values in zip(columns, (one.joined, probabilities, tuplet), strict=True):
            column.append(values[asked])
    joined, probabilities, tuplet = (np.concatenate(column) for column in columns)
    return joined > 0, probabilities, tuplet


def scores(joined: NDArray[np.bool_], proposed: NDArray[np.bool_]) -> tuple[float, float, float]:
    """Precision, recall, F1."""
    right = float((joined & proposed).sum())
    precision, recall = right / max(proposed.sum(), 1), right / max(joined.sum(), 1)
    return precision, recall, 2 * right / max(proposed.sum() + joined.sum(), 1)


def recall_when_sure(joined: NDArray[np.bool_], chances: NDArray[np.float64], precision: float) -> tuple[float, float]:
    """The highest recall at this precision or better, and the probability from which it is reached."""
    order = np.argsort(-chances, kind="stable")
    right = np.cumsum(joined[order])
    reached = np.flatnonzero(right / np.arange(1, len(order) + 1) >= precision)
    return (right[reached[-1]] / joined.sum(), chances[order][reached[-1]]) if len(reached) else (0.0, 1.0)


def baselines(title: str) -> Iterator[tuple[str, dict[str, NDArray[np.float64]]]]:
    """What simpler ways would say."""
    parts, everything = fold_of(), examples()
    yield "all separate", {name: np.zeros(len(one.joined)) for name, one in everything.items()}
    tables: list[dict[object, list[float]]] = [defaultdict(lambda: [0.0, 0.0]) for _ in range(FOLDS)]
    keys = {
        name: [(one.tune.dance, place.bar.full, place.note.at) for place in one.read.found]
        for name, one in everything.items()
    }
    for name, one in everything.items():
        for key, joined in zip(keys[name], one.joined, strict=True):
            for fold in range(FOLDS):
                if fold != parts[name] and not np.isnan(joined):
                    tables[fold][key][0] += joined
                    tables[fold][key][1] += 1
    yield (
        "commonest by place in the bar",
        {
            name: np.array([float(2 * tables[parts[name]][key][0] > tables[parts[name]][key][1]) for key in keys[name]])
            for name in everything
        },
    )
    yield "copy equal bars", {name: _copied(one, VIEWS[title](one)) for name, one in everything.items()}


def _copied(one: Example, marked: NDArray[np.bool_]) -> NDArray[np.float64]:
    joined = marked_only(one, marked)
    known = ~np.isnan(joined)
    exact = one.read.likeness.equal[:, :, 0]
    return np.asarray(2 * (exact @ np.where(known, joined, 0.0)) > exact @ known.astype(float)).astype(float)


def report(title: str, way: str, said: dict[str, NDArray[np.float64]]) -> None:
    """Print a line of figures."""
    joined, chances, tuplet = pooled(title, said)
    precision, recall, f1 = scores(joined, chances >= THRESHOLD)
    *_, without = scores(joined[~tuplet], chances[~tuplet] >= THRESHOLD)
    sure, from_chance = recall_when_sure(joined, chances, 0.9)
    print(
        f"{title:14} {way:30} precision {precision:.3f} recall {recall:.3f} F1 {f1:.3f}, without tuplets {without:.3f};"
        f" precision 0.9 at recall {sure:.3f} from {from_chance:.2f}   ({joined.sum()} of {len(joined)} joined)"
    )


def measure(file: Path | None) -> None:
    """Print the figures of all views."""
    said = say_of_all()
    if file:
        np.savez(file, **{f"{title}/{name}": each for title, tunes in said.items() for name, each in tunes.items()})
    for title in VIEWS:
        for way, simple in baselines(title):
            report(title, way, simple)
        report(title, "a style", said[title])


def learned_from_all() -> Style:
    """The style that comes with the program."""
    return learn(list(examples().values()), NAME, NOTICE)


def main(arguments: list[str]) -> None:
    """Do what is asked for."""
    match arguments:
        case ["measure"]:
            measure(None)
        case ["measure", file]:
            measure(Path(file))
        case ["write", out]:
            Path(out).write_bytes(to_bytes(learned_from_all()))
        case _:
            print(__doc__)


if __name__ == "__main__":
    main(sys.argv[1:])
