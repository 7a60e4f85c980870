"""What the harness found, each with the least that shows it; ``python -m tests.fuzz`` found them by lot."""

from __future__ import annotations

import json
import os
import random
import sqlite3
import time
import zipfile
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QByteArray

from app.pack_folder import MANIFEST, PackFolder
from app.pack_sources import find_sources
from app.recovery_copy import Note, left_behind, read_note, write_copy
from app.recovery_dialog import about
from app.set_entries import parse_entry
from app.settings import Look, Settings
from core.accent_plan import AccentPlan, parse_plan
from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.lesson_fields import from_fields
from core.pack.manifest import read_manifest
from core.reading import read_file
from core.reading.abc import read_abc
from core.reading.limits import MAX_BARS, MAX_NOTES, MAX_PASSES
from core.reading.musicxml import read_musicxml
from core.shelf.aside import path_aside, read_aside, read_places_aside
from core.shelf.catalogue import Catalogue
from core.shelf.errors import DamagedShelfError
from core.shelf.rebuild import rebuild
from core.shelf.remarks import change_tags, set_status
from core.shelf.scan import add_places, places_of, scan
from core.shelf.search import find
from core.style.style import from_bytes, log_odds, to_bytes
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed
from tests.core.reading.scores import note, part, score, scores
from tests.fuzz.on_lessons import pack
from tests.fuzz.on_styles import KEYS, TREES, good_arrays, good_style, npy
from tests.fuzz.outcomes import must_be_a_sentence

GUARD_S = 5.0  # against what took minutes
DAMAGED = r"^The shelf .* is damaged \(.+\); .*\.$"
GOOD_NOTE = {"title": "x", "edited": "2031-05-04T17:30:05+00:00", "edits": 3, "file": None, "known": None, "shown": 0}
MANIFEST_FORM = {"format": "bowbench-pack/1", "lessons": [], "archive": None, "archive_of": ""}
LESSON_ROW = {"identity": ["s", "t", 0], "name": "Reel", "fingerprint": "f", "files": [], "remarks": []}
TOO_LONG = "x" * 5000  # for any name of a file


@pytest.fixture
def lesson() -> Lesson:
    tune, bowing = bowed("A2B2c2d2|e8|]")
    return Lesson(tune, (bowing,))


def is_read_again(lesson: Lesson) -> bool:
    return read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,)


class TestABC:
    def test_a_repeat_of_ever_so_many_colons_is_played_no_more_often_than_a_lesson_can_say(self) -> None:
        (found,) = read_abc(f"X:1\nK:C\nCDEF|GABc|{':' * 151}CDEF|GABc:|\n").lessons
        assert found.tune.bars[-1].repeats == MAX_PASSES
        assert is_read_again(found)

    def test_a_bar_as_long_as_may_be_with_a_note_that_is_tied_on_is_read_again(self) -> None:
        bar = "c9" + "d" * (MAX_NOTES - 1)
        (found,) = read_abc(f"X:1\nM:none\nL:1/8\nK:C\n{bar}|\n").lessons
        assert len(found.tune.bars[0].notes) > MAX_NOTES
        assert is_read_again(found)

    def test_a_placed_text_that_is_all_digits_takes_no_time(self) -> None:
        began = time.process_time()
        (lesson,) = read_abc(f'X:1\nK:C\n"@{"1" * 100_000}"A|').lessons
        assert time.process_time() - began < GUARD_S
        assert lesson.tune.bars[0].words[0].text.startswith("111")

    def test_an_offset_is_taken_off_the_head_of_a_placed_text_only(self) -> None:
        (lesson,) = read_abc('X:1\nK:C\n"@3,-4.5 bars 1,2"A|').lessons
        assert [words.text for words in lesson.tune.bars[0].words] == ["bars 1,2"]

    def test_a_tuplet_larger_than_any_score_may_have_is_told_and_the_rest_read_again_equal(self) -> None:
        reading = read_abc("X:1\nL:1/8\nK:C\n(64:1:1A (65:1:1B (3ABc|")
        assert len(reading.problems) >= 1
        tuplets = {note.tuplet.actual for note in reading.lessons[0].tune.sequence if note.tuplet}
        assert tuplets == {64, 3}
        assert is_read_again(reading.lessons[0])

    def test_words_and_chords_late_in_a_very_long_bar_keep_their_place(self) -> None:
        (lesson,) = read_abc('X:1\nL:1/1\nM:none\nK:C\nA16 A16 A16 "^here" "Am" A2|').lessons
        assert lesson.tune.bars[0].words[0].at > 64
        assert is_read_again(lesson)

    def test_a_title_without_end_is_told_in_a_sentence_with_one(self) -> None:
        with pytest.raises(UnreadableFileError) as refusal:
            read_abc(f"X:1\nT:{'t' * 4000}\nK:C\n|")
        assert len(str(refusal.value)) < 200

    def test_a_tune_of_as_many_bars_as_there_may_be_is_whole(self) -> None:
        assert not read_abc("X:1\nL:1/1\nM:4/4\nK:C\n" + "A|" * MAX_BARS).problems

    def test_a_book_in_utf_16_is_no_document(self) -> None:
        assert read_file("X:1\nT:Gräs\nK:C\nABc|".encode("utf-16")).lessons[0].tune.title == "Gräs"


