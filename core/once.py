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

    Further arguments must be hashable; each choice of them has its own answer. Where edits bring ever new ones, it is
    ``lately``.

    Returns:
        A function that gives the very same object each time it is called with the same value and equal arguments.
    """
    return _keeping(function, None)


def lately(most: int) -> Callable[[Callable[Concatenate[V, P], R]], Callable[Concatenate[V, P], R]]:
    """``once``, of which only the answers to the last choices of arguments are kept: this many for each value."""
    return lambda function: _keeping(function, most)


def _keeping(function: Callable[Concatenate[V, P], R], most: int | None) -> Callable[Concatenate[V, P], R]:
    name = f"_{function.__module__}.{function.__qualname__}"

    @wraps(function)
    def remembering(value: V, /, *args: P.args, **kwargs: P.kwargs) -> R:
        key = (args, tuple(sorted(kwargs.items()))) if kwargs else args
        kept: dict[object, R] = value.__dict__.get(name) or value.__dict__.setdefault(name, {})
        try:
            return kept[key]
        except KeyError:
            pass  # unknown, or just forgotten by another thread
        answer = kept.setdefault(key, function(value, *args, **kwargs))
        if most is not None and len(kept) > most:
            for old in list(kept)[:-most]:
                kept.pop(old, None)
        return answer

    return remembering
