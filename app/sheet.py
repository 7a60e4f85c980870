"""What stands where on printed pages, in millimetres: one layout for preview, printer and PDF.

A sheet is made of pages, a page of lines of music, texts and signs, each with its place; ``paint_page`` draws them.
Lines are never split or cut: where one would not fit it begins the next page.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from PySide6.QtGui import QPainter

from app.bow_sign_painting import ROW_LABELS, bow_sign_path, paint_bow_signs
from app.painting import PRINT_INKS, Inks, paint_picture, paint_text, run_width
from core.bowing import Bow, Bowing, Join, Ornament
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs, rows_shown
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.engraving.picture import STAFF_SPACE, Anchor, Picture, Run, Text
from core.lesson import Lesson
from core.strokes import work_out
from core.tune import Credit, Tune

TITLE_MM, SMALL_TITLE_MM, HEADING_MM, BODY_MM, NOTE_MM = 7.0, 3.6, 4.4, 3.8, 3.1  # em sizes of texts
LEADING = 1.3  # from base line to base line, in ems
LINE_GAP_MM, WIDEST_GAP_MM = 3.5, 9.0  # between lines of music
BOWING_GAP_MM = 7.0  # between two bowings on one page
STAFF_UNITS = 4 * STAFF_SPACE
SMALLEST_STAFF_MM = 4.6
STAFF_STEPS = (1.0, 0.94, 0.88)  # sizes tried before a page is begun for a single last line

# Credits at the head of the page, right, and at its end, small; {} is the text as written.
HEAD_CREDITS = {"composer": "{}", "lyricist": "Words: {}", "arranger": "arr. {}"}
END_CREDITS = {
    "origin": "Origin: {}", "area": "Area: {}", "source": "Source: {}", "book": "Book: {}",
    "transcriber": "Transcribed by {}", "rights": "{}",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper size.

    Attributes:
        name: As the user knows it.
        width_mm, height_mm: Upright.
    """

    name: str
    width_mm: float
    height_mm: float


A4 = Paper("A4", 210.0, 297.0)
LETTER = Paper("Letter", 215.9, 279.4)
PAPERS = {paper.name: paper for paper in (A4, LETTER)}


@dataclass(frozen=True, slots=True)
class SheetSettings:
    """How a sheet is laid out.

    Attributes:
        paper: Paper size.
        marks: Which strokes carry a bow sign.
        bars_a_line: Full bars on a line.
        staff_mm: Height of the staff; smaller where a line has too many notes for it.
        margin_mm: On all four sides.
        legend: What the signs mean stands at the foot of a tune's first page.
    """

    paper: Paper = A4
    marks: MarkDensity = MarkDensity.EVERY
    bars_a_line: int = 4
    staff_mm: float = 6.6
    margin_mm: float = 15.0
    legend: bool = True

    @property
    def width_mm(self) -> float:
        """Width between the margins."""
        return self.paper.width_mm - 2 * self.margin_mm


@dataclass(frozen=True, slots=True)
class PlacedLine:
    """A line of music on a page.

    Attributes:
        x_mm, y_mm: Its top left corner.
        scale: Millimetres to a picture unit.
        picture: The line.
        signs: Bow signs by note id.
    """

    x_mm: float
    y_mm: float
    scale: float
    picture: Picture
    signs: Mapping[str, BowSign]

    @property
    def height_mm(self) -> float:
        return self.picture.height * self.scale


@dataclass(frozen=True, slots=True)
class PlacedSign:
    """A bow sign in the legend.

    Attributes:
        x_mm, y_mm: Middle of its foot.
        size_mm: Em size.
        sign: What is shown.
    """

    x_mm: float
    y_mm: float
    size_mm: float
    sign: BowSign


@dataclass(frozen=True, slots=True)
class Page:
    """One page; texts are in millimetres."""

    lines: tuple[PlacedLine, ...]
    texts: tuple[Text, ...]
    signs: tuple[PlacedSign, ...] = ()


