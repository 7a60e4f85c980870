from dataclasses import replace

import pytest
from immutabledict import immutabledict

from core.bowing import (
    NO_SIGNS,
    Articulation,
    Bow,
    Bowing,
    Join,
    Mark,
    Signs,
    can_join,
    fix_bow,
    free_bow,
    join,
    next_struck,
    separate,
    separate_bows,
    separate_span,
    set_signs,
    slur_span,
    stroke_notes,
    stroke_start,
    toggle_join_to_next,
    toggle_retake,
)
from core.errors import RefusedEditError
from core.tune import Tune
from tests.core.builders import bowed


def joined(bowing: Bowing) -> list[str]:
    return sorted(bowing.joins)


@pytest.fixture
def typed() -> tuple[Tune, Bowing]:
    """Eight places in one bar and one in the next: A (B c) d- d z e f | g."""
    return bowed("A(Bc)d-dzef|g8|")


def test_turning_a_bow_twice_gives_it_back() -> None:
    assert Bow.DOWN.turned is Bow.UP
    assert all(bow.turned.turned is bow for bow in Bow)


def test_a_mark_holds_on_every_pass_or_on_its_own() -> None:
    assert Mark(Bow.UP).holds_on(3)
    assert Mark(Bow.UP, only_pass=2).holds_on(2)
    assert not Mark(Bow.UP, only_pass=2).holds_on(1)


def test_a_note_without_signs_has_empty_ones(typed: tuple[Tune, Bowing]) -> None:
    assert typed[1].signs_on("b0n1") is NO_SIGNS
    assert not NO_SIGNS


