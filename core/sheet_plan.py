"""What goes on a printed sheet and how large: a value that a lesson keeps.

Where each thing stands on the paper is ``app.sheet``'s business. A plan names bowings by their names, so that it holds
for any lesson: names that a lesson does not have are passed over.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import fields, replace
from enum import Enum
from typing import Any

from core.bowing import Bowing
from core.engraving.bow_signs import MarkDensity
from core.translation import translatable
from core.values import dataclass

PAPERS = ("A4", "Letter")
COPIES = (1, 2, 4)
CAUTION = translatable(
    "Rest your arms every few minutes, keep shoulder and wrist loose, stop when anything hurts, and ask a teacher or a "
    "doctor if it does not pass."
)


class SheetKind(Enum):
    """What a sheet is for."""

    PLAIN = "plain"  # the bowings and nothing else
    TEACHER = "teacher"  # all that is known of them
    CLASS = "class"  # to be read from the stand
    EXERCISE = "exercise"  # bowing to be filled in, with a key
    SET = "set"  # tunes one after the other


class NoteSize(Enum):
    """How large the music is printed."""

    SMALL = "small"
    NORMAL = "normal"
    LARGE = "large"
    FILL = "fill"  # normal, or as large as no further page is needed for
    SCREEN = "screen"  # two bars a line, to be read on a small screen


@dataclass(frozen=True, slots=True)
class TextBlock:
    """Text of the teacher's own.

    Attributes:
        heading: One line, or "".
        text: Paragraphs; an empty line between two leaves a gap there.
    """

    heading: str = ""
    text: str = ""

    def __bool__(self) -> bool:
        return bool(self.heading.strip() or self.text.strip())

    @property
    def paragraphs(self) -> tuple[str, ...]:
        """The paragraphs; an empty one is a gap."""
        return tuple(line.strip() for line in self.text.strip().splitlines())


NO_TEXT = TextBlock()


@dataclass(frozen=True, slots=True)
class SheetPlan:
    """What goes on a sheet; the defaults are those of a plain one.

    Attributes:
        kind: What it is for.
        bowings: Names of the bowings on it, in order; none for all.
        marks: Which strokes carry a bow sign.
        size: How large the music is.
        before, after: Text before and after the music.
        credits: Where the tune comes from is printed.
        footer: One line at the foot of every page, or "".
        legend: What the signs mean is printed.
        strip: Under each line, how every accent is met.
        findings: Behind each bowing, what the check finds in it.
        totals: Behind each bowing, its totals and what they assume.
        caution: ``CAUTION`` is printed.
        paper: One of ``PAPERS``.
        landscape: The paper lies on its long side.
        copies: How often each page stands on a paper, to be cut apart: one of ``COPIES``.
        from_bar: Printed number of the bar from which on an exercise leaves the bowing out; 0 for all of it.
        drill: Name of the drill in ``core.drills`` that an exercise asks for; "" for the bowings as they are.
        key: An exercise has its key on a page of its own.
    Raises:
        ValueError: paper, copies or bar is none that there is.
    """

    kind: SheetKind = SheetKind.PLAIN
    bowings: tuple[str, ...] = ()
    marks: MarkDensity = MarkDensity.EVERY
    size: NoteSize = NoteSize.NORMAL
    before: TextBlock = NO_TEXT
    after: TextBlock = NO_TEXT
    credits: bool = True
    footer: str = ""
    legend: bool = True
    strip: bool = False
    findings: bool = False
    totals: bool = False
    caution: bool = False
    paper: str = PAPERS[0]
    landscape: bool = False
    copies: int = 1
    from_bar: int = 0
    drill: str = ""
    key: bool = True

    def __post_init__(self) -> None:
        if self.paper not in PAPERS:
            raise ValueError(f"“{self.paper}” is no paper: expected {' or '.join(PAPERS)}")
        if self.copies not in COPIES:
            raise ValueError(f"{self.copies} copies do not share a page: expected {', '.join(map(str, COPIES))}")
        if not 0 <= self.from_bar < 10**6:
            raise ValueError(f"{self.from_bar} is no bar number")

    def chosen(self, bowings: Sequence[Bowing]) -> tuple[Bowing, ...]:
        """The bowings on the sheet, in its order; all where it names none of them."""
        by_name = {bowing.name: bowing for bowing in bowings}
        return tuple(by_name[name] for name in self.bowings if name in by_name) or tuple(bowings)


# What sheets of a kind begin with, where it is not what a plain one does.
BEGINS: Mapping[SheetKind, Mapping[str, Any]] = {
    SheetKind.PLAIN: {},
    SheetKind.TEACHER: {"findings": True, "totals": True},
    SheetKind.CLASS: {"size": NoteSize.FILL, "caution": True},
    SheetKind.EXERCISE: {"size": NoteSize.FILL, "caution": True},
    SheetKind.SET: {"size": NoteSize.FILL, "marks": MarkDensity.BARS, "caution": True},
}


def begin(kind: SheetKind) -> SheetPlan:
    """A sheet of a kind, with nothing chosen yet."""
    return replace(SheetPlan(kind), **BEGINS[kind])


def turned_into(plan: SheetPlan, kind: SheetKind) -> SheetPlan:
    """The same sheet as one of another kind: what stands as its own kind begins is taken from the other's beginning.

    >>> turned_into(begin(SheetKind.TEACHER), SheetKind.CLASS) == begin(SheetKind.CLASS)
    True
    """
    old, new = begin(plan.kind), begin(kind)
    names = {*BEGINS[plan.kind], *BEGINS[kind]}
    return replace(
        plan, kind=kind, **{name: getattr(new, name) for name in names if getattr(plan, name) == getattr(old, name)}
    )


def for_any_lesson(plan: SheetPlan) -> SheetPlan:
    """The plan without what belongs to one lesson: its bowings, its texts, where an exercise begins."""
    return replace(plan, bowings=(), before=NO_TEXT, after=NO_TEXT, from_bar=0)


def with_renamed(plan: SheetPlan, old: str, new: str) -> SheetPlan:
    """The plan after a bowing got another name."""
    return replace(plan, bowings=tuple(new if name == old else name for name in plan.bowings))


# ---- as text

_ENUMS: dict[str, type[Enum]] = {"kind": SheetKind, "marks": MarkDensity, "size": NoteSize}


def write_plan(plan: SheetPlan) -> str:
    """The plan as one line of JSON: what is not as a plain sheet has it. Any text survives."""
    plain = SheetPlan()
    values = {row.name: getattr(plan, row.name) for row in fields(plan)}
    return json.dumps({name: _plain(value) for name, value in values.items() if value != getattr(plain, name)})


def _plain(value: Any) -> Any:
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, TextBlock):
        return [value.heading, value.text]
    return list(value) if isinstance(value, tuple) else value


def read_plan(text: str) -> SheetPlan:
    """Read what ``write_plan`` wrote.

    Raises:
        ValueError: the text is no such plan.
    """
    found = json.loads(text)
    if not isinstance(found, dict):
        raise ValueError(text)
    plain = SheetPlan()
    values: dict[str, Any] = {}
    for row in fields(plain):
        if row.name in found:
            values[row.name] = _read_value(row.name, found.pop(row.name), getattr(plain, row.name))
    if found:
        raise ValueError(f"unknown: {', '.join(found)}")
    return SheetPlan(**values)


def _read_value(name: str, value: Any, usual: Any) -> Any:
    if name in _ENUMS:
        return _ENUMS[name](value)
    if isinstance(usual, (TextBlock, tuple)):
        if not isinstance(value, list) or not all(isinstance(text, str) for text in value):
            raise ValueError(value)
        if isinstance(usual, tuple):
            return tuple(value)
        if len(value) != 2:
            raise ValueError(value)
        return TextBlock(*value)
    if type(value) is not type(usual):
        raise ValueError(value)
    return value