@dataclass(frozen=True, slots=True)
class Sheet:
    """Pages to print.

    Attributes:
        paper: Paper size.
        pages: At least one.
        title: Title for the file.
        author: Composers and arrangers, or "".
    """

    paper: Paper
    pages: tuple[Page, ...]
    title: str
    author: str


def lay_out(
    lessons: Sequence[Lesson], settings: SheetSettings | None = None, engraver: Engraver | None = None
) -> Sheet:
    """Lay out lessons, each from a new page on, with all their bowings one after the other.

    Args:
        lessons: At least one; leave out bowings that are not to be printed.
        settings: Paper, marks and sizes.
        engraver: One to share pictures with; else a new one.
    Raises:
        ValueError: no lesson is given.
    """
    if not lessons:
        raise ValueError("a sheet needs at least one lesson")
    settings = settings or SheetSettings()
    engraver = engraver or Engraver()
    pages: list[Page] = []
    for lesson in lessons:
        pages.extend(_best_pages(lesson, settings, engraver, len(pages)))
    title = lessons[0].tune.title or "Untitled"
    if len(lessons) > 1:
        title += f" and {len(lessons) - 1} more"
    authors = [
        credit.text for lesson in lessons for credit in lesson.tune.credits if credit.kind in ("composer", "arranger")
    ]
    numbered = tuple(_numbered(page, place, len(pages), settings) for place, page in enumerate(pages, 1))
    return Sheet(settings.paper, numbered, title, "; ".join(dict.fromkeys(authors)))


