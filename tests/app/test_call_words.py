"""The parser of the command line speaks the language that is spoken."""

import re

import pytest

from app.call_words import WORDS
from app.cli import main
from app.language import LANGUAGES
from tests.translations import ts_file
from tests.translations.__main__ import ts_path

PLACE = re.compile(r"%(?:\(\w+\))?[sr]")


@pytest.fixture
def german_system(monkeypatch):
    monkeypatch.setenv("LC_ALL", "de_DE.UTF-8")
    yield
    monkeypatch.setenv("LC_ALL", "C.UTF-8")
    main(["--version"])  # English again


def test_help_is_german_throughout(german_system, capsys):
    assert main(["sound", "--help"]) == 0
    told = capsys.readouterr().out
    assert told.startswith("Aufruf: bowbench sound ")
    assert "diese Hilfe zeigen" in told
    assert not re.search(r"usage|argument|option|\bshow\b", told)


@pytest.mark.parametrize(
    ("call", "told"),
    [
        ([], "Es fehlt: FILE, --out"),
        (["a.abc", "--out"], "--out: Erwartet wird ein Wert"),
        (["a.abc", "--out", "a.wav", "--tune", "x"], "--tune: 'x' ist keine Angabe der Art int"),
        (["a.abc", "--out", "a.wav", "--louder"], "Nicht bekannt: --louder"),
    ],
)
def test_wrong_calls_are_told_in_german(german_system, capsys, call, told):
    assert main(["sound", *call]) == 2
    assert f"Fehler: {told}\n" in capsys.readouterr().err


def test_json_and_other_systems_keep_english(capsys):
    assert main(["check", "--json"]) == 2
    assert "usage: bowbench check" in (told := capsys.readouterr().err)
    assert "error: the following arguments are required: FILE\n" in told


@pytest.mark.parametrize("language", sorted(set(LANGUAGES) - {"en"}))
def test_translations_keep_what_the_parser_fills_in(language):
    entries = ts_file.read(ts_path(language))
    for text in WORDS:
        (form,) = entries[text, "of the command line"].forms
        assert sorted(PLACE.findall(form)) == sorted(PLACE.findall(text)), text
