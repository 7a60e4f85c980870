from core.bowing import Bow, Bowing, Mark, join, toggle_retake
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs, rows_kept, rows_shown
from core.strokes import work_out
from core.tune import Tune
from tests.core.builders import bowed

D, U = Bow.DOWN, Bow.UP


def signs(tune: Tune, bowing: Bowing, density: MarkDensity) -> dict[str, BowSign]:
    return dict(bow_signs(tune, bowing, work_out(tune, bowing), density))


def shown(text: str, density: MarkDensity, meter: str = "4/4") -> dict[str, str]:
    """``D``, ``U`` or both by note id; ``!`` behind what is fixed, ``'`` behind what is lifted for."""
    return {
        note_id: "".join("D" if bow is D else "U" for bow in sign.bows) + "!" * sign.fixed + "'" * sign.retake
        for note_id, sign in signs(*bowed(text, meter), density).items()
    }


def test_every_stroke_has_a_sign_and_slurred_held_and_rested_notes_have_none() -> None:
    assert shown("(AB)c2- c2 z2|", MarkDensity.EVERY) == {"b0n1": "D", "b0n3": "U"}


def test_a_pick_up_leads_to_a_down_bow() -> None:
    assert shown("A2|B4 c4|", MarkDensity.EVERY) == {"b0n1": "U", "b1n1": "D", "b1n2": "U"}


def test_marks_and_retakes_are_fixed_and_only_a_lift_is_told() -> None:
    assert shown("A2 vB2 rc2 d2|", MarkDensity.EVERY) == {"b0n1": "D", "b0n2": "D!'", "b0n3": "D!'", "b0n4": "U"}


def test_a_retake_over_a_rest_needs_no_lift_sign() -> None:
    assert shown("A2 z2 vB2 c2|", MarkDensity.EVERY)["b0n3"] == "D!"


def test_both_directions_stand_where_passes_differ_the_first_pass_first() -> None:
    assert shown("|:A4 B2c2:|", MarkDensity.EVERY) == {"b0n1": "DU", "b0n2": "UD", "b0n3": "DU"}


def test_rows_are_shown_where_passes_differ_and_kept_where_a_bar_is_played_again() -> None:
    even, odd = bowed("|:A4 B4:|c8|"), bowed("|:A4 B2c2:|d8|")
    for (tune, bowing), shown_rows in ((even, 1), (odd, 2)):
        every = signs(tune, bowing, MarkDensity.EVERY)
        assert set(rows_shown({k: v for k, v in every.items() if k.startswith("b0")}).values()) == {shown_rows}
        assert rows_shown(every)["b1n1"] == 1
        assert rows_kept(tune, every) == {note_id: 2 if note_id.startswith("b0") else 1 for note_id in every}


def test_no_edit_changes_the_rows_that_are_kept_over_other_notes() -> None:
    tune, bowing = bowed("|:A2 B2 c2 d2:|e2 f2 g4|")
    joined = join(tune, bowing, "b0n2")
    before, after = (rows_kept(tune, signs(tune, b, MarkDensity.EVERY)) for b in (bowing, joined))
    assert {**after, "b0n2": 2} == before


def test_a_mark_for_one_pass_is_shown_as_fixed() -> None:
    tune, bowing = bowed("|:A4 B4:|")
    limited = Bowing("limited", marks=bowing.marks.set("b0n1", Mark(U, only_pass=2)))
    assert signs(tune, limited, MarkDensity.EVERY)["b0n1"] == BowSign((D, U), fixed=True)


def test_the_first_stroke_that_begins_in_each_bar() -> None:
    assert shown("A2|B4 (c2d2|e2)f2 vg4|", MarkDensity.BARS) == {
        "b0n1": "U", "b1n1": "D", "b2n2": "D", "b2n3": "D!'",
    }  # fmt: skip


def test_only_what_alternation_would_take_the_other_way_is_needed() -> None:
    assert shown("A2 uB2 c2 ud2|ue2 f2 g2 a2|", MarkDensity.NEEDED) == {"b0n1": "D", "b1n1": "U!'"}


def test_a_tune_that_comes_round_reversed_needs_no_more_than_its_first_sign() -> None:
    assert shown("|:A4 B2c2:|", MarkDensity.NEEDED) == {"b0n1": "DU"}


def test_a_joined_note_after_a_jump_that_begins_a_stroke_on_every_pass_has_a_sign() -> None:
    tune, bowing = bowed("|:A8|[1 B8:|[2 (c8||d8)|")
    joined = Bowing("joined", joins=bowing.joins.set("b2n1", next(iter(bowing.joins.values()))))
    assert "b2n1" in signs(
        tune, joined, MarkDensity.EVERY
    )  # rule B11: what was played before it is not what is written


def test_directions_read_from_the_needed_signs_alone_are_the_true_ones() -> None:
    for text in ("A2 B2 rc2 d2|(ef)g2 rA2 B2|", "|:(AB)c2 uB2 uA2|ud4 e2 f2:|", "A2|vB4 vc4|d6:|"):
        tune, bowing = bowed(text)
        strokes = work_out(tune, bowing)
        needed = signs(tune, bowing, MarkDensity.NEEDED)
        bow = None
        for note in strokes.played:
            if not note.starts:
                continue
            passes = strokes.by_note[note.note_id]
            if note.note_id in needed:
                told = needed[note.note_id].bows
                bow = told[0] if len(told) == 1 else passes[note is not passes[0]].bow
            else:
                assert bow is not None
                bow = bow.turned
            assert bow is note.bow


def test_a_lifted_stroke_can_be_made_and_unmade() -> None:
    tune, bowing = bowed("A2B2c2d2|")
    lifted = toggle_retake(tune, bowing, "b0n3")
    assert signs(tune, lifted, MarkDensity.EVERY)["b0n3"] == BowSign((U,), fixed=True, retake=True)
    assert signs(tune, toggle_retake(tune, lifted, "b0n3"), MarkDensity.EVERY)["b0n3"] == BowSign((D,), fixed=False)
