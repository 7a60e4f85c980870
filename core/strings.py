"""Which string each note lies on in first position, and where the bow has to cross.

A string sounds from its open note up to a fifth above it (the fourth finger). A note that two strings have, as A4 on a
fiddle, is taken where a small dynamic programme over the whole tune finds the least to do: ``CROSSING`` for each change
of string, ``LEAP`` more for each string jumped over, ``FOURTH_FINGER`` for a stopped note that another string has open
(weights ours: an open string is left for a fourth finger wherever that saves a crossing). Written fingers and
open-string signs are kept to. Several pitches at once take neighbouring strings, the highest that they can. What does
not lie in first position has no string here (None): the player may be anywhere.

Pitches are sounding pitches whatever the tuning. Grace notes are left out.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache
from itertools import pairwise
from types import MappingProxyType
from typing import NamedTuple, TypeAlias

from core.bowing import Articulation, Bowing, Join
from core.once import lately
from core.translation import tr, translatable
from core.tune import Note, Pitch, Tune
from core.values import dataclass

FOURTH_FINGER_SEMITONES = 7
SEMITONES_OF_FINGER = {  # above the open string, low and high; common practice, no source
    "0": range(1), "1": range(1, 3), "2": range(2, 5), "3": range(4, 7), "4": range(6, 8),
}  # fmt: skip
STRING_SIGNS = {Articulation.OPEN_STRING, Articulation.HARMONIC}

MOST_STRINGS = 8
_PITCH = "[A-G](?:##?|bb?|♯|♭)?(?:-?[0-9])?"

CROSSING = 4
LEAP = 2
FOURTH_FINGER = 1

FINGERINGS_KEPT = 64  # of a tune, since undo and changing between bowings come back to them

Held: TypeAlias = tuple[int, int]
"""The lowest and the highest string that the bow is on, counted from 0, the lowest."""


@lru_cache(maxsize=256)
def _midi(name: str) -> int:
    match = re.fullmatch(r"([A-G])(##?|bb?|)(-?\d)", name)
    if not match:
        raise ValueError(
            tr("“{name}” is no pitch: expected a letter, # or b, and an octave, such as G3 or C#4.", name=name)
        )
    step, signs, octave = match.groups()
    return Pitch(int(octave), step, signs.count("#") - signs.count("b")).midi


@dataclass(frozen=True, slots=True)
class Tuning:
    """Sounding pitches of the open strings.

    Attributes:
        strings: Pitches such as ``"G3"`` or ``"C#4"``, low to high, two to ``MOST_STRINGS``.
    """

    strings: tuple[str, ...] = ("G3", "D4", "A4", "E5")

    def __post_init__(self) -> None:
        if len(self.strings) > MOST_STRINGS:
            raise ValueError(
                tr("A tuning names at most {most} strings, not {count}.", most=MOST_STRINGS, count=len(self.strings))
            )
        keys = self.open_keys
        if len(keys) < 2 or any(low >= high for low, high in pairwise(keys)):
            raise ValueError(
                tr(
                    "A tuning names two or more strings from low to high, not {strings}.",
                    strings=", ".join(self.strings),
                )
            )

    @property
    def open_keys(self) -> tuple[int, ...]:
        """MIDI keys of the open strings.

        Raises:
            ValueError: a pitch cannot be read.
        """
        return tuple(map(_midi, self.strings))

    def __str__(self) -> str:
        return " ".join(self.strings)

    def name(self, string: int) -> str:
        """How players call a string: by its open note, with the octave where two strings share the letter."""
        letters = [pitch.rstrip("-0123456789") for pitch in self.strings]
        return letters[string] if letters.count(letters[string]) == 1 else self.strings[string]


STANDARD = Tuning()
TUNINGS = {
    "standard": STANDARD,
    "high bass": Tuning(("A3", "D4", "A4", "E5")),
    "cross tuning": Tuning(("A3", "E4", "A4", "E5")),
    "cross tuning with a third": Tuning(("A3", "E4", "A4", "C#5")),
    "low treble": Tuning(("G3", "D4", "A4", "D5")),
    "low cross tuning": Tuning(("G3", "D4", "G4", "D5")),
    "all on D": Tuning(("D3", "D4", "A4", "D5")),
}
"""Tunings in common use; common practice, no source. The names are plain descriptions, ours but for the first."""

TUNING_NAMES = translatable({
    "standard": "standard", "high bass": "high bass", "cross tuning": "cross tuning",
    "cross tuning with a third": "cross tuning with a third", "low treble": "low treble",
    "low cross tuning": "low cross tuning", "all on D": "all on D",
})  # fmt: skip
"""What they are called, to be translated where it is shown."""


def parse_tuning(text: str) -> Tuning:
    """Read a tuning.

    Args:
        text: Open strings from low to high, parted by spaces or commas or not at all: ``G3 D4 A4 E5``, ``A E A C#``.
            Of four strings without an octave each is taken as near to the standard tuning as can be.
    Raises:
        ValueError: it is none; the text is one sentence.
    """
    if not re.fullmatch(rf"[\s,]*({_PITCH}[\s,]*)+", text):
        raise ValueError(
            tr("“{text}” is no tuning: expected open strings from low to high, such as G3 D4 A4 E5.", text=text.strip())
        )
    pitches = [pitch.replace("♯", "#").replace("♭", "b") for pitch in re.findall(_PITCH, text)]
    if not any(pitch[-1].isdigit() for pitch in pitches) and len(pitches) == len(STANDARD.strings):
        pitches = [_nearest(pitch, key) for pitch, key in zip(pitches, STANDARD.open_keys, strict=True)]
    return Tuning(tuple(pitches))


def _nearest(name: str, key: int) -> str:
    """The pitch of this name that is nearest to a MIDI key, the lower of two as near."""
    return min((f"{name}{octave}" for octave in range(10)), key=lambda pitch: abs(_midi(pitch) - key))


@dataclass(frozen=True, slots=True)
class Leap:
    """A slur that jumps over a string.

    Attributes:
        note_id: The note that lies too far from the one before it in the slur.
        from_string, to_string: Strings from 0, the lowest; the pair that is nearest to one another.
    """

    note_id: str
    from_string: int
    to_string: int


def strings_of(tune: Tune, bowing: Bowing, tuning: Tuning = STANDARD) -> Mapping[str, Held | None]:
    """The string, or for several pitches the strings, on which each note is taken.

    Args:
        tune: The tune.
        bowing: Its fingers and open-string signs are kept to; its slurs change nothing.
        tuning: The fiddle's.
    Returns:
        By note id, rests left out; None for what does not lie in first position.
    """
    return _cheapest(tune, tuning, _wishes(bowing))


def crossings(tune: Tune, bowing: Bowing, tuning: Tuning = STANDARD) -> Mapping[str, int]:
    """How often the bow changes strings inside each written stroke.

    Returns:
        By the id of the stroke's first note, in written order. A note without a string is passed over.
    """
    strings = strings_of(tune, bowing, tuning)
    counts: dict[str, int] = {}
    first = ""
    before: Held | None = None
    for note in tune.sequence:
        if note.is_rest:
            first = ""
            continue
        here = strings[note.id]
        if not first or not (note.held or note.id in bowing.joins):
            first, before = note.id, None
            counts[first] = 0
        if here is not None:
            counts[first] += before is not None and here != before
            before = here
    return counts


def leaps(tune: Tune, bowing: Bowing, tuning: Tuning = STANDARD) -> tuple[Leap, ...]:
    """Slurred notes that no fingering in first position brings next to the string of the note before.

    Nothing is told where a note has no string, or where a hooked note lets the bow stop and cross. Open strings and
    fourth fingers are chosen here for the slur's sake alone.

    Returns:
        In written order.
    """
    slurred = {note_id for note_id, how in bowing.joins.items() if how is Join.SLUR}
    if not slurred:
        return ()
    wished = {wish.note_id: wish for wish in _wishes(bowing)}
    keys = tuning.open_keys
    found = []
    before: Note | None = None
    can_be: tuple[Held, ...] | None = None  # where the bow can be without having leapt in this slur; empty for anywhere
    for note in tune.sequence:
        if note.held:
            continue
        if note.id not in slurred:
            before, can_be = note, None  # places are looked up for slurs alone
            continue
        if can_be is None:
            can_be = _choices(keys, before.pitches, wished.get(before.id)) if before is not None else ()
        here = _choices(keys, note.pitches, wished.get(note.id))
        if not can_be or not here:
            can_be = here
            continue
        reached = _neighbouring(can_be, here)
        if not reached:
            old, new = min(((old, new) for old in can_be for new in here), key=lambda pair: _gap(*pair))
            up = new[0] > old[1]
            found.append(Leap(note.id, old[1] if up else old[0], new[0] if up else new[1]))
        can_be = reached or here
    return tuple(found)


class _Wish(NamedTuple):
    """What a bowing asks of one note, as far as strings go."""

    note_id: str
    fingers: tuple[str, ...]
    is_open: bool
    is_harmonic: bool


def _wishes(bowing: Bowing) -> frozenset[_Wish]:
    return frozenset(
        _Wish(
            note_id, signs.fingerings,
            Articulation.OPEN_STRING in signs.articulations, Articulation.HARMONIC in signs.articulations,
        )
        for note_id, signs in bowing.signs.items()
        if signs.fingerings or not STRING_SIGNS.isdisjoint(signs.articulations)
    )  # fmt: skip


@lately(FINGERINGS_KEPT)
def _places(tune: Tune, tuning: Tuning, wishes: frozenset[_Wish]) -> tuple[tuple[Held, ...], ...]:
    """Where each note of ``tune.sequence`` can be taken, the lowest string first; empty for rests and None."""
    wished = {wish.note_id: wish for wish in wishes}
    keys = tuning.open_keys
    return tuple([_choices(keys, note.pitches, wished.get(note.id)) for note in tune.sequence])


@lru_cache(maxsize=4096)
def _choices(keys: tuple[int, ...], pitches: tuple[Pitch, ...], wish: _Wish | None = None) -> tuple[Held, ...]:
    count = len(pitches)
    if not count or (wish and wish.is_harmonic):
        return ()
    choices = []
    for lowest in range(len(keys) - count + 1):
        stops = [pitch.midi - key for pitch, key in zip(pitches, keys[lowest:], strict=False)]
        if all(0 <= stop <= FOURTH_FINGER_SEMITONES for stop in stops) and (wish is None or _granted(stops, wish)):
            choices.append((lowest, lowest + count - 1))
    return tuple(choices if count == 1 else choices[-1:])


def _granted(stops: list[int], wish: _Wish) -> bool:
    """Whether stops, in semitones above the open strings, are what is asked; fingers of single notes only."""
    if wish.is_open and 0 not in stops:
        return False
    if len(stops) > 1 or not wish.fingers:
        return True
    return any(stops[0] in SEMITONES_OF_FINGER.get(finger, ()) for finger in wish.fingers)


@lately(FINGERINGS_KEPT)
def _cheapest(tune: Tune, tuning: Tuning, wishes: frozenset[_Wish]) -> Mapping[str, Held | None]:
    """The strings of all notes that together cost least; of equals the higher strings, later notes first."""
    found: dict[str, Held | None] = {note.id: None for note in tune.sequence if not note.is_rest}
    places = _places(tune, tuning, wishes)
    sounding = [(note.id, choices) for note, choices in zip(tune.sequence, places, strict=True) if choices]
    costs: dict[Held, int] = {}
    origins: list[dict[Held, Held]] = []  # for each note and choice, the best choice for the note before
    for _, choices in sounding:
        came: dict[Held, Held] = {}
        reached: dict[Held, int] = {}
        for higher, here in enumerate(reversed(choices)):
            reached[here] = higher * FOURTH_FINGER
            if costs:
                before = min(costs, key=lambda old: costs[old] + _cost(old, here))
                came[here] = before
                reached[here] += costs[before] + _cost(before, here)
        costs = reached
        origins.append(came)
    if sounding:
        held = min(costs, key=costs.__getitem__)
        for (note_id, _), came in zip(reversed(sounding), reversed(origins), strict=True):
            found[note_id] = held
            held = came.get(held, held)
    return MappingProxyType(found)


def _cost(old: Held, new: Held) -> int:
    return 0 if old == new else CROSSING + LEAP * max(0, _gap(old, new) - 1)


def _gap(old: Held, new: Held) -> int:
    """How many strings the bow moves on: 0 where one string stays, 1 to a neighbour."""
    return max(0, new[0] - old[1], old[0] - new[1])


@lru_cache(maxsize=4096)
def _neighbouring(can_be: tuple[Held, ...], here: tuple[Held, ...]) -> tuple[Held, ...]:
    """The places of a note that the bow can reach without leaping over a string."""
    return tuple(new for new in here if any(_gap(old, new) < 2 for old in can_be))
