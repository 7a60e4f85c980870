"""The engraver: one line of one bowing in, a picture out.

The only module that talks to verovio. What reaches it is our own MEI, never anybody's file.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace
from fractions import Fraction
from functools import cached_property, partial
from typing import TYPE_CHECKING, Any

from core.bowing import Bowing
from core.engraving.grace_room import NO_ROOM, GraceRoom, missing_graces
from core.engraving.keeping import Keeper, picture_name, tune_digest
from core.engraving.lines import Line
from core.engraving.picture import SHARED, Picture, without_shared
from core.tune import Note, Tune

if TYPE_CHECKING:
    from core.engraving.mei import Document

_OPTIONS: dict[str, Any] = {
    "scale": 100, "header": "none", "footer": "none", "adjustPageHeight": True,
    "pageMarginTop": 8, "pageMarginBottom": 4, "pageMarginLeft": 0, "pageMarginRight": 0,
    "font": "Leipzig", "smuflTextFont": "none", "fontTextLiberation": True,
    "svgRemoveXlink": True, "svgFormatRaw": True,
    "mmOutput": True,  # the same coordinates, without a style sheet: drawn in three quarters of the time
    "rightMarginKeySig": 2.0,  # room for what stands in front of two rows of bow signs; no more is allowed
    "defaultBottomMargin": 0.7,  # air under signs over notes
    "minLastJustification": 0,  # as wide as told, however few the notes
}  # fmt: skip
_LOOSE, _TIGHT = 0.18, 0.05  # verovio's spacingLinear: as a rule, and where a line would not fit
_CLEAR = 1.0  # room behind bar lines where a new key or metre stands there, in half staff spaces
_PAGE_HEIGHT = 6000  # more than any line needs
MIN_WIDTH_UNITS = 4000
TUNES_KEPT = 32
LONE_BAR = Fraction(2, 5)  # of the width is what a line of one bar takes


class EngravingError(RuntimeError):
    """The engraver refused a document of ours: a programming mistake, never the fault of a tune."""


class Engraver:
    """Engraves lines; keeps the pictures it made last.

    One engraver may serve any number of tunes. It is not to be used from two threads at a time.
    """

    def __init__(self, kept: int = 512, keeper: Keeper | None = None) -> None:
        """Make an engraver that keeps this many pictures for the next time.

        Args:
            kept: How many.
            keeper: Has pictures that were engraved in other processes.
        """
        self._keeper = keeper
        self._options = dict(_OPTIONS)
        self._kept = kept
        self._pictures: OrderedDict[tuple[object, ...], Picture] = OrderedDict()
        self._rooms: OrderedDict[object, tuple[int, float]] = OrderedDict()
        self._tunes: OrderedDict[int, tuple[Tune, int]] = OrderedDict()
        self._tunes_seen = 0

    @cached_property
    def _toolkit(self) -> Any:
        """Loaded for the first line: a window without a tune does without."""
        import verovio

        verovio.enableLog(verovio.LOG_OFF)
        return verovio.toolkit()

    def engrave(
        self,
        tune: Tune,
        bowing: Bowing,
        line: Line,
        slots: Mapping[str, int],
        width_units: int = 18000,
        room: GraceRoom = NO_ROOM,
        *,
        shared: bool = True,
    ) -> Picture:
        """Engrave one line.

        Args:
            tune: The tune.
            bowing: The bowing: its joins and signs are drawn; its directions are not.
            line: Which bars.
            slots: For how many rows of bow signs room is kept over a note, 1 or 2, by note id.
            width_units: Width of the picture in 1/100 mm at natural size (staff 7.2 mm high), at least 4000.
            room: Grace notes that there is room for at least (``grace_room``): bowings that are given the same room
                have their notes in the same places.
            shared: Show what is the same for all bowings: chords, words, part letters, tempo and bar number. Without
                it all else stands where it would stand with it.
        Returns:
            The picture, exactly as wide as asked; a very short line ends before the right edge, and a line with more
            notes than fit is wider: ``Picture.width`` says how wide, and the caller scales it down. The same object
            comes back while nothing on the line changes.
        Raises:
            EngravingError: verovio did not take the document.
        """
        width = max(int(width_units), MIN_WIDTH_UNITS)
        missing = missing_graces(bowing, room) if room else NO_ROOM
        unseen = {note.id: missing[note.id] for note in _notes(tune, line) if note.id in missing} if missing else {}
        key = (self._number(tune), line, width, tuple(unseen.items()), *_marks(tune, bowing, line, slots))
        if shared:
            engrave = partial(self._engrave, tune, bowing, line, slots, width, unseen)
            return self._kept_or(key, lambda: self._from_keeper(tune, key) or engrave())
        return self._kept_or(
            (key, SHARED),
            lambda: without_shared(self.engrave(tune, bowing, line, slots, width_units, room)),
        )

    def made(self, tune: Tune, pictures: Iterable[Picture | None]) -> dict[str, Picture]:
        """Those of some pictures of a tune that are at hand, by the names that a keeper knows them by."""
        number = self._number(tune)
        keys = {id(picture): key for key, picture in self._pictures.items() if key[0] == number}
        found = ((keys.get(id(picture)), picture) for picture in pictures)
        return {
            picture_name(tune, key[1:]): picture for key, picture in found if key is not None and picture is not None
        }

    def load(self) -> None:
        """Have at hand what the first line needs that is engraved here."""
        _ = self._toolkit

    def _from_keeper(self, tune: Tune, key: tuple[object, ...]) -> Picture | None:
        if self._keeper is None:
            return None
        return self._keeper.find(tune_digest(tune), picture_name(tune, key[1:]))

    def _kept_or(self, key: tuple[object, ...], make: Callable[[], Picture]) -> Picture:
        """The picture kept under a key, made if there is none."""
        picture = self._pictures.get(key)
        if picture is None:
            picture = self._pictures[key] = make()
            _forget_oldest(self._pictures, self._kept)
        else:
            self._pictures.move_to_end(key)
        return picture

    def _engrave(
        self, tune: Tune, bowing: Bowing, line: Line, slots: Mapping[str, int], width: int, unseen: GraceRoom
    ) -> Picture:
        from core.engraving.mei import write_line  # not for a line that is kept
        from core.engraving.svg import read_svg

        ample, spacing = self._room(tune, bowing, line, width, unseen)
        document = write_line(tune, bowing, line, slots, room=unseen)
        options = {"pageWidth": ample // 10, "spacingLinear": spacing, "breaks": "encoded"}
        picture = read_svg(self._draw(document, options), document)
        return picture if picture.width >= width else replace(picture, width=float(width))

    def _room(self, tune: Tune, bowing: Bowing, line: Line, width: int, unseen: GraceRoom) -> tuple[int, float]:
        """How wide the line is drawn, and how it is spaced. No slur and no bow sign matters, so it is kept."""
        signs = tuple((note.id, bowing.signs[note.id]) for note in _notes(tune, line) if note.id in bowing.signs)
        key = (self._number(tune), line, width, signs, tuple(unseen.items()))
        known = self._rooms.get(key)
        if known is None:
            from core.engraving.mei import write_line

            document = write_line(tune, bowing, line, {}, alone=True, room=unseen)
            known = self._rooms[key] = self._measure(document, tune, line, width)
            _forget_oldest(self._rooms, self._kept)
        return known

    def _measure(self, document: Document, tune: Tune, line: Line, width: int) -> tuple[int, float]:
        wished = width
        if sum(not bar.is_pickup for bar in tune.bars[line.first : line.stop]) <= 1:
            natural = self._natural_width(document, _LOOSE)  # one bar is never broken, so ask first
            wished = max(int(width * LONE_BAR), MIN_WIDTH_UNITS, natural)
        if wished <= width and self._systems(document, wished) == 1:
            return wished, _LOOSE
        return max(width, self._natural_width(document, _TIGHT) + 10), _TIGHT

    def _systems(self, document: Document, width: int) -> int:
        """Into how many systems the engraver would break the line."""
        self._load(document, {"pageWidth": width // 10, "spacingLinear": _LOOSE, "breaks": "auto", "pageHeight": 100})
        return int(self._toolkit.getPageCount())  # no page is high enough for two

    def _natural_width(self, document: Document, spacing: float) -> int:
        """Width of a document that is neither stretched nor broken, in picture units."""
        from core.engraving.svg import read_svg

        svg = self._draw(document, {"spacingLinear": spacing, "breaks": "none"})
        return int(read_svg(svg, document).width) + 1

    def _draw(self, document: Document, options: Mapping[str, object]) -> str:
        """The page with the line as SVG."""
        self._load(document, {"pageHeight": _PAGE_HEIGHT, **options})
        return str(self._toolkit.renderToSVG(document.page))

    def _load(self, document: Document, options: Mapping[str, object]) -> None:
        options = {"rightMarginRightBarLine": _CLEAR if document.changes else 0.0, **options}
        if self._options.items() & options.items() != options.items():
            self._options.update(options)
            self._toolkit.setOptions(self._options)
        if not self._toolkit.loadData(document.text):
            raise EngravingError("the engraver does not take this line: " + document.text)

    def _number(self, tune: Tune) -> int:
        """A number for this very tune object: cheaper than comparing tunes, and never given twice."""
        known = self._tunes.get(id(tune))
        if known is None or known[0] is not tune:
            self._tunes_seen += 1
            known = self._tunes[id(tune)] = (tune, self._tunes_seen)
            _forget_oldest(self._tunes, TUNES_KEPT)
        return known[1]


def _forget_oldest(kept: OrderedDict[Any, Any], most: int) -> None:
    while len(kept) > most:
        kept.popitem(last=False)


def _notes(tune: Tune, line: Line) -> Iterator[Note]:
    return (note for bar in tune.bars[line.first : line.stop] for note in bar.notes)


def _marks(tune: Tune, bowing: Bowing, line: Line, slots: Mapping[str, int]) -> tuple[object, ...]:
    """All that the line's engraving depends on besides the tune: joins, signs and slots in reach."""
    low = line.first - _is_entered(tune, bowing, line.first)
    high = line.stop + _is_entered(tune, bowing, line.stop)
    ids = [note.id for bar in tune.bars[low:high] for note in bar.notes]
    joins, signs = bowing.joins, bowing.signs
    return (
        tuple((note_id, joins[note_id]) for note_id in ids if note_id in joins),
        tuple((note_id, signs[note_id]) for note_id in ids if note_id in signs),
        tuple((note_id, slots[note_id]) for note_id in ids if note_id in slots),
    )


def _is_entered(tune: Tune, bowing: Bowing, index: int) -> bool:
    """A slur or tie leads into a bar from the one before it, so that the two are engraved together."""
    if not 0 < index < len(tune.bars) or not tune.bars[index].notes:
        return False
    note = tune.bars[index].notes[0]
    return note.held or note.id in bowing.joins
