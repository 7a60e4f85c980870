"""Work out once for each tune what depends on the tune alone.

A tune never changes while its bowings are edited, so the playing order, the recurring bars and the like need to be
found only once. The answer is kept on the tune itself, as ``cached_property`` would, and goes away with it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Concatenate, ParamSpec, TypeVar

from core.tune import Tune

P = ParamSpec("P")
R = TypeVar("R")


def once_per_tune(function: Callable[Concatenate[Tune, P], R]) -> Callable[Concatenate[Tune, P], R]:
    """Keep what a pure function of a tune (and of hashable further arguments) returns.

    Returns:
        A function that gives the very same object each time it is called with the same tune and equal arguments.
    """
    name = f"_{function.__module__}.{function.__qualname__}"

    @wraps(function)
    def remembering(tune: Tune, /, *args: P.args, **kwargs: P.kwargs) -> R:
        kept: dict[object, R] = tune.__dict__.setdefault(name, {})
        key = (args, tuple(sorted(kwargs.items())))
        if key not in kept:
            kept[key] = function(tune, *args, **kwargs)
        return kept[key]

    return remembering
