"""What stands over and under the notes: tempo, part letters, signs, jumps, chords and words."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from lxml import etree

from core.harmony import write_harmony
from core.musicxml_names import JUMP_SOUNDS, NAME_OF_TYPE
from core.tune import Bar, Tempo, note_value
from core.writing.xml_tree import add


def timed_elements(bar: Bar) -> list[tuple[Fraction, etree._Element]]:
    """Chords and words over a bar, with their places in quarter notes from its start."""
    chords = [(chord.at, write_harmony(chord.text)) for chord in bar.chords]
    texts = []
    for words in bar.words:
        direction = etree.Element("direction", placement="above" if words.above else "below")
        add(add(direction, "direction-type"), "words", words.text)
        texts.append((words.at, direction))
    return chords + texts


def _direction(measure: etree._Element, name: str, text: str | None = None, /, **sound: str) -> etree._Element:
    direction = add(measure, "direction", placement="above")
    add(add(direction, "direction-type"), name, text)
    if sound:
        add(direction, "sound", **sound)
    return direction


def set_offset(element: etree._Element, divisions: str) -> None:
    """Give a harmony or direction its offset, which follows its chord or its direction types."""
    offset = etree.Element("offset")
    offset.text = divisions
    element.append(offset)


def add_opening(measure: etree._Element, bar: Bar, tempo: Tempo | None) -> None:
    """What stands over the beginning of a bar."""
    if tempo is not None:
        _add_tempo(measure, tempo)
    if bar.part:
        _direction(measure, "rehearsal", bar.part)
    if bar.segno:
        _direction(measure, "segno", segno="segno")
    if bar.coda:
        _direction(measure, "coda", coda="coda")


def add_closing(measure: etree._Element, bar: Bar) -> None:
    """What stands over the end of a bar."""
    if bar.to_coda:
        _direction(measure, "words", "To Coda", tocoda="coda")
    if bar.fine:
        _direction(measure, "words", "Fine", fine="yes")
    if bar.jump:
        name, value = JUMP_SOUNDS[bar.jump]
        _direction(measure, "words", bar.jump.value, **{name: value})


def _add_tempo(measure: etree._Element, tempo: Tempo) -> None:
    direction = add(measure, "direction", placement="above")
    if tempo.text:
        add(add(direction, "direction-type"), "words", tempo.text)
    metronome = add(add(direction, "direction-type"), "metronome")
    first, *tied = _note_values(tempo.beat)
    _add_beat_unit(metronome, first)
    for value in tied:
        _add_beat_unit(add(metronome, "beat-unit-tied"), value)
    add(metronome, "per-minute", _decimal(tempo.per_minute) or str(tempo.per_minute))
    add(direction, "sound", tempo=f"{float(tempo.beat * tempo.per_minute):.4f}".rstrip("0").rstrip("."))


def _add_beat_unit(parent: etree._Element, value: tuple[Fraction, int]) -> None:
    base, dots = value
    add(parent, "beat-unit", NAME_OF_TYPE[base])
    for _ in range(dots):
        add(parent, "beat-unit-dot")


def _note_values(length: Fraction) -> Iterator[tuple[Fraction, int]]:
    """Note values, longest first, that make up a length."""
    while length > 0:
        value = note_value(length)
        if value is not None:
            yield value
            return
        base = max((base for base in NAME_OF_TYPE if base <= length), default=None)
        if base is None:
            return
        yield base, 0
        length -= base


def _decimal(number: Fraction) -> str:
    """The number as an exact decimal of at most six places, or empty where it has none."""
    scaled = number * 10**6
    if scaled.denominator != 1:
        return ""
    return f"{float(number):.6f}".rstrip("0").rstrip(".")
