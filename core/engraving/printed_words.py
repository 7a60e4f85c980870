"""Words over and in the music as they are printed: chord names, numbers of endings, the tempo, where to go on."""

from __future__ import annotations

import re
from fractions import Fraction

from core.engraving.xml_text import escape
from core.tune import Tempo, note_value
from core.xml_characters import with_xml_characters

# Beside texts over notes, so that a finger is as wide as the head and clears the stem, and words clear bow signs. Never
# painted, and no text of ours begins or ends with it (``clean_text``).
BESIDE_TEXT = "\u00a0"
NOTE_GLYPHS = {  # base in quarter notes -> SMuFL note for texts
    Fraction(4): "\ue1d2", Fraction(2): "\ue1d3", Fraction(1): "\ue1d5", Fraction(1, 2): "\ue1d7",
    Fraction(1, 4): "\ue1d9",
}  # fmt: skip
DOT_GLYPH = "\ue1e7"

_CHORD_SIGN = re.compile(r"(?:(?<=^[A-G])|(?<=[/( ][A-G]))[b#]|[b#](?=\d)")


def clean_text(text: str) -> str:
    """One line of text that XML can hold: control characters become spaces, runs of spaces one."""
    return " ".join(with_xml_characters(text, " ").split())


def chord_text(text: str) -> str:
    """A chord name with real sharps and flats.

    >>> chord_text("Bb7/F#"), chord_text("Am7b5"), chord_text("C#dim(G)"), chord_text("B")
    ('B♭7/F♯', 'Am7♭5', 'C♯dim(G)', 'B')
    """
    return _CHORD_SIGN.sub(lambda found: "♭" if found[0] == "b" else "♯", clean_text(text))


def ending_text(passes: tuple[int, ...]) -> str:
    """The number over an ending.

    >>> ending_text((1,)), ending_text((1, 2, 3)), ending_text((1, 3))
    ('1.', '1.–3.', '1. 3.')
    """
    if len(passes) > 2 and passes == tuple(range(passes[0], passes[-1] + 1)):
        return f"{passes[0]}.–{passes[-1]}."
    return " ".join(f"{number}." for number in passes)


def tempo_text(tempo: Tempo) -> str:
    """A tempo mark as printed, its note as SMuFL characters."""
    base, dots = note_value(tempo.beat) or (Fraction(1), 0)
    beat = NOTE_GLYPHS.get(base, NOTE_GLYPHS[Fraction(1)]) + DOT_GLYPH * dots
    number = f"{float(tempo.per_minute):g}"
    words = clean_text(tempo.text)
    return f"{words} ({beat} = {number})" if words else f"{beat} = {number}"


def right_aligned(text: str) -> str:
    """Words as MEI that end where they stand, SMuFL characters in them as glyphs."""
    return f'<rend halign="right">{BESIDE_TEXT}{_with_glyphs(text)}</rend>'


def _with_glyphs(text: str) -> str:
    return re.sub(r"[\ue000-\uf8ff]+", lambda found: f'<rend glyph.auth="smufl">{found[0]}</rend>', escape(text))
