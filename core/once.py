"""Work out once what depends on one unchanging value alone.

A tune never changes while its bowings are edited, so the playing order, the recurring bars and the like need to be
found only once. The answer is kept on the value itself, as ``cached_property`` would, and goes away with it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Concatenate, ParamSpec, TypeVar

V = TypeVar("V")
P = ParamSpec("P")
R = TypeVar("R")


def once(function: Callable[Concatenate[V, P], R]) -> Callable[Concatenate[V, P], R]:
    """Keep what a pure function returns for a value that has a ``__dict__``.

    Further arguments must be hashable; each choice of them has its own answer.

    Returns:
        A function that gives the very same object each time it is called with the same value and equal arguments.
    """
    name = f"_{function.__module__}.{function.__qualname__}"

    @wraps(function)
    def remembering(value: V, /, *args: P.args, **kwargs: P.kwargs) -> R:
        key = (args, tuple(sorted(kwargs.items()))) if kwargs else args
        kept: dict[object, R] = value.__dict__.get(name) or value.__dict__.setdefault(name, {})
        if key not in kept:
            kept[key] = function(value, *args, **kwargs)
        return kept[key]

    return remembering
