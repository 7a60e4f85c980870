"""A style: what was learned of how somebody joins notes, and what it says of a tune.

Three forests speak one after the other, each told what the one before says: the first knows the tune only; the second
sees what is joined in the marked bars; the third sees what the second says of the places beside and of those that are
alike. What is said of a place is the mean of the last two.
"""

from __future__ import annotations

import io
import json
import zipfile
from collections.abc import Collection, Mapping
from dataclasses import replace
from functools import cache
from importlib.resources import files
from operator import index
from typing import Any

import numpy as np
from immutabledict import immutabledict
from numpy.typing import NDArray

from core.bowing import Bowing
from core.errors import UnreadableFileError
from core.once import once
from core.style import counts
from core.style import numbers as measures
from core.style.contexts import digests
from core.style.counts import Counts, keys
from core.style.digests import Digests
from core.style.evidence import (
    MARKED_WIDTH,
    NEIGHBOURS_WIDTH,
    Likeness,
    Numbers,
    from_marked,
    from_neighbours,
)
from core.style.forest import Forest
from core.style.habits import Habit
from core.style.numbers import measure
from core.style.places import Places, places
from core.translation import tr
from core.tune import Tune
from core.values import dataclass

FORMAT = "bowbench-style/2"
ALONE = measures.WIDTH + counts.WIDTH
WIDTHS = {  # by stage: columns of its rows
    "alone": ALONE,
    "beside_marked": ALONE + MARKED_WIDTH,
    "beside_all": ALONE + MARKED_WIDTH + NEIGHBOURS_WIDTH,
}
LARGEST_FILE = 50_000_000  # bytes, unpacked
LARGEST_NUMBER = 2**31 - 1  # of lessons, places or bars
LONGEST_FORMAT = 40  # characters that are quoted of another one
MOST_ODDS = 500.0  # log-odds of which probabilities can still be told; learned ones are below 50


@dataclass(frozen=True)
class Figures:
    """What a style was learned from.

    Attributes:
        lessons: Bowings.
        places: Notes of them that could be joined.
        joined: And were.
    """

    lessons: int
    places: int
    joined: int


@dataclass(frozen=True)
class Style:
    """What was learned.

    Attributes:
        name: Shown to the user.
        notice: Where the lessons come from and under what terms; may be empty.
        figures: What it was learned from.
        habits: What was found there, in words; none where nothing differs from the rest.
        counts: How often notes were joined in each context.
        forests: For each of ``WIDTHS`` its forests, which speak together.
    """

    name: str
    notice: str
    figures: Figures
    habits: tuple[Habit, ...]
    counts: Counts
    forests: tuple[tuple[Forest, ...], ...]


@dataclass(frozen=True)
class Facts:
    """What a style reads of a tune, whatever is marked in it.

    Attributes:
        found: Its places.
        measures: Rows of ``core.style.numbers``.
        keys: Rows of ``core.style.counts.keys``.
        likeness: Which places are alike.
        bars: Index of each place's bar in ``Tune.bars``.
    """

    found: Places
    measures: NDArray[np.float32]
    keys: Digests
    likeness: Likeness
    bars: NDArray[np.int64]


@once
def facts(tune: Tune) -> Facts:
    """Read a tune."""
    found = places(tune)
    digested = digests(found)
    return Facts(found, measure(found, tune.dance), keys(digested, tune.dance), Likeness(digested), found.note.bar)


def marks_of(read: Facts, bowing: Bowing, marked: Collection[int]) -> Numbers:
    """For each place 1 if it is joined, 0 if not, and not a number outside the marked bars (``Tune.bars`` indexes)."""
    joined = np.array([note_id in bowing.joins for note_id in read.found.ids], np.float64)
    return np.where(np.isin(read.bars, list(marked)), joined, np.nan)


