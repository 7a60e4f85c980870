"""Law of the shelf: whatever is done to the files between two scans, what the teacher said stays with its tune."""

from __future__ import annotations

import itertools
import os
import random
import tempfile
from dataclasses import dataclass
from pathlib import Path

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from core.shelf.aside import path_aside, read_aside
from core.shelf.catalogue import Catalogue
from core.shelf.rebuild import rebuild
from core.shelf.remarks import STATUSES, change_tags, set_status
from core.shelf.scan import add_places, scan
from core.shelf.search import find

PLACES = tuple(f"{folder}{book}.abc" for folder in ("", "one/", "one/two/") for book in "abc")


@dataclass
class Tune:
    """A tune and what was said of it.

    Attributes:
        serial: Written into its notes and title, so that no two are alike.
        mended: How often its title, and its notes, were changed.
        status, tags: As they must be found.
        on_shelf: The last scan saw it in a file.
        moved, retitled, rewritten: Since the last scan.
    """

    serial: int
    mended: list[int]
    status: str = ""
    tags: frozenset[str] = frozenset()
    on_shelf: bool = False
    moved: bool = False
    retitled: bool = False
    rewritten: bool = False

    @property
    def title(self) -> str:
        return f"Tune {self.serial} at {self.mended[0]}"

    def text(self, number: int) -> str:
        digits = f"{self.serial:04o}{self.mended[1]:04o}"
        notes = "".join("CDEFGABc"[int(digit)] for digit in digits)
        return f"X:{number}\nT:{self.title}\nM:4/4\nL:1/8\nK:C\n{notes}|]\n\n"


