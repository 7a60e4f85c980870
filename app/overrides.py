"""Tells of a mistake in an overridden method of Qt and goes on, where it would end the program; import it before our
classes.

No exception may leave such a method for Qt. PySide (seen in 6.10.3 and 6.11.3 on Python 3.11) dies at once of one that
the interpreter raised itself (``[][0]``, say), since it takes the message for the exception; of any other it may die
later, when the collector comes upon what that has left in disorder.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import wraps
from types import FunctionType
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtGui import QAccessibleInterface, QUndoCommand


def held(method: Callable[..., Any]) -> Callable[..., Any]:
    """The method, which tells ``sys.excepthook`` of every exception, and then returns None."""

    @wraps(method)
    def call(*values: Any, **named: Any) -> Any:
        try:
            return method(*values, **named)
        except Exception:
            sys.excepthook(*sys.exc_info())
            return None

    return call


def _overridden(made: type) -> dict[str, FunctionType]:
    """Methods of a class that Qt may call: those that a class of Qt has too."""
    of_qt = [base for base in made.__mro__ if base.__module__.startswith("PySide6")]
    return {
        name: value
        for name, value in vars(made).items()
        if isinstance(value, FunctionType) and not name.startswith("__") and any(hasattr(base, name) for base in of_qt)
    }


def _hold(made: type) -> None:
    """Called for each new class below those of Qt."""
    for name, method in _overridden(made).items():
        setattr(made, name, held(method))


for kind in (QObject, QAccessibleInterface, QUndoCommand):
    kind.__init_subclass__ = classmethod(_hold)  # type: ignore[assignment]
