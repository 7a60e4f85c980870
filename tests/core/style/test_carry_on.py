"""Carrying on a bowing from its marked bars."""

from dataclasses import replace

import pytest

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bow, Join, Mark, fix_bow
from core.errors import RefusedEditError
from core.style.carry_on import SURE, carry_on, contradictions, marked_bars, take_bars
from core.style.learning import example
from tests.core.builders import bowed
from tests.core.style.hands import lesson, style

PLAIN = AccentPlan(PlanKind.NONE)
NEW = 100
FOUR = range(4)


def begun(seed=NEW):
    """A lesson of which the first four bars are marked, and all of it."""
    tune, whole = lesson(seed)
    joins = {note_id: how for note_id, how in whole.joins.items() if tune.bar_of[note_id] in FOUR}
    return tune, replace(whole, joins=whole.joins.__class__(joins)), whole


def in_bars(tune, mapping, bars):
    return {note_id: value for note_id, value in mapping.items() if tune.bar_of[note_id] in bars}


def test_marked_bars_stay_as_they_are():
    tune, bowing, _ = begun()
    proposal = carry_on(tune, bowing, FOUR, style())
    assert in_bars(tune, proposal.bowing.joins, FOUR) == dict(bowing.joins)
    assert not set(proposal.chances) & {note.id for index in FOUR for note in tune.bars[index].notes}
    assert set(proposal.bar_chances) == set(range(4, 16))


def test_the_rest_is_mostly_as_the_hand_would_have_it():
    right = wanted = proposed = 0
    for seed in range(NEW, NEW + 4):
        tune, bowing, whole = begun(seed)
        rest = set(range(4, 16))
        ours, theirs = (
            set(in_bars(tune, one.joins, rest)) for one in (carry_on(tune, bowing, FOUR, style()).bowing, whole)
        )
        right, wanted, proposed = right + len(ours & theirs), wanted + len(theirs), proposed + len(ours)
    assert 2 * right / (wanted + proposed) > 0.85


def test_equal_bars_are_slurred_as_the_marked_ones():
    tune, bowing, _ = begun()
    joins = carry_on(tune, bowing, FOUR, style()).bowing.joins
    for first, again in ((0, 4), (1, 5)):
        inner = zip(tune.bars[first].notes[1:], tune.bars[again].notes[1:], strict=True)
        assert all((one.id in joins) == (other.id in joins) for one, other in inner)


def test_a_fixed_mark_elsewhere_stays_and_begins_a_stroke():
    tune, bowing, whole = begun()
    joined = next(note.id for note in tune.bars[10].notes[1:] if note.id in whole.joins)
    marked = fix_bow(tune, bowing, joined, Bow.UP)
    proposed = carry_on(tune, marked, FOUR, style()).bowing
    assert proposed.marks[joined] == Mark(Bow.UP)
    assert joined not in proposed.joins


def test_the_same_question_has_the_same_answer():
    tune, bowing, _ = begun()
    assert carry_on(tune, bowing, FOUR, style()) == carry_on(tune, bowing, FOUR, style())


def test_what_is_surely_slurred_is_less():
    tune, bowing, _ = begun()
    bowing = replace(bowing, joins=bowing.joins.__class__())
    likely, sure = (carry_on(tune, bowing, (), style(), joined_from=line).bowing for line in (0.2, SURE))
    assert len(sure.joins) <= len(likely.joins)


def test_a_bar_is_as_sure_as_its_notes():
    tune, bowing, _ = begun()
    proposal = carry_on(tune, bowing, FOUR, style())
    for index, sure in proposal.bar_chances.items():
        product = 1.0
        for note in tune.bars[index].notes:
            if note.id in proposal.chances:
                joined = proposal.chances[note.id]
                product *= joined if note.id in proposal.bowing.joins else 1 - joined
        assert sure == pytest.approx(product)


