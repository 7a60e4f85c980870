"""Bar lines of MusicXML: looks, repeats and endings, at either side of a measure or inside it."""

from __future__ import annotations

import re
from fractions import Fraction

from lxml import etree

from core.reading.left_out import tell_left_out
from core.reading.limits import MAX_PASSES
from core.reading.musicxml_draft import Complaints, DraftMeasure
from core.reading.xml_tree import decimal_number
from core.translation import tr
from core.tune import BarLine

_LINES = {
    "light-light": BarLine.DOUBLE, "light-heavy": BarLine.FINAL, "heavy-light": BarLine.DOUBLE,
    "heavy-heavy": BarLine.DOUBLE, "heavy": BarLine.DOUBLE,
}  # fmt: skip
_READ = {"bar-style", "ending", "repeat", "segno", "coda"}


class BarlineReader:
    """Reads the bar lines of one part."""

    def __init__(self, complaints: Complaints) -> None:
        self._complaints = complaints
        self._last_ending: tuple[int, ...] = ()

    def read(
        self, element: etree._Element, at: Fraction, before: DraftMeasure | None, measure: DraftMeasure
    ) -> dict[str, object]:
        """Read a bar line.

        Args:
            element: The bar line.
            at: Quarter notes from the start of the measure to it.
            before: The measure before, if any.
            measure: The measure that it stands in.
        Returns:
            Attributes that belong to the measure after this one.
        """
        for child in element:
            if child.tag not in _READ:
                tell_left_out(self._complaints, child)
        style = _LINES.get((element.findtext("bar-style") or "").strip(), BarLine.PLAIN)
        match element.get("location"):
            case "middle":
                self._read_middle(element, at, measure)
                return {}
            case "left":
                self._read_left(element, style, before, measure)
                return {}
            case _:
                return self._read_right(element, style, measure)

    def _read_left(
        self, element: etree._Element, style: BarLine, before: DraftMeasure | None, measure: DraftMeasure
    ) -> None:
        measure.segno |= element.find("segno") is not None
        measure.coda |= element.find("coda") is not None
        ending, repeat = element.find("ending"), element.find("repeat")
        if ending is not None and ending.get("type") == "start":
            measure.opens_ending = self._ending_numbers(ending)
        elif ending is not None and before is not None:
            before.closes_ending = True
        if repeat is not None and repeat.get("direction") == "forward":
            measure.opens_repeat = True
        elif repeat is not None and before is not None:
            before.repeats = self._times(repeat)
        elif repeat is None and before is not None and style is BarLine.DOUBLE and before.bar_line is BarLine.PLAIN:
            before.bar_line = style

    def _read_right(self, element: etree._Element, style: BarLine, measure: DraftMeasure) -> dict[str, object]:
        after: dict[str, object] = {name: True for name in ("segno", "coda") if element.find(name) is not None}
        ending, repeat = element.find("ending"), element.find("repeat")
        if ending is not None and ending.get("type") == "start":
            after["opens_ending"] = self._ending_numbers(ending)
        elif ending is not None:
            measure.closes_ending = True
        if repeat is not None and repeat.get("direction") == "forward":
            return after | {"opens_repeat": True}
        if repeat is None:
            measure.bar_line = style
            return after
        measure.repeats = self._times(repeat)
        hidden = style if style is BarLine.DOUBLE else BarLine.PLAIN  # light-heavy is how a repeat looks anyhow
        measure.bar_line = measure.facts.line or hidden
        return after

    def _read_middle(self, element: etree._Element, at: Fraction, measure: DraftMeasure) -> None:
        repeat = element.find("repeat")
        if repeat is not None:
            measure.cuts.append((at, repeat.get("direction") == "backward"))
        else:
            self._complaints.once(element.sourceline or 0, tr("A bar line inside a bar was left out."))

    def _times(self, element: etree._Element) -> int:
        """How often a backward repeat says that its section is played; 1 where it says nothing."""
        if element.get("times") is None:
            return 1
        times = decimal_number(element.get("times"))
        if times is not None and times in range(2, MAX_PASSES + 1):
            return int(times)
        text = tr(
            "A repeat cannot be played “{times}” times: it is played twice.", times=(element.get("times") or "")[:20]
        )
        self._complaints.once(element.sourceline or 0, text)
        return 2

    def _ending_numbers(self, element: etree._Element) -> tuple[int, ...]:
        """Passes that an ending is for; where the file names none, the one after the ending before it."""
        for text in (element.get("number") or "", element.text or ""):
            numbers = {int(word) for word in re.findall(r"\d+", text) if len(word) < 4}
            passes = tuple(sorted(number for number in numbers if 0 < number <= MAX_PASSES))
            if passes:
                self._last_ending = passes
                return passes
        self._last_ending = (max(self._last_ending, default=0) % MAX_PASSES + 1,)
        self._complaints.say(
            element.sourceline or 0,
            tr("An ending without a number: it is taken as ending {number}.", number=self._last_ending[0]),
        )
        return self._last_ending
