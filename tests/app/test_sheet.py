"""What stands where on the printed pages."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from app.painting import run_width
from app.sheet import A4, Page, lay_out
from app.sheet_legend import legend
from core.bowing import Bow, Bowing, Ornament, separate_bows, toggle_retake
from core.engraving.bow_signs import BowSign, MarkDensity
from core.engraving.picture import Anchor, Box, Text
from core.lesson import Lesson
from core.sheet_plan import NoteSize, SheetPlan
from core.tune import ChordSymbol, Credit, Tune
from tests.core.builders import bowed

pytestmark = pytest.mark.usefixtures("qapp")
CREDITS = (Credit("composer", "Ada Quern"), Credit("arranger", "B. Holm"), Credit("source", "the Weir book"))


def lesson(text: str = "GABc d2(de)|" * 8, bowings: int = 1, **fields: object) -> Lesson:
    tune, bowing = bowed(text)
    chords = (ChordSymbol(Fraction(0), "Bb"),)
    bars = tuple(replace(bar, chords=chords) for bar in tune.bars)
    tune = replace(tune, title="Gate of the Weir", bars=bars, dance="reel", credits=CREDITS, **fields)
    named = tuple(replace(bowing, name=f"Bowing {place}") for place in range(1, bowings + 1))
    return Lesson(tune, named)


def text_box(text: Text) -> Box:
    width = sum(run_width(run) for run in text.runs)
    size = max(run.size for run in text.runs)
    left = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[text.anchor]
    return Box(left, text.y - 0.7 * size, left + width, text.y + 0.2 * size)


def line_boxes(page: Page) -> list[Box]:
    return [
        Box(line.x_mm, line.y_mm, line.x_mm + line.picture.width * line.scale, line.y_mm + line.height_mm)
        for line in page.lines
    ]


def words(page: Page) -> list[str]:
    return [text.text for text in page.texts]


def test_every_bar_of_every_bowing_is_printed_once_and_in_order() -> None:
    sheet = lay_out([lesson("D2|" + "GABc d2(de)|" * 31, bowings=3)])
    bars = [bar for page in sheet.pages for line in page.lines for bar in line.picture.measures]
    assert bars == list(range(32)) * 3
    assert len(sheet.pages) > 1


def test_all_lines_have_staves_of_one_size() -> None:
    dense = "GABc d2(de)|" * 4 + "G/A/B/c/ d/e/f/g/ a/g/f/e/ d/c/B/A/|" * 4
    sheet = lay_out([lesson(dense)])
    sizes = {round(line.scale * 720, 3) for page in sheet.pages for line in page.lines}
    assert len(sizes) == 1
    assert 4.6 <= sizes.pop() <= 6.6


def test_the_first_page_tells_title_dance_credits_and_bowing() -> None:
    page = lay_out([lesson(other_titles=("The Old Sluice",))]).pages[0]
    texts = words(page)
    for text in (
        "Gate of the Weir",
        "The Old Sluice",
        "Reel",
        "Ada Quern",
        "arr. B. Holm",
        "Bowing 1",
        "Source: the Weir book",
    ):
        assert texts.count(text) == 1
    title = page.texts[0]
    assert title.text == "Gate of the Weir"
    assert title.runs[0].size == max(run.size for text in page.texts for run in text.runs)


def test_later_pages_repeat_the_title_small_and_count() -> None:
    pages = lay_out([lesson(bowings=10)]).pages
    assert len(pages) > 2
    assert not any("/" in text for text in words(pages[0]))
    for number, page in enumerate(pages[1:], 2):
        head = page.texts[0]
        assert head.text.startswith("Gate of the Weir")
        assert head.runs[0].size < pages[0].texts[0].runs[0].size / 1.5
        assert f"{number} / {len(pages)}" in words(page)


def test_a_page_on_which_a_bowing_goes_on_says_which() -> None:
    sheet = lay_out([lesson("GABc d2(de)|" * 64)])
    assert sheet.pages[1].texts[0].text == "Gate of the Weir · Bowing 1"


def test_the_name_of_a_bowing_stands_over_its_first_line() -> None:
    for page in lay_out([lesson(bowings=6)]).pages:
        for text in page.texts:
            if text.text.startswith("Bowing "):
                below = [line.y_mm for line in page.lines if line.y_mm > text.y]
                assert below
                assert min(below) - text.y < 4


def test_each_lesson_begins_a_page_and_the_title_says_how_many() -> None:
    sheet = lay_out([lesson(), lesson(), lesson()])
    assert len(sheet.pages) == 3
    assert sheet.title == "Gate of the Weir and 2 more"
    assert sheet.author == "Ada Quern; B. Holm"
    assert [words(page)[0] for page in sheet.pages] == ["Gate of the Weir"] * 3
    assert "3 / 3" in words(sheet.pages[2])


def test_a_lesson_needs_to_be_given() -> None:
    with pytest.raises(ValueError, match="at least one"):
        lay_out([])


@pytest.mark.parametrize(
    ("density", "count"), [(MarkDensity.EVERY, 6 * 8), (MarkDensity.BARS, 8), (MarkDensity.NEEDED, 1)]
)
def test_marks_are_as_dense_as_asked(density: MarkDensity, count: int) -> None:
    sheet = lay_out([lesson("GABc d2(de)|" * 8)], SheetPlan(marks=density))
    lines = [line for page in sheet.pages for line in page.lines]
    assert sum(len(line.picture.bow_slots) for line in lines) == count
    assert all(set(line.picture.bow_slots) <= set(line.signs) for line in lines)


def test_a_small_screen_gets_two_bars_a_line() -> None:
    sheet = lay_out([lesson("GABc d2(de)|" * 8)], SheetPlan(size=NoteSize.SCREEN))
    assert [len(line.picture.measures) for page in sheet.pages for line in page.lines] == [2] * 4
    assert min(line.staff_mm for page in sheet.pages for line in page.lines) > 10


def test_a_short_tune_fills_its_page_where_it_is_asked_to() -> None:
    plain, filled = (lay_out([lesson()], SheetPlan(size=size)) for size in (NoteSize.NORMAL, NoteSize.FILL))
    assert len(plain.pages) == len(filled.pages) == 1
    assert filled.pages[0].lines[0].staff_mm > plain.pages[0].lines[0].staff_mm
    assert len(lay_out([lesson(bowings=5)], SheetPlan(size=NoteSize.FILL)).pages) == len(
        lay_out([lesson(bowings=5)]).pages
    )


def test_a_bowing_that_fits_on_a_page_is_never_parted() -> None:
    for page in lay_out([lesson(bowings=7)]).pages:
        bars = [bar for line in page.lines for bar in line.picture.measures]
        assert bars == list(range(8)) * (len(bars) // 8)


def test_a_single_last_line_does_not_begin_a_page_when_a_little_less_size_saves_it() -> None:
    counts = {}
    for bars in range(36, 60, 4):
        sheet = lay_out([lesson("GABc d2(de)|" * bars)])
        counts[bars] = [len(page.lines) for page in sheet.pages]
    assert all(lines[-1] > 1 for lines in counts.values()), counts
    assert any(len(lines) > 1 for lines in counts.values()), counts


def test_a_title_too_long_for_a_line_is_wrapped_and_a_word_too_long_is_set_smaller() -> None:
    tune = replace(lesson().tune, title="The " + "very long " * 12 + "W" * 80)
    page = lay_out([Lesson(tune, (Bowing("B"),))]).pages[0]
    titles = [text for text in page.texts if text.runs[0].bold and text.anchor is Anchor.MIDDLE]
    assert len(titles) > 2
    assert " ".join(text.text for text in titles) == tune.title
    assert all(text_box(text).left >= 15 and text_box(text).right <= 195 for text in titles)


def test_a_line_taller_than_the_page_is_shown_whole() -> None:
    tune: Tune = lesson("GABc d2(de)|" * 4).tune
    sheet = lay_out([Lesson(tune, (Bowing("B"),))], paper=replace(A4, height_mm=62.0))
    for page in sheet.pages:
        for box in line_boxes(page):
            assert box.bottom <= 62.0 - 15 + 0.01


class TestLegend:
    """Only what the sheet uses is explained."""

    def told(self, *used: BowSign, hooked: bool = False, ornaments: tuple[Ornament, ...] = ()) -> list[str]:
        return [text for _, text in legend(used, hooked, ornaments)]

    def test_what_is_not_used_is_not_explained(self) -> None:
        assert self.told(BowSign((Bow.DOWN,), True)) == ["down-bow"]
        assert self.told() == []

    def test_lighter_signs_are_explained_where_there_are_darker_ones(self) -> None:
        both = self.told(BowSign((Bow.DOWN,), True), BowSign((Bow.UP,), False))
        assert both == ["down-bow", "up-bow", "lighter: follows from the bow before"]
        assert self.told(BowSign((Bow.UP,), False)) == ["up-bow"]

    def test_pairs_lifts_and_hooks(self) -> None:
        pair, lift = BowSign((Bow.UP, Bow.DOWN), False), BowSign((Bow.UP,), True, True)
        assert self.told(pair)[-1] == "row 1.: first time, row 2.: next time"
        assert "lift, take the same bow again" in self.told(lift)
        assert self.told(hooked=True) == ["dots under a slur: stop the bow, go on the same way"]

    def test_ornaments_that_are_written_in_fiddle_tunes_only(self) -> None:
        assert self.told(ornaments=(Ornament.TURN, Ornament.ROLL)) == ["~ roll"]
        assert self.told(ornaments=(Ornament.CUT,)) == ["/ cut"]
        (triplet,) = self.told(ornaments=(Ornament.BOWED_TRIPLET,))
        assert triplet == "3 and a slash through the stem: bowed triplet, three quick bows on the note"
        assert self.told(ornaments=(Ornament.TRILL, Ornament.TURN)) == []

    def test_it_stands_at_the_foot_of_the_first_page_and_can_be_left_out(self) -> None:
        given = lesson("GABc d2(de)|" * 8)
        retaken = toggle_retake(given.tune, separate_bows(given.bowings[0], "Separate"), "b1n1")
        sheet = lay_out([Lesson(given.tune, (retaken,))])
        page = sheet.pages[0]
        note = next(text for text in page.texts if text.text.startswith("lift"))
        assert note.y > max(box.bottom for box in line_boxes(page))
        assert [sign.sign.retake for sign in page.signs].count(True) == 1
        assert not lay_out([given], SheetPlan(legend=False)).pages[0].signs