class TestMusicXML:
    def test_places_told_apart_ever_more_finely_take_no_time(self) -> None:
        chance = random.Random(1)
        notes = "".join(
            f"<attributes><divisions>{chance.randrange(10**8, 10**9) | 1}</divisions></attributes>"
            "<note><rest/><duration>10000000</duration></note>"
            for _ in range(1000)
        )
        measures = "".join(f'<measure number="{number}">{notes}</measure>' for number in range(8))
        began = time.process_time()
        reading = read_musicxml(scores(f'<part id="P1">{measures}</part>', names=("A",)).encode())
        assert time.process_time() - began < 4 * GUARD_S
        assert reading.lessons

    def test_a_name_without_end_is_told_in_a_sentence_with_one(self) -> None:
        voices = note("A4", 4) + "<backup><duration>96</duration></backup>" + note("C4", 4, "<voice>2</voice>")
        for problem in read_musicxml(scores(part(voices), names=("n" * 4000,)).encode()).problems:
            assert len(problem.text) < 200

    def test_a_unison_of_two_strings_is_not_tied_on_from_one(self) -> None:
        tie = '<tie type="{}"/>'
        both = note("C5", 1, tie.format("stop")) + note("C5", 1, before="<chord/>")
        (lesson,) = read_musicxml(score(note("C5", 1, tie.format("start")) + both + note("A4", 2)).encode()).lessons
        assert not lesson.tune.sequence[1].held
        assert is_read_again(lesson)

    def test_a_metre_of_different_units_that_nobody_counts_is_none(self) -> None:
        figures = "<beats>1</beats><beat-type>128</beat-type><beats>128</beats><beat-type>1</beat-type>"
        text = score(note("A4", 4)).replace("<beats>4</beats><beat-type>4</beat-type>", figures)
        reading = read_musicxml(text.encode())
        assert any("cannot be counted as a metre" in problem.text for problem in reading.problems)
        assert is_read_again(reading.lessons[0])

    def test_a_tag_without_end_is_told_in_a_sentence_with_one(self) -> None:
        with pytest.raises(UnreadableFileError) as refusal:
            read_musicxml(f"<{'x' * 4000}><y></{'z' * 4000}>".encode())
        assert len(str(refusal.value)) < 300


