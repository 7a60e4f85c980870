"""Paints the page on screen: paper, heading, lines, bow signs, and what is marked or only proposed.

Lines are painted from pixmaps made once per picture, zoom and screen; bow signs are painted over them each time,
because one slur turns every later stroke round.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import field

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap, QRegion

from app.accent_painting import StripPainter
from app.accent_strip import Accented, Place
from app.bow_sign_painting import paint_bow_signs
from app.engraved_page import EngravedPage
from app.page_heading import Heading
from app.page_layout import SIDE_MARGIN, PlacedLine
from app.painting import Inks, paint_picture
from app.proposal_painting import paint_proposal
from app.proposals import Preview
from app.theme import LIGHT, Theme, mix
from core.check import Severity
from core.engraving.bow_signs import BowSign
from core.engraving.picture import STAFF_SPACE, Box, Picture
from core.tune import Tune
from core.values import dataclass

PIXMAPS_KEPT = 64


@dataclass(frozen=True)
class Marks:
    """What is marked on the page beside the music.

    Attributes:
        focus_note: The note that the keyboard acts on, or "".
        has_keyboard: The page has the keyboard: the focus note is shown strongly.
        selection: Selected notes, two or more, or none.
        found, severity: Notes of the chosen finding and how grave it is.
        preview: What a gesture would do.
        accents: The accented places, for the strip under the lines.
        signs: The bow signs by note id.
        played: The note that is heard now, or "".
    """

    focus_note: str = ""
    has_keyboard: bool = False
    selection: tuple[str, ...] = ()
    found: tuple[str, ...] = ()
    severity: Severity = Severity.NOTE
    preview: Preview = Preview()
    accents: Mapping[Place, Accented] = field(default_factory=dict)
    signs: Mapping[str, BowSign] = field(default_factory=dict)
    played: str = ""


@dataclass(frozen=True)
class Band:
    """Some lines of one bowing, and what is marked on them."""

    lines: Sequence[PlacedLine]
    marks: Marks


class PagePainter:
    """Paints one page; keeps the pixmaps of its lines."""

    def __init__(self) -> None:
        self._pixmaps: OrderedDict[int, tuple[Picture, QPixmap]] = OrderedDict()
        self._pixmap_key: tuple[float, float] = (0, 0)
        self._strip = StripPainter()
        self.theme: Theme = LIGHT

    @property
    def theme(self) -> Theme:
        return self._theme

    @theme.setter
    def theme(self, theme: Theme) -> None:
        self._theme = theme
        self._strip.theme = theme
        self._inks = Inks(
            ink=QColor(theme.ink),
            light=QColor(theme.faint_ink),
            paper=QColor(theme.paper),
            glow=mix(theme.tint, theme.paper, 0.22),
            accent=QColor(theme.tint),
        )
        self._pixmaps.clear()

    def paint(
        self,
        painter: QPainter,
        page: EngravedPage,
        heading: Heading | None,
        bands: Iterable[Band],
        scale: float,
        device_ratio: float,
    ) -> None:
        """Paint the page with its top left corner at the painter's origin, in pixels.

        Args:
            heading: None where no part of it is to be painted.
            bands: The lines to paint, those of each bowing together; of several bowings none paints over another.
            scale: Pixels a picture unit.
            device_ratio: Device pixels a pixel.
        """
        self._fit_pixmaps(scale, device_ratio)
        layout = page.layout
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(QRectF(0, 0, layout.width * scale, layout.height * scale), self._inks.paper)
        painter.setPen(QPen(QColor(self._theme.line), 1))
        painter.drawRect(QRectF(-0.5, -0.5, layout.width * scale + 1, layout.height * scale + 1))
        if heading is not None:
            painter.save()
            painter.scale(scale, scale)
            heading.paint(painter, layout.width, self._inks.ink)
            painter.restore()
        for band in bands:
            if not band.lines:
                continue
            painter.save()
            if len(page.layouts) > 1:
                painter.setClipRegion(_region(band.lines, layout.width, scale), Qt.ClipOperation.IntersectClip)
            self._paint_band(painter, page.tune, band.lines, band.marks, scale, device_ratio)
            painter.restore()

    def _paint_band(
        self,
        painter: QPainter,
        tune: Tune,
        placed_lines: Sequence[PlacedLine],
        marks: Marks,
        scale: float,
        device_ratio: float,
    ) -> None:
        painter.save()
        painter.scale(scale, scale)
        self._paint_grounds(painter, placed_lines, marks)
        painter.restore()
        for placed in placed_lines:
            if placed.picture is not None:
                # whole device pixels, so that staff lines stay sharp
                x = round(SIDE_MARGIN * scale * device_ratio) / device_ratio
                y = round(placed.picture_top * scale * device_ratio) / device_ratio
                painter.drawPixmap(QPointF(x, y), self._pixmap(placed.picture, scale, device_ratio))
        self._strip.paint(painter, tune, placed_lines, marks.accents, marks.preview.place, scale)
        painter.scale(scale, scale)
        for placed in placed_lines:
            if placed.picture is not None:
                painter.save()
                painter.translate(SIDE_MARGIN, placed.picture_top)
                paint_bow_signs(painter, placed.picture, marks.signs, self._inks)
                painter.restore()
        self._paint_focus(painter, placed_lines, marks, 1 / scale)
        paint_proposal(painter, placed_lines, marks.preview, marks.signs, self._inks, 1 / scale)

    def foresee(self, pictures: Iterable[Picture], scale: float, device_ratio: float) -> None:
        """Have the pixmaps of lines at hand that may be shown soon."""
        self._fit_pixmaps(scale, device_ratio)
        for picture in pictures:
            self._pixmap(picture, scale, device_ratio)

    def _fit_pixmaps(self, scale: float, device_ratio: float) -> None:
        if self._pixmap_key != (scale, device_ratio):
            self._pixmaps.clear()
            self._strip.forget_stamps()
            self._pixmap_key = (scale, device_ratio)

    def _pixmap(self, picture: Picture, scale: float, device_ratio: float) -> QPixmap:
        kept = self._pixmaps.get(id(picture))
        if kept is not None:
            self._pixmaps.move_to_end(id(picture))
            return kept[1]
        pixmap = QPixmap(
            round(picture.width * scale * device_ratio) + 2, round(picture.height * scale * device_ratio) + 2
        )
        pixmap.setDevicePixelRatio(device_ratio)
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        painter.scale(scale, scale)
        paint_picture(painter, picture, self._inks)
        painter.end()
        self._pixmaps[id(picture)] = picture, pixmap
        if len(self._pixmaps) > PIXMAPS_KEPT:
            self._pixmaps.popitem(last=False)
        return pixmap

    # ------------------------------------------------------------------------------------------- grounds and rings

    def _paint_grounds(self, painter: QPainter, placed_lines: Sequence[PlacedLine], marks: Marks) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        for placed in placed_lines:
            self._paint_touched(painter, placed, marks.preview)
            for box in _runs(placed, marks.selection):
                painter.setBrush(self._inks.glow)
                painter.drawRoundedRect(_rect(box), STAFF_SPACE / 2, STAFF_SPACE / 2)
            for box in _runs(placed, marks.found):
                colour = self._theme.severities[marks.severity]
                painter.setBrush(mix(colour, self._theme.paper, 0.2))
                painter.drawRoundedRect(_rect(box), STAFF_SPACE / 2, STAFF_SPACE / 2)
                painter.setBrush(QColor(colour))  # a bar under the notes: seen without telling colours apart
                painter.drawRect(QRectF(box.left, box.bottom + 40, box.width, 45))
            self._paint_played(painter, placed, marks.played)

    def _paint_played(self, painter: QPainter, placed: PlacedLine, note_id: str) -> None:
        """A band behind the note that is heard, and a pointer under it."""
        band = played_band(placed, note_id)
        if band is None:
            return
        rect = _rect(band)
        painter.setBrush(mix(self._theme.tint, self._theme.paper, 0.45))
        painter.drawRect(rect)
        painter.setBrush(self._inks.accent)
        middle, bottom = rect.center().x(), rect.bottom()
        reach = 0.6 * STAFF_SPACE
        painter.drawPolygon([QPointF(middle - reach, bottom + reach), QPointF(middle + reach, bottom + reach),
                             QPointF(middle, bottom - reach)])  # fmt: skip

    def _paint_touched(self, painter: QPainter, placed: PlacedLine, preview: Preview) -> None:
        """A soft spot behind each head that a gesture would touch."""
        touched = {note for notes in (*preview.slurs, *preview.parted) for note in notes}
        painter.setBrush(self._inks.glow)
        for note_id in touched.intersection(placed.picture.heads if placed.picture is not None else ()):
            assert placed.picture is not None
            head = placed.picture.heads[note_id]
            place = QPointF(SIDE_MARGIN + head.x, placed.picture_top + head.y)
            painter.drawEllipse(place, 1.35 * STAFF_SPACE, 1.1 * STAFF_SPACE)

    def _paint_focus(self, painter: QPainter, placed_lines: Sequence[PlacedLine], marks: Marks, pixel: float) -> None:
        for placed in placed_lines:
            if placed.picture is None or marks.focus_note not in placed.picture.boxes:
                continue
            box = placed.page_box(placed.picture.boxes[marks.focus_note]).grown(0.45 * STAFF_SPACE, 0.2 * STAFF_SPACE)
            pen = QPen(self._inks.accent, (2 if marks.has_keyboard else 1) * pixel)
            if not marks.has_keyboard:
                pen.setStyle(Qt.PenStyle.DotLine)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(_rect(box), STAFF_SPACE / 2, STAFF_SPACE / 2)


def played_band(placed: PlacedLine, note_id: str) -> Box | None:
    """The band on the page that marks a note as heard, without its pointer; None where it is not in the line."""
    picture = placed.picture
    if picture is None or note_id not in picture.heads:
        return None
    x = picture.heads[note_id].x
    half = 0.9 * STAFF_SPACE
    top, bottom = picture.staff_top - STAFF_SPACE, picture.staff_bottom + 1.6 * STAFF_SPACE
    return placed.page_box(Box(x - half, top, x + half, bottom))


def _region(placed_lines: Sequence[PlacedLine], width: float, scale: float) -> QRegion:
    """The bands of some lines in pixels."""
    region = QRegion()
    for placed in placed_lines:
        top, bottom = round(placed.top * scale), round(placed.bottom * scale)
        region += QRect(0, top, round(width * scale), bottom - top)
    return region


def _runs(placed: PlacedLine, note_ids: Sequence[str]) -> list[Box]:
    """Boxes on the page, one around each run of neighbouring notes of the line, as tall as the staff or more."""
    picture = placed.picture
    if picture is None or not note_ids:
        return []
    wanted = set(note_ids)
    runs: list[Box] = []
    going = False
    for note_id, box in picture.boxes.items():
        if note_id not in wanted:
            going = False
        elif going:
            runs[-1] = runs[-1].united(box)
        else:
            runs.append(box)
            going = True
    tall = (picture.staff_top - STAFF_SPACE, picture.staff_bottom + STAFF_SPACE)
    runs = [Box(box.left, min(box.top, tall[0]), box.right, max(box.bottom, tall[1])) for box in runs]
    return [placed.page_box(box.grown(0.35 * STAFF_SPACE, 0.2 * STAFF_SPACE)) for box in runs]


def _rect(box: Box) -> QRectF:
    return QRectF(box.left, box.top, box.width, box.height)
