"""What PySide compiles at every start is kept, and never taken where it might be wrong."""

from __future__ import annotations

import builtins
import errno
import os
import subprocess
import sys
from pathlib import Path

import pytest

from app import support_code
from app.support_code import import_with, keep_code, kept_code

TOP = Path(__file__).parents[2]
TEXT = b"answer = 6 * 7\n"
NAME = "shibokensupport/some.py"


@pytest.fixture(autouse=True)
def byte_code_is_written(monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", False)


def answer(text: bytes = TEXT, name: str = NAME) -> int:
    found: dict[str, int] = {}
    exec(compile(text, name, "exec"), found)
    return found["answer"]


def test_a_text_is_compiled_once_and_taken_from_the_file_after_that(tmp_path, monkeypatch):
    path, answers, compiled = tmp_path / "new" / "kept", [], []
    real = builtins.compile
    monkeypatch.setattr(builtins, "compile", lambda *args, **kwargs: compiled.append(args[1]) or real(*args, **kwargs))
    for _ in range(2):
        import_with(path, lambda: answers.append(answer()))
    assert answers == [42, 42]
    assert compiled == [NAME]


def test_another_text_under_the_same_name_is_compiled(tmp_path):
    path, answers = tmp_path / "kept", []
    import_with(path, lambda: answers.append(answer()))
    import_with(path, lambda: answers.append(answer(b"answer = 5")))
    assert answers == [42, 5]


def test_what_is_no_text_of_pyside_is_left_alone(tmp_path):
    import_with(tmp_path / "kept", lambda: answer(name="elsewhere.py"))
    assert not (tmp_path / "kept").exists()


DAMAGES = (lambda data: data[:-1], lambda data: b"", lambda data: data[:40] + bytes([data[40] ^ 1]) + data[41:])


@pytest.mark.parametrize("damage", DAMAGES)
def test_a_damaged_file_is_passed_over_and_written_anew(tmp_path, damage):
    path, answers = tmp_path / "kept", []
    import_with(path, lambda: answers.append(answer()))
    whole = path.read_bytes()
    path.write_bytes(damage(whole))
    assert kept_code(path) == {}
    import_with(path, lambda: answers.append(answer()))
    assert answers == [42, 42]
    assert path.read_bytes() == whole


def test_code_of_another_python_is_passed_over(tmp_path, monkeypatch):
    keep_code(tmp_path / "kept", {b"x": compile("", "", "exec")})
    assert kept_code(tmp_path / "kept")
    monkeypatch.setattr(support_code, "MAGIC_NUMBER", b"none")
    assert kept_code(tmp_path / "kept") == {}


def test_a_folder_that_cannot_be_written_is_no_harm(tmp_path):
    (tmp_path / "file").write_bytes(b"")
    import_with(tmp_path / "file" / "kept", answer)
    assert [path.name for path in tmp_path.iterdir()] == ["file"]


def test_nothing_is_written_where_python_writes_no_byte_code(tmp_path, monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    import_with(tmp_path / "kept", answer)
    assert list(tmp_path.iterdir()) == []


def test_compile_is_put_back_even_if_the_import_fails(tmp_path):
    real = builtins.compile

    def fail() -> None:
        raise ImportError

    with pytest.raises(ImportError):
        import_with(tmp_path / "kept", fail)
    assert builtins.compile is real


def test_what_cannot_be_written_whole_leaves_nothing(tmp_path, monkeypatch):
    def fill_the_disk(path: Path, data: bytes) -> int:
        with path.open("wb") as file:
            file.write(data[:9])
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", fill_the_disk)
    keep_code(tmp_path / "kept", {b"digest": compile("1", "some", "eval")})
    assert list(tmp_path.iterdir()) == []


def test_pyside_words_its_mistakes_and_tells_its_signatures_as_ever(tmp_path):
    code = (
        "{first}\nfrom PySide6.QtCore import QObject, QPoint\nprint(QPoint.isNull.__doc__)\n"
        "print(QObject.objectName.__doc__)\ntry:\n    QPoint('a', [])\nexcept TypeError as fault:\n    print(fault)\n"
    )
    environment = os.environ | {"PYTHONPYCACHEPREFIX": str(tmp_path)}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    told = [
        subprocess.run(
            [sys.executable, "-c", code.format(first=first)],
            cwd=TOP, env=environment, stdout=subprocess.PIPE, text=True,
            check=True,
        ).stdout
        for first in ("", "import app.support_code", "import app.support_code")
    ]  # fmt: skip
    assert told[0] == told[1] == told[2] != ""
    kept = list(tmp_path.rglob("*.support"))
    assert len(kept) == 1
    assert len(kept_code(kept[0])) > 5
