"""The readers that are fed: how input for each is made by lot, what is done with it, and in what it is kept.

A reader's input is always bytes, so that whatever goes wrong can be kept in a file and fed again.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml, read_mxl
from tests.fuzz import on_app, on_lessons, on_shelf, on_words
from tests.fuzz.on_lessons import feed_lessons


@dataclass(frozen=True)
class Reader:
    """One reader.

    Attributes:
        make: Makes one input by lot.
        feed: Feeds it; the number says which inputs are also followed further. Returns ``READ`` or ``REFUSED``; any
            exception is a bug.
        suffix: Of a file that such input is kept in.
    """

    make: Callable[[random.Random], bytes]
    feed: Callable[[bytes, int], str]
    suffix: str


READERS = {
    "abc": Reader(on_lessons.abc, partial(feed_lessons, lambda data: read_abc(decode(data))), ".abc"),
    "musicxml": Reader(on_lessons.score, partial(feed_lessons, read_musicxml), ".musicxml"),
    "mxl": Reader(on_lessons.mxl, partial(feed_lessons, read_mxl), ".mxl"),
    "fields": Reader(on_lessons.fields, partial(feed_lessons, read_musicxml), ".musicxml"),
    "shelf": Reader(on_shelf.shelf, on_shelf.feed_shelf, ".zip"),
    "settings": Reader(on_app.settings, on_app.feed_settings, ".ini"),
    "recovery": Reader(on_app.recovery, on_app.feed_recovery, ".musicxml"),
    "manifest": Reader(on_app.manifest, on_app.feed_manifest, ".json"),
    "arguments": Reader(on_words.arguments, on_words.feed_arguments, ".txt"),
}


def input_of(name: str, seed: int, number: int) -> bytes:
    """Input by its number; the same ever again."""
    return READERS[name].make(random.Random(f"{name} {seed} {number}"))
