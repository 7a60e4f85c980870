"""``dataclass`` as the standard library has it, at a fraction of what it takes to define one.

The standard one writes up to nine methods for each class and compiles them all when the class is defined: a millisecond
for each of more than a hundred classes that a window needs before it can be painted. Here a class gets the same
methods, text for text, but each is compiled when it is first called. Fields, ``replace``, ``asdict``, ``match``,
pickling and errors are the standard library's; ``tests/core/test_values.py`` holds the two side by side. What none of
ours asks for is left out: ``unsafe_hash``, ``weakref_slot`` and ``InitVar``.
"""

from __future__ import annotations

import dataclasses
import reprlib
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from dataclasses import dataclass  # what checkers and editors see
else:

    def dataclass(cls=None, /, *, frozen=False, slots=False, eq=True, order=False, kw_only=False):
        """Make a class a dataclass; options and what comes of them are those of ``dataclasses.dataclass``."""
        if cls is None:
            return lambda it: _made(it, frozen, slots, eq, order, kw_only)
        return _made(cls, frozen, slots, eq, order, kw_only)


__all__ = ["dataclass"]

Rows = tuple[dataclasses.Field[Any], ...]

ORDERINGS = ("__lt__", "__le__", "__gt__", "__ge__")
SIGNS = {"__eq__": "==", "__lt__": "<", "__le__": "<=", "__gt__": ">", "__ge__": ">="}
BY_FACTORY = object()  # in the place of an argument that a default factory will make


def _made(cls: type, frozen: bool, slots: bool, eq: bool, order: bool, kw_only: bool) -> type:
    own = frozenset(cls.__dict__)
    has_hash = "__hash__" in own and not (cls.__dict__["__hash__"] is None and "__eq__" in own)
    cls = dataclasses.dataclass(init=False, repr=False, eq=False, slots=slots, kw_only=kw_only)(cls)
    rows = dataclasses.fields(cls)
    _refuse_gaps([row for row in rows if row.init and not row.kw_only])
    texts: dict[str, Callable[[str], str]] = {
        "__init__": lambda _: _init(rows, frozen, hasattr(cls, "__post_init__")),
        "__repr__": lambda _: _repr(rows),
    }
    if eq:
        texts["__eq__"] = lambda name: _comparison(rows, name)
    if order:
        texts |= dict.fromkeys(ORDERINGS, lambda name: _comparison(rows, name))
    for name, text in texts.items():
        if name not in own:
            _give(cls, name, rows, text)
    if eq and not has_hash:
        if frozen:
            _give(cls, "__hash__", rows, lambda _: _hash(rows))
        else:
            setattr(cls, "__hash__", None)  # noqa: B010  mypy
    if frozen:
        _freeze(cls, frozenset(row.name for row in rows))
        if slots and "__getstate__" not in own:
            setattr(cls, "__getstate__", _state)  # noqa: B010
            setattr(cls, "__setstate__", _take_state)  # noqa: B010
    return cls


def _refuse_gaps(rows: list[dataclasses.Field[Any]]) -> None:
    has_default = False
    for row in rows:
        if row.default is not dataclasses.MISSING or row.default_factory is not dataclasses.MISSING:
            has_default = True
        elif has_default:
            raise TypeError(f"non-default argument {row.name!r} follows default argument")


def _give(cls: type, name: str, rows: Rows, text: Callable[[str], str]) -> None:
    """Give a class a method that is compiled when it is first called."""

    def first(self: object, *args: object, **kwargs: object) -> object:
        method = _compiled(cls, name, rows, text(name))
        if cls.__dict__.get(name) is first:  # nobody has put another in its place
            setattr(cls, name, method)
        return method(self, *args, **kwargs)

    first.__name__, first.__qualname__, first.__module__ = name, f"{cls.__qualname__}.{name}", cls.__module__
    setattr(cls, name, first)


