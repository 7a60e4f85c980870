"""Laws about sets of tunes."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.bowing import Bow, Bowing
from core.order import Visit, playing_order
from core.set_check import SET_RULES, check_set, seam_text
from core.set_orders import orders
from core.strokes import Played, work_out
from core.tune import Bar, Tune
from core.tune_set import Entry, TuneSet, Way, seams
from tests.core.builders import bowed

PICKUPS = ("", "", "A", "zA", "(AB)", "AB", "uA", "vA")
BARS = (
    "A4B4", "A4B2c2", "A8", "(A2B2)c4", "A2(B2c2d2)", "A4B2z2", "z2A2B4", "z8", "vA4B4", "uA4B4",
    "A4vB4", "A4rB4", "rA4B4", "A4=B4", "A2-A2B4",
)  # fmt: skip
SHAPES = ("|{a}|", "|:{a}:|", "|:{a}:|{b}|", "|:{a}|[1{b}:|[2{c}|]", "|:{a}|[1,3{b}:|[2{c}:|")


@st.composite
def tunes_of_a_set(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """Tunes of some plain bars, with pick-ups, repeats, endings, rests anywhere, and marks that hold on one pass."""
    bars = st.lists(st.sampled_from(BARS), min_size=1, max_size=3).map("|".join)
    shape = draw(st.sampled_from(SHAPES))
    text = shape.format(a=draw(bars), b=draw(bars), c=draw(bars))
    tune, bowing = bowed(draw(st.sampled_from(PICKUPS)) + text)
    passes = draw(st.sampled_from((None, None, 1, 2)))
    marks = {note_id: replace(mark, only_pass=passes) for note_id, mark in bowing.marks.items()}
    return tune, replace(bowing, marks=immutabledict(marks))


@st.composite
def sets(draw: st.DrawFn) -> TuneSet:
    """Sets of one to four tunes, each one to three times; the same one may come twice."""
    drawn = draw(st.lists(st.tuples(tunes_of_a_set(), st.integers(1, 3)), min_size=1, max_size=3))
    entries = [Entry(tune, bowing, times) for (tune, bowing), times in drawn]
    return TuneSet(tuple([*entries, entries[0]] if draw(st.booleans()) else entries))


def in_one(tune_set: TuneSet) -> tuple[Tune, Bowing, tuple[Visit, ...], list[tuple[int, int]]]:
    """All tunes written behind one another as one, with the order in which the set plays them.

    Returns:
        The tune, its bowing, the visits, and the entry and time of each visit.
    """
    bars: list[Bar] = []
    joins, marks, retakes = {}, {}, set()
    visits, owners = [], []
    for index, entry in enumerate(tune_set.entries):
        first = len(bars)
        for bar in entry.tune.bars:
            bars.append(replace(bar, notes=tuple(replace(note, id=f"e{index}{note.id}") for note in bar.notes)))
        joins |= {f"e{index}{note_id}": how for note_id, how in entry.bowing.joins.items()}
        marks |= {f"e{index}{note_id}": mark for note_id, mark in entry.bowing.marks.items()}
        retakes |= {f"e{index}{note_id}" for note_id in entry.bowing.retakes}
        for time in range(1, entry.times + 1):
            visits += [Visit(first + visit.bar, visit.pass_number) for visit in playing_order(entry.tune)]
            owners += [(index, time)] * len(playing_order(entry.tune))
    bowing = Bowing("", immutabledict(joins), immutabledict(marks), frozenset(retakes))
    return Tune("", tuple(bars)), bowing, tuple(visits), owners


def played_in_one(tune_set: TuneSet) -> tuple[Played, ...]:
    """The strokes of all tunes in one, begun as the first tune is alone: rule B6 looks no further than its end."""
    tune, bowing, visits, _ = in_one(tune_set)
    begins = next(
        (alone[0].bow for entry in tune_set.entries if (alone := work_out(entry.tune, entry.bowing).played)), None
    )
    for after in (None, *Bow):
        played = work_out(tune, bowing, visits, after).played
        if not played or played[0].bow is begins:
            return played
    raise AssertionError("a first stroke goes one way or the other")


@given(sets())
def test_seams_are_where_the_strokes_of_all_tunes_in_one_change_hands(tune_set: TuneSet) -> None:
    tune, _, visits, owners = in_one(tune_set)
    played = played_in_one(tune_set)
    hands: list[tuple[Played, Played]] = [
        (one, other) for one, other in pairwise(played) if owners[one.visit] != owners[other.visit]
    ]
    inner = [seam for seam in seams(tune_set) if seam.way is not Way.ROUND]
    assert [(seam.last, seam.first) for seam in inner] == [(one.bow, other.bow) for one, other in hands]
    assert [seam.is_retake for seam in inner] == [other.retake for _, other in hands]
    assert [(seam.after.entry, seam.after.time) for seam in inner] == [owners[other.visit] for _, other in hands]
    assert [f"e{seam.after.entry}{seam.first_note}" for seam in inner] == [other.note_id for _, other in hands]
    for seam, (one, other) in zip(inner, hands, strict=True):
        between = [note for visit in visits[one.visit : other.visit + 1] for note in tune.bars[visit.bar].notes]
        ids = [note.id for note in between]
        start = ids.index(one.note_id)
        stop = len(ids) - 1 - ids[::-1].index(other.note_id)
        assert seam.over_rest == any(note.is_rest for note in between[start:stop])


@given(sets())
def test_a_tune_is_turned_exactly_where_its_strokes_differ_from_alone(tune_set: TuneSet) -> None:
    _, _, _, owners = in_one(tune_set)
    played = played_in_one(tune_set)
    for seam in seams(tune_set):
        if seam.way is Way.ROUND:
            continue
        here = [note for note in played if owners[note.visit] == (seam.after.entry, seam.after.time)]
        entry = tune_set.entries[seam.after.entry]
        alone = work_out(entry.tune, entry.bowing).played
        differing = [one.bow is not other.bow for one, other in zip(here, alone, strict=True)]
        right = [note.note_id for note, differs in zip(alone, differing, strict=True) if not differs]
        assert seam.is_turned == any(differing)
        assert seam.right_from == (right[0] if seam.is_turned and right else None)


@given(sets())
def test_playing_a_set_again_is_the_set_written_twice(tune_set: TuneSet) -> None:
    twice = TuneSet(tune_set.entries * 2)
    count = len(tune_set.entries)
    over = [
        seam for seam in seams(twice)
        if seam.before.entry < count <= seam.after.entry and seam.way is Way.NEXT
    ]  # fmt: skip
    rounds = [seam for seam in seams(tune_set) if seam.way is Way.ROUND]
    facts = [[(seam.last, seam.first, seam.alone, seam.over_rest) for seam in found] for found in (over, rounds)]
    assert facts[0] == facts[1]


@given(sets())
def test_the_order_as_it_stands_counts_what_the_check_tells(tune_set: TuneSet) -> None:
    here = next(order for order in orders(tune_set) if order.places == tuple(range(len(tune_set.entries))))
    found = seams(tune_set)
    inner = [seam for seam in found if seam.way is not Way.ROUND]
    assert here.turned == sum(seam.is_turned for seam in inner)
    assert here.retakes == sum(seam.is_retake and not seam.over_rest for seam in inner)
    assert here.comes_round == check_set(tune_set).comes_round


@given(sets())
def test_every_order_counts_what_the_set_in_that_order_has(tune_set: TuneSet) -> None:
    found = orders(tune_set)
    for order in found:
        inner = [seam for seam in seams(TuneSet(tuple(tune_set.entries[place] for place in order.places)))
                 if seam.way is not Way.ROUND]  # fmt: skip
        assert order.turned == sum(seam.is_turned for seam in inner)
    assert found[0].turned == min(order.turned for order in found)


@given(sets())
def test_every_seam_and_finding_is_told_in_one_sentence(tune_set: TuneSet) -> None:
    report = check_set(tune_set)
    told = {seam for finding in report.findings for seam in finding.seams}
    assert told == {seam for seam in report.seams if not seam.alternates}
    for text in [seam_text(tune_set, seam) for seam in report.seams] + [finding.text for finding in report.findings]:
        assert text.endswith(".")
        assert text[0] == text[0].upper()
    assert {finding.rule for finding in report.findings} <= set(SET_RULES)
    assert all(isinstance(seam.first, Bow) for seam in report.seams)
