"""How one printed bow mark of the fiddle book of 1883 follows from another by our rules, counted.

``python -m tests.outside.printed_marks_of_1883`` prints every count beside the published one, and of each class of
disagreement an example.

A pair is a printed mark and the next one in the same strain. The strain is played from the first mark on, without any
other; the pair agrees if the strokes reach the second mark as printed. A mark that disagrees is a printed retake or a
hook, not an error (rule B4).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import Enum
from fractions import Fraction
from functools import cache
from itertools import pairwise

from immutabledict import immutabledict

from core.bowing import Bow, Bowing
from core.order import Visit, sections
from core.strokes import work_out
from core.tune import Bar, Note, Tune
from core.written_bows import starts_stroke
from tests.outside.book_of_1883 import all_tunes

SAME_DANCE = {"slipjig": "slip jig", "fling": "highland fling"}
SEGUE = "segue"  # "and so on": slurs after it are left to the player
DOTTED = 3  # a dotted note beside the short one that fills up its beat

# Share of pairs that agree. The first count fits tunes without the word "segue", the second pairs without it between
# them; how either was made is not told more closely.
WITHOUT_SEGUE = {"all": (853, 1082), "strathspey": 0.97, "jig": 0.90, "reel": 0.77, "hornpipe": 0.70}
PLAIN = {
    "all": 0.815, "slip jig": 1.0, "clog": 1.0, "jig": 0.915, "strathspey": 0.899, "reel": 0.772, "hornpipe": 0.695,
}  # fmt: skip
PLAIN_PAIRS = 1476
BARS_THAT_BEGIN_DOWN = (9211, 12194)
BY_EYE = {"after a longer note": (11, 15), "hooked": (2, 15)}  # disagreements read in print


class Between(Enum):
    """What stands between the two marks, the first that holds."""

    REST = "a rest"
    SEGUE = 'the word "segue"'
    INSIDE = "nothing, but one of them stands inside a slur"
    NOTHING = "nothing"


class Why(Enum):
    """What may make the second mark a retake or a hook, the first that holds."""

    INSIDE = "a mark inside a slur"
    HOOKED = "the two marks are on a dotted pair"
    AFTER_LONGER = "the second mark comes after the longest note between"
    LONGER_BETWEEN = "a longer note stands elsewhere between"
    EQUAL = "equal notes only"


@dataclass(frozen=True, slots=True)
class Pair:
    """A printed mark and the next one.

    Attributes:
        name: The file.
        dance: As its ``R:`` says.
        bars: Printed numbers of their bars.
        between: What stands between.
        segue: The word stands somewhere in the tune.
        agrees: The strokes from the first reach the second as printed.
        lengths: Quarter notes of each stroke from the first mark to the one before the second, and of the second
            note.
        on_beat: The second stands on a beat.
    """

    name: str
    dance: str
    bars: tuple[int, int]
    between: Between
    segue: bool
    agrees: bool
    lengths: tuple[Fraction, ...]
    on_beat: bool

    @property
    def why(self) -> Why:
        """What may make the second mark a retake or a hook."""
        *strokes, note = self.lengths
        if self.between is Between.INSIDE:
            return Why.INSIDE
        if len(strokes) == 1 and strokes[0] == DOTTED * note and not self.on_beat:
            return Why.HOOKED
        if strokes[-1] == max(strokes) > min(self.lengths):
            return Why.AFTER_LONGER
        return Why.LONGER_BETWEEN if max(strokes) > min(strokes) else Why.EQUAL


@cache
def pairs() -> tuple[Pair, ...]:
    """Every pair of the book."""
    return tuple(
        pair for name, (tune, bowing) in all_tunes().items() for strain in sections(tune)
        for pair in _pairs_in(name, tune, bowing, strain)
    )  # fmt: skip


def without_segue() -> list[Pair]:
    """Pairs with no rest between, of tunes that do not say "segue"."""
    return [pair for pair in pairs() if not pair.segue and pair.between is not Between.REST]


def plain() -> list[Pair]:
    """Pairs with neither a rest nor the word "segue" between them, both marks on the first note of a stroke."""
    return [pair for pair in pairs() if pair.between is Between.NOTHING]


def by_dance(counted: Iterable[Pair]) -> dict[str, tuple[int, int]]:
    """Pairs that agree and all pairs, for each dance and for all."""
    agree: Counter[str] = Counter()
    count: Counter[str] = Counter()
    for pair in counted:
        for dance in ("all", pair.dance):
            agree[dance] += pair.agrees
            count[dance] += 1
    return {dance: (agree[dance], count[dance]) for dance in count}


def beginnings() -> Iterator[tuple[Tune, list[bool]]]:
    """Each tune with a marked pick-up, and whether its bars begin down by all printed marks, in written order.

    The first pick-up is left out, and so are those that a repeat opens behind another repeat; other pick-ups inside
    the tune count as bars, which gives the published number of bars to the bar.
    """
    for tune, bowing in all_tunes().values():
        first = tune.bars[0]
        if has_pickup(tune) and first.notes[0].id in bowing.marks:
            bows = work_out(tune, bowing, tuple(Visit(bar, 1) for bar in range(len(tune.bars)))).bows
            yield (
                tune,
                [
                    bows[next(note.id for note in bar.notes if not note.is_rest)][0] is Bow.DOWN
                    for before, bar in pairwise(tune.bars)
                    if not (bar.is_pickup and bar.opens_repeat and before.repeats)
                    and not all(note.is_rest for note in bar.notes)
                ],
            )


def has_pickup(tune: Tune) -> bool:
    """A first bar shorter than three quarters of the metre and without rests."""
    bar = tune.bars[0]
    full = bar.meter.bar_length
    return full is not None and bar.length < Fraction(3, 4) * full and not any(note.is_rest for note in bar.notes)


def _pairs_in(name: str, tune: Tune, bowing: Bowing, strain: range) -> Iterator[Pair]:
    notes = [(tune.bars[bar], note) for bar in strain for note in tune.bars[bar].notes]
    marked = [place for place, (_, note) in enumerate(notes) if note.id in bowing.marks]
    order = tuple(Visit(bar, 1) for bar in strain)
    dance = SAME_DANCE.get(tune.dance, tune.dance)
    for first, second in pairwise(marked):
        (bar, note), (other_bar, other) = notes[first], notes[second]
        alone = replace(bowing, marks=immutabledict({note.id: bowing.marks[note.id]}))
        between = notes[first : second + 1]
        yield Pair(
            name, dance, (bar.number, other_bar.number),
            _between(tune, bowing, between),
            any(SEGUE in words.text.lower() for each in tune.bars for words in each.words),
            work_out(tune, alone, order).bows[other.id][0] is bowing.marks[other.id].bow,
            (*_lengths(bowing, [each for _, each in between[:-1]]), other.length),
            (other_bar.start + other.at) % other_bar.meter.beat_length == 0,
        )  # fmt: skip


def _between(tune: Tune, bowing: Bowing, notes: list[tuple[Bar, Note]]) -> Between:
    (bar, first), (other_bar, second) = notes[0], notes[-1]
    if any(note.is_rest for _, note in notes):
        return Between.REST
    for each in tune.bars[tune.bar_of[first.id] : tune.bar_of[second.id] + 1]:
        for words in each.words:
            behind = each is not bar or words.at >= first.at
            before = each is not other_bar or words.at <= second.at
            if SEGUE in words.text.lower() and behind and before:
                return Between.SEGUE
    both_start = starts_stroke(bowing, first) and starts_stroke(bowing, second)
    return Between.NOTHING if both_start else Between.INSIDE


def _lengths(bowing: Bowing, notes: list[Note]) -> list[Fraction]:
    """Lengths of strokes; the first note begins one, whatever it is."""
    lengths = [Fraction(0)]
    for place, note in enumerate(notes):
        if place and starts_stroke(bowing, note):
            lengths.append(Fraction(0))
        lengths[-1] += note.length
    return lengths


def main() -> None:
    """Print every count."""
    for title, counted, published in (
        ('tunes without the word "segue"', without_segue(), WITHOUT_SEGUE), ("plain pairs", plain(), PLAIN),
    ):  # fmt: skip
        print(f"Marks reached from the mark before, {title}:")
        for dance, (agree, count) in sorted(by_dance(counted).items(), key=lambda item: -item[1][1]):
            found = published.get(dance)
            share = f"{100 * (found[0] / found[1] if isinstance(found, tuple) else found):.1f} %" if found else "-"
            print(f"  {dance or 'no dance named':15} {agree:5} of {count:5} {100 * agree / count:6.1f} %   was {share}")
    print("What these look like:                                     disagree   agree")
    for why in Why:
        alike = [pair for pair in without_segue() if pair.why is why]
        against = [pair for pair in alike if not pair.agrees]
        one = f"{against[0].name}, bars {against[0].bars[0]} and {against[0].bars[1]}"
        print(f"  {why.value:55} {len(against):8} {len(alike) - len(against):7}   {one}")
    print("Pairs by what stands between:")
    for between, count in Counter(pair.between for pair in pairs()).most_common():
        one = next(pair for pair in pairs() if pair.between is between)
        print(f"  {count:5} {between.value} ({one.name}, bars {one.bars[0]} and {one.bars[1]})")
    tunes = [begins for _, begins in beginnings()]
    down, bars = sum(map(sum, tunes)), sum(map(len, tunes))
    before, of = BARS_THAT_BEGIN_DOWN
    print(f"Bars that begin down: {down} of {bars}, was {before} of {of};", end=" ")
    print(f"all bars of {sum(map(all, tunes))} of {len(tunes)} tunes, was 105 of 738 (not explained)")


if __name__ == "__main__":
    main()