def say(style: Style, read: Facts, joined: Numbers) -> Numbers:
    """Log-odds for every place of a tune that it is joined.

    Args:
        style: The style.
        read: The tune.
        joined: 1 or 0 where known, else not a number.
    """
    if not len(read.found):
        return np.zeros(0)
    alone, beside_marked, beside_all = style.forests
    rows = np.hstack([read.measures, style.counts.measures(read.keys)])
    guess = chance(_mean(alone, rows))
    rows = np.hstack([rows, from_marked(read.likeness, joined, guess)])
    second = _mean(beside_marked, rows)
    rows = np.hstack([rows, from_neighbours(read.likeness, joined, chance(second), read.bars)])
    return (second + _mean(beside_all, rows)) / 2


def _mean(forests: tuple[Forest, ...], rows: NDArray[np.float32]) -> Numbers:
    return np.asarray(np.mean([forest.log_odds(rows) for forest in forests], axis=0))


def chance(log_odds: Numbers) -> Numbers:
    """The probabilities."""
    return np.asarray(1 / (1 + np.exp(-log_odds)))


def log_odds(style: Style, tune: Tune, bowing: Bowing, marked: Collection[int] = ()) -> Mapping[str, float]:
    """What a style says of the notes of a tune.

    Args:
        style: The style.
        tune: The tune.
        bowing: What is marked in it.
        marked: Indexes in ``Tune.bars`` of the bars whose slurs are as the player wants them.
    Returns:
        By note id the natural logarithm of (probability of being joined to the note before / of beginning a stroke).
        Notes of equal bars have the same where the bars before are reached alike. Notes that cannot be joined, or of
        which nothing is known, are left out.
    """
    read = facts(tune)
    joined = marks_of(read, bowing, marked)
    said = agreed(read, say(style, read, joined), joined)
    return immutabledict(zip(read.found.ids, said.tolist(), strict=True))


def agreed(read: Facts, said: Numbers, joined: Numbers) -> Numbers:
    """One answer for equal bars: what the marked ones say, else the mean of all that is said.

    Where marked ones contradict one another, it lies between their share and what is said. The first note of a bar is
    told apart by the step into it.
    """
    known = ~np.isnan(joined)
    exact = read.likeness.groups[0]
    if not len(exact):
        return said
    means, seen, yes = (
        np.bincount(exact, values)[exact] for values in (said, known, np.where(known, joined, 0.0))
    )  # fmt: skip
    means /= np.bincount(exact)[exact]
    shares = np.log((yes + 0.5) / (seen - yes + 0.5))
    told = np.where(yes == seen, JOINED_AGAIN, np.where(yes == 0, APART_AGAIN, (means + shares) / 2))
    return np.where(seen > 0, told, means)


# Log-odds where the marked bars that are equal agree: in the book of 1883, given four bars or a section, 94 % of 1,071
# notes joined there were joined again, and 99 % of 4,636 that were not were not
JOINED_AGAIN, APART_AGAIN = 2.75, -4.6


def to_bytes(style: Style) -> bytes:
    """The style as a file: arrays of numbers and a text (NumPy's ``.npz``, nothing that runs)."""
    about: dict[str, object] = {
        "format": FORMAT,
        "name": style.name,
        "notice": style.notice,
        "figures": style.figures.__dict__,
        "habits": [[one.figure, one.joined, one.seen, one.where] for one in style.habits],
    }
    about |= {"share": style.counts.share, "stages": [len(forests) for forests in style.forests]}
    arrays: dict[str, NDArray[Any]] = {
        "about": np.frombuffer(json.dumps(about).encode(), np.uint8),
        "keys": style.counts.keys, "joined": style.counts.joined, "seen": style.counts.seen,
    }  # fmt: skip
    for stage, forests in zip(WIDTHS, style.forests, strict=True):
        for number, forest in enumerate(forests):
            arrays |= {f"{stage}.{number}.{name}": array for name, array in forest.arrays().items()}
    file = io.BytesIO()
    np.savez_compressed(file, allow_pickle=False, **arrays)
    return file.getvalue()


