"""Chord symbols: from the text over the staff to root, kind and bass, and back.

Kinds are the values of MusicXML 4.0 ``kind-value``; what no kind says (a flat fifth, an added ninth) is an
alteration, as MusicXML's ``degree``. Text is what ABC 2.1, 4.18 and common lead sheets write: ``Am7``, ``F#dim``,
``Bb``, ``G/B``, ``D7sus4``, ``N.C.``, the signs ♯ ♭ ♮ ° ø Δ, and a second choice in brackets as in ``G(Em)``.
"""

from __future__ import annotations

import re
from enum import Enum
from functools import lru_cache

from core.values import dataclass

NO_CHORD = "none"
ACCIDENTALS = {"": 0, "#": 1, "b": -1, "##": 2, "bb": -2, "♯": 1, "♭": -1, "♮": 0, "𝄪": 2, "𝄫": -2}
ACCIDENTAL_TEXT = {0: "", 1: "#", -1: "b", 2: "##", -2: "bb"}

# Spelling after the root -> kind of MusicXML 4.0. The first spelling of a kind is the one written by ``chord_text``.
KINDS = {
    "major": ("", "maj", "M", "major", "Maj"),
    "minor": ("m", "min", "-", "mi", "minor", "Min", "Mi"),
    "augmented": ("+", "aug", "Aug"),
    "diminished": ("dim", "°", "o", "º", "Dim"),
    "dominant": ("7", "dom7", "dom"),
    "major-seventh": ("maj7", "Maj7", "M7", "ma7", "j7", "Δ", "Δ7", "7M"),
    "minor-seventh": ("m7", "min7", "mi7", "-7"),
    "diminished-seventh": ("dim7", "°7", "o7", "º7"),
    "augmented-seventh": ("+7", "aug7", "7+"),
    "half-diminished": ("ø", "ø7", "Ø", "Ø7", "m7b5", "min7b5", "-7b5", "m7(b5)", "min7(b5)"),
    "major-minor": ("m(maj7)", "mmaj7", "m#7", "mMaj7", "mM7", "m(M7)", "minmaj7", "min(maj7)", "-maj7", "-M7", "mΔ"),
    "major-sixth": ("6", "maj6", "M6", "add6"),
    "minor-sixth": ("m6", "min6", "mi6", "-6"),
    "dominant-ninth": ("9", "dom9"),
    "major-ninth": ("maj9", "Maj9", "M9", "ma9", "Δ9"),
    "minor-ninth": ("m9", "min9", "mi9", "-9"),
    "dominant-11th": ("11", "dom11"),
    "major-11th": ("maj11", "Maj11", "M11", "ma11"),
    "minor-11th": ("m11", "min11", "mi11", "-11"),
    "dominant-13th": ("13", "dom13"),
    "major-13th": ("maj13", "Maj13", "M13", "ma13"),
    "minor-13th": ("m13", "min13", "mi13", "-13"),
    "suspended-second": ("sus2",),
    "suspended-fourth": ("sus4", "sus"),
    "power": ("5", "power"),
}  # fmt: skip
SPELLINGS = {spelling: kind for kind, spellings in KINDS.items() for spelling in spellings}
LONGEST_SPELLING = max(map(len, SPELLINGS))


class DegreeType(Enum):
    """How a degree changes the kind; values are MusicXML's ``degree-type-value``."""

    ADD = "add"
    ALTER = "alter"
    SUBTRACT = "subtract"


@dataclass(frozen=True, slots=True)
class Degree:
    """One change to the notes that a kind gives.

    Attributes:
        value: Scale degree counted from the root, 1 to 13.
        alter: Semitones from the degree of the major or dominant scale.
        type: Added, altered or left out.
    """

    value: int
    alter: int
    type: DegreeType


@dataclass(frozen=True, slots=True)
class Chord:
    """A chord symbol taken apart.

    Attributes:
        root: Letter ``"A"`` to ``"G"``; empty where the kind is ``"none"`` (no chord).
        root_alter: Semitones from the root's natural, -2 to 2.
        kind: A ``kind-value`` of MusicXML 4.0.
        kind_text: What is printed for the kind and the degrees, for example ``"m7"``.
        degrees: Changes beyond the kind.
        bass: Letter and alter of the bass note if another than the root, else None.
        second: The second choice printed in brackets after it (``Em`` of ``G(Em)``), or "".
    """

    root: str
    root_alter: int = 0
    kind: str = "major"
    kind_text: str = ""
    degrees: tuple[Degree, ...] = ()
    bass: tuple[str, int] | None = None
    second: str = ""


