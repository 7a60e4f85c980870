"""``python -m tests.screens OUT [VIEW...]``: pictures of the window and its dialogs on screens of several sizes.

    --size WIDTHxHEIGHT[@RATIO]   one screen, in its own pixels, at a device pixel ratio; all of SIZES where left out
    --language CODE --theme light|dark --text PERCENT

A view that is larger than its screen is told. For looking at, by hand: what can be tested is in the tests.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory

SIZES = ("1024x600", "1366x768", "1920x1080", "3840x2160", "3840x2160@2")
DOTS_PER_INCH = 96


def parse(arguments: list[str]) -> argparse.Namespace:
    """What is asked for."""
    parser = argparse.ArgumentParser(prog="python -m tests.screens")
    parser.add_argument("out", type=Path)
    parser.add_argument("views", nargs="*")
    parser.add_argument("--size")
    parser.add_argument("--language", default="en")
    parser.add_argument("--theme", default="light", choices=["light", "dark"])
    parser.add_argument("--text", type=int, default=100)
    return parser.parse_intermixed_args(arguments)


def main(arguments: list[str]) -> None:
    """Make the pictures, each screen in a process of its own: Qt asks for the screen once."""
    asked = parse(arguments)
    if asked.size is not None:
        make(asked)
        return
    for size in SIZES:
        subprocess.run([sys.executable, "-m", "tests.screens", *arguments, "--size", size], check=True)


def make(asked: argparse.Namespace) -> None:
    """Make the pictures of one screen."""
    pixels, _, ratio = asked.size.partition("@")
    ratio = int(ratio or 1)
    width, height = (int(side) // ratio for side in pixels.split("x"))
    asked.out.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory() as home:
        screen = {"name": "screen", "x": 0, "y": 0, "width": width * ratio, "height": height * ratio,
                  "logicalDpi": DOTS_PER_INCH, "logicalBaseDpi": DOTS_PER_INCH, "dpr": ratio}  # fmt: skip
        (Path(home) / "screen.json").write_text(json.dumps({"screens": [screen]}), "utf-8")
        os.environ["QT_QPA_PLATFORM"] = f"offscreen:configfile={home}/screen.json"
        os.environ["XDG_DATA_HOME"] = os.environ["XDG_CONFIG_HOME"] = home
        _make_all(asked, Path(home), (width, height))


def _make_all(asked: argparse.Namespace, home: Path, size: tuple[int, int]) -> None:
    from PySide6.QtWidgets import QApplication

    from app.language import use_language, use_language_in_qt
    from app.settings import Look
    from app.theme import scaled_font
    from app.window_layout import FRAME
    from tests.manual.scenes import staged
    from tests.screens.views import VIEWS

    application = QApplication(["screens"])
    application.setFont(scaled_font(application.font(), asked.text / 100))
    use_language(asked.language)
    use_language_in_qt(application, asked.language)
    room = (size[0] - FRAME.width(), size[1] - FRAME.height())
    for name in asked.views or VIEWS:
        folder = home / name
        folder.mkdir()
        with staged(folder, room, Look(asked.theme)) as stage:
            picture = VIEWS[name](stage)
        words = "-".join((name, asked.size, asked.language, asked.theme, str(asked.text)))
        picture.save(str(asked.out / f"{words}.png"))
        needed = picture.size() / picture.devicePixelRatio()
        over = needed.width() > room[0] or needed.height() > room[1]
        print(words, f"{needed.width()} x {needed.height()}" + (" IS TOO LARGE" if over else ""), flush=True)
    del application


if __name__ == "__main__":
    main(sys.argv[1:])
