from dataclasses import replace
from fractions import Fraction

from immutabledict import immutabledict

from core.lesson import Lesson
from core.lesson_check import check_lesson
from core.reach import ReachSettings
from core.strings import Tuning
from core.tune import Tempo
from tests.core.builders import bowed

TUNE, BOWING = bowed("(G4g4)|A4 B4|")
LESSON = Lesson(TUNE, (BOWING,))
SLOWLY = ReachSettings(tempo=Tempo(Fraction(1, 2), Fraction(30)))


def rules(lesson: Lesson) -> set[str]:
    return {finding.rule for finding in check_lesson(lesson, BOWING).findings}


def test_a_lesson_is_checked_at_its_tempo() -> None:
    assert "stroke-beyond-bow" not in rules(LESSON)
    assert "stroke-beyond-bow" in rules(replace(LESSON, reach=SLOWLY))


def test_a_lesson_is_checked_on_its_strings() -> None:
    assert "slur-leaps-string" in rules(LESSON)  # from the D string to the E string
    assert "slur-leaps-string" not in rules(replace(LESSON, tuning=Tuning(("G3", "D4", "G4", "D5"))))


def test_a_rule_that_the_lesson_turned_down_is_not_told() -> None:
    slow = replace(LESSON, reach=SLOWLY)
    assert "stroke-beyond-bow" not in rules(replace(slow, quiet=immutabledict({"stroke-beyond-bow": None})))
