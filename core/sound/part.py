"""The parts of a playing, and how loud each is to be; what a user chooses needs no more than this."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import TypeAlias

from immutabledict import immutabledict


class Part(Enum):
    """What can be heard, and be turned up, down or off."""

    FIDDLE = "fiddle"
    BACKING = "backing"
    COUNT_IN = "count-in"
    CLICK = "click"

    __hash__ = object.__hash__


Levels: TypeAlias = Mapping[Part, float]
"""Decibels above the usual level by part; a part that is not listed is off."""

USUAL: immutabledict[Part, float] = immutabledict({Part.FIDDLE: 0.0, Part.BACKING: 0.0, Part.COUNT_IN: 0.0})