class TestStrokes:
    def test_a_stroke_is_found_from_any_of_its_notes(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        for note_id in ("b0n2", "b0n3"):
            assert stroke_start(tune, bowing, note_id).id == "b0n2"
            assert [note.id for note in stroke_notes(tune, bowing, note_id)] == ["b0n2", "b0n3"]

    def test_held_notes_belong_to_it(self, typed: tuple[Tune, Bowing]) -> None:
        assert [note.id for note in stroke_notes(*typed, "b0n5")] == ["b0n4", "b0n5"]

    def test_a_rest_is_its_own(self, typed: tuple[Tune, Bowing]) -> None:
        assert [note.id for note in stroke_notes(*typed, "b0n6")] == ["b0n6"]

    def test_the_next_struck_note_passes_over_held_ones(self, typed: tuple[Tune, Bowing]) -> None:
        following = next_struck(typed[0], "b0n4")
        assert following is not None
        assert following.id == "b0n6"
        assert next_struck(typed[0], "b1n1") is None


class TestJoining:
    @pytest.mark.parametrize(
        ("note_id", "possible"),
        [("b0n1", False), ("b0n2", True), ("b0n5", False), ("b0n6", False), ("b0n7", False), ("b1n1", True)],
    )
    def test_what_can_be_joined(self, typed: tuple[Tune, Bowing], note_id: str, possible: bool) -> None:
        tune, bowing = typed
        assert can_join(tune, note_id) is possible
        if possible:
            assert join(tune, bowing, note_id, Join.HOOK).joins[note_id] is Join.HOOK

    @pytest.mark.parametrize(
        ("note_id", "why"),
        [
            ("b0n1", "The first note has none before it to join."),
            ("b0n5", "A held note is part of its stroke already."),
            ("b0n6", "A rest comes next: a slur cannot run over a rest."),
            ("b0n7", "A rest comes before: a slur cannot run over a rest."),
        ],
    )
    def test_refusals_say_why(self, typed: tuple[Tune, Bowing], note_id: str, why: str) -> None:
        with pytest.raises(RefusedEditError) as refusal:
            join(*typed, note_id)
        assert str(refusal.value) == why

    def test_a_joined_note_is_no_retake(self) -> None:
        tune, bowing = bowed("A rB c")
        assert join(tune, bowing, "b0n2").retakes == frozenset()

    def test_separating_leaves_the_other_joins(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        assert joined(separate(join(tune, bowing, "b0n8"), "b0n3")) == ["b0n8"]

    def test_toggling_twice_gives_the_same_bowing(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        once = toggle_join_to_next(tune, bowing, "b0n7")
        assert joined(once) == ["b0n3", "b0n8"]
        assert toggle_join_to_next(tune, once, "b0n7") == bowing

    def test_toggling_another_kind_changes_the_kind(self, typed: tuple[Tune, Bowing]) -> None:
        tune, bowing = typed
        hooked = toggle_join_to_next(tune, bowing, "b0n2", Join.HOOK)
        assert hooked.joins == {"b0n3": Join.HOOK}

    def test_toggling_goes_over_held_notes(self) -> None:
        tune, bowing = bowed("A-AB")
        assert joined(toggle_join_to_next(tune, bowing, "b0n1")) == ["b0n3"]

    @pytest.mark.parametrize("note_id", ["b0n4", "b0n5", "b0n6", "b1n1"])
    def test_toggling_where_nothing_follows_is_refused(self, typed: tuple[Tune, Bowing], note_id: str) -> None:
        with pytest.raises(RefusedEditError):
            toggle_join_to_next(*typed, note_id)


class TestSpans:
    def test_a_span_becomes_one_slur_no_more_and_no_less(self) -> None:
        tune, bowing = bowed("(ABc)(def)ga|")
        assert slur_span(tune, bowing, "b0n3", "b0n4").joins == bowed("(AB)(cd)(ef)ga|")[1].joins

    def test_either_end_can_come_first(self) -> None:
        tune, bowing = bowed("ABcd|")
        assert slur_span(tune, bowing, "b0n3", "b0n1") == slur_span(tune, bowing, "b0n1", "b0n3")

    def test_hooks_inside_become_slurs(self) -> None:
        tune, bowing = bowed("A=Bc|")
        assert set(slur_span(tune, bowing, "b0n1", "b0n3").joins.values()) == {Join.SLUR}

    def test_a_span_that_begins_on_a_held_note_begins_where_it_was_struck(self) -> None:
        tune, bowing = bowed("gA-AB|")
        assert slur_span(tune, bowing, "b0n3", "b0n4").joins == bowed("g(A-AB)|")[1].joins

    def test_a_span_that_ends_in_a_held_note_frees_the_note_behind_it(self) -> None:
        tune, bowing = bowed("AB-(Bc)|")
        assert joined(slur_span(tune, bowing, "b0n1", "b0n3")) == ["b0n2"]

    def test_retakes_inside_go(self) -> None:
        tune, bowing = bowed("ArBrc|")
        assert slur_span(tune, bowing, "b0n1", "b0n2").retakes == {"b0n3"}

    @pytest.mark.parametrize(("first", "last"), [("b0n1", "b0n1"), ("b0n4", "b0n5"), ("b0n5", "b0n7")])
    def test_a_rest_or_a_single_note_is_refused(self, typed: tuple[Tune, Bowing], first: str, last: str) -> None:
        with pytest.raises(RefusedEditError):
            slur_span(*typed, first, last)

    def test_separating_a_span_keeps_the_slur_into_it(self) -> None:
        tune, bowing = bowed("(ABcd)e|")
        assert joined(separate_span(tune, bowing, "b0n2", "b0n4")) == ["b0n2"]


class TestDirections:
    def test_a_mark_goes_to_the_first_note_of_the_stroke(self, typed: tuple[Tune, Bowing]) -> None:
        assert fix_bow(*typed, "b0n3", Bow.UP, only_pass=2).marks == {"b0n2": Mark(Bow.UP, 2)}

    def test_a_fixed_stroke_is_no_retake(self) -> None:
        tune, bowing = bowed("A rB")
        assert fix_bow(tune, bowing, "b0n2", Bow.DOWN).retakes == frozenset()

    def test_a_rest_has_no_direction(self, typed: tuple[Tune, Bowing]) -> None:
        with pytest.raises(RefusedEditError):
            fix_bow(*typed, "b0n6", Bow.UP)

    def test_freeing_takes_all_marks_and_the_retake_off_the_stroke(self) -> None:
        tune, bowing = bowed("vA(uBvc) ud")
        assert free_bow(tune, bowing, "b0n3").marks == {"b0n1": Mark(Bow.DOWN), "b0n4": Mark(Bow.UP)}
        assert free_bow(*bowed("ArB"), "b0n2").retakes == frozenset()

    def test_a_retake_takes_the_place_of_a_mark_and_can_be_toggled_off(self) -> None:
        tune, bowing = bowed("A(vBc)")
        lifted = toggle_retake(tune, bowing, "b0n3")
        assert (lifted.retakes, lifted.marks) == ({"b0n2"}, {})
        assert toggle_retake(tune, lifted, "b0n3").retakes == frozenset()

    @pytest.mark.parametrize("note_id", ["b0n1", "b0n2"])
    def test_neither_a_rest_nor_the_first_stroke_can_be_retaken(self, note_id: str) -> None:
        with pytest.raises(RefusedEditError):
            toggle_retake(*bowed("zAB"), note_id)


class TestSigns:
    def test_empty_signs_are_not_kept(self) -> None:
        _, bowing = bowed("A")
        accent = Signs(articulations=(Articulation.ACCENT,))
        assert set_signs(bowing, "b0n1", accent).signs == {"b0n1": accent}
        assert set_signs(set_signs(bowing, "b0n1", accent), "b0n1", Signs()) == bowing


def test_separate_bows_keep_signs_and_plan_only() -> None:
    _, bowing = bowed("(ALB)rc")
    plain = separate_bows(bowing, "Plain")
    assert (plain.name, plain.joins, plain.marks, plain.retakes) == ("Plain", immutabledict(), {}, frozenset())
    assert (plain.signs, plain.accents) == (bowing.signs, bowing.accents)


def test_edits_leave_the_bowing_they_start_from(typed: tuple[Tune, Bowing]) -> None:
    tune, bowing = typed
    kept = replace(bowing)
    for edit in (join, toggle_join_to_next, toggle_retake, free_bow):
        edit(tune, bowing, "b0n2")
    slur_span(tune, bowing, "b0n1", "b0n4")
    fix_bow(tune, bowing, "b0n1", Bow.UP)
    assert bowing == kept
