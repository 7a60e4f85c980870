"""Jobs that wait until a window is painted."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app import later as module
from app.later import Later


class Painted(QWidget):
    def __init__(self, done: list[str]) -> None:
        super().__init__()
        self.done = done

    def paintEvent(self, event: object) -> None:
        self.done.append("painted")


def test_a_job_is_done_at_once_where_no_picture_is_waited_for(qtbot):
    done: list[str] = []
    Later().do(lambda: done.append("job"))
    assert done == ["job"]


def test_jobs_come_after_the_picture_in_their_order(qtbot):
    done: list[str] = []
    window, later = Painted(done), Later(waits=True)
    qtbot.addWidget(window)
    for number in (1, 2):
        later.do(lambda number=number: done.append(f"job {number}"))
    later.do(lambda: later.do(lambda: done.append("one more")))
    later.begin_after_painting(window)
    assert later.waits
    window.show()
    qtbot.waitUntil(lambda: not later.waits)
    assert [name for name in done if name != "painted"] == ["job 1", "job 2", "one more"]
    assert done[0] == "painted"
    later.do(lambda: done.append("late"))
    assert done[-1] == "late"


def test_jobs_are_done_though_nothing_is_in_sight(qtbot, monkeypatch):
    monkeypatch.setattr(module, "LATEST_MS", 10)
    done: list[str] = []
    window, later = QWidget(), Later(waits=True)
    qtbot.addWidget(window)
    later.do(lambda: done.append("job"))
    later.begin_after_painting(window)
    qtbot.waitUntil(lambda: done == ["job"])


def test_a_mistake_in_a_job_ends_no_other(qtbot):
    done: list[str] = []
    window, later = QWidget(), Later(waits=True)
    qtbot.addWidget(window)
    later.do(lambda: 1 // 0)
    later.do(lambda: done.append("job"))
    later.do(lambda: 1 // 0)
    with qtbot.captureExceptions() as told:
        later.begin_after_painting(window)
        window.show()
        qtbot.waitUntil(lambda: not later.waits)
    assert done == ["job"]
    assert [kind for kind, *_ in told] == [ZeroDivisionError] * 2
