"""What MusicXML has no element for, as ``miscellaneous-field`` texts: one table of name -> how it is written and read.

A field of ours is named ``bowbench:NAME`` where it belongs to the tune or the lesson, ``bowbench:PART.NAME`` where it
belongs to the bowing in the part of that id, and ``bowbench:credit.KIND`` for a credit that is no person, right or
source. A value that is the default is not written, so a missing field reads as the default; a field that cannot be
read is told and reads as the default too. Fields of other programs, fields of ours that this version does not know,
and those of the tune or the lesson that it cannot read, are kept until a value is set that takes their place.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import field, fields
from fractions import Fraction
from typing import Any

from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind, parse_plan
from core.bowing import Bow, Mark
from core.reach import ORDINARY, ReachSettings
from core.severity import NOTHING_QUIET, Quiet, Severity
from core.sheet_plan import SheetPlan, read_plan, write_plan
from core.strings import STANDARD, Tuning, parse_tuning
from core.translation import tr
from core.tune import MODE_FIFTHS, BarLine, Key, Tempo
from core.values import dataclass
from core.xml_characters import is_xml_text

PREFIX = "bowbench:"
FORMAT = "1"
_FORMAT_FIELD = PREFIX + "format"
_CREDIT_PREFIX = PREFIX + "credit."

OFF = "off"
MAX_TIMES = 999  # that a section is played

NO_NAMES: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class BarFacts:
    """What the standard cannot say of one bar.

    Attributes:
        start: ``Bar.start`` where it is not 0.
        times: ``Bar.repeats`` where the rest of the file tells another number.
        line: ``Bar.line`` where a repeat sign hides it.
        key: ``Bar.key`` where accidentals of its own hide fifths and mode.
    """

    start: Fraction | None = None
    times: int | None = None
    line: BarLine | None = None
    key: Key | None = None


@dataclass(frozen=True, slots=True)
class TuneFields:
    """Fields of the tune and the lesson; see ``Tune`` and ``Lesson``.

    Attributes:
        bars: By the ``number`` attribute of the measure.
        credit_order: Places of the credits, as the file's elements give them, in the order of ``Tune.credits``.
    """

    number: int = 1
    dance: str = ""
    other_titles: tuple[str, ...] = ()
    part_order: tuple[str, ...] = ()
    credit_order: tuple[int, ...] = ()
    quiet: Quiet = NOTHING_QUIET
    reach: ReachSettings = ORDINARY
    tuning: Tuning = STANDARD
    sheet: SheetPlan | None = None
    bars: Mapping[str, BarFacts] = field(default_factory=immutabledict)


@dataclass(frozen=True, slots=True)
class BowingFields:
    """Fields of one bowing; see ``Bowing``.

    Attributes:
        slurs: Ids of notes that a slur joins although they and the note before have a dot or a line: no hooks.
        dots: Ids of notes at a hook that have a staccato dot of their own.
    """

    accents: AccentPlan = AccentPlan()
    accent_changes: Mapping[int, AccentPlan] = field(default_factory=immutabledict)
    marks: Mapping[str, Mark] = field(default_factory=immutabledict)
    retakes: frozenset[str] = NO_NAMES
    slurs: frozenset[str] = NO_NAMES
    dots: frozenset[str] = NO_NAMES


@dataclass(frozen=True)
class Fields:
    """All miscellaneous fields of a file, sorted.

    Attributes:
        is_ours: The file says that it is a lesson file.
        is_newer: It was written by a later version, which may say more than is understood here.
        tune: Fields of the tune.
        bowings: Fields of the bowings by part id; a part without any is not listed.
        credits: (kind, text) of the credits kept in fields, in file order.
        others: All other fields by name.
        problems: One sentence for each field that could not be read.
    """

    is_ours: bool
    is_newer: bool
    tune: TuneFields
    bowings: Mapping[str, BowingFields]
    credits: tuple[tuple[str, str], ...]
    others: immutabledict[str, str]
    problems: tuple[str, ...]

    def bowing(self, part_id: str) -> BowingFields:
        """Fields of the bowing in a part; the defaults where it has none."""
        return self.bowings.get(part_id, BowingFields())


@dataclass(frozen=True, slots=True)
class _Row:
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


def _write_bars(bars: Mapping[str, BarFacts]) -> str:
    """``0 start=3/2; 8X1 start=1/2 line=final``: the measure's number, then its facts."""
    entries = []
    for number, facts in bars.items():
        words = [
            f"{name}={row.write(value)}"
            for name, row in BAR_ROWS.items()
            if (value := getattr(facts, name)) is not None
        ]
        entries.append(" ".join([number, *words]))
    return "; ".join(entries)


def _read_bars(text: str) -> Mapping[str, BarFacts]:
    bars = {}
    for entry in filter(None, (entry.split() for entry in text.split(";"))):
        number, *words = entry
        facts = {}
        for word in words:
            name, _, value = word.partition("=")
            if name not in BAR_ROWS:
                raise ValueError(word)
            facts[name] = BAR_ROWS[name].read(value)
        bars[number] = BarFacts(**facts)
    return immutabledict(bars)


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


_NUMBER = _Row(str, _read_number)
_TEXT = _Row(str, str)
_TEXTS = _Row(_write_texts, _read_texts)
_IDS = _Row(lambda ids: " ".join(sorted(ids)), lambda text: frozenset(text.split()))

