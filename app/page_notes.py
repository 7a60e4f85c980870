"""The page with its notes: the bowings that it shows, the note that keys act on, and all that is marked.

It reads the document; ``app.page_view`` sends edits to it.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QPainter
from PySide6.QtWidgets import QWidget

from app.comparison import Comparison
from app.comparison_painting import LEGEND_HEIGHT
from app.document import Document, State
from app.note_words import notes_between
from app.page_accessible import NoteOfRow, install, tell_focus
from app.page_canvas import PageCanvas
from app.page_foresight import PageForesight
from app.page_heading import heading_of
from app.page_painter import Band, Marks, played_band
from app.page_rows import changed_notes, make_rows
from app.page_words import comparison_text, note_text
from app.plan_preview import PlanPreview
from app.preview_painting import paint_brackets, paint_frame
from app.proposals import Preview, Proposal, propose_join
from app.sureness_painting import paint_sureness
from core.bowing import Bowing
from core.check import Severity
from core.engraving.bow_signs import MarkDensity
from core.engraving.engraver import Engraver
from core.engraving.picture import STAFF_SPACE
from core.translation import plural, tr

REST_MS = 25  # how long the pointer rests on a note before what a click would give is engraved


class NotePage(PageCanvas):
    """The engraved page of the document's shown bowing, or of those that are compared.

    Args:
        document: What it shows.
        engraver: Engraves it; its own where None.
        comparison: Which bowings are compared; never any where None.

    Signals:
        hinted: A sentence for the status line: what a gesture would do or did, or why it does nothing; "" for none.
        note_focused: Id of the note that the keyboard acts on, or "".
    """

    hinted = Signal(str)
    note_focused = Signal(str)

    def __init__(
        self,
        document: Document,
        engraver: Engraver | None = None,
        parent: QWidget | None = None,
        comparison: Comparison | None = None,
    ) -> None:
        super().__init__(engraver, parent)
        install(NotePage)
        self._document = document
        self._comparison = comparison or Comparison(document, self)
        self._density = MarkDensity.EVERY
        self._focus_note = ""
        self._anchor = ""  # where a selection began; "" without one
        self._played = ""  # the note that is heard now
        self._found: tuple[str, ...] = ()
        self._found_severity = Severity.NOTE
        self._proposal: Proposal | None = None  # what is drawn lightly
        self._proposed_on = 0  # index of the row that it would be done to
        self._plan: PlanPreview | None = None  # what is shown in the place of the document's bowing
        self._told_bar: int | None = None  # the bar whose change is told
        self._foresight = PageForesight(document.foresee)
        self._is_painted = False  # what the document shows now, as far as anything waits for it
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._foresee)
        document.lesson_changed.connect(self._on_lesson_changed)
        self._comparison.changed.connect(self._on_comparison_changed)
        if document.state is not None:
            self._on_lesson_changed(None, document.state)

    @property
    def _is_pressed(self) -> bool:
        """Whether the mouse holds something of the page, which must not move under it."""
        return False

    def _leave_gesture(self) -> None:
        """Forget what would be done."""
        self._proposal = None

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
        return comparison_text(self._rows) if self._rows is not None else ""

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
            self._foresight.drop()
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
            if not self._is_pressed and not self._strip().contains(self._band(note_id)):
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
        if self._rest.isActive():  # it counts from when this is painted: nothing is worked out ahead of that
            self._rest.stop()
            self._is_painted = False
        if before is not None and before.tune is after.tune:
            rows = len(self.rows)
            self._show_bowing(after)
            changed = changed_notes(after.tune, before.bowing, after.bowing) if before.shown == after.shown else ()
            if rows > 1 and before.shown != after.shown and len(before.lesson.bowings) == len(after.lesson.bowings):
                changed = changed_notes(after.tune, before.lesson.bowings[after.shown], after.bowing)
            if rows != len(self.rows):
                self._leave_gesture()  # the pointer may have been on a bowing that is gone
                self._reveal((self._focus_note,) if self._focus_note else ())
            elif not self._is_in_sight(changed):
                self._reveal(changed[:1])  # an undo far away would else be done unseen
            self._describe_focus()
            return
        self._open(after.tune)
        self._is_painted = False
        self._foresight.drop()
        self._found = ()
        self._played = ""
        self._anchor = ""
        self._leave_gesture()
        self._show_bowing(after)
        self._resize()
        notes = [note.id for note in after.tune.sequence if not note.is_rest]
        self._set_focus_note(notes[0] if notes else "", reveal=False)
        self._rest.stop()  # what a click would give is worked out once the page is painted
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
        known = (*self.rows, *self._foresight.rows) if self._rows is None or self._rows.density is self._density else ()
        self._foresight.drop()
        check = self._document.report_on  # directions and accents, no findings
        rows = make_rows(state.tune, bowings, active, reference, self._density, check, known)
        name = plural("1 bowing", "{n} bowings", len(places)) if len(places) > 1 else bowings[active][1].name
        name = name if self._plan is None else tr("{name} – preview", name=name)
        self._show_rows(rows, heading_of(state.tune, name, LEGEND_HEIGHT if reference is not None else 0))

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

    def _describe_focus(self) -> None:
        if self._rows is not None and self._here is not None and self._focus_note:
            change = self._tell_change(self._here.tune.bar_of[self._focus_note])
            self.setAccessibleDescription(note_text(self._rows, self._active, self._focus_note, change))
            tell_focus(self)

    # ------------------------------------------------------------------------------------------------- read out

    def readable_count(self) -> int:
        """How many notes and rests stand on the page, those of each bowing counted."""
        return len(self.rows) * len(self._here.tune.sequence) if self._here is not None else 0

    def readable_note(self, index: int) -> NoteOfRow:
        """Row and id of one of them, row by row in written order."""
        assert self._here is not None
        row, place = divmod(index, len(self._here.tune.sequence))
        return row, self._here.tune.sequence[place].id

    def readable_focus(self) -> int | None:
        """Which of them the keyboard acts on; None for a tune without notes."""
        if self._here is None or not self._focus_note:
            return None
        tune = self._here.tune
        return self._active * len(tune.sequence) + tune.places[self._focus_note]

    def note_words(self, row: int, note_id: str) -> str:
        """All there is to say of a note."""
        assert self._rows is not None
        return note_text(self._rows, row, note_id)

    def note_area(self, row: int, note_id: str) -> QRect:
        """Where a note stands in this widget; empty for a hidden rest, and where its line is not engraved yet."""
        box = self._page.layouts[row].note_box(note_id) if self._page is not None else None
        return self._to_rect(box).toAlignedRect() if box is not None else QRect()

    def _tell_change(self, bar: int | None) -> str:
        """What the plan that is shown would change in a bar, marked as told now; "" for nothing."""
        change = self._plan.tell(bar) if self._plan is not None and bar is not None else ""
        told = bar if change else None
        if told != self._told_bar:
            self._told_bar = told
            self.update()
        return change

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._update_focus()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._update_focus()

    def _update_focus(self) -> None:
        """Have the ring around the focus note painted anew."""
        area = self.note_area(self._active, self._focus_note) if self._focus_note else QRect()
        room = round(STAFF_SPACE * self._scale)
        self.update(area.adjusted(-room, -room, room, room) if not area.isEmpty() else area)

    # ------------------------------------------------------------------------------------------------- foresight

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
        """Check a plan that may be shown next, and engrave what would be in sight of it."""
        if self._here is not None:
            self._engrave_ahead(plan.bowing, self._active, self._lines_in_sight())

    def _engrave_ahead(self, bowing: Bowing, index: int, lines: range | None = None) -> None:
        """Have at hand what a row would show with another bowing: these lines of it, or all that would change."""
        assert self._page is not None
        assert self._rows is not None
        here, row = self.rows[index].here, self._foresight.work_out(self._rows, index, bowing)
        changed = changed_notes(here.tune, here.bowing, bowing)
        if lines is not None:
            changed = tuple(note for note in changed if self._layout.line_of[note] in lines)
        pictures = self._page.foresee(changed, bowing, row.signs, index)
        self._painter.foresee(pictures, self._scale, self.devicePixelRatioF())

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
        if not self._is_painted:
            self._is_painted = True
            self._rest.start()
        if self._plan is not None:
            theme = self._painter.theme
            lines = bands[self._active].lines
            paint_brackets(painter, lines, self._plan.changes, self._told_bar, self._scale, theme)
            paint_sureness(painter, lines, self.rows[self._active], self._plan.sure, self._told_bar, self._scale, theme)
            paint_frame(painter, self._layout, self._scale, theme)
