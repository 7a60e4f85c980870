"""What a gesture would do, told before it is done; no window."""

from __future__ import annotations

import pytest

from app.here import Here
from app.note_words import describe_note, place_text, span_text
from app.proposals import (
    CLICK,
    Preview,
    Proposal,
    propose_bow,
    propose_edit,
    propose_free,
    propose_hook,
    propose_join,
    propose_limit,
    propose_retake,
    propose_separate,
    propose_slur,
    propose_turn,
)
from core.bowing import Bow, Bowing, fix_bow, free_bow, join, separate
from core.errors import RefusedEditError
from core.lesson import Lesson
from core.strokes import work_out


@pytest.fixture
def here(four_bars: Lesson) -> Here:
    return stand(four_bars, four_bars.bowings[0])


def stand(lesson: Lesson, bowing: Bowing) -> Here:
    return Here(lesson.tune, bowing, work_out(lesson.tune, bowing))


ALL = [
    propose_join,
    propose_hook,
    propose_turn,
    propose_free,
    propose_retake,
    lambda here, note: propose_slur(here, note, "b1n2"),
    lambda here, note: propose_separate(here, note, note),
    lambda here, note: propose_bow(here, note, Bow.UP),
    lambda here, note: propose_limit(here, note, 2),
]


def outcome(proposal: Proposal, here: Here) -> Bowing | str:
    """The edited bowing, or the sentence with which core refuses."""
    try:
        return proposal.edit(here.tune, here.bowing)
    except RefusedEditError as refused:
        return str(refused)


@pytest.mark.parametrize("propose", ALL)
def test_a_proposal_without_a_refusal_changes_the_bowing_and_one_with_it_does_not(here, propose):
    for note in here.tune.sequence:
        proposal = propose(here, note.id)
        if proposal.refusal:
            assert proposal.refusal.endswith(".")
            assert outcome(proposal, here) in (proposal.refusal, here.bowing)
            assert not any((proposal.preview.joined, proposal.preview.parted, proposal.preview.turned))
        else:
            assert proposal.edit(here.tune, here.bowing) != here.bowing
            assert proposal.label[0].isupper()


@pytest.mark.parametrize(
    ("propose", "label"),
    [
        (lambda here: propose_join(here, "b0n1"), "Slur bar 1, notes 1–2"),
        (lambda here: propose_hook(here, "b0n7"), "Hook bar 1, note 7 to bar 2, note 1"),
        (lambda here: propose_slur(here, "b1n3", "b0n6"), "Slur bar 1, note 6 to bar 2, note 3"),
        (lambda here: propose_turn(here, "b0n1"), "Turn bar 1, note 1 to up-bow"),
        (lambda here: propose_bow(here, "b0n2", Bow.DOWN), "Fix bar 1, note 2 as down-bow"),
        (lambda here: propose_retake(here, "b0n2"), "Retake at bar 1, note 2"),
    ],
)
def test_the_undo_step_says_what_was_done_and_where(here, propose, label):
    assert propose(here).label == label


def test_the_sentence_of_the_status_line_is_made_of_the_same_words(here):
    assert propose_join(here, "b0n1").says(CLICK) == "Click to slur bar 1, notes 1–2."
    assert propose_join(here, "b3n5").says(CLICK) == "A rest comes next: a slur cannot run over a rest."


def test_turning_keeps_the_pass_that_a_mark_is_limited_to(four_bars):
    bowing = fix_bow(four_bars.tune, four_bars.bowings[0], "b1n1", Bow.UP, only_pass=2)
    here = stand(four_bars, bowing)
    turned = propose_turn(here, "b1n1").edit(here.tune, here.bowing)
    assert (turned.marks["b1n1"].bow, turned.marks["b1n1"].only_pass) == (Bow.DOWN, 2)


def test_a_gesture_inside_a_stroke_is_told_of_its_first_note(four_bars):
    here = stand(four_bars, join(four_bars.tune, four_bars.bowings[0], "b0n2"))
    assert propose_turn(here, "b0n2").preview.turned == ("b0n1", Bow.UP)
    assert propose_turn(here, "b0n2").label == "Turn bar 1, note 1 to up-bow"


def test_places_name_pick_ups_and_rests(with_pickup, four_bars):
    assert place_text(with_pickup.tune, "b0n1") == "pick-up, note 1"
    assert span_text(with_pickup.tune, "b0n1", "b1n1") == "pick-up, note 1 to bar 1, note 1"
    assert place_text(four_bars.tune, "b3n6") == "bar 4, rest"


def test_a_note_is_described_with_its_bow_on_every_pass(four_bars):
    bowing = join(four_bars.tune, four_bars.bowings[0], "b0n2")
    here = stand(four_bars, fix_bow(four_bars.tune, bowing, "b0n1", Bow.DOWN))
    assert describe_note(here, "b0n2") == "Bar 1, note 2: F♯5, down-bow, slurred to the note before, fixed"
    assert describe_note(here, "b3n6") == "Bar 4, rest"
    only_once = stand(four_bars, fix_bow(four_bars.tune, four_bars.bowings[0], "b0n1", Bow.UP, only_pass=2))
    assert "down-bow on pass 1, up-bow on pass 2" in describe_note(only_once, "b0n1")


# ------------------------------------------------------------------------------------------------- edits from elsewhere


def test_an_edit_from_elsewhere_shows_every_slur_that_it_makes(here):
    proposal = propose_edit(here, "Slur", lambda t, b: join(t, join(t, join(t, b, "b0n2"), "b0n3"), "b2n2"))
    assert proposal.preview.slurs == (("b0n1", "b0n2", "b0n3"), ("b2n1", "b2n2"))


def test_an_edit_from_elsewhere_shows_what_it_parts(four_bars):
    bowing = join(four_bars.tune, four_bars.bowings[0], "b1n2")
    here = stand(four_bars, bowing)
    proposal = propose_edit(here, "Part", lambda t, b: separate(b, "b1n2"))
    assert proposal.preview.parted == (("b1n1", "b1n2"),)
    assert proposal.preview.slurs == ()


def test_an_edit_from_elsewhere_shows_what_it_fixes_and_frees(four_bars):
    plain = stand(four_bars, four_bars.bowings[0])
    fixed = propose_edit(plain, "Fix", lambda t, b: fix_bow(t, b, "b2n1", Bow.UP))
    assert fixed.preview.turned == ("b2n1", Bow.UP)
    marked = stand(four_bars, fixed.edit(four_bars.tune, plain.bowing))
    assert propose_edit(marked, "Free", lambda t, b: free_bow(t, b, "b2n1")).preview.freed == "b2n1"


def test_an_edit_from_elsewhere_that_changes_nothing_shows_nothing(here):
    assert propose_edit(here, "Nothing", lambda t, b: b).preview == Preview()