def paint_page(painter: QPainter, page: Page, inks: Inks = PRINT_INKS) -> None:
    """Paint a page; the painter's unit is a millimetre and its origin the corner of the paper."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for line in page.lines:
        painter.save()
        painter.translate(line.x_mm, line.y_mm)
        painter.scale(line.scale, line.scale)
        paint_picture(painter, line.picture, inks)
        paint_bow_signs(painter, line.picture, line.signs, inks)
        painter.restore()
    for placed in page.signs:
        painter.save()
        painter.translate(placed.x_mm, placed.y_mm)
        painter.scale(placed.size_mm / STAFF_UNITS, placed.size_mm / STAFF_UNITS)
        path = bow_sign_path(placed.sign.bows[0], placed.sign.retake, STAFF_UNITS)
        painter.fillPath(path, inks.ink if placed.sign.fixed else inks.light)
        painter.restore()
    for text in page.texts:
        paint_text(painter, text, inks.ink)


# ----------------------------------------------------------------------------------------------------------- a lesson


def _best_pages(lesson: Lesson, settings: SheetSettings, engraver: Engraver, before: int) -> list[Page]:
    """Pages of a lesson; the staff shrinks a little where that saves a page with nothing but one line on it."""
    first: list[Page] = []
    for step in STAFF_STEPS:
        pages = _pages(lesson, replace(settings, staff_mm=settings.staff_mm * step), engraver, before)
        first = first or pages
        if len(pages) < len(first):
            return pages
        if len(first) == 1 or len(first[-1].lines) > 1:
            break
    return first


def _pages(lesson: Lesson, settings: SheetSettings, engraver: Engraver, before: int) -> list[Page]:
    flow = _Flow(lesson, settings, is_first=before == 0)
    bowed = [_engrave(lesson.tune, bowing, settings, engraver) for bowing in lesson.bowings]
    used = [sign for lines in bowed for line in lines for sign in line.signs.values()]
    hooked = any(how is Join.HOOK for bowing in lesson.bowings for how in bowing.joins.values())
    ornaments = {sign for bowing in lesson.bowings for signs in bowing.signs.values() for sign in signs.ornaments}
    flow.begin(used, hooked, ornaments)
    for bowing, lines in zip(lesson.bowings, bowed, strict=True):
        flow.add_bowing(bowing.name, lines)
    flow.end()
    return flow.pages


def _engrave(tune: Tune, bowing: Bowing, settings: SheetSettings, engraver: Engraver) -> list[PlacedLine]:
    """All lines of a bowing, not placed yet, all of one size where that stays legible."""
    lines = break_lines(tune, settings.bars_a_line)
    strokes = work_out(tune, bowing)
    signs = bow_signs(tune, bowing, strokes, settings.marks)
    slots = rows_shown(signs)
    width = settings.width_mm * STAFF_UNITS / settings.staff_mm
    pictures = [engraver.engrave(tune, bowing, line, slots, int(width)) for line in lines]
    widest = max(picture.width for picture in pictures)
    if widest > width:
        width = min(widest + 1, settings.width_mm * STAFF_UNITS / SMALLEST_STAFF_MM)
        pictures = [engraver.engrave(tune, bowing, line, slots, int(width)) for line in lines]
    return [
        PlacedLine(settings.margin_mm, 0.0, settings.width_mm / max(picture.width, width), picture, signs)
        for picture in pictures
    ]


@dataclass
class _Flow:
    """Fills pages from top to bottom."""

    lesson: Lesson
    settings: SheetSettings
    is_first: bool
    pages: list[Page] = field(default_factory=list)
    y: float = 0.0
    foot: float = 0.0
    lines: list[PlacedLine] = field(default_factory=list)
    texts: list[Text] = field(default_factory=list)
    signs: list[PlacedSign] = field(default_factory=list)
    loose: list[int] = field(default_factory=list)  # places in lines before which a gap may widen

    @property
    def left(self) -> float:
        return self.settings.margin_mm

    @property
    def right(self) -> float:
        return self.settings.paper.width_mm - self.settings.margin_mm

    def begin(self, used: Sequence[BowSign], hooked: bool, ornaments: Container[Ornament]) -> None:
        """Head of the first page, and the legend at its foot."""
        tune, width = self.lesson.tune, self.settings.width_mm
        self.y = self.settings.margin_mm
        self.foot = self.settings.paper.height_mm - self.settings.margin_mm
        middle = self.settings.paper.width_mm / 2
        for text in _wrapped(tune.title or "Untitled", TITLE_MM, width, bold=True):
            self._text(text, middle, Anchor.MIDDLE, TITLE_MM, bold=True)
        for title in tune.other_titles:
            for text in _wrapped(title, BODY_MM, width, italic=True):
                self._text(text, middle, Anchor.MIDDLE, BODY_MM, italic=True)
        top = self.y
        for text in _wrapped(tune.dance[:1].upper() + tune.dance[1:], BODY_MM, width / 3):
            self._text(text, self.left, Anchor.START, BODY_MM, italic=True)
        below, self.y = self.y, top
        for text in _head_credits(tune.credits):
            for part in _wrapped(text, BODY_MM, width * 0.6):
                self._text(part, self.right, Anchor.END, BODY_MM)
        self.y = max(self.y, below)
        if self.settings.legend:
            self._legend(used, hooked, ornaments)

    def add_bowing(self, name: str, lines: Sequence[PlacedLine]) -> None:
        """A bowing: its name with its first line, then the others."""
        gap = BOWING_GAP_MM if self.lines else LINE_GAP_MM / 2
        half = lines[: (len(lines) + 1) // 2]
        needed = gap + HEADING_MM * LEADING + sum(line.height_mm + LINE_GAP_MM for line in half) - LINE_GAP_MM
        if self.lines and self.y + needed > self.foot:  # at least half of it stands together with its name
            self._turn("")
            gap = 0.0
        self.y += gap
        for text in _wrapped(name, HEADING_MM, self.settings.width_mm, bold=True):
            self._text(text, self.left, Anchor.START, HEADING_MM, bold=True)
        for place, line in enumerate(lines):
            if place:
                self.y += LINE_GAP_MM
            if place and self.lines and self.y + line.height_mm > self.foot:
                self._turn(name)
            elif place:
                self.loose.append(len(self.lines))
            self._line(line)

    def end(self) -> None:
        """Credits that stand under the last line; the last page is complete."""
        width = self.settings.width_mm
        parts = [part for text in _end_credits(self.lesson.tune.credits) for part in _wrapped(text, NOTE_MM, width)]
        needed = LINE_GAP_MM + len(parts) * NOTE_MM * LEADING
        self._spread(self.foot - needed)
        self.y += LINE_GAP_MM
        for part in parts:
            if self.y + NOTE_MM * LEADING > self.foot:
                self._turn("")
            self._text(part, self.left, Anchor.START, NOTE_MM)
        self._close()

    def _line(self, line: PlacedLine) -> None:
        room = self.foot - self.y
        if line.height_mm > room and not self.lines:  # taller than a page: shown whole, smaller
            line = replace(line, scale=line.scale * room / line.height_mm)
        self.lines.append(replace(line, y_mm=self.y))
        self.y += line.height_mm

    def _text(self, text: str, x: float, anchor: Anchor, size: float, bold: bool = False, italic: bool = False) -> None:
        """A text line at the cursor; a word too long for the page is set smaller, never cut."""
        run = Run(text, size, bold=bold, italic=italic)
        if run_width(run) > self.settings.width_mm:
            run = replace(run, size=size * self.settings.width_mm / run_width(run))
        self.y += size * LEADING
        self.texts.append(Text(x, self.y - 0.3 * size, anchor, (run,)))

    def _turn(self, going_on: str) -> None:
        """Close the page, its lines spread over it, and begin the next with a small head.

        Args:
            going_on: Name of the bowing that goes on there, or "".
        """
        self._spread(self.foot)
        self._close()
        self.y = self.settings.margin_mm
        self.foot = self.settings.paper.height_mm - self.settings.margin_mm
        title = self.lesson.tune.title or "Untitled"
        title = _shortened(f"{title} · {going_on}" if going_on else title, SMALL_TITLE_MM, self.settings.width_mm * 0.8)
        self._text(title, self.left, Anchor.START, SMALL_TITLE_MM, italic=True)
        self.y += LINE_GAP_MM / 2

    def _spread(self, foot: float) -> None:
        """Widen the gaps between the lines of a bowing, as far as there is room above a foot."""
        if not self.loose or self.y >= foot:
            return
        extra = min((foot - self.y) / len(self.loose), WIDEST_GAP_MM - LINE_GAP_MM)
        self.y += extra * len(self.loose)
        tops = [line.y_mm for line in self.lines]
        shifts = [extra * sum(1 for place in self.loose if place <= index) for index in range(len(tops))]
        first = tops[0]
        self.texts = [
            replace(text, y=text.y + max((s for top, s in zip(tops, shifts, strict=True) if top < text.y), default=0.0))
            if first < text.y < self.foot
            else text
            for text in self.texts
        ]
        self.lines = [replace(line, y_mm=line.y_mm + s) for line, s in zip(self.lines, shifts, strict=True)]

    def _close(self) -> None:
        self.pages.append(Page(tuple(self.lines), tuple(self.texts), tuple(self.signs)))
        self.lines, self.texts, self.signs, self.loose = [], [], [], []

    def _legend(self, used: Sequence[BowSign], hooked: bool, ornaments: Container[Ornament]) -> None:
        """What the signs mean, at the foot of the page, in as many rows as it takes."""
        size = 1.8 * NOTE_MM
        rows: list[list[tuple[BowSign | None, str, float]]] = [[]]
        x = 0.0
        for sign, text in legend(used, hooked, ornaments):
            shown = 0.0 if sign is None else bow_sign_path(sign.bows[0], sign.retake, size).boundingRect().width()
            width = shown + NOTE_MM / 2 + run_width(Run(text, NOTE_MM)) + 1.5 * NOTE_MM
            if rows[-1] and x + width > self.settings.width_mm:
                rows.append([])
                x = 0.0
            rows[-1].append((sign, text, shown))
            x += width
        if not rows[0]:
            return
        leading = 1.7 * NOTE_MM
        y = self.foot - leading * (len(rows) - 1) - 0.25 * NOTE_MM  # room for descenders
        for row in rows:
            x = self.left
            for sign, text, shown in row:
                if sign is not None:
                    right = bow_sign_path(sign.bows[0], sign.retake, size).boundingRect().right()
                    self.signs.append(PlacedSign(x + shown - right, y, size, sign))
                    x += shown + NOTE_MM / 2
                self.texts.append(Text(x, y, Anchor.START, (Run(text, NOTE_MM),)))
                x += run_width(Run(text, NOTE_MM)) + 1.5 * NOTE_MM
            y += leading
        self.foot -= leading * len(rows) + LINE_GAP_MM


def legend(
    used: Sequence[BowSign], hooked: bool, ornaments: Container[Ornament] = ()
) -> Iterator[tuple[BowSign | None, str]]:
    """What to say about the signs that a sheet uses.

    Args:
        used: All signs of the sheet.
        hooked: Some stroke has a stop inside it.
        ornaments: Ornaments of the sheet; those that are explained have a sign that other music does not know.
    Returns:
        A sign, or None where the text stands alone, and what it means.
    """
    fixed = any(sign.fixed for sign in used) or not used
    for bow in Bow:
        if any(bow in sign.bows for sign in used):
            yield BowSign((bow,), fixed), f"{bow.value}-bow"
    if fixed and any(not sign.fixed for sign in used):
        yield BowSign((Bow.DOWN,), False), "lighter: follows from the bow before"
    if any(len(sign.bows) > 1 for sign in used):
        yield None, "row {}: first time, row {}: next time".format(*ROW_LABELS)
    if any(sign.retake for sign in used):
        yield BowSign((Bow.DOWN,), True, True), "lift, take the same bow again"
    if hooked:
        yield None, "dots under a slur: stop the bow, go on the same way"
    if Ornament.ROLL in ornaments:
        yield None, "~ roll"
    if Ornament.CUT in ornaments:
        yield None, "/ cut"


# -------------------------------------------------------------------------------------------------------------- texts


def _numbered(page: Page, number: int, count: int, settings: SheetSettings) -> Page:
    """The page with its number, from the second on."""
    if number == 1:
        return page
    run = Run(f"{number} / {count}", SMALL_TITLE_MM)
    x = settings.paper.width_mm - settings.margin_mm
    y = settings.margin_mm - (0.0 if _begins_lesson(page) else -SMALL_TITLE_MM)
    return replace(page, texts=(*page.texts, Text(x, y, Anchor.END, (run,))))


def _begins_lesson(page: Page) -> bool:
    return any(run.size > SMALL_TITLE_MM for text in page.texts[:1] for run in text.runs)


def _head_credits(credits: Sequence[Credit]) -> list[str]:
    return [HEAD_CREDITS[credit.kind].format(credit.text) for credit in credits if credit.kind in HEAD_CREDITS]


def _end_credits(credits: Sequence[Credit]) -> list[str]:
    return [END_CREDITS[credit.kind].format(credit.text) for credit in credits if credit.kind in END_CREDITS]


def _wrapped(text: str, size: float, width: float, bold: bool = False, italic: bool = False) -> list[str]:
    """Lines of text no wider than a width, broken between words."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and run_width(Run(longer, size, bold=bold, italic=italic)) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def _shortened(text: str, size: float, width: float) -> str:
    """The text, or as many of its first characters as fit with an ellipsis."""
    if run_width(Run(text, size, italic=True)) <= width:
        return text
    while text and run_width(Run(text + "…", size, italic=True)) > width:
        text = text[:-1]
    return text.rstrip() + "…"
