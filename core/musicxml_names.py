"""The names that MusicXML 4.0 gives to our values: tables that both the reader and the writer go by."""

from __future__ import annotations

from fractions import Fraction

from core.bowing import Articulation, Bow, Ornament
from core.tune import NOTE_BASES, Jump

VERSION = "4.0"

# Longest first, breve to 512th, as in NOTE_BASES. Longer and shorter ones (long, maxima, 1024th) are no values of ours.
TYPE_NAMES = (
    "breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th", "256th", "512th",
)  # fmt: skip
NAME_OF_TYPE = dict(zip(NOTE_BASES, TYPE_NAMES, strict=True))
BASE_OF_TYPE = {
    **dict(zip(TYPE_NAMES, NOTE_BASES, strict=True)),
    "long": Fraction(16), "maxima": Fraction(32), "1024th": Fraction(1, 256),
}  # fmt: skip

NAME_OF_ALTER = {-2: "flat-flat", -1: "flat", 0: "natural", 1: "sharp", 2: "double-sharp"}
ALTER_OF_NAME = {name: alter for alter, name in NAME_OF_ALTER.items()} | {"sharp-sharp": 2}

BOW_NAMES = {Bow.DOWN: "down-bow", Bow.UP: "up-bow"}
BOW_OF_NAME = {name: bow for bow, name in BOW_NAMES.items()}

# Signs that the standard has no element for are an other-ornament whose text is our name.
OTHER_ORNAMENT = "other-ornament"
ORNAMENT_NAMES = {
    Ornament.TRILL: "trill-mark", Ornament.TURN: "turn", Ornament.INVERTED_TURN: "inverted-turn",
    Ornament.MORDENT: "mordent", Ornament.UPPER_MORDENT: "inverted-mordent", Ornament.SLIDE: "schleifer",
    Ornament.ROLL: OTHER_ORNAMENT, Ornament.CUT: OTHER_ORNAMENT, Ornament.BOWED_TRIPLET: OTHER_ORNAMENT,
}  # fmt: skip
ORNAMENT_OF_NAME = {name: sign for sign, name in ORNAMENT_NAMES.items() if name != OTHER_ORNAMENT}
ORNAMENT_OF_TEXT = {sign.value: sign for sign, name in ORNAMENT_NAMES.items() if name == OTHER_ORNAMENT}

# The element of ``notations`` that holds each sign; the fermata stands there by itself.
ARTICULATION_HOLDERS = dict.fromkeys(Articulation, "articulations") | {
    Articulation.OPEN_STRING: "technical",
    Articulation.HARMONIC: "technical",
    Articulation.SNAP_PIZZICATO: "technical",
    Articulation.FERMATA: "",
}
ARTICULATION_OF_NAME = {sign.value: sign for sign in Articulation}

# The attribute of ``sound`` that makes each jump, and its value; the words beside it say how the jump ends.
JUMP_SOUNDS = {jump: ("dalsegno", "segno") if jump.value.startswith("D.S.") else ("dacapo", "yes") for jump in Jump}
