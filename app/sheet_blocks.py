"""What stands on a sheet, cut into blocks: pieces of a page that are never parted, each with its size."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from app.accent_strip import accented, place_x
from app.sheet_content import Joint, Music, Opening, Prose
from app.sheet_format import SheetFormat
from app.sheet_page import STAFF_UNITS, Heading, Page, PlacedLine, PlacedMet, PlacedSign, Rule
from app.sheet_text import BASE, BODY, HEADING, LEADING, NOTE, TITLE, fitted, wrapped
from core.accents import Met, weigh
from core.bowing import Bow, Join, Ornament
from core.engraving.bow_signs import BowSign, bow_signs, rows_shown
from core.engraving.engraver import Engraver
from core.engraving.lines import break_lines
from core.engraving.picture import Anchor, Picture, Run, Text
from core.strokes import work_out
from core.values import dataclass

LINE_GAP_MM = 3.5  # between lines of music, and under what stands over them
BOWING_GAP_MM = 7.0  # over the name of a bowing
PROSE_GAP_MM = 4.0
NOTE_GAP_MM = 1.2  # under the sentence that stands over music
PARAGRAPH_GAP, EMPTY_GAP = 0.35, 0.8  # between paragraphs, and where one is empty, in ems
JOINT_SIGN_EMS, JOINT_ROOM_EMS = 2.0, 4.6  # size of the signs at a joint, and the room that the pair takes


@dataclass(frozen=True, slots=True)
class Block:
    """A piece of a page; y counts from its top, x from the edge of the page.

    Attributes:
        height_mm: Its height.
        gap_mm: Over it, unless it begins a page.
        lines, texts, signs, mets, rules: What stands in it.
        keeps_next: It never ends a page while another block follows.
        loose: The gap over it may widen.
        heading: The entry of the outline that leads to it.
        goes_on: Said at the head of a page that it begins.
    """

    height_mm: float
    gap_mm: float = 0.0
    lines: tuple[PlacedLine, ...] = ()
    texts: tuple[Text, ...] = ()
    signs: tuple[PlacedSign, ...] = ()
    mets: tuple[PlacedMet, ...] = ()
    rules: tuple[Rule, ...] = ()
    keeps_next: bool = False
    loose: bool = False
    heading: Heading | None = None
    goes_on: str = ""

    def at(self, y: float) -> Page:
        """What stands in it, on a page where its top is at y."""
        headings = () if self.heading is None else (self.heading,)
        return Page(self.lines, self.texts, self.signs, self.mets, self.rules, headings).moved(0, y)

    def shrunk(self, height_mm: float) -> Block:
        """A block with a line of music that is no higher than this: shown whole, smaller."""
        lines = tuple(replace(line, scale=line.scale * height_mm / self.height_mm) for line in self.lines)
        return replace(self, height_mm=height_mm, lines=lines)


def text_line(run: Run, x: float, anchor: Anchor, width: float, **fields: object) -> Block:
    """One line of text, set smaller where it is wider than a width."""
    run = fitted(run, width)
    height = run.size * LEADING
    return replace(Block(height, texts=(Text(x, height - BASE * run.size, anchor, (run,)),)), **fields)  # type: ignore[arg-type]


def kept_with_next(blocks: Sequence[Block]) -> list[Block]:
    """The blocks, none of which ends a page."""
    return [replace(block, keeps_next=True) for block in blocks]


# ---- texts


def opening_blocks(item: Opening, page: SheetFormat, heading: Heading | None) -> list[Block]:
    """Title, further titles, and what stands beside each other under them."""
    size, middle, width = page.text, page.width_mm / 2, page.inner_mm
    em, anchor, x = (HEADING * 1.1, Anchor.START, page.margin_mm) if item.small else (TITLE, Anchor.MIDDLE, middle)
    blocks = [
        text_line(Run(text, em * size, bold=True), x, anchor, width)
        for text in wrapped(item.title, em * size, width, bold=True)
    ]
    for other in item.others:
        blocks += [
            text_line(Run(text, BODY * size, italic=True), x, anchor, width)
            for text in wrapped(other, BODY * size, width, italic=True)
        ]
    blocks += _side_by_side(item.left, item.right, page)
    if not blocks:
        return []
    blocks[0] = replace(blocks[0], heading=heading, gap_mm=BOWING_GAP_MM if item.small else 0.0)
    return kept_with_next(blocks)


def _side_by_side(left: str, right: Sequence[str], page: SheetFormat) -> list[Block]:
    em, width = BODY * page.text, page.inner_mm
    on_left = wrapped(left, em, width / 3)
    on_right = [part for text in right for part in wrapped(text, em, width * 0.6)]
    blocks = []
    for row in range(max(len(on_left), len(on_right))):
        texts: list[Text] = []
        if row < len(on_left):
            run = fitted(Run(on_left[row], em, italic=True), width / 3)
            texts.append(Text(page.margin_mm, em * (LEADING - BASE), Anchor.START, (run,)))
        if row < len(on_right):
            run = fitted(Run(on_right[row], em), width * 0.6)
            texts.append(Text(page.margin_mm + width, em * (LEADING - BASE), Anchor.END, (run,)))
        blocks.append(Block(em * LEADING, texts=tuple(texts)))
    return blocks


def prose_blocks(item: Prose, page: SheetFormat) -> list[Block]:
    """Text line by line; a heading stays with its text, and no paragraph leaves a single line behind or over."""
    em, left, width = (NOTE if item.quiet else BODY) * page.text, page.margin_mm, page.inner_mm
    blocks = [
        text_line(Run(text, em, bold=True), left, Anchor.START, width, keeps_next=True)
        for text in wrapped(item.heading, em, width, bold=True)
    ]
    gap = 0.0
    for paragraph in item.paragraphs:
        rows = wrapped(paragraph, em, width, italic=item.italic)
        if not rows:
            gap = EMPTY_GAP * em
            continue
        first = len(blocks)
        blocks += [text_line(Run(row, em, italic=item.italic), left, Anchor.START, width) for row in rows]
        blocks[first] = replace(blocks[first], gap_mm=gap)
        for row in {first, len(blocks) - 2} if len(rows) > 1 else ():
            blocks[row] = replace(blocks[row], keeps_next=True)
        gap = PARAGRAPH_GAP * em
    if blocks:
        blocks[0] = replace(blocks[0], gap_mm=PROSE_GAP_MM)
    return [replace(block, goes_on=item.bowing) for block in blocks]


def joint_blocks(item: Joint, page: SheetFormat) -> list[Block]:
    """The bow before and the bow after with a line between them, and what that is for the player."""
    em, seam = BODY * page.text, item.seam
    room = JOINT_ROOM_EMS * em
    rows = wrapped(item.text, em, page.inner_mm - room)
    height = max(len(rows) * em * LEADING, em * 1.8)
    foot = em * (LEADING - BASE) + 0.35 * em
    x = page.margin_mm
    signs = (
        PlacedSign(x + 0.9 * em, foot, JOINT_SIGN_EMS * em, BowSign((seam.last,), True)),
        PlacedSign(x + 3.0 * em, foot, JOINT_SIGN_EMS * em, BowSign((seam.first,), True, seam.is_retake)),
    )
    texts = tuple(
        Text(
            x + room,
            em * (row * LEADING + LEADING - BASE),
            Anchor.START,
            (fitted(Run(text, em), page.inner_mm - room),),
        )
        for row, text in enumerate(rows)
    )
    rule = Rule(x + 1.75 * em, 0.1 * em, x + 1.75 * em, foot + 0.1 * em, 0.08 * em)
    return [Block(height, PROSE_GAP_MM, texts=texts, signs=signs, rules=(rule,))]


# ---- music


@dataclass(frozen=True, slots=True)
class UsedSigns:
    """What a legend has to explain."""

    bows: tuple[BowSign, ...] = ()
    hooked: bool = False
    ornaments: frozenset[Ornament] = frozenset()
    mets: frozenset[Met] = frozenset()

    def and_also(self, other: UsedSigns) -> UsedSigns:
        """What the two have to explain."""
        return UsedSigns(
            (*self.bows, *other.bows), self.hooked or other.hooked, self.ornaments | other.ornaments,
            self.mets | other.mets,
        )  # fmt: skip


def used_signs(music: Music) -> UsedSigns:
    """The signs that a piece of music shows."""
    mets = {met for there in _mets(music).values() for met in there} if music.strip else ()
    bows = tuple(_shown(music, _signs(music)).values())
    if music.shown is not None:  # bows are written in: whoever does it has to know the signs
        bows = (*bows, *(BowSign((bow,), all(sign.fixed for sign in bows)) for bow in Bow))
    return UsedSigns(
        bows,
        Join.HOOK in music.bowing.joins.values(),
        frozenset(sign for signs in music.bowing.signs.values() for sign in signs.ornaments),
        frozenset(mets),
    )


def engrave(music: Music, page: SheetFormat, engraver: Engraver) -> Iterator[list[PlacedLine] | None]:
    """Engrave all lines of a piece of music, of one size where that stays legible.

    Yields:
        None after each line, for others to have their turn; at last the lines, not placed yet.
    """
    lines = break_lines(music.tune, page.bars_a_line)
    all_signs = _signs(music)
    slots, signs = rows_shown(all_signs), _shown(music, all_signs)
    mets = _mets(music) if music.strip else None
    width = page.inner_mm * STAFF_UNITS / page.staff_mm
    widest = width
    for shrink in (False, True):
        if shrink:
            width = min(widest + 1, page.inner_mm * STAFF_UNITS / page.smallest_staff_mm)
        pictures = []
        for line in lines:
            pictures.append(engraver.engrave(music.tune, music.bowing, line, slots, int(width)))
            yield None
        widest = max(picture.width for picture in pictures)
        if widest <= width:
            break
    yield [
        PlacedLine(
            page.margin_mm, 0.0, page.inner_mm / max(picture.width, width), picture, signs,
            None if mets is None else _strip(music, picture, mets),
        )
        for picture in pictures
    ]  # fmt: skip


def music_blocks(music: Music, lines: Sequence[PlacedLine], page: SheetFormat) -> list[Block]:
    """Name, note and lines; at least half of the lines stand together with the name."""
    em, width = HEADING * page.text, page.inner_mm
    head = [
        text_line(Run(text, em, bold=True), page.margin_mm, Anchor.START, width, goes_on="")
        for text in wrapped(music.name, em, width, bold=True)
    ]
    small = NOTE * page.text
    head += [
        text_line(Run(text, small, italic=True), page.margin_mm, Anchor.START, width)
        for text in wrapped(music.note, small, width, italic=True)
    ]
    body = [
        Block(line.height_mm, LINE_GAP_MM, lines=(line,), loose=number > 0, goes_on=music.name if number else "")
        for number, line in enumerate(lines)
    ]
    if head:
        head[0] = replace(head[0], gap_mm=BOWING_GAP_MM, heading=Heading(1, music.name))
        body[0] = replace(body[0], gap_mm=NOTE_GAP_MM if music.note else 0.0)
    half = (len(lines) + 1) // 2
    together = [*head, *body[:half]]
    return [*kept_with_next(together[:-1]), together[-1], *body[half:]]


def _signs(music: Music) -> dict[str, BowSign]:
    strokes = work_out(music.tune, music.answer)
    return dict(bow_signs(music.tune, music.answer, strokes, music.marks))


def _shown(music: Music, signs: dict[str, BowSign]) -> dict[str, BowSign]:
    """The signs that are not left out; room for the others is kept, to write in."""
    return {note_id: sign for note_id, sign in signs.items() if music.shown is None or note_id in music.shown}


def _mets(music: Music) -> dict[tuple[int, object], tuple[Met, ...]]:
    """How each accented place that is not left out is met, one shape or two."""
    found = accented(weigh(music.tune, music.answer, work_out(music.tune, music.answer)))
    return {place: there.shown for place, there in found.items() if music.shown is None or there.note_id in music.shown}


def _strip(
    music: Music, picture: Picture, mets: dict[tuple[int, object], tuple[Met, ...]]
) -> tuple[tuple[float, tuple[Met, ...]], ...]:
    placed = ((place_x(music.tune, picture, place), shown) for place, shown in mets.items())  # type: ignore[arg-type]
    return tuple((x, shown) for x, shown in placed if x is not None)
