"""Our dataclasses beside those of the standard library: whatever is asked of both, both answer alike."""

from __future__ import annotations

import copy
import dataclasses
import operator
import pickle
import re
from collections.abc import Callable
from dataclasses import MISSING, FrozenInstanceError, field
from functools import cached_property
from pathlib import Path
from typing import Any, ClassVar

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core import values

TOP = Path(__file__).parents[2]
NAMES = ("first", "second", "third", "self_", "name", "cls", "value")
WAYS = (
    {"frozen": True},
    {"frozen": True, "slots": True},
    {"frozen": True, "slots": True, "order": True},
    {"frozen": True, "eq": False},
    {"slots": True, "kw_only": True},
    {"slots": True},
    {"order": True},
    {},
)
COMPARISONS = (operator.eq, operator.ne, operator.lt, operator.le, operator.gt, operator.ge)

held = st.one_of(
    st.integers(-2, 2), st.text(max_size=2), st.none(), st.floats(), st.lists(st.integers(0, 1), max_size=2)
)
defaults = st.one_of(st.integers(-2, 2), st.none(), st.just(()))


@st.composite
def rows(draw: st.DrawFn) -> list[tuple[str, dict[str, Any]]]:
    """Names of fields, and what ``field`` is told of each."""
    found = []
    may_lack_default = True
    for name in NAMES[: draw(st.integers(0, 5))]:
        options: dict[str, Any] = {}
        way = draw(st.sampled_from(("none", "default", "factory") if may_lack_default else ("default", "factory")))
        if way == "default":
            options["default"] = draw(defaults)
        elif way == "factory":
            options["default_factory"] = list
        if way == "factory" and draw(st.booleans()):
            options["init"] = False
        if draw(st.booleans()):
            options |= {"repr": draw(st.booleans()), "compare": draw(st.booleans())}
            options["hash"] = draw(st.sampled_from((None, True, False)))
        if draw(st.integers(0, 5)) == 0 and options.get("init", True):
            options["kw_only"] = True
        elif way != "none":
            may_lack_default = False
        found.append((name, options))
    return found


def both(rows: list[tuple[str, dict[str, Any]]], options: dict[str, Any], **more: object) -> tuple[type, type]:
    """The same class, once made by the standard library and once by ours."""
    return tuple(
        make(**options)(
            type(
                "Value",
                (),
                {"__doc__": "A value.", "__annotations__": {name: "object" for name, _ in rows}, "__module__": __name__}
                | {name: field(**told) for name, told in rows if told}
                | more,
            )
        )
        for make in (dataclasses.dataclass, values.dataclass)
    )


def outcome(do: Callable[..., object], *args: object, **kwargs: object) -> tuple[object, str]:
    """What comes of it, or the mistake with its words."""
    try:
        return "came", do(*args, **kwargs)
    except Exception as mistake:
        return type(mistake), str(mistake)


def told(do: Callable[..., object], *args: object, **kwargs: object) -> tuple[object, str]:
    what, found = outcome(do, *args, **kwargs)
    return what, repr(found)


@settings(max_examples=60)
@given(rows(), st.sampled_from(WAYS), st.data())
def test_whatever_is_asked_of_both_both_answer_alike(rows, options, data):
    pair = both(rows, options)
    made = []
    for _ in range(2):
        args = data.draw(st.lists(held, max_size=len(rows) + 1))
        kwargs = data.draw(st.dictionaries(st.sampled_from([name for name, _ in rows] or ["other"]), held, max_size=3))
        theirs, ours = (outcome(cls, *args, **kwargs) for cls in pair)
        assert (theirs[0], str(theirs[1])) == (ours[0], str(ours[1]))
        if theirs[0] == "came":
            made.append((theirs[1], ours[1]))
    for theirs, ours in made:
        assert told(repr, theirs) == told(repr, ours)
        assert told(hash, theirs)[0] == told(hash, ours)[0]
        if options.get("eq", True) and options.get("frozen"):
            assert told(hash, theirs) == told(hash, ours)
        assert dataclasses.asdict(theirs).__repr__() == dataclasses.asdict(ours).__repr__()
        for name, _ in rows:
            for change in (lambda it, name=name: setattr(it, name, 1), lambda it, name=name: delattr(it, name)):
                changed = [copy.copy(it) for it in (theirs, ours)]
                assert told(change, changed[0]) == told(change, changed[1])
            again = data.draw(held)
            assert told(dataclasses.replace, theirs, **{name: again}) == told(
                dataclasses.replace, ours, **{name: again}
            )
        others = [
            outcome(setattr, it, "another", 1)[0] for it in (theirs, ours)
        ]  # 3.11 words it by a mistake of its own
        assert (others[0] == "came") == (others[1] == "came")
    if len(made) == 2:
        for compare in COMPARISONS:
            assert told(compare, made[0][0], made[1][0]) == told(compare, made[0][1], made[1][1])
            assert told(compare, made[0][0], 1) == told(compare, made[0][1], 1)


