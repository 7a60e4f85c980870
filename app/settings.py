"""What the program remembers from one start to the next: looks, window place, recent files.

Nothing of a lesson is kept here. Unreadable or foreign values fall back to the defaults, never raise.
"""

from __future__ import annotations

import hashlib
import os
from enum import Enum
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings

from app.files import write_atomically
from app.language import LANGUAGES
from core.sheet_plan import SheetPlan, for_any_lesson, read_plan, write_plan

RECENT_LIMIT = 8
DIGEST_BYTES = 16
FOREIGN_KINDS = (b"@Variant(", b"@DateTime(")  # how Qt writes what is neither text, number nor bytes
MARKS = ("every", "bars", "needed")  # the first is the default, here and below


class Look(Enum):
    """Which colours the window takes."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


class Settings:
    """Typed access to the settings file.

    Args:
        path: The file; the user's own where None.
    """

    def __init__(self, path: Path | None = None) -> None:
        if path is None:
            self._store = QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, "Bowbench", "Bowbench")
        else:
            self._store = QSettings(str(path), QSettings.Format.IniFormat)
        if _drop_foreign_values(Path(self._store.fileName())):
            self._store.sync()

    @property
    def look(self) -> Look:
        try:
            return Look(str(self._value("look", Look.SYSTEM.value)))
        except ValueError:
            return Look.SYSTEM

    @look.setter
    def look(self, look: Look) -> None:
        self._store.setValue("look", look.value)

    @property
    def language(self) -> str:
        """The language that was chosen, a key of ``app.language.LANGUAGES``; "" for that of the system."""
        return self._one_of("language", ("", *LANGUAGES))

    @language.setter
    def language(self, code: str) -> None:
        self._store.setValue("language", code)

    @property
    def zoom(self) -> float | None:
        """Pixels a picture unit relative to life size, or None to fit the width of the window."""
        try:
            zoom = float(str(self._value("zoom", "0")))
        except ValueError:
            return None
        return zoom if 0.25 <= zoom <= 5 else None

    @zoom.setter
    def zoom(self, zoom: float | None) -> None:
        self._store.setValue("zoom", str(zoom or 0))

    @property
    def marks(self) -> str:
        """Which strokes carry a bow mark on the page: ``every``, ``bars`` or ``needed``."""
        return self._one_of("marks", MARKS)

    @marks.setter
    def marks(self, marks: str) -> None:
        self._store.setValue("marks", marks)

    @property
    def strip(self) -> bool:
        """Whether the accent strip stands under the lines of the page."""
        return self._one_of("strip", ("shown", "hidden")) == "shown"

    @strip.setter
    def strip(self, shown: bool) -> None:
        self._store.setValue("strip", "shown" if shown else "hidden")

    @property
    def trace(self) -> bool:
        """Whether the way of the bow stands under the page."""
        return self._one_of("trace", ("shown", "hidden")) == "shown"

    @trace.setter
    def trace(self, shown: bool) -> None:
        self._store.setValue("trace", "shown" if shown else "hidden")

    @property
    def planner(self) -> bool:
        """Whether the planner stands beside the bow check."""
        return self._one_of("planner/pane", ("hidden", "shown")) == "shown"

    @planner.setter
    def planner(self, shown: bool) -> None:
        self._store.setValue("planner/pane", "shown" if shown else "hidden")

    def planner_choice(self, name: str, choices: tuple[str, ...]) -> str:
        """What was chosen last for the planner, one of ``choices``; the first where nothing was."""
        return self._one_of(f"planner/{name}", choices)

    def remember_planner_choice(self, name: str, choice: str) -> None:
        """Keep a choice for the planner."""
        self._store.setValue(f"planner/{name}", choice)

    @property
    def tour_seen(self) -> bool:
        """Whether the tour of the window has been shown."""
        return self._one_of("tour", ("new", "seen")) == "seen"

    @tour_seen.setter
    def tour_seen(self, seen: bool) -> None:
        self._store.setValue("tour", "seen" if seen else "new")

    @property
    def player(self) -> str:
        """How tunes are played, as ``app.player_choice`` writes it."""
        return str(self._value("player/choice", ""))

    @player.setter
    def player(self, choice: str) -> None:
        self._store.setValue("player/choice", choice)

    @property
    def sheet(self) -> SheetPlan:
        """The printed sheet that was set up last, without what belongs to its lesson."""
        try:
            return read_plan(str(self._value("sheet/plan", "{}")))
        except (ValueError, RecursionError):
            return SheetPlan()

    @sheet.setter
    def sheet(self, plan: SheetPlan) -> None:
        self._store.setValue("sheet/plan", write_plan(for_any_lesson(plan)))

    @property
    def folder(self) -> Path:
        """Where the last file was opened or saved; the home folder at first or where it is gone."""
        folder = Path(str(self._value("folder", "")) or Path.home())
        return folder if os.path.isdir(folder) else Path.home()

    @folder.setter
    def folder(self, folder: Path) -> None:
        self._store.setValue("folder", str(folder))

    @property
    def recent_files(self) -> tuple[Path, ...]:
        """Files opened or saved, the latest first, at most ``RECENT_LIMIT``."""
        return tuple(Path(line) for line in str(self._value("recent", "")).split("\n") if line)[:RECENT_LIMIT]

    def remember_file(self, path: Path) -> None:
        """Put a file at the head of the recent files."""
        path = path.resolve()
        kept = [other for other in self.recent_files if other != path]
        self._store.setValue("recent", "\n".join(map(str, [path, *kept][:RECENT_LIMIT])))
        self.folder = path.parent

    def forget_file(self, path: Path) -> None:
        """Take a file out of the recent files."""
        self._store.setValue("recent", "\n".join(str(other) for other in self.recent_files if other != path))

    @property
    def set_names(self) -> tuple[str, ...]:
        """The tunes of the set that was last put together, each named as ``app.set_entries`` does."""
        return tuple(line for line in str(self._value("set", "")).split("\n") if line)

    @set_names.setter
    def set_names(self, names: tuple[str, ...]) -> None:
        self._store.setValue("set", "\n".join(names))

    def window(self, part: str) -> QByteArray:
        """Stored place or split of a part of the window; empty at first, and where it is not as it was stored.

        Qt goes round for ever in some states that are damaged.
        """
        value = self._value(f"window/{part}", QByteArray())
        kept = bytes(value.data()) if isinstance(value, QByteArray) else b""
        state = kept[DIGEST_BYTES:]
        return QByteArray(state if kept[:DIGEST_BYTES] == _digest(state) else b"")

    def set_window(self, part: str, value: QByteArray) -> None:
        self._store.setValue(f"window/{part}", QByteArray(_digest(bytes(value.data())) + bytes(value.data())))

    def _value(self, key: str, otherwise: object) -> object:
        """What is kept under a key; ``otherwise`` where nothing is, or a value that Python has no type for."""
        try:
            return self._store.value(key, otherwise)
        except RuntimeError:
            return otherwise

    def _one_of(self, key: str, choices: tuple[str, ...]) -> str:
        value = str(self._value(key, choices[0]))
        return value if value in choices else choices[0]


def _drop_foreign_values(path: Path) -> bool:
    """Take values of kinds that are never kept here out of a settings file; whether there were any.

    To read one value Qt reads all, and makes room for whatever a list claims to hold: where there is none, the program
    would end.
    """
    try:
        lines = path.read_bytes().split(b"\n")
        kept = [line for line in lines if not any(kind in line for kind in FOREIGN_KINDS)]
        if kept != lines:
            write_atomically(path, b"\n".join(kept))
        return kept != lines
    except OSError:
        return False


def _digest(state: bytes) -> bytes:
    return hashlib.blake2b(state, digest_size=DIGEST_BYTES).digest()
