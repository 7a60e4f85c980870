"""Text made plain for finding: small letters without accents, so that ``Faíche`` is found by ``faiche``."""

from __future__ import annotations

import re
import unicodedata

# Letters that Unicode does not take apart (Unicode 15, UnicodeData.txt has no decomposition for them)
WHOLE_LETTERS = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i", "æ": "ae", "œ": "oe"})
APOSTROPHES = re.compile(r"(?<=\w)['’ʼ`´](?=\w)")
WORD = re.compile(r"[^\W_]+")


def folded(text: str) -> str:
    """Small letters, accents and other marks taken off.

    >>> folded("Ståle Ørjan’s Faíche")
    'stale orjan’s faiche'
    """
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(char for char in apart if not unicodedata.combining(char)).translate(WHOLE_LETTERS)


def words(text: str) -> list[str]:
    """The words of a text as they are looked for; an apostrophe inside a word is left out.

    >>> words("O'Ferry's reel, no. 2")
    ['oferrys', 'reel', 'no', '2']
    """
    return WORD.findall(APOSTROPHES.sub("", folded(text)))


def indexed(text: str) -> str:
    """The words under which a text is found: cut at apostrophes, and whole.

    >>> indexed("O'Ferry's reel")
    'o ferry s reel oferrys'
    """
    cut = WORD.findall(folded(text))
    return " ".join([*cut, *(word for word in words(text) if word not in cut)])


def sort_key(title: str) -> str:
    """What titles are put in order by: their words, without an English article in front."""
    found = words(title)
    return " ".join(found[1:] if len(found) > 1 and found[0] in ("the", "a", "an") else found)


def storable(text: str, longest: int = 400) -> str:
    """Text as the catalogue takes it: one line without control characters and half characters, cut where very long."""
    kept = "".join(" " if unicodedata.category(char) in ("Cc", "Cs", "Zl", "Zp") else char for char in text[:longest])
    return " ".join(kept.split())
