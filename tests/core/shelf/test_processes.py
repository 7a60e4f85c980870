"""Several processes at one shelf, and processes that die."""

from __future__ import annotations

import multiprocessing
import sqlite3
import sys
import time
from collections.abc import Callable

import pytest

from core.shelf.aside import path_aside, read_aside
from core.shelf.catalogue import Catalogue
from core.shelf.remarks import change_tags
from core.shelf.search import Entry
from tests.core.shelf import hands
from tests.core.shelf.conftest import Shelf, abc

PROCESSES = multiprocessing.get_context("spawn")
WAIT_S = 120  # against hanging only


def start(work: Callable[..., None], *arguments: object) -> multiprocessing.Process:
    process = PROCESSES.Process(target=work, args=arguments, daemon=True)
    process.start()
    return process


def end(*processes: multiprocessing.Process) -> None:
    for process in processes:
        process.join(WAIT_S)
        assert process.exitcode == 0


def fill(shelf: Shelf, files: int) -> None:
    for number in range(files):
        notes = "".join("ABcdefga"[number >> shift & 7] for shift in (6, 3, 0))
        shelf.write(f"{number}.abc", *(abc(f"Tune {number} {one}", f"{notes}{one} e3|", one) for one in range(1, 4)))


def titled(shelf: Shelf, title: str) -> Entry:
    (entry,) = (entry for entry in shelf.find() if entry.title == title)
    return entry


def test_two_windows_and_a_scan_at_work_on_one_tune_all_have_their_way(shelf):
    fill(shelf, 3)
    shelf.scan()
    tune = titled(shelf, "Tune 2 1").id
    writers = [start(hands.put_tags_on, shelf.catalogue.path, tune, name, 60) for name in ("left", "right")]
    scanner = start(hands.scan_again_and_again, shelf.catalogue.path, 30)
    turn = 0
    while any(process.is_alive() for process in writers):
        shelf.write("2.abc", *(abc(f"Tune 2 {one}", f"ABcd{'efg'[turn % 3]}{one} e3|", one) for one in range(1, 4)))
        change_tags(shelf.catalogue, tune, [f"here {turn}"])
        turn += 1
    end(*writers, scanner)
    expected = {f"{name} {number}" for name in ("left", "right") for number in range(60) if number % 3}
    expected |= {f"here {number}" for number in range(turn)}
    shelf.scan()
    assert set(titled(shelf, "Tune 2 1").tags) == expected
    (written,) = (remarks for remarks in read_aside(path_aside(shelf.catalogue.path)) if remarks.tune == tune)
    assert set(written.tags) == expected


def test_two_scans_at_once_list_every_tune_once(shelf):
    fill(shelf, 60)
    scans = [start(hands.scan_again_and_again, shelf.catalogue.path, 1) for _ in range(2)]
    end(*scans)
    assert sorted(shelf.titles()) == sorted(f"Tune {n} {one}" for n in range(60) for one in range(1, 4))
    assert_whole(shelf)


def test_processes_that_make_the_catalogue_at_once_make_one(shelf, tmp_path):
    fill(shelf, 1)
    path = tmp_path / "new" / "shelf.db"
    end(*(start(hands.scan_again_and_again, path, 1) for _ in range(3)))
    with Catalogue(path) as catalogue:
        assert catalogue.read(lambda db: db.execute("SELECT count(*) FROM tune").fetchone()) == (0,)


@pytest.mark.skipif(sys.platform == "win32", reason="there is no SIGKILL")
def test_a_scan_killed_at_any_moment_leaves_nothing_half_written(shelf):
    fill(shelf, 12)
    shelf.scan()
    for entry in shelf.find():
        change_tags(shelf.catalogue, entry.id, [f"of {entry.title}"])
    fill(shelf, 100)
    for number in range(12):
        (shelf.folder / f"{number}.abc").rename(shelf.folder / f"moved {number}.abc")
    for _ in range(4):
        before = len(shelf.titles())
        scanner = start(hands.scan_again_and_again, shelf.catalogue.path, 1)
        give_up = time.monotonic() + WAIT_S
        while len(shelf.titles()) <= before + 9 and scanner.is_alive() and time.monotonic() < give_up:
            time.sleep(0.002)
        scanner.kill()
        scanner.join(WAIT_S)
        with Catalogue(shelf.catalogue.path):  # looks through the whole file
            assert_whole(shelf)
    shelf.scan()
    assert len(shelf.titles()) == 100 * 3
    for entry in shelf.find():
        number = int(entry.title.split()[1])
        assert entry.tags == ((f"of {entry.title}",) if number < 12 else ())


@pytest.mark.skipif(sys.platform == "win32", reason="there is no SIGKILL")
def test_what_was_said_before_a_process_was_killed_is_kept_and_written_aside(shelf, tmp_path):
    fill(shelf, 2)
    shelf.scan()
    told = tmp_path / "told"
    for _ in range(3):
        told.write_bytes(b"")
        speaker = start(hands.tell_while_speaking, shelf.catalogue.path, told)
        give_up = time.monotonic() + WAIT_S
        while told.read_bytes().count(b"\n") < 40 and time.monotonic() < give_up:
            time.sleep(0.002)
        speaker.kill()
        speaker.join(WAIT_S)
        *lines, _ = told.read_text().split("\n")
        entries = {entry.id: entry for entry in shelf.find()}
        aside = {remarks.tune: remarks for remarks in read_aside(path_aside(shelf.catalogue.path))}
        for tune, turn in (map(int, line.split()) for line in lines):
            assert f"turn {turn}" in entries[tune].tags
            assert f"turn {turn}" in aside[tune].tags


def assert_whole(shelf: Shelf) -> None:
    """Every tune of every file is there, with all that belongs to it."""

    def check(connection: sqlite3.Connection) -> None:
        for table, column in (("bowing", "tune"), ("opening", "tune"), ("words", "rowid")):
            lacking = f"SELECT title FROM tune WHERE id NOT IN (SELECT {column} FROM {table})"
            assert connection.execute(lacking).fetchall() == []
        counts = connection.execute(
            "SELECT count(*) FROM tune JOIN file ON file.id = file WHERE position IS NOT NULL GROUP BY file"
        )
        assert {count for (count,) in counts} == {3}
        connection.execute("INSERT INTO words (words) VALUES ('integrity-check')")

    shelf.catalogue.read(check)
