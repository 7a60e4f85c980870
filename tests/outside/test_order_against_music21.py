"""The playing order beside music21's repeat expander, on the tunes of the 1883 book that have endings or jumps.

Both start from the bars as our reader gives them, so that only the order is compared. Left out, as named classes:

- endings together with a D.C. or D.S. (26 tunes): music21 then plays both endings on every pass;
- a first ending that no marked second follows (2 tunes): music21 does not repeat there;
- more than one jump (1 tune): music21 takes the last only;
- what music21 calls not expandable (7 of the tunes asked).
"""

from __future__ import annotations

import pytest
from music21 import bar as m21bar
from music21 import note, repeat, spanner, stream

from core.order import playing_order
from core.tune import Bar, Jump, Tune
from tests.outside.book_of_1883 import all_tunes

JUMPS = {
    Jump.DA_CAPO: repeat.DaCapo,
    Jump.DA_CAPO_AL_FINE: repeat.DaCapoAlFine,
    Jump.DAL_SEGNO: repeat.DalSegno,
    Jump.DAL_SEGNO_AL_FINE: repeat.DalSegnoAlFine,
}


def test_music21_plays_the_bars_in_the_same_order() -> None:
    compared = {"endings": 0, "jump": 0}
    for name, (tune, _) in all_tunes().items():
        endings = any(bar.ending for bar in tune.bars)
        jumps = sum(bar.jump is not None for bar in tune.bars)
        if endings == bool(jumps) or jumps > 1 or _has_a_lone_ending(tune):
            continue
        theirs = played_by_music21(tune)
        if theirs is not None:
            assert [visit.bar for visit in playing_order(tune)] == theirs, name
            compared["endings" if endings else "jump"] += 1
    assert compared["endings"] > 50, compared
    assert compared["jump"] > 65, compared


@pytest.mark.parametrize(
    ("fields", "expected"),
    [
        ([{"fine": True}, {"jump": Jump.DA_CAPO_AL_FINE}], [0, 1, 0]),
        ([{}, {"segno": True}, {"fine": True}, {"jump": Jump.DAL_SEGNO_AL_FINE}], [0, 1, 2, 3, 1, 2]),
        ([{"opens_repeat": True, "repeats": 3}, {}], [0, 0, 0, 1]),
        ([{}, {"ending": (1, 2), "repeats": 3}, {"ending": (3,)}, {}], [0, 1, 0, 1, 0, 2, 3]),
    ],
)
def test_signs_that_the_book_does_not_have(fields: list[dict[str, object]], expected: list[int]) -> None:
    bars = tuple(Bar(number, (), **signs) for number, signs in enumerate(fields, 1))  # type: ignore[arg-type]
    tune = Tune("", bars)
    assert [visit.bar for visit in playing_order(tune)] == expected == played_by_music21(tune)


def played_by_music21(tune: Tune) -> list[int] | None:
    """Bar indexes in the order in which music21 plays them; None where it does not."""
    part = stream.Part()
    measures: list[stream.Measure] = []
    back, opened = 0, False
    for index, bar in enumerate(tune.bars):
        measure = _measure(index, bar)
        part.append(measure)
        measures.append(measure)
        opened = opened or bar.opens_repeat
        if bar.repeats and not opened and back and min(bar.ending, default=1) == 1:
            measures[back].leftBarline = m21bar.Repeat(direction="start")  # ABC 2.1, 4.8, which music21 does not know
        last_ending = bar.ending and not (index + 1 < len(tune.bars) and tune.bars[index + 1].ending)
        if bar.repeats or last_ending or (bar.ends_section and not opened):
            back, opened = index + 1, False
    for numbers, first, stop in _brackets(tune):
        part.insert(0, spanner.RepeatBracket(measures[first:stop], number=",".join(map(str, numbers))))
    expander = repeat.Expander(part)
    if not expander.isExpandable():
        return None
    return [int(measure.notes[0].lyric) for measure in expander.process().getElementsByClass(stream.Measure)]


def _measure(index: int, bar: Bar) -> stream.Measure:
    measure = stream.Measure(number=index + 1)
    sound = note.Note("C4", quarterLength=1)
    sound.lyric = str(index)  # measures are numbered anew when they are expanded
    measure.append(sound)
    if bar.opens_repeat:
        measure.leftBarline = m21bar.Repeat(direction="start")
    if bar.repeats:
        measure.rightBarline = m21bar.Repeat(direction="end", times=bar.repeats if bar.repeats > 2 else None)
    if bar.segno:
        measure.insert(0, repeat.Segno())
    if bar.fine:
        measure.append(repeat.Fine())
    if bar.jump:
        measure.append(JUMPS[bar.jump]())
    return measure


def _brackets(tune: Tune) -> list[tuple[tuple[int, ...], int, int]]:
    brackets: list[tuple[tuple[int, ...], int, int]] = []
    for index, bar in enumerate(tune.bars):
        if bar.ending and brackets and brackets[-1][0] == bar.ending and brackets[-1][2] == index:
            brackets[-1] = (bar.ending, brackets[-1][1], index + 1)
        elif bar.ending:
            brackets.append((bar.ending, index, index + 1))
    return brackets


def _has_a_lone_ending(tune: Tune) -> bool:
    brackets = _brackets(tune)
    firsts, stops = {first for _, first, _ in brackets}, {stop for _, _, stop in brackets}
    return any(stop not in firsts and first not in stops for _, first, stop in brackets)
