"""A wheel built from the tree, installed in a new environment elsewhere, has all that it needs with it."""

import os
import shutil
import subprocess
import sys
import sysconfig
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[1]
PARTS = ("app", "core", "resources", "sample_tunes", "pyproject.toml", "README.md")


@pytest.fixture(scope="module")
def installed(tmp_path_factory):
    """Folder of a new environment that holds our wheel; libraries are lent from the environment of the tests."""
    work = tmp_path_factory.mktemp("wheel")
    tree = work / "tree"
    tree.mkdir()
    for name in PARTS:
        source = TOP / name
        (shutil.copytree if source.is_dir() else shutil.copy)(source, tree / name)
    pip = [sys.executable, "-m", "pip", "--quiet", "--disable-pip-version-check"]
    subprocess.run([*pip, "wheel", "--no-deps", "--no-build-isolation", "-w", str(work), str(tree)], check=True)
    (wheel,) = work.glob("bowbench-*.whl")
    home = work / "env"
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(home)], check=True)
    (site,) = home.glob("lib/python*/site-packages")
    (site / "lent.pth").write_text(sysconfig.get_paths()["purelib"] + "\n", encoding="utf-8")
    subprocess.run([*pip, "--python", str(home), "install", "--no-deps", str(wheel)], check=True)
    shutil.rmtree(tree)
    return home


def run(home, *arguments, **settings):
    env = {name: value for name, value in os.environ.items() if name not in ("PYTHONPATH", "VIRTUAL_ENV")} | settings
    return subprocess.run(arguments, cwd=home, env=env, capture_output=True, text=True, timeout=120)


def test_the_command_checks_a_bundled_sample(installed):
    found = run(installed, installed / "bin/python", "-c", "import sample_tunes; print(*sample_tunes.__path__)")
    folder = Path(found.stdout.strip())
    assert folder.is_relative_to(installed)
    sample = sorted(folder.glob("*.musicxml"))[0]
    done = run(installed, installed / "bin/bowbench", "check", sample)
    assert done.returncode in (0, 1), done.stderr
    assert "comes round" in done.stdout


def test_the_window_opens_on_a_bundled_sample(installed):
    code = (
        "import sample_tunes, pathlib\n"
        "from PySide6.QtCore import QTimer\n"
        "from PySide6.QtWidgets import QApplication\n"
        "from app.window import run_window\n"
        "path = sorted(pathlib.Path(next(iter(sample_tunes.__path__))).glob('*.musicxml'))[0]\n"
        "app = QApplication([])\n"
        "def look():\n"
        "    print([w.windowTitle() for w in app.topLevelWidgets() if w.isVisible()])\n"
        "    app.exit(0)\n"
        "QTimer.singleShot(1500, look)\n"
        "raise SystemExit(run_window([path]))\n"
    )
    done = run(installed, installed / "bin/python", "-c", code, QT_QPA_PLATFORM="offscreen", HOME=str(installed))
    assert done.returncode == 0, done.stderr
    assert "Bowbench" in done.stdout