@settings(max_examples=40)
@given(rows(), st.sampled_from(WAYS))
def test_a_class_tells_the_same_of_itself(rows, options):
    theirs, ours = both(rows, options)
    assert dataclasses.is_dataclass(ours)
    assert theirs.__match_args__ == ours.__match_args__
    assert theirs.__dict__.get("__slots__") == ours.__dict__.get("__slots__")
    assert (theirs.__hash__ is None) == (ours.__hash__ is None)
    for mine, other in zip(dataclasses.fields(theirs), dataclasses.fields(ours), strict=True):
        assert repr(mine) == repr(other)
    for name, told in rows:
        assert getattr(theirs, name, MISSING).__class__ == getattr(ours, name, MISSING).__class__, (name, told)


@values.dataclass(frozen=True, slots=True)
class Slotted:
    """Of two fields, one with a default."""

    first: object
    second: object = ()


@values.dataclass(frozen=True)
class Kept:
    """With a dictionary of its own."""

    first: object
    shared: ClassVar[int] = 5
    drawn: list[int] = field(default_factory=list, compare=False)

    def __post_init__(self) -> None:
        if self.first is None:
            raise ValueError("nothing")

    @cached_property
    def twice(self) -> object:
        return (self.first, self.first)


@values.dataclass(frozen=True)
class Grown(Kept):
    more: int = 0

    def __repr__(self) -> str:
        return "grown"


@settings(max_examples=30)
@given(held, held)
def test_values_are_copied_and_pickled(first, second):
    for value in (Slotted(first, second), Kept((first,), [1])):
        for back in (
            copy.copy(value),
            copy.deepcopy(value),
            *(pickle.loads(pickle.dumps(value, n)) for n in (2, 4, 5)),
        ):
            assert type(back) is type(value)
            assert repr(back) == repr(value)


def test_an_answer_can_be_kept_on_a_frozen_value_but_nothing_be_set():
    value = Kept(3)
    assert value.twice is value.twice
    with pytest.raises(FrozenInstanceError, match="cannot assign to field 'first'"):
        value.first = 1
    with pytest.raises(FrozenInstanceError, match="cannot assign to field 'elsewhere'"):
        value.elsewhere = 1
    with pytest.raises(FrozenInstanceError, match="cannot delete field 'first'"):
        del value.first
    assert value == Kept(3, [9])
    assert hash(value) == hash(Kept(3, [9]))


def test_what_follows_the_making_is_done_and_a_default_is_made_anew():
    with pytest.raises(ValueError, match="nothing"):
        Kept(None)
    assert Kept(1).drawn is not Kept(1).drawn
    assert Kept.shared == 5
    assert [row.name for row in dataclasses.fields(Kept)] == ["first", "drawn"]


def test_a_class_below_another_has_the_fields_of_both_and_its_own_methods():
    assert Grown(1, [2], 3).more == 3
    assert repr(Grown(1)) == "grown"
    assert Grown(1) != Kept(1)
    assert Grown(1, [2], 3) == Grown(1, [4], 3)
    assert hash(Grown(1, [2], 3)) == hash((1, 3))
    with pytest.raises(FrozenInstanceError):
        Grown(1).first = 2


def test_values_are_matched_by_position():
    match Slotted(1, 2):
        case Slotted(first, second):
            assert (first, second) == (1, 2)


def test_a_value_that_holds_itself_can_be_told():
    held: list[object] = []
    value = Slotted(held)
    held.append(value)
    assert repr(value) == "Slotted(first=[...], second=())"


def test_a_default_that_can_change_is_refused():
    with pytest.raises(ValueError, match="mutable default"):
        both([("first", {"default": []})], {"frozen": True})
    with pytest.raises(ValueError, match="mutable default"):
        values.dataclass(type("Value", (), {"__annotations__": {"first": list}, "first": []}))


def test_a_field_without_a_default_behind_one_with_is_refused():
    for make in (dataclasses.dataclass, values.dataclass):
        with pytest.raises(TypeError, match="non-default argument 'second' follows default argument"):
            make(type("Value", (), {"__annotations__": {"first": int, "second": int}, "first": 1}))


def test_one_that_sets_by_itself_cannot_be_frozen():
    for make in (dataclasses.dataclass, values.dataclass):
        with pytest.raises(TypeError, match="Cannot overwrite attribute __setattr__"):
            make(frozen=True)(type("Value", (), {"__setattr__": object.__setattr__}))


def test_a_method_is_compiled_when_it_is_first_called_and_stands_then_for_itself():
    cls = both([("first", {})], {"frozen": True})[1]
    before = {name: vars(cls)[name] for name in ("__init__", "__repr__", "__eq__", "__hash__")}
    value = cls(1)
    assert vars(cls)["__init__"] is not before["__init__"]
    assert vars(cls)["__repr__"] is before["__repr__"]
    assert repr(value) == "Value(first=1)"
    assert value == cls(1)
    assert hash(value) == hash((1,))
    assert all(vars(cls)[name] is not method for name, method in before.items())
    assert before["__hash__"](value) == hash((1,))  # who has it from before gets the same


def test_no_module_defines_its_values_the_slow_way():
    slow = re.compile(r"from dataclasses import (.*\b|\([^)]*)dataclass\b|dataclasses\.dataclass\b")
    files = [path for folder in ("app", "core") for path in (TOP / folder).rglob("*.py")]
    assert [path.name for path in files if slow.search(path.read_text(encoding="utf-8"))] == ["values.py"]
