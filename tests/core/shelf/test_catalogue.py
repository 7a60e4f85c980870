"""The file of the catalogue: layouts, damage, later versions, and the way out."""

from __future__ import annotations

import sqlite3

import pytest

from core.shelf import catalogue as cataloguing
from core.shelf import layout
from core.shelf.aside import path_aside, read_aside
from core.shelf.catalogue import Catalogue
from core.shelf.errors import DamagedShelfError, GoneError, NewerShelfError, QueryError, ShelfBusyError, ShelfError
from core.shelf.figures import Figures, figures_of, put_figures
from core.shelf.rebuild import rebuild
from core.shelf.remarks import change_tags, set_status, tags_typed
from core.shelf.scan import places_of, scan
from core.shelf.search import find
from tests.core.shelf.conftest import Shelf, abc


@pytest.fixture
def full(shelf: Shelf) -> Shelf:
    """Three tunes, two of them with something said."""
    shelf.write("book.abc", *(abc(f"Tune {n}", f"{notes}2 B2 c2 d2", n) for n, notes in enumerate("ABc", start=1)))
    shelf.scan()
    set_status(shelf.catalogue, shelf.one(words="tune 1").id, "taught")
    change_tags(shelf.catalogue, shelf.one(words="tune 2").id, ["class", "fair"])
    return shelf


def said(catalogue: Catalogue) -> dict[str, tuple[str, tuple[str, ...]]]:
    return {entry.title: (entry.status, entry.tags) for entry in find(catalogue).entries}


SAID = {"Tune 1": ("taught", ()), "Tune 2": ("", ("class", "fair")), "Tune 3": ("", ())}


def test_opening_twice_changes_nothing(full):
    with Catalogue(full.catalogue.path) as again:
        assert said(again) == SAID


def test_a_catalogue_of_an_earlier_layout_takes_the_steps_that_it_lacks(full, monkeypatch):
    added = ("ALTER TABLE tune ADD COLUMN colour TEXT NOT NULL DEFAULT 'red'",)
    steps = (*layout.STEPS, added, ("CREATE TABLE later (id INTEGER PRIMARY KEY)",))
    monkeypatch.setattr(cataloguing, "STEPS", steps)
    with Catalogue(full.catalogue.path) as moved_on:
        assert moved_on.read(lambda db: db.execute("PRAGMA user_version").fetchone()[0]) == 3
        assert moved_on.read(lambda db: db.execute("SELECT DISTINCT colour FROM tune").fetchall()) == [("red",)]
        assert said(moved_on) == SAID


def test_a_step_that_fails_leaves_the_layout_before_it(full, monkeypatch):
    monkeypatch.setattr(cataloguing, "STEPS", (*layout.STEPS, ("CREATE TABLE good (id)", "CREATE TABEL bad (id)")))
    with pytest.raises(sqlite3.OperationalError):
        Catalogue(full.catalogue.path)
    monkeypatch.undo()
    with Catalogue(full.catalogue.path) as as_before:
        tables = as_before.read(lambda db: db.execute("SELECT name FROM sqlite_master WHERE name = 'good'").fetchall())
        assert tables == []
        assert said(as_before) == SAID


def test_a_catalogue_of_a_later_version_is_refused_and_left_as_it_is(full):
    path = full.catalogue.path
    full.catalogue.write(lambda db: db.execute("PRAGMA user_version = 7"))
    with pytest.raises(NewerShelfError, match=r"later version of Bowbench \(layout 7, this version knows 1\)"):
        Catalogue(path)
    full.catalogue.close()
    found = rebuild(path)
    assert (found.remarks, found.places) == (2, 1)
    with Catalogue(path) as new:
        scan(new)
        assert said(new) == SAID
    with sqlite3.connect(found.old) as old:
        assert old.execute("SELECT count(*) FROM tune").fetchone() == (3,)
    old.close()


