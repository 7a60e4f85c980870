"""Spares imports what PySide does to each of them; import it before any module that is imported after PySide.

PySide puts an ``__import__`` of its own in the place of Python's, which lets a module choose other spellings of Qt's
names (``from __feature__ import snake_case``). To know which modules could be meant it reads the source of every one
that is imported from then on, and ``linecache`` keeps it (seen in 6.11.3). None of ours chooses other spellings, so the
import of Python, which PySide leaves in ``builtins``, can be put back.
"""

from __future__ import annotations

import builtins

from app import support_code  # noqa: F401  loads PySide, which puts its own in place

if builtins.__import__ is getattr(builtins, "__feature_import__", None):  # nobody else has put one over it
    builtins.__import__ = getattr(builtins, "__orig_import__", builtins.__import__)
