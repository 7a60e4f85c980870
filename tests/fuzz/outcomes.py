"""A reader that is fed: what may come of an input, how often more is done with it, what every refusal must be."""

from __future__ import annotations

import random
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

READ, REFUSED = "read", "refused"
LAW_EACH = 25  # inputs: what was read of one is written and read again
PIPELINE_EACH = 50  # inputs: one goes through everything
WINDOW_EACH = 1000  # settings: with one the whole window is opened
LONGEST_SENTENCE = 400  # characters


@dataclass(frozen=True)
class Reader:
    """One reader: how input for it is made by lot, what is done with it, and in what it is kept.

    Input is always bytes, so that whatever goes wrong can be kept in a file and fed again.

    Attributes:
        make: Makes one input by lot.
        feed: Feeds it; the number says which inputs are also followed further. Returns ``READ`` or ``REFUSED``; any
            exception is a bug.
        suffix: Of a file that such input is kept in.
    """

    make: Callable[[random.Random], bytes]
    feed: Callable[[bytes, int], str]
    suffix: str


def must_be_a_sentence(text: str) -> None:
    """What a user is told."""
    assert text.endswith("."), text
    assert len(text) < LONGEST_SENTENCE, text


def must_be_told(text: str) -> None:
    """What stands beside a word that was typed, which is quoted whole."""
    assert text.strip(), text


@contextmanager
def scratch_folder() -> Iterator[Path]:
    """A folder in memory, where there is one."""
    memory = Path("/dev/shm")
    with tempfile.TemporaryDirectory(prefix="bowbench-fuzz-", dir=memory if memory.is_dir() else None) as folder:
        yield Path(folder)


def without_name(data: bytes, folder: Path) -> bytes:
    """What was made in a scratch folder, as it would be in any other: the folder's name is told by as many dots."""
    name = folder.name.encode()
    return data.replace(name, b"." * len(name))
