"""How the values of our own fields are written as text and read back, one ``FieldText`` each."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import fields
from fractions import Fraction
from typing import Any

from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind, parse_plan
from core.bowing import Bow, Mark
from core.reach import ReachSettings
from core.severity import Quiet, Severity
from core.sheet_plan import read_plan, write_plan
from core.strings import parse_tuning
from core.tune import MODE_FIFTHS, BarLine, Key, Tempo
from core.values import dataclass
from core.xml_characters import is_xml_text

OFF = "off"
MAX_TIMES = 999  # that a section is played


@dataclass(frozen=True, slots=True)
class FieldText:
    """How one value is written as text and read back; ``read`` raises ValueError where the text is no such value."""

    write: Callable[[Any], str]
    read: Callable[[str], Any]


def _write_plan(plan: AccentPlan) -> str:
    return str(plan) or PlanKind.PLACES.value


def _read_plan(text: str) -> AccentPlan:
    return AccentPlan(PlanKind.PLACES) if text.strip() == PlanKind.PLACES.value else parse_plan(text)


def _write_changes(changes: Mapping[int, AccentPlan]) -> str:
    """``4=backbeat 8=0,3/2``: the index of the bar from which on a plan holds, counted from 0."""
    return " ".join(f"{bar}={_write_plan(plan)}" for bar, plan in sorted(changes.items()))


def _read_changes(text: str) -> Mapping[int, AccentPlan]:
    changes = {}
    for word in text.split():
        match = re.fullmatch(r"(\d{1,9})=(\S+)", word)
        if match is None:
            raise ValueError(word)
        changes[int(match[1])] = _read_plan(match[2])
    return immutabledict(changes)


def _write_marks(marks: Mapping[str, Mark]) -> str:
    """``b0n1=down b3n2=up/1``: the pass behind the stroke, where the mark holds on one only."""
    return " ".join(
        f"{note_id}={mark.bow.value}" + (f"/{mark.only_pass}" if mark.only_pass is not None else "")
        for note_id, mark in sorted(marks.items())
    )


def _read_marks(text: str) -> Mapping[str, Mark]:
    marks = {}
    for word in text.split():
        match = re.fullmatch(r"([\w.-]+)=(down|up)(?:/([1-9]\d{0,5}))?", word)
        if match is None:
            raise ValueError(word)
        note_id, bow, only_pass = match.groups()
        marks[note_id] = Mark(Bow(bow), int(only_pass) if only_pass else None)
    return immutabledict(marks)


def _write_quiet(quiet: Quiet) -> str:
    """``accent-up=note retake=off``: how each rule that is turned down is told."""
    return " ".join(f"{rule}={told_as.value if told_as else OFF}" for rule, told_as in sorted(quiet.items()))


def _read_quiet(text: str) -> Quiet:
    quiet: dict[str, Severity | None] = {}
    for word in text.split():
        match = re.fullmatch(rf"([a-z0-9-]+)=({Severity.NOTE.value}|{OFF})", word)
        if match is None:
            raise ValueError(word)
        rule, told_as = match.groups()
        quiet[rule] = None if told_as == OFF else Severity.NOTE
    return immutabledict(quiet)


_REACH_NAMES = [row.name for row in fields(ReachSettings)]


def _write_reach(reach: ReachSettings) -> str:
    """``hair-cm=60 even-cm-s=27.5 tempo=2:112``: what is not as usual; of a tempo the beat and how many a minute."""
    words = []
    for row in fields(ReachSettings):
        value = getattr(reach, row.name)
        if value != row.default:
            text = f"{value.beat}:{value.per_minute}" if isinstance(value, Tempo) else repr(value).removesuffix(".0")
            words.append(f"{row.name.replace('_', '-')}={text}")
    return " ".join(words)


def _read_reach(text: str) -> ReachSettings:
    values: dict[str, Any] = {}
    for word in text.split():
        name, _, value = word.partition("=")
        key = name.replace("-", "_")
        if key == "tempo":
            beat, _, per_minute = value.partition(":")
            values[key] = Tempo(_read_fraction(beat), _read_fraction(per_minute))
        elif key in _REACH_NAMES and re.fullmatch(r"\d{1,3}(\.\d{1,17})?", value):
            values[key] = float(value)
        else:
            raise ValueError(word)
    return ReachSettings(**values)


def _write_key(key: Key) -> str:
    """``1,dorian,B-1,F0``: fifths, mode, then each altered step."""
    return ",".join([str(key.fifths), key.mode, *(f"{step}{alter}" for step, alter in key.altered)])


def _read_key(text: str) -> Key:
    if re.fullmatch(r"-?[0-7],[a-z]+(,[A-G](-?[12]|0))*", text) is None:
        raise ValueError(text)
    fifths, mode, *altered = text.split(",")
    if mode not in MODE_FIFTHS and mode != "none":
        raise ValueError(text)
    return Key(int(fifths), mode, tuple((word[0], int(word[1:])) for word in altered))


def _read_fraction(text: str) -> Fraction:
    if re.fullmatch(r"\d{1,9}(/[1-9]\d{0,8})?", text) is None:
        raise ValueError(text)
    return Fraction(text)


def _write_texts(texts: Iterable[str]) -> str:
    return json.dumps(list(texts), ensure_ascii=False)


def _read_texts(text: str) -> tuple[str, ...]:
    texts = json.loads(text)
    if not isinstance(texts, list) or not all(isinstance(item, str) and is_xml_text(item) for item in texts):
        raise ValueError(text)
    return tuple(texts)


def _read_number(text: str) -> int:
    if re.fullmatch(r"-?\d{1,9}", text.strip()) is None:
        raise ValueError(text)
    return int(text)


def _read_times(text: str) -> int:
    times = _read_number(text)
    if not 1 <= times <= MAX_TIMES:
        raise ValueError(text)
    return times


NUMBER = FieldText(str, _read_number)
NUMBERS = FieldText(
    lambda order: " ".join(map(str, order)), lambda text: tuple(_read_number(word) for word in text.split())
)
TIMES = FieldText(str, _read_times)
FRACTION = FieldText(str, _read_fraction)
TEXT = FieldText(str, str)
TEXTS = FieldText(_write_texts, _read_texts)
IDS = FieldText(lambda ids: " ".join(sorted(ids)), lambda text: frozenset(text.split()))
LINE = FieldText(lambda line: line.value, BarLine)
KEY = FieldText(_write_key, _read_key)
PLAN = FieldText(_write_plan, _read_plan)
PLAN_CHANGES = FieldText(_write_changes, _read_changes)
MARKS = FieldText(_write_marks, _read_marks)
QUIET = FieldText(_write_quiet, _read_quiet)
REACH = FieldText(_write_reach, _read_reach)
TUNING = FieldText(str, parse_tuning)
SHEET = FieldText(write_plan, read_plan)
