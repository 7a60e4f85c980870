"""The way of the bow along the tune, under the page: time along, frog to tip across.

Reads the document like every view, one frame after the others, so that page and list are painted first. A click or a
key asks for a note by a signal; which note has the focus comes in by ``show_note``.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QRect, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QShowEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QLabel, QSizePolicy, QToolTip, QVBoxLayout, QWidget

from app.bow_trace_painting import PAD, Scale, TracePainter
from app.bow_words import leg_sentence, reach_sentences
from app.document import Document, State
from app.plan_preview import PlanPreview
from app.theme import LIGHT, Theme
from core.bow_way import BowWay, Out, bow_way
from core.strokes import Strokes
from core.translation import tr, translatable
from core.tune import Tune

NAME = translatable("Bow from frog to tip")
FRAME_MS = 16
KEYS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
ENDS = {Qt.Key.Key_Home: 0, Qt.Key.Key_End: -1}
TIP = translatable("Click to go to the note; Ctrl and the arrow keys go to where the bow runs out.")


class BowTrace(QWidget):
    """The trace under a line that says what is assumed and where the bow runs out.

    Signals:
        note_wanted: Id of the note that was clicked or stepped to.
        hinted: A sentence for the status line.
    """

    note_wanted = Signal(str)
    hinted = Signal(str)

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._plan: PlanPreview | None = None
        self._stale = True
        self._note = ""
        self._waits = False
        self._turn = QTimer(self, singleShot=True, interval=0)
        self._frame = QTimer(self, singleShot=True, interval=FRAME_MS)
        self._turn.timeout.connect(self._frame.start)
        self._frame.timeout.connect(self.catch_up)
        self.caption = QLabel()
        self.caption.setProperty("rank", "quiet")
        self.caption.setAccessibleName(tr("Where the bow runs out"))
        self.caption.setWordWrap(True)
        self.caption.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)  # widens nothing
        self.view = TraceView()
        self.view.note_wanted.connect(self._on_note_wanted)
        self.view.hinted.connect(self.hinted)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 5, 6, 4)
        column.setSpacing(2)
        column.addWidget(self.caption)
        column.addWidget(self.view)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        document.lesson_changed.connect(self._on_lesson_changed)

    def show_note(self, note_id: str) -> None:
        """Mark a note and bring it into sight, in the next frame; "" for none."""
        self._note = note_id
        self._wait()

    @property
    def waits(self) -> bool:
        """Whether something has changed that is not shown yet."""
        return self._waits

    def _wait(self) -> None:
        """Catch up a frame after what has changed is painted elsewhere: painting comes before all timers."""
        if not self._waits:
            self._waits = True
            self._turn.start()

    def catch_up(self) -> None:
        """Show now what has changed; while hidden nothing is worked out."""
        self._frame.stop()
        self._waits = False
        if self.isVisible():
            self._refresh()
            self.view.show_note(self._note)

    def show_plan(self, plan: PlanPreview | None) -> None:
        """Show the way of a previewed bowing, as the page does; None for that of the document's own."""
        if plan is not self._plan:
            self._plan = plan
            self._stale = True
            self._wait()

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self.view.set_theme(theme)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.catch_up()

    def _on_note_wanted(self, note_id: str) -> None:
        self._note = note_id
        self.note_wanted.emit(note_id)

    def _on_lesson_changed(self, before: State | None, after: State | None) -> None:
        self._plan = None
        self._stale = True
        self._wait()

    def _refresh(self) -> None:
        state = self._document.state
        if not self._stale or state is None:
            return
        self._stale = False
        plan = self._plan
        report = self._document.report() if plan is None else self._document.foresee(plan.bowing)
        self.caption.setText(reach_sentences(state.tune, report.strokes, report.reach))
        self.caption.setToolTip(self.caption.text())
        self.view.show_way(state.tune, report.strokes, bow_way(state.tune, report.strokes, report.reach))


