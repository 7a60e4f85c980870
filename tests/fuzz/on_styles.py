"""A style that was learned: its arrays, the text beside them and the archive that holds both, spoilt."""

from __future__ import annotations

import io
import json
import random
import zipfile
from contextlib import suppress
from dataclasses import replace
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.learn_command import _style_json
from app.style_words import style_text
from core.errors import RefusedEditError, UnreadableFileError
from core.style.carry_on import carry_on
from core.style.forest import Forest
from core.style.style import Style, book_of_1883, from_bytes, log_odds, to_bytes
from tests.fuzz import corpus
from tests.fuzz.mutation import NUMBERS, spoil_bytes, spoil_json
from tests.fuzz.on_lessons import _spoil_archive, pack
from tests.fuzz.outcomes import LAW_EACH, PIPELINE_EACH, READ, REFUSED, Reader, must_be_a_sentence

KEYS, TREES = 400, 3  # of the style that is spoilt
ABOUT = "about.npy"


@cache
def good_style() -> Style:
    """The style that comes with the program, with the first of its keys and trees alone."""
    style = book_of_1883()
    counts = style.counts
    few = replace(counts, keys=counts.keys[:KEYS], joined=counts.joined[:KEYS], seen=counts.seen[:KEYS])
    forests = tuple(
        tuple(Forest(**{name: array[:TREES] for name, array in forest.arrays().items()}) for forest in stage)
        for stage in style.forests
    )
    return replace(style, counts=few, forests=forests)


@cache
def good_arrays() -> dict[str, NDArray[Any]]:
    """What its file holds, by the name of the member."""
    with zipfile.ZipFile(io.BytesIO(to_bytes(good_style()))) as archive:
        return {name: np.load(io.BytesIO(archive.read(name))) for name in archive.namelist()}


def styles(chance: random.Random) -> bytes:
    """A style with its text, some of its arrays, its members or the archive spoilt."""
    arrays = good_arrays()
    members = {name: npy(array) for name, array in arrays.items()}
    way = chance.randrange(10)
    if way < 4:
        text = spoil_json(arrays[ABOUT].tobytes().decode(), chance)
        members[ABOUT] = npy(np.frombuffer(text.encode("utf-8", "surrogatepass"), np.uint8))
    else:
        for _ in range(chance.choice((1, 1, 2, 5))):
            _spoil_member(members, chance.choice(tuple(arrays)), chance)
    if chance.randrange(10) == 0:
        members.pop(chance.choice(tuple(members)))
    method = chance.choice((zipfile.ZIP_STORED,) * 8 + (zipfile.ZIP_DEFLATED,) * 3 + (zipfile.ZIP_LZMA,))
    data = pack(list(members.items()), method)
    return _spoil_archive(data, chance) if way >= 8 else data


def _spoil_member(members: dict[str, bytes], name: str, chance: random.Random) -> None:
    data = members[name]
    match chance.randrange(8):
        case 0:
            members[name] = spoil_bytes(data, chance)
        case 1:
            members[name] = members[chance.choice(tuple(members))]
        case 2:  # a shape that is not that of what follows
            members[name] = data.replace(b"'shape': (", b"'shape': (" + chance.choice(NUMBERS).encode() + b", ", 1)
        case 3:
            members[chance.choice(("more.npy", "alone.9.value.npy", "about", "../x"))] = data
        case _:
            members[name] = npy(_spoil_array(good_arrays()[name], chance))


def npy(array: NDArray[Any]) -> bytes:
    file = io.BytesIO()
    np.save(file, array, allow_pickle=True)  # which the reader must refuse
    return file.getvalue()


def _spoil_array(array: NDArray[Any], chance: random.Random) -> NDArray[Any]:
    """Another shape, other numbers, or one of them changed."""
    match chance.randrange(7):
        case 0:
            return array[: chance.choice((0, 1, -1))]
        case 1:
            return array.astype(chance.choice(("f8", "f2", "i1", "u8", "c16", "?", "U5", ">i4", "O")))
        case 2:
            empty, nothing = array[..., :0], np.zeros((), array.dtype)
            return chance.choice((empty, nothing, array.reshape(-1), array[None], array.T))
        case 3:
            return np.concatenate([array, array])
        case 4:
            return array[::-1]
    changed = array.copy()
    numbers = (0, 1, -1, 127, 2**15 - 1, 2**31, 2**63, float("nan"), float("inf"), -float("inf"), 1e38, -1e38, 1e4)
    with np.errstate(all="ignore"):
        for _ in range(chance.choice((1, 3, 50))):
            if changed.size:
                number = np.asarray(chance.choice(numbers)).astype(changed.dtype)
                changed.flat[chance.randrange(changed.size)] = number
    return changed


def feed_styles(data: bytes, number: int) -> str:
    """Read a style, tell of it, and ask it what it says of a tune."""
    try:
        style = from_bytes(data)
    except UnreadableFileError as refusal:
        must_be_a_sentence(str(refusal))
        return REFUSED
    assert style_text(style).encode()
    assert json.dumps(_style_json(style), ensure_ascii=False).encode()
    lesson = corpus.lessons()[number % len(corpus.lessons())]
    tune, bowing = lesson.tune, lesson.bowings[0]
    with np.errstate(over="raise", invalid="raise"):
        said = log_odds(style, tune, bowing, range(0, len(tune.bars), 2))
    assert np.isfinite(list(said.values())).all(), "odds that are no numbers"
    if number % LAW_EACH == 0:
        assert log_odds(from_bytes(to_bytes(style)), tune, bowing) == log_odds(style, tune, bowing)
    if number % PIPELINE_EACH == 0:
        with suppress(RefusedEditError):
            carry_on(tune, bowing, (), style)
    return READ


FED = {"styles": Reader(styles, feed_styles, ".npz")}
