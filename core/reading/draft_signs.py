"""What stands over, under and at the ends of a half-read bar, of any kind of file, until it goes into the bar."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from core.tune import Bar, BarLine, ChordSymbol, Jump, Key, Meter, Note, Words
from core.values import dataclass


@dataclass(slots=True, kw_only=True)
class DraftSigns:
    """Metre, key and the signs of the playing order; the fields are those of ``core.tune.Bar``."""

    meter: Meter
    key: Key
    opens_repeat: bool = False
    repeats: int = 0
    part: str = ""
    segno: bool = False
    coda: bool = False
    to_coda: bool = False
    fine: bool = False
    jump: Jump | None = None

    def to_bar(
        self,
        number: int,
        notes: tuple[Note, ...],
        line: BarLine,
        *,
        ending: tuple[int, ...],
        chords: Iterable[tuple[Fraction, str]],
        words: Iterable[tuple[Fraction, str, bool]],
        repeats: int | None = None,
        start: Fraction = Fraction(0),
    ) -> Bar:
        """Make the bar.

        Args:
            number, notes, line, ending, start: As in ``Bar``.
            chords: Place in quarter notes from the first note, and text.
            words: The same, and whether they are printed above.
            repeats: Where it is not what was read.
        """
        return Bar(
            number=number,
            notes=notes,
            meter=self.meter,
            key=self.key,
            start=start,
            opens_repeat=self.opens_repeat,
            repeats=self.repeats if repeats is None else repeats,
            ending=ending,
            line=line,
            part=self.part,
            segno=self.segno,
            coda=self.coda,
            to_coda=self.to_coda,
            fine=self.fine,
            jump=self.jump,
            chords=tuple(ChordSymbol(at, text) for at, text in chords),
            words=tuple(Words(at, text, above) for at, text, above in words),
        )
