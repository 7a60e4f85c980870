"""Settings for all tests: no screen, English, no real settings, no stop-watch, and no window left behind."""

from __future__ import annotations

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("QT_ENABLE_HIGHDPI_SCALING", "1")
os.environ.pop("QT_SCALE_FACTOR", None)
os.environ["LC_ALL"] = "C.UTF-8"  # the program speaks English

import pytest
from hypothesis import HealthCheck, settings

settings.register_profile("no stop-watch", settings(), deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("no stop-watch")


@pytest.fixture(scope="session")
def qapp_args() -> list[str]:
    return ["bowbench-tests"]


@pytest.fixture(autouse=True)
def private_paths(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep every test away from the settings and recent files of whoever runs it."""
    home = tmp_path_factory.mktemp("home")
    for name in ("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"):
        monkeypatch.setenv(name, str(home))


@pytest.fixture(autouse=True)
def no_window_left(request: pytest.FixtureRequest) -> object:
    """Fail a window test that leaves a shown top-level widget alive."""
    yield
    if "qtbot" not in request.fixturenames and "qapp" not in request.fixturenames:
        return
    from PySide6.QtWidgets import QApplication

    app = QApplication.instance()
    if app is None:
        return
    app.processEvents()
    left = [widget for widget in app.topLevelWidgets() if widget.isVisible()]
    for widget in left:
        widget.close()
        widget.deleteLater()
    app.processEvents()
    assert not left, f"windows left open: {left}"