def _altered(kind: str, *degrees: tuple[int, int, DegreeType]) -> tuple[str, tuple[Degree, ...]]:
    return kind, tuple(Degree(*degree) for degree in degrees)


_SHARP_FIFTH = (5, 1, DegreeType.ALTER)
_NINTH, _11TH, _13TH = ((value, 0, DegreeType.ADD) for value in (9, 11, 13))

# Spellings whose sign means the fifth, or that no kind has a name for: kind and degrees.
COMPOUNDS = {
    **dict.fromkeys(("+9", "aug9", "9+"), _altered("dominant-ninth", _SHARP_FIFTH)),
    **dict.fromkeys(("+11", "aug11"), _altered("dominant-11th", _SHARP_FIFTH)),
    **dict.fromkeys(("+13", "aug13"), _altered("dominant-13th", _SHARP_FIFTH)),
    **dict.fromkeys(("+M7", "+maj7", "augmaj7", "augM7"), _altered("major-seventh", _SHARP_FIFTH)),
    **dict.fromkeys(("+M9", "+maj9", "augmaj9"), _altered("major-ninth", _SHARP_FIFTH)),
    **dict.fromkeys(("+M11", "+maj11", "augmaj11"), _altered("major-11th", _SHARP_FIFTH)),
    **dict.fromkeys(("+M13", "+maj13", "augmaj13"), _altered("major-13th", _SHARP_FIFTH)),
    **dict.fromkeys(("mM9", "mmaj9", "minmaj9", "m(maj9)"), _altered("major-minor", _NINTH)),
    **dict.fromkeys(("mM11", "mmaj11", "minmaj11"), _altered("major-minor", _NINTH, _11TH)),
    **dict.fromkeys(("mM13", "mmaj13", "minmaj13"), _altered("major-minor", _NINTH, _11TH, _13TH)),
    **dict.fromkeys(("dim9", "o9", "°9"), _altered("diminished-seventh", _NINTH)),
    **dict.fromkeys(("dim11", "o11", "°11"), _altered("diminished-seventh", _NINTH, _11TH)),
    **dict.fromkeys(("dimb9", "ob9", "°b9"), _altered("diminished-seventh", (9, -1, DegreeType.ADD))),
    **dict.fromkeys(("ø9",), _altered("half-diminished", _NINTH)),
    **dict.fromkeys(("ø11",), _altered("half-diminished", _NINTH, _11TH)),
    **dict.fromkeys(("ø13",), _altered("half-diminished", _NINTH, _11TH, _13TH)),
    **dict.fromkeys(("dom7dim5", "7dim5"), _altered("dominant", (5, -1, DegreeType.ALTER))),
}

_ROOT = re.compile(r"([A-G])(##|bb|[#b♯♭♮𝄪𝄫]?)")
_BASS = re.compile(r"([A-Ga-g])(##|bb|[#b♯♭♮𝄪𝄫]?)$")
_DEGREE = re.compile(r"(add|no|omit|sus)?([#b♯♭+-]?)(2|3|4|5|6|7|9|11|13)|sus")
_NO_CHORD = {"N.C.", "NC", "N.C", "n.c.", "nc", "N. C."}
MAX_LENGTH = 40  # characters; nobody prints a longer symbol


@lru_cache(maxsize=4096)
def parse_chord(text: str) -> Chord | None:
    """Take a chord symbol apart.

    Returns:
        The chord, or None where the text is not a chord symbol.
    Source: ABC 2.1, 4.18; kinds as in MusicXML 4.0.

    >>> parse_chord("F#m7/E")
    Chord(root='F', root_alter=1, kind='minor-seventh', kind_text='m7', degrees=(), bass=('E', 0), second='')
    >>> parse_chord("Fine") is None
    True
    """
    text = text.strip()
    if not text or len(text) > MAX_LENGTH:
        return None
    if text in _NO_CHORD:
        return Chord("", kind=NO_CHORD, kind_text=text)
    root = _ROOT.match(text)
    if root is None:
        return None
    rest, second = _second_choice(text[root.end() :])
    if second is None:
        return None
    body, bass = rest, None
    name, slash, below = rest.rpartition("/")
    if slash and (found := _BASS.match(below.strip())):
        body, bass = name, (found[1].upper(), ACCIDENTALS[found[2]])
    body = body.strip()
    kind = _kind(body)
    if kind is None:
        return None
    root_alter = ACCIDENTALS[root[2]]
    if bass == (root[1], root_alter):
        bass = None
    return Chord(root[1], root_alter, kind[0], body, kind[1], bass, second)