def _compiled(cls: type, name: str, rows: Rows, text: str) -> Any:
    names: dict[str, Any] = {"_set_": object.__setattr__, "_by_factory_": BY_FACTORY}
    for row in rows:
        names[f"_default_{row.name}_"], names[f"_factory_{row.name}_"] = row.default, row.default_factory
    exec(text, names)  # a text of ours, with names that Python has taken as names
    method = names[name]
    method.__qualname__, method.__module__ = f"{cls.__qualname__}.{name}", cls.__module__
    return reprlib.recursive_repr()(method) if name == "__repr__" else method


# ------------------------------------------------------------------------------------------------- texts


def _init(rows: Rows, frozen: bool, has_more: bool) -> str:
    given = [row for row in rows if row.init]
    arguments = [_argument(row) for row in given if not row.kw_only]
    by_name = [_argument(row) for row in given if row.kw_only]
    lines = [_assignment(row, frozen) for row in rows if row.init or row.default_factory is not dataclasses.MISSING]
    lines += ["self.__post_init__()"] if has_more else []
    head = ", ".join(["self", *arguments, *(["*", *by_name] if by_name else [])])
    return f"def __init__({head}):\n " + "\n ".join(lines or ["pass"])


def _argument(row: dataclasses.Field[Any]) -> str:
    if row.default is not dataclasses.MISSING:
        return f"{row.name}=_default_{row.name}_"
    return row.name if row.default_factory is dataclasses.MISSING else f"{row.name}=_by_factory_"


def _assignment(row: dataclasses.Field[Any], frozen: bool) -> str:
    value = row.name
    if row.default_factory is not dataclasses.MISSING:
        made = f"_factory_{row.name}_()"
        value = f"{made} if {row.name} is _by_factory_ else {row.name}" if row.init else made
    return f"_set_(self, {row.name!r}, {value})" if frozen else f"self.{row.name} = {value}"


def _repr(rows: Rows) -> str:
    told = ", ".join(f"{row.name}={{self.{row.name}!r}}" for row in rows if row.repr)
    return f'def __repr__(self):\n return self.__class__.__qualname__ + f"({told})"'


def _comparison(rows: Rows, name: str) -> str:
    compared = [row for row in rows if row.compare]
    return (
        f"def {name}(self, other):\n if other.__class__ is self.__class__:\n"
        f"  return {_values(compared, 'self')} {SIGNS[name]} {_values(compared, 'other')}\n return NotImplemented"
    )


def _hash(rows: Rows) -> str:
    counted = [row for row in rows if (row.compare if row.hash is None else row.hash)]
    return f"def __hash__(self):\n return hash({_values(counted, 'self')})"


def _values(rows: list[dataclasses.Field[Any]], owner: str) -> str:
    return "(" + "".join(f"{owner}.{row.name}, " for row in rows) + ")"


# ------------------------------------------------------------------------------------------------- frozen ones


def _freeze(cls: Any, names: frozenset[str]) -> None:
    """Refuse to change what an instance holds, as the standard library does."""

    def set_(self: object, name: str, value: object) -> None:
        if type(self) is cls or name in names:
            raise dataclasses.FrozenInstanceError(f"cannot assign to field {name!r}")
        super(cls, self).__setattr__(name, value)

    def delete(self: object, name: str) -> None:
        if type(self) is cls or name in names:
            raise dataclasses.FrozenInstanceError(f"cannot delete field {name!r}")
        super(cls, self).__delattr__(name)

    for name, method in (("__setattr__", set_), ("__delattr__", delete)):
        if name in cls.__dict__:
            raise TypeError(f"Cannot overwrite attribute {name} in class {cls.__name__}")
        setattr(cls, name, method)


def _state(self: Any) -> list[object]:
    return [getattr(self, row.name) for row in dataclasses.fields(self)]


def _take_state(self: Any, state: list[object]) -> None:
    for row, value in zip(dataclasses.fields(self), state, strict=True):
        object.__setattr__(self, row.name, value)
