"""Ways to spoil good input: bytes, words of a text, elements of a tree, values of JSON.

All chance comes from the caller, so that what was made once can be made again.
"""

from __future__ import annotations

import json
import random
from collections.abc import Sequence
from copy import deepcopy
from typing import Any

from lxml import etree

BYTES = (
    b"\0",
    b"\xff",
    b"\xfe\xff",
    b"\xef\xbb\xbf",
    b"\xc3",
    b"\x1a",
    b"\r",
    b"\n",
    b"<",
    b"&",
    b'"',
    b"'",
    b"]]>",
    b"%",
)
NUMBERS = (
    "0", "-1", "1", "2", "7", "64", "255", "256", "2000", "65536", "999999999", "2147483648", "9223372036854775808",
    "1e9", "1e999999999", "1e-999999999", "-0", "0.3", "1/0", "0/1", "nan", "inf", "9" * 30, "9" * 5000, "٣", "½",
    "0x10",
)  # fmt: skip
TEXTS = (
    "", " ", "\n", "x", "\u202e", "e\u0301" * 30, "\U0001f3bb", "\ufeff", "\u2028", "a" * 3000, "../../x",
    "/etc/passwd",
    "C:\\con", "%s%n", "{}", "[]", "null", "true", "<b>", "&amp;", "&#0;", "b0n1", "start", "stop", "yes", "--", "\\",
)  # fmt: skip
HALF_CHARACTERS = ("\ud800", "a\udc80", "\ufffe", "\0", "\x01", "\x7f")  # which JSON can name and XML cannot hold
VALUES: tuple[Any, ...] = (
    None, True, False, 0, -1, 1, 2**31, 2**63, 10**30, 0.5, 1e308, float("nan"), float("inf"), "", "x", [], {}, [[]],
    [None],
    {"": 0}, ["a", 1, "b"],
)  # fmt: skip


def spoil_bytes(data: bytes, chance: random.Random) -> bytes:
    """Flip, cut, double and put in bytes at some places."""
    spoilt = bytearray(data)
    for _ in range(chance.choice((1, 1, 2, 3, 8, 30))):
        if not spoilt:
            return chance.choice(BYTES)
        first = chance.randrange(len(spoilt))
        stop = min(first + chance.choice((1, 2, 4, 16, 200)), len(spoilt))
        match chance.randrange(6):
            case 0:
                spoilt[first] ^= 1 << chance.randrange(8)
            case 1:
                del spoilt[first:stop]
            case 2:
                spoilt[first:first] = spoilt[first:stop] * chance.choice((1, 2, 40))
            case 3:
                spoilt[first:first] = chance.choice(BYTES)
            case 4:
                spoilt[first:stop] = chance.randbytes(stop - first)
            case 5:
                there = chance.randrange(len(spoilt))
                spoilt[first:stop] = spoilt[there : there + stop - first]
    return bytes(spoilt[: chance.randrange(len(spoilt) + 1)] if chance.randrange(20) == 0 else spoilt)


def spoil_words(words: list[str], chance: random.Random, others: Sequence[str]) -> list[str]:
    """Drop, double, swap and put in words, now and then a great many times over.

    Args:
        words: The words of a text.
        chance: Where all chance comes from.
        others: Words to put in.
    """
    words = list(words)
    for _ in range(chance.choice((1, 2, 3, 6, 15))):
        place = chance.randrange(len(words) + 1)
        other = chance.choice(others)
        match chance.randrange(7):
            case 0:
                del words[place : place + chance.choice((1, 1, 3, 20))]
            case 1:
                words[place:place] = words[place : place + chance.choice((1, 4, 30))]
            case 2 | 3:
                words.insert(place, other)
            case 4 if words:
                words[chance.randrange(len(words))] = other
            case 5 if words:
                here, there = chance.randrange(len(words)), chance.randrange(len(words))
                words[here], words[there] = words[there], words[here]
            case _:
                words[place:place] = [other] * min(chance.choice((2, 5, 70, 300)), 1 + 2000 // (len(other) + 1))
    return words


def spoil_tree(root: etree._Element, chance: random.Random) -> None:
    """Drop, double, move, nest, rename and refill elements of a tree in place."""
    for _ in range(chance.choice((1, 1, 2, 4, 9))):
        elements = [element for element in root.iter(etree.Element) if element is not root]
        if not elements:
            return
        element, other = chance.choice(elements), chance.choice(elements)
        match chance.randrange(9):
            case 0:
                element.getparent().remove(element)
            case 1:
                for _ in range(chance.choice((1, 1, 3, 80))):
                    element.addnext(_copy(element))
            case 2 | 3:
                element.text = chance.choice(NUMBERS if chance.randrange(2) else TEXTS).replace("\0", "")
            case 4:
                name = chance.choice([*element.attrib, "number", "type", "id", "location", "times", "print-object"])
                element.set(name, chance.choice(NUMBERS if chance.randrange(2) else TEXTS))
            case 5:
                element.tag = other.tag
            case 6:
                other.append(_copy(element))
            case 7:
                for name in list(element.attrib)[:1]:
                    del element.attrib[name]
            case 8 if element not in other.iterancestors() and other is not element:
                other.addnext(element)


def _copy(element: etree._Element) -> etree._Element:
    copy = deepcopy(element)
    copy.tail = None
    return copy


def spoil_json(text: str, chance: random.Random) -> str:
    """Spoil a JSON text: one or two values in it, or its characters."""
    if chance.randrange(5) == 0:
        return spoil_text(text, chance)
    box = [json.loads(text)]
    for _ in range(chance.choice((1, 1, 2))):
        places = list(_places(box))
        holder, key = chance.choice(places)
        match chance.randrange(6):
            case 0:
                del holder[key]
            case 1 | 2:
                holder[key] = deepcopy(chance.choice(VALUES))
            case 3:
                holder[key] = chance.choice((*NUMBERS, *TEXTS, *HALF_CHARACTERS))
            case 4:
                there, other = chance.choice(places)
                if other in there if isinstance(there, dict) else other < len(there):
                    holder[key] = deepcopy(there[other])
            case 5:
                holder[key] = [holder[key]] * chance.choice((1, 3, 50))
        if not box:
            return ""
    return json.dumps(box[0])


def _places(value: Any) -> Any:
    """(holder, key) of every value inside a value."""
    keys = value.keys() if isinstance(value, dict) else range(len(value)) if isinstance(value, list) else ()
    for key in list(keys):
        yield value, key
        yield from _places(value[key])


def spoil_text(text: str, chance: random.Random) -> str:
    """Spoil a text character by character."""
    letters = spoil_words(
        list(text), chance, (*NUMBERS, *TEXTS, *HALF_CHARACTERS, "[" * 3000, '"', "{", "}", ",", ":", "=")
    )
    return "".join(letters)