def test_notes_that_go_against_the_hand_are_told():
    """Accents on the backbeat go against this hand, which slurs from the beat, oftener than none do."""
    tune, bowing, _ = begun()
    plain, accented = (
        carry_on(tune, replace(bowing, accents=plan), FOUR, style()) for plan in (PLAIN, AccentPlan(PlanKind.BACKBEAT))
    )
    for proposal in (plain, accented):
        for note_id, joined in proposal.chances.items():
            likely = joined >= proposal.joined_from
            assert (note_id in proposal.against_the_hand) == (likely != (note_id in proposal.bowing.joins))
    assert len(plain.against_the_hand) < len(accented.against_the_hand)


def test_bars_are_taken_one_by_one():
    tune, bowing, _ = begun()
    proposal = carry_on(tune, bowing, FOUR, style())
    taken = take_bars(tune, bowing, proposal, {0, 6})
    assert in_bars(tune, taken.joins, {6}) == in_bars(tune, proposal.bowing.joins, {6})
    assert in_bars(tune, taken.joins, {5, 7, *range(8, 16)}) == {}
    assert in_bars(tune, taken.joins, FOUR) == dict(bowing.joins)
    assert take_bars(tune, bowing, proposal, range(16)).joins == proposal.bowing.joins


def test_marked_bars_that_contradict_one_another_are_told():
    tune, bowing, _ = begun()
    assert contradictions(tune, bowing, range(16)) == ((0, 4), (1, 5))  # bars 5 and 6 are bare
    assert contradictions(tune, bowing, FOUR) == ()


def test_bars_like_contradicting_ones_are_less_sure():
    sure = []
    for second in ("(BA)GB (BA)GB", "BAGB BAGB"):
        tune, bowing = bowed(
            f"(BA)GB (BA)GB | dcBA GFGA | {second} | dcBA GFGA | BAGB BAGB | e2 d2 c2 B2", accents=PLAIN
        )
        sure.append(carry_on(tune, bowing, range(4), style()).bar_chances[4])
    assert sure[0] > 0.75 > sure[1]


@pytest.mark.parametrize(
    ("text", "marked"),
    [
        ("(GA)BG dBdB | GABG dBdB | (GA)BG dBdB | GABG dBdB", {0, 1, 2}),  # one bare bar between two
        ("GABG dBdB | (GA)BG dBdB | GABG dBdB | GABG dBdB | (GA)BG dBdB", {0, 1, 4}),
        ("GABG dBdB | GABG dBdB | (GA)BG dBdB | GABG dBdB", {2}),
        ("GABG dBd(B | G)ABG dBdB | GABG dBdB", {0, 1}),
        ("D | (GA)BG dBdB | GABG dBdB", {0, 1}),
        ("D | GABG dBdB | (GA)BG dBdB | GABG dBdB", {0, 1, 2}),
        ("GABG dBdB | GABG dBdB", set()),
    ],
)
def test_the_marked_bars_carry_signs_or_stand_alone_between(text, marked):
    tune, bowing = bowed(text, accents=PLAIN)
    assert marked_bars(tune, bowing) == marked


def test_the_marked_bars_alone_are_carried_on():
    tune, bowing, whole = begun()
    proposal = carry_on(tune, bowing, FOUR, None)
    for first, again in ((0, 4), (1, 5)):
        inner = zip(tune.bars[first].notes[1:], tune.bars[again].notes[1:], strict=True)
        assert all((one.id in whole.joins) == (other.id in proposal.bowing.joins) for one, other in inner)
    with pytest.raises(RefusedEditError, match="Nothing is slurred or marked yet"):
        carry_on(tune, bowing, (), None)


def test_one_bar_is_too_little_and_all_of_them_leave_nothing():
    tune, bowing, _ = begun()
    with pytest.raises(RefusedEditError, match="One marked bar is too little"):
        carry_on(tune, bowing, {0}, style())
    with pytest.raises(RefusedEditError, match="nothing to carry on"):
        carry_on(tune, bowing, range(16), style())


def test_hooked_notes_teach_as_slurs_do():
    tune, bowing = bowed("A2 =B2 c2 d2 | A2 =B2 c2 d2")
    assert bowing.joins[tune.bars[0].notes[1].id] is Join.HOOK
    assert example(tune, bowing).joined.tolist() == [1, 0, 0, 0, 1, 0, 0]
