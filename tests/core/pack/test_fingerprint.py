"""Fingerprints: the same for equal lessons in every process, another one for any change."""

import os
import subprocess
import sys
from dataclasses import fields, replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from immutabledict import immutabledict

from core.lesson import Lesson
from core.pack.fingerprint import fingerprint
from core.pack.kinds import Kind
from core.reach import ReachSettings
from core.reading import read_file
from core.severity import Severity
from core.sheet_plan import SheetPlan
from core.strings import Tuning
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed
from tests.property.strategies import lessons

KINDS = frozenset({Kind.ABC})
TOP = Path(__file__).resolve().parents[3]


@settings(max_examples=20, deadline=None)
@given(lessons())
def test_a_lesson_that_was_written_and_read_has_the_same_fingerprint(lesson):
    again = read_file(write_musicxml(lesson).encode()).lessons[0]
    assert (again == lesson) == (fingerprint(again, KINDS, "") == fingerprint(lesson, KINDS, ""))


TUNE, BOWING = bowed("vA2 (Bc) | d2 re2")
LESSON = Lesson(TUNE, (BOWING,))
CHANGES = {
    "tune": replace(LESSON.tune, title="Another"),
    "bowings": (replace(LESSON.bowings[0], name="Another"),),
    "fields": immutabledict({"a": "b"}),
    "quiet": immutabledict({"retake": Severity.NOTE}),
    "reach": ReachSettings(hair_cm=60),
    "tuning": Tuning(("A3", "E4", "A4", "E5")),
    "sheet": SheetPlan(footer="Tuesday class"),
}


@pytest.mark.parametrize("name", [row.name for row in fields(LESSON)])
def test_whatever_changes_in_a_lesson_changes_the_fingerprint(name):
    changed = replace(LESSON, **{name: CHANGES[name]})
    assert fingerprint(changed, KINDS, "") != fingerprint(LESSON, KINDS, "")


def test_what_goes_in_and_the_version_change_it():
    assert len({fingerprint(LESSON, KINDS, ""), fingerprint(LESSON, KINDS, "2"),
                fingerprint(LESSON, KINDS | {Kind.MIDI}, "")}) == 3  # fmt: skip


def test_it_is_the_same_in_every_process():
    code = (
        "from tests.core.pack.test_fingerprint import *\n"
        "sets = replace(LESSON.bowings[0], retakes=frozenset('abcdefgh'))\n"
        "print(fingerprint(replace(LESSON, bowings=(sets,)), KINDS, ''))"
    )
    found = {
        subprocess.run(
            [sys.executable, "-c", code], cwd=TOP, env={**os.environ, "PYTHONHASHSEED": seed}, capture_output=True,
            text=True, check=True, timeout=120,
        ).stdout
        for seed in "12"
    }  # fmt: skip
    assert len(found) == 1
