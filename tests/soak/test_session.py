"""A short session of the long one that is run by hand (``python -m tests.soak``)."""

from __future__ import annotations

from collections import Counter
from importlib import import_module
from pkgutil import walk_packages

import pytest
from PySide6.QtGui import QPixmap, QPixmapCache

import app
import core
from app.overrides import held
from app.page_view import PageView
from tests.soak.health import Health, growing, slope
from tests.soak.kept import FINITE, function_caches, kept, let_go
from tests.soak.memory import in_use, resident
from tests.soak.session import Session
from tests.soak.verdict import verdict


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


@pytest.mark.parametrize("method", ["mousePressEvent", "paintEvent"])  # called from a gesture, and between gestures
def test_an_exception_where_qt_calls_a_method_of_ours_is_a_fault_of_the_session(qtbot, tmp_path, monkeypatch, method):
    session = Session(1, tmp_path)
    try:
        session.chapter(0)
        monkeypatch.setattr(PageView, method, held(lambda page, event: [][0]))
        session.window.page.update()
        session.chapter(8)
    finally:
        monkeypatch.undo()
        session.end()
    assert any("Error" in fault for fault in session.faults)


def test_every_cache_of_a_function_has_a_bound_or_is_of_something_finite():
    for package in (app, core):
        for found in walk_packages(package.__path__, f"{package.__name__}."):
            if not found.name.endswith("__main__"):
                import_module(found.name)
    endless = {name for name, cache in function_caches().items() if cache.cache_info().maxsize is None}
    assert endless == set(FINITE)


def test_what_is_kept_on_purpose_is_told_with_its_bound_and_let_go(qtbot, tmp_path):
    session = Session(1, tmp_path)
    try:
        session.chapter(0)
        pictures = next(one for one in kept() if one.name == "Engraver: pictures" and one.holds)
        assert 0 < pictures.holds <= pictures.most
        QPixmapCache.insert("one", QPixmap(8, 8))
        assert QPixmapCache.find("one", QPixmap())
        let_go()
        assert not QPixmapCache.find("one", QPixmap())
        assert not [one for one in kept() if one.holds and one.name not in FINITE]
    finally:
        session.end()


def test_steps_that_can_be_undone_are_weighed_and_let_go(qtbot, tmp_path):
    session = Session(1, tmp_path)
    try:
        session.chapter(0)
        for _ in range(5):
            session.window.actions_by_name["bowing_add"].trigger()
        session._weigh_steps()
        assert session.window.document.stack.count() == 0
    finally:
        session.end()
    steps, held = session.undoable
    assert steps == 5
    assert held > 5


def health(gestures: int, resident: int = 0, **kinds: int) -> Health:
    return Health(gestures, Counter(kinds), resident, 0, 0, 0, 0, 0)


def test_the_verdict_names_what_grows_and_lets_the_first_chapter_be():
    states = [health(g, resident=700 + 3 * g // 100, kept=60 + g // 10, steady=90 if g > 500 else 1) for g in (
        500, 2000, 4000, 6000
    )]  # fmt: skip
    found = verdict(states, {"objects": 99, "resident": 31})
    assert found.grows
    assert [line.endswith("IT GROWS") for line in found.lines] == [True, False, False]
    assert found.lines[-1] == "  kept: +100 a thousand"
    assert not verdict(states, {"objects": 101}).grows
    assert not verdict(states[:2], {"objects": 0}).grows
    assert verdict(states[:3], {"objects": 0}).grows


def test_what_is_gathered_is_told_with_its_rate():
    states = [health(1000 * place, kept=40 + 7 * place, steady=90, swinging=place % 2) for place in range(6)]
    assert growing(states, at_least=1) == [("kept", pytest.approx(7))]
    assert slope([(0, 4), (2, 4), (9, 4)]) == 0


def test_memory_in_use_counts_what_python_and_the_c_library_gave_and_no_more_once_it_is_given_back():
    before = in_use()
    if not before:
        pytest.skip("the C library does not tell")
    assert before < resident() + 64 * 1024
    small = [(place, str(place)) for place in range(10_000, 110_000)]  # some 100 bytes each, from Python's arenas
    with_small = in_use()
    large = bytes(2**26)  # from the C library
    with_large = in_use()
    assert with_small - before > 8_000
    assert with_large - with_small == pytest.approx(2**16, rel=0.02)
    del large, small
    assert in_use() - before < 2_000
