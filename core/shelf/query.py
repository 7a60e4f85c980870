"""What a tune is looked for by; every part that is empty asks for nothing."""

from __future__ import annotations

import re

from core.shelf.errors import QueryError
from core.translation import tr
from core.tune import MODE_FIFTHS
from core.values import dataclass

SAME_MODES = {"ionian": "major", "aeolian": "minor"}
METER_SIGNS = {"c": "4/4", "c|": "2/2"}


@dataclass(frozen=True, slots=True)
class Query:
    """A search.

    Attributes:
        words: Beginnings of words, all of which stand somewhere in a tune's titles, tags, credits or file name.
        dance: Beginnings of words of the dance: ``jig`` finds slip jigs too.
        key: A tonic for any mode on it (``D``), or with its mode (``D major``, ``Edor``, ``F#m``); ``none``.
        meter: ``6/8``, ``C``, ``C|``, ``free``.
        notes: The first notes, as ``core.shelf.letters.parse_letters`` takes them.
        any_key: The notes are looked for in every key.
        status: One of ``core.shelf.remarks.STATUSES``; ``none`` for tunes without.
        tags: Whole tags, all of which the tune has; accents and capitals do not matter.
        bowing: Beginnings of words of a bowing's name, or its accent plan.
        order: A name of ``core.shelf.search.ORDERS``.
    """

    words: str = ""
    dance: str = ""
    key: str = ""
    meter: str = ""
    notes: str = ""
    any_key: bool = False
    status: str = ""
    tags: tuple[str, ...] = ()
    bowing: str = ""
    order: str = "best"


def parse_key(text: str) -> tuple[str, str]:
    """Read a key that was typed.

    Returns:
        Tonic as ``core.tune.Key.tonic`` writes it and mode; the mode "" for any. Both "" for tunes without a key.
    Raises:
        QueryError: it is no key.

    >>> parse_key("edor"), parse_key("F#m"), parse_key("Bb major"), parse_key("D")
    (('E', 'dorian'), ('F#', 'minor'), ('Bb', 'major'), ('D', ''))
    """
    typed = text.strip().lower().replace("♯", "#").replace("♭", "b")
    if typed in ("none", "no key", tr("no key").lower()):
        return "", ""
    match = re.fullmatch(r"([a-g])([#b]?)\s*([a-z]*)", typed)
    mode = _mode(match[3]) if match is not None else None
    if match is None or mode is None:
        raise QueryError(
            tr("“{text}” is no key: expected a letter, perhaps with a mode: D, Edor, F# minor", text=text.strip())
        )
    return match[1].upper() + match[2], SAME_MODES.get(mode, mode)


def _mode(word: str) -> str | None:
    """The mode that a word of three letters or more begins (ABC 2.1, 3.1.14); "" for none, None for no mode."""
    if word in ("", "m"):
        return "minor" if word else ""
    return next((name for name in MODE_FIFTHS if len(word) >= 3 and name.startswith(word)), None)


def parse_meter(text: str) -> str:
    """Read a metre that was typed, as ``core.tune.Meter`` writes it.

    Raises:
        QueryError: it is no metre.

    >>> parse_meter("C|"), parse_meter(" 6 / 8")
    ('2/2', '6/8')
    """
    typed = re.sub(r"\s", "", text).lower()
    typed = METER_SIGNS.get(typed, typed)
    if typed != "free" and re.fullmatch(r"\d+(\+\d+)*/\d+", typed) is None:
        raise QueryError(tr("“{text}” is no metre: expected figures such as 6/8, C, C| or free", text=text.strip()))
    return typed