BAR_ROWS: dict[str, _Row] = {
    "start": _Row(str, _read_fraction),
    "times": _Row(str, _read_times),
    "line": _Row(lambda line: line.value, BarLine),
    "key": _Row(_write_key, _read_key),
}
TUNE_ROWS: dict[str, _Row] = {
    "number": _NUMBER,
    "dance": _TEXT,
    "other_titles": _TEXTS,
    "part_order": _TEXTS,
    "credit_order": _Row(
        lambda order: " ".join(map(str, order)), lambda text: tuple(_read_number(word) for word in text.split())
    ),
    "quiet": _Row(_write_quiet, _read_quiet),
    "reach": _Row(_write_reach, _read_reach),
    "tuning": _Row(str, parse_tuning),
    "sheet": _Row(write_plan, read_plan),
    "bars": _Row(_write_bars, _read_bars),
}
BOWING_ROWS: dict[str, _Row] = {
    "accents": _Row(_write_plan, _read_plan),
    "accent_changes": _Row(_write_changes, _read_changes),
    "marks": _Row(_write_marks, _read_marks),
    "retakes": _IDS,
    "slurs": _IDS,
    "dots": _IDS,
}


def to_fields(
    tune: TuneFields, bowings: Mapping[str, BowingFields], credits: Iterable[tuple[str, str]], others: Mapping[str, str]
) -> list[tuple[str, str]]:
    """Write all fields of a lesson.

    Args:
        tune: Fields of the tune.
        bowings: Fields of each bowing by part id.
        credits: (kind, text) of the credits that no other element takes.
        others: Fields of other programs, and what was kept unread, by name.
    Returns:
        (name, text) in the order in which they stand in the file.
    """
    texts = [(_FORMAT_FIELD, FORMAT), *((PREFIX + name, text) for name, text in _written(tune, TUNE_ROWS))]
    for part_id, bowing in bowings.items():
        texts += [(f"{PREFIX}{part_id}.{name}", text) for name, text in _written(bowing, BOWING_ROWS)]
    texts += [(_CREDIT_PREFIX + kind, text) for kind, text in credits]
    written = {name for name, _ in texts}
    return [*texts, *((name, text) for name, text in others.items() if name not in written)]


def _written(values: Any, rows: Mapping[str, _Row]) -> list[tuple[str, str]]:
    """(name, text) of each value that is not the default of its class."""
    plain = type(values)()
    return [
        (name.replace("_", "-"), row.write(getattr(values, name)))
        for name, row in rows.items()
        if getattr(values, name) != getattr(plain, name)
    ]


def from_fields(texts: Iterable[tuple[str, str]]) -> Fields:
    """Sort and read the fields of a file, whoever wrote it.

    Args:
        texts: (name, text) in file order; a name may come twice.
    """
    texts = list(texts)
    version = next((text.strip() for name, text in texts if name == _FORMAT_FIELD), None)
    tune: dict[str, Any] = {}
    bowings: dict[str, dict[str, Any]] = {}
    credits: list[tuple[str, str]] = []
    others: dict[str, str] = {}
    unread: list[tuple[str, str]] = []
    problems: list[str] = []
    for name, text in texts:
        key = name.removeprefix(PREFIX)
        owner, dot, bowing_key = key.rpartition(".")
        bowing_key = bowing_key.replace("-", "_")
        if name == _FORMAT_FIELD:
            continue
        if name.startswith(_CREDIT_PREFIX) and name != _CREDIT_PREFIX:
            credits.append((name.removeprefix(_CREDIT_PREFIX), text))
            continue
        if name.startswith(PREFIX) and (row := TUNE_ROWS.get(key.replace("-", "_"))):
            if not _read_into(tune, key.replace("-", "_"), row, text):
                unread.append((name, text))
            continue
        if name.startswith(PREFIX) and dot and (row := BOWING_ROWS.get(bowing_key)):
            if not _read_into(bowings.setdefault(owner, {}), bowing_key, row, text):
                problems.append(tr("{problem}; it was left out.", problem=_not_understood(name, text)))
            continue
        others[name] = f"{others[name]}\n{text}" if name in others else text
    for name, text in unread:
        problem = _not_understood(name, text)
        if name.removeprefix(PREFIX).replace("-", "_") in tune:  # it came twice
            problems.append(tr("{problem}; it was left out.", problem=problem))
            continue
        problems.append(tr("{problem}; the usual value holds, and the field stays in the file.", problem=problem))
        others[name] = f"{others[name]}\n{text}" if name in others else text
    return Fields(
        is_ours=version is not None,
        is_newer=version is not None and version != FORMAT,
        tune=TuneFields(**tune),
        bowings={part_id: BowingFields(**values) for part_id, values in bowings.items()},
        credits=tuple(credits),
        others=immutabledict(others),
        problems=tuple(problems),
    )


def _read_into(values: dict[str, Any], key: str, row: _Row, text: str) -> bool:
    """Read one value; False where the text is no such value."""
    try:
        values[key] = row.read(text)
    except (ValueError, IndexError, RecursionError):
        return False
    return True


def _not_understood(name: str, text: str) -> str:
    return tr("The field “{name}” says “{text}”, which is not understood", name=name, text=text[:60])
