"""What the parts of a picture are."""

from __future__ import annotations

from enum import Enum


class Kind(Enum):
    """What a shape or text of a picture belongs to."""

    STAFF = "staff"  # lines, bar lines, clef, key, metre
    NOTE = "note"  # heads, stems, flags, dots, accidentals; rests
    GRACE = "grace"
    ROOM = "room"  # for grace notes of another bowing; never drawn
    BOW = "bow"  # room for a bow sign; never drawn
    BEAM = "beam"
    TUPLET = "tuplet"
    SLUR = "slur"
    TIE = "tie"
    CHORD = "chord"
    WORDS = "words"
    PART = "part"
    ENDING = "ending"
    NUMBER = "number"  # of the bar
    SIGN = "sign"  # ornaments, articulations, fingerings
    OTHER = "other"

    __hash__ = object.__hash__  # members are singletons; Enum's own hash is slow, and every shape is asked its kind
