"""Chord symbols as MusicXML ``harmony``: the text as printed in, root, kind, degrees and bass out, and back."""

from __future__ import annotations

import re

from lxml import etree

from core.chords import ACCIDENTAL_TEXT, KINDS, NO_CHORD, Chord, Degree, DegreeType, kind_text, parse_chord
from core.writing.xml_tree import add

_OTHER = "other"  # a kind that the standard has no name for


def write_harmony(text: str) -> etree._Element:
    """A ``harmony`` element that shows exactly this text, and says what chord it is as far as that is known.

    Where root, kind and bass side by side would not show the text (``C♯``, ``G/B(Em)``), the kind shows all of it and
    root and bass are there but hidden, as the standard has it for ``root-step@text``.
    """
    element = etree.Element("harmony")
    chord = parse_chord(text) or Chord("", kind=_OTHER)
    suffix = chord.kind_text + (f"({chord.second})" if chord.second else "")
    bass = f"/{_shown(*chord.bass)}" if chord.bass else ""
    shown = bool(chord.root) and _shown(chord.root, chord.root_alter) + suffix + bass == text
    _add_pitch(element, "root", chord.root or "C", chord.root_alter, shown)
    add(element, "kind", chord.kind, text=suffix if shown else text)
    if chord.bass:
        _add_pitch(element, "bass", *chord.bass, shown)
    for degree in chord.degrees:
        child = add(element, "degree", print_object="no")  # the text of the kind shows it already
        add(child, "degree-value", degree.value)
        add(child, "degree-alter", degree.alter)
        add(child, "degree-type", degree.type.value)
    return element


def _shown(step: str, alter: int) -> str:
    return step + ACCIDENTAL_TEXT[alter]


def _add_pitch(harmony: etree._Element, name: str, step: str, alter: int, shown: bool) -> None:
    pitch = add(harmony, name)
    add(pitch, f"{name}-step", step, **({} if shown else {"text": ""}))
    if alter:
        add(pitch, f"{name}-alter", alter, **({} if shown else {"print_object": "no"}))


def read_harmony(element: etree._Element) -> str:
    """The text that a ``harmony`` element shows; empty where it names no root (numerals, functions)."""
    kind, root = element.find("kind"), element.find("root")
    if kind is None or root is None:
        return ""
    name = (kind.text or "").strip()
    shown = _shown_pitch(root, "root")
    if shown is None or name == NO_CHORD:
        return kind.get("text") or "N.C."
    degrees = tuple(degree for child in element.findall("degree") if (degree := _read_degree(child)))
    suffix = kind_text(name, degrees) if kind.get("text") is None else kind.get("text") + kind_text("", degrees)
    bass = element.find("bass")
    below = _shown_pitch(bass, "bass") if bass is not None else None
    separator = (bass.findtext("bass-separator") if bass is not None else None) or "/"
    return shown + suffix + (separator + below if below else "")


def is_known_kind(element: etree._Element) -> bool:
    """Whether what the element shows can stand for its kind: it brings its own text, or the kind has one."""
    kind = element.find("kind")
    return kind is not None and (kind.get("text") is not None or (kind.text or "").strip() in {*KINDS, NO_CHORD})


def _shown_pitch(element: etree._Element, name: str) -> str | None:
    """``F#``; None where the step is there but hidden."""
    step = element.find(f"{name}-step")
    if step is None or step.get("text") == "":
        return None
    text = step.get("text") or (step.text or "").strip()
    alter = element.find(f"{name}-alter")
    sign = "" if alter is None or alter.get("print-object") == "no" else _sign(alter.text)
    return text if sign and text.endswith(sign) else text + sign


def _sign(alter: str | None) -> str:
    """Accidental for a number of semitones; none for what is no such number."""
    text = (alter or "").strip()
    return ACCIDENTAL_TEXT.get(round(float(text)), "") if re.fullmatch(r"-?\d{1,2}(\.\d{1,4})?", text) else ""


def _read_degree(element: etree._Element) -> Degree | None:
    """A degree that is printed beside the kind, or None."""
    value = (element.findtext("degree-value") or "").strip()
    alter = (element.findtext("degree-alter") or "0").strip()
    how = (element.findtext("degree-type") or "").strip()
    if element.get("print-object") == "no" or not re.fullmatch(r"[1-9]\d?", value):
        return None
    whole = int(alter) if re.fullmatch(r"-?[012]", alter) else 0
    return Degree(int(value), whole, DegreeType(how) if how in {kind.value for kind in DegreeType} else DegreeType.ADD)
