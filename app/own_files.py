"""Where the files lie that come with the program: beside ``app`` in the repository and in the package alike."""

from __future__ import annotations

from pathlib import Path

TOP = Path(__file__).resolve().parent.parent


def resource(*names: str) -> Path:
    """A file or folder of ``resources``; wheels are unpacked, so it is always one on the disk.

    (``importlib.resources`` finds it too, by modules that the window's start would wait for.)
    """
    return TOP.joinpath("resources", *names)
