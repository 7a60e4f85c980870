"""The two ways a call into ``core`` can go wrong, and the repairs that a reader tells about.

A fault in a *tune or bowing* is never an exception: it is a ``Finding`` (``core.check``). A small fault in a *file*
is a ``Problem`` beside the tune that was read all the same. Only a file of which nothing can be read raises.
"""

from __future__ import annotations

from core.translation import tr
from core.values import dataclass


class BowbenchError(Exception):
    """Base of all errors raised by ``core`` on purpose; ``str()`` is one sentence that a user can read."""


class UnreadableFileError(BowbenchError):
    """Nothing in the file can be read; the sentence says what was found and what was expected.

    Attributes:
        line: Line in the file, counted from 1, or None where lines mean nothing (a broken zip).
    """

    def __init__(self, text: str, line: int | None = None) -> None:
        super().__init__(text if line is None else tr("line {line}: {text}", line=line, text=text))
        self.text = text
        self.line = line


class RefusedEditError(BowbenchError):
    """The edit has no meaning here (a slur from the last note, a hook over a rest); nothing was changed."""


@dataclass(frozen=True, slots=True)
class Problem:
    """Something in a file that was repaired or left out while the rest was read.

    Attributes:
        line: Line in the file, counted from 1; None where lines mean nothing.
        text: One sentence: what was found and what was made of it.
    """

    line: int | None
    text: str

    def __str__(self) -> str:
        return self.text if self.line is None else tr("line {line}: {text}", line=self.line, text=self.text)