class TestLessonFields:
    @pytest.mark.parametrize(
        ("name", "text"),
        [
            ("bars", "0 times=-5"),
            ("bars", "0 times=999999999"),
            ("bars", f"0 key={'9' * 4000},major"),
            ("bars", "0 key=1,major,H9"),
            ("other-titles", '["\\ud800"]'),
            ("part-order", '["\\udc80"]'),
            ("P1.accents", "1e9999999"),
            ("P1.accents", "1/0"),
        ],
    )
    def test_a_value_that_no_lesson_has_is_told_and_left_out(self, name: str, text: str) -> None:
        found = from_fields([("bowbench:format", "1"), (f"bowbench:{name}", text)])
        assert len(found.problems) == 1
        assert found.tune == from_fields([]).tune
        assert found.bowing("P1").accents == AccentPlan()

    def test_a_field_that_comes_twice_and_is_understood_once_is_read_again_equal(self, lesson: Lesson) -> None:
        twice = "".join(
            f'<miscellaneous-field name="bowbench:number">{text}</miscellaneous-field>' for text in ("many", "3")
        )
        text = write_musicxml(lesson).replace("<miscellaneous>", f"<miscellaneous>{twice}")
        (read,) = read_musicxml(text.encode()).lessons
        assert read.tune.number == 3
        assert is_read_again(read)

    def test_a_credit_of_no_kind_is_kept_as_a_field(self, lesson: Lesson) -> None:
        field = '<miscellaneous-field name="bowbench:credit.">x</miscellaneous-field>'
        text = write_musicxml(lesson).replace("<miscellaneous>", f"<miscellaneous>{field}")
        (read,) = read_musicxml(text.encode()).lessons
        assert is_read_again(read)


@pytest.mark.parametrize("text", ["1e9999999", "1e-9999999", "9" * 5000, "1/0", "0,nan", ",".join(map(str, range(99)))])
def test_an_accent_plan_is_not_counted_out(text: str) -> None:
    with pytest.raises(ValueError, match="is no accent plan"):
        parse_plan(text)


class TestRecoveryCopies:
    @pytest.mark.parametrize(
        "said",
        [
            {"edited": "2031-05-04T17:30:05"},
            {"edits": float("inf")},
            {"shown": float("nan")},
            {"file": "a\0b"},
            {"file": "\ud800"},
            {"title": ["x"]},
            {"known": {"size": float("inf"), "sha256": ""}},
        ],
        ids=str,
    )
    def test_a_copy_that_says_nonsense_is_offered_all_the_same(
        self, tmp_path: Path, lesson: Lesson, said: dict
    ) -> None:
        write_copy(tmp_path / "good.musicxml", lesson, Note("good", datetime(2031, 5, 4, tzinfo=UTC), 1))
        text = (tmp_path / "good.musicxml").read_bytes()
        start, end = text.index(b"<?bowbench-recovery "), text.index(b"?>", text.index(b"<?bowbench-recovery "))
        told = b"<?bowbench-recovery " + json.dumps(GOOD_NOTE | said).encode()
        (tmp_path / "odd.musicxml").write_bytes(text[:start] + told + text[end:])
        left = left_behind(tmp_path)
        assert [one.lesson for one in left] == [lesson, lesson]
        for one in left:
            assert about(one)
            assert one.note.edited.tzinfo is not None
            one.hold.let_go()

    def test_a_copy_nested_without_end_says_nothing(self) -> None:
        with pytest.raises(ValueError, match="this copy does not say"):
            read_note(b"<?bowbench-recovery " + b"[" * 100_000 + b"?>")

    def test_a_bowing_shown_before_the_first_is_the_first(self) -> None:
        said = json.dumps(GOOD_NOTE | {"shown": -7, "edits": -1}).encode()
        note = read_note(b"<?bowbench-recovery " + said + b"?>")
        assert (note.shown, note.edits) == (0, 0)


class TestSettings:
    @pytest.mark.parametrize("state", [b"", b"abc", b"\0\0\0\xff\0\0\0\0\xfd" + b"\0" * 30 + b"\xfc]]>0\0\0\0\0"])
    def test_a_state_of_the_window_that_is_not_as_it_was_stored_is_forgotten(
        self, tmp_path: Path, state: bytes
    ) -> None:
        settings = Settings(tmp_path / "a.ini")
        settings._store.setValue("window/docks", QByteArray(state))  # in the last of these Qt goes round for ever
        assert settings.window("docks").isEmpty()
        settings.set_window("docks", QByteArray(state))
        assert settings.window("docks") == state

    def test_a_list_that_claims_to_hold_more_than_there_is_room_for_is_never_read(self, tmp_path: Path) -> None:
        path = tmp_path / "a.ini"
        path.write_text("[General]\nlook=dark\nrecent=@Variant(\\0\\0\\0\\true)\nzoom=2\n")  # Qt ends the program
        settings = Settings(path)
        assert (settings.look, settings.recent_files, settings.zoom) == (Look.DARK, (), 2.0)
        assert path.read_text() == "[General]\nlook=dark\nzoom=2\n"

    def test_a_value_that_python_has_no_type_for_is_as_if_it_were_not_there(self, tmp_path: Path) -> None:
        (tmp_path / "a.ini").write_text("[General]\nmarks=@Variant(\\0\\0\\0?\\0\\0)\n")  # a qfloat16, type 63
        assert Settings(tmp_path / "a.ini").marks == "every"


