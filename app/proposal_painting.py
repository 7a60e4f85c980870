"""What a gesture would do, drawn lightly over the page before it is done: slurs, cuts, bow signs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from app.bow_sign_painting import paint_bow_signs
from app.page_layout import SIDE_MARGIN, PlacedLine
from app.painting import Inks
from app.proposals import Preview
from core.bowing import Bow
from core.engraving.bow_signs import BowSign
from core.engraving.picture import STAFF_SPACE, Curve, Outline, Picture

SLUR_RISE = 0.9 * STAFF_SPACE


def paint_proposal(
    painter: QPainter,
    placed_lines: Sequence[PlacedLine],
    preview: Preview,
    signs: Mapping[str, BowSign],
    inks: Inks,
    pixel: float,
) -> None:
    """Paint over some lines of a page what a gesture would do there.

    Args:
        signs: The bow signs by note id.
        pixel: A pixel in picture units.
    """
    for placed in placed_lines:
        if placed.picture is None:
            continue
        painter.save()
        painter.translate(SIDE_MARGIN, placed.picture_top)
        for slur in preview.slurs:
            joined = [note for note in slur if note in placed.picture.heads]
            if joined and len(slur) > 1:
                _paint_possible_slur(painter, placed.picture, joined, slur, inks, pixel)
        for first, last in preview.parted:
            _paint_cut(painter, placed.picture, first, last, inks, pixel)
        if preview.turned is not None and preview.turned[0] in placed.picture.bow_slots:
            _paint_possible_sign(painter, placed.picture, *preview.turned, signs, inks, pixel)
        if preview.freed in placed.picture.bow_slots:
            _paint_freed_sign(painter, placed.picture, preview.freed, signs, inks, pixel)
        painter.restore()


def _paint_possible_slur(
    painter: QPainter, picture: Picture, here: Sequence[str], whole: Sequence[str], inks: Inks, pixel: float
) -> None:
    """A dashed arc over or under the heads; it runs on to the edge where the slur goes on to another line."""
    below = _stems_up(picture, here)
    side = 1 if below else -1
    edges = [
        picture.heads[note].y + side * 0.9 * STAFF_SPACE
        if _stem_up(picture, note) == below
        else (picture.boxes[note].bottom + 0.4 * STAFF_SPACE if below else picture.boxes[note].top - 0.4 * STAFF_SPACE)
        for note in here
    ]
    left = picture.heads[here[0]].x if here[0] == whole[0] else 0
    right = picture.heads[here[-1]].x if here[-1] == whole[-1] else picture.width
    extreme = max(edges) if below else min(edges)
    rise = side * min(SLUR_RISE + 0.09 * (right - left), 3 * STAFF_SPACE)
    path = QPainterPath(QPointF(left, edges[0]))
    path.cubicTo(
        QPointF(left + 0.25 * (right - left), extreme + rise),
        QPointF(right - 0.25 * (right - left), extreme + rise),
        QPointF(right, edges[-1]),
    )
    pen = QPen(inks.accent, max(0.28 * STAFF_SPACE, 1.8 * pixel))
    pen.setDashPattern([2.2, 1.6])
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen)
    painter.drawPath(path)


def _paint_cut(painter: QPainter, picture: Picture, first: str, last: str, inks: Inks, pixel: float) -> None:
    """Two strokes across the slur (or between the heads) where it would be cut."""
    if first not in picture.heads and last not in picture.heads:
        return
    xs = [picture.heads[note].x for note in (first, last) if note in picture.heads]
    x = sum(xs) / len(xs)
    ys = [picture.heads[note].y for note in (first, last) if note in picture.heads]
    y = _curve_y(picture, x, first, last)
    y = y if y is not None else sum(ys) / len(ys)
    painter.setPen(QPen(inks.paper, max(0.75 * STAFF_SPACE, 5 * pixel)))
    reach = 0.75 * STAFF_SPACE
    painter.drawLine(QPointF(x, y - 0.4 * reach), QPointF(x, y + 0.4 * reach))
    painter.setPen(QPen(inks.accent, max(0.2 * STAFF_SPACE, 1.6 * pixel)))
    for shift in (-0.28 * STAFF_SPACE, 0.28 * STAFF_SPACE):
        painter.drawLine(QPointF(x + shift - 40, y + reach), QPointF(x + shift + 40, y - reach))


def _paint_possible_sign(
    painter: QPainter, picture: Picture, note_id: str, bow: Bow, signs: Mapping[str, BowSign], inks: Inks, pixel: float
) -> None:
    """The sign as it would be, on a plate of its own over the present one."""
    place = _sign_place(picture, note_id, signs)
    plate = place.adjusted(-0.5 * STAFF_SPACE, -0.3 * STAFF_SPACE, 0.5 * STAFF_SPACE, 0.3 * STAFF_SPACE)
    painter.setPen(QPen(inks.accent, 1.2 * pixel))
    painter.setBrush(inks.paper)
    painter.drawRoundedRect(plate, 0.4 * STAFF_SPACE, 0.4 * STAFF_SPACE)
    possible = Inks(inks.accent, inks.accent, inks.paper, inks.glow, inks.accent)
    paint_bow_signs(painter, picture, {note_id: BowSign((bow,), fixed=True)}, possible)


def _paint_freed_sign(
    painter: QPainter, picture: Picture, note_id: str, signs: Mapping[str, BowSign], inks: Inks, pixel: float
) -> None:
    """A stroke through the sign."""
    place = _sign_place(picture, note_id, signs)
    painter.setPen(QPen(inks.accent, max(0.2 * STAFF_SPACE, 1.6 * pixel)))
    reach = 0.3 * STAFF_SPACE
    painter.drawLine(
        QPointF(place.left() - reach, place.bottom() + reach), QPointF(place.right() + reach, place.top() - reach)
    )


def _sign_place(picture: Picture, note_id: str, signs: Mapping[str, BowSign]) -> QRectF:
    """Where the sign or signs over a note stand in a picture."""
    sign = signs.get(note_id)
    box = picture.bow_slots[note_id].box(len(sign.bows) if sign is not None else 1)
    return QRectF(box.left, box.top, box.width, box.height)


def _stem_up(picture: Picture, note_id: str) -> bool:
    box, head = picture.boxes[note_id], picture.heads[note_id]
    return head.y - box.top > box.bottom - head.y


def _stems_up(picture: Picture, note_ids: Sequence[str]) -> bool:
    return all(_stem_up(picture, note_id) for note_id in note_ids)


def _curve_y(picture: Picture, x: float, first: str, last: str) -> float | None:
    """Height of the drawn slur over a place between two notes, or None."""
    order = {note_id: place for place, note_id in enumerate(picture.boxes)}
    for curve in picture.slurs:
        if order.get(curve.start, -1) <= order.get(first, -1) and order.get(curve.end, len(order)) >= order.get(
            last, len(order)
        ):
            return _y_at(picture, curve, x)
    return None


def _y_at(picture: Picture, curve: Curve, x: float) -> float:
    shape = picture.shapes[curve.shape]
    points: list[tuple[float, float]] = []
    if isinstance(shape, Outline):
        here = (0.0, 0.0)
        for command in shape.commands:
            if command.letter == "C":
                points = [_bezier(here, command.numbers, step / 20) for step in range(21)]
                break  # the way back is the other edge of the same curve
            here = (command.numbers[-2], command.numbers[-1]) if command.numbers else here
    return min(points, key=lambda point: abs(point[0] - x))[1] if points else curve.box.centre.y


def _bezier(start: tuple[float, float], rest: Sequence[float], t: float) -> tuple[float, float]:
    points = [start, *zip(rest[::2], rest[1::2], strict=True)]
    while len(points) > 1:
        points = [(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t) for a, b in pairwise(points)]
    return points[0]
