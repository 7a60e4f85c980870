"""The set that the window works on: edits, following the page, remembering."""

from __future__ import annotations

from pathlib import Path

import pytest

from app.document import Document
from app.files import FileError, read_path
from app.set_entries import EntryName
from app.set_list import SetList
from core.bowing import Bow, fix_bow
from core.errors import RefusedEditError
from core.lesson import Lesson, add_bowing, delete_bowing, rename_bowing
from core.reading import read_file
from core.tune_set import MOST_TUNES

EVEN, ODD = "X:1\nT:Even\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 d2|]\n", "X:2\nT:Odd\nM:4/4\nL:1/4\nK:D\nd2 f2|a2 f d|]\n"


@pytest.fixture
def book(tmp_path) -> Path:
    path = tmp_path / "book.abc"
    path.write_text(f"{EVEN}\n{ODD}", encoding="utf-8")
    return path


@pytest.fixture
def document(qapp) -> Document:
    return Document()


@pytest.fixture
def sets(document: Document) -> SetList:
    return SetList(document)


def open_tune(sets: SetList, document: Document, path: Path, index: int) -> Lesson:
    lessons = read_path(path).lessons
    sets.book_opens(path, lessons)
    document.open(lessons[index])
    return lessons[index]


def titles(sets: SetList) -> list[str]:
    return [tune.lesson.tune.title for tune in sets.state.tunes]


def test_tunes_are_added_moved_reordered_and_removed(sets, document, book) -> None:
    open_tune(sets, document, book, 0)
    assert sets.add_open_tune() == 0
    assert sets.add_from_book(1) == 1
    assert (titles(sets), sets.move(1, -1), titles(sets)) == (["Even", "Odd"], 0, ["Odd", "Even"])
    sets.reorder((1, 0))
    assert titles(sets) == ["Even", "Odd"]
    sets.remove(0)
    assert titles(sets) == ["Odd"]


def test_the_report_is_that_of_the_tunes_in_this_order(sets, document, book) -> None:
    open_tune(sets, document, book, 1)
    sets.add_open_tune()
    sets.add_from_book(0)
    assert sets.state.report.findings[0].rule == "next-tune-on-other-bow"
    sets.move(1, -1)
    assert all(seam.way.value == "round" for f in sets.state.report.findings for seam in f.seams)


def test_an_edit_on_the_page_is_heard_in_the_set(sets, document, book) -> None:
    open_tune(sets, document, book, 0)
    sets.add_from_book(1)
    sets.add_open_tune()
    assert sets.state.report.seams[0].is_turned
    document.edit("Down", lambda tune, bowing: fix_bow(tune, bowing, tune.sequence[0].id, Bow.DOWN))
    assert (sets.state.report.seams[0].is_turned, sets.state.report.seams[0].is_retake) == (False, True)
    document.stack.undo()
    assert sets.state.report.seams[0].is_turned


def test_the_chosen_bowing_stays_chosen_whatever_stands_before_it(sets, document, book) -> None:
    open_tune(sets, document, book, 0)
    document.change("Add", lambda lesson: add_bowing(lesson, lesson.bowings[0]), 1)
    sets.add_open_tune()
    document.change("Rename", lambda lesson: rename_bowing(lesson, 1, "Other"), 1)
    assert sets.state.tunes[0].name.bowing == "Other"
    document.change("Delete", lambda lesson: delete_bowing(lesson, 0), 0)
    assert (sets.state.tunes[0].name.bowing, sets.state.tunes[0].bowing) == ("Other", 0)
    document.stack.undo()
    assert sets.state.tunes[0].name.bowing == "Other"


def test_a_tune_of_the_set_that_is_opened_is_followed_from_then_on(sets, document, book) -> None:
    sets.add(book, read_path(book).lessons[1])
    assert not sets.is_open(0)
    open_tune(sets, document, book, 1)
    assert sets.is_open(0)
    document.edit("Up", lambda tune, bowing: fix_bow(tune, bowing, tune.sequence[0].id, Bow.UP))
    assert sets.state.tunes[0].lesson is document.state.lesson


def test_the_same_tune_of_another_file_is_another(sets, document, book, tmp_path) -> None:
    other = tmp_path / "other.abc"
    other.write_text(ODD, encoding="utf-8")
    sets.add(other, read_path(other).lessons[0])
    open_tune(sets, document, book, 1)
    assert not sets.is_open(0)


def test_adding_the_file_that_is_open_adds_the_tune_as_it_stands_on_the_page(sets, document, book) -> None:
    open_tune(sets, document, book, 1)
    document.edit("Up", lambda tune, bowing: fix_bow(tune, bowing, tune.sequence[0].id, Bow.UP))
    sets.add(book, read_path(book).lessons[1])
    assert sets.state.tunes[0].lesson is document.state.lesson


def test_nothing_is_added_where_nothing_is_open_or_the_set_is_full(sets, document, book) -> None:
    with pytest.raises(RefusedEditError, match="Open a tune first"):
        sets.add_open_tune()
    open_tune(sets, document, book, 0)
    for _ in range(MOST_TUNES):
        sets.add_open_tune()
    with pytest.raises(RefusedEditError, match="at most 24"):
        sets.add_open_tune()


def test_times_stay_within_reason(sets, document, book) -> None:
    open_tune(sets, document, book, 0)
    sets.add_open_tune()
    for asked, kept in ((3, 3), (0, 1), (99, 12)):
        sets.set_times(0, asked)
        assert sets.state.tunes[0].times == kept


class TestRemembering:
    def test_a_set_is_recalled_by_the_names_of_its_tunes(self, sets, document, book) -> None:
        names = [EntryName(str(book), 2, 3, "As written"), EntryName(str(book), 1)]
        assert sets.recall(names, read_path) == []
        assert titles(sets) == ["Odd", "Even"]
        assert [tune.times for tune in sets.state.tunes] == [3, 1]
        assert sets.state.tunes[0].name == names[0]

    def test_what_is_gone_is_told_in_a_sentence_each_and_the_rest_is_there(self, sets, book, tmp_path) -> None:
        gone = str(tmp_path / "gone.abc")
        names = [EntryName(gone), EntryName(str(book), 9), EntryName(str(book), 1), EntryName(gone, 2)]
        lost = sets.recall(names, read_path)
        assert lost == ["gone.abc cannot be opened: there is no such file.", f"{book}: no tune 9; there is 1, 2."]
        assert titles(sets) == ["Even"]

    def test_a_file_is_read_once(self, sets, book) -> None:
        read = []

        def reader(path: Path):
            read.append(path)
            if path.name == "bad":
                raise FileError("bad.")
            return read_file(book.read_bytes())

        sets.recall([EntryName("a", 1), EntryName("bad"), EntryName("a", 2), EntryName("bad")], reader)
        assert [path.name for path in read] == ["a", "bad"]

    def test_recalling_is_no_change_by_the_user(self, sets, book) -> None:
        arranged = []
        sets.arranged.connect(lambda: arranged.append(1))
        sets.recall([EntryName(str(book), 1)], read_path)
        assert arranged == []
        sets.set_times(0, 2)
        assert arranged == [1]

    def test_pasted_text_has_no_name(self, sets, document) -> None:
        lesson = read_file(EVEN.encode()).lessons[0]
        sets.book_opens(None, (lesson,))
        document.open(lesson)
        sets.add_open_tune()
        assert sets.state.tunes[0].name is None
