"""What the workers of a pack say where a file cannot be read or a lesson cannot be written."""

from __future__ import annotations

import errno
from pathlib import Path

import pytest

from app import pack_making
from app.pack_making import Made, Order, Refused, Settings, look, make
from app.pack_sources import Source
from core.pack.facts import facts_of
from core.pack.kinds import Kind
from core.reading import read_file

BOOK = "X:1\nT:Gate of the Weir\nR:reel\nM:4/4\nL:1/8\nK:D\nd2fd Adfd|e2ge Bege|]\n"
SETTINGS = Settings(frozenset({Kind.ABC}), "")


@pytest.fixture
def order(tmp_path: Path) -> Order:
    (tmp_path / "book.abc").write_text(BOOK, "utf-8")
    (facts,) = facts_of(read_file(BOOK.encode()).lessons, SETTINGS.kinds, SETTINGS.program)
    return Order(Source(tmp_path / "book.abc"), 0, "Gate", facts.fingerprint, SETTINGS, tmp_path)


@pytest.mark.parametrize(
    ("number", "words", "ends_all"),
    [
        (errno.ENOSPC, "the disk is full", True), (errno.EROFS, "the disk can only be read", True),
        (errno.EACCES, "you have no permission there", False), (errno.ENOENT, "its folder is not there", False),
    ],
)  # fmt: skip
def test_why_a_lesson_cannot_be_written_is_said_in_our_words(order, monkeypatch, number, words, ends_all):
    def refuse(path: Path, data: bytes) -> None:
        raise OSError(number, "Words of the system")

    monkeypatch.setattr(pack_making, "write_atomically", refuse)
    assert make(order) == Refused(f"cannot be written: {words}", ends_all)


def test_why_a_file_cannot_be_read_is_said_in_our_words(order):
    order.source.path.unlink()
    assert look((order.source, SETTINGS)) == Refused("there is no such file")
    assert make(order) == Refused("there is no such file")


def test_a_lesson_that_is_made_tells_its_files(order):
    made = make(order)
    assert isinstance(made, Made)
    (record,) = made.files
    assert (order.folder / record.path).stat().st_size == record.size
