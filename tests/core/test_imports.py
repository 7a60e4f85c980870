"""The import contract: core stands without Qt, and starting is not slowed by what is not needed yet."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[2]
CORE_MODULES = sorted(".".join(path.relative_to(TOP).with_suffix("").parts) for path in (TOP / "core").rglob("*.py"))


def test_core_imports_with_qt_blocked():
    code = "import sys\nfor name in ('PySide6', 'app'): sys.modules[name] = None\n"
    code += "".join(f"import {name.removesuffix('.__init__')}\n" for name in CORE_MODULES)
    done = subprocess.run([sys.executable, "-c", code], cwd=TOP, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr


@pytest.mark.parametrize("name", CORE_MODULES)
def test_core_names_neither_qt_nor_app(name):
    tree = ast.parse((TOP / (name.replace(".", "/") + ".py")).read_text(encoding="utf-8"))
    named = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            named |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            named.add((node.module or "").split(".")[0])
    assert not named & {"PySide6", "app", "shiboken6"}


def test_the_command_line_starts_without_qt_and_music21():
    code = "import sys, app.cli; sys.exit(any(name in sys.modules for name in ('PySide6', 'music21', 'verovio')))"
    assert subprocess.run([sys.executable, "-c", code], cwd=TOP, timeout=60).returncode == 0