def chord_text(chord: Chord) -> str:
    """Text of a chord symbol; ``parse_chord`` reads it back to an equal chord.

    >>> chord_text(Chord("B", -1, "minor-seventh", "m7", bass=("F", 0)))
    'Bbm7/F'
    """
    if chord.kind == NO_CHORD:
        return chord.kind_text or "N.C."
    shown = chord.kind_text or kind_text(chord.kind, chord.degrees)
    bass = f"/{chord.bass[0]}{ACCIDENTAL_TEXT[chord.bass[1]]}" if chord.bass else ""
    second = f"({chord.second})" if chord.second else ""
    return f"{chord.root}{ACCIDENTAL_TEXT[chord.root_alter]}{shown}{bass}{second}"


def kind_text(kind: str, degrees: tuple[Degree, ...] = ()) -> str:
    """What is printed for a kind and its degrees where the file itself does not say.

    Args:
        kind: A ``kind-value`` of MusicXML 4.0; one that no spelling names is shown as major.
        degrees: Changes beyond the kind.
    """
    shown = KINDS[kind][0] if kind in KINDS else ""
    for degree in degrees:
        sign = ACCIDENTAL_TEXT.get(degree.alter, "")
        match degree.type:
            case DegreeType.SUBTRACT:
                shown += f"(no{degree.value})"
            case DegreeType.ADD if not sign:
                shown += f"(add{degree.value})"
            case _:
                shown += f"({sign}{degree.value})"
    return shown


def _second_choice(rest: str) -> tuple[str, str | None]:
    """Part the bracketed second choice from what stands before it; None where the brackets hold no chord.

    Brackets that belong to the kind, as in ``m(maj7)`` or ``7(b9)``, stay where they are.
    """
    if not rest.endswith(")"):
        return rest, ""
    before, bracket, inner = rest[:-1].rpartition("(")
    if not bracket:
        return rest, None
    if parse_chord(inner) is not None:
        return before, inner
    return rest, ""


def _kind(text: str) -> tuple[str, tuple[Degree, ...]] | None:
    """Kind and degrees of what stands between root and bass, or None where it is neither."""
    if text in SPELLINGS:
        return SPELLINGS[text], ()
    if text in COMPOUNDS:
        return COMPOUNDS[text]
    for length in range(min(len(text), LONGEST_SPELLING), -1, -1):
        kind = SPELLINGS.get(text[:length])
        if kind is not None and (degrees := _degrees(text[length:], kind)):
            return kind, degrees
    return None


def _degrees(text: str, kind: str) -> tuple[Degree, ...]:
    """Degrees that a text such as ``b5#9`` or ``(add9)`` names; empty where any part of it is something else."""
    text = text.translate(str.maketrans("", "", "(),/ "))
    degrees, place = [], 0
    while place < len(text):
        found = _DEGREE.match(text, place)
        if found is None:
            return ()
        place = found.end()
        word, sign, value = (found[1], found[2], int(found[3])) if found[3] else ("sus", "", 4)
        alter = {"": 0, "#": 1, "♯": 1, "+": 1, "b": -1, "♭": -1, "-": -1}[sign]
        if word in ("no", "omit"):
            degrees.append(Degree(value, 0, DegreeType.SUBTRACT))
        elif word == "sus":
            degrees += (Degree(3, 0, DegreeType.SUBTRACT), Degree(value, 0, DegreeType.ADD))
        elif word == "add":
            degrees.append(Degree(value, alter, DegreeType.ADD))
        elif sign:
            degrees.append(Degree(value, alter, DegreeType.ALTER if value == 5 else DegreeType.ADD))
        elif (kind, value) in (("major-sixth", 9), ("minor-sixth", 9)):  # 6/9 and m6/9
            degrees.append(Degree(9, 0, DegreeType.ADD))
        else:
            return ()
    return tuple(degrees)
