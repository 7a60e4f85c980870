"""Laws of directions, on tunes of any kind: what turns round when a stroke does, and what stays."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.accent_plan import AccentPlan
from core.bowing import Articulation, Bowing, Grace, Join, Mark, Ornament, Signs, can_join, join, separate
from core.strokes import Played, Strokes, work_out
from core.tune import Pitch, Tune
from tests.core.test_check import bowed_tunes
from tests.property.strategies import bowings, tunes

slow = settings(deadline=None, max_examples=50, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def cases(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """Tunes with something to bow; the first stroke is fixed as it goes, on its first pass only.

    Without that, a change in a pick-up may turn what stands before it (rule B6). Most are short and quickly made;
    some are tunes of every kind.
    """
    if draw(st.integers(0, 3)):
        tune, bowing = draw(bowed_tunes())
        passes = {note_id: draw(st.sampled_from((None, None, 1, 2))) for note_id in bowing.marks}
        limited = {note_id: replace(mark, only_pass=passes[note_id]) for note_id, mark in bowing.marks.items()}
        bowing = replace(bowing, marks=immutabledict(limited))
    else:
        tune = draw(tunes())
        bowing = draw(bowings(tune))
    played = work_out(tune, bowing).played
    assume(played)
    return tune, pinned(bowing, played[0])


def pinned(bowing: Bowing, played: Played, turned: bool = False) -> Bowing:
    """A stroke fixed as it goes, or the other way, on one pass and no other."""
    mark = Mark(played.bow.turned if turned else played.bow, played.pass_number)
    return replace(bowing, marks=bowing.marks.set(played.note_id, mark), retakes=bowing.retakes - {played.note_id})


def is_fixed(bowing: Bowing, played: Played) -> bool:
    """A mark sets the direction here."""
    mark = bowing.marks.get(played.note_id)
    return played.starts and mark is not None and mark.holds_on(played.pass_number)


def all_but_bows(strokes: Strokes) -> list[tuple[object, ...]]:
    return [(note.note_id, note.visit, note.pass_number, note.starts, note.struck) for note in strokes.played]


@given(cases(), st.data())
@slow
def test_turning_a_stroke_round_turns_all_up_to_the_next_fixed_one_and_nothing_else(
    case: tuple[Tune, Bowing], data: st.DataObject
) -> None:
    tune, bowing = case
    played = work_out(tune, bowing).played
    first = played[0].note_id  # its mark is taken, on later passes too
    starts = [index for index, note in enumerate(played) if note.starts and note.note_id != first]
    index = data.draw(st.sampled_from([0, *starts]))
    kept = pinned(bowing, played[index])
    turned = pinned(bowing, work_out(tune, kept).played[index], turned=True)
    before, after = work_out(tune, kept), work_out(tune, turned)
    assert all_but_bows(after) == all_but_bows(before)
    stop = next(
        (later for later in range(index + 1, len(before.played)) if is_fixed(kept, before.played[later])),
        len(before.played),
    )
    for place, (old, new) in enumerate(zip(before.played, after.played, strict=True)):
        assert (new.bow is not old.bow) == (index <= place < stop)
        if place not in (index, stop):
            assert new.retake == old.retake
    if stop < len(before.played):
        assert before.played[stop].retake is not after.played[stop].retake


@given(cases(), st.data())
@slow
def test_a_slur_more_turns_all_that_follows_up_to_the_next_fixed_stroke(
    case: tuple[Tune, Bowing], data: st.DataObject
) -> None:
    """On every pass, each time it is played; where a jump leads to its second note it is no slur (rule B11)."""
    tune, bowing = case
    free = [
        note.id
        for note in tune.sequence
        if can_join(tune, note.id) and note.id not in bowing.joins | bowing.marks and note.id not in bowing.retakes
    ]
    assume(free)
    slurred = join(tune, bowing, data.draw(st.sampled_from(free)), data.draw(st.sampled_from(Join)))
    turned = False
    for old, new in zip(work_out(tune, bowing).played, work_out(tune, slurred).played, strict=True):
        if old.starts and not new.starts:
            turned = not turned
        elif is_fixed(slurred, new):
            turned = False
        assert (new.bow is not old.bow) == turned, new


@given(cases(), st.data())
@slow
def test_parting_what_was_joined_gives_the_directions_back(case: tuple[Tune, Bowing], data: st.DataObject) -> None:
    tune, bowing = case
    free = [note.id for note in tune.sequence if can_join(tune, note.id) and note.id not in bowing.joins]
    assume(free)
    note_id = data.draw(st.sampled_from(free))
    assume(note_id not in bowing.retakes)
    assert work_out(tune, separate(join(tune, bowing, note_id), note_id)) == work_out(tune, bowing)


@given(cases())
@slow
def test_fixing_every_stroke_as_it_goes_changes_no_direction(case: tuple[Tune, Bowing]) -> None:
    """Where it goes one way on every pass; and nothing but those marks is then needed to say so."""
    tune, bowing = case
    strokes = work_out(tune, bowing)
    one_way = {
        note_id: Mark(directions[0])
        for note_id, directions in strokes.bows.items()
        if len(set(directions)) == 1 and all(note.starts for note in strokes.by_note[note_id])
    }
    fixed = replace(bowing, marks=immutabledict(bowing.marks | one_way), retakes=bowing.retakes - one_way.keys())
    assert work_out(tune, fixed).bows == strokes.bows


@given(cases())
@slow
def test_signs_and_plans_turn_nothing(case: tuple[Tune, Bowing]) -> None:
    """Grace notes and ornaments belong to their note's stroke (rule B8)."""
    tune, bowing = case
    grace = Signs(graces=(Grace((Pitch(5, "C"),)),), ornaments=tuple(Ornament), articulations=(Articulation.ACCENT,))
    signed = immutabledict({note.id: grace for note in tune.sequence if not note.is_rest})
    for signs in (immutabledict[str, Signs](), signed):
        changed = replace(bowing, signs=signs, accents=AccentPlan(), accent_changes=immutabledict())
        assert work_out(tune, changed) == work_out(tune, bowing)
