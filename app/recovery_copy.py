"""Recovery copies: lessons as they stood in windows that ended without saving, and what was known of each.

A copy is a lesson file like any other, with a processing instruction behind its first line that holds the rest as
JSON; so other programs read it too, should ours be gone. A window holds a claim on its copy for as long as it lives
(``app.hold``): a copy that nobody holds was left behind. Names hold the time, the process and a random number, so that
no window ever writes over the copy of another.
"""

from __future__ import annotations

import json
import os
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

from app.files import FileError, read_path, write_atomically
from app.hold import Hold
from app.imprint import Imprint, imprint_of
from core.lesson import Lesson
from core.values import dataclass

FORMAT = "bowbench-recovery/1"
SUFFIX, HELD_SUFFIX = ".musicxml", ".held"
_OPENING, _CLOSING = b"<?bowbench-recovery ", b"?>"


@dataclass(frozen=True)
class Note:
    """What is known of a lesson in a recovery copy.

    Attributes:
        title: Title of the tune.
        edited: When it was last edited, in UTC.
        edits: Steps, taken back ones too, since it was saved or opened.
        file: Its lesson file; None where it never had one.
        known: What that file looked like when the lesson was read from it or last saved; None where it is not known.
        shown: Which of its bowings was on the page.
    """

    title: str
    edited: datetime
    edits: int
    file: Path | None = None
    known: Imprint | None = None
    shown: int = 0


@dataclass(frozen=True)
class Left:
    """A copy that was left behind, claimed by us as long as it is looked at.

    Attributes:
        path: The copy.
        hold: The claim on it.
        note: What is known of it.
        lesson: The lesson; None where the copy cannot be read.
    """

    path: Path
    hold: Hold
    note: Note
    lesson: Lesson | None

    @property
    def file_has_changed(self) -> bool:
        """Whether the lesson's file is another now than the one that the lesson was read from."""
        if self.note.file is None:
            return False
        try:
            return imprint_of(self.note.file) != self.note.known
        except (OSError, ValueError):  # nothing has such a name
            return True


def new_path(folder: Path) -> Path:
    """A name for a copy that nobody has yet."""
    import secrets  # not for the start

    return folder / f"{datetime.now(UTC):%Y%m%d-%H%M%S}-{os.getpid()}-{secrets.token_hex(6)}{SUFFIX}"


def hold_of(path: Path) -> Hold:
    """The claim on a copy."""
    return Hold(path.with_suffix(HELD_SUFFIX))


def write_copy(path: Path, lesson: Lesson, note: Note) -> None:
    """Write a copy, whole or not at all.

    Raises:
        OSError: it cannot be written; the copy that stood there is as it was.
    """
    from core.writing.musicxml import write_musicxml

    head, body = write_musicxml(lesson).encode().split(b"\n", 1)
    path.parent.mkdir(parents=True, exist_ok=True)
    write_atomically(path, b"\n".join((head, _OPENING + _to_json(note) + _CLOSING, body)))


def read_note(data: bytes) -> Note:
    """What the bytes of a copy say of it.

    Raises:
        ValueError: they say nothing that can be understood.
    """
    start = data.find(_OPENING)
    end = data.find(_CLOSING, start)
    if start < 0 or end < 0:
        raise ValueError("this is no recovery copy")
    try:
        said = json.loads(data[start + len(_OPENING) : end])
        known = said["known"]
        edited = datetime.fromisoformat(said["edited"])
        if edited.tzinfo is None:
            raise ValueError("this copy does not say in which time zone it was edited")
        return Note(
            title=_text(said["title"]),
            edited=edited,
            edits=max(int(said["edits"]), 0),
            file=None if said["file"] is None else Path(_text(said["file"])),
            known=None if known is None else Imprint(int(known["size"]), str(known["sha256"])),
            shown=max(int(said["shown"]), 0),
        )
    except (KeyError, TypeError, AttributeError, OverflowError, RecursionError) as fault:
        raise ValueError(f"this copy does not say {fault}") from fault


def left_behind(folder: Path) -> list[Left]:
    """Copies that no window holds, the last edited first and what cannot be read last; claimed until let go or removed.

    One that is as its file is by now, since the window ended between saving and removing, is removed on the way.
    """
    found = []
    for path in sorted(folder.glob(f"*{SUFFIX}")):
        with suppress(OSError):
            left = _claim(path)
            if left is not None and _is_saved(left):
                remove(left.path, left.hold)
            elif left is not None:
                found.append(left)
    for claim in folder.glob(f"*{HELD_SUFFIX}"):
        if not claim.with_suffix(SUFFIX).exists():  # its window ended before the first copy stood
            with suppress(OSError):
                hold = Hold(claim)
                hold.take()
                hold.let_go()
    return sorted(found, key=lambda left: (left.lesson is not None, left.note.edited), reverse=True)


def remove(path: Path, hold: Hold) -> None:
    """Take a copy away and let go of it.

    Raises:
        OSError: it cannot be taken away.
    """
    try:
        path.unlink(missing_ok=True)
    finally:
        hold.let_go()


def _claim(path: Path) -> Left | None:
    hold = hold_of(path)
    if not hold.take():
        return None
    if not path.exists():  # its window took it away just now
        hold.let_go()
        return None
    try:
        lesson = read_path(path).lessons[0]
    except FileError:
        lesson = None
    try:
        note = read_note(path.read_bytes())
    except ValueError:
        title = path.name if lesson is None else lesson.tune.title
        note = Note(title, datetime.fromtimestamp(path.stat().st_mtime, UTC), 0)
    return Left(path, hold, note, lesson)


def _is_saved(left: Left) -> bool:
    if left.note.file is None or left.lesson is None:
        return False
    try:
        return read_path(left.note.file).lessons == (left.lesson,)
    except FileError:
        return False


def _text(value: object) -> str:
    """A text that the system takes as a name and the window shows.

    Raises:
        TypeError: it is none.
        ValueError: half characters or a NUL are in it.
    """
    if not isinstance(value, str):
        raise TypeError(f"a text, but {value!r}")
    if b"\0" in os.fsencode(value):
        raise ValueError("there is a NUL in a text")
    return value


def _to_json(note: Note) -> bytes:
    known = note.known
    text = json.dumps({
        "format": FORMAT,
        "title": note.title,
        "edited": note.edited.isoformat(timespec="seconds"),
        "edits": note.edits,
        "file": None if note.file is None else str(note.file.absolute()),
        "known": None if known is None else {"size": known.size, "sha256": known.sha256},
        "shown": note.shown,
    })  # fmt: skip
    return text.replace(">", "\\u003e").encode("ascii")  # so that nothing in it ends the instruction
