"""Every gesture on the notes of the page, and every edit of them by name.

A gesture goes through a ``Proposal``: the pointer over a note shows it, the click does it, a key does it to the focus
note. Where bowings are compared a gesture edits the bowing that it touches, and the document shows that one from then
on. The page writes to no other view.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QSize, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from app.accent_strip import onset
from app.comparison import Comparison
from app.document import Document
from app.gestures import CLICKS, CTRL, HELD_KEYS, MENU_KEYS, NO_KEY, SHIFT, STRIP_TIPS, TIPS, held_key
from app.here import Here
from app.note_steps import STEPS, beside_row
from app.page_layout import Target
from app.page_notes import NotePage
from app.page_words import accent_text, apart_text
from app.preview_painting import bar_at
from app.proposals import (
    CLICK,
    LET_GO,
    Extent,
    Proposal,
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
from core.bowing import Bow, Ornament
from core.check import Remedy
from core.engraving.engraver import Engraver
from core.translation import tr, translatable

PREVIEW_SHOWN = translatable("This is a preview, not edited here: Enter takes it, Escape drops it.")


class PageView(NotePage):
    """The page that is worked on (``NotePage`` has the arguments).

    Signals:
        menu_wanted: A global place for the menu of the focus note.
        strip_menu_wanted: The same for the menu of the accent strip at the focus note.
    """

    menu_wanted = Signal(QPoint)
    strip_menu_wanted = Signal(QPoint)

    def __init__(
        self,
        document: Document,
        engraver: Engraver | None = None,
        parent: QWidget | None = None,
        comparison: Comparison | None = None,
    ) -> None:
        super().__init__(document, engraver, parent, comparison)
        self._target: Target | None = None
        self._held = NO_KEY  # Ctrl or Shift while the pointer is over the target
        self._pressed: Target | None = None
        self._dragged_to = ""
        self.setObjectName("page")
        self.setAccessibleName(tr("Page"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)

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
            self.hinted.emit(proposal.refusal if self._plan is None else tr(PREVIEW_SHOWN))
        else:
            assert self._row is not None
            self._document.edit(proposal.label, proposal.edit, self._row.place)
            self.hinted.emit(tr("Done: {edit}.", edit=proposal.label))

    def preview_remedy(self, remedy: Remedy | None) -> None:
        """Draw lightly what a remedy would do, as if the pointer were on its notes; None for nothing any more."""
        here = self._here
        if self._plan is not None:
            return
        self._proposal = propose_edit(here, remedy.label, remedy.edit) if remedy is not None and here else None
        self._proposed_on = self._active
        self.hinted.emit(self._proposal.says(CLICK) if self._proposal is not None else "")
        if self._proposal is not None:
            self._rest.start()
        self.update()

    # ------------------------------------------------------------------------------------------------- keys

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

    def _tell_document(self) -> None:
        """Let the document show the bowing that was touched."""
        state = self._document.state
        if state is not None and self._row is not None and self._row.place != state.shown:
            self._document.show(self._row.place)

    @property
    def _is_pressed(self) -> bool:
        return self._pressed is not None

    def _leave_gesture(self) -> None:
        """Forget what the mouse holds and points at."""
        super()._leave_gesture()
        self._target = self._pressed = None
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
            self.hinted.emit(f"{change} {tr(PREVIEW_SHOWN)}".strip())
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
                self.hinted.emit(self._proposal.says(LET_GO))
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
            tips = "" if self._proposal.refusal else tr(STRIP_TIPS if target.place else TIPS[target.is_sign])
            said = words if target.place else ""
            self.hinted.emit(f"{said} {self._proposal.says(CLICK)} {tips}".strip())
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
            return apart_text(self._rows, target.row, target.note_id)
        return accent_text(self._rows.rows[target.row], target.place)
