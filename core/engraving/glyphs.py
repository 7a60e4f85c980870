"""Outlines of the music font (Leipzig, SIL Open Font License), read from the engraver's own data.

Outlines are in 1/1000 em with y *up*, as in the font; code points are SMuFL's, in four hex digits.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import NamedTuple


class Command(NamedTuple):
    """One step of an outline.

    Attributes:
        letter: ``M`` move to, ``L`` line to, ``C`` cubic curve to, ``Z`` close.
        numbers: Absolute x and y in turn: one point for M and L, two control points and the end for C, none for Z.
    """

    letter: str
    numbers: tuple[float, ...] = ()


DOWN_BOW = "E610"  # stringsDownBow
UP_BOW = "E612"  # stringsUpBow
WAVE = "EAAF"  # wiggleGlissando, one wave of it: a roll, which ABC 2.1 (4.14) writes "~" and SMuFL has no sign for

_FLAT = 1e-9  # a coefficient that counts as zero
_TOKEN = re.compile(r"[A-Za-z]|-?\d*\.?\d+(?:e-?\d+)?")
_NUMBERS = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "Z": 0}  # after each command
_ODD = {"H": (0,), "V": (1,)} | {letter: (0, 1) * (count // 2) for letter, count in _NUMBERS.items() if count != 1}
_OUTLINE = re.compile(r'\bd="([^"]*)"')


@cache
def engraver_data() -> Path:
    """The folder of the engraver's fonts; the engraver itself is not loaded for it.

    Raises:
        ModuleNotFoundError: there is no engraver.
    """
    spec = find_spec("verovio")
    if spec is None or spec.origin is None:
        raise ModuleNotFoundError("verovio is not installed", name="verovio")
    return Path(spec.origin).parent / "data"


@cache
def glyph_outline(code: str) -> tuple[Command, ...]:
    """Outline of a glyph; empty where the font has no such glyph."""
    source = engraver_data() / "Leipzig" / f"{code}.xml"
    found = _OUTLINE.search(source.read_text("utf-8")) if source.is_file() else None
    return parse_outline(found[1]) if found else ()


@cache
def glyph_box(code: str) -> tuple[float, float, float, float]:
    """Left, bottom, right and top of a glyph's outline; zeros for an empty glyph."""
    outline = glyph_outline(code)
    return outline_box(outline) if outline else (0.0, 0.0, 0.0, 0.0)


def outline_box(commands: tuple[Command, ...]) -> tuple[float, float, float, float]:
    """Least x, least y, greatest x and greatest y that an outline reaches; control points do not count."""
    xs: list[float] = []
    ys: list[float] = []
    for letter, numbers in commands:
        if letter == "C":
            xs.extend(_turns(xs[-1], *numbers[::2]))
            ys.extend(_turns(ys[-1], *numbers[1::2]))
        xs.extend(numbers[-2::2])
        ys.extend(numbers[-1::2])
    return min(xs), min(ys), max(xs), max(ys)


def _turns(start: float, first: float, second: float, end: float) -> Iterator[float]:
    """Values at which one coordinate of a cubic curve turns back between its ends."""
    low, high = (start, end) if start < end else (end, start)
    if low <= first <= high and low <= second <= high:
        return
    a = end - start + 3 * (first - second)
    b = 2 * (start - 2 * first + second)
    c = first - start
    if abs(a) < _FLAT:
        places = [-c / b] if abs(b) > _FLAT else []
    else:
        root = b * b - 4 * a * c
        places = [(-b + sign * math.sqrt(root)) / (2 * a) for sign in (-1, 1)] if root >= 0 else []
    for t in places:
        if 0 < t < 1:
            s = 1 - t
            yield s * s * s * start + 3 * s * s * t * first + 3 * s * t * t * second + t * t * t * end


def parse_outline(text: str) -> tuple[Command, ...]:
    """Read SVG path data (commands M L H V C S Q Z, absolute or relative) into absolute M, L, C and Z.

    Raises:
        ValueError: another command, or numbers missing or spare.
    """
    tokens = _TOKEN.findall(text)
    commands: list[Command] = []
    x = y = start_x = start_y = 0.0
    mirror: tuple[float, float] | None = None  # second control point of the curve just before
    letter, place = "", 0
    while place < len(tokens):
        if tokens[place].isalpha():
            letter, place = tokens[place], place + 1
        count = _NUMBERS.get(letter.upper())
        if count is None or (count and len(tokens) < place + count):
            raise ValueError(f"cannot read this outline: {text[:60]!r}")
        values = [float(token) for token in tokens[place : place + count]]
        place += count
        if letter.islower():
            values = [value + (y if odd else x) for value, odd in zip(values, _ODD[letter.upper()], strict=True)]
        last_mirror, mirror = mirror, None
        match letter.upper():
            case "Z":
                commands.append(Command("Z"))
                x, y, letter = start_x, start_y, ""
                continue
            case "M":
                start_x, start_y = values
                commands.append(Command("M", tuple(values)))
                letter = "l" if letter == "m" else "L"
            case "L":
                commands.append(Command("L", tuple(values)))
            case "H":
                values = [values[0], y]
                commands.append(Command("L", tuple(values)))
            case "V":
                values = [x, values[0]]
                commands.append(Command("L", tuple(values)))
            case "Q":
                qx, qy, ex, ey = values
                first, second = _toward(x, y, qx, qy), _toward(ex, ey, qx, qy)
                commands.append(Command("C", (*first, *second, ex, ey)))
            case "S":
                first = (2 * x - last_mirror[0], 2 * y - last_mirror[1]) if last_mirror else (x, y)
                commands.append(Command("C", (*first, *values)))
                mirror = (values[0], values[1])
            case "C":
                commands.append(Command("C", tuple(values)))
                mirror = (values[2], values[3])
        x, y = values[-2:]
    return tuple(commands)


def _toward(x: float, y: float, to_x: float, to_y: float) -> tuple[float, float]:
    """Two thirds of the way: a control point of the cubic curve that equals a quadratic one."""
    return x + (to_x - x) * 2 / 3, y + (to_y - y) * 2 / 3
