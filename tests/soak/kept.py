"""What the program keeps on purpose, so as not to make it again: how much, how much at most; and how to let it go.

What is kept by a value (``core.once``, ``cached_property``) or beside one (weak keys) goes with the value and is not
told here. Nor is what Qt keeps of icons and of parts that it paints often (``QPixmapCache``, 10 MB at most), since it
does not say how much that is; it is let go with the rest.
"""

from __future__ import annotations

import gc
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from functools import _lru_cache_wrapper

from PySide6.QtGui import QPixmapCache

from app.document import REPORTS_KEPT, Document
from app.findings_model import ROWS_KEPT, FindingDelegate
from app.page_painter import PIXMAPS_KEPT, PagePainter
from app.player_take import BLOCKS_KEPT, Sound
from core.engraving.engraver import TUNES_KEPT, Engraver

FINITE = {  # caches of functions that have no bound, since there is only so much to keep
    "app.difference_painting.shape_paths": "the shapes",
    "app.fonts.load_fonts": "one answer",
    "app.fonts.page_font": "styles of two fonts at one size",
    "app.page_accessible.install": "the page",
    "app.printing.need_application": "one answer",
    "core.engraving.glyphs.engraver_data": "one answer",
    "core.engraving.glyphs.glyph_box": "the music font",
    "core.engraving.glyphs.glyph_outline": "the music font",
    "core.shelf.soundness.layout_after": "the steps of the layout",
    "core.sound.clicks._tick": "two clicks",
    "core.sound.fiddle_bank.keys": "one answer",
    "core.sound.fiddle_bank.recording": "the recordings",
    "core.style.contexts._salts": "one answer",
    "core.style.style.book_of_1883": "one answer",
    "core.xml_characters._others": "one answer",
}

STORES = [  # class, attribute, and how many there may be; None where each object has its own bound
    (Engraver, "_pictures", None),
    (Engraver, "_rooms", None),
    (Engraver, "_tunes", TUNES_KEPT),
    (Document, "_reports", REPORTS_KEPT),
    (PagePainter, "_pixmaps", PIXMAPS_KEPT),
    (FindingDelegate, "_rows", ROWS_KEPT),
    (Sound, "_blocks", BLOCKS_KEPT),
]


@dataclass(frozen=True)
class Kept:
    """What one cache holds.

    Attributes:
        name: Of the function or the object that keeps it.
        holds: How many answers.
        most: How many there may be; None where no bound is set.
    """

    name: str
    holds: int
    most: int | None


def function_caches() -> dict[str, _lru_cache_wrapper]:
    """The caches of all functions of ours that have been imported, by name."""
    ours = [module for name, module in sorted(sys.modules.items()) if name.split(".")[0] in ("app", "core")]
    return {
        f"{value.__module__}.{value.__qualname__}": value
        for module in ours
        for value in vars(module).values()
        if isinstance(value, _lru_cache_wrapper)
    }


def kept() -> list[Kept]:
    """What is kept now, the most first."""
    found = [
        Kept(name, cache.cache_info().currsize, cache.cache_info().maxsize) for name, cache in function_caches().items()
    ]
    return sorted([*found, *(kept for kept, _ in _stores())], key=lambda kept: -kept.holds)


def let_go() -> None:
    """Forget all of it that has a bound."""
    for cache in function_caches().values():
        if cache.cache_info().maxsize is not None:
            cache.cache_clear()
    for _, store in _stores():
        store.clear()
    QPixmapCache.clear()


def _stores() -> Iterator[tuple[Kept, dict]]:
    """Dictionaries in which objects of ours keep what they made last."""
    for thing in gc.get_objects():
        for kind, attribute, most in STORES:
            if isinstance(thing, kind):
                store = getattr(thing, attribute)
                bound = thing._kept if most is None else most
                yield Kept(f"{kind.__name__}: {attribute.strip('_')}", len(store), bound), store
