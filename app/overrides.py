"""Lets a mistake in an overridden method of Qt be told, where it would end the program; import it before our classes.

Up to Python 3.11 an exception that the interpreter raises itself (``[][0]``, say) is held as a class and a message
until somebody catches it. PySide (seen in 6.10.3 and 6.11.3) takes the message for the exception when such a one comes
out of a method that Qt called, and the process dies of it. Catching it once inside the method makes it whole.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import wraps
from types import FunctionType
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtGui import QAccessibleInterface

IS_NEEDED = sys.version_info < (3, 12)  # from then on every exception is whole when it is raised


def made_whole(method: Callable[..., Any]) -> Callable[..., Any]:
    """The method, from which every exception comes whole."""

    @wraps(method)
    def call(*values: Any, **named: Any) -> Any:
        try:
            return method(*values, **named)
        except Exception:
            raise

    return call


def _overridden(made: type) -> dict[str, FunctionType]:
    """Methods of a class that Qt may call: those that a class of Qt has too."""
    of_qt = [base for base in made.__mro__ if base.__module__.startswith("PySide6")]
    return {
        name: value
        for name, value in vars(made).items()
        if isinstance(value, FunctionType) and not name.startswith("__") and any(hasattr(base, name) for base in of_qt)
    }


def _make_whole(made: type) -> None:
    """Called for each new class below those of Qt."""
    for name, method in _overridden(made).items():
        setattr(made, name, made_whole(method))


if IS_NEEDED:
    for kind in (QObject, QAccessibleInterface):
        kind.__init_subclass__ = classmethod(_make_whole)  # type: ignore[assignment]
