"""Room for the grace notes of other bowings, so that the notes of bowings stand under one another.

Grace notes alone move the notes of a line apart: slurs, bow signs, ornaments and fingers stand over or under them.
Where two bowings have grace notes of unlike number or accidentals on one note, their lines may stand a little apart.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from core.bowing import Bowing, Grace

GraceRoom = Mapping[str, tuple[Grace, ...]]
"""Grace notes by the id of the note that they stand before."""
NO_ROOM: GraceRoom = MappingProxyType({})


def grace_room(bowings: Iterable[Bowing]) -> GraceRoom:
    """The most grace notes that any of some bowings has before each note; of as many, those of the earlier bowing."""
    room: dict[str, tuple[Grace, ...]] = {}
    for bowing in bowings:
        for note_id, signs in bowing.signs.items():
            if len(signs.graces) > len(room.get(note_id, ())):
                room[note_id] = signs.graces
    return room


def missing_graces(bowing: Bowing, room: GraceRoom) -> GraceRoom:
    """What a bowing lacks of the grace notes that there should be room for, the first of each row."""
    missing = {}
    for note_id, graces in room.items():
        count = len(graces) - len(bowing.signs_on(note_id).graces)
        if count > 0:
            missing[note_id] = graces[:count]
    return missing
