"""A wheel built from the tree, installed in a new environment elsewhere, has all that it needs with it.

Libraries are lent from the environment of the tests. ``BOWBENCH_WHOLE_INSTALL=1`` has pip build apart and fetch them
all instead, and installs through pipx as well where that is at hand: minutes, and for the network's sake by hand.
"""

import os
import shutil
import subprocess
import sys
import sysconfig
import tomllib
import zipfile
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[1]
PARTS = ("app", "core", "resources", "sample_tunes", "pyproject.toml", "README.md")
WHOLE = bool(os.environ.get("BOWBENCH_WHOLE_INSTALL"))
PIP = [sys.executable, "-m", "pip", "--quiet", "--disable-pip-version-check"]
LOOK = """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from bowbench import main

app = QApplication([])
def look():
    titles = [w.windowTitle() for w in app.topLevelWidgets() if w.isVisible()]
    if any("Ferry" in title for title in titles):
        print(titles)
        app.exit(0)
timer = QTimer()
timer.timeout.connect(look)
timer.start(200)
sys.argv = ["bowbench", *sys.argv[1:]]
raise SystemExit(main())
"""


@pytest.fixture(scope="module")
def wheel(tmp_path_factory):
    """The wheel; ``tree`` beside it is what it was built from."""
    work = tmp_path_factory.mktemp("wheel")
    tree = work / "tree"
    tree.mkdir()
    for name in PARTS:
        source = TOP / name
        ignored = shutil.ignore_patterns("__pycache__")
        shutil.copytree(source, tree / name, ignore=ignored) if source.is_dir() else shutil.copy(source, tree / name)
    apart = [] if WHOLE else ["--no-build-isolation"]
    subprocess.run([*PIP, "wheel", "--no-deps", *apart, "-w", str(work), str(tree)], check=True)
    (wheel,) = work.glob("bowbench-*.whl")
    return wheel


@pytest.fixture(scope="module")
def installed(wheel, tmp_path_factory):
    """Folder of a new environment that holds our wheel."""
    home = tmp_path_factory.mktemp("installed") / "env"
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(home)], check=True)
    if not WHOLE:
        (site,) = home.glob("lib/python*/site-packages")
        (site / "lent.pth").write_text(sysconfig.get_paths()["purelib"] + "\n", encoding="utf-8")
    subprocess.run([*PIP, "--python", str(home), "install", *([] if WHOLE else ["--no-deps"]), str(wheel)], check=True)
    return home


def run(home, *arguments, **settings):
    env = {name: value for name, value in os.environ.items() if name not in ("PYTHONPATH", "VIRTUAL_ENV")} | settings
    return subprocess.run(arguments, cwd=home, env=env, capture_output=True, text=True, timeout=120)


def sample(home, name="tuesday_ferry.musicxml"):
    (found,) = home.glob(f"lib/python*/site-packages/bowbench/sample_tunes/{name}")
    return found


def test_every_package_of_the_tree_is_in_the_wheel():
    table = tomllib.loads((TOP / "pyproject.toml").read_text("utf-8"))["tool"]["setuptools"]
    ours = {
        ".".join(path.parent.relative_to(TOP).parts) for part in PARTS for path in (TOP / part).rglob("__init__.py")
    }
    ours = {f"bowbench.{name}" for name in ours if name != "app.launcher"} | {"bowbench"}
    assert set(table["packages"]) == ours


def test_the_wheel_holds_every_file_of_ours_and_nothing_lies_open_beside_it(wheel):
    held = set(zipfile.ZipFile(wheel).namelist())
    assert {name.split("/")[0] for name in held} == {"bowbench", f"{wheel.name.split('-py3')[0]}.dist-info"}
    tree = wheel.parent / "tree"  # what it was built from
    tracked = {
        path.relative_to(tree).as_posix()
        for part in ("app", "core", "resources", "sample_tunes")
        for path in (tree / part).rglob("*")
        if path.is_file() and path.suffix != ".sh" and path.name != "README.md"
    }
    launcher = {name for name in tracked if name.startswith("app/launcher/")}
    assert {f"bowbench/{name}" for name in tracked - launcher} <= held
    assert {f"bowbench/{name.removeprefix('app/launcher/')}" for name in launcher} <= held


def test_other_programs_of_the_environment_find_no_packages_of_ours(installed):
    code = (
        "import importlib.util as u; print([n for n in ('app', 'core', 'resources', 'sample_tunes') if u.find_spec(n)])"
    )
    assert run(installed, installed / "bin/python", "-c", code).stdout.strip() == "[]"


@pytest.mark.parametrize("call", [("bowbench",), ("python", "-m", "bowbench")])
def test_the_command_checks_a_bundled_sample(installed, call):
    done = run(installed, installed / "bin" / call[0], *call[1:], "check", sample(installed))
    assert done.returncode in (0, 1), done.stderr
    assert "comes round" in done.stdout


def test_the_command_prints_packs_and_plays(installed, tmp_path):
    """All that reads our resources or starts processes of its own."""
    command, tune = installed / "bin/bowbench", sample(installed)
    done = run(installed, command, "sheet", tune, "--out", tmp_path / "sheet.pdf", QT_QPA_PLATFORM="offscreen")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF-")
    done = run(installed, command, "sound", tune, "--out", tmp_path / "sound.wav", "--bars", "1-2")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "sound.wav").stat().st_size > 100_000
    small = sample(installed, "second_kettle.abc")
    done = run(installed, command, "pack", small, "--out", tmp_path / "pack", "--only", "midi", "--jobs", "2")
    assert done.returncode == 0, done.stderr
    assert list((tmp_path / "pack").rglob("*.mid"))


def test_the_window_opens_on_a_bundled_sample(installed):
    done = run(
        installed, installed / "bin/python", "-c", LOOK, sample(installed), QT_QPA_PLATFORM="offscreen",
        HOME=str(installed), XDG_CONFIG_HOME=str(installed / "x"), XDG_DATA_HOME=str(installed / "y"),
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert "Ferry" in done.stdout


@pytest.mark.skipif(not (WHOLE and shutil.which("pipx")), reason="by hand: BOWBENCH_WHOLE_INSTALL=1, and pipx")
def test_pipx_gives_the_command(wheel, tmp_path):
    homes = {"PIPX_HOME": str(tmp_path / "pipx"), "PIPX_BIN_DIR": str(tmp_path / "bin"), "PIPX_MAN_DIR": str(tmp_path)}
    subprocess.run(["pipx", "install", str(wheel)], env=os.environ | homes, check=True)
    done = run(tmp_path, tmp_path / "bin/bowbench", "check", TOP / "sample_tunes" / "tuesday_ferry.musicxml")
    assert done.returncode in (0, 1), done.stderr
    assert "comes round" in done.stdout
