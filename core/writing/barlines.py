"""Bar lines as MusicXML has them: looks, endings and repeats, in the order that the schema asks for."""

from __future__ import annotations

from collections.abc import Sequence

from lxml import etree

from core.tune import Bar, BarLine
from core.writing.xml_tree import add

_BAR_STYLES = {BarLine.DOUBLE: "light-light", BarLine.FINAL: "light-heavy"}


def ending_brackets(bars: Sequence[Bar]) -> tuple[set[int], set[int]]:
    """Indexes of the bars where an ending's bracket opens, and of those where it closes."""
    opens = {
        index
        for index, bar in enumerate(bars)
        if bar.ending
        and (index == 0 or bars[index - 1].ending != bar.ending or bars[index - 1].repeats or bar.opens_repeat)
    }
    closes = {
        index
        for index, bar in enumerate(bars)
        if bar.ending and (index + 1 == len(bars) or index + 1 in opens or not bars[index + 1].ending)
    }
    return opens, closes


def _ending_number(bar: Bar) -> str:
    return ", ".join(map(str, bar.ending))


def add_left_barline(measure: etree._Element, bar: Bar, opens_ending: bool) -> None:
    """Append the bar line before the first note, where it is more than a plain one."""
    if not bar.opens_repeat and not opens_ending:
        return
    barline = add(measure, "barline", location="left")
    if bar.opens_repeat:
        add(barline, "bar-style", "heavy-light")
    if opens_ending:
        add(barline, "ending", number=_ending_number(bar), type="start")
    if bar.opens_repeat:
        add(barline, "repeat", direction="forward")


def add_right_barline(measure: etree._Element, bar: Bar, closes_ending: bool, is_last: bool) -> None:
    """Append the bar line after the last note, where it is more than a plain one."""
    if not closes_ending and not bar.repeats and bar.line is BarLine.PLAIN:
        return
    barline = add(measure, "barline", location="right")
    style = _BAR_STYLES.get(bar.line, "light-heavy" if bar.repeats else "")
    if style:
        add(barline, "bar-style", style)
    if closes_ending:
        concludes = bar.repeats or bar.line is BarLine.FINAL or is_last
        add(barline, "ending", number=_ending_number(bar), type="stop" if concludes else "discontinue")
    if bar.repeats:
        repeat = add(barline, "repeat", direction="backward")
        if bar.repeats != 2 and not bar.ending:  # the standard keeps times out of endings
            repeat.set("times", str(bar.repeats))
