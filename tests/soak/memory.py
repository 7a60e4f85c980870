"""Memory of this process: what it holds, and how much of that is in use.

What is resident stays so where free places lie between places in use: the C library gives back whole pages alone, and
Python whole arenas of 1 MiB. So growth of what is resident does not tell whether anything is gathered; bytes in use do,
as the C library counts them (``mallinfo2``, glibc 2.33 or later) and Python beside it for its small objects.
"""

from __future__ import annotations

import ctypes
import os
import re
import sys
import tempfile
from contextlib import suppress
from pathlib import Path

KIB = 1024


class _MallInfo(ctypes.Structure):
    """``struct mallinfo2`` of malloc.h."""

    _fields_ = (
        ("arena", ctypes.c_size_t),
        ("ordblks", ctypes.c_size_t),
        ("smblks", ctypes.c_size_t),
        ("hblks", ctypes.c_size_t),
        ("hblkhd", ctypes.c_size_t),  # bytes in blocks that are mapped by themselves
        ("usmblks", ctypes.c_size_t),
        ("fsmblks", ctypes.c_size_t),
        ("uordblks", ctypes.c_size_t),  # bytes in all other blocks in use
        ("fordblks", ctypes.c_size_t),
        ("keepcost", ctypes.c_size_t),
    )


def resident() -> int:
    """KiB of this process that are in memory."""
    return int(Path("/proc/self/status").read_text().split("VmRSS:")[1].split()[0])


def in_use() -> int:
    """KiB that were asked for and not given back, by Python, Qt and all libraries; 0 where the C library does not tell.

    Whatever is mapped without the C library (files, programs, stacks of threads) is left out.
    """
    try:
        told = ctypes.CDLL("libc.so.6").mallinfo2
    except (OSError, AttributeError):
        return 0
    told.restype = _MallInfo
    info = told()
    return (info.uordblks + info.hblkhd + _small_objects()) // KIB


def give_back() -> None:
    """Give what is free back to the system, as far as it can be."""
    with suppress(OSError, AttributeError):  # another C library
        ctypes.CDLL("libc.so.6").malloc_trim(0)


def _small_objects() -> int:
    """Bytes of Python's small objects, which it cuts from arenas that it maps itself."""
    tell = getattr(sys, "_debugmallocstats", None)
    if tell is None:
        return 0
    sys.stderr.flush()
    with tempfile.TemporaryFile() as file:
        stderr = os.dup(2)
        os.dup2(file.fileno(), 2)
        try:
            tell()
        finally:
            os.dup2(stderr, 2)
            os.close(stderr)
        file.seek(0)
        found = re.search(rb"# bytes in allocated blocks +=\s+([\d,]+)", file.read())
    return int(found[1].replace(b",", b"")) if found else 0
