"""The half-read tune: what the music reader fills in note by note and ``abc_bars`` turns into values."""

from __future__ import annotations

from dataclasses import field
from fractions import Fraction

from core.bowing import Articulation, Bow, Grace, Ornament
from core.errors import Problem
from core.reading.draft_signs import DraftSigns
from core.translation import tr
from core.tune import BarLine, Pitch, Tempo, Tuplet
from core.values import dataclass

MAX_PROBLEMS = 60  # told per tune; more help nobody


class Complaints:
    """Collects the problems of one tune, each kind that is named once only.

    Attributes:
        problems: In the order found.
        line: Line in the file that is being read, counted from 1.
    """

    def __init__(self, line: int = 1) -> None:
        self.problems: list[Problem] = []
        self.line = line
        self._said: set[str] = set()

    def say(self, text: str, once: str | None = None, line: int | None = None) -> None:
        """Note a problem.

        Args:
            text: One sentence.
            once: Name of the kind, where only the first of its kind shall be told.
            line: Line in the file, where it is not the one being read.
        """
        if once is not None:
            if once in self._said:
                return
            self._said.add(once)
        if len(self.problems) < MAX_PROBLEMS:
            self.problems.append(Problem(line if line is not None else self.line, text))
        elif len(self.problems) == MAX_PROBLEMS:
            self.problems.append(Problem(self.line, tr("More was repaired in this tune than is listed here.")))


class DraftNote:
    """A note, double stop or rest as read so far.

    Attributes:
        line: Line in the file.
        length: Sounding length in quarter notes.
        pitches: Low to high; empty for a rest.
        held: Tied on from the note before.
        doubtful: The length may have no note value of its own.
    """

    __slots__ = (
        "articulations", "bow", "courtesy", "doubtful", "fingerings", "graces", "held", "hidden", "length", "line",
        "ornaments", "pitches", "tuplet",
    )  # fmt: skip

    def __init__(self, line: int, length: Fraction, pitches: tuple[Pitch, ...], doubtful: bool) -> None:
        self.line = line
        self.length = length
        self.pitches = pitches
        self.doubtful = doubtful
        self.held = False
        self.hidden = False
        self.courtesy = False
        self.tuplet: Tuplet | None = None
        self.graces: tuple[Grace, ...] = ()
        self.bow: Bow | None = None
        self.ornaments: list[Ornament] | None = None
        self.articulations: list[Articulation] | None = None
        self.fingerings: list[str] | None = None


@dataclass(slots=True)
class DraftBar(DraftSigns):
    """A bar as read so far; fields without a word here are those of ``core.tune.Bar``.

    Attributes:
        file_line: Line in the file where its first note stands.
        length: Quarter notes that it holds; worked out at the end.
        chords: Index of the note in the bar, and text.
        words: Index of the note in the bar, text, and whether it is printed above.
    """

    file_line: int
    length: Fraction = Fraction(0)
    notes: list[DraftNote] = field(default_factory=list)
    ending: tuple[int, ...] = ()
    line: BarLine = BarLine.PLAIN
    chords: list[tuple[int, str]] = field(default_factory=list)
    words: list[tuple[int, str, bool]] = field(default_factory=list)

    @property
    def ends_section(self) -> bool:
        """A repeat, double bar, final bar or jump stands at its end."""
        return self.repeats > 0 or self.line is not BarLine.PLAIN or self.jump is not None


@dataclass(slots=True)
class DraftTune:
    """Bars and slurs as read, before numbers, starts and joins are worked out.

    Attributes:
        bars: In written order, none without notes.
        slurs: First and last note of each slur, as places among all notes and rests of the tune, and the line.
        tempo: At the start.
    """

    bars: list[DraftBar] = field(default_factory=list)
    slurs: list[tuple[int, int, int]] = field(default_factory=list)
    tempo: Tempo | None = None
