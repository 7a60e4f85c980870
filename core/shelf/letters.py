"""The first notes of a tune as letters, and what a teacher types to find them.

Three ways to write notes, each one letter a step, all of them our own:

- *contour*: ``u`` up, ``d`` down, ``s`` same, from each note to the next, by sounding pitch;
- *names*: the letter of each note on the staff, ``A`` to ``G``, whatever its octave and accidental;
- *moves*: from each note to the next in steps of the scale, 0 to 6 upwards (a fall of one step is 6), so that a tune
  is the same in any key and octave.

Rests are left out, held notes belong to the note before, and of a double stop the upper note counts. A tune with a
pick-up is known by its first note and by the first note of its first full bar.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from enum import Enum
from itertools import islice, pairwise

from core.shelf.errors import QueryError
from core.translation import tr
from core.tune import STEPS, Note, Tune
from core.values import dataclass

NOTES_KEPT = 24


class Way(Enum):
    """How notes are written as letters; values are the columns of the catalogue."""

    CONTOUR = "contour"
    NAMES = "names"
    MOVES = "moves"


@dataclass(frozen=True, slots=True)
class Opening:
    """The first notes from one place on, at most ``NOTES_KEPT`` of them, in each of the three ways."""

    contour: str
    names: str
    moves: str


@dataclass(frozen=True, slots=True)
class Pattern:
    """How the first notes must begin."""

    way: Way
    letters: str


def openings(tune: Tune) -> tuple[Opening, ...]:
    """The first notes from the start, and again from the first full bar where the tune starts with a pick-up."""
    starts = [0]
    if tune.bars[0].is_pickup and len(tune.bars) > 1:
        starts.append(1)
    found = (_opening(note for bar in tune.bars[start:] for note in bar.notes) for start in starts)
    return tuple(opening for opening in found if opening.names)


def _opening(notes: Iterable[Note]) -> Opening:
    heard = list(islice((note.pitches[-1] for note in notes if note.pitches and not note.held), NOTES_KEPT))
    pairs = list(pairwise(heard))
    return Opening(
        contour="".join("u" if b.midi > a.midi else "d" if b.midi < a.midi else "s" for a, b in pairs),
        names="".join(pitch.step for pitch in heard),
        moves=_moves("".join(pitch.step for pitch in heard)),
    )


def _moves(names: str) -> str:
    return "".join(str((STEPS.index(b) - STEPS.index(a)) % len(STEPS)) for a, b in pairwise(names))


def parse_letters(text: str, any_key: bool = False) -> Pattern:
    """Read what was typed.

    Args:
        text: A contour such as ``u d s`` or ``uuds``, else note names such as ``dBAF``. Spaces, commas and hyphens may
            stand between. Small letters u, d and s alone are a contour: type ``DD`` for two notes D.
        any_key: Take note names for their moves, so that they are found in every key.
    Raises:
        QueryError: it is neither.

    >>> parse_letters("u d s").letters, parse_letters("dBAF").letters, parse_letters("dBAF", any_key=True).letters
    ('uds', 'DBAF', '565')
    """
    typed = re.sub(r"[\s,-]+", "", text)
    if re.fullmatch(r"[uds]+", typed) or re.fullmatch(r"[UDS]*[US][UDS]*", typed):
        return Pattern(Way.CONTOUR, typed.lower())
    if not re.fullmatch(r"[A-Ga-g]+", typed):
        raise QueryError(
            tr(
                "“{text}” are no first notes: expected u, d and s for up, down and same, or note names A to G",
                text=text.strip(),
            )
        )
    names = typed.upper()
    if not any_key:
        return Pattern(Way.NAMES, names)
    if len(names) < 2:
        raise QueryError(tr("To find first notes in any key, type two notes or more."))
    return Pattern(Way.MOVES, _moves(names))
