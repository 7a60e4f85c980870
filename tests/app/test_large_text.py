"""Text of twice the size, as a desktop can be set to, on a small laptop: all is there, whole, and can be reached."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from itertools import combinations
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from app.about_dialog import AboutDialog
from app.bow_fiddle_dialog import BowFiddleDialog
from app.files import read_path
from app.flow_row import FlowRow
from app.language import ENGLISH, use_language
from app.learn_dialog import LearnDialog
from app.main_window import MainWindow
from app.manual_window import ManualWindow
from app.pack_dialog import PackDialog
from app.recovery_copy import Left, Note, left_behind, new_path, write_copy
from app.recovery_dialog import RecoveryDialog
from app.set_list import SetList
from app.set_window import SetWindow
from app.sheet_choice import Way
from app.sheet_dialog import SheetDialog
from app.style_dialog import StyleDialog
from app.styles import BOOK
from app.theme import scaled_font
from app.tool_bar import DRAWINGS, WORDS
from app.tune_chooser import TuneChooser
from app.window_layout import FRAME, TEXT_HEIGHT, fitting
from core.sheet_plan import SheetKind, begin
from core.shelf.query import Query
from tests.app.test_other_languages import cut, shown

ROOM = (1366 - FRAME.width(), 768 - FRAME.height())  # of the small laptop, for a window
SAMPLE = Path(__file__).parents[2] / "sample_tunes" / "tuesday_ferry.musicxml"


@pytest.fixture(params=[ENGLISH, "de"])
def large(request, qapp: QApplication) -> Iterator[None]:
    own = qapp.font()
    qapp.setFont(scaled_font(own, 2))
    use_language(request.param)
    yield
    use_language(ENGLISH)
    qapp.setFont(own)


@pytest.fixture
def large_window(large, window):
    return at_work(window, ROOM)


def at_work(window, size: tuple[int, int]):
    window.document.open(read_path(SAMPLE).lessons[0])
    window.document.show(0)
    window.resize(*size)
    QApplication.processEvents()
    return window


def overlaps(top: QWidget) -> list[str]:
    """Pairs of widgets in sight that are laid out beside one another, of which one stands over the other."""
    found = []
    for parent in [top, *top.findChildren(QWidget)]:
        if parent.layout() is None:
            continue
        children = [child for child in parent.children()
                    if isinstance(child, QWidget) and child.isVisible() and not child.isWindow()]  # fmt: skip
        found += [f"{one} {one.geometry()} over {other} {other.geometry()}" for one, other in combinations(children, 2)
                  if one.geometry().intersects(other.geometry())]  # fmt: skip
    return found


def compare_and_choose(qtbot, window) -> None:
    """All bowings compared, and the finding chosen that offers most changes."""
    side = window.side_list
    window.comparison.start()
    offered = []
    for row in range(side.model.rowCount()):
        side.choose(row)
        qtbot.waitUntil(lambda: not side.waits)
        offered.append(len(side.remedies.remedies))
    side.choose(offered.index(max(offered)))
    qtbot.waitUntil(lambda: not side.waits)
    assert max(offered) == 3
    QTest.qWait(50)


def fits(top: QWidget) -> bool:
    return top.width() <= ROOM[0] and top.height() <= ROOM[1]


def test_totals_accents_findings_and_remedies_leave_each_other_room(qtbot, window):
    at_work(window, (1100, 700))
    compare_and_choose(qtbot, window)
    assert not overlaps(window.centralWidget())
    assert window.size().toTuple() == (1100, 700)  # it was not pushed wider or higher


def test_a_pane_without_room_is_scrolled_to_the_finding_that_is_chosen(qtbot, window):
    at_work(window, (1000, 520))
    compare_and_choose(qtbot, window)
    side = window.side_list
    top = side.list.mapTo(side, side.list.rect().topLeft()).y()
    assert side.height() < side.list.parentWidget().height()  # there is something to scroll
    assert top >= 0
    assert top + side.list.height() <= side.height()


def test_the_window_at_work_fits_in_large_text(qtbot, large_window):
    window = large_window
    window.actions_by_name["player"].trigger()
    window.shelf.add_places([SAMPLE])
    window.actions_by_name["shelf"].trigger()
    qtbot.waitUntil(lambda: window.shelf.pane.table.model().rowCount() > 0)
    compare_and_choose(qtbot, window)
    assert fits(window)
    assert not cut(window)
    assert not overlaps(window)
    side = window.side_list
    assert side.width() >= side.minimumSizeHint().width()


def test_the_planner_and_its_preview_fit_in_large_text(qtbot, large_window):
    window = large_window
    window.show_planner(True)
    window.actions_by_name["plan"].trigger()
    qtbot.waitUntil(lambda: window.page.plan is not None and not window.plan.works, timeout=20_000)
    QTest.qWait(50)
    assert fits(window)
    assert not cut(window)
    assert not overlaps(window.banner)
    qtbot.waitUntil(lambda: not overlaps(window.plan))  # its list grows while more plans come


def test_every_tool_can_be_pressed_in_large_text(large_window):
    window = large_window
    bar = window.tool_bar
    buttons = [bar.widgetForAction(action) for action in bar.actions() if not action.isSeparator()]
    assert all(bar.rect().contains(button.geometry()) for button in buttons)
    assert bar.iconSize().height() > 30
    assert DRAWINGS in {button.toolButtonStyle() for button in buttons}


def test_tools_have_their_words_where_there_is_room(large, window):
    window.resize(3000, 700)
    QApplication.processEvents()
    button = window.tool_bar.widgetForAction(window.actions_by_name["slur"])
    assert button.toolButtonStyle() is WORDS
    window.resize(ROOM[0], 700)
    QApplication.processEvents()
    assert button.toolButtonStyle() is DRAWINGS


def test_the_first_screen_fits_in_large_text(large, qtbot, settings, dialogs):
    window = shown(qtbot, MainWindow(settings, dialogs))
    window.resize(*ROOM)
    QTest.qWait(50)
    assert window.welcome.samples.list.count()
    assert fits(window)
    assert not cut(window)


@pytest.fixture
def left(four_bars, tmp_path) -> Iterator[list[Left]]:
    """Two lessons that were not saved, one of them from a file that is gone, with a long way to it."""
    when = datetime(2031, 5, 4, 17, 30, tzinfo=UTC)
    gone = tmp_path / "Tunes for the class on Thursday" / "the_mending_of_the_ferry_chain.musicxml"
    write_copy(new_path(tmp_path), four_bars, Note("The Mending of the Ferry Chain", when, 12, gone))
    write_copy(new_path(tmp_path), four_bars, Note("", when, 1))
    left = left_behind(tmp_path)
    yield left
    for one in left:
        one.hold.let_go()


@pytest.fixture
def make(document, settings, dialogs, four_bars, left, tmp_path):
    """Makes a dialog by its name."""
    makers = {
        "lessons left behind": lambda: RecoveryDialog(left),
        "what a style does": lambda: StyleDialog(BOOK),
        "learning a style": lambda: LearnDialog(tmp_path / "shelf.db", Query(), 300),
        "teacher's sheet": lambda: SheetDialog(four_bars, begin(SheetKind.TEACHER), Way.PRINT),
        "exercise": lambda: SheetDialog(four_bars, begin(SheetKind.EXERCISE), Way.PRINT),
        "bow and fiddle": lambda: BowFiddleDialog(four_bars),
        "tune chooser": lambda: TuneChooser("book.abc", [four_bars, four_bars]),
        "pack": lambda: PackDialog(document, settings, dialogs),
        "set": lambda: SetWindow(SetList(document), document, settings, dialogs),
        "about": AboutDialog,
        "manual": ManualWindow,
    }
    return lambda name: makers[name]()


@pytest.mark.parametrize(
    "name",
    [
        "teacher's sheet", "exercise", "bow and fiddle", "tune chooser", "pack", "set", "about", "manual",
        "lessons left behind", "learning a style", "what a style does",
    ],
)  # fmt: skip
def test_a_dialog_fits_in_large_text(large, qtbot, make, name):
    dialog = shown(qtbot, make(name))
    dialog.resize(*ROOM)
    QTest.qWait(50)
    assert fits(dialog)
    assert not cut(dialog)
    assert not overlaps(dialog)


def test_a_dialog_is_larger_in_larger_text_but_not_larger_than_the_screen(qtbot, qapp):
    widget = QWidget()
    qtbot.addWidget(widget)
    room = widget.screen().availableGeometry().size() - FRAME
    assert fitting(widget, 200, 100).toTuple() == (200, 100)
    widget.setFont(scaled_font(widget.font(), 2))
    scale = widget.fontMetrics().height() / TEXT_HEIGHT
    assert scale > 1.5
    assert fitting(widget, 200, 100).toTuple() == (round(200 * scale), round(100 * scale))
    assert fitting(widget, 5000, 100).width() == room.width()


# ---- rows that run on


@pytest.fixture
def row(qtbot) -> QWidget:
    """Three boxes of 100 by 20 pixels in a row, 10 pixels apart; the second takes what is left over."""
    parent = QWidget()
    qtbot.addWidget(parent)
    row = FlowRow(10, parent)
    for share in (0, 1, 0):
        row.add(Box(), share)
    return parent


class Box(QWidget):
    def minimumSizeHint(self) -> QSize:
        return QSize(100, 20)

    def sizeHint(self) -> QSize:
        return QSize(100, 20)


def places(row: QWidget, width: int) -> list[tuple[int, int, int]]:
    """Left, top and width of each box."""
    row.resize(width, row.layout().heightForWidth(width))
    row.layout().activate()
    row.layout().setGeometry(row.rect())
    boxes = [row.layout().itemAt(index).geometry() for index in range(row.layout().count())]
    return [(box.x(), box.y(), box.width()) for box in boxes]


def test_a_row_with_room_is_one_line_and_shares_out_what_is_left(row):
    assert places(row, 350) == [(0, 0, 100), (110, 0, 130), (250, 0, 100)]
    assert row.height() == 20


def test_a_row_without_room_runs_on_to_the_next_line(row):
    assert places(row, 319) == [(0, 0, 100), (110, 0, 209), (0, 30, 100)]
    assert row.height() == 50


def test_a_row_as_narrow_as_a_box_gives_each_its_line(row):
    assert places(row, 100) == [(0, 0, 100), (0, 30, 100), (0, 60, 100)]


def test_what_is_hidden_takes_no_room_in_a_row(row):
    row.layout().itemAt(1).widget().hide()
    assert places(row, 215)[2] == (110, 0, 100)
