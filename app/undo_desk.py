"""Puts the undo stack to work in the window: its two actions, named after what they take back or do again."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction

from app.document import Document
from app.plan_desk import PlanDesk
from core.translation import tr


class UndoDesk(QObject):
    """Undo and redo; a plan that is previewed is taken back before any edit."""

    def __init__(self, document: Document, planning: PlanDesk, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._stack, self._planning = document.stack, planning
        self._actions: Mapping[str, QAction] = {}
        planning.previewed.connect(self.show_state)

    def handlers(self) -> dict[str, Callable[[], object]]:
        """What the actions do, by name."""
        return {"undo": self.undo, "redo": self._stack.redo}

    def use(self, actions: Mapping[str, QAction]) -> None:
        """Take the actions of the window, to show in them what can be taken back."""
        self._actions = actions
        self.show_state()

    def undo(self) -> None:
        """Take back the last edit; where a preview is shown, that is what goes."""
        if self._planning.previews:
            self._planning.drop()
        else:
            self._stack.undo()

    def show_state(self) -> None:
        """Show what can be taken back now; asked for whenever the stack has changed."""
        if not self._actions:
            return
        stack, previews = self._stack, self._planning.previews
        for name, word, text, can in (
            ("undo", tr("&Undo"), tr("Preview") if previews else stack.undoText(), previews or stack.canUndo()),
            ("redo", tr("&Redo"), stack.redoText(), stack.canRedo()),
        ):
            self._actions[name].setText(
                tr("{command} “{edit}”", "undo or redo", command=word, edit=text) if text else word
            )
            self._actions[name].setEnabled(can)
