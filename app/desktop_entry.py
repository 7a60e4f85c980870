"""What makes a program of Bowbench on a Linux desktop: entry in the menu, icon, and the kinds of file that it opens.

Everything goes into the user's own data folder, after the Desktop Entry Specification 1.4, the Icon Theme Specification
0.13 and the Shared MIME-info Database specification 0.21. No kind of file changes hands: Bowbench joins the programs
that open it, and which of them does is left to the user.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import sysconfig
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, Qt
from PySide6.QtGui import QIcon, QImage, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from app.own_files import resource

NAME = "bowbench"
ICON_SIZES = (16, 22, 24, 32, 48, 64, 128, 256)  # pixels, as desktops ask for them
REFRESHERS = (
    ("update-mime-database", "mime"),
    ("update-desktop-database", "applications"),
    ("gtk-update-icon-cache", "icons/hicolor"),
)  # each is given the folder of that name among the user's data, after a change in it
TO_QUOTE = set(" \t\n\"'\\><~|&;$*?#()`")  # Desktop Entry Specification 1.4, "The Exec key"
TO_ESCAPE = ("\\", '"', "`", "$")


def user_data() -> Path:
    """Folder of the user's data: ``$XDG_DATA_HOME`` or ``~/.local/share`` (XDG Base Directory Specification 0.8)."""
    folder = Path(os.environ.get("XDG_DATA_HOME", ""))
    return folder if folder.is_absolute() else Path.home() / ".local" / "share"


def own_command() -> Path | None:
    """The installed command; None where there is none."""
    called = Path(sys.argv[0])
    for path in (called.absolute(), Path(sysconfig.get_path("scripts")) / NAME):
        if path.name == NAME and path.is_file() and os.access(path, os.X_OK):
            return path
    found = shutil.which(NAME)
    return Path(found).absolute() if found is not None else None


def exec_value(command: Path) -> str:
    """A command as the Exec key has it: quoted where it must be, percent signs doubled, and open for one file."""
    text = str(command).replace("%", "%%")
    if TO_QUOTE & set(text):
        for character in TO_ESCAPE:
            text = text.replace(character, f"\\{character}")
        text = f'"{text}"'.replace("\\", "\\\\")  # a string of the file has escapes of its own
    return f"{text} %f"


def draw_icon(size: int) -> QImage:
    """The program's icon, ``size`` pixels wide and high."""
    image = QImage(size, size, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(QByteArray(_text(f"{NAME}.svg").encode())).render(painter)
    painter.end()
    return image


def program_icon() -> QIcon:
    """The program's icon, for its windows."""
    icon = QIcon()
    for size in ICON_SIZES:
        icon.addPixmap(QPixmap.fromImage(draw_icon(size)))
    return icon


def _png(image: QImage) -> bytes:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]  # the stubs want bytes for the name of the format
    return bytes(buffer.data().data())


def entry_files(command: Path) -> dict[str, bytes]:
    """All files of the entry: path below the user's data, and what stands in it."""
    entry = _text(f"{NAME}.desktop").replace(f"Exec={NAME} %f", f"Exec={exec_value(command)}")
    icons = {f"icons/hicolor/{size}x{size}/apps/{NAME}.png": _png(draw_icon(size)) for size in ICON_SIZES}
    return {
        f"applications/{NAME}.desktop": entry.encode(),
        f"mime/packages/{NAME}.xml": _text(f"{NAME}-types.xml").encode(),
        f"icons/hicolor/scalable/apps/{NAME}.svg": _text(f"{NAME}.svg").encode(),
        **icons,
    }


def install(command: Path, data: Path) -> list[Path]:
    """Write the files below ``data`` and have the desktop read them.

    Returns:
        What was written.
    Raises:
        OSError: it cannot be written.
    """
    written = []
    for name, content in entry_files(command).items():
        path = data / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
        written.append(path)
    _refresh(data)
    return written


def remove(data: Path) -> list[Path]:
    """Take the files away again and have the desktop forget them.

    Returns:
        What was there and is gone.
    Raises:
        OSError: a file cannot be removed.
    """
    gone = [path for name in entry_files(Path(NAME)) if (path := data / name).is_file()]
    for path in gone:
        path.unlink()
    if gone:
        _refresh(data)
    return gone


def _refresh(data: Path) -> None:
    """Run what desktops keep their lists with; where that is missing or fails, they read the folders themselves."""
    for program, folder in REFRESHERS:
        found, place = shutil.which(program), data / folder
        if found is not None and place.is_dir():
            subprocess.run([found, str(place)], capture_output=True, check=False)


def _text(name: str) -> str:
    return resource("desktop", name).read_text("utf-8")
