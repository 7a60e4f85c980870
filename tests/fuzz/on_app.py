"""What the program keeps for itself: settings, recovery copies, manifests of packs."""

from __future__ import annotations

import json
import os
import random
import sys
from contextlib import suppress
from datetime import UTC, datetime
from functools import cache

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QCoreApplication, QEvent, QObject
from PySide6.QtWidgets import QApplication, QMainWindow, QSplitter

from app.document import Document
from app.main_window import MainWindow
from app.pack_folder import MANIFEST, PackFolder
from app.player_choice import PlayerChoice, read_choice, write_choice
from app.recovery import Recovery
from app.recovery_copy import Note, left_behind, remove, write_copy
from app.recovery_dialog import RecoveryDialog, _words, about
from app.set_entries import EntryError, parse_entry
from app.settings import Look, Settings
from core.pack.manifest import FileRecord, LessonRecord, Manifest, record_of, write_manifest
from core.pack.names import Identity
from core.pack.planning import plan_pack
from core.sheet_plan import SheetKind, SheetPlan, write_plan
from tests.fuzz import corpus
from tests.fuzz.mutation import NUMBERS, TEXTS, spoil_bytes, spoil_json, spoil_text
from tests.fuzz.outcomes import (
    LAW_EACH,
    PIPELINE_EACH,
    READ,
    REFUSED,
    WINDOW_EACH,
    Reader,
    scratch_folder,
    without_name,
)


@cache
def _application() -> object:
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

    return QApplication.instance() or QApplication(["bowbench-fuzz"])


@cache
def _good_settings() -> str:
    """The settings file of somebody who used everything."""
    _application()
    with scratch_folder() as folder:
        settings = Settings(folder / "a.ini")
        settings.look, settings.zoom, settings.marks = Look.DARK, 1.5, "bars"
        settings.strip, settings.trace, settings.planner = False, True, True
        settings.sheet = SheetPlan(SheetKind.CLASS, paper="Letter")
        settings.player = write_choice(PlayerChoice())
        settings.set_names = ("book.abc#3x2/Smooth", "b.abc")
        settings.remember_file(folder / "x.abc")
        settings.remember_planner_choice("accents", "on-beat")
        window = QMainWindow()
        settings.set_window("place", window.saveGeometry())
        settings.set_window("docks", window.saveState())
        settings.set_window("split", window.saveState())
        _let_go(window)
        settings._store.sync()
        return without_name((folder / "a.ini").read_bytes(), folder).decode()


INI_VALUES = (
    "@Variant(\\0\\0\\0\\x7f\\0\\0\\0\\xff)", "@Invalid()", "@Rect(0 0 -1 99999999)", "@Size(1)", "@Point()",
    "@ByteArray()", "@String(x)",
    "@ByteArray(\\x1\\xd9\\xd0\\xcb\\0\\x3\\0\\0\\xff\\xff\\xff\\xff\\x7f\\xff\\xff\\xff)", "@@x", "a, b, c", '"a',
    "\\x", "\\xd800", "true", "%U0001f3bb",
    "{\"ladder\": [60, 1e999, 5, 1]}", "\"{\\\"levels\\\": {\\\"fiddle\\\": NaN}}\"", "/proc/self/mem", "/dev/zero",
    "a\\0b", "C:\\\\x", "\\n" * 50,
    "[" * 20000, "\"" + "{\\\"a\\\":" * 9000, "@DateTime(\\0\\0\\0\\x10)",
    "@Variant(" + "\\0\\0\\0\\b\\0\\0\\0\\x1" * 5 + ")",
)  # fmt: skip


def settings(chance: random.Random) -> bytes:
    lines = _good_settings().split("\n")
    for _ in range(chance.choice((1, 2, 4, 10))):
        place = chance.randrange(len(lines))
        key, equals, value = lines[place].partition("=")
        match chance.randrange(7):
            case 0:
                del lines[place]
            case 1 | 2 if equals:
                lines[place] = f"{key}={chance.choice(INI_VALUES)}"
            case 3 if equals:
                lines[place] = f"{key}={chance.choice((*NUMBERS, *TEXTS))}"
            case 4 if equals:
                lines[place] = f"{key}={spoil_text(value[:300], chance)}"
            case 5:
                other = chance.choice(lines).partition("=")[2]
                lines[place] = f"{key}={other}"
            case 6:
                lines.insert(place, chance.choice(("[window]", "[", "[]", "=", "x", "a/b/c=1", "\\=1", lines[place])))
        if not lines:
            lines = [""]
    data = "\n".join(lines).encode("utf-8", "surrogatepass")
    return spoil_bytes(data, chance) if chance.randrange(5) == 0 else data


def feed_settings(data: bytes, number: int) -> str:
    """Read every setting as the window does when it opens."""
    _application()
    with scratch_folder() as folder:
        path = folder / "a.ini"
        path.write_bytes(data)
        settings = Settings(path)
        values = [
            settings.look,
            settings.zoom,
            settings.marks,
            settings.strip,
            settings.trace,
            settings.planner,
            settings.folder,
        ]
        values += [settings.planner_choice("accents", ("on-beat", "backbeat")), settings.recent_files]
        write_plan(settings.sheet)
        write_choice(read_choice(settings.player))
        for name in settings.set_names:
            with suppress(EntryError):
                parse_entry(name)
        for recent in settings.recent_files:
            os.path.exists(recent)
        if number % LAW_EACH == 0:
            window, splitter = QMainWindow(), QSplitter()
            window.restoreGeometry(settings.window("place"))
            splitter.restoreState(settings.window("split"))
            window.restoreState(settings.window("docks"))
            _let_go(window, splitter)
        if number % WINDOW_EACH == 0:
            _open_window(settings)
        settings.remember_file(folder / "b.abc")
        settings.forget_file(folder / "b.abc")
        return READ if values else REFUSED


