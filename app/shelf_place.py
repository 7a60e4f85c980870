"""Where the shelf stands when nobody says otherwise."""

from __future__ import annotations

from pathlib import Path

from app.data_folder import data_folder

FILE = "shelf.db"


def default_shelf() -> Path:
    """The user's own shelf."""
    return data_folder() / FILE
