"""Values of ABC's information fields (ABC 2.1, section 3), as ``core.reading.abc_fields`` reads them back."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from core.reading.note_lengths import split_length
from core.tune import SHARP_ORDER, Key, Meter, Tempo
from core.writing.abc_text import quoted

ACCIDENTALS = {2: "^^", 1: "^", 0: "=", -1: "_", -2: "__"}  # ABC 2.1, 4.2
_MODES = {
    "major": "", "minor": "m", "ionian": "ion", "dorian": "dor", "phrygian": "phr", "lydian": "lyd",
    "mixolydian": "mix", "aeolian": "aeo", "locrian": "loc",
}  # fmt: skip
_SIGNS = {("common", "4/4"): "C", ("cut", "2/2"): "C|"}
_WHOLE = 4  # quarter notes


def meter_text(meter: Meter) -> str:
    """Value of an ``M:`` field (3.1.6).

    >>> meter_text(Meter((2, 3, 2), 8)), meter_text(Meter((2,), 2, "cut")), meter_text(Meter(()))
    ('(2+3+2)/8', 'C|', 'none')
    """
    if not meter.groups:
        return "none"
    plain = str(meter)
    if len(meter.groups) > 1:
        plain = f"({'+'.join(map(str, meter.groups))})/{meter.unit}"
    return _SIGNS.get((meter.sign, plain), plain)


def key_text(key: Key) -> str:
    """Value of a ``K:`` field (3.1.14): tonic, mode and changed accidentals, or the accidentals one by one.

    >>> key_text(Key(-1, "dorian")), key_text(Key(2, "major", (("C", 0),))), key_text(Key(1, "none"))
    ('Gdor', 'D =c', 'G exp ^f')
    """
    if key.tonic:
        return " ".join([key.tonic + _MODES[key.mode], *_changes(key.altered)])
    alters = key.alters()
    changes = _changes((step, alters[step]) for step in _explicit_order(key) if alters[step])
    if not changes:
        return "none"
    return " ".join([Key(key.fifths).tonic, "exp", *changes])


def _changes(altered: Iterable[tuple[str, int]]) -> list[str]:
    return [ACCIDENTALS[alter] + step.lower() for step, alter in altered]


def _explicit_order(key: Key) -> list[str]:
    """Steps in the order written, those of the signature in the order of sharps or of flats before them."""
    named = [step for step, _ in key.altered]
    order = SHARP_ORDER if key.fifths >= 0 else SHARP_ORDER[::-1]
    return [step for step in order if step not in named] + named


def unit_text(unit: Fraction) -> str:
    """Value of an ``L:`` field (3.1.7) for a unit note length in quarter notes."""
    return _ratio(unit / _WHOLE)


def tempo_text(tempo: Tempo) -> str:
    """Value of a ``Q:`` field (3.1.8); a beat that no note value shows is written as several that are added.

    >>> print(tempo_text(Tempo(Fraction(3, 2), Fraction(225, 2), "Lively")))
    "Lively" 3/8=112.5
    """
    words = f"{quoted(tempo.text)} " if tempo.text else ""
    beat = " ".join(_ratio(value / _WHOLE) for value, _ in split_length(tempo.beat))
    per_minute = f"{float(tempo.per_minute):.3f}".rstrip("0").rstrip(".")
    return f"{words}{beat}={per_minute}"


def _ratio(value: Fraction) -> str:
    return f"{value.numerator}/{value.denominator}"


def part_order_text(order: Sequence[str], parts: set[str]) -> str:
    """Value of the header's ``P:`` field (3.1.9).

    Args:
        order: Names of parts as played.
        parts: Names that stand in the tune.
    Returns:
        The names; empty where one is no single letter or names no part of the tune, which the field cannot say.
    """
    can = all(name in parts and len(name) == 1 and name.isascii() and name.isalpha() for name in order)
    return "".join(order) if can else ""
