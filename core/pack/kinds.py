"""What can go into a pack for each lesson."""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum

from core.translation import tr, translatable


class Kind(Enum):
    """A kind of file."""

    SHEETS = "sheets"
    MUSICXML = "musicxml"
    ABC = "abc"
    MIDI = "midi"
    AUDIO = "audio"


WORDS = translatable({
    Kind.SHEETS: "Sheets to print",
    Kind.MUSICXML: "The lesson in MusicXML",
    Kind.ABC: "ABC with every bow marked",
    Kind.MIDI: "MIDI of each bowing",
    Kind.AUDIO: "Sound of each bowing, with chords (MP3)",
})  # fmt: skip


def ready() -> frozenset[Kind]:
    """Kinds that can be made here: audio where libsndfile is there."""
    try:
        import soundfile  # noqa: F401
    except (ImportError, OSError):  # OSError: the package is there, the library it calls is not
        return frozenset(Kind) - {Kind.AUDIO}
    return frozenset(Kind)


def parse_kinds(text: str) -> frozenset[Kind]:
    """Read kinds with commas between them.

    >>> sorted(kind.name for kind in parse_kinds("abc, midi"))
    ['ABC', 'MIDI']

    Raises:
        ValueError: a word is none of them; one sentence.
    """
    names = [name.strip() for name in text.split(",")]
    try:
        return frozenset(Kind(name) for name in names)
    except ValueError:
        wrong = next(name for name in names if name not in {kind.value for kind in Kind})
        raise ValueError(
            tr("“{wrong}” does not go into a pack: expected {known}", wrong=wrong, known=in_order_text(Kind))
        ) from None


def in_order(kinds: Iterable[Kind]) -> list[Kind]:
    """Kinds in the order in which a pack has them."""
    chosen = set(kinds)
    return [kind for kind in Kind if kind in chosen]


def in_order_text(kinds: Iterable[Kind]) -> str:
    """Kinds as ``parse_kinds`` reads them."""
    return ",".join(kind.value for kind in in_order(kinds))