def _let_go(*objects: QObject) -> None:
    """End objects of Qt at once; ``processEvents`` would leave them standing, ever more of them."""
    for one in objects:
        one.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def _open_window(settings: object) -> None:

    raised: list[BaseException] = []
    before, sys.excepthook = sys.excepthook, lambda kind, fault, trace: raised.append(fault)
    try:
        window = MainWindow(settings)
        window.show()
        for _ in range(5):
            _application().processEvents()
        window.close()
        _let_go(window)
        _application().processEvents()
    finally:
        sys.excepthook = before
    if raised:
        raise raised[0]


NOTE = {
    "format": "bowbench-recovery/1", "title": "The Weir", "edited": "2031-05-04T17:30:05+00:00", "edits": 3,
    "file": "/tmp/none/x.musicxml",
    "known": {"size": 12, "sha256": "0" * 64}, "shown": 0,
}  # fmt: skip
DATES = (
    "2031-05-04T17:30:05",
    "2031-05-04",
    "0001-01-01T00:00:00+23:59",
    "9999-12-31T23:59:59-23:59",
    "20310504T173005Z",
    "1e9",
)


def recovery(chance: random.Random) -> bytes:
    body = chance.choice(corpus.our_scores()).encode()
    note = json.dumps(NOTE | ({"edited": chance.choice(DATES)} if chance.randrange(6) == 0 else {}))
    note = spoil_json(note, chance) if chance.randrange(4) else note
    head, rest = body.split(b"\n", 1)
    if chance.randrange(4) == 0:
        rest = spoil_bytes(rest, chance)
    said = b"<?bowbench-recovery " + note.encode("utf-8", "surrogatepass") + b"?>"
    data = b"\n".join((head, *[said] * chance.choice((1, 1, 1, 1, 0, 2)), rest))
    return spoil_bytes(data, chance) if chance.randrange(4) == 0 else data


@cache
def _good_copy() -> bytes:
    with scratch_folder() as folder:
        write_copy(folder / "b.musicxml", corpus.lessons()[0], Note("x", datetime(2031, 5, 4, tzinfo=UTC), 1))
        return (folder / "b.musicxml").read_bytes()


def feed_recovery(data: bytes, number: int) -> str:
    """Look at what was left behind, beside a good copy, as the dialog does; then open what can be opened."""
    _application()
    with scratch_folder() as folder:
        (folder / "a.musicxml").write_bytes(data)
        (folder / "b.musicxml").write_bytes(_good_copy())
        left = left_behind(folder)
        assert corpus.lessons()[0] in [one.lesson for one in left], "the good copy is not offered"
        for one in left:
            assert all(isinstance(word, str) for word in _words(one))
            about(one)
            _ = one.file_has_changed
        if number % PIPELINE_EACH == 0:
            _let_go(RecoveryDialog(left))
        outcome = READ if len(left) == 2 and all(one.lesson for one in left) else REFUSED
        for one in left:
            if number % LAW_EACH == 0 and one.lesson is not None:
                document = Document()
                recovery = Recovery(document, folder=folder)
                recovery.open_left(one)
                recovery.end()
                _let_go(document)
            else:
                remove(one.path, one.hold)
        return outcome


@cache
def _good_manifest() -> str:

    lessons = [
        LessonRecord(
            Identity("s", name, 0), name, "f", (record_of(f"{name}/{name}.abc", name.encode()),), ("a remark",)
        )
        for name in ("Reel", "Jig")
    ]
    return write_manifest(Manifest(tuple(lessons), FileRecord("Class.zip", 3, ""), "0" * 64))


def manifest(chance: random.Random) -> bytes:
    text = spoil_json(_good_manifest(), chance)
    data = text.encode("utf-8", "surrogatepass")
    return spoil_bytes(data, chance) if chance.randrange(6) == 0 else data


def feed_manifest(data: bytes, number: int) -> str:
    """Take up a folder with such a manifest and change all that it names; nothing else may be touched."""
    with scratch_folder() as top:
        folder = top / "Class"
        for name in ("Reel", "Jig"):
            (folder / name).mkdir(parents=True)
            (folder / name / f"{name}.abc").write_text(name)
        mine = (top / "mine.txt", folder / "mine.txt", folder / "Reel" / "mine.txt")
        for path in mine:
            path.write_text("mine")
        (folder / MANIFEST).write_bytes(data)
        with PackFolder(folder) as pack_folder:
            lessons = pack_folder.manifest.lessons
            for record in lessons:
                for file in record.files:
                    pack_folder.stands(file)
            with suppress(OSError):  # which ``make_pack`` tells
                plan_pack((), pack_folder.manifest, pack_folder.stands)
                pack_folder.drop(lessons)
            with suppress(OSError):
                pack_folder.write_contents("page")
                pack_folder.write_archive((), lambda _: False)
            outcome = REFUSED if pack_folder.notices else READ
        for path in mine:
            assert any(other.read_bytes() == b"mine" for other in path.parent.iterdir() if other.is_file()), (
                f"{path} is gone"
            )
        assert isinstance(pack_folder.manifest, Manifest)
        return outcome


FED = {
    "settings": Reader(settings, feed_settings, ".ini"),
    "recovery": Reader(recovery, feed_recovery, ".musicxml"),
    "manifest": Reader(manifest, feed_manifest, ".json"),
}
