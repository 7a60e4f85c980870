"""Sheets of every kind on every paper, rendered: no ink lies outside the margins, no two boxes meet."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtGui import QColor, QImage, QPainter

from app.painting import run_width
from app.sheet import Page, Sheet, lay_out, paint_page
from app.sheet_format import MARGIN_MM, cells
from core.bowing import Bowing, separate_bows
from core.engraving.picture import Anchor, Box, Text
from core.lesson import AS_WRITTEN, Lesson
from core.reading import read_file
from core.sheet_plan import CAUTION, NoteSize, SheetKind, SheetPlan, TextBlock, begin
from core.tune import Key, Meter
from core.tune_set import Entry, TuneSet
from tests.core.builders import bowed

pytestmark = pytest.mark.usefixtures("qapp")
DPI = 60
WORDS = ("slow", "bow", "elbow", "wrist", "listen", "again", "quietly", "drone", "lean", "light")
ESSAY = "\n\n".join(" ".join(WORDS[(7 * n + k) % 10] for k in range(50)) + "." for n in range(10))  # 500 words
TUNE = """X:1
T:{title}
T:The Old Sluice
C:Ada Quern
S:the Weir book
R:reel
M:4/4
L:1/8
Q:1/2=96
K:G
"""
BARS = '"G"GABc d2(de)|"Am7"(gf)ed "D7"B2AB|"Em"~G2Bd gdBd|1 "C"e2(dB) "D"A4:|2 "C"e2(dB) "G"G4||'


def lesson(bars: str = BARS * 2, title: str = "Gate of the Weir", bowings: int = 1) -> Lesson:
    found = read_file((TUNE.format(title=title) + bars).encode()).lessons[0]
    first = found.bowings[0]
    return replace(found, bowings=tuple(replace(first, name=f"Bowing {number}") for number in range(1, bowings + 1)))


def long_tune() -> Lesson:
    return lesson("|".join(f'"{chord}"GABc d2(de)' for chord in ("G", "Am", "D7", "Em") * 16) + "|")


def changing_tune() -> Lesson:
    """Each line begins in another key and metre than the one before it."""
    plain = lesson('"G"G/A/B/c/ (d/e/d/)B/ GABc|' * 16)
    keys = Key(0), Key(7), Key(0), Key(-7)
    meters = Meter((4,), 4), Meter((2,), 2, "cut"), Meter((2, 3, 3), 8), Meter((4,), 4, "common")
    bars = tuple(
        replace(bar, key=keys[index // 4], meter=meters[index // 4]) for index, bar in enumerate(plain.tune.bars)
    )
    return replace(plain, tune=replace(plain.tune, bars=bars))


def text_box(text: Text) -> Box:
    """What the letters of a text cover, without the tips of accents and tails."""
    width = sum(run_width(run) for run in text.runs)
    size = max(run.size for run in text.runs)
    left = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[text.anchor]
    return Box(left, text.y - 0.7 * size, left + width, text.y + 0.2 * size)


def boxes(page: Page) -> Iterator[Box]:
    for line in page.lines:
        yield Box(line.x_mm, line.y_mm, line.x_mm + line.picture.width * line.scale, line.y_mm + line.height_mm)
    yield from map(text_box, page.texts)


def words(sheet: Sheet) -> str:
    return " ".join(text.text for page in sheet.pages for text in page.texts)


def ink(page: Page, sheet: Sheet) -> np.ndarray:
    """Which pixels of a page are not white, cutting lines left out."""
    scale = DPI / 25.4
    image = QImage(
        round(sheet.paper.width_mm * scale), round(sheet.paper.height_mm * scale), QImage.Format.Format_Grayscale8
    )
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.scale(scale, scale)
    paint_page(painter, replace(page, rules=tuple(rule for rule in page.rules if not rule.dashed)))
    painter.end()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : image.width()] < 250


def assert_all_in_place(sheet: Sheet) -> None:
    width, height, corners = cells(sheet.paper, sheet.copies)
    margin = MARGIN_MM[sheet.copies]
    for number, page in enumerate(sheet.pages, 1):
        found = list(boxes(page))
        assert found, f"page {number} is empty"
        for place, box in enumerate(found):
            if box.left == box.right:  # a text of soft hyphens alone shows nothing
                continue
            inside = [
                Box(x + margin, y + margin, x + width - margin, y + height - margin).grown(0.05, 0.05)
                for x, y in corners
            ]
            assert any(
                one.left <= box.left < box.right <= one.right and one.top <= box.top < box.bottom <= one.bottom
                for one in inside
            ), f"page {number}: {box} is not between the margins"
            for other in found[place + 1 :]:
                assert not box.overlaps(other), f"page {number}: {box} meets {other}"
        inked = ink(page, sheet)
        allowed = np.zeros_like(inked)
        for x, y in corners:
            left, top, right, bottom = (
                round(at * DPI / 25.4)
                for at in (x + margin - 0.5, y + margin - 0.5, x + width - margin + 0.5, y + height - margin + 0.5)
            )
            allowed[top : bottom + 1, left : right + 1] = True
        outside = np.argwhere(inked & ~allowed)
        assert not len(outside), f"page {number}: ink outside the margins at {outside[:3] * 25.4 / DPI} mm"


LESSONS: dict[str, Callable[[], Lesson]] = {
    "a short tune": lesson,
    "64 bars": long_tune,
    "eight bowings": lambda: lesson(bowings=8),
    "a long title": lambda: lesson(title="The " + "very long " * 14 + "W" * 70),
    "one bar": lambda: Lesson(*(lambda tune, bowing: (tune, (bowing,)))(*bowed("GABc dedB|]"))),
    "nothing to bow": lambda: Lesson(bowed("z8|]")[0], (Bowing("Silence"),)),
    "another key and metre on each line": changing_tune,
    "many notes": lambda: lesson("G/A/B/c/ d/e/f/g/ a/g/f/e/ d/c/B/A/|" * 8),
}


ON_EACH_KIND = [
    *((SheetKind.TEACHER, name) for name in LESSONS),
    (SheetKind.PLAIN, "eight bowings"), (SheetKind.CLASS, "a long title"), (SheetKind.CLASS, "many notes"),
    (SheetKind.CLASS, "another key and metre on each line"),
    (SheetKind.EXERCISE, "a short tune"), (SheetKind.EXERCISE, "nothing to bow"),
    (SheetKind.SET, "a short tune"), (SheetKind.SET, "nothing to bow"), (SheetKind.SET, "one bar"),
]  # fmt: skip


@pytest.mark.parametrize(("kind", "name"), ON_EACH_KIND)
def test_nothing_is_cut_and_nothing_overlaps(kind: SheetKind, name: str) -> None:
    plan = replace(begin(kind), strip=True, footer="Tuesday class", after=TextBlock("Homework", "Bars 1 to 4."))
    assert_all_in_place(lay_out([LESSONS[name]()], plan))


@pytest.mark.parametrize(("kind", "changes"), [
    (SheetKind.CLASS, {"landscape": True, "paper": "Letter"}),
    (SheetKind.TEACHER, {"before": TextBlock("Listen", ESSAY), "after": TextBlock("Homework", ESSAY)}),
    (SheetKind.CLASS, {"copies": 2}), (SheetKind.EXERCISE, {"copies": 4}),
    (SheetKind.TEACHER, {"copies": 2, "landscape": True, "paper": "Letter"}),
    (SheetKind.TEACHER, {"copies": 4, "before": TextBlock("Listen " * 20, ESSAY), "strip": True}),
    (SheetKind.PLAIN, {"footer": "The class of the long name " * 12}),
    *((SheetKind.TEACHER, {"size": size, "strip": True}) for size in NoteSize),
    *((SheetKind.PLAIN, {"size": size, "copies": 4}) for size in (NoteSize.LARGE, NoteSize.SCREEN)),
], ids=str)  # fmt: skip
def test_nothing_is_cut_whatever_the_paper(kind: SheetKind, changes: dict[str, object]) -> None:
    assert_all_in_place(lay_out([lesson(bowings=2)], replace(begin(kind), **changes)))


def test_a_set_stands_in_order_with_its_joins() -> None:
    one, other = lesson(title="One"), lesson(title="Other")
    given = TuneSet((Entry(one.tune, one.bowings[0], 2), Entry(other.tune, other.bowings[0])))
    sheet = lay_out(given, replace(begin(SheetKind.SET), before=TextBlock("", ESSAY)))
    assert_all_in_place(sheet)
    said = words(sheet)
    assert "One / Other" in said
    assert said.index("the second time") < said.index("“Other” begins") < said.index("Back to the start:")
    for text in ("Played twice.", "“Other” begins", "Back to the start:"):
        assert text in said
    assert sum(len(page.signs) for page in sheet.pages) >= 2 * 3


def test_one_copy_less_where_as_many_do_not_fit() -> None:
    dense = lesson("|".join(["G/4A/4B/4c/4d/4e/4f/4g/4" * 4] * 4) + "|")
    assert lay_out([dense], SheetPlan(copies=4)).copies < 4
    assert lay_out([lesson()], SheetPlan(copies=4)).copies == 4


def test_copies_of_a_page_are_equal() -> None:
    sheet = lay_out([lesson()], SheetPlan(copies=2))
    _, height, _ = cells(sheet.paper, 2)
    for page in sheet.pages:
        half = len(page.texts) // 2
        assert [replace(text, y=text.y + height) for text in page.texts[:half]] == pytest.approx(page.texts[half:])


class TestTeacher:
    def test_totals_and_findings_are_told_in_words(self) -> None:
        tune, bowing = bowed("GABc dedB|(GGB)c dedB|]")
        said = words(lay_out([Lesson(tune, (bowing,))], begin(SheetKind.TEACHER)))
        assert "Accents aimed at: on the beat." in said
        assert "14 strokes" in said
        assert "Strings: G3 D4 A4 E5 (standard)." in said
        assert "Note: In bar 2, the second note is slurred to the same note" in said

    def test_nothing_found_is_said_too(self) -> None:
        said = words(lay_out([Lesson(bowed("A2B2c2d2|]")[0], (Bowing("B"),))], begin(SheetKind.TEACHER)))
        assert "The check finds nothing to tell." in said

    def test_both_can_be_left_out(self) -> None:
        plan = replace(begin(SheetKind.TEACHER), findings=False, totals=False)
        said = words(lay_out([lesson()], plan))
        assert "Totals" not in said
        assert "What the check tells" not in said


def test_the_bowing_that_every_book_has_is_named_only_beside_others() -> None:
    given = lesson()
    first = replace(given.bowings[0], name=AS_WRITTEN)
    alone, beside = replace(given, bowings=(first,)), replace(given, bowings=(first, replace(first, name="Mine")))
    for kind in SheetKind:
        assert AS_WRITTEN not in words(lay_out([alone], begin(kind)))
    assert AS_WRITTEN in words(lay_out([beside], begin(SheetKind.CLASS)))


class TestExercise:
    plan = begin(SheetKind.EXERCISE)

    def test_the_key_is_a_page_of_its_own_and_can_be_left_out(self) -> None:
        asked, key = lay_out([lesson()], self.plan).pages
        assert not asked.lines[0].signs
        assert key.lines[0].signs
        assert any(text.text == "Key: Gate of the Weir" for text in key.texts)
        assert len(lay_out([lesson()], replace(self.plan, key=False)).pages) == 1

    def test_no_slur_and_no_sign_gives_the_answer_away(self) -> None:
        asked, key = lay_out([lesson()], replace(self.plan, strip=True)).pages
        assert not any(line.picture.slurs for line in asked.lines)
        assert any(line.picture.slurs for line in key.lines)
        assert not any(line.strip for line in asked.lines)
        assert any(line.strip for line in key.lines)

    def test_the_signs_to_be_written_are_explained(self) -> None:
        said = words(lay_out([lesson()], replace(self.plan, key=False)))
        assert "down-bow" in said
        assert "up-bow" in said
        for from_bar in (0, 5):  # signs of the bars that are given follow from the bow before
            assert "lighter" not in words(lay_out([lesson()], replace(self.plan, from_bar=from_bar)))

    def test_room_to_write_is_left_where_signs_will_stand(self) -> None:
        asked, key = lay_out([lesson()], self.plan).pages
        assert [list(line.picture.bow_slots) for line in asked.lines] == [
            list(line.picture.bow_slots) for line in key.lines
        ]

    def test_the_bars_before_are_given(self) -> None:
        given = lesson("(GA)Bc dedB|" * 8)
        asked = lay_out([given], replace(self.plan, from_bar=5)).pages[0]
        bars = {given.tune.bars[given.tune.bar_of[note_id]].number for line in asked.lines for note_id in line.signs}
        assert bars == {1, 2, 3, 4}

    def test_a_drill_is_one_task_whatever_the_bowings(self) -> None:
        sheet = lay_out([lesson(bowings=3)], replace(self.plan, drill="pairs"))
        said = words(sheet)
        assert "Slur the running notes two by two" in said
        assert len(sheet.pages) == 2

    def test_the_caution_is_on_and_can_be_switched_off(self) -> None:
        assert " ".join(CAUTION.split()) in words(lay_out([lesson()], self.plan)).replace("  ", " ")
        assert "hurts" not in words(lay_out([lesson()], replace(self.plan, caution=False)))


def test_accent_shapes_stand_under_their_notes() -> None:
    given = lesson("GABc dedB|" * 4)
    sheet = lay_out([replace(given, bowings=(separate_bows(given.bowings[0], "Bare"),))], SheetPlan(strip=True))
    line = sheet.pages[0].lines[0]
    heads = [line.picture.heads[note.id].x for bar in given.tune.bars for note in (bar.notes[0], bar.notes[4])]
    assert [x for x, _ in line.strip or ()] == pytest.approx(heads)
    assert "accent driven by a down-bow" in words(sheet)


class TestPageBreaks:
    def test_a_page_with_a_few_words_is_not_left_for_a_tune_that_would_fill_the_next(self) -> None:
        given = lesson("|".join(["GABc d2(de)"] * 36) + "|")
        plan = SheetPlan(before=TextBlock("Listen", "Slowly.\n" * 3), size=NoteSize.LARGE)
        first = lay_out([given], plan).pages[0]
        assert len(first.lines) > 3

    def test_a_page_that_is_well_begun_is_left_for_a_tune_that_the_next_has_room_for(self) -> None:
        given = lesson("|".join(["GABc d2(de)"] * 20) + "|")
        first, second = lay_out([given], SheetPlan(before=TextBlock("Listen", ESSAY))).pages
        assert not first.lines
        assert len(second.lines) == 5

    def test_what_closes_a_tune_is_never_alone_on_a_page(self) -> None:
        for bars in (36, 40, 44):
            plan = SheetPlan(caution=True)
            for page in lay_out([lesson("|".join(["GABc d2(de)"] * bars) + "|")], plan).pages:
                assert page.lines

    def test_totals_stand_whole_under_the_last_line_of_their_bowing(self) -> None:
        for bars in (36, 40, 44):
            given = lesson("|".join(["GABc d2(de)"] * bars) + "|", bowings=2)
            pages = lay_out([given], begin(SheetKind.TEACHER)).pages
            for page in pages:
                for place, text in enumerate(page.texts):
                    if text.text == "Totals":
                        above = [line for line in page.lines if line.y_mm < text.y]
                        assert above
                        assert text.y - above[-1].y_mm - above[-1].height_mm < 10
                        assert any("Played once through" in other.text for other in page.texts[place:])
            assert sum(text.text == "Totals" for page in pages for text in page.texts) == 2

    def test_a_heading_never_ends_a_page(self) -> None:
        for paragraphs in (5, 7, 9):
            before = TextBlock("Listen", "\n\n".join(ESSAY.split("\n\n")[:paragraphs]))
            plan = replace(begin(SheetKind.TEACHER), before=before, after=TextBlock("Homework", ESSAY))
            for page in lay_out([lesson(bowings=3)], plan).pages:
                for text in page.texts:
                    if text.text in {"Bowing 1", "Bowing 2", "Bowing 3", "Totals", "What the check tells", "Homework"}:
                        below = [box.top for box in boxes(page) if box.top > text.y]
                        assert below
                        assert min(below) - text.y < 6

    def test_a_set_of_one_tune_has_its_title_once(self) -> None:
        said = [text.text for text in lay_out([lesson()], begin(SheetKind.SET)).pages[0].texts]
        assert said.count("Gate of the Weir") == 1