class TestNamesTooLongForAnyFile:
    def test_of_a_tune_in_a_set(self) -> None:
        assert parse_entry(f"{TOO_LONG}#3").number == 3

    def test_of_a_folder_in_the_settings(self, tmp_path: Path) -> None:
        (tmp_path / "a.ini").write_text(f"[General]\nfolder=/{TOO_LONG}\n")
        assert Settings(tmp_path / "a.ini").folder == Path.home()

    def test_of_a_place_to_be_packed(self) -> None:
        assert len(find_sources([Path(TOO_LONG)]).problems) == 1


class TestManifests:
    @pytest.mark.parametrize("archive", [0, "", [], {}, False])
    def test_an_archive_that_is_nothing_but_not_null_is_refused(self, archive: object) -> None:
        with pytest.raises(ValueError, match=r"\w"):
            read_manifest(json.dumps(MANIFEST_FORM | {"archive": archive}))

    def test_one_nested_without_end_is_refused_and_the_pack_made_again(self, tmp_path: Path) -> None:
        (tmp_path / MANIFEST).write_text("[" * 100_000)
        with PackFolder(tmp_path) as folder:
            assert len(folder.notices) == 1

    def test_a_name_of_half_characters_is_refused(self) -> None:
        with pytest.raises(ValueError, match="surrogates"):
            read_manifest(json.dumps(MANIFEST_FORM | {"lessons": [LESSON_ROW | {"name": "\ud800"}]}))


@pytest.fixture
def shelf(tmp_path: Path) -> Path:
    """A catalogue with two tunes, of one of which something was said."""
    path, book = tmp_path / "shelf.db", tmp_path / "music" / "book.abc"
    book.parent.mkdir()
    book.write_text("X:1\nT:One\nK:C\nABcd|\n\nX:2\nT:Two\nK:D\ndcBA|\n")
    with Catalogue(path) as catalogue:
        add_places(catalogue, [book.parent])
        scan(catalogue)
        tune = find(catalogue).entries[0].id
        set_status(catalogue, tune, "ready")
        change_tags(catalogue, tune, ["class"])
    return path