def spoil(path, how):
    data = bytearray(path.read_bytes())
    match how:
        case "text":
            data = bytearray(b"Dear teacher, this is no database at all. " * 100)
        case "head":
            data[:200] = bytes(200)
        case "middle":
            data[4096 * 2 : -4096] = b"\xa5" * (len(data) - 3 * 4096)
        case "cut":
            del data[len(data) // 2 :]
        case "empty":
            data = bytearray()
    path.write_bytes(data)


@pytest.mark.parametrize("how", ["text", "head", "middle", "cut", "empty"])
def test_a_damaged_catalogue_is_told_in_one_sentence_and_built_anew_with_what_was_said(full, how):
    path = full.catalogue.path
    full.catalogue.close()
    spoil(path, how)
    with pytest.raises(DamagedShelfError, match=r"is damaged \(.*\); build it anew, what you noted is kept\.$"):
        Catalogue(path)
    found = rebuild(path)
    assert (found.remarks, found.places) == (2, 1)
    assert found.old.exists()
    with Catalogue(path) as new:
        scan(new)
        assert said(new) == SAID
    rebuild(path)
    with Catalogue(path) as again:
        scan(again)
        assert said(again) == SAID


def test_a_catalogue_that_lost_a_table_is_damaged(full):
    full.catalogue.write(lambda db: db.execute("DROP TABLE words"))
    with pytest.raises(DamagedShelfError, match="it holds no words"):
        Catalogue(full.catalogue.path)


def test_without_the_lines_aside_the_tables_give_what_was_said(full):
    path = full.catalogue.path
    full.catalogue.write(lambda db: db.execute("PRAGMA user_version = 7"))
    full.catalogue.close()
    path_aside(path).unlink()
    assert rebuild(path).remarks == 2
    with Catalogue(path) as new:
        assert places_of(new) == (full.folder,)
        scan(new)
        assert said(new) == SAID


def test_another_programs_file_is_not_touched(tmp_path):
    path = tmp_path / "other.db"
    with sqlite3.connect(path) as other:
        other.execute("CREATE TABLE mine (id)")
    other.close()
    before = path.read_bytes()
    with pytest.raises(DamagedShelfError, match="another program's file"):
        Catalogue(path)
    assert path.read_bytes() == before


def test_a_catalogue_that_cannot_be_made_is_told_in_one_sentence(tmp_path):
    (tmp_path / "file").write_text("")
    with pytest.raises(ShelfError, match="cannot be made"):
        Catalogue(tmp_path / "file" / "shelf.db")
    with pytest.raises(ShelfError, match="cannot be used"):
        Catalogue(tmp_path)


def test_a_writer_that_never_ends_is_told_in_one_sentence(full, monkeypatch):
    monkeypatch.setattr(cataloguing, "PATIENCE_S", 0.05)
    monkeypatch.setattr(cataloguing, "ONE_WAIT_MS", 10)
    with Catalogue(full.catalogue.path) as other, pytest.raises(ShelfBusyError, match="try again in a moment"):
        full.catalogue.write(lambda _: set_status(other, 1, "ready"))
    assert said(full.catalogue) == SAID


def test_a_mistake_of_our_own_is_not_hidden(full):
    with pytest.raises(sqlite3.OperationalError, match="no such column"):
        full.catalogue.read(lambda db: db.execute("SELECT colour FROM tune"))


def test_half_a_line_aside_is_passed_over(full):
    path = path_aside(full.catalogue.path)
    with path.open("ab") as file:
        file.write(b'{"tune": 3, "status": "rea')
    set_status(full.catalogue, 3, "to do")
    with path.open("ab") as file:
        file.write(b"\xff\n[1]\n{}\n" + b'{"tune": "x"}\n' + b"[" * 5000)
    assert {remarks.title: remarks.status for remarks in read_aside(path)} == {
        "Tune 1": "taught", "Tune 2": "", "Tune 3": "to do",
    }  # fmt: skip


def test_the_lines_aside_do_not_grow_without_end(full, monkeypatch):
    monkeypatch.setattr("core.shelf.aside.LARGEST_BYTES", 2000)
    for _ in range(40):
        for status in ("ready", "taught"):
            set_status(full.catalogue, 1, status)
    path = path_aside(full.catalogue.path)
    assert path.stat().st_size < 3000
    assert len(read_aside(path)) == 2


def test_a_status_is_one_of_ours(full):
    with pytest.raises(QueryError, match="expected to do, at work"):
        set_status(full.catalogue, 1, "sold")


def test_nothing_can_be_said_of_a_tune_that_never_was(full):
    with pytest.raises(GoneError):
        set_status(full.catalogue, 99, "ready")
    with pytest.raises(GoneError):
        change_tags(full.catalogue, 99, ["class"])


def test_tags_are_parted_by_commas():
    assert tags_typed(" class,, summer  school , class,") == ("class", "summer school")
    assert tags_typed("") == ()


def test_figures_of_a_planner_belong_to_what_is_played(full):
    catalogue = full.catalogue
    content = full.one(words="tune 1").content
    assert figures_of(catalogue, content, "on-beat", 1) is None
    put_figures(catalogue, content, "on-beat", 1, Figures(0, 2, 120, 8, 32))
    put_figures(catalogue, content, "on-beat", 2, Figures(0, 1, 110, 7, 32))
    put_figures(catalogue, content, "on-beat", 1, Figures(9, 9, 999, 9, 32))  # an older program, started later
    assert figures_of(catalogue, content, "on-beat", 2) == Figures(0, 1, 110, 7, 32)
    assert figures_of(catalogue, content, "on-beat", 1) is None
    assert figures_of(catalogue, content, "backbeat", 2) is None
