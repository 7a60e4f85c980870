"""A style learned from the fiddle book of 1883, measured on tunes of the book that it was not learned from.

``python -m tests.outside.style_by_1883 measure [FILE]`` learns from four fifths of the tunes with at least ten slurs,
and from all with five to nine, and carries on in the last fifth, five times over, given the first four bars, the first
section, or nothing; prints the figures beside the baselines; and keeps what was said in FILE (``.npz``) for the others.
``... fold N FILE`` does one of the five times only; ``... figures FILE...`` prints the figures of such files.
``... decoded EVERY FILE...`` puts what was said of each EVERY-th tune through the planner and counts what comes round,
and what is missed and broken.
``... unused STYLE`` writes out 20 tunes of 8 or 9 slurs, as printed and as proposed by a style from all the others.
``... write OUT.npz`` writes the style that comes with the program.

A joined pair is two notes next to each other in one stroke. Behind the word "segue" nothing is counted: slurs are left
to the player there. A tune's notes are counted where they can be joined: not behind a rest, not across a repeat.
"""

from __future__ import annotations

import sys
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import replace
from functools import cache
from itertools import pairwise, product
from multiprocessing import get_context
from pathlib import Path

import numpy as np
from immutabledict import immutabledict
from numpy.typing import NDArray

from core.accent_plan import AccentPlan, PlanKind, plan_of_dance
from core.bowing import Bowing
from core.planner import RefusedPlanError, pose, score
from core.strokes import work_out
from core.style.carry_on import LIKELY, SETTINGS, Proposal, decode
from core.style.learning import Example, example, first_bars, first_section, learn, marked_only, nothing
from core.style.style import Style, agreed, chance, from_bytes, say, to_bytes
from core.tune import Bar, Tune
from tests.outside.book_of_1883 import all_tunes

FEWEST_SLURS = 10  # of tunes that are measured on
FEWEST_TO_LEARN = 5  # of tunes that are learned from
UNUSED_SLURS, UNUSED = (8, 9), 20
FOLDS = 5
WORKERS = 2
VIEWS: dict[str, Callable[[Example], NDArray[np.bool_]]] = {
    "four bars": first_bars, "first section": first_section, "nothing": nothing,
}  # fmt: skip
THRESHOLD = LIKELY  # of probability: joined from here on; from 0.30 to 0.38 F1 is the same within 0.002
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


@cache
def sparse() -> list[Example]:
    """Tunes with fewer slurs, which are learned from only; none of the unused ones."""
    unseen = unused()
    return [
        example(*each)
        for name, each in all_tunes().items()
        if FEWEST_TO_LEARN <= slurs(*each) < FEWEST_SLURS and name not in unseen
    ]


def fold_of() -> dict[str, int]:
    """Which part of the tunes each belongs to."""
    names = sorted(examples())
    return dict(zip(names, (np.random.default_rng(0).permutation(len(names)) % FOLDS).tolist(), strict=True))


def say_of_fold(fold: int) -> Said:
    """Learn from the other folds and say what follows in this one."""
    parts = fold_of()
    style = learn([one for name, one in examples().items() if parts[name] != fold] + sparse(), NAME)
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
        tuplet = one.read.found.inside_tuplet
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
        name: [
            (one.tune.dance, full, at)
            for full, at in zip(one.read.found.bar.full.tolist(), one.read.found.note.at.tolist(), strict=True)
        ]
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
    yield "copy equal bars", {name: copied(one, VIEWS[title](one)) for name, one in everything.items()}


def copied(one: Example, marked: NDArray[np.bool_]) -> NDArray[np.float64]:
    joined = marked_only(one, marked)
    known = ~np.isnan(joined)
    exact = one.read.likeness.groups[0]
    yes, seen = (np.bincount(exact, values)[exact] for values in (np.where(known, joined, 0.0), known))
    return np.asarray(2 * yes > seen).astype(float)


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


def save(file: Path, said: Said) -> None:
    """Keep what was said."""
    np.savez(file, **{f"{title}/{name}": each for title, tunes in said.items() for name, each in tunes.items()})


def load(files: Sequence[str]) -> Said:
    """What was kept, in one or several files."""
    said: Said = {title: {} for title in VIEWS}
    for file in files:
        with np.load(file) as arrays:
            for key in arrays:
                title, name = key.split("/")
                said[title][name] = arrays[key]
    return said


def report_all(said: Said) -> None:
    """Print the figures of all views beside the baselines."""
    for title in VIEWS:
        for way, simple in baselines(title):
            report(title, way, {name: simple[name] for name in said[title]})
        report(title, "a style", said[title])


def measure(file: Path | None) -> None:
    """Learn, say and print."""
    said = say_of_all()
    if file:
        save(file, said)
    report_all(said)


