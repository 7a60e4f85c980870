"""MusicXML typed short: notes, measures and scores of one part or more, as text."""

from __future__ import annotations

import re
from fractions import Fraction

DIVISIONS = 24  # of a quarter note
HEAD = (
    f"<attributes><divisions>{DIVISIONS}</divisions><key><fifths>0</fifths><mode>major</mode></key>"
    "<time><beats>4</beats><beat-type>4</beat-type></time></attributes>"
)


def pitch(name: str) -> str:
    """``C#5`` or ``Bb4`` as an element; ``z`` as a rest."""
    if name == "z":
        return "<rest/>"
    match = re.fullmatch(r"([A-G])([#b]*)(\d)", name)
    assert match, name
    step, signs, octave = match.groups()
    alter = signs.count("#") - signs.count("b")
    return f"<pitch><step>{step}</step>{f'<alter>{alter}</alter>' if alter else ''}<octave>{octave}</octave></pitch>"


def note(name: str, quarters: float | Fraction, inner: str = "", before: str = "", attributes: str = "") -> str:
    """A note of so many quarter notes.

    Args:
        name: See ``pitch``.
        quarters: Its length.
        inner: XML behind the duration.
        before: XML in front of the pitch, such as ``<chord/>``.
        attributes: Of the note element.
    """
    duration = Fraction(quarters) * DIVISIONS
    length = str(duration) if duration.denominator == 1 else f"{float(duration):.6f}"
    return f"<note {attributes}>{before}{pitch(name)}<duration>{length}</duration>{inner}</note>"


def grace(name: str, inner: str = "", attributes: str = "") -> str:
    """A grace note."""
    return f"<note><grace {attributes}/>{pitch(name)}<type>eighth</type>{inner}</note>"


def slur(kind: str, number: int = 1) -> str:
    """Notations with one end of a slur."""
    return f'<notations><slur type="{kind}" number="{number}"/></notations>'


def part(*measures: str, part_id: str = "P1") -> str:
    """A part; the first measure gets divisions, C major and common time unless it has attributes of its own."""
    text = ""
    for number, measure in enumerate(measures, start=1):
        head = HEAD if number == 1 and "<attributes" not in measure else ""
        text += f'<measure number="{number}">{head}{measure}</measure>'
    return f'<part id="{part_id}">{text}</part>'


def score(*measures: str, header: str = "") -> str:
    """A score of one part named Fiddle."""
    return scores(part(*measures), names=("Fiddle",), header=header)


def scores(*parts: str, names: tuple[str, ...], header: str = "") -> str:
    """A score of several parts with ids P1, P2 ..."""
    listed = "".join(
        f'<score-part id="P{number}"><part-name>{name}</part-name></score-part>'
        for number, name in enumerate(names, start=1)
    )
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<score-partwise version="4.0">{header}<part-list>{listed}</part-list>{"".join(parts)}</score-partwise>'
    )