class Handling(RuleBasedStateMachine):
    """A folder of books under the hands of a teacher, and a shelf that is scanned now and then."""

    def __init__(self) -> None:
        super().__init__()
        self._scratch = tempfile.TemporaryDirectory()
        self._folder = Path(self._scratch.name) / "music"
        self._folder.mkdir()
        self._path = Path(self._scratch.name) / "shelf.db"
        self._catalogue = Catalogue(self._path)
        add_places(self._catalogue, [self._folder])
        self._serials = itertools.count()
        self._clock = itertools.count(1_000_000_000)
        self.books: dict[str, list[Tune]] = {}
        self.limbo: list[list[Tune]] = []  # deleted, and perhaps put back one day

    def teardown(self) -> None:
        self._catalogue.close()
        self._scratch.cleanup()

    # What is done to the files

    @rule(place=st.sampled_from(PLACES), count=st.integers(1, 3))
    def write_new_tunes(self, place: str, count: int) -> None:
        new = [Tune(next(self._serials), [0, 0]) for _ in range(count)]
        self._save(place, [*new, *self.books.get(place, [])])

    @precondition(lambda self: self.books)
    @rule(data=st.data(), to=st.sampled_from(PLACES))
    def move_a_book(self, data: st.DataObject, to: str) -> None:
        place = data.draw(st.sampled_from(sorted(self.books)))
        if to in self.books or any(tune.rewritten for tune in self.books[place]):
            return
        tunes = self.books.pop(place)
        (self._folder / to).parent.mkdir(parents=True, exist_ok=True)
        (self._folder / place).rename(self._folder / to)
        self.books[to] = tunes
        for tune in tunes:
            tune.moved = True

    @precondition(lambda self: len(self.books) > 1)
    @rule(data=st.data())
    def let_two_books_change_places(self, data: st.DataObject) -> None:
        one, two = data.draw(st.permutations(sorted(self.books)))[:2]
        if any(tune.rewritten for place in (one, two) for tune in self.books[place]):
            return
        for tune in (*self.books[one], *self.books[two]):
            tune.moved = True
        first, second = self.books[one], self.books[two]
        self._save(one, second)
        self._save(two, first)

    @precondition(lambda self: len(self.books) > 1)
    @rule(data=st.data())
    def move_a_tune_to_another_book(self, data: st.DataObject) -> None:
        one, two = data.draw(st.permutations(sorted(self.books)))[:2]
        tune = data.draw(st.sampled_from(self.books[one]))
        if tune.rewritten:
            return
        tune.moved = True
        self._save(two, [*self.books[two], tune])
        self._save(one, [other for other in self.books[one] if other is not tune])

    @precondition(lambda self: self.books)
    @rule(data=st.data(), chance=st.randoms(use_true_random=False))
    def put_a_book_in_another_order(self, data: st.DataObject, chance: random.Random) -> None:
        place = data.draw(st.sampled_from(sorted(self.books)))
        chance.shuffle(self.books[place])
        self._save(place, self.books[place])

    @precondition(lambda self: self.books)
    @rule(data=st.data())
    def mend_a_title(self, data: st.DataObject) -> None:
        place = data.draw(st.sampled_from(sorted(self.books)))
        tune = data.draw(st.sampled_from(self.books[place]))
        if not tune.rewritten:
            tune.mended[0] += 1
            tune.retitled = True
            self._save(place, self.books[place])

    @precondition(lambda self: self.books)
    @rule(data=st.data())
    def mend_a_note(self, data: st.DataObject) -> None:
        place = data.draw(st.sampled_from(sorted(self.books)))
        tune = data.draw(st.sampled_from(self.books[place]))
        if not tune.retitled and not tune.moved:
            tune.mended[1] += 1
            tune.rewritten = True
            self._save(place, self.books[place])

    @precondition(lambda self: self.books)
    @rule(data=st.data(), scan_between=st.booleans())
    def delete_a_book(self, data: st.DataObject, scan_between: bool) -> None:
        place = data.draw(st.sampled_from(sorted(self.books)))
        if not any(tune.rewritten or tune.retitled for tune in self.books[place]):
            self.limbo.append(self.books[place])
            self._save(place, [])
            if scan_between:
                self.scan_the_folder()

    @precondition(lambda self: self.limbo)
    @rule(place=st.sampled_from(PLACES))
    def put_a_deleted_book_back(self, place: str) -> None:
        tunes = self.limbo.pop(0)
        for tune in tunes:
            tune.moved = True
        self._save(place, [*self.books.get(place, []), *tunes])

    # What is done to the shelf

    @rule()
    def scan_the_folder(self) -> None:
        assert not scan(self._catalogue).problems
        for tune in (*itertools.chain(*self.books.values()), *itertools.chain(*self.limbo)):
            tune.on_shelf = any(tune in tunes for tunes in self.books.values())
            tune.moved = tune.retitled = tune.rewritten = False
        self._look()
        self._speak_of_new_tunes()

    @rule(data=st.data(), status=st.sampled_from(STATUSES), tag=st.sampled_from("xyz"), on=st.booleans())
    def say_something(self, data: st.DataObject, status: str, tag: str, on: bool) -> None:
        entries = {entry.title: entry for entry in find(self._catalogue).entries}
        tunes = [
            tune for tunes in self.books.values() for tune in tunes if tune.on_shelf and not tune.retitled
        ]  # fmt: skip
        if tunes:
            tune = data.draw(st.sampled_from(tunes))
            set_status(self._catalogue, entries[tune.title].id, status)
            change_tags(self._catalogue, entries[tune.title].id, *(([tag], []) if on else ([], [tag])))
            tune.status = status
            tune.tags = tune.tags | {tag} if on else tune.tags - {tag}

    @rule(tables_are_lost=st.booleans())
    def build_it_anew(self, tables_are_lost: bool) -> None:
        """Only with files that have not changed: what was said then is given back in full."""
        self.scan_the_folder()
        self._catalogue.close()
        if tables_are_lost:
            self._path.write_bytes(b"spoilt" * 100)
        assert rebuild(self._path).places == 1
        self._catalogue = Catalogue(self._path)
        self.scan_the_folder()

    @invariant()
    def everything_said_is_written_aside(self) -> None:
        aside = {(remarks.status, frozenset(remarks.tags)) for remarks in read_aside(path_aside(self._path))}
        for tune in (*itertools.chain(*self.books.values()), *itertools.chain(*self.limbo)):
            assert not (tune.status or tune.tags) or (tune.status, tune.tags) in aside

    def _look(self) -> None:
        found = {entry.title: (entry.status, frozenset(entry.tags)) for entry in find(self._catalogue).entries}
        expected = {tune.title: (tune.status, tune.tags) for tunes in self.books.values() for tune in tunes}
        assert found == expected

    def _speak_of_new_tunes(self) -> None:
        """Every tune has a tag of its own from the first scan on, so that none can be lost unnoticed."""
        for entry in find(self._catalogue).entries:
            tune = next(tune for tunes in self.books.values() for tune in tunes if tune.title == entry.title)
            if not tune.tags:
                tune.tags = frozenset({f"of {tune.serial}"})
                change_tags(self._catalogue, entry.id, tune.tags)

    def _save(self, place: str, tunes: list[Tune]) -> None:
        path = self._folder / place
        if not tunes:
            self.books.pop(place, None)
            path.unlink(missing_ok=True)
            return
        self.books[place] = tunes
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("".join(tune.text(number) for number, tune in enumerate(tunes, start=1)), "utf-8")
        now = next(self._clock)
        os.utime(path, (now, now))


TestShelf = Handling.TestCase
TestShelf.settings = settings(
    max_examples=12, stateful_step_count=30, deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much],
)  # fmt: skip
