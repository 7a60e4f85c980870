"""Bowings with other grace notes still have their notes under one another."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from core.bowing import Bowing
from core.engraving.bow_signs import MarkDensity, bow_signs, rows_kept
from core.engraving.engraver import Engraver
from core.engraving.grace_room import grace_room, missing_graces
from core.engraving.kinds import Kind
from core.engraving.lines import break_lines
from core.engraving.picture import Picture
from core.reading.abc import read_abc
from core.strokes import work_out
from core.tune import Tune

HEAD = "X:1\nM:4/4\nL:1/8\nK:D\n"
PLAIN = "|:dfaf d2f2|e2ge Bege|dfaf d2f2|egfe d4|a2f2 gfed|e2ge Bege|"
WAYS = (
    PLAIN,
    "|:{g}dfaf d2f2|e2ge Bege|d{b}faf d2f2|egfe d4|a2f2 gfed|e2ge Bege|",
    "|:{f}dfaf d2f2|e2ge Bege|dfaf {^e}d2f2|egfe d4|{gab}a2f2 gfed|{^d^f}e2ge Bege|",
    "|:({c}dfaf) (d2f2|e2)ge Bege|(df)(af) ~d2.f2|egfe d4|T!4!a2Lf2 gfed|{^d^f}e2(ge) Bege|",
)


@pytest.fixture(scope="module")
def ways() -> tuple[Tune, tuple[Bowing, ...]]:
    """One tune, and its bowings with other grace notes."""
    lessons = [read_abc(HEAD + way).lessons[0] for way in WAYS]
    return lessons[0].tune, tuple(lesson.bowings[0] for lesson in lessons)


def pictures(tune: Tune, bowings: tuple[Bowing, ...], room: Mapping) -> list[list[Picture]]:
    """The lines of each bowing."""
    engraver = Engraver()
    rows = [rows_kept(tune, bow_signs(tune, b, work_out(tune, b), MarkDensity.EVERY)) for b in bowings]
    return [
        [engraver.engrave(tune, bowing, line, of_bowing, room=room) for line in break_lines(tune)]
        for bowing, of_bowing in zip(bowings, rows, strict=True)
    ]


def spread(given: list[list[Picture]]) -> float:
    """How far the heads of any note lie apart at most."""
    return max(
        max(of_line.heads[note].x for of_line in line) - min(of_line.heads[note].x for of_line in line)
        for line in zip(*given, strict=True)
        for note in line[0].heads
    )


def graces_drawn(picture: Picture) -> int:
    return len({shape.x for shape in picture.shapes if shape.kind is Kind.GRACE and hasattr(shape, "code")})


def test_without_room_the_notes_of_other_bowings_stand_elsewhere(ways):
    assert spread(pictures(*ways, {})) > 100


def test_with_room_for_all_grace_notes_every_note_stands_under_itself(ways):
    tune, bowings = ways
    assert spread(pictures(tune, bowings, grace_room(bowings))) == 0


def test_of_unseen_grace_notes_nothing_is_drawn(ways):
    tune, bowings = ways
    apart, under = pictures(tune, bowings, {}), pictures(tune, bowings, grace_room(bowings))
    for one, other in zip(apart, under, strict=True):
        assert [graces_drawn(line) for line in one] == [graces_drawn(line) for line in other]
        assert [len(line.shapes) for line in one] == [len(line.shapes) for line in other]


def test_a_line_that_lacks_no_grace_note_is_engraved_once(ways):
    tune, bowings = ways
    engraver, room = Engraver(), grace_room(bowings[:1])
    line = break_lines(tune)[0]
    assert engraver.engrave(tune, bowings[0], line, {}) is engraver.engrave(tune, bowings[0], line, {}, room=room)


def test_room_is_kept_for_the_longest_row_and_only_where_it_is_lacking(ways):
    _, bowings = ways
    room = grace_room(bowings)
    assert {note: len(graces) for note, graces in room.items()} == {
        "b0n1": 1, "b2n2": 1, "b2n5": 1, "b4n1": 3, "b5n1": 2,
    }  # fmt: skip
    missing = missing_graces(bowings[3], room)
    assert {note: len(graces) for note, graces in missing.items()} == {"b2n2": 1, "b2n5": 1, "b4n1": 3}
    assert grace_room(bowings[:1]) == {}
