"""The pictures of the manual: for each, what is done in the real window and what of it is taken.

Everything is done by mouse and keys or by the commands of the menus, as a reader would.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib.resources import files
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QRect, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from app.main_window import MainWindow
from app.settings import Look, Settings
from app.tour_places import FIRST_LESSON

SIZE = (1100, 820)  # pixels of the window
WIDE = (1366, 768)
TWO_LINES = 362  # pixels of the page
SEPARATE, ON_THE_BEAT = 0, 1  # bowings of the lesson
LONG_MS, STEP_MS = 60_000, 20  # only a guard against a hang


class Stage:
    """A window on the sample lesson, and hands.

    Args:
        folder: Empty; what is remembered, and a copy of the sample tunes, are put there.
        size: Pixels of the window.
        look: Its colours.
    """

    def __init__(self, folder: Path, size: tuple[int, int] = SIZE, look: Look = Look.LIGHT) -> None:
        settings = Settings(folder / "settings.ini")
        settings.look = look
        settings.folder = folder
        self.settings = settings
        self.tunes = folder / "Tunes"
        shutil.copytree(str(files("sample_tunes")), self.tunes, ignore=shutil.ignore_patterns("*.py", "*.md", "__*"))
        self.window = MainWindow(settings)
        self.window.resize(*size)
        self.window.show()
        self.window.open_sample(self.tunes / FIRST_LESSON)
        self.show_bowing(SEPARATE)

    def show_bowing(self, place: int) -> None:
        self.window.document.show(place)
        self.settle()

    def do(self, name: str) -> None:
        """Choose a command, and wait until it has come to the page."""
        self.window.actions_by_name[name].trigger()
        self.settle()

    def settle(self) -> None:
        self.wait(lambda: not self.window.page.waits)
        QTest.qWait(150)

    def wait(self, until: Callable[[], bool]) -> None:
        for _ in range(LONG_MS // STEP_MS):
            if until():
                return
            QTest.qWait(STEP_MS)
        raise TimeoutError("a picture waits for something that does not come")

    def notes(self, bar: int) -> list[str]:
        return [note.id for note in self.window.document.state.tune.bars[bar].notes]

    def click_note(self, note_id: str) -> None:
        page = self.window.page
        QTest.mouseMove(page, page.head_point(note_id))
        QTest.mouseClick(page, Qt.MouseButton.LeftButton, pos=page.head_point(note_id))
        self.settle()

    def key(self, key: Qt.Key) -> None:
        QTest.keyClick(self.window.focusWidget(), key)
        self.settle()

    def page_picture(self, height: int) -> QImage:
        """The upper part of the page, with no pointer over it."""
        viewport = self.window.area.viewport()
        QTest.mouseMove(self.window.menuBar())
        return viewport.grab(QRect(0, 0, viewport.width(), height)).toImage()

    def picture(self, widget: QWidget | None = None) -> QImage:
        QTest.qWait(150)
        return (widget or self.window).grab().toImage()

    def close(self) -> None:
        for widget in QApplication.topLevelWidgets():
            if isinstance(widget, QDialog) and widget.isVisible():
                widget.reject()
        self.window.document.stack.setClean()
        self.window.close()
        self.window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@contextmanager
def staged(folder: Path, size: tuple[int, int] = SIZE, look: Look = Look.LIGHT) -> Iterator[Stage]:
    """A stage that is cleared afterwards."""
    stage = Stage(folder, size, look)
    try:
        yield stage
    finally:
        stage.close()


def tour(stage: Stage) -> QImage:
    stage.do("tour")
    return stage.picture()


def page(stage: Stage) -> QImage:
    return stage.page_picture(TWO_LINES)


def slur(stage: Stage) -> QImage:
    stage.click_note(stage.notes(1)[0])
    return stage.page_picture(TWO_LINES)


def check(stage: Stage) -> QImage:
    stage.window.side_list.choose(0)
    stage.wait(lambda: not stage.window.side_list.waits)
    return stage.picture(stage.window.tabs)


def accents(stage: Stage) -> QImage:
    stage.show_bowing(ON_THE_BEAT)
    return stage.page_picture(TWO_LINES)


def plan(stage: Stage) -> QImage:
    stage.window.page.setFocus()
    stage.do("plan")
    stage.wait(lambda: stage.window.page.plan is not None and not stage.window.plan.works)
    stage.settle()
    return stage.picture()


def carry(stage: Stage) -> QImage:
    stage.click_note(stage.notes(0)[0])
    for bar in (1, 2, 3):
        stage.click_note(stage.notes(bar)[1])
    stage.do("carry_on")
    stage.wait(lambda: stage.window.page.plan is not None and not stage.window.plan.works)
    stage.settle()
    return stage.picture()


def compare(stage: Stage) -> QImage:
    stage.do("compare")
    return stage.picture()


def player(stage: Stage) -> QImage:
    stage.do("player")
    window = stage.window
    bar, top = window.playing.bar, window.area
    whole = stage.picture()
    foot = bar.mapTo(window, bar.rect().bottomLeft()).y() + 1
    return whole.copy(0, max(foot - 260, top.y()), top.width(), 260)


def sheet(stage: Stage) -> QImage:
    from app.sheet_dialog import SheetDialog, Way
    from core.sheet_plan import SheetPlan

    dialog = SheetDialog(stage.window.document.state.lesson, SheetPlan(), Way.KEEP, None, stage.window)
    dialog.resize(1000, 700)
    dialog.show()
    stage.wait(lambda: not dialog.work.runs)
    return stage.picture(dialog)


def pack(stage: Stage) -> QImage:
    stage.do("pack")
    dialog = stage.window.pack_dialog
    dialog.form.add([Path("Tunes/tuesday_class_book.abc"), Path("Tunes/second_kettle.abc")])
    dialog.form.folder.setText("Tuesday class")
    return stage.picture(dialog)


def shelf(stage: Stage) -> QImage:
    stage.window.resize(*WIDE)
    stage.window.shelf.add_places([stage.tunes])
    stage.do("shelf")
    pane = stage.window.shelf.pane
    stage.wait(lambda: not pane.desk.scans and not pane.desk.waits and pane.table.model().rowCount() > 10)
    stage.settle()
    return stage.picture()


def tune_set(stage: Stage) -> QImage:
    from app.files import read_path

    stage.do("tune_set")  # which brings back the last set, here none
    for name in ("stools_to_the_wall.abc", "second_kettle.abc", "nine_geese_at_the_gate.abc"):
        stage.window.sets.add(stage.tunes / name, read_path(stage.tunes / name).lessons[0])
    return stage.picture(stage.window.set_window)


SCENES: dict[str, Callable[[Stage], QImage]] = {
    "tour": tour,
    "page": page,
    "slur": slur,
    "check": check,
    "accents": accents,
    "plan": plan,
    "carry": carry,
    "compare": compare,
    "player": player,
    "sheet": sheet,
    "pack": pack,
    "shelf": shelf,
    "set": tune_set,
}  # by the name of the picture
WORDLESS = frozenset({"page", "slur", "accents"})  # nothing but music: pages in every language show the English ones
