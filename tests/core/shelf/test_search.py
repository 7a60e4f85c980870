"""Finding tunes."""

from datetime import UTC, datetime

import pytest

from core.shelf.errors import QueryError
from core.shelf.query import parse_key, parse_meter
from core.shelf.remarks import change_tags, note_opened, set_status
from core.shelf.search import choices, count, entry
from tests.core.shelf.conftest import Shelf, abc

MARKED = "X:1\nT:Low Gate\nT:Faíche na Coille\nC:Ada Quern\nR:slip jig\nM:9/8\nL:1/8\nK:Em\nB3 e3 g3|]\n\n"


@pytest.fixture
def full(shelf: Shelf) -> Shelf:
    shelf.write(
        "tuesday.abc",
        abc("The Sluice Gate", "A2|d2f2 e2d2|A8", 1, "reel", "D"),
        abc("Keeper's Fancy", "G2B2 A2G2|D8", 2, "hornpipe", "G", "C|"),
        abc("Over the Sill", "A3 ABc|d3 d3", 3, "jig", "Amix", "6/8"),
    )
    shelf.write("own/gate.abc", MARKED)
    shelf.scan()
    return shelf


def test_every_tune_is_found_by_title_where_nothing_is_asked(full):
    assert full.titles() == ["Keeper's Fancy", "Low Gate", "Over the Sill", "The Sluice Gate"]
    assert count(full.catalogue) == 4


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("gate", {"The Sluice Gate", "Low Gate"}),
        ("GATE slu", {"The Sluice Gate"}),
        ("faiche", {"Low Gate"}),
        ("coille quern", {"Low Gate"}),
        ("keepers", {"Keeper's Fancy"}),
        ("keeper’s", {"Keeper's Fancy"}),
        ("tuesday sill", {"Over the Sill"}),
        ("ate", set()),
        ('"', {"Keeper's Fancy", "Low Gate", "Over the Sill", "The Sluice Gate"}),
        ('gate" OR "sill', set()),
        ("NOT gate*", set()),
    ],
)
def test_words_are_looked_for_by_their_beginnings(full, words, found):
    assert set(full.titles(words=words)) == found


def test_a_word_of_the_title_comes_before_one_of_the_file_name(full):
    assert full.titles(words="gate")[0] in ("Low Gate", "The Sluice Gate")
    full.write("fancy.abc", abc("Nothing Much", "A4 B4"))
    full.scan()
    assert full.titles(words="fancy") == ["Keeper's Fancy", "Nothing Much"]


@pytest.mark.parametrize(
    ("parts", "found"),
    [
        ({"dance": "jig"}, ["Low Gate", "Over the Sill"]),
        ({"dance": "slip"}, ["Low Gate"]),
        ({"key": "A"}, ["Over the Sill"]),
        ({"key": "A major"}, []),
        ({"key": "Eaeol"}, ["Low Gate"]),
        ({"key": "em"}, ["Low Gate"]),
        ({"meter": "C|"}, ["Keeper's Fancy"]),
        ({"meter": "9/8"}, ["Low Gate"]),
        ({"notes": "A d f"}, ["The Sluice Gate"]),
        ({"notes": "dfe"}, ["The Sluice Gate"]),
        ({"notes": "u d d"}, ["Keeper's Fancy", "The Sluice Gate"]),
        ({"notes": "gba"}, ["Keeper's Fancy"]),
        ({"notes": "gba", "any_key": True}, ["Keeper's Fancy", "The Sluice Gate"]),
        ({"notes": "fed"}, []),
        ({"bowing": "written"}, ["Keeper's Fancy", "Low Gate", "Over the Sill", "The Sluice Gate"]),
        ({"bowing": "backbeat"}, []),
        ({"status": "none"}, ["Keeper's Fancy", "Low Gate", "Over the Sill", "The Sluice Gate"]),
        ({"words": "gate", "dance": "reel", "key": "D", "meter": "4/4"}, ["The Sluice Gate"]),
    ],
)
def test_each_filter_finds_its_tunes(full, parts, found):
    assert full.titles(**parts) == found


def test_what_the_teacher_said_is_found(full):
    gate = full.one(words="sluice")
    set_status(full.catalogue, gate.id, "ready")
    change_tags(full.catalogue, gate.id, ["Sommerskole Ørje", "class"])
    assert full.titles(status="ready") == ["The Sluice Gate"]
    assert full.titles(words="orje") == ["The Sluice Gate"]
    assert full.titles(tags=("sommerskole orje", "CLASS")) == ["The Sluice Gate"]
    assert full.titles(tags=("sommerskole",)) == []
    change_tags(full.catalogue, gate.id, remove=["class"])
    assert full.titles(words="class") == []


def test_tunes_can_be_put_in_other_orders(full):
    assert full.titles(order="dance") == ["Keeper's Fancy", "Over the Sill", "The Sluice Gate", "Low Gate"]
    sill = full.one(words="sill")
    assert note_opened(full.catalogue, sill.file, sill.place - 1, datetime(2031, 5, 4, tzinfo=UTC))
    assert full.titles(order="opened")[0] == "Over the Sill"
    with pytest.raises(QueryError, match="expected best, title"):
        full.find(order="price")


def test_an_entry_tells_where_the_tune_stands(full):
    sill = full.one(words="sill")
    assert (sill.file, sill.place, sill.number) == (full.folder / "tuesday.abc", 3, 3)
    assert (sill.meter, sill.key, sill.bars, sill.notes) == ("6/8", "A mixolydian", 2, "AABCDD")
    assert entry(full.catalogue, sill.id) == sill
    assert entry(full.catalogue, 999) is None


def test_choices_are_what_the_shelf_holds_the_commonest_first(full):
    full.write("more.abc", abc("Another", "A8", 1, "jig", "D", "6/8"))
    full.scan()
    assert choices(full.catalogue).dances[0] == "jig"
    assert choices(full.catalogue).meters[0] == "6/8"
    assert set(choices(full.catalogue).keys) == {"D major", "G major", "A mixolydian", "E minor"}


@pytest.mark.parametrize("parts", [{"key": "H"}, {"meter": "six"}, {"notes": "xyz"}, {"status": "done"}])
def test_a_part_that_makes_no_sense_is_refused_with_what_was_expected(full, parts):
    with pytest.raises(QueryError, match="expected"):
        full.find(**parts)


@pytest.mark.parametrize(
    ("typed", "key"),
    [("d", ("D", "")), ("b", ("B", "")), ("bb", ("Bb", "")), ("Bbm", ("Bb", "minor")), ("C# Min", ("C#", "minor")),
     ("G mix", ("G", "mixolydian")), ("Ddorian", ("D", "dorian")), ("Fion", ("F", "major")), ("A maj", ("A", "major")),
     ("none", ("", ""))],
)  # fmt: skip
def test_keys_as_they_are_typed(typed, key):
    assert parse_key(typed) == key


@pytest.mark.parametrize("typed", ["", "Dx", "D dorky", "H", "D m major"])
def test_what_is_no_key(typed):
    with pytest.raises(QueryError):
        parse_key(typed)


def test_metres_as_they_are_typed():
    assert [parse_meter(typed) for typed in ("C", "c|", "2+3/8", "FREE")] == ["4/4", "2/2", "2+3/8", "free"]