class TestShelf:
    def test_what_sqlite_quotes_at_length_is_told_in_a_sentence(self) -> None:
        text = str(DamagedShelfError(Path("shelf.db"), f"unrecognized token: {'x' * 5000}"))
        assert len(text) < 250
        assert text.endswith(".")

    @pytest.mark.parametrize(
        "statement",
        [
            "ALTER TABLE tune RENAME COLUMN title TO name",
            "ALTER TABLE tag ADD COLUMN more",
            "DROP TABLE figures; CREATE TABLE figures (content)",
            "DROP INDEX tune_by_content; CREATE INDEX tune_by_content ON tag (tag)",
            "DROP TABLE bowing; CREATE VIEW bowing AS SELECT 1 AS tune",
            "CREATE TRIGGER t BEFORE UPDATE ON tune BEGIN SELECT RAISE(ABORT, 'no'); END",
            "PRAGMA user_version = -1",
            "PRAGMA user_version = 0",
            "UPDATE place SET path = 5",
            "UPDATE file SET path = x''",
            "UPDATE file SET path = x'2f00'",
            "UPDATE tune SET other_titles = '[1]'",
            "UPDATE tune SET other_titles = '{'",
            "UPDATE tune SET title = x'ff'",
            "UPDATE tune SET title = CAST(x'ff41' AS TEXT)",
            "UPDATE tune SET position = -1 WHERE position = 0",
            "UPDATE tag SET tag = CAST(x'ff41' AS TEXT)",
            "UPDATE bowing SET name = x'00'",
            "INSERT INTO figures VALUES (x'00', 'on-beat', 1, 0, 0, 0, 0, 0)",
        ],
    )
    def test_a_catalogue_that_somebody_else_wrote_into_is_refused_and_built_anew(
        self, shelf: Path, statement: str
    ) -> None:
        connection = sqlite3.connect(shelf)
        connection.executescript(statement)
        connection.close()
        with pytest.raises(DamagedShelfError, match=DAMAGED), Catalogue(shelf) as used:
            find(used)
        assert rebuild(shelf).remarks == 1
        with Catalogue(shelf) as catalogue:
            scan(catalogue)
            assert {(entry.title, entry.status, entry.tags) for entry in find(catalogue).entries} == {
                ("One", "ready", ("class",)), ("Two", "", ()),
            }  # fmt: skip

    def test_rows_where_the_index_of_words_writes_its_own_are_damage(self, shelf: Path) -> None:
        with Catalogue(shelf) as catalogue:
            tune = find(catalogue).entries[0].id
        connection = sqlite3.connect(shelf)
        rows = [(number, b"", 2) for number in range(1, 60)]  # for the next pieces of the index (SQLite FTS5, 9)
        connection.executemany("INSERT OR IGNORE INTO words_idx VALUES (?, ?, ?)", rows)
        connection.commit()
        connection.close()
        with pytest.raises(DamagedShelfError, match=DAMAGED), Catalogue(shelf) as used:
            change_tags(used, tune, ["new"], [])

    def test_a_format_that_sqlite_does_not_have_is_damage(self, shelf: Path) -> None:
        data = bytearray(shelf.read_bytes())
        data[44:48] = b"\0\0\0\x63"  # schema format number (SQLite, Database File Format, 1.3.10)
        shelf.write_bytes(data)
        with pytest.raises(DamagedShelfError, match=DAMAGED):
            Catalogue(shelf)

    def test_the_whole_rows_of_a_damaged_catalogue_are_saved(self, shelf: Path) -> None:
        connection = sqlite3.connect(shelf)
        connection.executescript(
            "UPDATE tune SET status = 'ready'; UPDATE tune SET content = 5 WHERE title = 'Two';"
            "INSERT INTO place (path) VALUES (7)"
        )
        connection.close()
        path_aside(shelf).unlink()
        rebuilt = rebuild(shelf)
        assert (rebuilt.remarks, rebuilt.places) == (1, 1)

    @pytest.mark.parametrize(
        "change",
        [{"number": 10**30}, {"file": "\ud800"}, {"file": ""}, {"file": "/a\0b"}, {"tune": True}, {"content": "xyz"}],
        ids=str,
    )
    def test_a_remark_that_no_tune_can_have_is_passed_over(self, shelf: Path, change: dict[str, object]) -> None:
        aside = path_aside(shelf)
        line = {"tune": 9, "content": "00", "title": "t", "number": 1, "file": "/x", "status": "ready", "tags": []}
        aside.write_bytes(b"\n" + json.dumps(line | change).encode() + b"\n")
        assert read_aside(aside) == []
        rebuild(shelf)

    def test_half_characters_in_a_remark_are_left_out(self, shelf: Path) -> None:
        aside = path_aside(shelf)
        line = {
            "tune": 9,
            "content": "00",
            "title": "a\ud800",
            "number": 1,
            "file": "/x",
            "status": "ready",
            "tags": ["\ud800b"],
        }
        aside.write_bytes(json.dumps(line).encode())
        assert [(one.title, one.tags) for one in read_aside(aside)] == [("a", ("b",))]
        rebuild(shelf)

    def test_a_place_that_no_system_names_is_passed_over(self, shelf: Path) -> None:
        music = os.fspath(shelf.parent / "music")
        path_aside(shelf).write_text(json.dumps({"places": ["\ud800", "", "relative", "/a\0b", music]}))
        assert read_places_aside(path_aside(shelf)) == [os.fsencode(music)]
        rebuild(shelf)
        with Catalogue(shelf) as catalogue:
            assert places_of(catalogue) == (shelf.parent / "music",)


