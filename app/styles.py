"""Styles by name: the one that comes with the program, and the user's own, each a file in the data folder. No Qt."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from app.data_folder import data_folder
from app.files import FileError, write_atomically
from core.errors import UnreadableFileError
from core.file_faults import why
from core.pack.names import safe_name, same_file
from core.translation import tr, translatable

if TYPE_CHECKING:
    from core.style.style import Style

FOLDER, SUFFIX = "styles", ".npz"
BOOK = translatable("1883 book")
"""Name of the style that comes with the program; no style of the user's own can have it."""


class NoSuchStyleError(FileError):
    """There is no style of that name; the sentence says which there are."""


class StyleNameError(FileError):
    """No style can be kept under that name."""


def styles_folder() -> Path:
    """Where the user's own styles stand, beside the shelf; it need not exist yet."""
    return data_folder() / FOLDER


def own_styles() -> tuple[str, ...]:
    """The names of the user's own styles, in the order of the alphabet."""
    try:
        found = {safe_name(path.stem, "") for path in styles_folder().iterdir() if path.suffix == SUFFIX}
    except OSError:
        return ()
    return tuple(sorted(found - {""}, key=str.casefold))


def style_name(wanted: str) -> str:
    """The name under which a style is kept that is wanted under this one.

    That of an own style, where some system takes the two for one.

    Raises:
        StyleNameError: nothing can be kept under it, or it is that of the style that comes with the program.
    """
    name = safe_name(wanted, "")
    if not name:
        raise StyleNameError(tr("“{name}” is no name for a style: letters or digits were expected.", name=wanted))
    if is_book(name):
        raise StyleNameError(tr("“{name}” comes with the program: choose another name.", name=shown_name(BOOK)))
    return next((own for own in own_styles() if same_file(own) == same_file(name)), name)


def known_name(name: str) -> str:
    """The name of a style as it is kept, where capitals and the like are typed otherwise; "" where there is none."""
    if is_book(name):
        return BOOK
    return next((own for own in own_styles() if same_file(own) == same_file(safe_name(name, ""))), "")


def is_book(name: str) -> bool:
    """Whether it names the style that comes with the program, in English or in the language of the reader."""
    return same_file(name.strip()) in map(same_file, (BOOK, tr(BOOK)))


def shown_name(name: str) -> str:
    """A style's name as the reader sees it."""
    return tr(BOOK) if name == BOOK else name


def style_of(name: str) -> Style:
    """The style of a name, kept at hand once it was read.

    Raises:
        NoSuchStyleError: there is none.
        FileError: it cannot be read.
    """
    from core.style.style import book_of_1883  # loads numbers of its own

    own = known_name(name)
    if own == BOOK:
        return book_of_1883()
    if not own:
        there = ", ".join(f"“{known}”" for known in (shown_name(BOOK), *own_styles()))
        raise NoSuchStyleError(tr("There is no style “{name}”: there are {styles}.", name=name, styles=there))
    path = _path(own)
    try:
        return _read(path, path.stat().st_mtime_ns)
    except OSError as fault:
        raise FileError(tr("The style “{name}” cannot be read: {why}.", name=own, why=why(fault))) from fault
    except UnreadableFileError as fault:
        raise FileError(f"{path}: {fault}") from fault


def keep_style(style: Style) -> None:
    """Keep an own style under its name, in the place of one that has it already.

    Raises:
        FileError: it cannot be written; what stood there is as it was.
    """
    from core.style.style import to_bytes

    try:
        styles_folder().mkdir(parents=True, exist_ok=True)
        write_atomically(_path(style.name), to_bytes(style))
    except OSError as fault:
        raise FileError(
            tr("The style “{name}” cannot be kept: {why}.", name=style.name, why=why(fault, writing=True))
        ) from fault


def forget_style(name: str) -> None:
    """Take an own style away.

    Raises:
        FileError: there is none of this name, or it cannot be taken away.
    """
    own = style_name(name)
    try:
        _path(own).unlink()
    except FileNotFoundError:
        raise NoSuchStyleError(tr("You have no style “{name}”.", name=name)) from None
    except OSError as fault:
        raise FileError(tr("The style “{name}” cannot be taken away: {why}.", name=own, why=why(fault))) from fault


def _path(name: str) -> Path:
    return styles_folder() / f"{name}{SUFFIX}"


@lru_cache(maxsize=4)
def _read(path: Path, _changed: int) -> Style:
    from core.style.style import from_bytes

    return from_bytes(path.read_bytes())
