"""What the catalogue keeps of a lesson, and the mark by which a tune is known again wherever it stands."""

from __future__ import annotations

import hashlib

from core.lesson import Lesson
from core.order import sections
from core.shelf.folding import storable
from core.shelf.letters import Opening, openings
from core.tune import Bar, Note, Tune
from core.values import dataclass

FACTS_VERSION = 1  # one more whenever other facts would be read from the same file: every file is then read again
CONTENT_VERSION = b"1"
HASH_BYTES = 16
NOT_INDEXED = {"lyrics", "notes", "history", "file"}  # credits that are prose, or about the file itself


@dataclass(frozen=True, slots=True)
class BowingFacts:
    """One bowing by its name and accent plan (as ``str(AccentPlan)`` writes it)."""

    name: str
    accents: str


@dataclass(frozen=True, slots=True)
class Facts:
    """One tune of a file.

    Attributes:
        content: ``content_hash`` of the tune.
        number: Number in its book (ABC ``X:``).
        title, other_titles, dance, credits: As the tune has them, each one line.
        key, meter: Of the first bar, as ``str`` writes them.
        tonic, mode: Of the key; both "" where it names none.
        parts: Parts of at least one full bar.
        bars: Written bars, as they are numbered.
        openings: First notes.
        bowings: In the order of the lesson.
    """

    content: bytes
    number: int
    title: str
    other_titles: tuple[str, ...]
    dance: str
    credits: tuple[str, ...]
    key: str
    tonic: str
    mode: str
    meter: str
    parts: int
    bars: int
    openings: tuple[Opening, ...]
    bowings: tuple[BowingFacts, ...]


def facts_of(lesson: Lesson) -> Facts:
    """Read off a lesson what the catalogue keeps."""
    tune = lesson.tune
    first = tune.bars[0]
    return Facts(
        content=content_hash(tune),
        number=tune.number,
        title=storable(tune.title),
        other_titles=tuple(map(storable, tune.other_titles)),
        dance=storable(tune.dance),
        credits=tuple(storable(credit.text) for credit in tune.credits if credit.kind not in NOT_INDEXED),
        key=str(first.key),
        tonic=first.key.tonic,
        mode=first.key.mode if first.key.tonic else "",
        meter=str(first.meter),
        parts=_parts(tune),
        bars=max(bar.number for bar in tune.bars),
        openings=openings(tune),
        bowings=tuple(BowingFacts(storable(bowing.name), str(bowing.accents)) for bowing in lesson.bowings),
    )


def content_hash(tune: Tune) -> bytes:
    """A mark of what is played: pitches, rhythm, metres, keys, repeats and signs of order.

    Titles, credits, tempo, chords and note ids do not count, nor does any bowing, so that a tune keeps its mark when
    it is bowed, renamed, or saved from a book as a lesson.

    Returns:
        ``HASH_BYTES`` bytes.
    """
    mark = hashlib.blake2b(CONTENT_VERSION, digest_size=HASH_BYTES)
    lines, before, signature = [" ".join(tune.part_order)], None, ""
    for bar in tune.bars:
        if before is None or bar.meter is not before.meter or bar.key is not before.key:
            signature = f"{bar.meter}|{bar.key.fifths}|{bar.key.mode}|{bar.key.altered}"
        lines.append(f"{signature}|{_signs_text(bar)}|{'|'.join(map(_note_text, bar.notes))}")
        before = bar
    mark.update("\n".join(lines).encode("utf-8", "replace"))
    return mark.digest()


def file_hash(data: bytes) -> bytes:
    """A mark of a file's bytes, of ``HASH_BYTES`` bytes."""
    return hashlib.blake2b(data, digest_size=HASH_BYTES).digest()


def _signs_text(bar: Bar) -> str:
    return (
        f"{bar.start.numerator}/{bar.start.denominator}|{bar.opens_repeat}|{bar.repeats}|{bar.ending}|{bar.line.value}|"
        f"{bar.part}|{bar.segno}|{bar.coda}|{bar.to_coda}|{bar.fine}|{bar.jump.value if bar.jump else ''}"
    )


def _note_text(note: Note) -> str:
    length = note.length
    pitches = " ".join([f"{pitch.step}{pitch.alter}{pitch.octave}" for pitch in note.pitches])
    return f"{length.numerator}/{length.denominator}{'-' if note.held else ' '}{pitches}"


def _parts(tune: Tune) -> int:
    """Sections that hold a full bar; what stands alone before the first repeat sign is a pick-up and no part."""
    full = sum(any(not tune.bars[index].is_pickup for index in section) for section in sections(tune))
    return max(full, 1)
