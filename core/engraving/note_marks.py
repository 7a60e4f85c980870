"""What is drawn over a note or at its head, as MEI: articulations, ornaments, and room for bow signs."""

from __future__ import annotations

from core.bowing import Articulation, Ornament
from core.engraving.printed_words import BESIDE_TEXT

ARTICULATIONS = {  # articulation -> value of MEI's artic
    Articulation.ACCENT: "acc", Articulation.STRONG_ACCENT: "marc", Articulation.STACCATO: "stacc",
    Articulation.TENUTO: "ten", Articulation.DETACHED_LEGATO: "ten-stacc", Articulation.STACCATISSIMO: "stacciss",
    Articulation.SPICCATO: "spicc",
    Articulation.OPEN_STRING: "open", Articulation.HARMONIC: "harm", Articulation.SNAP_PIZZICATO: "snap",
}  # fmt: skip
BESIDE_HEAD = frozenset({Articulation.STACCATO, Articulation.TENUTO, Articulation.DETACHED_LEGATO})
CONTROL_SIGNS = {  # articulation -> an element of its own that points at the note
    Articulation.BREATH_MARK: "<breath {at}/>",
    Articulation.FERMATA: '<fermata {at} place="above"/>',
    Articulation.STRESS: '<mordent {at} place="above" glyph.auth="smufl" glyph.num="U+E4B6"/>',
    Articulation.UNSTRESS: '<mordent {at} place="above" glyph.auth="smufl" glyph.num="U+E4B8"/>',
}  # fmt: skip
ROLL_ROOM = "ECA2"  # never drawn, and as large as a turn: a wave as wide stands there
ORNAMENTS = {  # ornament -> an element that points at the note
    Ornament.ROLL: f'<turn {{at}} place="above" glyph.auth="smufl" glyph.num="U+{ROLL_ROOM}"/>',
    Ornament.TURN: '<turn {at} place="above" form="upper"/>',
    Ornament.INVERTED_TURN: '<turn {at} place="above" form="lower"/>',
    Ornament.TRILL: '<trill {at} place="above"/>',
    Ornament.MORDENT: '<mordent {at} place="above" form="lower"/>',
    Ornament.UPPER_MORDENT: '<mordent {at} place="above" form="upper"/>',
    Ornament.SLIDE: '<mordent {at} place="above" glyph.auth="smufl" glyph.num="U+E587"/>',
    Ornament.CUT: f'<ornam {{at}} place="above">{BESIDE_TEXT}/{BESIDE_TEXT}</ornam>',
    Ornament.BOWED_TRIPLET: f'<fing {{at}} place="above">{BESIDE_TEXT}3{BESIDE_TEXT}</fing>',  # and a stroked stem
}
# What keeps room for one row of bow signs or two: never drawn, and as tall and wide as they are at our size
# (``picture.SIGN_SCALE``, ``picture.ROW_STEP``) with some air above. The engraver sets a fermata outside slurs,
# articulation, ornaments and fingering, so these hug the notes and nothing stands in the unused room of a second row.
BOW_ROOM = '<fermata {at} place="above" glyph.auth="smufl" glyph.num="U+{glyph}"/>'
ROOM_GLYPHS = ("EB1C", "EC84")
