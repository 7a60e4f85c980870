"""Pictures that someone has looked at: compare with them, or accept new ones on purpose.

``assert_approved(image, "name")`` compares with ``tests/golden/name.png``. Where too much differs, the expected
picture, the actual one and their difference are saved in ``tests/golden/failed/`` and the test fails. After looking at
the actual picture, accept it by running the test again with ``BOWBENCH_APPROVE=1`` in the environment.
"""

from __future__ import annotations

import os
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QImage

HERE = Path(__file__).parent
FAILED = HERE / "failed"
VISIBLE = 64  # of 255: a pixel that differs more than this in some channel counts
TOLERATED = 0.002  # share of such pixels


def assert_approved(image: QImage, name: str) -> None:
    """Compare a picture with the approved one of this name.

    Raises:
        AssertionError: there is none yet, its size is another, or more than ``TOLERATED`` of its pixels differ.
    """
    path = HERE / f"{name}.png"
    if os.environ.get("BOWBENCH_APPROVE") == "1":
        assert image.save(str(path)), f"cannot write {path}"
        return
    expected = QImage(str(path))
    share = difference(image, expected)
    if share <= TOLERATED:
        return
    FAILED.mkdir(exist_ok=True)
    image.save(str(FAILED / f"{name}-actual.png"))
    if expected.isNull():
        raise AssertionError(f"{name}: no approved picture yet; look at tests/golden/failed/{name}-actual.png")
    expected.save(str(FAILED / f"{name}-expected.png"))
    if expected.size() == image.size():
        _where(image, expected).save(str(FAILED / f"{name}-difference.png"))
    raise AssertionError(f"{name}: {share:.2%} of the picture differs; look at tests/golden/failed/{name}-*.png")


def difference(image: QImage, expected: QImage) -> float:
    """Share of pixels that differ visibly, 0 to 1; 1 for pictures of unlike size."""
    if expected.isNull() or image.size() != expected.size():
        return 1.0
    return float((np.abs(_pixels(image) - _pixels(expected)).max(axis=2) > VISIBLE).mean())


def _pixels(image: QImage) -> NDArray[np.int16]:
    image = image.convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).astype(np.int16)


def _where(image: QImage, expected: QImage) -> QImage:
    """The expected picture, pale, with what differs in red."""
    pale = 200 + _pixels(expected) // 5
    differs = np.abs(_pixels(image) - _pixels(expected)).max(axis=2) > VISIBLE
    pale[differs] = (220, 0, 0)
    data = np.ascontiguousarray(pale.clip(0, 255).astype(np.uint8))
    return QImage(data.data, image.width(), image.height(), 3 * image.width(), QImage.Format.Format_RGB888).copy()
