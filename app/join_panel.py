"""The chosen join of a set: why it matters, what mends it on the page, and what would in tunes that are not there."""

from __future__ import annotations

from functools import partial
from threading import Event

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.document import Document, State
from app.remedy_panel import LOOKING, RemedyPanel
from app.remedy_search import DroppedError, RemedySearch, judge_unless_dropped
from app.set_list import SetList, SetState
from app.set_rows import SeamRow
from core.bowing import Bowing
from core.check import Remedy, Report
from core.lesson import Lesson
from core.set_check import SET_RULES, SetFinding, SetRule, name
from core.set_remedies import SetRemedy, set_remedies
from core.severity import Severity
from core.translation import tr, translatable

GOES_ON = translatable("The bow goes on by itself here, and the tune is bowed as it is alone.")
NONE_FOUND = translatable(
    "No single change at the end of the one tune or the start of the other mends this without doing harm."
)
ELSEWHERE = translatable("In {name}, which is not on the page: {text}. Open it and add the change there.")


class JoinPanel(QWidget):
    """What there is to say of a join, and to do about it.

    Args:
        sets: The set.
        document: The open lesson, in which remedies are done.

    Signals:
        done: The label of a remedy that was done.
        notes_wanted: Ids of the notes of the open tune that are spoken of, and a ``Severity``; none when no longer.
    """

    done = Signal(str)
    notes_wanted = Signal(tuple, object)

    def __init__(self, sets: SetList, document: Document, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sets, self._document = sets, document
        self._asked: tuple[SetState, tuple[SetFinding, ...]] | None = None  # what remedies are shown or looked for
        self._here: tuple[SetRemedy, ...] = ()  # the remedies that can be done on the page
        self._shown_notes: tuple[str, ...] = ()
        self.why = QLabel()
        self.why.setProperty("rank", "quiet")
        self.why.setAccessibleName(tr("Why this is found"))
        self.remedies = RemedyPanel()
        self.remedies.chosen.connect(self._apply)
        self.elsewhere = QLabel()
        self.elsewhere.setAccessibleName(tr("What to change in tunes that are not on the page"))
        self._search = RemedySearch(self)
        self._search.found.connect(self._on_found)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        for label in (self.why, self.elsewhere):
            label.setWordWrap(True)
        for part in (self.why, self.remedies, self.elsewhere):
            column.addWidget(part)
        document.lesson_changed.connect(self._on_lesson_changed)

    @property
    def waits(self) -> bool:
        """Whether remedies are still looked for."""
        return self._search.runs

    def show_join(self, row: SeamRow | None) -> None:
        """Say why a join matters and look for what mends it; None for no join."""
        findings = row.findings if row is not None else ()
        on_page = row is not None and self._sets.is_open(row.seam.after.entry)
        self._show_notes((row.seam.first_note,) if on_page else (), row.severity if on_page else None)
        self.why.setText(
            " ".join(_why(SET_RULES[finding.rule]) for finding in findings) or (tr(GOES_ON) if row is not None else "")
        )
        self.why.setVisible(row is not None)
        self.setVisible(row is not None)
        if not findings:
            self._asked = None
            self._search.stop()
            self._offer(())
            self.remedies.say("")
            return
        asked = (self._sets.state, findings)
        if self._asked != asked:
            self._asked = asked
            self._offer(())
            self.remedies.say(tr(LOOKING))
            lessons = tuple(tune.lesson for tune in self._sets.state.tunes)
            self._search.look_for(partial(_search, self._sets.state, lessons, findings[0]))

    def apply_first(self) -> None:
        """Do the first remedy that can be done on the page."""
        if self.remedies.remedies:
            self._apply(self.remedies.remedies[0])

    def leave(self) -> None:
        """The set is out of sight: look for nothing, and have no notes shown."""
        self._search.stop()
        self._asked = None
        self._show_notes(())

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        """Another tune is on the page: what could be done there cannot any more, and the other way round."""
        if before is None or before.tune is not after.tune:
            self._asked = None
            self._offer(())

    def _show_notes(self, notes: tuple[str, ...], severity: Severity | None = None) -> None:
        """Have notes shown on the page; those of a finding there are left alone where none of ours were."""
        if notes or self._shown_notes:
            self._shown_notes = notes
            self.notes_wanted.emit(notes, severity or Severity.NOTE)

    def _on_found(self, found: tuple[SetRemedy, ...]) -> None:
        self._offer(found)
        if not found:
            self.remedies.say(tr(NONE_FOUND))

    def _offer(self, found: tuple[SetRemedy, ...]) -> None:
        """Buttons for what can be done on the page, sentences for the rest."""
        self._here = tuple(remedy for remedy in found if self._sets.is_open(remedy.entry))
        tune_set = self._sets.state.tune_set
        self.remedies.offer([remedy.remedy for remedy in self._here])
        self.elsewhere.setText(
            "\n".join(
                tr(ELSEWHERE, name=name(tune_set, remedy.entry), text=remedy.remedy.text)
                for remedy in found
                if remedy not in self._here
            )
        )
        self.elsewhere.setVisible(bool(self.elsewhere.text()))

    def _apply(self, remedy: Remedy) -> None:
        """Do a remedy in the bowing that the set plays of the open tune, as one undo step."""
        chosen = next(other for other in self._here if other.remedy is remedy)
        self._document.show(self._sets.state.tunes[chosen.entry].bowing)
        self._document.edit(remedy.label, remedy.edit)
        self.done.emit(remedy.label)


def _search(state: SetState, lessons: tuple[Lesson, ...], finding: SetFinding, dropped: Event) -> tuple[SetRemedy, ...]:
    """Find remedies, or none at all once the search was dropped."""

    def judge(entry: int, bowing: Bowing) -> Report:
        return judge_unless_dropped(lessons[entry], bowing, dropped)

    try:
        return set_remedies(state.tune_set, finding, judge)
    except DroppedError:
        return ()


def _why(rule: SetRule) -> str:
    """What a rule is called and what it rests on."""
    return tr("{title}. {why}", "of a rule", title=tr(rule.title), why=tr(rule.why))
