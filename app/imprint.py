"""What a file looked like when it was read or written, to tell later whether somebody else has changed it."""

from __future__ import annotations

import hashlib
from pathlib import Path

from core.values import dataclass


@dataclass(frozen=True)
class Imprint:
    """The content of a file. Times say nothing here: some disks keep them to two seconds, and copying keeps them.

    Attributes:
        size: Bytes.
        sha256: Their digest, 64 hexadecimal digits.
    """

    size: int
    sha256: str


def imprint(data: bytes) -> Imprint:
    """The imprint of a file that holds these bytes."""
    return Imprint(len(data), hashlib.sha256(data).hexdigest())


def imprint_of(path: Path) -> Imprint | None:
    """The imprint of a file as it is now; None where there is none.

    Raises:
        OSError: it is there and cannot be read.
    """
    try:
        return imprint(path.read_bytes())
    except FileNotFoundError:
        return None
