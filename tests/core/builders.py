"""A compact way to type bowed bars in tests.

``bowed("vA2 (Bc) | d2 re2")`` is a small dialect of ABC, made for tests only:

- notes ``A`` to ``G`` (octave 4), ``a`` to ``g`` (octave 5), ``z`` a rest; ``A2``, ``A3/2``, ``A/`` eighths;
- before a note: ``(`` a slur begins, ``u``/``v`` a fixed up-/down-bow, ``r`` a retake, ``=`` hooked to the note before,
  ``L`` an accent, ``~`` a cut; behind it: ``-`` tied on, ``)`` the slur ends;
- bar lines ``|`` ``||`` ``|]`` ``|:`` ``:|`` ``::`` ``:|3`` (played three times in all), endings ``[1`` ``[1,3``;
- ``!segno!`` ``!coda!`` before the first note of their bar, ``!tocoda!`` ``!fine!`` ``!D.C.!`` and the like anywhere in
  theirs, ``{A}`` a part named A starts here.

An incomplete first bar is a pick-up; so is an incomplete bar that fills up the one before a repeat or double bar.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace
from fractions import Fraction

from immutabledict import immutabledict

from core.accent_plan import AccentPlan
from core.bowing import Articulation, Bow, Bowing, Join, Mark, Ornament, Signs
from core.strokes import work_out
from core.tune import Bar, BarLine, Jump, Meter, Note, Pitch, Tune

TOKEN = re.compile(
    r"(?P<bar>:\|\d+|::|\|:|:\||\|\||\|\]|\|)"
    r"|\[(?P<ending>\d[\d,]*)|!(?P<sign>[^!]+)!|\{(?P<part>\w+)\}"
    r"|(?P<open>\(*)(?P<retake>r?)(?P<hook>=?)(?P<mark>[uv]?)(?P<accent>L?)(?P<cut>~?)"
    r"(?P<step>[A-Ga-gz])(?P<count>\d*)(?P<half>/?\d*)(?P<tie>-?)(?P<close>\)*)"
    r"|(?P<space>\s+)"
)
LINES = {"||": BarLine.DOUBLE, "|]": BarLine.FINAL}
SIGNS = {"segno": "segno", "coda": "coda", "tocoda": "to_coda", "fine": "fine"}


def bowed(
    text: str, meter: str = "4/4", accents: AccentPlan | None = None, part_order: str = ""
) -> tuple[Tune, Bowing]:
    """A tune and its bowing from typed bars."""
    count, unit = map(int, meter.split("/"))
    typed = _Typed(Meter((count,), unit))
    for match in re.finditer(r".", text):  # every character must belong to a token
        if match.start() >= typed.stop:
            token = TOKEN.match(text, match.start())
            assert token, f"cannot read {text[match.start() :]!r}"
            typed.take(token)
            typed.stop = token.end()
    typed.close_bar("")
    tune = Tune("Typed", tuple(typed.bars), part_order=tuple(part_order))
    bowing = Bowing(
        "Typed",
        joins=immutabledict(typed.joins),
        marks=immutabledict(typed.marks),
        retakes=frozenset(typed.retakes),
        signs=immutabledict(typed.signs),
        accents=accents or AccentPlan(),
    )
    return tune, bowing


def tune_of(text: str, meter: str = "4/4", part_order: str = "") -> Tune:
    """The tune alone."""
    return bowed(text, meter, part_order=part_order)[0]


def bows(tune: Tune, bowing: Bowing) -> str:
    """Directions in playing order: ``D U=U | - D``: ``|`` a bar line, ``=`` the same stroke goes on, ``-`` a rest."""
    strokes = work_out(tune, bowing)
    played = iter(strokes.played)
    bars = []
    for visit in strokes.order:
        line = ""
        for note in tune.bars[visit.bar].notes:
            if note.is_rest:
                line += " -"
                continue
            stroke = next(played)
            line += (" " if stroke.starts else "=") + ("D" if stroke.bow is Bow.DOWN else "U")
        bars.append(line.strip())
    return " | ".join(bars)


@dataclass
class _Typed:
    meter: Meter
    bars: list[Bar] = field(default_factory=list)
    notes: list[Note] = field(default_factory=list)
    fields: dict[str, object] = field(default_factory=dict)
    joins: dict[str, Join] = field(default_factory=dict)
    marks: dict[str, Mark] = field(default_factory=dict)
    retakes: set[str] = field(default_factory=set)
    signs: dict[str, Signs] = field(default_factory=dict)
    slurs: int = 0
    tied: bool = False
    after_note: bool = False
    ending: tuple[int, ...] = ()
    opens: bool = False
    stop: int = 0

    def take(self, token: re.Match[str]) -> None:
        if token["bar"]:
            self.close_bar(token["bar"])
        elif token["ending"]:
            self.ending = tuple(map(int, token["ending"].split(",")))
        elif token["sign"] in SIGNS:
            self.fields[SIGNS[token["sign"]]] = True
        elif token["sign"]:
            self.fields["jump"] = Jump(token["sign"])
        elif token["part"]:
            self.fields["part"] = token["part"]
        elif token["step"]:
            self.take_note(token)

    def take_note(self, token: re.Match[str]) -> None:
        note_id = f"b{len(self.bars)}n{len(self.notes) + 1}"
        at = self.notes[-1].at + self.notes[-1].length if self.notes else Fraction(0)
        half = token["half"]
        divisor = int(half[1:] or 2) if half else 1
        step = token["step"]
        pitches = () if step == "z" else (Pitch(5 if step.islower() else 4, step.upper()),)
        length = Fraction(int(token["count"] or 1), 2 * divisor)
        self.notes.append(Note(note_id, at, length, pitches, held=self.tied))
        if pitches and self.after_note and not self.tied and (token["hook"] or self.slurs):
            self.joins[note_id] = Join.HOOK if token["hook"] else Join.SLUR
        if token["mark"]:
            self.marks[note_id] = Mark(Bow.UP if token["mark"] == "u" else Bow.DOWN)
        if token["retake"]:
            self.retakes.add(note_id)
        if token["accent"] or token["cut"]:
            self.signs[note_id] = Signs(
                ornaments=(Ornament.CUT,) if token["cut"] else (),
                articulations=(Articulation.ACCENT,) if token["accent"] else (),
            )
        self.slurs += len(token["open"]) - len(token["close"])
        self.tied, self.after_note = bool(token["tie"]), bool(pitches)

    def close_bar(self, line: str) -> None:
        if self.notes:
            before = self.bars[-1] if self.bars else None
            bar = Bar(0, tuple(self.notes), self.meter, opens_repeat=self.opens, ending=self.ending)
            bar = replace(bar, start=self.start(before, bar), **self.fields)
            number = before.number + (not bar.is_pickup) if before else int(not bar.is_pickup)
            self.bars.append(replace(bar, number=number))
            self.notes, self.fields, self.opens = [], {}, False
        elif not self.bars:
            self.opens = line == "|:"
            return
        repeats = 2 if line == "::" else int(line[2:] or 2) if line.startswith(":|") else 0
        if repeats or line in LINES:
            look = LINES.get(line, BarLine.PLAIN)
            self.bars[-1] = replace(self.bars[-1], repeats=repeats or self.bars[-1].repeats, line=look)
            self.ending = ()
        self.opens = self.opens or line in ("|:", "::")

    def start(self, before: Bar | None, bar: Bar) -> Fraction:
        full = self.meter.bar_length
        if full is None or bar.length >= full:
            return Fraction(0)
        if before is None:
            return full - bar.length
        fills_up = before.length < full and not before.start and before.length + bar.length == full
        return before.length if before.ends_section and fills_up else Fraction(0)
