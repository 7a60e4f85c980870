"""The page as a picture: bowings engraved line by line, where everything stands, and how it is painted.

It knows no document and changes nothing; ``app.page_view`` says what it shows and acts on it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.accent_strip import Accented, Place, place_at, place_x
from app.comparison_painting import paint_differences, paint_legend, paint_names
from app.difference_painting import lane_of
from app.engraved_page import EngravedPage
from app.here import Here
from app.page_heading import Heading
from app.page_layout import MUSIC_WIDTH, NAME_HEIGHT, SIDE_MARGIN, TOP_MARGIN, PageLayout, PlacedLine, Target
from app.page_painter import Band, Marks, PagePainter
from app.page_rows import Row, Rows
from app.theme import Theme
from core.engraving.bow_signs import BowSign
from core.engraving.engraver import Engraver
from core.engraving.picture import STAFF_SPACE, Box, Picture, slot_height
from core.tune import Tune

UNITS_PER_INCH = 2540
DESK_MARGIN = 18  # pixels around the page
LEAST_ZOOM, MOST_ZOOM = 0.25, 5.0
LINES_A_TURN = 2  # lines out of sight that are engraved in one turn of the event loop
PAINT_MS = 12  # lets what is in sight be painted before lines out of sight are engraved
FIRST_SIGHT = 1000  # pixels that a window shows about, before it is shown

Strip = tuple[float, float]
"""Top and bottom of a part of the page, in picture units."""


class PageCanvas(QWidget):
    """Shows one bowing of a tune, or several stacked line by line.

    Signals:
        revealed: A rectangle of this widget that should come into sight.
        widened: The page is wider or narrower now at the same zoom.
    """

    revealed = Signal(QRect)
    widened = Signal()

    def __init__(self, engraver: Engraver | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._engraver = engraver or Engraver()
        self._painter = PagePainter()
        self._strip_shown = True
        self._zoom = 1.0
        self._rows: Rows | None = None
        self._active = 0  # index of the row that keys act on
        self._page: EngravedPage | None = None
        self._heading: Heading | None = None
        self._width_seen = self._page_width
        self._idle = QTimer(self)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._engrave_some)

    @property
    def signs(self) -> Mapping[str, BowSign]:
        """The bow signs of the active bowing by note id."""
        return self._row.signs if self._row is not None else {}

    @property
    def accents(self) -> Mapping[Place, Accented]:
        """The accented places of the active bowing."""
        return self._row.accents if self._row is not None else {}

    @property
    def rows(self) -> tuple[Row, ...]:
        """The bowings on the page from the top; one where nothing is compared."""
        return self._rows.rows if self._rows is not None else ()

    @property
    def active(self) -> int:
        """Index in ``rows`` of the bowing that keys act on."""
        return self._active

    @property
    def pictures(self) -> tuple[Picture | None, ...]:
        """The engraving of each line of the active bowing; None for one that waits."""
        return tuple(placed.picture for placed in self._layout.lines) if self._page is not None else ()

    @property
    def waits(self) -> bool:
        """Whether lines out of sight wait to be engraved."""
        return self._page is not None and self._page.waits

    @property
    def zoom(self) -> float:
        """1 is life size on a screen of the resolution it claims."""
        return self._zoom

    def set_zoom(self, zoom: float) -> None:
        """Show the page larger or smaller, within limits."""
        zoom = min(max(zoom, LEAST_ZOOM), MOST_ZOOM)
        if zoom != self._zoom:
            self._zoom = zoom
            self._resize()

    def fitting_zoom(self, width: int) -> float:
        """The zoom at which the page is just as wide as ``width`` pixels, its desk margins included."""
        return (width - 2 * DESK_MARGIN) / (self._page_width * self.logicalDpiX() / UNITS_PER_INCH)

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._painter.theme = theme
        self.update()

    def show_strip(self, shown: bool) -> None:
        """Show or hide the accent strip under the lines."""
        if shown is not self._strip_shown:
            self._strip_shown = shown
            if self._page is not None:
                self._page.show_strip(shown)
                self._engrave_in_sight()
                self._resize()
                self.update()

    def _open(self, tune: Tune) -> None:
        """Begin a page of another tune; its rows are to be shown next."""
        self._rows, self._active = None, 0
        self._page = EngravedPage(self._engraver, tune, 0)
        self._page.show_strip(self._strip_shown)

    def _show_rows(self, rows: Rows, heading: Heading) -> None:
        """Show bowings of the open tune; only lines that changed are engraved and painted again."""
        assert self._page is not None
        before, self._rows, self._active, self._heading = self._rows, rows, rows.active, heading
        height = self._page.layout.height
        self._page.set_heading_height(heading.height)
        self._page.take(*((row.here.bowing, row.signs) for row in rows.rows), reference=rows.reference)
        self._engrave_in_sight()
        if self._page.layout.height != height:
            self._resize()
        if before is None or len(before.rows) != len(rows.rows) or before.reference != rows.reference:
            self.update()
        else:
            pairs = list(enumerate(zip(rows.rows, before.rows, strict=True)))
            self._update_lanes(*(index for index, (now, was) in pairs if now is not was))
            self._update_rows(
                *(index for index, (now, was) in pairs if now.here is not was.here or now.signs is not was.signs),
                *({before.active, rows.active} if before.active != rows.active else ()),
            )

    def _marks(self, index: int) -> Marks:
        """What is marked on the lines of a row."""
        row = self.rows[index]
        return Marks(accents=row.accents, signs=row.signs)

    def _paint_over(self, painter: QPainter, bands: Sequence[Band]) -> None:
        """Paint what stands over all that the page shows, its top left corner at the painter's origin, in pixels."""

    # ------------------------------------------------------------------------------------------------- places

    def note_rect(self, note_id: str) -> QRect:
        """Where a note stands in this widget, stem and accidental included; empty for a hidden rest."""
        box = self._final_layout(note_id).note_box(note_id)
        return self._to_rect(box).toAlignedRect() if box is not None else QRect()

    def head_point(self, note_id: str, row: int | None = None) -> QPoint:
        """The middle of a note's head in this widget, in a row by index or in the active one."""
        layout = self._final_layout(note_id, row=row)
        placed = layout.lines[layout.line_of[note_id]]
        assert placed.picture is not None
        head = placed.picture.heads[note_id]
        return self._to_rect(placed.page_box(Box(head.x, head.y, head.x, head.y))).topLeft().toPoint()

    def sign_point(self, note_id: str, row: int | None = None) -> QPoint:
        """The middle of the bow mark over a note in this widget, in a row by index or in the active one.

        Raises:
            KeyError: no room is kept for a mark over this note.
        """
        layout = self._final_layout(note_id, row=row)
        placed = layout.lines[layout.line_of[note_id]]
        assert placed.picture is not None
        slot = placed.picture.bow_slots[note_id]
        y = slot.bottom - slot_height(slot) / 2
        return self._to_rect(placed.page_box(Box(slot.x, y, slot.x, y))).topLeft().toPoint()

    def strip_point(self, place: Place, row: int | None = None) -> QPoint:
        """The middle of a place of the accent strip, of a row by index or the active one; it must be shown."""
        assert self._here is not None
        tune = self._here.tune
        layout = self._final_layout(tune.bars[place[0]].notes[0].id, row=row)
        placed = next(line for line in layout.lines if line.line.first <= place[0] < line.line.stop)
        assert placed.picture is not None
        assert placed.strip is not None
        x = place_x(tune, placed.picture, place)
        assert x is not None
        left = SIDE_MARGIN + x
        return self._to_rect(Box(left, placed.strip, left, placed.strip)).topLeft().toPoint()

    def difference_point(self, note_id: str, row: int) -> QPoint:
        """Where under a note, in a row by index, it is told from that of the reference."""
        layout = self._final_layout(note_id, row=row)
        placed = layout.lines[layout.line_of[note_id]]
        assert placed.lane is not None
        x = SIDE_MARGIN + placed.heads()[note_id]
        return self._to_rect(Box(x, placed.lane, x, placed.lane)).topLeft().toPoint()

    def sizeHint(self) -> QSize:
        height = self._page.layout.height if self._page is not None else 0
        return QSize(
            round(self._page_width * self._scale) + 2 * DESK_MARGIN, round(height * self._scale) + 2 * DESK_MARGIN
        )

    @property
    def _row(self) -> Row | None:
        """The bowing that keys act on."""
        return self.rows[self._active] if self.rows else None

    @property
    def _here(self) -> Here | None:
        return self.rows[self._active].here if self.rows else None

    @property
    def _layout(self) -> PageLayout:
        """Where the lines of the active bowing stand."""
        assert self._page is not None
        return self._page.layouts[self._active]

    @property
    def _page_width(self) -> float:
        """Width of the page in picture units."""
        return self._page.layout.width if self._page is not None else MUSIC_WIDTH + 2 * SIDE_MARGIN

    @property
    def _scale(self) -> float:
        """Pixels a picture unit."""
        return self._zoom * self.logicalDpiX() / UNITS_PER_INCH

    @property
    def _origin(self) -> QPointF:
        """The page's top left corner in this widget."""
        return QPointF(max((self.width() - round(self._page_width * self._scale)) // 2, DESK_MARGIN), DESK_MARGIN)

    def _to_rect(self, box: Box) -> QRectF:
        scale = self._scale
        return QRectF(box.left * scale, box.top * scale, box.width * scale, box.height * scale).translated(self._origin)

    def _target_at(self, place: QPointF) -> Target | None:
        if self._page is None:
            return None
        on_page = (place - self._origin) / self._scale
        x, y = on_page.x(), on_page.y()
        index = self._page.row_at(y)
        if index is None:
            return None
        layout, row = self._page.layouts[index], self.rows[index]
        strip = layout.strip_at(x, y)
        if strip is not None:
            placed, x = strip
            assert placed.picture is not None
            found = place_at(self._page.tune, placed.picture, placed.line, row.accents, x)
            return Target(found[1], place=found[0], row=index) if found is not None else None
        lane = layout.lane_at(x, y)
        if lane is not None:
            placed, x = lane
            note = lane_of(self._page.tune, placed.heads(), row.differences).note_at(x)
            return Target(note, row=index, is_difference=True) if note is not None else None
        target = layout.target_at(x, y)
        return replace(target, row=index) if target is not None and index else target

    def _final_layout(self, note_id: str, lines_below: int = 0, row: int | None = None) -> PageLayout:
        """The layout in which a note's line, all lines above it and some below are engraved; of a row or the active."""
        assert self._page is not None
        if self._page.engrave(range(self._page.layout.line_of[note_id] + 1 + lines_below)):
            self._resize()
        return self._page.layouts[self._active if row is None else row]

    def _reveal(self, note_ids: tuple[str, ...]) -> None:
        for note_id in note_ids:
            rect = self.note_rect(note_id)
            if not rect.isEmpty():
                room = round(5 * STAFF_SPACE * self._scale)
                self.revealed.emit(rect.adjusted(-room, -room, room, room))
                return

    # ------------------------------------------------------------------------------------------------- engraving

    def _engrave_in_sight(self) -> None:
        """Engrave what is in sight now, the rest in the next turns of the event loop."""
        assert self._page is not None
        height = self._page.layout.height
        while self._page.engrave(self._lines_in_sight()):
            pass  # lines may have moved into sight
        if self._page.layout.height != height:
            self._resize()
        if self._page.waits:
            QTimer.singleShot(PAINT_MS, self, self._idle.start)

    def _engrave_some(self) -> None:
        assert self._page is not None
        lines = {index for index, _ in self._page.stale}
        if self._page.engrave(lines, most=LINES_A_TURN):
            self._resize()
        if not self._page.waits:
            self._idle.stop()

    def _strip(self) -> QRect:
        """The part of this widget that is in sight."""
        strip = self.visibleRegion().boundingRect()
        return strip if not strip.isEmpty() else QRect(0, 0, self.width(), FIRST_SIGHT)

    def _lines_in_sight(self, strip: QRect | None = None) -> range:
        assert self._page is not None
        return self._page.lines_between(*self._on_page(strip or self._strip()))

    def _on_page(self, strip: QRect) -> tuple[float, float]:
        """Top and bottom of a part of this widget in picture units."""
        top = (strip.top() - self._origin.y()) / self._scale
        return top, top + strip.height() / self._scale

    def _update_rows(self, *indexes: int) -> None:
        """Have the lines of some rows painted anew; of a bowing that stands alone the whole page."""
        if self._page is None or len(self._page.layouts) == 1:
            self.update()
            return
        top, bottom = self._on_page(self._strip())
        for index in set(indexes).intersection(range(len(self._page.layouts))):
            layout = self._page.layouts[index]
            for placed in (layout.lines[line] for line in layout.lines_between(top, bottom)):
                self.update(self._to_rect(Box(0, placed.top, layout.width, placed.bottom)).toAlignedRect())

    def _update_lanes(self, *indexes: int) -> None:
        """Have what tells some rows from the reference painted anew."""
        assert self._page is not None
        top, bottom = self._on_page(self._strip())
        for layout in (self._page.layouts[index] for index in indexes):
            for placed in (layout.lines[line] for line in layout.lines_between(top, bottom)):
                if placed.lane is not None:
                    lane = self._to_rect(Box(0, placed.foot, layout.width, placed.bottom)).toAlignedRect()
                    self.update(lane.adjusted(0, 1, 0, 0))  # nothing of the strip over it

    def _is_in_sight(self, note_ids: tuple[str, ...]) -> bool:
        assert self._page is not None
        lines = self._layout.lines_between(*self._on_page(self._strip()))
        return not note_ids or any(self._layout.line_of[note_id] in lines for note_id in note_ids)

    def _resize(self) -> None:
        if self._page_width != self._width_seen:
            self._width_seen = self._page_width
            self.widened.emit()  # may come back here with another zoom
        self.setMinimumSize(self.sizeHint())
        self.updateGeometry()
        self.update()

    # ------------------------------------------------------------------------------------------------- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        strip = event.rect()
        if self._page is not None and self._page.engrave(self._lines_in_sight(strip)):
            QTimer.singleShot(0, self, self._resize)  # not while painting
        with QPainter(self) as painter:
            painter.fillRect(strip, QColor(self._painter.theme.desk))
            if self._page is None or self._heading is None or self._rows is None:
                return
            painter.translate(self._origin)
            strips = tuple(self._on_page(rect) for rect in event.region())
            bands = [Band(self._lines_touched(row, strips), self._marks(row)) for row in range(len(self.rows))]
            music = [Band(_with_music_in(band.lines, strips), band.marks) for band in bands]
            head = self._heading if touches(strips, 0, TOP_MARGIN + self._heading.height) else None
            painter.save()
            self._painter.paint(painter, self._page, head, music, self._scale, self.devicePixelRatioF())
            painter.restore()
            if self._rows.reference is not None:
                self._paint_comparison(painter, self._rows, head, bands, strips)
            self._paint_over(painter, bands)

    def _lines_touched(self, index: int, strips: Sequence[Strip]) -> list[PlacedLine]:
        """The lines of a row that reach into strips of the page, each from its top to its bottom."""
        assert self._page is not None
        layout = self._page.layouts[index]
        return [placed for placed in layout.lines if touches(strips, placed.top, placed.bottom)]

    def _paint_comparison(
        self, painter: QPainter, rows: Rows, heading: Heading | None, bands: Sequence[Band], strips: Sequence[Strip]
    ) -> None:
        assert self._page is not None
        assert rows.reference is not None
        layout, theme = self._page.layout, self._painter.theme
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.scale(self._scale, self._scale)
        if heading is not None:
            paint_legend(painter, heading.height, layout.width, rows.rows[rows.reference].name, theme)
        for index, (row, band) in enumerate(zip(rows.rows, bands, strict=True)):
            active, reference = index == self._active, index == rows.reference
            named = [placed for placed in band.lines if active or touches(strips, placed.top, placed.top + NAME_HEIGHT)]
            paint_names(painter, row, named, layout.width, theme, active=active, reference=reference)
            paint_differences(painter, row, band.lines, theme)
        painter.restore()


def touches(strips: Iterable[Strip], top: float, bottom: float) -> bool:
    """Whether some part of the page's height reaches into strips of it."""
    return any(bottom > start and top < end for start, end in strips)


def _with_music_in(lines: Sequence[PlacedLine], strips: Sequence[Strip]) -> list[PlacedLine]:
    """Those of some lines whose music, not only what is told under it, reaches into strips of the page."""
    return [placed for placed in lines if touches(strips, placed.top, placed.foot)]
