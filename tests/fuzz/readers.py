"""The readers that are fed, by name, and the input of each by number.

What feeds a reader is imported when it is asked for, so that a process begins without what others need.
"""

from __future__ import annotations

import os
import random
import time
from importlib import import_module

from tests.fuzz.outcomes import READ, Reader

READERS = {  # and the module whose table ``FED`` has it
    "abc": "on_lessons",
    "musicxml": "on_lessons",
    "mxl": "on_lessons",
    "fields": "on_lessons",
    "shelf": "on_shelf",
    "settings": "on_app",
    "recovery": "on_app",
    "manifest": "on_app",
    "styles": "on_styles",
    "arguments": "on_words",
}


TOO_MUCH = 2**30  # bytes


def _stumble(data: bytes, number: int) -> str:
    """A reader full of faults, by which the harness itself is tried."""
    match number:
        case 2:
            raise ValueError("a fault")
        case 5:
            while True:
                time.process_time()
        case 6:
            return f"{len(b' ' * TOO_MUCH)} bytes"
        case 8:
            os.abort()
    return READ


FAULTY = Reader(lambda chance: chance.randbytes(4), _stumble, ".txt")


def reader_of(name: str) -> Reader:
    """The reader of this name."""
    return FAULTY if name == "faulty" else import_module(f"tests.fuzz.{READERS[name]}").FED[name]


def input_of(name: str, seed: int, number: int) -> bytes:
    """Input by its number; the same ever again."""
    return reader_of(name).make(random.Random(f"{name} {seed} {number}"))