class TestStyles:
    def test_a_style_has_nothing_to_say_of_a_tune_whose_notes_cannot_be_joined(self) -> None:
        tune, bowing = bowed("z8|A8|]")
        assert log_odds(good_style(), tune, bowing) == {}

    @pytest.mark.parametrize(
        ("name", "array"),
        [
            ("keys.npy", np.zeros((3, 2), np.uint64)),
            ("keys.npy", np.zeros(3, np.uint64)),  # and counts for more
            ("joined.npy", np.array("x" * 9)),
            ("seen.npy", np.full(KEYS, -1, np.int32)),
            ("alone.0.value.npy", np.full((TREES, 12), np.nan, np.float32)),
            ("alone.0.value.npy", np.full((TREES, 12), 1e30, np.float32)),
        ],
    )
    def test_a_style_of_other_numbers_is_refused(self, name: str, array: np.ndarray) -> None:
        members = {each: npy(good) for each, good in good_arrays().items()} | {name: npy(array)}
        with pytest.raises(UnreadableFileError, match=r"^This is no style: .*\.$"):
            from_bytes(pack(list(members.items()), zipfile.ZIP_STORED))

    @pytest.mark.parametrize(
        "change",
        [
            {"figures": {"lessons": [], "places": 1, "joined": 0}},
            {"figures": {"lessons": 1, "places": "x", "joined": 0}},
            {"figures": {"lessons": 10**30, "places": 1, "joined": 0}},
            {"habits": [[["\ud800"], 1, 1, []]]},
            {"habits": [[["a"], 0.5, 1, []]]},
            {"name": 3},
            {"notice": ["a"]},
            {"notice": "\ud800"},
            {"share": 10**999},
            {"share": float("nan")},
            {"stages": [0, 1, 1]},
        ],
    )
    def test_a_style_that_is_told_in_other_words_is_refused(self, change: dict[str, object]) -> None:
        said = json.loads(good_arrays()["about.npy"].tobytes()) | change
        members = {name: npy(array) for name, array in good_arrays().items()}
        members["about.npy"] = npy(np.frombuffer(json.dumps(said).encode(), np.uint8))
        with pytest.raises(UnreadableFileError, match=r"^This is no style: .*\.$"):
            from_bytes(pack(list(members.items()), zipfile.ZIP_STORED))

    @pytest.mark.parametrize(
        ("place", "byte"),
        [(4, 73), (6, 64), (8, 99)],  # a zip of a later version, encrypted, packed in a way of its own
    )
    def test_an_archive_that_cannot_be_unpacked_is_no_style(self, place: int, byte: int) -> None:
        data = bytearray(to_bytes(good_style()))
        for head, more in ((b"PK\x03\x04", 0), (b"PK\x01\x02", 2)):
            data[data.index(head) + place + more] = byte
        with pytest.raises(UnreadableFileError, match=r"^This is no style: .*\.$"):
            from_bytes(bytes(data))

    @pytest.mark.parametrize("shape", [b"(99999999999999999999", b"(32999999967", b"(((", b"(-1"])
    def test_an_array_that_claims_any_shape_is_refused(self, shape: bytes) -> None:
        members = {name: npy(array) for name, array in good_arrays().items()}
        members["seen.npy"] = members["seen.npy"].replace(b"(400", shape, 1)
        with pytest.raises(UnreadableFileError, match=r"^This is no style: .*\.$"):
            from_bytes(pack(list(members.items()), zipfile.ZIP_STORED))

    def test_a_style_of_another_form_is_told_in_a_sentence(self) -> None:
        said = json.loads(good_arrays()["about.npy"].tobytes()) | {"format": "x" * 9999}
        members = {"about.npy": npy(np.frombuffer(json.dumps(said).encode(), np.uint8))}
        with pytest.raises(UnreadableFileError, match=r"A style of the form .* was expected.*: learn it again") as told:
            from_bytes(pack(list(members.items()), zipfile.ZIP_STORED))
        must_be_a_sentence(str(told.value))
