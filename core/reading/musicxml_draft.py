"""The half-read part: what the measure reader fills in and ``musicxml_lessons`` turns into values."""

from __future__ import annotations

from dataclasses import field, replace
from fractions import Fraction

from core.bowing import Articulation, Bow, Grace, Ornament
from core.errors import Problem
from core.lesson_fields import BarFacts
from core.reading.draft_signs import DraftSigns
from core.translation import plural
from core.tune import BarLine, Pitch, Tempo
from core.values import dataclass

MAX_PROBLEMS = 200  # told per file; more help nobody


class Complaints:
    """Collects the problems of one file; what comes again and again is told once, with its number.

    Attributes:
        problems: In file order once ``sorted_problems`` is called.
    """

    def __init__(self) -> None:
        self._problems: list[tuple[int, str]] = []
        self._kinds: dict[str, tuple[int, str, int]] = {}  # first line, sentence, count

    def say(self, line: int, text: str) -> None:
        """Note a problem that stands for itself; the text is one sentence."""
        self._problems.append((line, text))

    def once(self, line: int, text: str) -> None:
        """Note a problem that may come often: the first line is told and how many there are."""
        first, _, count = self._kinds.get(text, (line, text, 0))
        self._kinds[text] = (first, text, count + 1)

    def sorted_problems(self) -> tuple[Problem, ...]:
        """All problems by line, at most ``MAX_PROBLEMS`` and one more that says so."""
        counted = [
            (
                line,
                plural(
                    "{text}", "{text} ({n} times, first here).", count, text=text if count == 1 else text.rstrip(".")
                ),
            )
            for line, text, count in self._kinds.values()
        ]
        found = sorted(self._problems + counted, key=lambda problem: problem[0])
        problems = [Problem(line or None, text) for line, text in found[:MAX_PROBLEMS]]
        if len(found) > MAX_PROBLEMS:
            problems.append(
                Problem(
                    None,
                    plural(
                        "1 more repair is not listed.", "{n} more repairs are not listed.", len(found) - MAX_PROBLEMS
                    ),
                )
            )
        return tuple(problems)


@dataclass(slots=True)
class DraftPitch:
    """One pitch of a note, with its ties."""

    pitch: Pitch
    tie_starts: bool = False
    tie_stops: bool = False
    accidental: bool = False  # printed
    courtesy: bool = False  # said to be there for courtesy only


@dataclass(slots=True)
class SlurEnd:
    """A start or stop of a slur.

    Attributes:
        on_grace: It stands on a grace note before the note.
    """

    type: str
    number: str
    line: int
    on_grace: bool = False


@dataclass(slots=True)
class DraftGrace:
    """A grace note that waits for its note.

    Attributes:
        measure: Number of measures read when it came, its own included.
    """

    grace: Grace
    line: int
    measure: int = 0
    slurs: list[SlurEnd] = field(default_factory=list)

    def add(self, other: DraftGrace) -> None:
        """Take the pitches and slurs of a grace note that sounds together with this one."""
        pitches = sorted({*self.grace.pitches, *other.grace.pitches}, key=lambda pitch: (pitch.midi, pitch))
        self.grace = replace(self.grace, pitches=tuple(pitches))
        self.slurs += other.slurs


@dataclass(slots=True)
class DraftNote:
    """A note, double stop or rest as read so far.

    Attributes:
        line: Line in the file.
        at: Quarter notes from the start of the measure.
        length: Sounding length in quarter notes, greater than 0.
        pitches: As in the file; empty for a rest.
        ratio: (actual, normal) of its tuplet.
        unit: Written length of the note value that the ratio counts, where the file says it.
        tuplet_starts: The file marks the start of a tuplet here.
        xml_id: The element's id, or "".
    """

    line: int
    at: Fraction
    length: Fraction
    staff: str = "1"
    pitches: list[DraftPitch] = field(default_factory=list)
    hidden: bool = False
    ratio: tuple[int, int] | None = None
    unit: Fraction | None = None
    tuplet_starts: bool = False
    xml_id: str = ""
    graces: list[Grace] = field(default_factory=list)
    slurs: list[SlurEnd] = field(default_factory=list)
    bows: list[Bow] = field(default_factory=list)
    ornaments: list[Ornament] = field(default_factory=list)
    articulations: list[Articulation] = field(default_factory=list)
    fingerings: list[str] = field(default_factory=list)

    @property
    def is_rest(self) -> bool:
        return not self.pitches

    @property
    def stop(self) -> Fraction:
        return self.at + self.length


@dataclass(slots=True)
class DraftMeasure(DraftSigns):
    """A measure as read so far.

    Attributes:
        number: The number attribute.
        shown: The printed number where the file says another than ``number``.
        voices: Notes by voice, in file order.
        end: Quarter notes to the end of the longest voice.
        opens_ending: Numbers of the ending that starts here; empty where none does.
        closes_ending: An ending stops at the end.
        repeats: 0 without a backward repeat, else how often the file says, 1 where it says nothing.
        cuts: Places inside where a repeat sign cuts the measure in two, and whether it is a backward one.
        signs: Place, attribute name and value of signs that a bar begins with: part, segno, coda.
        coda_signs: Lines of coda signs that nothing tells the meaning of.
    """

    line: int
    number: str
    shown: str
    implicit: bool
    facts: BarFacts
    voices: dict[str, list[DraftNote]] = field(default_factory=dict)
    end: Fraction = Fraction(0)
    opens_ending: tuple[int, ...] = ()
    closes_ending: bool = False
    bar_line: BarLine = BarLine.PLAIN
    chords: list[tuple[Fraction, str]] = field(default_factory=list)
    words: list[tuple[Fraction, str, bool]] = field(default_factory=list)
    cuts: list[tuple[Fraction, bool]] = field(default_factory=list)
    signs: list[tuple[Fraction, str, object]] = field(default_factory=list)
    coda_signs: list[int] = field(default_factory=list)


@dataclass(slots=True)
class DraftPart:
    """A part as read so far.

    Attributes:
        id: Of the part.
        name: As the part list has it.
        measures: In file order.
        tempo: The first one, where it stands at the start.
        main_voice: The voice that is kept.
    """

    id: str
    name: str
    line: int
    measures: list[DraftMeasure] = field(default_factory=list)
    tempo: Tempo | None = None
    main_voice: str = ""
