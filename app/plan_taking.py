"""What the planner has found, from being shown on the page to being taken; ``app.plan_pane`` puts it to work.

A plan is shown on the page by a signal and is in no bowing before it is taken, as one undo step.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.carrying import THIS_TUNE
from app.document import Document
from app.files import FileError
from app.plan_controls import PlanControls
from app.plan_listing import PlanListing
from app.plan_preview import PlanPreview
from app.plan_words import added, bar_named
from app.settings import Settings
from core.bowing import Bowing
from core.checks import words
from core.lesson import add_bowing
from core.planner import Plan
from core.translation import tr, translatable
from core.tune import Tune

NOTHING_TO_TAKE = translatable("Work out a bowing first.")
NO_STYLE = translatable("No style is chosen: this tune alone says what comes.")
NO_BARS_TO_TAKE = translatable("Carry on a bowing first: of its proposal bars can be taken one by one.")
NOT_PROPOSED = translatable("This bar was given: go to a bar that is proposed first.")
SO_ALREADY = translatable("The bowing is so already; nothing was changed.")


class PlanTaking(QWidget):
    """Lists plans, shows one of them on the page and takes it, whole or bar by bar.

    Args:
        document: The lesson.
        settings: Remembers what was chosen.
        selection: Gives the ids of the selected notes on the page in written order, or of the focus note alone.

    Signals:
        previewed: The ``PlanPreview`` that the page should show, or None for the document's own bowing.
        likely: A ``PlanPreview`` that may be shown next.
        note_wanted: Id of a note to go to.
        page_wanted: The plan that had the keyboard is gone; the page may have it.
        hinted: A sentence for the status line.
    """

    previewed = Signal(object)
    likely = Signal(object)
    note_wanted = Signal(str)
    page_wanted = Signal()
    hinted = Signal(str)

    def __init__(
        self,
        document: Document,
        settings: Settings,
        selection: Callable[[], tuple[str, ...]],
        parent: QWidget | None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self._listing = PlanListing()
        self._preview: PlanPreview | None = None
        self._build(settings)

    def _build(self, settings: Settings) -> None:
        self.controls = controls = PlanControls(settings)
        self.form, self.results, self.suits = controls.form, controls.results, controls.suits
        self.styles = controls.styles
        self.work_button, self.cancel_button = controls.work_button, controls.cancel_button
        self.suits_button, self.versions_button = controls.suits_button, controls.versions_button
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(controls)

    @property
    def preview(self) -> PlanPreview | None:
        """What the page is shown in the place of the document's bowing."""
        return self._preview

    @property
    def plans(self) -> tuple[Plan, ...]:
        """The plans that are listed, best first."""
        return self._listing.plans

    @property
    def wanted_width(self) -> int:
        """Pixels that it needs so as not to be scrolled sideways; more with larger text."""
        return self.controls.wanted_width

    def take(self) -> None:
        """Put the shown plan in the place of the bowing, as one undo step."""
        preview = self._preview
        if preview is None:
            self.hinted.emit(tr(NOTHING_TO_TAKE))
            return
        self._edit(self._listing.label, lambda _, bowing: replace(preview.bowing, name=bowing.name))

    def take_bars(self) -> None:
        """Take of a bowing that is carried on the bar of the marked note, or those of the selection, as one undo step.

        The other bars are dropped.
        """
        state, selection = self._document.state, self._selection()
        proposal = self._listing.planned[self.results.list.currentRow()].proposal if self.plans else None
        if proposal is None or state is None:
            self.hinted.emit(tr(NO_BARS_TO_TAKE))
            return
        tune = state.tune
        bars = range(tune.bar_of[selection[0]], tune.bar_of[selection[-1]] + 1) if selection else range(0)
        wanted = [bar for bar in bars if bar in proposal.bar_chances]
        if not wanted:
            self.hinted.emit(tr(NOT_PROPOSED))
            return
        from core.style.carry_on import take_bars  # at hand: there is a proposal

        label = tr("Carry on in {bars}", bars=words.bars(tune, wanted))
        self._edit(label, lambda _, bowing: take_bars(tune, bowing, proposal, wanted))

    def _edit(self, label: str, edit: Callable[[Tune, Bowing], Bowing]) -> None:
        done = self._document.edit(label, edit)
        self.drop()
        self.hinted.emit(tr("Done: {edit}.", edit=label) if done else tr(SO_ALREADY))

    def take_as_new(self) -> None:
        """Add the shown plan as a new bowing behind the one on the page, as one undo step."""
        preview, state = self._preview, self._document.state
        if preview is None or state is None:
            self.hinted.emit(tr(NOTHING_TO_TAKE))
            return
        new = replace(preview.bowing, name=" ".join(self.results.name.text().split()) or self._listing.name)
        place = state.shown + 1
        self._document.change(tr("Add “{name}”", name=new.name), lambda lesson: add_bowing(lesson, new, place), place)
        self.drop()
        self.hinted.emit(added([self._document.state.bowing.name]))

    def drop(self) -> None:
        """Show the document's own bowing again and forget the plans."""
        if self.results.has_keyboard:
            self.page_wanted.emit()
        self._listing = PlanListing()
        self._say("")
        self._show_results()
        self._show_preview(None)

    def tell_style(self) -> None:
        """Show what the chosen style does, in sentences."""
        from app.style_dialog import StyleDialog

        if self.styles.style_name == THIS_TUNE:
            self.hinted.emit(tr(NO_STYLE))
            return
        try:
            dialog = StyleDialog(self.styles.style_name, self.window())
        except FileError as fault:
            self._say(str(fault))
            return
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.forgotten.connect(self.styles.fill)
        dialog.open()

    def _say(self, sentence: str) -> None:
        """Show a sentence in the place of a result, and a way to the bar that it names."""
        state = self._document.state
        note_id = bar_named(state.tune, sentence) if state is not None else ""
        bar = state.tune.bars[state.tune.bar_of[note_id]].number if state is not None and note_id else 0
        self.results.say(sentence, note_id, bar)

    def _show_results(self) -> None:
        self.results.show_rows(self._listing.rows)

    def _show_row(self, row: int) -> None:
        if 0 <= row < len(self.plans):
            self._say(self._listing.sentence(row))
            self._show_preview(self._preview_of(row))

    def _preview_of(self, row: int) -> PlanPreview:
        state = self._document.state
        assert state is not None
        return self._listing.preview(row, state.tune, state.bowing.name)

    def _foresee_row(self, row: int) -> None:
        if row < len(self.plans):
            self.likely.emit(self._preview_of(row))

    def _show_preview(self, preview: PlanPreview | None) -> None:
        if preview != self._preview:
            self._preview = preview
            self.previewed.emit(preview)
