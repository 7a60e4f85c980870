"""The page: the shown bowing engraved, and every gesture on its notes.

The page reads the document and sends edits to it; it writes to no other view. A gesture goes through a ``Proposal``:
the pointer over a note shows it, the click does it, a key does it to the focus note.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QApplication, QSizePolicy, QWidget

from app.accent_strip import Accented, Place, accented, onset, place_at, place_text, place_x
from app.document import Document, State
from app.engraved_page import EngravedPage
from app.gestures import CLICKS, CTRL, HELD_KEYS, MENU_KEYS, NO_KEY, SHIFT, STRIP_TIPS, TIPS, held_key
from app.note_steps import STEPS
from app.page_heading import Heading, heading_of
from app.page_layout import MUSIC_WIDTH, SIDE_MARGIN, PageLayout, Target
from app.page_painter import Marks, PagePainter
from app.plan_preview import PlanPreview
from app.preview_painting import bar_at, paint_brackets, paint_frame
from app.proposals import (
    Extent,
    Here,
    Preview,
    Proposal,
    describe_note,
    notes_between,
    propose_bow,
    propose_edit,
    propose_free,
    propose_hook,
    propose_join,
    propose_limit,
    propose_ornament,
    propose_place,
    propose_plan,
    propose_retake,
    propose_separate,
    propose_slur,
    propose_turn,
)
from app.theme import Theme
from core.accent_plan import PlanKind
from core.bowing import Bow, Bowing, Ornament
from core.check import Remedy, Severity
from core.engraving.bow_signs import BowSign, MarkDensity, bow_signs
from core.engraving.engraver import Engraver
from core.engraving.picture import STAFF_SPACE, Box, Picture, slot_height
from core.tune import Tune

UNITS_PER_INCH = 2540
DESK_MARGIN = 18  # pixels around the page
LEAST_ZOOM, MOST_ZOOM = 0.25, 5.0
LINES_A_TURN = 2  # lines out of sight that are engraved in one turn of the event loop
PAINT_MS = 12  # lets what is in sight be painted before lines out of sight are engraved
REST_MS = 25  # how long the pointer rests on a note before what a click would give is engraved
FIRST_SIGHT = 1000  # pixels that a window shows about, before it is shown
PREVIEW_SHOWN = "This is a preview, not edited here: Enter takes it, Escape drops it."


class PageView(QWidget):
    """The engraved page of the document's shown bowing.

    Signals:
        hinted: A sentence for the status line: what a gesture would do or did, or why it does nothing; "" for none.
        note_focused: Id of the note that the keyboard acts on, or "".
        menu_wanted: A global place for the menu of the focus note.
        strip_menu_wanted: The same for the menu of the accent strip at the focus note.
        revealed: A rectangle of this widget that should come into sight.
        widened: The page is wider or narrower now at the same zoom.
    """

    hinted = Signal(str)
    note_focused = Signal(str)
    menu_wanted = Signal(QPoint)
    strip_menu_wanted = Signal(QPoint)
    revealed = Signal(QRect)
    widened = Signal()

    def __init__(self, document: Document, engraver: Engraver | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.setAccessibleName("Page")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._document = document
        self._engraver = engraver or Engraver()
        self._painter = PagePainter()
        self._density = MarkDensity.EVERY
        self._strip_shown = True
        self._accents: Mapping[Place, Accented] = {}
        self._zoom = 1.0
        self._here: Here | None = None
        self._page: EngravedPage | None = None
        self._heading: Heading | None = None
        self._width_seen = self._page_width
        self._focus_note = ""
        self._anchor = ""  # where a selection began; "" without one
        self._found: tuple[str, ...] = ()
        self._found_severity = Severity.NOTE
        self._target: Target | None = None
        self._held = NO_KEY  # Ctrl or Shift while the pointer is over the target
        self._pressed: Target | None = None
        self._dragged_to = ""
        self._proposal: Proposal | None = None  # what the pointer would do now
        self._plan: PlanPreview | None = None  # what is shown in the place of the document's bowing
        self._told_bar: int | None = None  # the bar whose change is told
        self._idle = QTimer(self)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._engrave_some)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._foresee)
        document.lesson_changed.connect(self._on_lesson_changed)
        if document.state is not None:
            self._on_lesson_changed(None, document.state)

    # ------------------------------------------------------------------------------------------------- what it shows

    @property
    def focus_note(self) -> str:
        """Id of the note that the keyboard acts on, or ""."""
        return self._focus_note

    @property
    def selection(self) -> tuple[str, ...]:
        """Ids of the selected notes and rests in written order; the focus note alone where nothing is selected."""
        if self._here is None or not self._focus_note:
            return ()
        return notes_between(self._here.tune, self._anchor or self._focus_note, self._focus_note)

    @property
    def signs(self) -> Mapping[str, BowSign]:
        """The bow signs on the page by note id."""
        return self._page.signs if self._page is not None else {}

    @property
    def accents(self) -> Mapping[Place, Accented]:
        """The accented places of the strip."""
        return self._accents

    @property
    def preview(self) -> Preview:
        """What is drawn lightly because a gesture would do it."""
        return self._proposal.preview if self._proposal is not None else Preview()

    @property
    def plan(self) -> PlanPreview | None:
        """What is shown in the place of the document's bowing, to be looked at; None for the bowing itself."""
        return self._plan

    @property
    def found_notes(self) -> tuple[str, ...]:
        """Ids of the notes marked for a finding."""
        return self._found

    @property
    def pictures(self) -> tuple[Picture | None, ...]:
        """The engraving of each line; None for one that waits."""
        return tuple(placed.picture for placed in self._page.layout.lines) if self._page is not None else ()

    @property
    def waits(self) -> bool:
        """Whether lines out of sight wait to be engraved."""
        return self._page is not None and bool(self._page.stale)

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

    def set_density(self, density: MarkDensity) -> None:
        """Choose which strokes carry a bow mark."""
        if density is not self._density:
            self._density = density
            self._show_strokes()

    def show_strip(self, shown: bool) -> None:
        """Show or hide the accent strip under the lines."""
        if shown is not self._strip_shown:
            self._strip_shown = shown
            if self._page is not None:
                self._page.show_strip(shown)
                self._show_strokes()
                self._resize()

    def show_plan(self, plan: PlanPreview | None) -> None:
        """Show a bowing in the place of the document's, to be looked at; None shows the document's own again.

        While it is shown a click and the arrow keys only go to notes: nothing is edited, and the status line says
        what takes the bowing or drops it. An edit made elsewhere shows the document's own bowing again.
        """
        state = self._document.state
        if plan is self._plan or state is None:
            return
        self._plan = plan
        self._told_bar = None
        self._leave_gesture()
        self._show_bowing(state)
        bars = [state.tune.bars[bar] for bar in (plan.changes if plan is not None else ())]
        changed = tuple(bar.notes[0].id for bar in bars if bar.notes)
        if not self._is_in_sight(changed):
            self._reveal(changed[:1])
        self._describe_focus()

    def focus_on(self, note_id: str) -> None:
        """Make a note the one that the keyboard acts on; drops the selection."""
        self._anchor = ""
        self._set_focus_note(note_id)

    def mark_notes(self, note_ids: tuple[str, ...], severity: Severity) -> None:
        """Mark the notes of a finding and bring the first into sight; no notes take the marks away."""
        self._found, self._found_severity = note_ids, severity
        self._reveal(note_ids[:1])
        self.update()

    # ------------------------------------------------------------------------------------------------- places

    def note_rect(self, note_id: str) -> QRect:
        """Where a note stands in this widget, stem and accidental included; empty for a hidden rest."""
        box = self._final_layout(note_id).note_box(note_id)
        return self._to_rect(box).toAlignedRect() if box is not None else QRect()

    def head_point(self, note_id: str) -> QPoint:
        """The middle of a note's head in this widget."""
        layout = self._final_layout(note_id)
        placed = layout.lines[layout.line_of[note_id]]
        assert placed.picture is not None
        head = placed.picture.heads[note_id]
        return self._to_rect(placed.page_box(Box(head.x, head.y, head.x, head.y))).topLeft().toPoint()

    def sign_point(self, note_id: str) -> QPoint:
        """The middle of the bow mark over a note in this widget.

        Raises:
            KeyError: no room is kept for a mark over this note.
        """
        layout = self._final_layout(note_id)
        placed = layout.lines[layout.line_of[note_id]]
        assert placed.picture is not None
        slot = placed.picture.bow_slots[note_id]
        y = slot.bottom - slot_height(slot) / 2
        return self._to_rect(placed.page_box(Box(slot.x, y, slot.x, y))).topLeft().toPoint()

    def strip_point(self, place: Place) -> QPoint:
        """The middle of a place of the accent strip in this widget; the strip must be shown."""
        assert self._here is not None
        tune = self._here.tune
        layout = self._final_layout(tune.bars[place[0]].notes[0].id)
        placed = next(line for line in layout.lines if line.line.first <= place[0] < line.line.stop)
        assert placed.picture is not None
        assert placed.strip is not None
        x = place_x(tune, placed.picture, place)
        assert x is not None
        left = SIDE_MARGIN + x
        return self._to_rect(Box(left, placed.strip, left, placed.strip)).topLeft().toPoint()

    def sizeHint(self) -> QSize:
        height = self._page.layout.height if self._page is not None else 0
        return QSize(
            round(self._page_width * self._scale) + 2 * DESK_MARGIN, round(height * self._scale) + 2 * DESK_MARGIN
        )

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
        strip = self._page.layout.strip_at(on_page.x(), on_page.y())
        if strip is not None:
            placed, x = strip
            assert placed.picture is not None
            found = place_at(self._page.tune, placed.picture, placed.line, self._accents, x)
            return Target(found[1], place=found[0]) if found is not None else None
        return self._page.layout.target_at(on_page.x(), on_page.y())

    def _final_layout(self, note_id: str, lines_below: int = 0) -> PageLayout:
        """The layout in which a note's line, all lines above it and some below are engraved."""
        assert self._page is not None
        if self._page.engrave(range(self._page.layout.line_of[note_id] + 1 + lines_below)):
            self._resize()
        return self._page.layout

    def _reveal(self, note_ids: tuple[str, ...]) -> None:
        for note_id in note_ids:
            rect = self.note_rect(note_id)
            if not rect.isEmpty():
                room = round(5 * STAFF_SPACE * self._scale)
                self.revealed.emit(rect.adjusted(-room, -room, room, room))
                return

    # ------------------------------------------------------------------------------------------------- the document

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        self._plan = None
        self._told_bar = None
        if before is not None and before.tune is after.tune:
            self._show_bowing(after)
            changed = changed_notes(after.tune, before.bowing, after.bowing) if before.shown == after.shown else ()
            if not self._is_in_sight(changed):
                self._reveal(changed[:1])  # an undo far away would else be done unseen
            self._describe_focus()
            return
        heading = heading_of(after.tune, after.bowing.name)
        self._page = EngravedPage(self._engraver, after.tune, heading.height)
        self._page.show_strip(self._strip_shown)
        self._found = ()
        self._anchor = ""
        self._target = self._pressed = self._proposal = None
        self._show_bowing(after)
        self._resize()
        notes = [note.id for note in after.tune.sequence if not note.is_rest]
        self._set_focus_note(notes[0] if notes else "", reveal=False)
        self.revealed.emit(QRect(0, 0, 1, 1))

    def _show_bowing(self, state: State) -> None:
        """Show the bowing of the document, or the plan in its place."""
        bowing, name = state.bowing, state.bowing.name
        if self._plan is not None:
            bowing, name = self._plan.bowing, f"{name} – preview"
        report = self._document.foresee(bowing)
        self._here = Here(state.tune, bowing, report.strokes)
        self._accents = accented(report.accents)
        self._heading = heading_of(state.tune, name)
        self._show_strokes()

    def _show_strokes(self) -> None:
        """Engrave what is in sight now, the rest in the next turns of the event loop."""
        if self._here is None or self._page is None:
            return
        here = self._here
        self._page.take(here.bowing, bow_signs(here.tune, here.bowing, here.strokes, self._density))
        height = self._page.layout.height
        while self._page.engrave(self._lines_in_sight()):
            pass  # lines may have moved into sight
        if self._page.layout.height != height:
            self._resize()
        if self._page.stale:
            QTimer.singleShot(PAINT_MS, self, self._idle.start)
        self.update()

    def _engrave_some(self) -> None:
        assert self._page is not None
        if self._page.engrave(sorted(self._page.stale)[:LINES_A_TURN]):
            self._resize()
        if not self._page.stale:
            self._idle.stop()

    def _strip(self) -> QRect:
        """The part of this widget that is in sight."""
        strip = self.visibleRegion().boundingRect()
        return strip if not strip.isEmpty() else QRect(0, 0, self.width(), FIRST_SIGHT)

    def _lines_in_sight(self, strip: QRect | None = None) -> range:
        assert self._page is not None
        strip = strip or self._strip()
        top = (strip.top() - self._origin.y()) / self._scale
        return self._page.layout.lines_between(top, top + strip.height() / self._scale)

    def _is_in_sight(self, note_ids: tuple[str, ...]) -> bool:
        assert self._page is not None
        lines = self._lines_in_sight()
        return not note_ids or any(self._page.layout.line_of[note_id] in lines for note_id in note_ids)

    def _resize(self) -> None:
        if self._page_width != self._width_seen:
            self._width_seen = self._page_width
            self.widened.emit()  # may come back here with another zoom
        self.setMinimumSize(self.sizeHint())
        self.updateGeometry()
        self.update()

    # ------------------------------------------------------------------------------------------------- edits by name

    def toggle_slur(self) -> None:
        """Slur the focus note to the next or separate the two; with a selection, one slur over it."""
        if self._here is not None and (notes := self.selection):
            self._do(
                propose_slur(self._here, notes[0], notes[-1]) if len(notes) > 1 else propose_join(self._here, notes[0])
            )

    def separate(self) -> None:
        """Give the focus note, or every selected note, a bow of its own."""
        if self._here is not None and (notes := self.selection):
            self._do(propose_separate(self._here, notes[0], notes[-1]))

    def hook(self) -> None:
        """Hook the focus note to the next, or separate the two."""
        self._do_here(propose_hook)

    def turn(self) -> None:
        """Turn the stroke of the focus note round."""
        self._do_here(propose_turn)

    def fix(self, bow: Bow) -> None:
        """Fix the stroke of the focus note in a direction."""
        self._do_here(lambda here, note: propose_bow(here, note, bow))

    def free(self) -> None:
        """Take the fixed mark or the retake from the stroke of the focus note."""
        self._do_here(propose_free)

    def retake(self) -> None:
        """Retake the stroke of the focus note, or stop doing so."""
        self._do_here(propose_retake)

    def limit(self, only_pass: int | None) -> None:
        """Keep the fixed mark of the focus note's stroke to one pass, or let it hold on every pass."""
        self._do_here(lambda here, note: propose_limit(here, note, only_pass))

    def toggle_accent(self) -> None:
        """Accent the place at which the focus note begins, in its bar alone, or stop doing so."""
        self._do_here(lambda here, note: propose_place(here, onset(here.tune, note), self._accents))

    def set_plan(self, extent: Extent, kind: PlanKind | None) -> None:
        """Give the bar, phrase, part or tune around the focus note a plan; that of its bar where no kind is named."""
        self._do_here(lambda here, note: propose_plan(here, note, extent, kind))

    def toggle_ornament(self, ornament: Ornament) -> None:
        """Put an ornament on the focus note, or on every selected note, or take it away."""
        if self._here is not None and (notes := self.selection):
            self._do(propose_ornament(self._here, notes[0], notes[-1], ornament))

    def passes(self) -> int:
        """How often the focus note is played in all."""
        return len(self._here.strokes.bows.get(self._focus_note, ())) if self._here is not None else 0

    def _do_here(self, propose: Callable[[Here, str], Proposal]) -> None:
        if self._here is not None and self._focus_note:
            self._do(propose(self._here, self._focus_note))

    def _do(self, proposal: Proposal) -> None:
        self._proposal = None  # what the pointer would do now is the way back: not shown until it moves
        if proposal.refusal or self._plan is not None:
            self.hinted.emit(proposal.refusal if self._plan is None else PREVIEW_SHOWN)
            self.update()
        else:
            self._document.edit(proposal.label, proposal.edit)
            self.hinted.emit(f"Done: {proposal.label}.")

    def preview_remedy(self, remedy: Remedy | None) -> None:
        """Draw lightly what a remedy would do, as if the pointer were on its notes; None for nothing any more."""
        here = self._here
        if self._plan is not None:
            return
        self._proposal = propose_edit(here, remedy.label, remedy.edit) if remedy is not None and here else None
        self.hinted.emit(self._proposal.says("Click") if self._proposal is not None else "")
        if self._proposal is not None:
            self._rest.start()
        self.update()

    # ------------------------------------------------------------------------------------------------- focus

    def _set_focus_note(self, note_id: str, *, reveal: bool = True) -> None:
        if note_id != self._focus_note:
            self._focus_note = note_id
            self._rest.start()
            self.note_focused.emit(note_id)
        self._describe_focus()
        if reveal and note_id:
            self._reveal((note_id,))
        self.update()

    def _describe_focus(self) -> None:
        if self._here is not None and self._focus_note:
            words = describe_note(self._here, self._focus_note)
            there = self._accents.get(onset(self._here.tune, self._focus_note))
            words = words if there is None else f"{words}; accent {there.says}"
            change = self._tell_change(self._here.tune.bar_of[self._focus_note])
            self.setAccessibleDescription(f"{words}. {change}" if change else words)

    def _tell_change(self, bar: int | None) -> str:
        """What the plan that is shown would change in a bar, marked as told now; "" for nothing."""
        change = self._plan.changes.get(bar, "") if self._plan is not None and bar is not None else ""
        told = bar if change else None
        if told != self._told_bar:
            self._told_bar = told
            self.update()
        return change

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave_off()
            return
        if event.key() in MENU_KEYS and (event.key() == Qt.Key.Key_Menu or event.modifiers() & SHIFT):
            self._want_menu()
            return
        if event.key() in HELD_KEYS and self._target is not None and self._pressed is None:
            self._hover(self._target, HELD_KEYS[event.key()])
            return
        step = STEPS.get((event.key(), bool(event.modifiers() & CTRL)))
        if step is None or self._here is None or not self._focus_note:
            super().keyPressEvent(event)
            return
        if event.modifiers() & SHIFT:
            self._anchor = self._anchor or self._focus_note
        else:
            self._anchor = ""
        layout = self._final_layout(self._focus_note, lines_below=1)
        self._set_focus_note(step(layout, self._here.tune, self._focus_note))

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() in HELD_KEYS and self._target is not None and self._pressed is None:
            self._hover(self._target, NO_KEY)
        else:
            super().keyReleaseEvent(event)

    def _leave_gesture(self) -> None:
        """Forget what the mouse holds and points at."""
        self._target = self._pressed = self._proposal = None
        self._dragged_to = ""
        self.setToolTip("")
        self.unsetCursor()

    def _leave_off(self) -> None:
        """Escape: drop what the mouse holds, else the selection, else the marks of a finding."""
        if self._pressed is not None:
            self._pressed, self._dragged_to = None, ""
        elif self._anchor:
            self._anchor = ""
        else:
            self._found = ()
        self._proposal = None
        self.hinted.emit("")
        self.update()

    def _want_menu(self) -> None:
        if self._focus_note:
            self.menu_wanted.emit(self.mapToGlobal(self.note_rect(self._focus_note).bottomRight()))

    # ------------------------------------------------------------------------------------------------- mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        target = self._target_at(event.position())
        self._target = target
        if target is None:
            self._anchor = ""
            self.update()
        elif target.is_note and event.modifiers() & SHIFT:
            self._anchor = self._anchor or self._focus_note
            self._set_focus_note(target.note_id, reveal=False)
        else:
            self._pressed, self._dragged_to = target, ""
            self._anchor = ""
            self._set_focus_note(target.note_id, reveal=False)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.mousePressEvent(event)  # two quick clicks are two clicks

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        target = self._target_at(event.position())
        if self._plan is not None:
            self._point_at_change(event.position())
        elif self._pressed is not None and self._pressed.is_note:
            self._drag_to(self._target_at(event.position()), event.position())
        elif (target, held_key(event.modifiers())) != (self._target, self._held):  # after a click: not before it moves
            self._hover(target, event.modifiers())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pressed, self._pressed = self._pressed, None
        if event.button() is not Qt.MouseButton.LeftButton or pressed is None or self._here is None:
            return
        if self._plan is not None:
            change = self._tell_change(self._here.tune.bar_of[pressed.note_id])
            self.hinted.emit(f"{change} {PREVIEW_SHOWN}".strip())
            return
        last, self._dragged_to = self._dragged_to, ""
        if last:
            if last != pressed.note_id:  # else it was dragged back to where it began
                self._do(propose_slur(self._here, pressed.note_id, last))
        elif self._target_at(event.position()) == pressed:
            proposal = self._propose(pressed, held_key(event.modifiers()))
            if proposal is not None:
                self._do(proposal)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() is QContextMenuEvent.Reason.Mouse:
            target = self._target_at(QPointF(event.pos()))
            if target is None:
                return
            if target.note_id not in self.selection or target.place is not None:
                self.focus_on(target.note_id)
            (self.menu_wanted if target.place is None else self.strip_menu_wanted).emit(event.globalPos())
        else:
            self._want_menu()

    def leaveEvent(self, event: QEvent) -> None:
        if self._plan is not None:
            self._tell_change(None)
            self.setToolTip("")
        self._hover(None, NO_KEY)

    def _point_at_change(self, place: QPointF) -> None:
        """Tell what the plan that is shown would change in the bar under the pointer."""
        assert self._page is not None
        on_page = (place - self._origin) / self._scale
        change = self._tell_change(bar_at(self._page.layout, on_page.x(), on_page.y()))
        if change != self.toolTip():
            self.setToolTip(change)
            self.hinted.emit(change)

    def _drag_to(self, target: Target | None, place: QPointF) -> None:
        """The notes from where the button went down to the pointer; the last note stays where the pointer strays."""
        assert self._pressed is not None
        assert self._here is not None
        self.revealed.emit(QRect(place.toPoint(), QSize(1, 1)).adjusted(-30, -30, 30, 30))
        if target is None or target.place is not None:
            return
        far = (place - QPointF(self.head_point(self._pressed.note_id))).manhattanLength()
        if target.note_id == self._pressed.note_id and not self._dragged_to and far < QApplication.startDragDistance():
            return
        if target.note_id != (self._dragged_to or self._pressed.note_id):
            self._dragged_to = target.note_id
            if target.note_id == self._pressed.note_id:  # back where it began: nothing would be done
                self._proposal = None
                self.hinted.emit("")
            else:
                self._proposal = propose_slur(self._here, self._pressed.note_id, target.note_id)
                self.hinted.emit(self._proposal.says("Let go"))
            self.update()

    def _hover(self, target: Target | None, keys: Qt.KeyboardModifier) -> None:
        if self._plan is not None:
            return
        self._target, self._held = target, held_key(keys)
        self._proposal = self._propose(target, self._held) if target is not None else None
        self.setToolTip(self._strip_words(target))
        if self._proposal is None or target is None:
            self.unsetCursor()
            self.hinted.emit("")
        else:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
            if target.place is None:
                self._rest.start()
            tips = "" if self._proposal.refusal else STRIP_TIPS if target.place else TIPS[target.is_sign]
            self.hinted.emit(f"{self._strip_words(target)} {self._proposal.says('Click')} {tips}".strip())
        self.update()

    def _propose(self, target: Target, keys: Qt.KeyboardModifier) -> Proposal | None:
        """What a click would do there; None for nothing."""
        if self._here is None:
            return None
        if target.place is not None:
            return propose_place(self._here, target.place, self._accents) if keys is NO_KEY else None
        propose = CLICKS.get((target.is_sign, keys))
        return propose(self._here, target.note_id) if propose is not None else None

    def _strip_words(self, target: Target | None) -> str:
        """How the accent under the pointer is met, as a sentence; "" beside all accents."""
        if target is None or target.place is None or self._here is None or target.place not in self._accents:
            return ""
        where = place_text(self._here.tune, target.place)
        return f"{where[:1].upper()}{where[1:]}: the accent is {self._accents[target.place].says}."

    def _foresee(self) -> None:
        """Check and engrave what a click (or the slur key) would give, so that it need only be shown then."""
        here = self._here
        if here is None or self._page is None or not self._focus_note or self._plan is not None:
            return
        proposal = self._proposal or propose_join(here, self._focus_note)
        if proposal.refusal or proposal.preview.place is not None:  # nothing is engraved for an accent
            return
        self._engrave_ahead(proposal.edit(here.tune, here.bowing))

    def foresee_plan(self, plan: PlanPreview) -> None:
        """Check and engrave a plan that may be shown next."""
        if self._here is not None:
            self._engrave_ahead(plan.bowing)

    def _engrave_ahead(self, bowing: Bowing) -> None:
        here = self._here
        assert here is not None
        assert self._page is not None
        report = self._document.foresee(bowing)
        accented(report.accents)
        signs = bow_signs(here.tune, bowing, report.strokes, self._density)
        pictures = self._page.foresee(changed_notes(here.tune, here.bowing, bowing), bowing, signs)
        self._painter.foresee(pictures, self._scale, self.devicePixelRatioF())

    # ------------------------------------------------------------------------------------------------- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        strip = event.rect()
        if self._page is not None and self._page.engrave(self._lines_in_sight(strip)):
            QTimer.singleShot(0, self, self._resize)  # not while painting
        with QPainter(self) as painter:
            painter.fillRect(strip, QColor(self._painter.theme.desk))
            if self._page is None or self._heading is None:
                return
            painter.translate(self._origin)
            marks = Marks(
                focus_note=self._focus_note,
                has_keyboard=self.hasFocus(),
                selection=self.selection if self._anchor else (),
                found=self._found,
                severity=self._found_severity,
                preview=self.preview,
                accents=self._accents,
            )
            lines, ratio = self._lines_in_sight(strip), self.devicePixelRatioF()
            painter.save()
            self._painter.paint(painter, self._page, self._heading, marks, lines, self._scale, ratio)
            painter.restore()
            if self._plan is not None:
                placed, theme = [self._page.layout.lines[index] for index in lines], self._painter.theme
                paint_brackets(painter, placed, self._plan.changes, self._told_bar, self._scale, theme)
                paint_frame(painter, self._page.layout, self._scale, theme)


def changed_notes(tune: Tune, old: Bowing, new: Bowing) -> tuple[str, ...]:
    """Ids of the notes on which two bowings differ, in written order; where accent plans do, all of the bar."""
    changed: set[str] = set(old.retakes ^ new.retakes)
    for was, now in ((old.joins, new.joins), (old.marks, new.marks), (old.signs, new.signs)):
        if was is not now:
            changed.update(note for note, _ in dict(was).items() ^ dict(now).items())
    plans = zip(tune.bars, old.plans(len(tune.bars)), new.plans(len(tune.bars)), strict=True)
    changed.update(note.id for bar, was, now in plans if was != now for note in bar.notes)
    return tuple(sorted(changed.intersection(tune.places), key=tune.places.__getitem__))
