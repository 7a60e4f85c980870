"""What the program is made of is told whole, and told in the program."""

import re
import tomllib
from importlib.metadata import distribution
from pathlib import Path

import pytest

from app.about_dialog import AboutDialog, part_page
from app.cli import main
from app.licences import BUNDLED, UNKNOWN, USES, all_parts, licence_of, version_lines

TOP = Path(__file__).parents[2]
PROJECT = tomllib.loads((TOP / "pyproject.toml").read_text("utf-8"))["project"]
REQUIRED = {re.match(r"[\w.-]+", line)[0] for line in PROJECT["dependencies"]}


@pytest.fixture(scope="module")
def parts():
    return {part.name: part for part in all_parts()}


def test_every_package_that_we_require_is_there_with_its_use(parts):
    assert set(parts) >= REQUIRED
    assert all(parts[name].use for name in REQUIRED)
    assert set(USES) <= set(parts), "a use is told of a package that is not needed any more"


def test_packages_that_these_require_are_there_too(parts):
    """soundfile needs cffi, cffi needs pycparser (their own metadata)."""
    assert {"cffi", "pycparser"} <= set(parts)
    assert not {"pytest", "mypy", "ruff"} & set(parts), "those of the tests are no part of the program"


def test_every_part_has_a_licence_and_packages_the_version_that_is_installed(parts):
    assert not [part.name for part in parts.values() if part.licence in ("", UNKNOWN)]
    for name in REQUIRED:
        assert parts[name].version == distribution(name).version


@pytest.mark.parametrize(
    ("name", "licence"),
    [
        ("Qt", "LGPL-3.0"),  # Qt's page "Licenses Used in Qt"; the modules used here are all under it
        ("verovio", "LGPL-3.0"),
        ("music21", "BSD"),
        ("Leipzig", "OFL-1.1"),  # from memory
        ("Fiddle recordings", "MIT"),
    ],
)
def test_the_parts_that_people_ask_for(parts, name, licence):
    assert licence in parts[name].licence


def test_the_text_font_is_the_version_whose_licence_is_told(qapp):
    """Versions before 2.0 are under the GPL with an exception for documents, later ones under the OFL."""
    from PySide6.QtGui import QFont, QRawFont

    from app.fonts import load_fonts

    table = bytes(QRawFont.fromFont(QFont(load_fonts()[1])).fontTable("name"))
    assert "Version 1.04".encode("utf-16-be") in table or b"Version 1.04" in table
    assert next(part for part in BUNDLED if part.name == "Liberation Serif").version == "1.04"


def test_the_notices_that_we_must_pass_on_are_shown(parts):
    assert "Frank Wen" in parts["Fiddle recordings"].notice()
    assert "without restriction" in parts["Bowbench"].notice()
    assert "LESSER GENERAL PUBLIC LICENSE" in parts["Qt"].notice()
    assert "LESSER GENERAL PUBLIC LICENSE" in parts["verovio"].notice()
    assert "Michael" in parts["music21"].notice() or "Redistribution" in parts["music21"].notice()


class Stated:
    """A package as far as its licence goes."""

    def __init__(self, classifiers=(), **fields):
        self._fields = {name: [value] for name, value in fields.items()} | {"Classifier": list(classifiers)}
        self.metadata = self

    def get_all(self, name):
        return self._fields.get(name)


@pytest.mark.parametrize(
    ("package", "licence"),
    [
        (Stated(**{"License-Expression": "MIT", "License": "else"}), "MIT"),
        (Stated(**{"License": "BSD-3-Clause"}), "BSD-3-Clause"),
        (Stated(["License :: OSI Approved :: MIT License"], **{"License": "A long text\nover lines"}), "MIT License"),
        (Stated(["Topic :: Music"]), UNKNOWN),
    ],
)
def test_a_licence_is_read_wherever_it_is_stated(package, licence):
    assert licence_of(package) == licence


def test_the_version_is_told_with_what_a_report_needs(capsys):
    assert main(["--version"]) == 0
    told = capsys.readouterr().out.splitlines()
    assert told == list(version_lines())
    assert told[0] == f"bowbench {distribution('bowbench').version}"
    assert any(line.startswith("PySide6 6.") for line in told)


def test_the_dialog_shows_each_part_with_its_licence_text(qtbot):
    dialog = AboutDialog()
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.list.count() == len(dialog.parts)
    names = [part.name for part in dialog.parts]
    dialog.list.setCurrentRow(names.index("Fiddle recordings"))
    assert "Frank Wen" in dialog.text.toPlainText()
    assert distribution("bowbench").version in dialog.version.text()
    dialog.close()


def test_a_text_of_a_licence_is_shown_as_it_is(parts):
    from dataclasses import replace

    page = part_page(replace(parts["Bowbench"], notice=lambda: "<name> & others"))
    assert "&lt;name&gt; &amp; others" in page
