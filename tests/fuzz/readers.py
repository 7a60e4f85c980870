"""The readers that are fed: how input for each is made by lot, what is done with it, and in what it is kept.

A reader's input is always bytes, so that whatever goes wrong can be kept in a file and fed again.
"""

from __future__ import annotations

import os
import random
import time
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml, read_mxl
from tests.fuzz import on_app, on_lessons, on_shelf, on_words
from tests.fuzz.on_lessons import feed_lessons
from tests.fuzz.outcomes import READ


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


def _stumble(data: bytes, number: int) -> str:
    """A reader full of faults, by which the harness itself is tried."""
    match number:
        case 2:
            raise ValueError("a fault")
        case 5:
            while True:
                time.process_time()
        case 8:
            os.abort()
    return READ


FAULTY = Reader(lambda chance: chance.randbytes(4), _stumble, ".txt")


def reader_of(name: str) -> Reader:
    """The reader of this name."""
    return FAULTY if name == "faulty" else READERS[name]


def input_of(name: str, seed: int, number: int) -> bytes:
    """Input by its number; the same ever again."""
    return reader_of(name).make(random.Random(f"{name} {seed} {number}"))
