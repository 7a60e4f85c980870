"""Keys and metres of MusicXML ``attributes``: element in; value, and a sentence where it had to give way, out."""

from __future__ import annotations

import re

from lxml import etree

from core.translation import tr
from core.tune import MODE_FIFTHS, SHARP_ORDER, STEP_SEMITONES, Key, Meter

FREE = Meter(())
NO_KEY = Key(0, "none")
CLEF_G = {"G", "none", ""}
_MAX_FIFTHS = 14  # seven double sharps
_MAX_COUNT = 128
_UNITS = {2**power for power in range(8)}


def read_key(element: etree._Element) -> tuple[Key, str]:
    """Read a key signature.

    Returns:
        The key, and one sentence where it is not quite what the file says, else "".
    """
    if element.find("key-step") is not None:
        return _read_altered(element)
    text = (element.findtext("fifths") or "0").strip()
    if not re.fullmatch(r"[+-]?\d{1,4}", text):
        return NO_KEY, tr("“{text}” is no number of sharps or flats: the key is read as having none.", text=text[:20])
    fifths = int(text)
    mode = (element.findtext("mode") or "none").strip().lower()
    mode = mode if mode in MODE_FIFTHS else "none"
    if abs(fifths) > _MAX_FIFTHS:
        return NO_KEY, tr(
            "A key of {count} accidentals cannot be shown: the key is read as having none.", count=abs(fifths)
        )
    if abs(fifths) > 7:
        sign, order = (1, SHARP_ORDER) if fifths > 0 else (-1, SHARP_ORDER[::-1])
        return Key(7 * sign, mode, tuple((step, 2 * sign) for step in order[: abs(fifths) - 7])), ""
    return Key(fifths, mode), ""


def _read_altered(element: etree._Element) -> tuple[Key, str]:
    """A key that lists its altered steps."""
    altered: dict[str, int] = {}
    complaint = ""
    for step, alter in zip(element.findall("key-step"), element.findall("key-alter"), strict=False):
        name, text = (step.text or "").strip().upper(), (alter.text or "").strip()
        if name not in STEP_SEMITONES or not re.fullmatch(r"[+-]?\d{1,2}(\.\d{1,4})?", text):
            complaint = tr("A step of the key signature that cannot be understood was left out.")
            continue
        semitones = max(-2, min(2, round(float(text))))
        if semitones != float(text):
            complaint = tr("Alterations in the key signature between the semitones were moved to the nearest.")
        altered[name] = semitones
    return Key(0, "none", tuple(altered.items())), complaint


def read_meter(element: etree._Element) -> tuple[Meter | None, str]:
    """Read a time signature.

    Returns:
        The metre, or None where it cannot be understood, and one sentence where it is not quite what the file says.
    """
    if element.find("senza-misura") is not None:
        return FREE, ""
    pairs = []
    for beats, unit in zip(element.findall("beats"), element.findall("beat-type"), strict=False):
        pairs.append(((beats.text or "").strip(), (unit.text or "").strip()))
    groups: list[tuple[list[int], int]] = []
    for beats_text, unit_text in pairs:
        if not re.fullmatch(r"\d{1,3}(\s*\+\s*\d{1,3})*", beats_text) or not re.fullmatch(r"\d{1,3}", unit_text):
            return None, tr(
                "“{beats}/{unit}” is no metre: the one before goes on.", beats=beats_text[:20], unit=unit_text[:20]
            )
        numbers, bottom = [int(word) for word in beats_text.split("+")], int(unit_text)
        if bottom not in _UNITS or not all(numbers) or sum(numbers) > _MAX_COUNT:
            return None, tr(
                "“{beats_text}/{unit_text}” cannot be counted as a metre: the one before goes on.",
                beats_text=beats_text[:20],
                unit_text=unit_text[:20],
            )
        groups.append((numbers, bottom))
    if not groups:
        return None, tr("A time signature without figures: the one before goes on.")
    bottom = max(unit for _, unit in groups)
    counts = tuple(count * bottom // unit for numbers, unit in groups for count in numbers)
    if sum(counts) > _MAX_COUNT:
        return None, tr(
            "“{beats_text}/{unit_text}” cannot be counted as a metre: the one before goes on.",
            beats_text="+".join(map(str, counts)),
            unit_text=bottom,
        )
    symbol = element.get("symbol", "")
    complaint = ""
    if len({unit for _, unit in groups}) > 1:
        complaint = tr(
            "A metre of different units is shown as {metre}/{unit}.", metre="+".join(map(str, counts)), unit=bottom
        )
    elif element.find("interchangeable") is not None:
        complaint = tr("The second of two metres that take turns was left out.")
    sign = symbol if symbol in ("common", "cut") and len(counts) == 1 and counts[0] == bottom else ""
    return Meter(counts, bottom, sign), complaint
