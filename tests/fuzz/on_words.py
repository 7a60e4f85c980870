"""What is typed on the command line: accent plans, tunings, tempos, ladders, letters, names of tunes."""

from __future__ import annotations

import argparse
import io
import random
from contextlib import redirect_stderr
from functools import cache, partial

from app import cli
from app.set_entries import EntryError, parse_entry
from core.errors import BowbenchError
from core.shelf.letters import parse_letters
from core.shelf.query import parse_key, parse_meter
from tests.fuzz.mutation import NUMBERS, TEXTS, spoil_text
from tests.fuzz.outcomes import LAW_EACH, READ, REFUSED, Reader, must_be_told

WORDS = (
    "on-beat", "0,3/2", "by-phrase", "G3 D4 A4 E5", "AEAE", "book.abc#3x2/Smooth", "60-100/4x2", "uuds", "dBAF",
    "Edor", "F# minor", "6/8", "C|",
    "112.5", "A4", "abc,midi", "5-8", "12", "-1",
)  # fmt: skip


def arguments(chance: random.Random) -> bytes:
    word = chance.choice(WORDS)
    match chance.randrange(4):
        case 0:
            word = chance.choice((*NUMBERS, *TEXTS))
        case 1:
            word = word + chance.choice((*NUMBERS, *WORDS))
        case _:
            word = spoil_text(word, chance)
    return word.encode("utf-8", "surrogatepass")


@cache
def _parser() -> argparse.ArgumentParser:

    return cli._parser()


OPTIONS = (
    ("check", "x", "--accents"), ("check", "x", "--tempo"), ("check", "x", "--tuning"), ("sound", "x", "--out",
    "y.mp3", "--bars"),
    ("sound", "x", "--out", "y.mp3", "--ladder"), ("sound", "x", "--out", "y.mp3", "--times"), ("sound", "x", "--out",
    "y.mp3", "--count-in"),
    ("sheet", "x", "--out", "y.pdf", "--from-bar"), ("sheet", "x", "--out", "y.pdf", "--copies"), ("sheet", "x",
    "--out", "y.pdf", "--before"),
    ("pack", "x", "--out", "y", "--jobs"), ("pack", "x", "--out", "y", "--only"), ("shelf", "rank", "--at-most"),
    ("shelf", "find", "--status"),
    ("bow", "x", "--accents", "none", "--out", "y", "--alternatives"), ("bow", "x", "--accents", "none", "--out", "y",
    "--tune"),
)  # fmt: skip


def feed_arguments(data: bytes, number: int) -> str:
    """Give a word to every option and to all that reads words."""
    word = data.decode("utf-8", "surrogatepass")
    taken = 0
    for options in OPTIONS if number % LAW_EACH == 0 else (OPTIONS[number % len(OPTIONS)],):
        try:
            with redirect_stderr(io.StringIO()):
                _parser().parse_args([*options[:-1], f"{options[-1]}={word}"])
            taken += 1
        except SystemExit as end:
            if end.code != 2:
                raise
    for parse in (parse_entry, parse_key, parse_meter, parse_letters, partial(parse_letters, any_key=True)):
        try:
            parse(word)
            taken += 1
        except (BowbenchError, EntryError) as refusal:
            must_be_told(str(refusal))
    return READ if taken else REFUSED


FED = {"arguments": Reader(arguments, feed_arguments, ".txt")}