class TraceView(QAbstractScrollArea):
    """The drawing itself, scrolled sideways where the tune is long.

    Signals:
        note_wanted, hinted: As those of ``BowTrace``.
    """

    note_wanted = Signal(str)
    hinted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr(NAME))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setViewport(QWidget())  # one that is known here: to name one of Qt's, all kinds of widgets are loaded
        self.viewport().setCursor(Qt.CursorShape.PointingHandCursor)
        self.horizontalScrollBar().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._tune: Tune | None = None
        self._strokes: Strokes | None = None
        self._way: BowWay | None = None
        self._bars: tuple[str, ...] = ()
        self._note = ""
        self._at = -1  # index of the marked note in what is played
        self._again: list[int] = []  # the same note on other passes
        self._painter = TracePainter(self.font(), LIGHT)

    @property
    def way(self) -> BowWay | None:
        """What is drawn."""
        return self._way

    @property
    def at(self) -> int:
        """Index of the marked note in what is played, or -1."""
        return self._at

    def show_way(self, tune: Tune, strokes: Strokes, way: BowWay) -> None:
        """Draw another way; the same note of the same tune stays marked."""
        if tune is not self._tune:
            self._note, self._at, self._again = "", -1, []
            self._bars = bar_labels(tune, strokes)
            self.horizontalScrollBar().setValue(0)
        refit = self._way is None or self._way.seconds != way.seconds
        self._tune, self._strokes, self._way = tune, strokes, way
        if refit:
            self._fit()
            self._mark(self._at)
        self.viewport().update()

    def show_note(self, note_id: str) -> None:
        """Mark a note, on the pass that is nearest to the note marked before, and bring it into sight; "" for none."""
        if self._strokes is None or self._way is None or (note_id == self._note and self._at >= 0):
            return
        self._note = note_id
        places = self._playings(note_id)
        before = max(self._at, 0)
        self._mark(min(places, key=lambda place: abs(place - before), default=-1))

    def set_theme(self, theme: Theme) -> None:
        """Take other colours."""
        self._painter = TracePainter(self.font(), theme)
        self.viewport().update()

    @property
    def scale(self) -> Scale:
        """Where times and places lie in the viewport, when nothing is scrolled away."""
        assert self._way is not None
        return self._painter.scale(self._way, self.viewport().width())

    def sizeHint(self) -> QSize:
        return QSize(400, self._painter.height + self.horizontalScrollBar().sizeHint().height() + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, self.sizeHint().height())

    def words_at(self, seconds: float) -> str:
        """The stroke at a time in words; "" where nothing is played."""
        if self._tune is None or self._strokes is None or self._way is None or not self._way.legs:
            return ""
        return leg_sentence(self._tune, self._strokes, self._way, self._way.legs[self._way.leg_at(seconds)])

    def point_of(self, played: int) -> QPoint:
        """Where the played note of this index begins, in the viewport, half way between frog and tip."""
        assert self._way is not None
        scale = self.scale
        x = scale.x(self._way.notes_s[played]) - self.horizontalScrollBar().value()
        return QPoint(round(x) + 1, round((scale.frog + scale.tip) / 2))

    # ------------------------------------------------------------------------------------------------- going places

    def _playings(self, note_id: str) -> list[int]:
        assert self._strokes is not None
        if note_id not in self._strokes.by_note:
            return []
        return [index for index, played in enumerate(self._strokes.played) if played.note_id == note_id]

    def _go_to(self, played: int) -> None:
        """Mark a note by its place in what is played, and ask the page to go there."""
        assert self._strokes is not None
        assert self._way is not None
        self._note = self._strokes.played[played].note_id
        self._mark(played)
        self.note_wanted.emit(self._note)
        self.hinted.emit(self.words_at(self._way.notes_s[played]))

    def _mark(self, played: int) -> None:
        self._at = played
        self._again = [place for place in self._playings(self._note) if place != played]
        if played >= 0 and self._way is not None:
            bar, room = self.horizontalScrollBar(), self.viewport().width() - self._painter.gutter
            x = self.scale.x(self._way.notes_s[played]) - self._painter.gutter
            if not 0.05 * room <= x - bar.value() <= 0.9 * room:
                bar.setValue(round(x - 0.3 * room))
            self.setAccessibleDescription(self.words_at(self._way.notes_s[played]))
        self.viewport().update()

    def _step(self, by: int, *, to_outs: bool) -> None:
        """Go to the next stroke, or the next where the bow runs out; at the last of them stay."""
        assert self._way is not None
        legs = self._way.legs
        here = self._way.leg_at(self._way.notes_s[self._at]) if self._at >= 0 else -1
        index = here + by
        while to_outs and 0 <= index < len(legs) and legs[index].out is Out.NO:
            index += by
        if 0 <= index < len(legs):
            first = legs[index].first
            if first == self._at and by < 0 and index > 0:  # the parts of a bowed triplet are one note
                first = legs[index - 1].first
            while first == self._at and by > 0 and index + 1 < len(legs):
                index += 1
                first = legs[index].first
            self._go_to(first)
        elif to_outs:
            self.hinted.emit(
                tr("The bow runs out nowhere behind this." if by > 0 else "The bow runs out nowhere before this.")
            )

    # ------------------------------------------------------------------------------------------------- Qt events

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if self._way is None or not self._way.legs or key not in KEYS.keys() | ENDS.keys():
            super().keyPressEvent(event)
        elif key in ENDS:
            self._go_to(self._way.legs[ENDS[key]].first)
        else:
            self._step(KEYS[key], to_outs=bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton and self._way is not None and self._way.notes_s:
            self._go_to(self._way.note_at(self._seconds(event.position().x())))

    def wheelEvent(self, event: QWheelEvent) -> None:
        turned = event.angleDelta().x() or event.angleDelta().y()
        bar = self.horizontalScrollBar()
        bar.setValue(bar.value() - turned * bar.singleStep() // 40)
        event.accept()

    def viewportEvent(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent) and self._way is not None:
            QToolTip.showText(event.globalPos(), f"{self.words_at(self._seconds(event.pos().x()))}\n{tr(TIP)}", self)
            return True
        return super().viewportEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange) and hasattr(self, "_painter"):
            self._painter = TracePainter(QFont(self.font()), self._painter.theme)
            self._fit()
            self.updateGeometry()
        super().changeEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._fit()
        super().resizeEvent(event)

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        self.viewport().update()

    def focusInEvent(self, event: object) -> None:
        self.viewport().update()

    def focusOutEvent(self, event: object) -> None:
        self.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._way is None:
            return
        viewport = self.viewport()
        with QPainter(viewport) as painter:
            painter.fillRect(viewport.rect(), QColor(self._painter.theme.panel))
            self._painter.paint(
                painter, self._way, self._bars, self._at, self._again, self.scale, self.horizontalScrollBar().value(),
                viewport.width(),
            )  # fmt: skip
            if self.hasFocus():
                painter.setPen(QPen(QColor(self._painter.theme.tint), 1))
                painter.drawRect(QRect(0, 0, viewport.width() - 1, viewport.height() - 1))

    def _seconds(self, x: float) -> float:
        return self.scale.seconds(x + self.horizontalScrollBar().value())

    def _fit(self) -> None:
        """Give the scroll bar its range."""
        if self._way is None:
            return
        width = self.viewport().width()
        bar = self.horizontalScrollBar()
        bar.setRange(0, max(0, round(self.scale.x(self._way.seconds)) + PAD - width))
        bar.setPageStep(max(width - self._painter.gutter, 1))
        bar.setSingleStep(max(width // 12, 1))


def bar_labels(tune: Tune, strokes: Strokes) -> tuple[str, ...]:
    """What stands over each visit: the bar's number, with a stroke behind it for each pass before; "" for a pick-up."""
    return tuple(
        "" if tune.bars[visit.bar].is_pickup else str(tune.bars[visit.bar].number) + "′" * min(visit.pass_number - 1, 3)
        for visit in strokes.order
    )
