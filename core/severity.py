"""How much a finding matters, and what a teacher turned down.

A lesson keeps, by rule id, the rules that its teacher does not want to hear about in full: ``None`` leaves their
findings out, ``Severity.NOTE`` tells them as notes. Rules that are not named are told as they are.
"""

from __future__ import annotations

from enum import Enum
from typing import TypeAlias

from immutabledict import immutabledict

from core.translation import tr, translatable


class Severity(Enum):
    """How much a finding matters."""

    FAULT = "fault"  # the writing contradicts itself
    WARNING = "warning"  # it can be played, and is probably not meant
    NOTE = "note"  # worth knowing


SEVERITY_WORDS = translatable({
    Severity.FAULT: "fault", Severity.WARNING: "warning", Severity.NOTE: "note",
}, "severity")  # fmt: skip


def severity_word(severity: Severity) -> str:
    """What a severity is called in the language of the reader."""
    return tr(SEVERITY_WORDS[severity], "severity")


Quiet: TypeAlias = immutabledict[str, Severity | None]
"""Rules turned down, by id: ``Severity.NOTE`` or None for not at all."""

NOTHING_QUIET: Quiet = immutabledict()


def turned_down(severity: Severity, rule: str, quiet: Quiet) -> Severity | None:
    """The severity that a finding keeps; None where it is not told.

    Turning down never raises: a note stays a note.
    """
    return quiet.get(rule, severity)


def set_quiet(quiet: Quiet, rule: str, told_as: Severity | None) -> Quiet:
    """Tell a rule as a note, or not at all.

    Raises:
        ValueError: the severity is higher than a note.
    """
    if told_as not in (Severity.NOTE, None):
        raise ValueError(f"a rule can be turned down to a note or to nothing, not to a {told_as.value}")
    return quiet.set(rule, told_as)


def set_loud(quiet: Quiet, rule: str) -> Quiet:
    """Tell a rule as it is again."""
    return quiet.discard(rule)
