"""Bow directions against what published method books print.

D and U are down- and up-bow, ``|`` a bar line, ``=`` joins notes of one stroke, ``-`` is a rest. Where a row rests on a
later text that sums the book up, or on memory, its comment says so.
"""

from __future__ import annotations

import pytest

from core.reading.abc import read_abc
from core.strokes import work_out
from tests.core.builders import bowed, bows


@pytest.mark.parametrize(
    ("text", "meter", "expected"),
    [
        # Muffat, Florilegium Secundum (1698), preface: a bar that opens with a note opens down. Second-hand.
        ("A2B2c2d2|A2B2c2d2|", "4/4", "D U D U | D U D U"),
        # The same: in three time two downs in a row, by retaking. Retake second-hand, string from memory.
        ("A2B2c2|vA2B2c2|", "3/4", "D U D | D U D"),
        # The same: quick three time, second and third note on two separated ups. From memory.
        ("A2B2rc2|A2B2rc2|", "3/4", "D U U | D U U"),
        ("A2B2=c2|A2B2=c2|", "3/4", "D U=U | D U=U"),
        # The same: one note a bar, each down; a note before the bar up. From memory.
        ("A6|rA6|rA6|", "3/4", "D | D | D"),
        ("A2|B6|", "3/4", "U | D"),
        # The same, of Germans and Italians: as it comes. Second-hand. Geminiani (1751), Ex. VIII. From memory.
        ("A2B2c2|A2B2c2|", "3/4", "D U D | U D U"),
        # L. Mozart, Violinschule (1756), IV: begin up after a rest on the beat. From memory.
        ("zABc|d4|", "2/4", "- U D U | D"),
        # The same: of three equal notes slur two, so that the next bar comes down. From memory.
        ("A2(B2c2)|A2(B2c2)|", "3/4", "D U=U | D U=U"),
        # The same, X §16: a run that starts before the bar begins up.
        ("A|B2c2|", "2/4", "U | D U"),
        # Schroeder, Handbook of Violin Playing (about 1889), use of down and up bows: a pick-up of one note or one
        # slur is up, of several strokes the last one is.
        ("A|B4c4|", "4/4", "U | D U"),
        ("(AB)|c4d4|", "4/4", "U=U | D U"),
        ("AB|c4d4|", "4/4", "D U | D U"),
        ("ABc|d4e4|", "4/4", "U D U | D U"),
        # The same: an exception may begin up.
        ("uA4B4|", "4/4", "U D"),
        # Broadley, Chats to 'Cello Students (1899): slurs with two single notes between them go down, up, down; with
        # one, all go the same way.
        ("(AB)cd(ef)ga|(AB)c4|", "4/4", "D=D U D U=U D U | D=D U"),
        ("(AB)c(de)f(ga)|", "4/4", "D=D U D=D U D=D"),
        # Skinner, A Guide to Bowing (about 1900): dotted pairs hooked, two to a bow. Second-hand.
        ("A3/2=B/c3/2=d/ e3/2=f/g3/2=a/|", "4/4", "D=D U=U D=D U=U"),
        # Niel Gow's up-driven bow: short long long short, the last three in one up-bow with a lift. Second-hand.
        ("A/B3/2=c3/2=d/ A/B3/2=c3/2=d/|", "4/4", "D U=U=U D U=U=U"),
    ],
)
def test_directions_are_those_of_the_book(text: str, meter: str, expected: str) -> None:
    assert bows(*bowed(text, meter)) == expected


def test_a_retake_at_each_bar_line_is_counted() -> None:
    """Muffat (1698): in three time one retake a bar line."""
    played = work_out(*bowed("A2B2c2|vA2B2c2|vA2B2c2|", "3/4")).played
    assert [note.note_id for note in played if note.retake] == ["b1n1", "b2n1"]


def test_the_bowing_sample_of_abc() -> None:
    """ABC 2.1, 4.14: ``vAuBvA`` is down, up, down."""
    lesson = read_abc("X:1\nT:\nM:4/4\nL:1/4\nK:C\nvAuBvA|\n").lessons[0]
    assert bows(lesson.tune, lesson.bowings[0]) == "D U D"
