"""From the engraver's SVG to a picture, in one pass of an XML parser.

Understands what verovio writes, no more: nested groups that move, ``use``, ``path``, ``polygon``, ``rect``,
``ellipse`` and ``text``. What a group means comes from its id where the id is ours, else from its class.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from xml.parsers import expat

from core.engraving.glyphs import WAVE, Command, parse_outline
from core.engraving.kinds import Kind
from core.engraving.mei import Document, Name
from core.engraving.note_marks import ROLL_ROOM, ROOM_GLYPHS
from core.engraving.picture import (
    SIGN_SCALE,
    Anchor,
    BowSlot,
    Box,
    Curve,
    Glyph,
    Outline,
    Picture,
    Point,
    Run,
    Shape,
    Text,
)  # fmt: skip
from core.engraving.printed_words import BESIDE_TEXT
from core.engraving.rows import level_rows
from core.values import dataclass

_KIND_OF_CLASS = {
    "staff": Kind.STAFF, "barLine": Kind.STAFF, "clef": Kind.STAFF, "keySig": Kind.STAFF, "meterSig": Kind.STAFF,
    "beam": Kind.BEAM, "artic": Kind.SIGN, "mNum": Kind.NUMBER, "voltaBracket": Kind.ENDING,
    "tupletNum": Kind.TUPLET, "tupletBracket": Kind.TUPLET,
}  # fmt: skip
_UNREAD = frozenset({"defs", "style", "desc"})
_TEXTS = frozenset({"text", "tspan"})
_IN_THE_WAY = frozenset({Kind.SLUR, Kind.TIE, Kind.SIGN, Kind.GRACE, Kind.TUPLET, Kind.ENDING, Kind.WORDS, Kind.OTHER})
_BROADEST = 0.65  # width of a letter of a text, in ems, at most
_BOLD = frozenset({"voltaBracket", "fing", "reh", "tempo"})
_ITALIC = frozenset({"dir", "mNum", "repeatMark"})
_TELLING = frozenset({*_KIND_OF_CLASS, *_BOLD, *_ITALIC})  # classes of groups that are not like those around them
_FIRST_HEAD, _LAST_HEAD = "E0A0", "E0FF"  # SMuFL 1.4: note heads
_MUSIC_FONT = "Leipzig"
_PLACE = re.compile(r"translate\(([-\d.]+),? ?([-\d.]+)\)(?: scale\(([-\d.]+))?")
_LINE = re.compile(r"M([-\d.]+) ([-\d.]+) L([-\d.]+) ([-\d.]+)")
_ACCIDENTALS = {"\uea64": "♭", "\uea66": "♯"}  # set as Unicode, which can be searched for
_TEXT_TO_MUSIC = 0.5625  # size of a text beside that of the music glyphs in it
_NUMBER_SIZE = 324.0  # as verovio sets bar numbers
_TEMPO_SIZE = 405.0  # as verovio sets texts
_MUSIC_OR_TEXT = re.compile("[\ue000-\uf8ff]+|[^\ue000-\uf8ff]+")
_ENDING_SCALE, _ENDING_UP = 0.88, 48.0  # numbers of endings: a little smaller, hung from the bracket, clear of chords
_PART_ROOM = 200.0  # over a line with a part letter, which is moved up to clear the clef
_TEMPO_ROOM, _TEMPO_LINE = 680.0, 560.0  # over a line with a tempo, and its base line; a note in it is tall
_OVER_CLEF = 260.0  # from the top staff line up
_ROUND = 0.5522847498  # control points of a quarter circle


@dataclass(slots=True)
class _Group:
    """What an open element hands down to those inside it."""

    x: float = 0.0
    y: float = 0.0
    kind: Kind = Kind.OTHER
    owner: str = ""
    name: Name | None = None
    is_staff: bool = False
    beam: int = -1
    bold: bool = False
    italic: bool = False
    music: bool = False
    size: float = 0.0

    def inner(self) -> _Group:
        """What the next group inside begins with (several times as fast as ``dataclasses.replace``)."""
        return _Group(
            self.x, self.y, self.kind, self.owner, self.name, False, self.beam,
            self.bold, self.italic, self.music, self.size,
        )  # fmt: skip


def read_svg(svg: str, document: Document) -> Picture:
    """Read one line's SVG.

    Args:
        svg: As verovio writes it, at scale 100, with references by plain ``href``.
        document: What it was drawn from.
    Raises:
        ValueError: the SVG has no staff.
    """
    reader = _Reader(document)
    parser = expat.ParserCreate()
    parser.buffer_text = True
    parser.StartElementHandler = reader.start
    parser.EndElementHandler = reader.end
    parser.CharacterDataHandler = reader.characters
    parser.Parse(svg, True)
    return reader.picture()


class _Reader:
    def __init__(self, document: Document) -> None:
        self._document = document
        self._names = document.names
        has_part = any(name.kind is Kind.PART for name in self._names.values())
        self._head_room = _TEMPO_ROOM if document.tempo else _PART_ROOM if has_part else 0.0
        self._groups = [_Group(y=self._head_room)]
        self._skipped = 0
        self._size = (0.0, 0.0)
        self._shapes: list[Shape] = []
        self._texts: list[Text] = []
        self._text: Text | None = None
        self._runs: list[Run] = []
        self._boxes: dict[str, Box] = {}
        self._heads: dict[str, list[Point]] = {}
        self._slots: dict[str, BowSlot] = {}
        self._beams: list[list[str]] = []  # notes under each beam
        self._crowned: set[str] = set()  # notes with an ornament or a finger, over which their bow sign stands
        self._measures: dict[int, Box] = {}
        self._bar = -1
        self._curves: list[Curve] = []
        self._staff_lines: dict[float, tuple[float, float, float]] = {}  # left, right and pen by y

    # Handlers

    def start(self, tag: str, given: dict[str, str]) -> None:
        if self._skipped:
            self._skipped += 1
            return
        classes = given.get("class", "")
        name = self._names.get(given.get("id", "")) if tag == "g" else None
        if tag in _UNREAD or "placeholder" in classes or (name is not None and name.kind is Kind.ROOM):
            self._skipped = 1
            return
        group = self._groups[-1]
        if tag == "g":
            self._groups.append(self._opened(group, given, classes))
        elif tag == "use":
            self._draw_glyph(group, given)
        elif tag in _TEXTS:
            self._groups.append(self._opened_text(tag, group, given))
        elif tag != "svg":
            self._draw_outline(tag, group, given)
        elif "viewBox" in given:
            _, _, width, height = map(float, given["viewBox"].split())
            self._size = (width, height + self._head_room)

    def end(self, tag: str) -> None:
        if self._skipped:
            self._skipped -= 1
            return
        if tag == "g" or tag in _TEXTS:
            self._groups.pop()
        if tag == "text" and self._text is not None:
            if self._runs:
                self._texts.append(replace(self._text, runs=tuple(self._runs)))
            self._text, self._runs = None, []

    def characters(self, text: str) -> None:
        group = self._groups[-1]
        if self._skipped or self._text is None or not group.size:
            return
        size = group.size * (_ENDING_SCALE if group.kind is Kind.ENDING else 1)
        if group.music and text in _ACCIDENTALS:
            text, size = _ACCIDENTALS[text], size * _TEXT_TO_MUSIC
        bold, italic = (group.bold, group.italic) if not group.music else (False, False)
        self._runs.append(Run(text.strip(BESIDE_TEXT), size, group.music, bold, italic))

    # Elements

    def _opened(self, outer: _Group, given: Mapping[str, str], classes: str) -> _Group:
        name_of_class = classes.partition(" ")[0]
        name = self._names.get(given.get("id", "")) or self._continued(classes)
        if name_of_class == "measure":
            self._bar = name.bar if name is not None else -1
        if name is None and name_of_class not in _TELLING and "transform" not in given and not outer.is_staff:
            return outer  # tells nothing new
        group = outer.inner()
        if "transform" in given:
            group.x, group.y, _ = _placed(outer, given["transform"])
        group.is_staff = name_of_class == "staff"
        group.kind = _KIND_OF_CLASS.get(name_of_class, group.kind)
        if group.kind is Kind.BEAM and group.beam < 0:
            group.beam = len(self._beams)
            self._beams.append([])
        group.bold = group.bold or name_of_class in _BOLD
        group.italic = group.italic or name_of_class in _ITALIC
        if name is None:
            return group
        group.name, group.kind, group.owner = name, name.kind, name.note
        if name.bar >= 0:
            group.kind = Kind.STAFF
        elif name.kind is Kind.SIGN:
            self._crowned.add(name.note)
        elif name.kind is Kind.NOTE and group.beam >= 0 and name.note not in self._beams[group.beam]:
            self._beams[group.beam].append(name.note)
        return group

    def _continued(self, classes: str) -> Name | None:
        """What a group without an id continues from the line before: a slur or tie that comes over the line's end."""
        if "id-" not in classes:
            return None
        ids = (name.removeprefix("id-") for name in classes.split() if name.startswith("id-"))
        return next(map(self._names.get, ids), None)

    def _opened_text(self, tag: str, outer: _Group, given: Mapping[str, str]) -> _Group:
        group = outer.inner()
        if "font-size" in given:
            group.size = float(given["font-size"].removesuffix("px"))
        if "font-family" in given:
            group.music = given["font-family"] == _MUSIC_FONT
        if "font-weight" in given:
            group.bold = given["font-weight"] == "bold"
        if "font-style" in given:
            group.italic = given["font-style"] == "italic"
        if tag == "text":
            anchor = Anchor(given.get("text-anchor", "start"))
            x, y = group.x + float(given.get("x", 0)), group.y + float(given.get("y", 0))
            if group.kind is Kind.NUMBER:
                anchor = Anchor.START  # stands over the very start of the line, which must not cut it in two
            if group.kind is Kind.ENDING:
                y -= _ENDING_UP
            self._text = Text(x, y, anchor, (), group.kind, group.owner)
        return group

    def _draw_outline(self, tag: str, group: _Group, given: Mapping[str, str]) -> None:
        line = _LINE.fullmatch(given["d"]) if tag == "path" else None
        if line is not None:  # most paths are stems and staff lines
            x1, y1, x2, y2 = map(float, line.groups())
            start, end = (x1 + group.x, y1 + group.y), (x2 + group.x, y2 + group.y)
            if group.is_staff:
                self._add_staff_line(start, end, float(given["stroke-width"]))
                return
            commands: tuple[Command, ...] = (Command("M", start), Command("L", end))
        else:
            commands = _shift(_commands(tag, given), group.x, group.y)
        pen = float(given.get("stroke-width", 0) or 0)
        dash = tuple(map(float, re.split(r"[ ,]+", given["stroke-dasharray"]))) if "stroke-dasharray" in given else ()
        filled = line is None and given.get("fill") != "none" and given.get("fill-opacity") != "0"
        shape = Outline(commands, filled, pen, dash, given.get("stroke-linecap") == "round", group.kind, group.owner)
        if commands:
            self._add(shape, group)

    def _draw_glyph(self, group: _Group, given: Mapping[str, str]) -> None:
        x, y, scale = _placed(group, given.get("transform", ""))
        code = given["href"].removeprefix("#").partition("-")[0]
        glyph = Glyph(code, x, y, 1000 * scale, group.kind, group.owner)
        if group.kind is Kind.BOW:
            box, rows = glyph.box, ROOM_GLYPHS.index(code) + 1
            self._slots[group.owner] = BowSlot(group.owner, box.centre.x, box.bottom, glyph.size * SIGN_SCALE, rows)
            return
        if group.kind is Kind.NOTE and _FIRST_HEAD <= code <= _LAST_HEAD:
            self._heads.setdefault(group.owner, []).append(glyph.box.centre)
        self._add(_wave(glyph) if code == ROLL_ROOM else glyph, group)

    def _add(self, shape: Shape, group: _Group) -> None:
        if group.kind is Kind.NOTE and group.owner:
            box = self._boxes.get(group.owner)
            self._boxes[group.owner] = shape.box if box is None else box.united(shape.box)
        elif group.kind in (Kind.SLUR, Kind.TIE) and group.name is not None:
            tie = group.kind is Kind.TIE
            self._curves.append(Curve(group.owner, group.name.end, tie, shape.box, len(self._shapes)))
        self._shapes.append(shape)

    def _add_staff_line(self, start: tuple[float, float], end: tuple[float, float], pen: float) -> None:
        """Collect staff lines: verovio draws them bar by bar, from left to right."""
        (left, y), (right, _) = start, end
        if self._bar >= 0:
            box, seen = Box(left, y, right, y), self._measures.get(self._bar)
            self._measures[self._bar] = box if seen is None else seen.united(box)
        first_left = self._staff_lines[y][0] if y in self._staff_lines else left
        self._staff_lines[y] = (first_left, right, pen)

    # Result

    def picture(self) -> Picture:
        if not self._staff_lines:
            raise ValueError("the engraver drew no staff")
        self._place_tempo(self._place_part())
        heads = {
            note_id: Point(sum(p.x for p in points) / len(points), sum(p.y for p in points) / len(points))
            for note_id, points in self._heads.items()
        }
        staff = tuple(_staff_line(y, *line) for y, line in sorted(self._staff_lines.items()))
        curves = tuple(replace(curve, shape=curve.shape + len(staff)) for curve in self._curves)
        return Picture(
            width=self._size[0],
            height=max([self._size[1], *(curve.box.bottom for curve in curves)]),  # verovio forgets low slurs
            staff_top=min(self._staff_lines),
            staff_bottom=max(self._staff_lines),
            shapes=(*staff, *self._shapes),
            texts=tuple(self._texts),
            boxes=MappingProxyType(self._boxes),
            heads=MappingProxyType({note_id: heads.get(note_id, box.centre) for note_id, box in self._boxes.items()}),
            bow_slots=MappingProxyType(self._rows()),
            measures=MappingProxyType(self._measures),
            curves=curves,
        )

    def _rows(self) -> dict[str, BowSlot]:
        """The bow slots on one height over each beam, but for those that stand over another sign."""
        level = self._slots.keys() - self._crowned
        beams = ([note_id for note_id in beam if note_id in level] for beam in self._beams)
        return level_rows(self._slots, filter(None, beams), [*self._over_signs()])

    def _over_signs(self) -> Iterator[Box]:
        """About what is in the way of bow signs that are lifted."""
        for shape in self._shapes:
            if shape.kind in _IN_THE_WAY:
                yield shape.box
        for text in self._texts:
            size = text.runs[0].size
            width = _BROADEST * size * len(text.text)
            left = text.x - {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[text.anchor]
            yield Box(left, text.y - size, left + width, text.y)

    def _place_part(self) -> float:
        """Move the part letter to the very left, over the clef, and print the bar number beside it.

        Returns:
            x after what stands there.
        """
        frame = next((i for i, shape in enumerate(self._shapes) if shape.kind is Kind.PART), None)
        letter = next((i for i, text in enumerate(self._texts) if text.kind is Kind.PART), None)
        if frame is None or letter is None:
            return 0.0
        shape, text = self._shapes[frame], self._texts[letter]
        assert isinstance(shape, Outline)
        box = shape.box
        up = max(box.bottom - (min(self._staff_lines) - _OVER_CLEF), 0.0)
        if self._document.tempo:
            up = text.y - _TEMPO_LINE
        self._shapes[frame] = replace(shape, commands=_shift(shape.commands, -box.left, -up))
        self._texts[letter] = text = replace(text, x=text.x - box.left, y=text.y - up)
        if self._document.number is None:
            return box.width + _TEMPO_SIZE / 2
        run = Run(str(self._document.number), _NUMBER_SIZE, italic=True)
        self._texts.append(Text(box.width + _NUMBER_SIZE / 4, text.y, Anchor.START, (run,), Kind.NUMBER))
        return box.width + _NUMBER_SIZE * 2

    def _place_tempo(self, x: float) -> None:
        """Print the tempo in the room over the line."""
        runs = [
            Run(part, _TEMPO_SIZE / _TEXT_TO_MUSIC, music=True)
            if "\ue000" <= part[0] <= "\uf8ff"
            else Run(part, _TEMPO_SIZE, bold=True)
            for part in _MUSIC_OR_TEXT.findall(self._document.tempo)
        ]
        if runs:
            self._texts.append(Text(x, _TEMPO_LINE, Anchor.START, tuple(runs), Kind.WORDS))


def _staff_line(y: float, left: float, right: float, pen: float) -> Outline:
    return Outline((Command("M", (left, y)), Command("L", (right, y))), False, pen, kind=Kind.STAFF)


def _wave(room: Glyph) -> Glyph:
    """The sign of a roll in the room kept for it: as wide, half-way up."""
    wave = room._replace(code=WAVE)
    wave = wave._replace(size=room.size * room.box.width / wave.box.width)
    centre = wave.box.centre
    return wave._replace(x=room.x + room.box.centre.x - centre.x, y=room.y + room.box.centre.y - centre.y)


def _placed(group: _Group, transform: str) -> tuple[float, float, float]:
    """x, y and scale of what is drawn in a group with this transform."""
    found = _PLACE.match(transform)
    if found is None:
        return group.x, group.y, 1.0
    x, y, scale = found.groups("1")
    return group.x + float(x), group.y + float(y), float(scale)


def _commands(tag: str, given: Mapping[str, str]) -> tuple[Command, ...]:
    """Outline of an element; empty for one that draws nothing."""
    match tag:
        case "path":
            return parse_outline(given["d"])
        case "polygon" | "polyline":
            points = [tuple(map(float, point.split(","))) for point in given["points"].split()]
            return _through(points, closed=tag == "polygon")
        case "rect":
            x, y, width, height = (float(given[name]) for name in ("x", "y", "width", "height"))
            corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height)]
            return _through(corners, closed=True)
        case "ellipse":
            return _ellipse(*(float(given[name]) for name in ("cx", "cy", "rx", "ry")))
    return ()


def _through(points: Sequence[tuple[float, ...]], closed: bool) -> tuple[Command, ...]:
    lines = tuple(Command("L" if place else "M", point) for place, point in enumerate(points))
    return (*lines, Command("Z")) if closed else lines


def _ellipse(cx: float, cy: float, rx: float, ry: float) -> tuple[Command, ...]:
    kx, ky = rx * _ROUND, ry * _ROUND
    return (
        Command("M", (cx + rx, cy)),
        Command("C", (cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry)),
        Command("C", (cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy)),
        Command("C", (cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry)),
        Command("C", (cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy)),
        Command("Z"),
    )


def _shift(commands: Iterable[Command], dx: float, dy: float) -> tuple[Command, ...]:
    if not dx and not dy:
        return tuple(commands)
    return tuple(
        Command(letter, tuple(value + (dy if odd % 2 else dx) for odd, value in enumerate(numbers)))
        for letter, numbers in commands
    )
