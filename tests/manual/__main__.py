"""``python -m tests.manual [PICTURE...]``: makes the pictures of the manual, all or those named, and its page of keys.

Both in every language that has pages. Look at them before they are kept.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PIL import Image  # comes with what music21 needs
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from app.language import ENGLISH
from app.manual import manual_folder, manual_languages
from tests.manual.keys_page import keys_page
from tests.manual.scenes import SCENES, WORDLESS, staged
from tests.manual.speaking import speaking

COLOURS = 160  # of a picture: they are few, and the files a third as large


def keep(picture: QImage, path: Path) -> None:
    """Write a picture with few colours."""
    rgb = picture.convertToFormat(QImage.Format.Format_RGB888)
    lines = bytes(rgb.constBits())
    image = Image.frombytes("RGB", (rgb.width(), rgb.height()), lines, "raw", "RGB", rgb.bytesPerLine())
    image.quantize(COLOURS, Image.Quantize.MAXCOVERAGE, dither=Image.Dither.NONE).save(path, optimize=True)


def main(names: list[str]) -> None:
    """Make the pictures and the pages of keys."""
    application = QApplication(["manual"])
    for language in manual_languages():
        folder = manual_folder(language)
        with speaking(language):
            for name in sorted(set(names or SCENES) - (WORDLESS if language != ENGLISH else set())):
                with TemporaryDirectory() as home:
                    os.environ["XDG_DATA_HOME"] = home
                    with staged(Path(home)) as stage:
                        keep(SCENES[name](stage), folder / "pictures" / f"{name}.png")
                print(language, name, flush=True)
            (folder / "keys.html").write_text(keys_page(), "utf-8")
    del application


if __name__ == "__main__":
    main(sys.argv[1:])