def decoded(said: Said, every: int) -> None:
    """Print what the planner makes of every so many-th tune, without accents and with those of its dance."""
    for title, plan in product(VIEWS, ("none", "of the dance")):
        pairs: list[tuple[bool, bool, float]] = []
        ours: list[tuple[int, int, bool]] = []
        theirs: list[tuple[int, int, bool]] = []
        bars: list[tuple[float, bool]] = []
        refused = 0
        for name in sorted(said[title])[::every]:
            one, (tune, bowing) = examples()[name], all_tunes()[name]
            accents = AccentPlan(PlanKind.NONE) if plan == "none" else plan_of_dance(tune.dance, tune.bars[0].meter)
            printed = replace(bowing, accents=accents)
            try:
                proposal, asked = _proposed(one, printed, VIEWS[title](one), said[title][name])
            except RefusedPlanError:
                refused += 1
                continue
            right: dict[int, bool] = {}
            found = zip(one.read.found.ids, one.read.bars.tolist(), strict=True)
            cases = zip(found, one.joined, asked, said[title][name], strict=True)
            for (note_id, bar), joined, counts, probability in cases:
                if counts:
                    proposed = note_id in proposal.bowing.joins
                    pairs.append((joined > 0, proposed, probability))
                    right[bar] = right.get(bar, True) and proposed == (joined > 0)
            bars += [(proposal.bar_chances[bar], all_right) for bar, all_right in right.items()]
            for bowed, found in ((proposal.bowing, ours), (printed, theirs)):
                problem = pose(tune, printed, SETTINGS, keep=False)
                judged = score(problem, bowed)
                found.append((judged.missed, judged.broken, work_out(tune, bowed).comes_round))
        joined, proposed, chances = (np.array(column) for column in zip(*pairs, strict=True))
        precision, recall, f1 = scores(joined, proposed)
        print(
            f"{title}, accents {plan}: {len(ours)} tunes, {refused} refused; precision {precision:.3f} "
            f"recall {recall:.3f} F1 {f1:.3f} (not decoded {scores(joined, chances >= THRESHOLD)[2]:.3f})"
        )
        for who, found in (("proposed", ours), ("printed", theirs)):
            missed, broken, rounds = (sum(column) for column in zip(*found, strict=True))
            print(f"    {who}: {rounds} of {len(found)} come round, missed {missed}, broken {broken}")
        for low, high in pairwise((0, 0.2, 0.4, 0.6, 0.75, 0.9, 1.01)):  # the words change at 0.4 and 0.75
            inside = [all_right for sure, all_right in bars if low <= sure < high]
            if inside:
                print(f"    bars said to be right with {low} to {min(high, 1)}: {np.mean(inside):.2f} of {len(inside)}")


def _proposed(
    one: Example, printed: Bowing, marked: NDArray[np.bool_], chances: NDArray[np.float64]
) -> tuple[Proposal, NDArray[np.bool_]]:
    """What the planner makes of probabilities, given the bars that the marked places stand in; what counts."""
    given = frozenset(
        index for index in range(len(one.tune.bars))
        if any(marked[one.read.bars == index]) or (marked.any() and index < one.read.bars[marked].min())
    )  # fmt: skip
    ids = {note.id for index in given for note in one.tune.bars[index].notes}
    bowing = replace(
        printed,
        marks=immutabledict({note_id: mark for note_id, mark in printed.marks.items() if note_id in ids}),
        retakes=printed.retakes & ids,
    )
    clipped = np.clip(chances, 1e-6, 1 - 1e-6)
    said = agreed(one.read, np.log(clipped / (1 - clipped)), marked_only(one, marked))
    odds = dict(zip(one.read.found.ids, said.tolist(), strict=True))
    return decode(one.tune, bowing, given, odds), ~np.isnan(one.joined) & ~marked


def unused() -> dict[str, tuple[Tune, Bowing]]:
    """Twenty tunes with a few slurs less than all that is learned and measured from."""
    few = (name for name, each in all_tunes().items() if slurs(*each) in UNUSED_SLURS)
    return {name: all_tunes()[name] for name in sorted(few)[:UNUSED]}


def write_out(style: Style) -> None:
    """Print the unused tunes: below each bar as printed the bar as proposed, where the two differ."""
    for name, (tune, bowing) in unused().items():
        one = example(tune, bowing)
        marked = first_bars(one)
        probabilities = chance(say(style, one.read, marked_only(one, marked)))
        printed = replace(bowing, accents=AccentPlan(PlanKind.NONE))
        proposal, asked = _proposed(one, printed, marked, probabilities)
        ids = {note_id for note_id, counts in zip(one.read.found.ids, asked, strict=True) if counts}
        *_, f1 = scores(
            *(np.array([note_id in each.joins for note_id in ids], np.bool_) for each in (bowing, proposal.bowing))
        )
        print(f"\n{name} ({tune.dance} {tune.bars[0].meter}), F1 {f1:.2f}")
        for index, bar in enumerate(tune.bars):
            lines = [_typed(bar, each) for each in (bowing, proposal.bowing)]
            given = " given" if index in proposal.marked else ""
            print(f"  {bar.number:3} {lines[0]}{given}")
            if lines[1] != lines[0]:
                print(f"      {lines[1]}   <- {proposal.bar_chances.get(index, 1):.2f}")


def _typed(bar: Bar, bowing: Bowing) -> str:
    words = []
    for note in bar.notes:
        joined = "~" if note.id in bowing.joins else "-" if note.held else " "
        pitch = str(note.pitches[-1]) if note.pitches else "z"
        words.append(f"{joined}{pitch}{'³' if note.tuplet else ''}:{note.length}")
    return "".join(words)


def learned_from_all() -> Style:
    """The style that comes with the program."""
    return learn([*examples().values(), *sparse()], NAME, NOTICE)


def main(arguments: list[str]) -> None:
    """Do what is asked for."""
    match arguments:
        case ["measure"]:
            measure(None)
        case ["measure", file]:
            measure(Path(file))
        case ["fold", fold, file]:
            save(Path(file), say_of_fold(int(fold)))
        case ["figures", *files]:
            report_all(load(files))
        case ["decoded", every, *files]:
            decoded(load(files), int(every))
        case ["unused", file]:
            write_out(from_bytes(Path(file).read_bytes()))
        case ["write", out]:
            Path(out).write_bytes(to_bytes(learned_from_all()))
        case _:
            print(__doc__)


if __name__ == "__main__":
    main(sys.argv[1:])
