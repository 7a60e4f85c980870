"""MusicXML elements that lessons have no place for: which are passed over in silence, and how the others are told."""

from __future__ import annotations

from lxml import etree

from core.reading.musicxml_draft import Complaints
from core.translation import tr, translatable

# Elements that say how the page looks or how a machine plays it, or what is told by others beside them.
SILENT = {
    "accidental", "beam", "bookmark", "chord", "directive", "direction-type", "divisions", "dot", "duration",
    "footnote", "for-part", "frame", "grace", "grouping", "instrument", "instrument-change", "instruments", "level",
    "link", "listen", "listening", "midi-device", "midi-instrument", "notehead", "notehead-text", "offset",
    "part-symbol", "pitch", "play", "print", "rest", "staff", "staff-details", "staves", "stem", "tie",
    "time-modification", "type", "voice",
}  # fmt: skip
KIND_WORDS = translatable({
    "accidental-mark": "accidentals on ornaments", "arpeggiate": "arpeggios", "bend": "bends", "bracket": "brackets",
    "caesura": "caesuras", "dashes": "dashed lines", "delayed-turn": "delayed turns", "doit": "doits",
    "dynamics": "dynamics", "falloff": "falloffs", "figured-bass": "figured bass", "fret": "frets",
    "glissando": "glissandos", "hammer-on": "hammer-ons", "harp-pedals": "harp pedals", "haydn": "Haydn signs",
    "lyric": "lyrics", "measure-style": "measure styles", "non-arpeggiate": "arpeggio brackets",
    "octave-shift": "octave lines", "other-direction": "other directions", "pedal": "pedal marks",
    "percussion": "percussion signs", "plop": "plops", "pluck": "plucking fingers", "principal-voice": "voice marks",
    "pull-off": "pull-offs", "scoop": "scoops", "shake": "shakes", "slide": "slides between notes",
    "soft-accent": "soft accents", "string": "string numbers", "symbol": "symbols",
    "thumb-position": "thumb positions", "tremolo": "tremolos", "wavy-line": "wavy lines", "wedge": "hairpins",
}, "in a list of what is left out")  # fmt: skip


def tell_left_out(complaints: Complaints, element: etree._Element) -> None:
    """Say that an element is left out, once for each kind; silently where nobody would miss it."""
    if element.tag not in SILENT:
        if element.tag in KIND_WORDS:
            kind = tr(KIND_WORDS[str(element.tag)], "in a list of what is left out")
        else:
            kind = tr("“{name}”", name=str(element.tag)[:40])
        complaints.once(element.sourceline or 0, tr("Left out, since lessons have no place for it: {kind}.", kind=kind))
