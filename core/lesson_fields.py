"""What MusicXML has no element for, as ``miscellaneous-field`` texts: one table of name -> how it is written and read.

A field of ours is named ``bowbench:NAME`` where it belongs to the tune or the lesson, ``bowbench:PART.NAME`` where it
belongs to the bowing in the part of that id, and ``bowbench:credit.KIND`` for a credit that is no person, right or
source. A value that is the default is not written, so a missing field reads as the default; a field that cannot be
read is told and reads as the default too. Fields of other programs, fields of ours that this version does not know,
and those of the tune or the lesson that it cannot read, are kept until a value is set that takes their place.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import field
from fractions import Fraction
from typing import Any

from immutabledict import immutabledict

from core import field_texts
from core.accent_plan import AccentPlan
from core.bowing import Mark
from core.field_texts import FieldText
from core.reach import ORDINARY, ReachSettings
from core.severity import NOTHING_QUIET, Quiet
from core.sheet_plan import SheetPlan
from core.strings import STANDARD, Tuning
from core.translation import tr
from core.tune import BarLine, Key
from core.values import dataclass

PREFIX = "bowbench:"
FORMAT = "1"
_FORMAT_FIELD = PREFIX + "format"
_CREDIT_PREFIX = PREFIX + "credit."

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


BAR_ROWS: Mapping[str, FieldText] = {
    "start": field_texts.FRACTION,
    "times": field_texts.TIMES,
    "line": field_texts.LINE,
    "key": field_texts.KEY,
}
TUNE_ROWS: Mapping[str, FieldText] = {
    "number": field_texts.NUMBER,
    "dance": field_texts.TEXT,
    "other_titles": field_texts.TEXTS,
    "part_order": field_texts.TEXTS,
    "credit_order": field_texts.NUMBERS,
    "quiet": field_texts.QUIET,
    "reach": field_texts.REACH,
    "tuning": field_texts.TUNING,
    "sheet": field_texts.SHEET,
    "bars": FieldText(_write_bars, _read_bars),
}
BOWING_ROWS: Mapping[str, FieldText] = {
    "accents": field_texts.PLAN,
    "accent_changes": field_texts.PLAN_CHANGES,
    "marks": field_texts.MARKS,
    "retakes": field_texts.IDS,
    "slurs": field_texts.IDS,
    "dots": field_texts.IDS,
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


def _written(values: Any, rows: Mapping[str, FieldText]) -> list[tuple[str, str]]:
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


def _read_into(values: dict[str, Any], key: str, row: FieldText, text: str) -> bool:
    """Read one value; False where the text is no such value."""
    try:
        values[key] = row.read(text)
    except (ValueError, IndexError, RecursionError):
        return False
    return True


def _not_understood(name: str, text: str) -> str:
    return tr("The field “{name}” says “{text}”, which is not understood", name=name, text=text[:60])
