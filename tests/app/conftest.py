"""A window on invented tunes, and someone who answers its questions."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from app.dialogs import Answer, Clash, Dialogs
from app.document import Document
from app.main_window import MainWindow
from app.page_area import PageArea
from app.page_view import PageView
from app.recovery_copy import Left
from app.settings import Look, Settings
from app.sheet_dialog import SheetChoice, Way
from core.lesson import Lesson
from core.reach import ReachSettings
from core.reading.abc import read_abc
from core.sheet_plan import SheetPlan
from core.strings import Tuning
from core.tune_set import TuneSet

FOUR_BARS = """X:1
T:Gate of the Weir
R:reel
M:4/4
L:1/8
K:D
|:d2 fd Adfd|e2 ge Bege|d2 fd Adfd|egfe d2 z2:|
"""
WITH_PICKUP = """X:1
T:Over the Sill
R:polka
M:2/4
L:1/8
K:G
D|GA BG|AB AG|GA BG|A>G G:|
"""


class ScriptedDialogs(Dialogs):
    """Answers at once, and keeps what was asked.

    Attributes:
        answers: By the name of the question; an answer that is missing fails the test.
        asked: Names of the questions, in order.
    """

    def __init__(self) -> None:
        self.answers: dict[str, object] = {}
        self.asked: list[str] = []

    def _answer(self, question: str) -> object:
        self.asked.append(question)
        assert question in self.answers, f"asked {question} without being told to expect it"
        return self.answers[question]

    def path_to_open(self, parent: QWidget, folder: Path) -> Path | None:
        return self._answer("path_to_open")

    def folder_to_shelve(self, parent: QWidget, folder: Path) -> Path | None:
        return self._answer("folder_to_shelve")

    def paths_to_pack(self, parent: QWidget, folder: Path) -> list[Path]:
        return self._answer("paths_to_pack")

    def folder_to_pack(self, parent: QWidget, folder: Path) -> Path | None:
        return self._answer("folder_to_pack")

    def folder_of_pack(self, parent: QWidget, folder: Path) -> Path | None:
        return self._answer("folder_of_pack")

    def path_to_save(self, parent: QWidget, suggestion: Path) -> Path | None:
        self.suggestion = suggestion
        return self._answer("path_to_save")

    def path_to_export(self, parent: QWidget, suggestion: Path) -> Path | None:
        return self._answer("path_to_export")

    def about_changes(self, parent: QWidget, title: str) -> Answer:
        return self._answer("about_changes")

    def about_clash(self, parent: QWidget, sentence: str) -> Clash:
        self.sentence = sentence
        return self._answer("about_clash")

    def save_elsewhere(self, parent: QWidget, sentence: str) -> bool:
        self.sentence = sentence
        return self._answer("save_elsewhere")

    def lesson_left_behind(self, parent: QWidget, left: Sequence[Left]) -> Left | None:
        self.left = left
        return self._answer("lesson_left_behind")

    def tune_of_book(self, parent: QWidget, name: str, lessons: Sequence[Lesson]) -> int | None:
        return self._answer("tune_of_book")

    def sheet(
        self, parent: QWidget, lesson: Lesson, plan: SheetPlan, way: Way, tune_set: TuneSet | None
    ) -> SheetChoice | None:
        return self._answer("sheet")

    def bow_and_fiddle(self, parent: QWidget, lesson: Lesson) -> tuple[ReachSettings, Tuning] | None:
        return self._answer("bow_and_fiddle")

    def printer(self, parent: QWidget) -> QPrinter | None:
        return self._answer("printer")

    def tell(self, parent: QWidget, title: str, text: str) -> None:
        self.told = text
        self._answer("tell")


class Hand:
    """A hand on the mouse over a page: finds notes and bow marks by id, and sends real events."""

    def __init__(self, page: PageView) -> None:
        self.page = page

    def click_note(self, note_id: str, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        QTest.mouseClick(self.page, Qt.MouseButton.LeftButton, keys, self.page.head_point(note_id))

    def click_sign(self, note_id: str, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        QTest.mouseClick(self.page, Qt.MouseButton.LeftButton, keys, self.page.sign_point(note_id))

    def hover_note(self, note_id: str) -> None:
        self._hover(self.page.head_point(note_id))

    def hover_sign(self, note_id: str) -> None:
        self._hover(self.page.sign_point(note_id))

    def _hover(self, place: QPoint) -> None:
        QTest.mouseMove(self.page, self.beside_the_music())  # a pointer that is there already would not move
        QTest.mouseMove(self.page, place)

    def press(self, note_id: str) -> None:
        QTest.mousePress(self.page, Qt.MouseButton.LeftButton, pos=self.page.head_point(note_id))

    def move(self, note_id: str) -> None:
        QTest.mouseMove(self.page, self.page.head_point(note_id))

    def release(self, note_id: str) -> None:
        QTest.mouseRelease(self.page, Qt.MouseButton.LeftButton, pos=self.page.head_point(note_id))

    def drag(self, first: str, last: str) -> None:
        self.press(first)
        self.move(last)
        self.release(last)

    def keys(self, *keys: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        for key in keys:
            QTest.keyClick(self.page, key, held)

    def beside_the_music(self) -> QPoint:
        return QPoint(4, 4)


@pytest.fixture(autouse=True)
def widgets_deleted_for_good(request: pytest.FixtureRequest) -> Iterator[None]:
    """Carry out the deletions that a running event loop would have carried out by now, and fail where any are left."""
    yield
    if "qapp" not in request.fixturenames:
        return
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.collect()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    left = QApplication.topLevelWidgets()
    assert not left, f"windows never deleted: {left}"


@pytest.fixture
def four_bars() -> Lesson:
    """Four bars of a reel played twice; notes b0n1 to b3n7, b3n7 is a rest."""
    return read_abc(FOUR_BARS).lessons[0]


@pytest.fixture
def with_pickup() -> Lesson:
    return read_abc(WITH_PICKUP).lessons[0]


@pytest.fixture
def document(qapp: object, four_bars: Lesson) -> Document:
    document = Document()
    document.open(four_bars)
    return document


@pytest.fixture
def page(qtbot, document: Document) -> PageView:
    page = PageView(document)
    area = PageArea(page)
    qtbot.addWidget(area)
    area.resize(1000, 700)
    area.show()
    page.setFocus()
    qtbot.waitUntil(page.isVisible)
    page.area = area  # keeps the area alive
    return page


@pytest.fixture
def hand(page: PageView) -> Hand:
    return Hand(page)


@pytest.fixture
def hand_on() -> type[Hand]:
    """For a page other than that of ``hand``."""
    return Hand


@pytest.fixture
def dialogs() -> ScriptedDialogs:
    return ScriptedDialogs()


@pytest.fixture
def settings(tmp_path: Path) -> Settings:
    settings = Settings(tmp_path / "settings.ini")
    settings.look = Look.LIGHT
    settings.folder = tmp_path
    return settings


@pytest.fixture
def window(qtbot, dialogs: ScriptedDialogs, settings: Settings, four_bars: Lesson) -> MainWindow:
    window = MainWindow(settings, dialogs)
    qtbot.addWidget(window, before_close_func=lambda w: w.document.stack.setClean())
    window.resize(1200, 760)
    window.document.open(four_bars)
    window.show()
    qtbot.waitExposed(window)
    return window


@pytest.fixture
def work_on(qtbot, window: MainWindow) -> Callable[[str], MainWindow]:
    """Opens a tune (ABC text) in the window and gives its page the keyboard."""

    def work_on(text: str) -> MainWindow:
        window.document.open(read_abc(text).lessons[0])
        window.page.setFocus()
        qtbot.waitUntil(window.page.hasFocus)
        return window

    return work_on


@pytest.fixture
def wait(qtbot, window: MainWindow) -> Callable[[], None]:
    """Waits until the planner of the window has nothing to do."""
    return lambda: qtbot.waitUntil(lambda: not window.plan.works, timeout=20_000)
