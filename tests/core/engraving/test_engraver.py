from collections import Counter
from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from immutabledict import immutabledict

from core.bowing import Articulation, Bow, Bowing, Join, Ornament, Signs, fix_bow, join, set_signs
from core.engraving.engraver import Engraver
from core.engraving.kinds import Kind
from core.engraving.lines import Line, break_lines
from core.engraving.note_marks import ROOM_GLYPHS
from core.engraving.picture import SHARED, Curve, Glyph, Outline, Picture, slot_height
from core.tune import ChordSymbol, Key, Meter, Pitch, Tune, Words
from tests.core.builders import bowed, tune_of

REEL = "D2|(GA)BG dGBG|A2(FA) dAFA|GB(dg fd)B(c|A)FDF G2:|"
HEADS = {"E0A2", "E0A3", "E0A4"}  # SMuFL noteheadWhole, noteheadHalf, noteheadBlack


@pytest.fixture(scope="module")
def engraver() -> Engraver:
    return Engraver()


def starts(tune: Tune, bowing: Bowing) -> dict[str, int]:
    notes = [n.id for n in tune.sequence if not n.is_rest and not n.held and n.id not in bowing.joins]
    return dict.fromkeys(notes, 1)


def engraved(engraver: Engraver, text: str, meter: str = "4/4") -> Picture:
    tune, bowing = bowed(text, meter)
    return engraver.engrave(tune, bowing, Line(0, len(tune.bars)), starts(tune, bowing))


