import pytest

from core.engraving.glyphs import DOWN_BOW, UP_BOW, Command, glyph_box, glyph_outline, outline_box, parse_outline


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("M1 2L3 4z", [("M", 1, 2), ("L", 3, 4), ("Z",)]),
        ("m1 2l3 4 5-6", [("M", 1, 2), ("L", 4, 6), ("L", 9, 0)]),
        ("M1,2 3,4", [("M", 1, 2), ("L", 3, 4)]),
        ("m1 1 2 2", [("M", 1, 1), ("L", 3, 3)]),
        ("M1 2H5v-3", [("M", 1, 2), ("L", 5, 2), ("L", 5, -1)]),
        ("M0 0c1 2 3 4 5 6", [("M", 0, 0), ("C", 1, 2, 3, 4, 5, 6)]),
        ("M0 0C1 2 3 4 5 6s1 1 2 2", [("M", 0, 0), ("C", 1, 2, 3, 4, 5, 6), ("C", 7, 8, 6, 7, 7, 8)]),
        ("M1 1S2 2 3 3", [("M", 1, 1), ("C", 1, 1, 2, 2, 3, 3)]),
        ("M0 0Q3 3 6 0", [("M", 0, 0), ("C", 2, 2, 4, 2, 6, 0)]),
        ("M5 5l1 0zm1 1l1 1", [("M", 5, 5), ("L", 6, 5), ("Z",), ("M", 6, 6), ("L", 7, 7)]),
        (".5", None), ("M1 2A1 1 0 0 0 3 4", None), ("M1", None), ("M0 0z1 2", None),
    ],
)  # fmt: skip
def test_path_data_becomes_absolute_commands(text: str, expected: list[tuple[object, ...]] | None) -> None:
    if expected is None:
        with pytest.raises(ValueError, match="cannot read this outline"):
            parse_outline(text)
    else:
        assert [(letter, *numbers) for letter, numbers in parse_outline(text)] == expected


def test_the_box_of_a_curve_ends_where_the_curve_turns_not_at_its_control_points() -> None:
    # a parabola from 0,0 to 6,0 with its vertex at half the height of the control points' quadratic one
    curve = parse_outline("M0 0Q3 4 6 0")
    assert outline_box(curve) == pytest.approx((0, 0, 6, 2))
    assert outline_box((Command("M", (1, 5)), Command("L", (-2, 7)))) == (-2, 5, 1, 7)


def test_the_bow_signs_are_the_ones_of_the_standard() -> None:
    """SMuFL U+E610 stringsDownBow: open below; U+E612 stringsUpBow: its point is below."""
    up = [numbers for letter, numbers in glyph_outline(UP_BOW) if letter != "Z"]
    foot = min(y for *_, y in up)
    assert len({x for *_, x, y in up if y == foot}) == 1
    assert len({x for *_, x, y in up if y == max(y for *_, y in up)}) > 1
    left, bottom, right, top = glyph_box(DOWN_BOW)
    corners = {(x, y) for letter, numbers in glyph_outline(DOWN_BOW) if letter != "Z" for *_, x, y in [numbers]}
    assert {(left, bottom), (right, bottom), (left, top), (right, top)} <= corners
    assert glyph_box(UP_BOW)[3] > glyph_box(DOWN_BOW)[3], "the up-bow is the taller one and so keeps room for both"


def test_a_glyph_that_the_font_lacks_is_empty() -> None:
    assert glyph_outline("FFFF") == ()
    assert glyph_box("FFFF") == (0, 0, 0, 0)
