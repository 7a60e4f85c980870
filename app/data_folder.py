"""The user's data folder, as each system has it: where the shelf and the recovery copies stand."""

from __future__ import annotations

import os
import sys
from pathlib import Path

FOLDER = "Bowbench"


def data_folder() -> Path:
    """The folder of this program among the user's data; it need not exist yet.

    Linux and others: ``$XDG_DATA_HOME`` or ``~/.local/share`` (XDG Base Directory Specification 0.8); macOS:
    ``~/Library/Application Support``; Windows: ``%LOCALAPPDATA%``. A relative ``$XDG_DATA_HOME`` counts as unset, as
    that specification has it.
    """
    home = Path.home()
    if sys.platform == "win32":
        folder = Path(os.environ.get("LOCALAPPDATA") or home / "AppData" / "Local")
    elif sys.platform == "darwin":
        folder = home / "Library" / "Application Support"
    else:
        folder = Path(os.environ.get("XDG_DATA_HOME", ""))
        folder = folder if folder.is_absolute() else home / ".local" / "share"
    return folder / FOLDER