def curve_ends(picture: Picture, curve: Curve) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Where a curve begins and ends."""
    shape = picture.shapes[curve.shape]
    assert isinstance(shape, Outline)
    corners = [command.numbers[-2:] for command in shape.commands if command.numbers]
    return min(corners), max(corners)


def glyphs(picture: Picture, kind: Kind) -> Counter[str]:
    return Counter(shape.code for shape in picture.shapes if isinstance(shape, Glyph) and shape.kind is kind)


def test_every_note_and_rest_has_its_place_from_left_to_right(engraver: Engraver) -> None:
    tune = tune_of("D2|GABc z2d2|A8|")
    picture = engraver.engrave(tune, Bowing("plain"), Line(0, 3), {})
    assert list(picture.boxes) == [note.id for note in tune.sequence]
    assert all(a < b for a, b in pairwise(picture.heads[note.id].x for note in tune.sequence))
    assert all(picture.boxes[i].contains(head.x, head.y) for i, head in picture.heads.items())


def test_heads_stand_where_the_staff_says(engraver: Engraver) -> None:
    picture = engraved(engraver, "EGBdf z3")
    space = (picture.staff_bottom - picture.staff_top) / 4
    assert space == 180
    lines = [picture.staff_bottom - space * place for place in range(5)]  # E4, G4, B4, D5, F5 from the bottom
    assert [picture.heads[f"b0n{k}"].y for k in range(1, 6)] == pytest.approx(lines, abs=5)


def test_each_note_has_one_head_of_its_value(engraver: Engraver) -> None:
    picture = engraved(engraver, "A8|A4B2cd|")
    assert {code: n for code, n in glyphs(picture, Kind.NOTE).items() if code in HEADS} == {
        "E0A2": 1,
        "E0A3": 1,
        "E0A4": 3,
    }


def test_slurs_and_ties_are_counted_and_know_their_notes(engraver: Engraver) -> None:
    picture = engraved(engraver, "(GA)BG d2-d(B|c)A4 z3|")
    assert [(s.start, s.end) for s in picture.slurs] == [("b0n1", "b0n2"), ("b0n7", "b1n1")]
    assert [(c.start, c.end) for c in picture.curves if c.tie] == [("b0n5", "b0n6")]
    for slur in picture.slurs:
        middle = (slur.box.left + slur.box.right) / 2
        assert picture.heads[slur.start].x < middle < picture.heads[slur.end].x
        assert picture.shapes[slur.shape].owner == slur.start


def test_a_slur_over_the_end_of_a_line_is_drawn_on_both(engraver: Engraver) -> None:
    tune, bowing = bowed("A8|B6c(d|e)f6g|A8|")
    first, second = (engraver.engrave(tune, bowing, line, {}) for line in (Line(0, 2), Line(2, 4)))
    for picture in (first, second):
        assert [(s.start, s.end) for s in picture.slurs] == [("b1n3", "b2n1")]
    assert first.slurs[0].box.right > first.heads["b1n3"].x
    assert second.slurs[0].box.left < second.heads["b2n1"].x
    assert set(first.boxes) == {n.id for bar in tune.bars[:2] for n in bar.notes}
    assert set(second.measures) == {2, 3}


@pytest.mark.parametrize("over", ["(d|B4)", "d-|d4", "d|B4"], ids=["slur", "tie", "nothing"])
def test_a_warned_change_stands_behind_the_last_bar_line(engraver: Engraver, over: str) -> None:
    tune, bowing = bowed(f"GABc G4|A4 c3{over} B4|A8|")
    bars = (*tune.bars[:2], *(replace(bar, key=Key(-2), meter=Meter((2,), 2, "cut")) for bar in tune.bars[2:]))
    tune = replace(tune, bars=bars)
    picture = engraver.engrave(tune, bowing, Line(0, 2), starts(tune, bowing))
    end = picture.measures[1].right
    behind = [shape for shape in picture.shapes if isinstance(shape, Glyph) and shape.box.left > end]
    assert list(picture.measures) == [0, 1]
    assert [glyph.code for glyph in behind] == ["E260", "E260", "E08B"]  # SMuFL accidentalFlat, timeSigCutCommon
    assert all(glyph.box.right <= picture.width for glyph in behind)
    assert len(picture.curves) == (over != "d|B4")
    plain = engraver.engrave(tune, replace(bowing, joins=immutabledict()), Line(0, 2), starts(tune, bowing))
    assert picture.heads == plain.heads


def test_what_bowings_share_is_left_out_and_all_else_stays_where_it_is(engraver: Engraver) -> None:
    tune, bowing = bowed("G4 (AB)c2|d8-|d4 (ef)(ed)|A8|")
    chords = (ChordSymbol(Fraction(0), "G"), ChordSymbol(Fraction(2), "Em7b5"))
    first = replace(
        tune.bars[0], chords=chords, part="A", segno=True, words=(Words(Fraction(1), "softly", above=False),), fine=True
    )
    tune = replace(tune, bars=(first, *tune.bars[1:]))
    slots = starts(tune, bowing)
    whole = engraver.engrave(tune, bowing, Line(0, 4), slots)
    alone = engraver.engrave(tune, bowing, Line(0, 4), slots, shared=False)
    assert {text.kind for text in whole.texts} >= {Kind.CHORD, Kind.PART, Kind.WORDS}
    assert {item.kind for item in (*alone.shapes, *alone.texts)}.isdisjoint(SHARED)
    assert (alone.heads, alone.boxes, alone.bow_slots, alone.measures) == (
        whole.heads, whole.boxes, whole.bow_slots, whole.measures
    )  # fmt: skip
    assert [alone.shapes[curve.shape] for curve in alone.curves] == [
        whole.shapes[curve.shape] for curve in whole.curves
    ]
    assert alone.top > whole.top
    assert alone.height < whole.height
    boxes = [*alone.boxes.values(), *(slot.box() for slot in alone.bow_slots.values())]
    assert all(alone.top < box.top and box.bottom < alone.height for box in boxes)
    assert engraver.engrave(tune, bowing, Line(0, 4), slots, shared=False) is alone


def test_bow_slots_stand_over_their_notes_above_the_staff(engraver: Engraver) -> None:
    tune, bowing = bowed(REEL)
    picture = engraver.engrave(tune, bowing, Line(0, 5), starts(tune, bowing))
    assert set(picture.bow_slots) == set(starts(tune, bowing))
    for note_id, slot in picture.bow_slots.items():
        assert abs(slot.x - picture.heads[note_id].x) < 60
        assert slot.bottom < picture.staff_top
        assert slot.bottom < picture.boxes[note_id].top + 20
        assert slot.bottom - slot_height(slot) > 0
    assert not {"E612", *ROOM_GLYPHS} & {shape.code for shape in picture.shapes if isinstance(shape, Glyph)}


@pytest.mark.parametrize("rows", [1, 2])
def test_the_room_kept_is_as_large_as_the_signs(engraver: Engraver, rows: int) -> None:
    tune, bowing = bowed("A8|")
    chorded = replace(tune.bars[0], chords=(ChordSymbol(Fraction(0), "D"),))
    picture = engraver.engrave(replace(tune, bars=(chorded,)), bowing, Line(0, 1), {"b0n1": rows})
    slot = picture.bow_slots["b0n1"]
    assert slot.rows == rows
    assert slot.size == 1.25 * 720
    assert 60 < slot.box().top - picture.texts[0].y < 240


def test_slurs_hug_the_heads_and_bow_signs_stand_over_their_beginnings(engraver: Engraver) -> None:
    """Over a flat pair both ends are as high and as near to their heads; the sign stands outside the slur."""
    picture = engraved(engraver, "(ee)(ee) (e4|e8)|")
    for slur in picture.slurs[:2]:
        ends = curve_ends(picture, slur)
        assert ends[0][1] == pytest.approx(ends[1][1], abs=1)
        for (x, y), note_id in zip(ends, (slur.start, slur.end), strict=True):
            assert abs(x - picture.heads[note_id].x) < 60
            assert 90 < picture.heads[note_id].y - y < 270, "from half a space over the head to a space and a half"
        slot = picture.bow_slots[slur.start]
        assert slot.bottom < ends[0][1]
        assert slot.bottom > slur.box.top - 180


def test_ornaments_and_fingers_stand_between_the_note_and_its_bow_sign(engraver: Engraver) -> None:
    tune, bowing = bowed("f4 f4|")
    signs = {"b0n1": Signs(ornaments=(Ornament.ROLL,)), "b0n2": Signs(fingerings=("4",))}
    picture = engraver.engrave(tune, replace(bowing, signs=immutabledict(signs)), Line(0, 1), starts(tune, bowing))
    roll = next(shape for shape in picture.shapes if shape.kind is Kind.SIGN)
    finger = next(text for text in picture.texts if text.kind is Kind.SIGN)
    assert picture.heads["b0n1"].y > roll.box.top > picture.bow_slots["b0n1"].bottom
    assert picture.heads["b0n2"].y > finger.y > picture.bow_slots["b0n2"].bottom
    assert finger.text == "4"


def test_a_finger_stands_over_the_stem_not_beside_it(engraver: Engraver) -> None:
    tune, bowing = bowed("A4 A4|")
    bowing = replace(bowing, signs=immutabledict({"b0n1": Signs(fingerings=("0",))}))
    picture = engraver.engrave(tune, bowing, Line(0, 1), {})
    assert picture.texts[0].y < picture.boxes["b0n1"].top


def test_a_second_row_moves_no_note_sideways_and_no_first_row(engraver: Engraver) -> None:
    tune, bowing = bowed(REEL)
    one, two = (engraver.engrave(tune, bowing, Line(0, 5), dict.fromkeys(starts(tune, bowing), n)) for n in (1, 2))
    assert {i: head.x for i, head in one.heads.items()} == {i: head.x for i, head in two.heads.items()}
    for note_id, slot in one.bow_slots.items():
        assert two.bow_slots[note_id].rows == 2
        assert two.staff_top - two.bow_slots[note_id].bottom == pytest.approx(one.staff_top - slot.bottom, abs=10)


def test_signs_over_one_beam_share_a_height(engraver: Engraver) -> None:
    picture = engraved(engraver, "EGBd fdBG|")
    heights = [picture.bow_slots[f"b0n{k}"].bottom for k in range(1, 9)]
    assert len(set(heights[:4])) == 1
    assert len(set(heights[4:])) == 1


def test_a_finger_lifts_the_sign_of_its_own_note_alone(engraver: Engraver) -> None:
    tune, bowing = bowed("BBBB|")
    plain = engraver.engrave(tune, bowing, Line(0, 1), starts(tune, bowing))
    bowing = replace(bowing, signs=immutabledict({"b0n2": Signs(fingerings=("4",))}))
    fingered = engraver.engrave(tune, bowing, Line(0, 1), starts(tune, bowing))
    lift = {
        note_id: (fingered.staff_top - slot.bottom) - (plain.staff_top - plain.bow_slots[note_id].bottom)
        for note_id, slot in fingered.bow_slots.items()
    }
    assert lift["b0n2"] > 180
    assert max(lift["b0n1"], lift["b0n3"], lift["b0n4"]) < 1


def test_all_lines_are_equally_wide_but_a_very_short_one(engraver: Engraver) -> None:
    tune = tune_of("GABc defg|" * 4 + "GABc d2e2|G4 G4||A8|")
    for line in (Line(0, 4), Line(4, 6)):
        picture = engraver.engrave(tune, Bowing("plain"), line, {}, 18000)
        assert picture.width == 18000
        assert max(box.right for box in picture.measures.values()) == pytest.approx(18000, abs=30)
    alone = engraver.engrave(tune, Bowing("plain"), Line(6, 7), {}, 18000)
    assert alone.width == 18000
    assert alone.measures[6].right < 9000


def test_a_line_that_cannot_be_so_narrow_says_how_wide_it_is(engraver: Engraver) -> None:
    tune = tune_of("GABc defg|" * 4)
    picture = engraver.engrave(tune, Bowing("plain"), Line(0, 4), {}, 6000)
    assert picture.width > 6000
    assert set(picture.boxes) == {note.id for note in tune.sequence}
    assert picture.staff_bottom - picture.staff_top == 720  # one system


def test_a_line_too_narrow_for_its_notes_keeps_the_slurs_over_its_ends(engraver: Engraver) -> None:
    tune, bowing = bowed("GABc defg|" * 3 + "GABc def(g|" + "A)ABc defg|" + "GABc defg|" * 3)
    wide, narrow = (engraver.engrave(tune, bowing, Line(0, 4), {}, width) for width in (18000, 6000))
    assert narrow.width > 6000
    assert [(s.start, s.end) for s in narrow.slurs] == [(s.start, s.end) for s in wide.slurs] == [("b3n8", "b4n1")]
    assert list(narrow.boxes) == list(wide.boxes)


def test_slurs_over_the_end_of_a_line_do_not_change_its_spacing(engraver: Engraver) -> None:
    tune, bowing = bowed("GABc defg|" * 3 + "GABc def(g|" + "A)ABc defg|" + "GABc defg|" * 3)
    for line in (Line(0, 4), Line(4, 8)):
        slurred, plain = (engraver.engrave(tune, b, line, {}) for b in (bowing, Bowing("plain")))
        assert len(slurred.slurs) == 1
        assert {i: p.x for i, p in slurred.heads.items()} == pytest.approx({i: p.x for i, p in plain.heads.items()})


class TestKeeping:
    """The same picture comes back while nothing on the line changes."""

    TUNE, BOWING = bowed("GABc defg|" * 8)
    LINES = break_lines(TUNE)

    def pictures(self, engraver: Engraver, bowing: Bowing, slots: Mapping[str, int]) -> list[Picture]:
        return [engraver.engrave(self.TUNE, bowing, line, slots) for line in self.LINES]

    def test_an_edit_on_another_line_costs_nothing(self, engraver: Engraver) -> None:
        slots = starts(self.TUNE, self.BOWING)
        before = self.pictures(engraver, self.BOWING, slots)
        edited = join(self.TUNE, self.BOWING, "b1n2")
        after = self.pictures(engraver, edited, starts(self.TUNE, edited))
        assert after[0] is not before[0]
        assert after[1] is before[1]
        assert self.pictures(engraver, self.BOWING, slots)[0] is before[0]

    def test_a_fixed_direction_costs_nothing(self, engraver: Engraver) -> None:
        slots = starts(self.TUNE, self.BOWING)
        before = self.pictures(engraver, self.BOWING, slots)
        assert self.pictures(engraver, fix_bow(self.TUNE, self.BOWING, "b0n3", Bow.UP), slots) == before

    def test_a_join_over_the_end_of_a_line_draws_both_lines_again(self, engraver: Engraver) -> None:
        before = self.pictures(engraver, self.BOWING, {})
        after = self.pictures(engraver, join(self.TUNE, self.BOWING, "b4n1"), {})
        assert after[0] is not before[0]
        assert after[1] is not before[1]

    def test_a_join_elsewhere_in_the_neighbouring_bar_does_not(self, engraver: Engraver) -> None:
        before = self.pictures(engraver, self.BOWING, {})
        after = self.pictures(engraver, join(self.TUNE, self.BOWING, "b4n6"), {})
        assert after[0] is before[0]

    def test_signs_width_and_tune_tell_pictures_apart(self, engraver: Engraver) -> None:
        line = self.LINES[0]
        plain = engraver.engrave(self.TUNE, self.BOWING, line, {})
        rolled = set_signs(self.BOWING, "b0n1", Signs(ornaments=(Ornament.ROLL,)))
        other = replace(self.TUNE, bars=tune_of("AAAA BBBB|" * 8).bars)
        assert engraver.engrave(self.TUNE, rolled, line, {}) is not plain
        assert engraver.engrave(self.TUNE, self.BOWING, line, {}, 17000) is not plain
        assert engraver.engrave(other, self.BOWING, line, {}) is not plain
        assert engraver.engrave(self.TUNE, self.BOWING, line, {}) is plain

    def test_no_more_pictures_are_kept_than_told(self) -> None:
        small = Engraver(kept=1)
        first, second = self.LINES[:2]
        kept = small.engrave(self.TUNE, self.BOWING, first, {})
        small.engrave(self.TUNE, self.BOWING, second, {})
        assert small.engrave(self.TUNE, self.BOWING, first, {}) is not kept


@pytest.mark.parametrize(
    ("ornament", "code"),
    [(Ornament.TURN, "E567"), (Ornament.INVERTED_TURN, "E568"), (Ornament.TRILL, "E566"), (Ornament.ROLL, "EAAF"),
     (Ornament.MORDENT, "E56D"), (Ornament.UPPER_MORDENT, "E56C"), (Ornament.SLIDE, "E587")],
)  # fmt: skip
def test_ornaments_have_the_signs_of_the_standard(engraver: Engraver, ornament: Ornament, code: str) -> None:
    """SMuFL 1.4: ornamentTurn, ornamentTurnInverted, ornamentTrill, ornamentMordent, ornamentShortTrill, -Schleifer.

    It has no roll: ABC 2.1 (4.14) writes a wave, and SMuFL's wave is wiggleGlissando.
    """
    tune, bowing = bowed("A8|")
    bowing = replace(bowing, signs=immutabledict({"b0n1": Signs(ornaments=(ornament,))}))
    assert glyphs(engraver.engrave(tune, bowing, Line(0, 1), {}), Kind.SIGN) == {code: 1}


def test_a_roll_stands_where_a_turn_would_and_is_as_wide(engraver: Engraver) -> None:
    """So that the two are told apart by their shape alone, and neither runs into its neighbours."""
    tune, plain = bowed("A8|")
    boxes = []
    for ornament in (Ornament.ROLL, Ornament.TURN):
        bowing = replace(plain, signs=immutabledict({"b0n1": Signs(ornaments=(ornament,))}))
        picture = engraver.engrave(tune, bowing, Line(0, 1), {})
        boxes += [shape.box for shape in picture.shapes if isinstance(shape, Glyph) and shape.kind is Kind.SIGN]
    roll, turn = boxes
    assert roll.centre.x == pytest.approx(turn.centre.x, abs=0.1 * turn.width)
    assert roll.centre.y == pytest.approx(turn.centre.y, abs=0.3 * turn.height)
    assert roll.width == pytest.approx(turn.width, rel=0.15)
    assert roll.bottom < picture.boxes["b0n1"].top


def test_every_articulation_is_drawn_and_belongs_to_its_note(engraver: Engraver) -> None:
    tune, bowing = bowed("A8|")
    for sign in Articulation:
        marked = replace(bowing, signs=immutabledict({"b0n1": Signs(articulations=(sign,))}))
        drawn = engraver.engrave(tune, marked, Line(0, 1), {})
        signs = [shape for shape in drawn.shapes if shape.kind is Kind.SIGN]
        assert len(signs) == (2 if sign is Articulation.DETACHED_LEGATO else 1), sign
        assert {shape.owner for shape in signs} == {"b0n1"}


def test_accidentals_and_double_stops(engraver: Engraver) -> None:
    tune = tune_of("A4B4|")
    notes = (
        replace(tune.bars[0].notes[0], pitches=(Pitch(4, "F", 1), Pitch(4, "B", -1))),
        replace(tune.bars[0].notes[1], pitches=(Pitch(4, "F"),)),
    )
    tune = replace(tune, bars=(replace(tune.bars[0], notes=notes, key=Key(1)),))
    picture = engraver.engrave(tune, Bowing("plain"), Line(0, 1), {})
    assert glyphs(picture, Kind.NOTE) == {"E0A3": 3, "E260": 1, "E261": 1}  # heads, flat, natural; the key has F sharp
    assert glyphs(picture, Kind.STAFF)["E262"] == 1
    assert picture.heads["b0n1"].y == pytest.approx((picture.staff_bottom - 90 + picture.staff_bottom - 360) / 2, abs=5)


def test_texts_are_told_apart_and_flats_can_be_searched_for(engraver: Engraver) -> None:
    tune = tune_of("{A}A4B4|c8|{B}A8|B8|")
    bars = [replace(bar, chords=(ChordSymbol(Fraction(0), "Bb7"),)) for bar in tune.bars]
    bars[3] = replace(bars[3], words=(Words(Fraction(0), "gently"),))
    picture = engraver.engrave(replace(tune, bars=tuple(bars)), Bowing("plain"), Line(2, 4), {})
    found = {kind: [text.text for text in picture.texts if text.kind is kind] for kind in Kind}
    assert found[Kind.CHORD] == ["B♭7", "B♭7"]
    assert found[Kind.PART] == ["B"]
    assert found[Kind.NUMBER] == ["3"]
    assert found[Kind.WORDS] == ["gently"]
    frame = next(shape for shape in picture.shapes if shape.kind is Kind.PART)
    clef = next(shape for shape in picture.shapes if isinstance(shape, Glyph) and shape.code == "E050")
    assert not frame.box.overlaps(clef.box)
    assert frame.box.left >= -15


def test_nothing_reaches_outside_the_picture(engraver: Engraver) -> None:
    picture = engraved(engraver, "(g3/2b/)(bg) (eb)(=eb)|(GE)(EC) D2(CD)|")
    for shape in picture.shapes:
        assert shape.box.top >= 0
        assert shape.box.bottom <= picture.height
        assert shape.box.left >= -30
        assert shape.box.right <= picture.width + 30


def test_a_hook_looks_otherwise_than_a_slur(engraver: Engraver) -> None:
    tune, bowing = bowed("A3B c2d2|")
    dots = {}
    for how in Join:
        joined = join(tune, bowing, "b0n2", how)
        picture = engraver.engrave(tune, joined, Line(0, 1), {})
        assert len(picture.slurs) == 1
        dots[how] = glyphs(picture, Kind.SIGN)
    assert dots == {Join.SLUR: {}, Join.HOOK: {"E4A2": 1, "E4A3": 1}}  # over the B, under the A


def test_texts_of_a_file_never_reach_the_engraver_raw(engraver: Engraver) -> None:
    tune = tune_of("A8|")
    for text in ("</mei>", "&#0;", "\x00", "<!DOCTYPE x>", "%s%n", "𝄞" * 400, "\ud800", "]]>", "ö\u202e"):
        bar = replace(
            tune.bars[0], chords=(ChordSymbol(Fraction(0), text),), words=(Words(Fraction(0), text),), part=text
        )
        picture = engraver.engrave(replace(tune, bars=(bar,)), Bowing("plain"), Line(0, 1), {})
        assert list(picture.boxes) == ["b0n1"]


def test_a_bar_of_very_many_notes_is_as_wide_as_they_need(engraver: Engraver) -> None:
    tune = tune_of("A/4" * 128 + "|", "16/4")
    picture = engraver.engrave(tune, Bowing("plain"), Line(0, 1), {})
    heads = [picture.heads[note.id].x for note in tune.sequence]
    assert min(b - a for a, b in pairwise(heads)) > 226, "heads, 2.26 mm wide, do not touch"
    assert picture.width > 18000
    assert max(heads) < picture.width


def test_empty_bars_and_bars_of_rests_have_their_place(engraver: Engraver) -> None:
    tune = tune_of("z8|z2z6|A8|")
    empty = replace(tune.bars[0], notes=())
    tune = replace(tune, bars=(empty, *tune.bars))
    picture = engraver.engrave(tune, Bowing("plain"), Line(0, 4), {})
    assert list(picture.measures) == [0, 1, 2, 3]
    assert set(picture.boxes) == {note.id for note in tune.sequence}
