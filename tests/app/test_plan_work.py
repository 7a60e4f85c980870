"""Work in a thread: results as they come, the latest work only, and no wait that cannot be left off."""

from __future__ import annotations

from threading import Event
from time import sleep

import pytest
from PySide6.QtTest import QTest

from app.plan_work import SLOW_MS, DroppedError, Piece, PlanWork
from core.errors import RefusedEditError

FEW_S = 5  # guards against hangs


class Heard:
    """All that a worker says, in order."""

    def __init__(self, work: PlanWork) -> None:
        self.said: list[object] = []
        work.told.connect(self.said.append)
        work.slow.connect(lambda: self.said.append("slow"))
        work.failed.connect(lambda: self.said.append("failed"))
        work.ended.connect(lambda: self.said.append("ended"))
        work.refused.connect(lambda text: self.said.append(f"refused: {text}"))


@pytest.fixture
def work(qapp) -> PlanWork:
    return PlanWork()


@pytest.fixture
def heard(work) -> Heard:
    return Heard(work)


def until_dropped(go_on, tell):
    while True:
        go_on()
        sleep(0.001)


def test_results_come_in_the_order_told_and_then_the_end(qtbot, work, heard):
    work.start(lambda go_on, tell: [tell(number) for number in range(3)])
    assert work.runs
    qtbot.waitUntil(lambda: not work.runs)
    assert heard.said == [0, 1, 2, "ended"]


def test_a_result_is_told_while_the_work_goes_on(qtbot, work, heard):
    may_end = Event()

    def slowly(go_on, tell):
        tell("first")
        may_end.wait(FEW_S)
        tell("second")

    work.start(slowly)
    qtbot.waitUntil(lambda: heard.said == ["first"])
    assert work.runs
    may_end.set()
    qtbot.waitUntil(lambda: not work.runs)
    assert heard.said == ["first", "second", "ended"]


def test_only_the_latest_work_is_told(qtbot, work, heard):
    late = Event()

    def stubborn(go_on, tell):  # asks nobody whether to go on
        late.wait(FEW_S)
        tell("late")

    work.start(stubborn)
    QTest.qWait(20)
    work.start(lambda go_on, tell: tell("new"))
    late.set()
    qtbot.waitUntil(lambda: not work.runs)
    QTest.qWait(20)
    assert heard.said == ["new", "ended"]


def test_work_that_was_dropped_tells_nothing_and_stops(qtbot, work, heard):
    stopped = Event()

    def telling(go_on, tell):
        try:
            until_dropped(go_on, tell)
        finally:
            tell("too late")
            stopped.set()

    work.start(telling)
    QTest.qWait(20)
    work.stop()
    assert not work.runs
    assert stopped.wait(FEW_S)
    QTest.qWait(20)
    assert heard.said == []


def test_who_is_told_may_begin_something_else(qtbot, work, heard):
    work.told.connect(lambda result: result == 0 and work.start(lambda go_on, tell: tell("other")))
    work.start(lambda go_on, tell: [tell(0), tell(1)])
    qtbot.waitUntil(lambda: "ended" in heard.said)
    assert heard.said == [0, "other", "ended"]


def test_a_refusal_is_told_as_one_sentence(qtbot, work, heard):
    def refuse(go_on, tell):
        raise RefusedEditError("There is nothing to bow.")

    work.start(refuse)
    qtbot.waitUntil(lambda: not work.runs)
    assert heard.said == ["refused: There is nothing to bow."]


def test_an_error_of_ours_is_raised_in_the_window_and_ends_the_wait(qtbot, work, heard):
    def break_down(go_on, tell):
        raise ZeroDivisionError

    with qtbot.captureExceptions() as raised:
        work.start(break_down)
        qtbot.waitUntil(lambda: not work.runs)
    assert heard.said == ["failed"]
    assert [kind for kind, _, _ in raised] == [ZeroDivisionError]


def test_a_long_wait_is_shown_and_a_short_one_is_not(qtbot, work, heard):
    work.start(lambda go_on, tell: None)
    qtbot.waitUntil(lambda: not work.runs)
    QTest.qWait(SLOW_MS + 50)
    assert heard.said == ["ended"]
    work.start(until_dropped)
    qtbot.waitUntil(lambda: heard.said == ["ended", "slow"])
    work.stop()


def test_a_dropped_piece_goes_on_no_further():
    piece = Piece(1)
    piece.go_on()
    piece.dropped.set()
    with pytest.raises(DroppedError):
        piece.run(lambda go_on, tell: pytest.fail("it was begun"))
