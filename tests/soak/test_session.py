"""A short session of the long one that is run by hand (``python -m tests.soak``)."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.soak.health import Health, growing, slope
from tests.soak.session import Session


@pytest.mark.parametrize("seed", [11, 12])
def test_nothing_goes_wrong_in_a_short_session_and_undo_leads_back(qtbot, tmp_path, seed):
    session = Session(seed, tmp_path)
    try:
        session.chapter(50)
    finally:
        session.end()
    assert not session.faults, session.faults[0]
    assert session.gestures == 50


def test_an_exception_in_a_slot_is_a_fault_of_the_session(qtbot, tmp_path):
    session = Session(1, tmp_path)
    try:
        session.chapter(0)
        session.window.document.lesson_changed.connect(lambda before, after: 1 // 0)
        session.chapter(0)
    finally:
        session.end()
    assert any("ZeroDivisionError" in fault for fault in session.faults)


def test_an_undo_that_leads_elsewhere_is_a_fault_of_the_session(qtbot, tmp_path, monkeypatch):
    session = Session(1, tmp_path)
    try:
        session.chapter(0)
        session.window.actions_by_name["bowing_add"].trigger()
        session.window.document.stack.clear()
        session._undo_and_redo()
    finally:
        session.end()
    assert ["undo all does not give the first lesson" in fault for fault in session.faults] == [True]


def health(gestures: int, **kinds: int) -> Health:
    return Health(gestures, Counter(kinds), 0, 0, 0, 0, 0)


def test_what_is_gathered_is_told_with_its_rate():
    states = [health(1000 * place, kept=40 + 7 * place, steady=90, swinging=place % 2) for place in range(6)]
    assert growing(states, at_least=1) == [("kept", pytest.approx(7))]
    assert slope([(0, 4), (2, 4), (9, 4)]) == 0
