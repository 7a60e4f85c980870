"""Which language is spoken."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from app.language import system_language, use_language, wanted_language
from core.translation import tr

TOP = Path(__file__).resolve().parents[2]


@pytest.fixture
def german():
    use_language("de")
    yield
    use_language("en")


@pytest.mark.parametrize(
    ("environment", "code"),
    [
        ({"LANG": "de_DE.UTF-8"}, "de"),
        ({"LANG": "de"}, "de"),
        ({"LANG": "de_AT.UTF-8", "LC_MESSAGES": "en_GB.UTF-8"}, "en"),
        ({"LANG": "en_GB.UTF-8", "LC_ALL": "de_CH.UTF-8", "LC_MESSAGES": "C"}, "de"),
        ({"LANG": "C"}, "en"),
        ({"LANG": "xx_XX"}, "en"),
    ],
)
def test_the_system_names_the_language(environment, code):
    assert system_language(environment) == code


def test_a_choice_goes_before_the_system():
    assert wanted_language("de") == "de"
    assert wanted_language("") == wanted_language("xx") == "en"


def test_texts_are_german(german):
    assert tr("&Undo") == "&Rückgängig"
    assert tr("first") == "1."


def test_english_comes_back(german):
    use_language("en")
    assert tr("&Undo") == "&Undo"


@pytest.mark.parametrize(("locale", "words"), [("C.UTF-8", "strokes, "), ("de_DE.UTF-8", "Striche, ")])
def test_the_command_line_speaks_the_language_of_the_system(locale, words):
    assert words in told(locale, "check", next((TOP / "sample_tunes").glob("*.musicxml")))


def test_json_is_english_everywhere():
    path = next((TOP / "sample_tunes").glob("*.musicxml"))
    assert told("de_DE.UTF-8", "check", "--json", path) == told("C.UTF-8", "check", "--json", path)


def told(locale: str, *words: object) -> str:
    return subprocess.run(
        [sys.executable, "-m", "app", *map(str, words)], cwd=TOP, env=os.environ | {"LC_ALL": locale},
        capture_output=True, encoding="utf-8", timeout=120,
    ).stdout  # fmt: skip