def from_bytes(data: bytes) -> Style:
    """Read what ``to_bytes`` wrote.

    Raises:
        UnreadableFileError: it is no style, or not one of this format.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            if sum(entry.file_size for entry in archive.infolist()) > LARGEST_FILE:
                raise UnreadableFileError(tr("This is no style: it is far too large."))
        with np.load(io.BytesIO(data), allow_pickle=False) as arrays:
            about = json.loads(arrays["about"].tobytes())
            if about["format"] != FORMAT:
                found = str(about["format"])[:LONGEST_FORMAT]
                raise UnreadableFileError(
                    tr(
                        "A style of the form {ours} was expected, not {found}: learn it again from the shelf.",
                        ours=FORMAT,
                        found=found,
                    )
                )
            return Style(
                _text(about["name"]),
                _text(about["notice"]),
                _figures(**about["figures"]),
                tuple(_habit(*row) for row in about.get("habits", ())),
                _counts(arrays, float(about["share"])),
                tuple(
                    _stage(arrays, stage, width, count)
                    for (stage, width), count in zip(WIDTHS.items(), about["stages"], strict=True)
                ),
            )
    except UnreadableFileError:
        raise
    except Exception as error:  # what archives, arrays and JSON raise over bytes that are none is of a dozen kinds
        raise UnreadableFileError(tr("This is no style: one saved by this program was expected.")) from error


def _text(said: str) -> str:
    said.encode()  # half characters can be neither printed nor shown
    return said


def _number(said: int, most: int = LARGEST_NUMBER) -> int:
    if not 0 <= index(said) <= most:
        raise ValueError("a number from 0 on was expected")
    return said


def _figures(lessons: int, places: int, joined: int) -> Figures:
    return Figures(_number(lessons), _number(places), _number(joined, places))


def _habit(figure: list[str], joined: int, seen: int, where: list[list[Any]]) -> Habit:
    if not _number(seen):
        raise ValueError("a habit was never seen")
    cases = tuple((_text(title), _number(bar)) for title, bar in where)
    return Habit(tuple(map(_text, figure)), _number(joined, seen), seen, cases)


def _counts(arrays: Mapping[str, NDArray[Any]], share: float) -> Counts:
    counted = Counts(arrays["keys"], arrays["joined"], arrays["seen"], share)
    keys, joined, seen = counted.keys, counted.joined, counted.seen
    if (keys.dtype.kind, joined.dtype.kind, seen.dtype.kind, keys.ndim) != ("u", "i", "i", 1):
        raise ValueError("counts are made of other numbers")
    if not keys.shape == joined.shape == seen.shape or not (keys[1:] > keys[:-1]).all():
        raise ValueError("counts list their keys differently")
    if not ((joined >= 0) & (joined <= seen)).all() or not 0 <= share <= 1:
        raise ValueError("more cases are joined than were seen")
    return counted


def _stage(arrays: Mapping[str, NDArray[Any]], stage: str, width: int, count: int) -> tuple[Forest, ...]:
    if count < 1:
        raise ValueError(f"nothing speaks {stage}")
    return tuple(_forest(arrays, f"{stage}.{number}.", width) for number in range(count))


def _forest(arrays: Mapping[str, NDArray[Any]], prefix: str, width: int) -> Forest:
    forest = Forest(**{name: arrays[prefix + name] for name in Forest.__dataclass_fields__})
    forest.refuse_faults(width)
    if not np.abs(forest.value).max(axis=1).sum() <= MOST_ODDS:
        raise ValueError("a forest is surer than anybody can be")
    return forest


@cache
def book_of_1883() -> Style:
    """The style that comes with the program; what it was learned from is told in its notice and beside it."""
    return from_bytes((files("resources") / "styles" / "book_of_1883.npz").read_bytes())


def renamed(style: Style, name: str) -> Style:
    """The same under another name."""
    return replace(style, name=name)
