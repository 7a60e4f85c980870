"""A claim that ends with its process: however that ends, the system lets go of the lock and others can take it.

A hold is a small file that is locked. Whoever lets go takes the file away while it is still locked; so a lock counts
only where the file still stands under its name (else another has let go in between, and the next try is on a new one).
"""

from __future__ import annotations

import errno
import hashlib
import os
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from core.translation import tr

NO_LOCKS = {errno.ENOLCK, errno.EOPNOTSUPP, errno.ENOSYS}  # said by some network folders
LOOK_S = 0.02

if sys.platform == "win32":
    import msvcrt

    def _lock(handle: int) -> bool:
        try:
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True
else:
    import fcntl

    def _lock(handle: int) -> bool:
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as fault:
            return fault.errno in NO_LOCKS  # nobody can hold anything there, so nobody does
        return True


class Hold:
    """One claim.

    Args:
        path: The file that is locked; its folder is made where it is not there.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self._handle: int | None = None

    @property
    def is_held(self) -> bool:
        """Whether this claim is ours now."""
        return self._handle is not None

    def take(self) -> bool:
        """Claim it, unless another does. Whether it is ours.

        Raises:
            OSError: the file cannot be made.
        """
        while self._handle is None:
            self.path.parent.mkdir(parents=True, exist_ok=True)
            handle = os.open(self.path, os.O_RDWR | os.O_CREAT, 0o600)
            if not _lock(handle):
                os.close(handle)
                return False
            if _stands_at(handle, self.path):
                self._handle = handle
            else:
                os.close(handle)
        return True

    def let_go(self) -> None:
        """Give the claim up and take its file away."""
        if self._handle is None:
            return
        with suppress(OSError):
            self.path.unlink()
        os.close(self._handle)
        self._handle = None
        if sys.platform == "win32":  # where an open file cannot be taken away
            with suppress(OSError):
                self.path.unlink()


def hold_on(folder: Path, path: Path) -> Hold:
    """A claim, kept in a folder, on a file that stands elsewhere; whatever way leads to the file."""
    real = os.path.normcase(os.path.realpath(path))
    return Hold(folder / hashlib.sha256(os.fsencode(real)).hexdigest()[:32])


@contextmanager
def turn(hold: Hold, patience_s: float) -> Iterator[None]:
    """Hold something for as long as the block runs, waiting for it at first.

    Raises:
        TimeoutError: another holds it for longer than that.
    """
    end = time.monotonic() + patience_s
    while not hold.take():
        if time.monotonic() > end:
            raise TimeoutError(errno.ETIMEDOUT, tr("another window is busy with it"))
        time.sleep(LOOK_S)
    try:
        yield
    finally:
        hold.let_go()


def _stands_at(handle: int, path: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(handle), path.stat())
    except FileNotFoundError:
        return False
