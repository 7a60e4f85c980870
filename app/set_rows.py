"""The set as a Qt list: its tunes, and between them how the bow comes from one playing to the next."""

from __future__ import annotations

from enum import IntEnum

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter
from PySide6.QtWidgets import QAbstractItemView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from app.bow_sign_painting import bow_sign_path
from app.set_list import SetState, SetTune
from app.severity_signs import WORDS, paint_severity
from app.theme import LIGHT, Theme
from core.set_check import SetFinding, seam_text, times_text
from core.severity import Severity
from core.translation import tr
from core.tune_set import Seam, Way
from core.values import dataclass

Index = QModelIndex | QPersistentModelIndex
PAD = 8  # pixels around the texts of a row
SIGN_SIZE = 36  # em of a bow sign, pixels
SIGNS_LEFT = 34  # pixels from the left edge to the first sign's middle, and between the two
SIGNS_APART = 30
TEXT_LEFT = 104  # of the sentence beside the signs
MARK = 14  # side of a severity sign
_WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignVCenter)


class Role(IntEnum):
    """Data of a row beyond its text."""

    ROW = Qt.ItemDataRole.UserRole


@dataclass(frozen=True)
class TuneRow:
    """A tune: its place in the set, and itself."""

    place: int
    tune: SetTune
    is_open: bool

    @property
    def title(self) -> str:
        return f"{self.place + 1}. {self.tune.lesson.tune.title or tr('Untitled')}"

    @property
    def detail(self) -> str:
        """Its bowing and times, and where it is open or comes from."""
        where = tr("on the page") if self.is_open else self.tune.path.name if self.tune.path else tr("in no file")
        return tr(
            "{bowing}, {times} ({where})",
            bowing=self.tune.lesson.bowings[self.tune.bowing].name, times=times_text(self.tune.times), where=where,
        )  # fmt: skip

    @property
    def text(self) -> str:
        return f"{self.title}: {self.detail}"


@dataclass(frozen=True)
class SeamRow:
    """How the bow comes from one playing to the next.

    Attributes:
        seam: Where.
        text: One sentence.
        findings: What the check tells there; empty where the bow goes on by itself.
    """

    seam: Seam
    sentence: str
    findings: tuple[SetFinding, ...]

    @property
    def severity(self) -> Severity | None:
        """The gravest of its findings."""
        told = {finding.severity for finding in self.findings}
        return next((severity for severity in Severity if severity in told), None)

    @property
    def text(self) -> str:
        return (
            self.sentence
            if self.severity is None
            else tr("{severity}: {sentence}", severity=tr(WORDS[self.severity], "severity"), sentence=self.sentence)
        )


Row = TuneRow | SeamRow


def rows_of(state: SetState, open_places: frozenset[int]) -> tuple[Row, ...]:
    """The rows of a set: each tune, the seams between its times, and the seam to the next; the way round last."""
    rows: list[Row] = []
    seams = list(state.report.seams)
    for place, tune in enumerate(state.tunes):
        rows.append(TuneRow(place, tune, place in open_places))
        while seams and seams[0].way is not Way.ROUND and seams[0].before.entry == place:
            rows.append(_seam_row(state, seams.pop(0)))
    return (*rows, *(_seam_row(state, seam) for seam in seams))


def _seam_row(state: SetState, seam: Seam) -> SeamRow:
    findings = tuple(finding for finding in state.report.findings if seam in finding.seams)
    return SeamRow(seam, seam_text(state.tune_set, seam), findings)


class SetModel(QAbstractListModel):
    """The rows."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()

    @property
    def rows(self) -> tuple[Row, ...]:
        return self._rows

    def show_rows(self, rows: tuple[Row, ...]) -> None:
        """Show other rows; the view forgets which one was chosen where there are more or fewer."""
        if len(rows) == len(self._rows):
            self._rows = rows
            if rows:
                self.dataChanged.emit(self.index(0), self.index(len(rows) - 1))
            return
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's own signature)
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        row = self._rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return row.text
        if role == Qt.ItemDataRole.ToolTipRole and isinstance(row, TuneRow):
            return str(row.tune.path) if row.tune.path else None
        return row if role == Role.ROW else None


class SetDelegate(QStyledItemDelegate):
    """Paints a tune with its bowing and times, and a seam as two bow signs with a sentence."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.theme: Theme = LIGHT

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        row: Row = index.data(Role.ROW)
        metrics = QFontMetrics(option.font)
        if isinstance(row, TuneRow):
            return QSize(200, metrics.height() + 2 * PAD)
        view = option.widget
        room = view.viewport().width() if isinstance(view, QAbstractItemView) else 400
        width = max(room - TEXT_LEFT - 2 * PAD - MARK, 80)
        height = metrics.boundingRect(QRect(0, 0, width, 10_000), _WRAP, row.sentence).height()
        return QSize(200, max(height, SIGN_SIZE // 2) + PAD)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row: Row = index.data(Role.ROW)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        place = option.rect
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(place, QColor(self.theme.tint_soft if chosen else self.theme.field))
        if isinstance(row, TuneRow):
            painter.setPen(QColor(self.theme.line))
            painter.drawLine(place.topLeft(), place.topRight())
            self._paint_tune(painter, place, option.font, row)
        else:
            self._paint_seam(painter, place, option.font, row)
        if chosen and option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QColor(self.theme.tint))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(place.adjusted(0, 0, -1, -1))
        painter.restore()

    def _paint_tune(self, painter: QPainter, place: QRect, font: QFont, row: TuneRow) -> None:
        room = place.adjusted(PAD, 0, -PAD, 0)
        bold = QFont(font)
        bold.setWeight(QFont.Weight.DemiBold)
        detail = QFontMetrics(font).elidedText(row.detail, Qt.TextElideMode.ElideMiddle, room.width() // 2)
        used = QFontMetrics(font).horizontalAdvance(detail) + PAD
        painter.setFont(bold)
        painter.setPen(QColor(self.theme.text))
        title = QFontMetrics(bold).elidedText(row.title, Qt.TextElideMode.ElideRight, room.width() - used)
        middle = int(Qt.AlignmentFlag.AlignVCenter)
        painter.drawText(room, middle | int(Qt.AlignmentFlag.AlignLeft), title)
        painter.setFont(font)
        painter.setPen(QColor(self.theme.quiet))
        painter.drawText(room, middle | int(Qt.AlignmentFlag.AlignRight), detail)

    def _paint_seam(self, painter: QPainter, place: QRect, font: QFont, row: SeamRow) -> None:
        theme, seam = self.theme, row.seam
        colour = QColor(theme.severities[row.severity]) if row.severity else QColor(theme.ink)
        foot = place.center().y() + SIGN_SIZE / 6
        left = place.left() + SIGNS_LEFT
        last = bow_sign_path(seam.last, False, SIGN_SIZE)
        first = bow_sign_path(seam.first, seam.is_retake, SIGN_SIZE)
        painter.fillPath(last.translated(left, foot), QColor(theme.faint_ink))
        painter.fillPath(first.translated(left + SIGNS_APART, foot), colour)
        room = place.adjusted(TEXT_LEFT, 0, -PAD, 0)
        if row.severity is not None:
            box = QRectF(room.right() - MARK, place.center().y() - MARK / 2, MARK, MARK)
            paint_severity(painter, row.severity, box, colour)
        room.adjust(0, 0, -MARK - PAD, 0)
        painter.setFont(font)
        painter.setPen(colour if row.severity is Severity.WARNING else QColor(theme.text))
        painter.drawText(room, _WRAP, row.sentence)
