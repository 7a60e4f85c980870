"""Engraved and printed pictures against approved ones, each with what there is to see in it."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from PySide6.QtGui import QColor, QImage, QPainter

from app.bow_sign_painting import paint_bow_signs
from app.painting import DARK_INKS, PRINT_INKS, Inks, paint_picture
from app.sheet import lay_out, paint_page
from core.bowing import Bow, Bowing, Join, fix_bow, join, separate_bows, toggle_retake
from core.engraving.bow_signs import MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.glyphs import WAVE
from core.engraving.kinds import Kind
from core.engraving.lines import break_lines
from core.engraving.picture import Glyph, Picture
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.sheet_plan import SheetPlan
from core.strokes import work_out
from core.tune import Tune
from tests.golden.approve import TOLERATED, assert_approved, difference

pytestmark = pytest.mark.usefixtures("qapp")
SCALE, MARGIN = 0.07, 300  # pixels a unit; units around the lines

REEL = """X:1
T:Lantern over the Lock
C:Ada Quern
R:reel
M:4/4
L:1/8
Q:"Lively" 1/2=96
K:G
P:A
(DE)|"G"~G2(BG) dG(BG)|"Am"A2{g}(^FA) "D7"dAFA|"G"G2 (3efg (dB)cA|"D7"FDEF vG2 (vA2|
"G"G2)(BG) dG(BG)|"C"c2 ec "Bb"_B2 =B2|"D7"(AFD)E FGAc|1 "G"BGAF G2:|2 "G"BGAF G2||
P:B
|:"Em"ge(eg) b2 ge|"Am7"a2 ea c'aea|"D"(f3g) ufd(AF)|"G"G4-G2z2:|
"""
JIG = """X:2
T:Wicket in the Wind
C:B. Holm
S:Orla Fenn
R:jig
M:6/8
L:1/8
K:D
A|"D"(FA)d f2(e|d)cB "A7"A2G|"D"FAd "Bm"fed|"Em"(ed)c "A"B2A|
"D"(FA)d !4!f2e|"G"(dc)B "D"A2F|"Em"GBd "A7"cea|"D"d3 d2:|
"""
STRATHSPEY = """X:3
T:Mistress of the Sluice
R:strathspey
M:C
L:1/8
K:A
e|A<A c>e A<A c>a|f<d B>d (3fed (3cBA|A<A c>e (3agf (3ecA|d>B G>B A2 A:|
"""
CHANGES = """X:4
T:Two Fields and a Gate
M:4/4
L:1/8
K:D
"D"d2fd Adfd|"G"e2ge Bege|"D"d2fd Adfd|"A7"egfe dcBA:|
K:C
|:"C"c2ec Gcec|"F"f2af cfaf|"C"c2ec Gcec|"G7"gfed cBA(G|
K:Bb
M:6/8
"Bb"B2)d Bdf|"Eb"g2e cde|[M:9/8]"F7"f2c f2c ABc|[M:6/8]"Bb"B3 B3|]
"""


def lesson(text: str) -> Lesson:
    return read_abc(text).lessons[0]


def engraved(tune: Tune, bowing: Bowing, inks: Inks = PRINT_INKS) -> tuple[list[Picture], QImage]:
    """All lines of a tune, one under the other, as the window shows them."""
    signs = bow_signs(tune, bowing, work_out(tune, bowing), MarkDensity.EVERY)
    engraver = Engraver()
    rows = rows_kept(tune, signs)
    pictures = [engraver.engrave(tune, bowing, line, rows) for line in break_lines(tune)]
    height = sum(picture.height + MARGIN for picture in pictures) + MARGIN
    image = QImage(int((18000 + 2 * MARGIN) * SCALE), int(height * SCALE), QImage.Format.Format_RGB32)
    image.fill(inks.paper)
    painter = QPainter(image)
    painter.scale(SCALE, SCALE)
    painter.translate(MARGIN, MARGIN)
    for picture in pictures:
        paint_picture(painter, picture, inks)
        paint_bow_signs(painter, picture, signs, inks)
        painter.translate(0, picture.height + MARGIN)
    painter.end()
    return pictures, image


def printed(lessons: list[Lesson], plan: SheetPlan, page: int = 0, dpi: int = 110) -> QImage:
    sheet = lay_out(lessons, plan)
    scale = dpi / 25.4
    image = QImage(
        int(sheet.paper.width_mm * scale), int(sheet.paper.height_mm * scale), QImage.Format.Format_Grayscale8
    )
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.scale(scale, scale)
    paint_page(painter, sheet.pages[page])
    painter.end()
    return image


def signs_drawn(pictures: list[Picture]) -> Counter[str]:
    return Counter(
        shape.code
        for picture in pictures
        for shape in picture.shapes
        if isinstance(shape, Glyph) and shape.kind is Kind.SIGN
    )


def test_a_reel_with_all_that_a_teacher_writes() -> None:
    """Boxed A and B; tempo; chords clear of bow signs; the slur over the line's end on both lines; a roll, a grace
    note, a triplet; two fixed down-bows, the second lifted for; first and second ending; a tie; a lone fixed up-bow."""
    given = lesson(REEL)
    pictures, image = engraved(given.tune, given.bowings[0])
    assert [len(picture.slurs) for picture in pictures] == [6, 4, 3]
    assert sum(curve.tie for picture in pictures for curve in picture.curves) == 1
    assert signs_drawn(pictures) == {WAVE: 1}
    assert_approved(image, "page-reel")


def test_a_jig_bowed_over_the_bar_line() -> None:
    """Beams by threes; a slur over a bar line; the pick-up as an up-bow; the fourth finger; no metre on line two."""
    given = lesson(JIG)
    pictures, image = engraved(given.tune, given.bowings[0])
    assert [len(picture.slurs) for picture in pictures] == [3, 2]
    assert_approved(image, "page-jig")


def test_changes_of_key_and_metre() -> None:
    """The first line ends with two naturals, the second with two flats and 6/8, each clear of the bar line and on the
    staff to its end, the slur running over them; the third changes to 9/8 and back on the way and ends with nothing."""
    given = lesson(CHANGES)
    pictures, image = engraved(given.tune, given.bowings[0])
    assert [len(picture.slurs) for picture in pictures] == [0, 1, 1]
    assert_approved(image, "page-changes")


def test_hooked_strathspey_pairs_on_a_dark_page() -> None:
    """Light ink on dark; hooked pairs under a slur with dots on both notes; dotted pairs beamed by beats; triplets."""
    given = lesson(STRATHSPEY)
    tune, bowing = given.tune, given.bowings[0]
    for bar in (1, 3):
        for second in (2, 4, 6, 8):
            bowing = join(tune, bowing, f"b{bar}n{second}", Join.HOOK)
    pictures, image = engraved(tune, bowing, DARK_INKS)
    assert signs_drawn(pictures).total() == 2 * 8
    assert_approved(image, "page-strathspey-dark")


def test_a_printed_page_with_two_bowings() -> None:
    """Title, dance, credits, names of the bowings; black signs where fixed, grey where derived, two where passes
    differ; the legend explains just these; nothing touches."""
    given = lesson(JIG)
    tune, written = given.tune, given.bowings[0]
    other = toggle_retake(tune, separate_bows(written, "Separate bows, one lift"), "b5n1")
    other = fix_bow(tune, other, "b3n1", Bow.UP)
    image = printed([replace(given, bowings=(written, other))], SheetPlan())
    assert_approved(image, "print-jig")


def test_a_second_page_with_few_marks() -> None:
    """Small title and page number; marks only where each bar begins."""
    given = lesson(REEL)
    many = [replace(given.bowings[0], name=f"Version {number}") for number in range(1, 5)]
    image = printed([replace(given, bowings=tuple(many))], SheetPlan(marks=MarkDensity.BARS), page=1)
    assert_approved(image, "print-second-page")


def test_a_moved_sign_is_seen() -> None:
    """The comparison itself: one bow sign turned round is more than it tolerates on a line of its own."""
    given = lesson(STRATHSPEY)
    _, image = engraved(given.tune, given.bowings[0])
    turned = fix_bow(given.tune, given.bowings[0], "b0n1", Bow.DOWN)
    _, other = engraved(given.tune, turned)
    assert difference(image, image) == 0
    assert difference(image, other) > TOLERATED
