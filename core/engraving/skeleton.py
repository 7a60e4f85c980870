"""The part of a bar's MEI that no bowing changes: note values, pitches, beams, tuplets and accidentals.

Worked out once for a tune, so that an edit of a bowing need not do it again.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from core.bowing import Grace
from core.engraving.beams import beam_groups, tuplet_groups
from core.engraving.xml_text import quoteattr
from core.once import once
from core.tune import Bar, Key, Note, Pitch, Tune, note_value
from core.values import dataclass

ACCIDENTALS = {-2: "ff", -1: "f", 0: "n", 1: "s", 2: "x"}


@once
def attributes(tune: Tune) -> dict[str, str]:
    """The attributes of each note or rest by note id: its own id and its note value."""
    return {note.id: f"xml:id={quoteattr(note.id)} {value(note.length, note)}" for note in tune.sequence}


def value(length: Fraction, note: Note | None = None) -> str:
    """Attributes that say a note value.

    Args:
        length: Quarter notes.
        note: Whose length it is, where it may stand in a tuplet.
    Raises:
        ValueError: no single note value shows the length.
    """
    found = note_value(length, note.tuplet if note else None)
    if found is None:
        raise ValueError(f"no note value shows {length} quarter notes")
    base, dots = found
    return f'dur="{"breve" if base == 8 else 4 / base}"' + (f' dots="{dots}"' if dots else "")


def pitch_attributes(pitch: Pitch) -> str:
    """Attributes that say step and octave; the accidental is an element of its own."""
    return f'pname="{pitch.step.lower()}" oct="{pitch.octave}"'


# Beams and tuplets


@dataclass(frozen=True, slots=True)
class Span:
    """An element around some notes of a bar.

    Attributes:
        start, stop: Places in ``Bar.notes``.
        opening, closing: Its tags.
    """

    start: int
    stop: int
    opening: str
    closing: str


@once
def spans(tune: Tune, index: int) -> tuple[Span, ...]:
    """Beams and tuplets of a bar as elements that nest: the outer ones first."""
    bar = tune.bars[index]
    tuplets = tuplet_groups(bar)
    beams = [(beam.start, beam.stop) for beam in _cut_at(beam_groups(bar), tuplets)]
    found = [Span(start, stop, "<beam>", "</beam>") for start, stop in beams]
    for group in tuplets:
        tuplet = bar.notes[group.start].tuplet
        assert tuplet is not None
        beamed = any(start <= group.start and group.stop <= stop for start, stop in beams)
        opening = (
            f'<tuplet num="{tuplet.actual}" numbase="{tuplet.normal}" '
            f'bracket.visible="{"false" if beamed else "true"}">'
        )
        found.append(Span(group.start, group.stop, opening, "</tuplet>"))
    return tuple(sorted(found, key=lambda span: (span.start, -span.stop)))


def _cut_at(beams: Iterable[range], tuplets: tuple[range, ...]) -> Iterator[range]:
    """Cut beams that reach into a tuplet without holding all of it."""
    for beam in beams:
        cuts = {beam.start, beam.stop}
        for group in tuplets:
            holds = beam.start <= group.start and group.stop <= beam.stop
            held = group.start <= beam.start and beam.stop <= group.stop
            if not holds and not held:
                cuts |= {edge for edge in (group.start, group.stop) if beam.start < edge < beam.stop}
        edges = sorted(cuts)
        yield from (range(a, b) for a, b in pairwise(edges) if b - a > 1)


def nest(around: Iterable[Span], notes: Iterable[tuple[str, str]]) -> Iterator[str]:
    """Notes with their beams and tuplets; graces of a span's first note stand before the span.

    Args:
        around: As from ``spans``.
        notes: Graces and note as MEI, for each note of the bar.
    """
    opening: dict[int, list[Span]] = {}
    for span in around:
        opening.setdefault(span.start, []).append(span)
    open_spans: list[Span] = []
    for place, (graces, note) in enumerate(notes):
        yield graces
        for span in opening.get(place, ()):
            yield span.opening
            open_spans.append(span)
        yield note
        while open_spans and open_spans[-1].stop == place + 1:
            yield open_spans.pop().closing


# Accidentals


class Printed(NamedTuple):
    """The ``accid`` elements of a note, "" where there is none.

    Attributes:
        heads: For each of its pitches.
        graces: For each pitch of each of its grace notes.
    """

    heads: tuple[str, ...]
    graces: tuple[tuple[str, ...], ...]


@once
def accidentals(
    tune: Tune, index: int, graces: tuple[tuple[str, tuple[Grace, ...]], ...] = (), again: bool = False
) -> tuple[Printed, ...]:
    """What is printed before the notes of a bar: what key and bar already say is not repeated.

    Args:
        tune: The tune.
        index: Of the bar.
        graces: Grace notes by note id; they count like notes.
        again: A note held over the bar line into it says its accidental again, in brackets.
    Returns:
        For each note of the bar.
    """
    bars, bar = tune.bars, tune.bars[index]
    said = _Said(bar.key)
    if index and bars[index - 1].number == bar.number:
        said.warn_of(bars[index - 1])
    of_note = dict(graces)
    printed = []
    for place, note in enumerate(bar.notes):
        before = tuple(tuple(map(said.sign, grace.pitches)) for grace in of_note.get(note.id, ()))
        if note.held:
            heads = tuple(said.held_sign(pitch, again and place == 0) for pitch in note.pitches)
        else:
            heads = tuple(said.sign(pitch, note.courtesy) for pitch in note.pitches)
        printed.append(Printed(heads, before))
    return tuple(printed)


class _Said:
    """What the accidentals printed so far in a bar say."""

    def __init__(self, key: Key) -> None:
        self._key = key.alters()
        self._said: dict[tuple[int, str], int] = {}
        self._unsure: dict[tuple[int, str], int] = {}

    def warn_of(self, bar: Bar) -> None:
        """Another written bar is the same musical bar: repeat what it altered, so that nobody need wonder."""
        for note in bar.notes:
            for pitch in note.pitches:
                self._unsure[pitch.octave, pitch.step] = pitch.alter

    def sign(self, pitch: Pitch, courtesy: bool = False) -> str:
        place = (pitch.octave, pitch.step)
        said = self._said.get(place, self._key[pitch.step])
        unsure = self._unsure.pop(place, pitch.alter)
        if said == pitch.alter == unsure and not courtesy:
            return ""
        self._said[place] = pitch.alter
        return f'<accid accid="{ACCIDENTALS[pitch.alter]}"/>'

    def held_sign(self, pitch: Pitch, again: bool) -> str:
        in_force = self._said.get((pitch.octave, pitch.step), self._key[pitch.step]) == pitch.alter
        return "" if in_force or not again else f'<accid accid="{ACCIDENTALS[pitch.alter]}" enclose="paren"/>'
