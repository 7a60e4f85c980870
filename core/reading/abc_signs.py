"""What the decorations of ABC 2.1 (4.14, 4.16, 4.19) mean in a tune and a bowing: tables from name to meaning."""

from __future__ import annotations

from enum import Enum

from core.bowing import Articulation, Bow, Ornament
from core.tune import Jump
from core.values import dataclass


class BarSign(Enum):
    """Signs of playing order that a decoration can put on a bar."""

    SEGNO = "segno"
    CODA = "coda"
    TO_CODA = "to coda"
    FINE = "fine"


@dataclass(frozen=True, slots=True)
class Finger:
    """A fingering.

    Attributes:
        text: ``"0"`` to ``"4"``.
    """

    text: str


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A decoration of the standard that a bowing has no place for.

    Attributes:
        kind: The sentence that says so, with a place for its name.
    """

    kind: str


Meaning = Ornament | Articulation | Bow | BarSign | Jump | Finger | LeftOut

_DYNAMICS = LeftOut("Dynamics such as !{name}! are left out.")
_PHRASE = LeftOut("Phrase marks such as !{name}! are left out.")
_OTHER = LeftOut("Marks that the fiddle page has no sign for such as !{name}! are left out.")

# ABC 2.1, 4.14; the last ones are common additions (from memory), read where their meaning is plain.
LONG: dict[str, Meaning] = {
    "trill": Ornament.TRILL,
    "trill(": Ornament.TRILL,
    "trill)": _OTHER,
    "lowermordent": Ornament.MORDENT,
    "mordent": Ornament.MORDENT,
    "uppermordent": Ornament.UPPER_MORDENT,
    "pralltriller": Ornament.UPPER_MORDENT,
    "roll": Ornament.ROLL,
    "turn": Ornament.TURN,
    "turnx": Ornament.TURN,
    "invertedturn": Ornament.INVERTED_TURN,
    "invertedturnx": Ornament.INVERTED_TURN,
    "slide": Ornament.SLIDE,
    ">": Articulation.ACCENT,
    "accent": Articulation.ACCENT,
    "emphasis": Articulation.ACCENT,
    "fermata": Articulation.FERMATA,
    "invertedfermata": Articulation.FERMATA,
    "tenuto": Articulation.TENUTO,
    "snap": Articulation.SNAP_PIZZICATO,
    "wedge": Articulation.STACCATISSIMO,
    "open": Articulation.OPEN_STRING,
    "breath": Articulation.BREATH_MARK,
    "upbow": Bow.UP,
    "downbow": Bow.DOWN,
    **{str(finger): Finger(str(finger)) for finger in range(5)},
    "5": _OTHER,
    "+": _OTHER,
    "plus": _OTHER,
    "thumb": _OTHER,
    "arpeggio": _OTHER,
    **dict.fromkeys(("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff", "sfz"), _DYNAMICS),
    **dict.fromkeys(("crescendo(", "<(", "crescendo)", "<)", "diminuendo(", ">(", "diminuendo)", ">)"), _DYNAMICS),
    **dict.fromkeys(("shortphrase", "mediumphrase", "longphrase"), _PHRASE),
    "segno": BarSign.SEGNO,
    "coda": BarSign.CODA,
    "dacoda": BarSign.TO_CODA,
    "fine": BarSign.FINE,
    "D.S.": Jump.DAL_SEGNO,
    "D.C.": Jump.DA_CAPO,
    "dacapo": Jump.DA_CAPO,
    # beyond the standard
    "staccato": Articulation.STACCATO,
    "spiccato": Articulation.SPICCATO,
    "staccatissimo": Articulation.STACCATISSIMO,
    "stress": Articulation.STRESS,
    "unstress": Articulation.UNSTRESS,
    "harmonic": Articulation.HARMONIC,
    "^": Articulation.STRONG_ACCENT,
    "marcato": Articulation.STRONG_ACCENT,
    "tr": Ornament.TRILL,
    "cut": Ornament.CUT,
    "sf": _DYNAMICS,
    "fz": _DYNAMICS,
    "fp": _DYNAMICS,
    "D.C.alfine": Jump.DA_CAPO_AL_FINE,
    "D.C.alcoda": Jump.DA_CAPO_AL_CODA,
    "D.S.alfine": Jump.DAL_SEGNO_AL_FINE,
    "D.S.alcoda": Jump.DAL_SEGNO_AL_CODA,
    "dalsegno": Jump.DAL_SEGNO,
    "tocoda": BarSign.TO_CODA,
    "Segno": BarSign.SEGNO,
    "Coda": BarSign.CODA,
    "Fine": BarSign.FINE,
}

# ABC 2.1, 4.16: the letters' meaning until a U: field gives them another. The dot cannot be given one.
SHORT = {
    ".": "staccato", "~": "roll", "H": "fermata", "L": "accent", "M": "lowermordent", "O": "coda",
    "P": "uppermordent", "S": "segno", "T": "trill", "u": "upbow", "v": "downbow",
}  # fmt: skip

# Words in quotation marks that are signs and not chords, small letters without dots and spaces; common practice.
QUOTED: dict[str, Meaning] = {
    "tr": Ornament.TRILL,
    "segno": BarSign.SEGNO,
    "fine": BarSign.FINE,
    "dc": Jump.DA_CAPO,
    "dacapo": Jump.DA_CAPO,
    "ds": Jump.DAL_SEGNO,
    "dalsegno": Jump.DAL_SEGNO,
    "dcalfine": Jump.DA_CAPO_AL_FINE,
    "dacapoalfine": Jump.DA_CAPO_AL_FINE,
    "dsalfine": Jump.DAL_SEGNO_AL_FINE,
    "dalsegnoalfine": Jump.DAL_SEGNO_AL_FINE,
    "dcalcoda": Jump.DA_CAPO_AL_CODA,
    "dsalcoda": Jump.DAL_SEGNO_AL_CODA,
    "coda": BarSign.CODA,
    "tocoda": BarSign.TO_CODA,
}
