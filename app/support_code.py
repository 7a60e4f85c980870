"""Spares the compiling of what PySide brings as source text; import it before any module of PySide.

Signatures and help texts of PySide are 120 KB of Python inside its library, which every process unpacks and compiles
anew (seen in 6.11.3): a fourth of what a window with nothing in it takes. What ``compile`` makes of these texts is kept
with the byte code of this module, by their digests, and where Python keeps no byte code it is not kept either. A file
that is damaged, of another Python or of another PySide is passed over and written anew.
"""

from __future__ import annotations

import builtins
import hashlib
import marshal
import os
import sys
from collections.abc import Callable
from contextlib import suppress
from importlib.util import MAGIC_NUMBER, cache_from_source
from pathlib import Path
from types import CodeType
from typing import Any

OWNER = "shibokensupport/"  # how the names of these texts begin
DIGEST_BYTES = 32

Kept = dict[bytes, CodeType]
"""Code by the SHA-256 of its text."""


def kept_code(path: Path) -> Kept:
    """What is kept in a file; nothing where that is not whole or not for this Python."""
    with suppress(OSError, ValueError, EOFError, TypeError):
        data = path.read_bytes()
        digest, body = data[:DIGEST_BYTES], data[DIGEST_BYTES:]
        if digest == hashlib.sha256(MAGIC_NUMBER + body).digest():
            kept: Kept = marshal.loads(body)
            return kept
    return {}


def keep_code(path: Path, kept: Kept) -> None:
    """Write a file whole or not at all; not being able to is no harm."""
    body = marshal.dumps(kept)
    beside = path.with_name(f"{path.name}.{os.getpid()}")
    with suppress(OSError):
        path.parent.mkdir(parents=True, exist_ok=True)
        try:
            beside.write_bytes(hashlib.sha256(MAGIC_NUMBER + body).digest() + body)
            beside.replace(path)
        except OSError:
            beside.unlink(missing_ok=True)  # each start on a full disk would leave one more


def import_with(path: Path, load: Callable[[], object]) -> None:
    """Import PySide with what is kept in a file, and keep there what was not."""
    known, used, real = kept_code(path), {}, builtins.compile

    def compile_once(source: Any, filename: Any, mode: str, *args: Any, **kwargs: Any) -> Any:
        if not (isinstance(source, bytes) and str(filename).startswith(OWNER)):
            return real(source, filename, mode, *args, **kwargs)
        digest = hashlib.sha256(source).digest()
        used[digest] = known.get(digest) or real(source, filename, mode, *args, **kwargs)
        return used[digest]

    builtins.compile = compile_once
    try:
        load()
    finally:
        builtins.compile = real
    if used.keys() - known.keys() and not sys.dont_write_bytecode:
        keep_code(path, used)


def _load() -> None:
    import PySide6.QtCore  # noqa: F401


if "shiboken6" in sys.modules:
    _load()
else:
    import_with(Path(cache_from_source(__file__)).with_suffix(".support"), _load)
