"""The page: the shown bowing engraved, alone or among those that it is compared with, and every gesture on its notes.

The page reads the document and sends edits to it; it writes to no other view. A gesture goes through a ``Proposal``:
the pointer over a note shows it, the click does it, a key does it to the focus note. Where bowings are compared a
gesture edits the bowing that it touches, and the document shows that one from then on.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
)
from PySide6.QtWidgets import QApplication, QWidget

from app.accent_strip import onset, place_text
from app.comparison import Comparison
from app.comparison_painting import LEGEND_HEIGHT
from app.difference_words import count_text, difference_text
from app.document import Document, State
from app.gestures import CLICKS, CTRL, HELD_KEYS, MENU_KEYS, NO_KEY, SHIFT, STRIP_TIPS, TIPS, held_key
from app.note_steps import STEPS, beside_row
from app.page_canvas import PageCanvas
from app.page_heading import heading_of
from app.page_layout import Target
from app.page_painter import Band, Marks, played_band
from app.page_rows import Row, make_row, make_rows
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
from core.accent_plan import PlanKind
from core.bowing import Bow, Bowing, Ornament
from core.check import Remedy, Severity
from core.engraving.bow_signs import MarkDensity
from core.engraving.engraver import Engraver
from core.engraving.picture import STAFF_SPACE
from core.tune import Tune

REST_MS = 25  # how long the pointer rests on a note before what a click would give is engraved
PREVIEW_SHOWN = "This is a preview, not edited here: Enter takes it, Escape drops it."


class PageView(PageCanvas):
    """The engraved page of the document's shown bowing, or of those that are compared.

    Args:
        document: What it shows.
        engraver: Engraves it; its own where None.
        comparison: Which bowings are compared; never any where None.

    Signals:
        hinted: A sentence for the status line: what a gesture would do or did, or why it does nothing; "" for none.
        note_focused: Id of the note that the keyboard acts on, or "".
        menu_wanted: A global place for the menu of the focus note.
        strip_menu_wanted: The same for the menu of the accent strip at the focus note.
    """

    hinted = Signal(str)
    note_focused = Signal(str)
    menu_wanted = Signal(QPoint)
    strip_menu_wanted = Signal(QPoint)

    def __init__(
        self,
        document: Document,
        engraver: Engraver | None = None,
        parent: QWidget | None = None,
        comparison: Comparison | None = None,
    ) -> None:
        super().__init__(engraver, parent)
        self.setObjectName("page")
        self.setAccessibleName("Page")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self._document = document
        self._comparison = comparison or Comparison(document, self)
        self._density = MarkDensity.EVERY
        self._focus_note = ""
        self._anchor = ""  # where a selection began; "" without one
        self._played = ""  # the note that is heard now
        self._found: tuple[str, ...] = ()
        self._found_severity = Severity.NOTE
        self._target: Target | None = None
        self._held = NO_KEY  # Ctrl or Shift while the pointer is over the target
        self._pressed: Target | None = None
        self._dragged_to = ""
        self._proposal: Proposal | None = None  # what the pointer would do now
        self._proposed_on = 0  # index of the row that it would do it to
        self._plan: PlanPreview | None = None  # what is shown in the place of the document's bowing
        self._told_bar: int | None = None  # the bar whose change is told
        self._foreseen: tuple[Row, ...] = ()  # what was worked out ahead last
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._foresee)
        document.lesson_changed.connect(self._on_lesson_changed)
        self._comparison.changed.connect(self._on_comparison_changed)
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

    def comparison_words(self) -> str:
        """How much tells each bowing on the page from the reference, in sentences; "" where nothing is compared."""
        rows = self._rows
        if rows is None or rows.reference is None:
            return ""
        reference = rows.rows[rows.reference]
        told = (row for row in rows.rows if row is not reference)
        return " ".join(f"{row.name}: {count_text([*row.differences.values()], reference.name)}" for row in told)

    @property
    def preview(self) -> Preview:
        """What is drawn lightly because a gesture would do it."""
        return self._proposal.preview if self._proposal is not None else Preview()

    @property
    def plan(self) -> PlanPreview | None:
        """What is shown in the place of the document's bowing, to be looked at; None for the bowing itself."""
        return self._plan

    @property
    def played_note(self) -> str:
        """Id of the note marked as heard now, or ""."""
        return self._played

    @property
    def found_notes(self) -> tuple[str, ...]:
        """Ids of the notes marked for a finding."""
        return self._found

    def set_density(self, density: MarkDensity) -> None:
        """Choose which strokes carry a bow mark."""
        if density is not self._density:
            self._density = density
            self._foreseen = ()
            self._show_again()

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

    def show_played(self, note_id: str) -> None:
        """Mark the note that is heard now, "" for none; its line is brought into sight where another was heard."""
        if note_id == self._played or self._page is None:
            return
        before, self._played = self._played, note_id
        lines = self._layout.line_of
        if note_id in lines and lines[note_id] != lines.get(before):
            self._final_layout(note_id)
            if self._pressed is None and not self._strip().contains(self._band(note_id)):
                room = round(12 * STAFF_SPACE * self._scale)  # what comes next is in sight too
                self.revealed.emit(self._band(note_id).adjusted(0, -room // 3, 0, room))
        for changed in (before, note_id):
            self.update(self._band(changed))

    def _band(self, note_id: str) -> QRect:
        """Where the mark of a note that is heard is painted; empty where its line is not engraved."""
        layout = self._layout if self._page is not None else None
        if layout is None or note_id not in layout.line_of:
            return QRect()
        box = played_band(layout.lines[layout.line_of[note_id]], note_id)
        return self._to_rect(box.grown(STAFF_SPACE, STAFF_SPACE)).toAlignedRect() if box is not None else QRect()

    # ------------------------------------------------------------------------------------------------- the document

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        self._plan = None
        self._told_bar = None
        if before is not None and before.tune is after.tune:
            rows = len(self.rows)
            self._show_bowing(after)
            changed = changed_notes(after.tune, before.bowing, after.bowing) if before.shown == after.shown else ()
            if rows > 1 and before.shown != after.shown and len(before.lesson.bowings) == len(after.lesson.bowings):
                changed = changed_notes(after.tune, before.lesson.bowings[after.shown], after.bowing)
            if rows != len(self.rows):
                self._reveal((self._focus_note,) if self._focus_note else ())
            elif not self._is_in_sight(changed):
                self._reveal(changed[:1])  # an undo far away would else be done unseen
            self._describe_focus()
            return
        self._open(after.tune)
        self._foreseen = ()
        self._found = ()
        self._played = ""
        self._anchor = ""
        self._target = self._pressed = self._proposal = None
        self._show_bowing(after)
        self._resize()
        notes = [note.id for note in after.tune.sequence if not note.is_rest]
        self._set_focus_note(notes[0] if notes else "", reveal=False)
        self.revealed.emit(QRect(0, 0, 1, 1))

    def _on_comparison_changed(self) -> None:
        if self._page is not None:
            self._leave_gesture()
            self._show_again()
            self._resize()
            if self._focus_note:
                self._reveal((self._focus_note,))
            self._describe_focus()

    def _show_again(self) -> None:
        state = self._document.state
        if state is not None:
            self._show_bowing(state)

    def _show_bowing(self, state: State) -> None:
        """Show the bowing of the document, or the plan in its place, among those that it is compared with."""
        places = self._comparison.places
        bowings = [(place, state.lesson.bowings[place]) for place in places]
        active = places.index(state.shown)
        if self._plan is not None:
            bowings[active] = (state.shown, self._plan.bowing)
        told_from = self._comparison.reference
        reference = places.index(told_from) if told_from is not None else None
        known = (*self.rows, *self._foreseen) if self._rows is None or self._rows.density is self._density else ()
        self._foreseen = ()
        check = self._document.foresee
        rows = make_rows(state.tune, bowings, active, reference, self._density, check, known)
        name = f"{len(places)} bowings" if len(places) > 1 else bowings[active][1].name
        name = name if self._plan is None else f"{name} – preview"
        self._show_rows(rows, heading_of(state.tune, name, LEGEND_HEIGHT if reference is not None else 0))

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
        self._do_here(lambda here, note: propose_place(here, onset(here.tune, note), self.accents))

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
        if self._proposal is not None:
            self._proposal = None  # what the pointer would do now is the way back: not shown until it moves
            self._update_rows(self._proposed_on)
        if proposal.refusal or self._plan is not None:
            self.hinted.emit(proposal.refusal if self._plan is None else PREVIEW_SHOWN)
        else:
            assert self._row is not None
            self._document.edit(proposal.label, proposal.edit, self._row.place)
            self.hinted.emit(f"Done: {proposal.label}.")

    def preview_remedy(self, remedy: Remedy | None) -> None:
        """Draw lightly what a remedy would do, as if the pointer were on its notes; None for nothing any more."""
        here = self._here
        if self._plan is not None:
            return
        self._proposal = propose_edit(here, remedy.label, remedy.edit) if remedy is not None and here else None
        self._proposed_on = self._active
        self.hinted.emit(self._proposal.says("Click") if self._proposal is not None else "")
        if self._proposal is not None:
            self._rest.start()
        self.update()

    # ------------------------------------------------------------------------------------------------- focus

    def _set_focus_note(self, note_id: str, *, reveal: bool = True, row: int | None = None) -> None:
        """Let keys act on a note, of a row by index or of the active one."""
        before, self._active = self._active, self._active if row is None else row
        if note_id != self._focus_note or before != self._active:
            self._focus_note = note_id
            self._rest.start()
            self.note_focused.emit(note_id)
        self._describe_focus()
        if reveal and note_id:
            self._reveal((note_id,))
        self._update_rows(before, self._active)

    def _tell_document(self) -> None:
        """Let the document show the bowing that was touched."""
        state = self._document.state
        if state is not None and self._row is not None and self._row.place != state.shown:
            self._document.show(self._row.place)

    def _describe_focus(self) -> None:
        if self._here is not None and self._focus_note:
            words = describe_note(self._here, self._focus_note)
            there = self.accents.get(onset(self._here.tune, self._focus_note))
            words = words if there is None else f"{words}; accent {there.says}"
            words = words if len(self.rows) == 1 else f"{self.rows[self._active].name}. {words}"
            change = self._tell_change(self._here.tune.bar_of[self._focus_note])
            more = [change, self._difference_words(self._focus_note, self._active)]
            self.setAccessibleDescription(". ".join([words, *filter(None, more)]))

    def _difference_words(self, note_id: str, index: int) -> str:
        """What tells a note of a row from that of the reference, as a sentence; "" for nothing."""
        rows = self._rows
        if rows is None or rows.reference is None or note_id not in rows.rows[index].differences:
            return ""
        row = rows.rows[index]
        return difference_text(row.here.tune, note_id, row.differences[note_id], rows.rows[rows.reference].name)

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
        layout = self._final_layout(self._focus_note, lines_below=1)
        if event.modifiers() & SHIFT:
            self._anchor = self._anchor or self._focus_note
        else:
            self._anchor = ""
            if self._step_to_row(event.key()):
                return
        self._set_focus_note(step(layout, self._here.tune, self._focus_note))

    def _step_to_row(self, key: int) -> bool:
        """Up and Down go to the bowing above or below, or to the next line of them; whether they did."""
        if self._page is None or len(self.rows) == 1 or self._plan is not None:
            return False
        goal = beside_row(key, self._page.layouts, self._page.tune, self._focus_note, self._active)
        if goal is not None:
            self._set_focus_note(goal[0], row=goal[1])
            self._tell_document()
        return goal is not None

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
        elif target.is_note and event.modifiers() & SHIFT and self._touched(target) == self._active:
            self._anchor = self._anchor or self._focus_note
            self._set_focus_note(target.note_id, reveal=False)
        else:
            self._pressed, self._dragged_to = target, ""
            self._anchor = ""
            self._set_focus_note(target.note_id, reveal=False, row=self._touched(target))

    def _touched(self, target: Target) -> int:
        """The row that a press makes the active one: none but the preview while there is one."""
        return target.row if self._plan is None else self._active

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
        self._release(pressed, event)
        self._tell_document()

    def _release(self, pressed: Target, event: QMouseEvent) -> None:
        assert self._here is not None
        last, self._dragged_to = self._dragged_to, ""
        if last:
            if last != pressed.note_id:  # else it was dragged back to where it began
                self._do(propose_slur(self._here, pressed.note_id, last))
        elif self._target_at(event.position()) == pressed:
            proposal = self._propose(pressed, held_key(event.modifiers()))
            if proposal is not None:
                self._do(proposal)
            elif pressed.is_difference:
                self.hinted.emit(self._words_at(pressed))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() is QContextMenuEvent.Reason.Mouse:
            target = self._target_at(QPointF(event.pos()))
            if target is None:
                return
            row = self._touched(target)
            if row != self._active or target.note_id not in self.selection or target.place is not None:
                self._anchor = ""
                self._set_focus_note(target.note_id, row=row)
                self._tell_document()
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
        change = self._tell_change(bar_at(self._layout, on_page.x(), on_page.y()))
        if change != self.toolTip():
            self.setToolTip(change)
            self.hinted.emit(change)

    def _drag_to(self, target: Target | None, place: QPointF) -> None:
        """The notes from where the button went down to the pointer; the last note stays where the pointer strays."""
        assert self._pressed is not None
        assert self._here is not None
        self.revealed.emit(QRect(place.toPoint(), QSize(1, 1)).adjusted(-30, -30, 30, 30))
        if target is None or target.place is not None or target.row != self._active:
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
                self._proposed_on = self._active
                self.hinted.emit(self._proposal.says("Let go"))
            self._update_rows(self._active)

    def _hover(self, target: Target | None, keys: Qt.KeyboardModifier) -> None:
        if self._plan is not None:
            return
        self._target, self._held = target, held_key(keys)
        before, self._proposed_on = self._proposed_on, target.row if target is not None else self._active
        self._proposal = self._propose(target, self._held) if target is not None else None
        words = self._words_at(target)
        self.setToolTip(words)
        if self._proposal is None or target is None:
            self.unsetCursor()
            self.hinted.emit(words)
        else:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
            if target.place is None:
                self._rest.start()
            tips = "" if self._proposal.refusal else STRIP_TIPS if target.place else TIPS[target.is_sign]
            said = words if target.place else ""
            self.hinted.emit(f"{said} {self._proposal.says('Click')} {tips}".strip())
        self._update_rows(before, self._proposed_on)

    def _propose(self, target: Target, keys: Qt.KeyboardModifier) -> Proposal | None:
        """What a click would do there; None for nothing."""
        if self._rows is None or target.is_difference:
            return None
        row = self._rows.rows[target.row]
        if target.place is not None:
            return propose_place(row.here, target.place, row.accents) if keys is NO_KEY else None
        propose = CLICKS.get((target.is_sign, keys))
        return propose(row.here, target.note_id) if propose is not None else None

    def _words_at(self, target: Target | None) -> str:
        """How the accent under the pointer is met, or what tells its note apart, as a sentence; "" beside all."""
        if target is None or self._rows is None:
            return ""
        if target.place is None:
            return self._difference_words(target.note_id, target.row)
        row = self._rows.rows[target.row]
        if target.place not in row.accents:
            return ""
        where = place_text(row.here.tune, target.place)
        return f"{where[:1].upper()}{where[1:]}: the accent is {row.accents[target.place].says}."

    def _foresee(self) -> None:
        """Check and engrave what a click (or the slur key) would give, so that it need only be shown then."""
        if self._here is None or not self._focus_note or self._plan is not None:
            return
        on = self._proposed_on if self._proposal is not None and self._proposed_on < len(self.rows) else self._active
        here = self.rows[on].here
        proposal = self._proposal or propose_join(here, self._focus_note)
        if proposal.refusal or proposal.preview.place is not None:  # nothing is engraved for an accent
            return
        self._engrave_ahead(proposal.edit(here.tune, here.bowing), on)

    def foresee_plan(self, plan: PlanPreview) -> None:
        """Check and engrave a plan that may be shown next."""
        if self._here is not None:
            self._engrave_ahead(plan.bowing, self._active)

    def _engrave_ahead(self, bowing: Bowing, index: int) -> None:
        assert self._page is not None
        here = self.rows[index].here
        told_from, place = self.rows[index].told_from, self.rows[index].place
        row = make_row(here.tune, place, bowing, told_from, self._density, self._document.foresee, self._foreseen)
        self._foreseen = (row, *self._others_told_from(row, index))
        pictures = self._page.foresee(changed_notes(here.tune, here.bowing, bowing), bowing, row.signs, index)
        self._painter.foresee(pictures, self._scale, self.devicePixelRatioF())

    def _others_told_from(self, row: Row, index: int) -> tuple[Row, ...]:
        """The other rows as they would be told from this one in the place of the reference; none where it is not."""
        if self._rows is None or index != self._rows.reference:
            return ()
        tune, check = row.here.tune, self._document.foresee
        return tuple(
            make_row(tune, other.place, other.here.bowing, row.here, self._density, check, self.rows)
            for place, other in enumerate(self.rows)
            if place != index
        )

    # ------------------------------------------------------------------------------------------------- painting

    def _marks(self, index: int) -> Marks:
        row, active = self.rows[index], index == self._active
        return Marks(
            focus_note=self._focus_note if active else "",
            has_keyboard=self.hasFocus(),
            selection=self.selection if self._anchor and active else (),
            found=self._found if active else (),
            severity=self._found_severity,
            preview=self.preview if index == self._proposed_on else Preview(),
            accents=row.accents,
            signs=row.signs,
            played=self._played if active else "",
        )

    def _paint_over(self, painter: QPainter, bands: Sequence[Band]) -> None:
        if self._plan is not None:
            theme = self._painter.theme
            paint_brackets(painter, bands[self._active].lines, self._plan.changes, self._told_bar, self._scale, theme)
            paint_frame(painter, self._layout, self._scale, theme)


def changed_notes(tune: Tune, old: Bowing, new: Bowing) -> tuple[str, ...]:
    """Ids of the notes on which two bowings differ, in written order; where accent plans do, all of the bar."""
    changed: set[str] = set(old.retakes ^ new.retakes)
    for was, now in ((old.joins, new.joins), (old.marks, new.marks), (old.signs, new.signs)):
        if was is not now:
            changed.update(note for note, _ in dict(was).items() ^ dict(now).items())
    plans = zip(tune.bars, old.plans(len(tune.bars)), new.plans(len(tune.bars)), strict=True)
    changed.update(note.id for bar, was, now in plans if was != now for note in bar.notes)
    return tuple(sorted(changed.intersection(tune.places), key=tune.places.__getitem__))
