"""The measures of one part: what stands around a bar's notes, in the order that the schema asks for."""

from __future__ import annotations

from fractions import Fraction

from lxml import etree

from core.bowing import Bowing
from core.measures import measure_numbers
from core.tune import SHARP_ORDER, Bar, Key, Meter, Tune
from core.writing.barlines import add_left_barline, add_right_barline, ending_brackets
from core.writing.directions import add_closing, add_opening, set_offset, timed_elements
from core.writing.grid import Grid
from core.writing.notes import NoteWriter
from core.writing.xml_tree import add


def add_measures(part: etree._Element, tune: Tune, bowing: Bowing, grid: Grid, prefix: str, leads: bool) -> None:
    """Append the measures of a bowing's part.

    Args:
        part: The part element.
        tune: The tune.
        bowing: What stands on its notes.
        grid: Of the tune.
        prefix: Put before note ids, so that they are unique in the document.
        leads: This part carries what belongs to the tune as a whole.
    """
    notes = NoteWriter(tune, bowing, grid, prefix)
    bars = tune.bars
    opens, closes = ending_brackets(bars)
    for index, (bar, number) in enumerate(zip(bars, measure_numbers([bar.number for bar in bars]), strict=True)):
        measure = add(part, "measure", number=number.text)
        if number.implicit:
            measure.set("implicit", "yes")
        add_left_barline(measure, bar, index in opens)
        _add_attributes(measure, bar, bars[index - 1] if index else None, grid)
        if leads:
            add_opening(measure, bar, tune.tempo if index == 0 else None)
        _add_music(measure, bar, notes.elements(bar), grid, leads)
        if leads:
            add_closing(measure, bar)
        add_right_barline(measure, bar, index in closes, is_last=index == len(bars) - 1)


def _add_music(measure: etree._Element, bar: Bar, notes: list[list[etree._Element]], grid: Grid, leads: bool) -> None:
    """Append the notes, in the first part with the chords and words that stand over them."""
    waiting = sorted(timed_elements(bar), key=lambda item: item[0]) if leads else []
    starts = [note.at for note in bar.notes] or [Fraction(0)]
    stops = [*starts[1:], None]
    for start, stop, elements in zip(starts, stops, notes or [[]], strict=True):
        while waiting and (stop is None or waiting[0][0] < stop):
            at, element = waiting.pop(0)
            if at != start:
                set_offset(element, grid(at - start))
            measure.append(element)
        measure.extend(elements)


def _add_attributes(measure: etree._Element, bar: Bar, before: Bar | None, grid: Grid) -> None:
    if before is not None and (before.key, before.meter) == (bar.key, bar.meter):
        return
    attributes = add(measure, "attributes")
    if before is None:
        add(attributes, "divisions", grid.divisions)
    if before is None or before.key != bar.key:
        _add_key(attributes, bar.key)
    if before is None or before.meter != bar.meter:
        _add_time(attributes, bar.meter)
    if before is None:
        clef = add(attributes, "clef")
        add(clef, "sign", "G")
        add(clef, "line", 2)


def hides_tonic(key: Key) -> bool:
    """Whether a key is written by its altered steps alone, which do not tell fifths and mode."""
    return bool(key.altered) and key != Key(0, "none", key.altered)


def _add_key(attributes: etree._Element, key: Key) -> None:
    element = add(attributes, "key")
    if not key.altered:
        add(element, "fifths", key.fifths)
        add(element, "mode", key.mode)
        return
    alters = key.alters()
    steps = [step for step in SHARP_ORDER if alters[step] or step in dict(key.altered)]
    for step in steps if hides_tonic(key) else [step for step, _ in key.altered]:
        add(element, "key-step", step)
        add(element, "key-alter", alters[step])


def _add_time(attributes: etree._Element, meter: Meter) -> None:
    time = add(attributes, "time")
    if not meter.groups:
        add(time, "senza-misura")
        return
    if meter.sign:
        time.set("symbol", meter.sign)
    add(time, "beats", "+".join(map(str, meter.groups)))
    add(time, "beat-type", meter.unit)
