"""The check of a bowing by what its lesson sets: rules turned down, bow, tempo and strings."""

from __future__ import annotations

from core.bowing import Bowing
from core.check import Report, check
from core.lesson import Lesson


def check_lesson(lesson: Lesson, bowing: Bowing) -> Report:
    """Check a bowing of the lesson's tune, whether the lesson holds it or not."""
    return check(lesson.tune, bowing, lesson.quiet, lesson.reach, lesson.tuning)
