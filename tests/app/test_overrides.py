"""A mistake in a method that Qt calls is told, and the program goes on."""

from __future__ import annotations

import subprocess
import sys

import pytest

MISTAKE = """
import sys
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QWidget
if sys.argv[1] == "held":
    from app import overrides

class Wrong(QWidget):
    def event(self, event):
        if event.type() is QEvent.Type.User:
            return [][0]
        return super().event(event)

class Further(Wrong):
    def sizeHint(self):
        return 1 / 0

app = QApplication(["wrong"])
widget = Further()
for attempt in (lambda: app.sendEvent(widget, QEvent(QEvent.Type.User)), widget.adjustSize):
    try:
        attempt()
    except Exception as fault:
        print(type(fault).__name__)
print("goes on")
"""


def run(how: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, "-c", MISTAKE, how], capture_output=True, text=True, timeout=60)


def test_a_mistake_that_the_interpreter_finds_does_not_end_the_program():
    done = run("held")
    assert (done.returncode, done.stdout) == (0, "IndexError\nZeroDivisionError\ngoes on\n"), done.stderr


@pytest.mark.skipif(sys.version_info >= (3, 12), reason="exceptions are whole from the beginning")
def test_it_would_without():
    """Where this fails, PySide has been mended and ``app.overrides`` can go."""
    assert run("bare").returncode != 0


def test_a_window_is_held():
    look = "import app.main_window, app.page_view as page; print(hasattr(page.PageView.mousePressEvent, '__wrapped__'))"
    done = subprocess.run([sys.executable, "-c", look], capture_output=True, text=True, timeout=60)
    assert done.stdout == f"{sys.version_info < (3, 12)}\n", done.stderr
