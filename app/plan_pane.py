"""The planner beside the page: choose, work out, look at the plan on the page, take it.

Reads the document and sends edits to it. A plan is shown on the page by a signal and is in no bowing before it is
taken; a change of the lesson, whoever makes it, drops what was worked out for the lesson as it was before.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable
from dataclasses import replace
from functools import partial

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from app.carrying import carried_name, pose_carrying, tell_carried, tell_sure_only
from app.document import Document, State
from app.plan_ahead import PlanAhead
from app.plan_answers import Planned, tell_best, tell_next_best, tell_starting_versions, tell_suited
from app.plan_choices import Choices, Span, pose_question
from app.plan_listing import PlanListing
from app.plan_preview import PlanPreview
from app.plan_taking import PlanTaking
from app.plan_words import added, plan_name
from app.plan_work import PlanWork, Work
from app.settings import Settings
from core.bowing import Bowing
from core.errors import RefusedEditError
from core.lesson import Lesson, add_bowing
from core.planner import VERSIONS
from core.translation import inside, tr, translatable
from core.values import dataclass

TAB_REASONS = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
STARTING_VERSIONS = len(VERSIONS)
AFTER_PAINT_MS = 40  # lets the best plan be painted before the search for others takes a share of the time

NOTHING_OPEN = translatable("Open a tune first.")
WORKING = translatable("Working out the bowing …")
MORE = translatable("Looking for the next best …")
COMPARING = translatable("Comparing the accent plans …")
STARTING = translatable("Working out starting versions …")
LEFT_OFF = translatable("Left off.")
LESSON_CHANGED = translatable("Left off: the lesson was changed meanwhile.")
CARRY = translatable("Carry on the bowing")
CARRYING = translatable("Carrying on the bowing …")


@dataclass(frozen=True)
class Asked:
    """What was asked last.

    Attributes:
        listing: Of the plans that answer, none yet.
        again: Asks it again, as the pane is set by then.
        more: What to look for beside the first plan.
    """

    listing: PlanListing
    again: Callable[[], None]
    more: Callable[[Planned], Work]


class PlanPane(PlanTaking):
    """The planner; what it is made from is told by ``PlanTaking``."""

    def __init__(
        self,
        document: Document,
        settings: Settings,
        selection: Callable[[], tuple[str, ...]] = tuple,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(document, settings, selection, parent)
        self._asked = Asked(PlanListing(), self.work_out, lambda _: lambda go_on, tell: None)
        self._plans_to_come = False  # those that are listed were worked out for something else
        self._mends_over: Choices | None = None  # what was chosen before mending, to come back with its end
        self._versions: list[Bowing] = []
        self._on_told: Callable[[object], None] = self._on_planned
        self._on_ended: Callable[[], None] = self._rest
        self._work = PlanWork(self)
        self._work.told.connect(lambda result: self._on_told(result))
        self._work.ended.connect(lambda: self._on_ended())
        self._work.refused.connect(self._refuse)
        self._work.failed.connect(lambda: self._forget_plans())
        self._ahead = PlanAhead(self)
        self._ahead.found.connect(self._on_found_ahead)
        self._next_best = QTimer(self, singleShot=True, interval=AFTER_PAINT_MS)
        self._next_best.timeout.connect(self._look_for_more)
        self._connect()
        self._show_results()
        self._on_lesson_changed(None, document.state)

    def _connect(self) -> None:
        self.form.changed.connect(self._on_choices_changed)
        self.styles.chosen.connect(self._on_style_chosen)
        self.styles.carry_wanted.connect(lambda: self.carry_on())
        self.styles.words_wanted.connect(self.tell_style)
        self.work_button.clicked.connect(self.work_out)
        self.work_button.installEventFilter(self)
        self.cancel_button.clicked.connect(self.cancel)
        self.results.row_chosen.connect(self._show_row)
        self.results.take_wanted.connect(self.take)
        self.results.take_new_wanted.connect(self.take_as_new)
        self.results.drop_wanted.connect(self.drop)
        self.results.note_wanted.connect(self.note_wanted)
        self.suits_button.clicked.connect(self.compare)
        self.suits.plan_chosen.connect(self.form.choose_accents)
        self.versions_button.clicked.connect(self.add_starting_versions)
        self._work.slow.connect(self.results.show_wait)
        self._document.lesson_changed.connect(self._on_lesson_changed)

    # ------------------------------------------------------------------------------------------------- doing

    @property
    def works(self) -> bool:
        """Whether something is worked out now."""
        return self._work.runs or self._next_best.isActive()

    def work_out(self) -> None:
        """Work out the best bowing as the pane is set, and show it on the page when it is found."""
        state = self._document.state
        if state is None:
            self.hinted.emit(tr(NOTHING_OPEN))
            return
        choices = self.form.choices
        try:
            question = pose_question(choices, state.tune, state.bowing, self._selection())
        except RefusedEditError as refusal:
            self._refuse(str(refusal))
            return
        name = plan_name(choices, state.bowing)
        self._asked = Asked(
            PlanListing(name, tr("Plan: {name}", name=inside(name))), self.work_out,
            lambda best: partial(tell_next_best, best.plan, state.bowing),
        )  # fmt: skip
        key, best = self._what_is_asked(state), partial(tell_best, question, state.bowing)
        planned = self._ahead.answer(key)
        self._plans_to_come = True
        if planned is not None:
            self._stop()
            self._on_planned(planned)
            self._next_best.start()
        else:
            self._start(self._ahead.awaited(key, best), tr(WORKING), self._on_planned, self._next_best.start)

    def carry_on(self, selection: tuple[str, ...] | None = None) -> None:
        """Propose the rest of the bowing from what is marked in it, and show it on the page.

        Args:
            selection: Ids of selected notes, whose bars are marked; those selected on the page where None.
        """
        state = self._document.state
        if state is None:
            self.hinted.emit(tr(NOTHING_OPEN))
            return
        selection = self._selection() if selection is None else selection
        style, accents = self.styles.style_name, self.form.choices.accents
        question = pose_carrying(state.tune, state.bowing, style, selection, accents)
        self._asked = Asked(
            PlanListing(carried_name(style), tr(CARRY)), partial(self.carry_on, selection),
            lambda likely: partial(tell_sure_only, question, likely, state.bowing),
        )  # fmt: skip
        self._plans_to_come = True
        work = partial(tell_carried, question, state.bowing)
        self._start(work, tr(CARRYING), self._on_planned, self._next_best.start)

    def look_ahead(self) -> None:
        """Work out quietly what would be shown if it were asked for now."""
        state = self._document.state
        if state is None or self.plans or self.works:
            return
        try:
            question = pose_question(self.form.choices, state.tune, state.bowing, self._selection())
        except RefusedEditError:
            return
        self._ahead.look_for(self._what_is_asked(state), partial(tell_best, question, state.bowing))

    def mend_from_here(self) -> None:
        """Keep all up to the focus note and work out the rest afresh."""
        choices = self.form.choices
        self._mends_over = self._mends_over or choices
        self.form.show_choices(replace(choices, span=Span.ONWARD, keep=False))
        self.work_out()

    def compare(self) -> None:
        """Tell how each accent plan suits the tune."""
        if (state := self._document.state) is not None:
            work = partial(tell_suited, state.tune, state.bowing, self.form.choices.settings)
            self._start(work, tr(COMPARING), self._show_suited, self._rest)

    def add_starting_versions(self) -> None:
        """Add the bowings that a teacher starts from, as one undo step."""
        if (state := self._document.state) is not None:
            self._versions = []
            work = partial(tell_starting_versions, state.tune, state.bowing, self.form.choices.settings)
            self._start(work, tr(STARTING), self._on_version, self._add_versions, STARTING_VERSIONS)

    def cancel(self) -> None:
        """Leave off what is worked out; what is shown stays."""
        if self.works:
            self._stop()
            self._rest()
            self._say(tr(LEFT_OFF))

    def close_down(self) -> None:
        """Leave off for good: the window goes."""
        self._stop()

    def drop(self) -> None:
        """Show the document's own bowing again and forget the plans."""
        self._stop()
        self._forget_plans()

    # ------------------------------------------------------------------------------------------------- work

    def _start(
        self,
        work: Work,
        words: str,
        on_told: Callable[[object], None],
        on_ended: Callable[[], None],
        steps: int = 0,
    ) -> None:
        if not self.plans:
            self._say("")
        self.results.begin_wait(words, steps)
        self._next_best.stop()
        self._on_told, self._on_ended = on_told, on_ended
        self.cancel_button.setEnabled(True)
        self._work.start(work)

    def _what_is_asked(self, state: State) -> Hashable:
        return id(state), self.form.choices, self._selection()

    def _on_found_ahead(self, planned: Planned) -> None:
        state = self._document.state
        if state is not None and not self.works:  # else it is shown at once
            self.likely.emit(PlanPreview(replace(planned.plan.bowing, name=state.bowing.name), ""))

    def _look_for_more(self) -> None:
        """Look for the next best, now that the best is on the page."""
        self._start(self._asked.more(self._listing.planned[0]), tr(MORE), self._on_planned, self._foresee)

    def _stop(self) -> None:
        self._ahead.drop()
        self._next_best.stop()
        self._work.stop()

    def _rest(self) -> None:
        """Nothing is worked out any more."""
        self.results.wait.hide()
        self.cancel_button.setEnabled(False)

    def _refuse(self, sentence: str) -> None:
        self._rest()
        self._forget_plans()
        self._say(sentence)
        self.hinted.emit(sentence)

    # ------------------------------------------------------------------------------------------------- plans

    def _on_planned(self, planned: object) -> None:
        state = self._document.state
        assert isinstance(planned, Planned)
        assert state is not None
        if self._plans_to_come:  # the plans so far were worked out for something else
            self._plans_to_come = False
            self._listing = self._asked.listing
            self.results.name.setText(self._listing.name)
        self._listing = self._listing.with_next(planned)
        self._show_results()
        if len(self.plans) == 1:
            self._show_row(0)
            if self.work_button.hasFocus() or self.styles.carry_button.hasFocus():
                self.results.list.setFocus()  # where Enter takes it and the arrow keys compare

    def _foresee(self) -> None:
        """All is listed: have at hand what the arrow keys lead to."""
        self._rest()
        for row in range(1, len(self.plans)):
            QTimer.singleShot(0, self, partial(self._foresee_row, row))

    def _forget_plans(self) -> None:
        self._rest()
        super().drop()
        before, now = self._mends_over, self.form.choices
        self._mends_over = None
        if before is not None and (now.span, now.keep) == (Span.ONWARD, False):
            self.form.show_choices(replace(now, span=before.span, keep=before.keep))

    # ------------------------------------------------------------------------------------------------- the rest

    def _show_suited(self, suited: object) -> None:
        assert isinstance(suited, tuple)
        self.suits.show_rows(suited)
        self.controls.show_suits()

    def _on_version(self, version: object) -> None:
        assert isinstance(version, Bowing)
        self._versions.append(version)
        self.results.wait_bar.setValue(len(self._versions))

    def _add_versions(self) -> None:
        self._rest()
        state, versions = self._document.state, self._versions
        if state is None:
            return
        place = len(state.lesson.bowings)

        def add(lesson: Lesson) -> Lesson:
            for version in versions:
                lesson = add_bowing(lesson, version)
            return lesson

        self._document.change(tr("Add starting versions"), add, place)
        self.hinted.emit(added([bowing.name for bowing in self._document.state.lesson.bowings[place:]]))

    def _on_choices_changed(self) -> None:
        """With a plan on the page, the page follows what is chosen."""
        if self._preview is not None or self.works:
            self._asked.again()

    def _on_style_chosen(self) -> None:
        """With a bowing on the page that is carried on, the page follows the style."""
        if self._preview is not None and self._preview.takes_bars:
            self._asked.again()

    def _on_lesson_changed(self, before: State | None, after: State | None) -> None:
        left_off = self._work.runs and not self.plans
        self._stop()
        if left_off or self.plans or self._preview is not None:
            self._forget_plans()
        if left_off:
            self._say(tr(LESSON_CHANGED))
        elif self.results.sentence.text():
            self._say("")
        if before is None or after is None or before.tune is not after.tune:
            self.form.restore()
            self._rest()
        if before is None or after is None or before.bowing is not after.bowing:
            self.suits.hide()
        self.controls.enable(after is not None)

    # ------------------------------------------------------------------------------------------------- Qt events

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        by_keys = isinstance(event, QFocusEvent) and event.gotFocus() and event.reason() in TAB_REASONS
        if event.type() is QEvent.Type.Enter or by_keys:
            self.look_ahead()
        return super().eventFilter(watched, event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leaves off, or drops the plan; Enter takes it, in the name as a new one; a button it presses."""
        focus = self.focusWidget()
        if event.key() == Qt.Key.Key_Escape and (self.works or self.plans):
            if self.works and not self.plans:
                self.cancel()
            else:
                self.drop()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if isinstance(focus, QAbstractButton) and focus.hasFocus():
                focus.click()
            elif self._preview is None:
                self.work_out()
            elif focus is self.results.name or event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
                self.take_as_new()
            elif event.modifiers() & Qt.KeyboardModifier.AltModifier:
                self.take_bars()
            else:
                self.take()
        else:
            super().keyPressEvent(event)
