"""What the signs of a sheet mean: only those that it uses."""

from __future__ import annotations

from collections.abc import Collection, Container, Iterator, Sequence

from app.accent_strip import MET_WORDS
from app.bow_sign_painting import ROW_LABELS, bow_sign_path
from app.painting import run_width
from app.sheet_blocks import Block
from app.sheet_format import SheetFormat
from app.sheet_page import PlacedMet, PlacedSign
from app.sheet_text import NOTE
from core.accents import Met
from core.bowing import Bow, Ornament
from core.checks.words import bow_name
from core.engraving.bow_signs import BowSign
from core.engraving.picture import Anchor, Run, Text
from core.translation import tr

SIGN_EMS, LEADING_EMS, AFTER_EMS = 1.8, 1.7, 1.5  # size of a sign, height of a row, room behind an entry
MET_EMS = 0.8

Entry = tuple[BowSign | Met | None, str]
"""A sign or shape, or None where the text stands alone, and what it means."""


def legend(
    used: Sequence[BowSign], hooked: bool, ornaments: Container[Ornament] = (), mets: Collection[Met] = ()
) -> Iterator[Entry]:
    """What to say about the signs that a sheet uses.

    Args:
        used: All bow signs of the sheet.
        hooked: Some stroke has a stop inside it.
        ornaments: Ornaments of the sheet; those that are explained have a sign that other music does not know.
        mets: Shapes of the accent strip that the sheet uses.
    """
    fixed = any(sign.fixed for sign in used) or not used
    for bow in Bow:
        if any(bow in sign.bows for sign in used):
            yield BowSign((bow,), fixed), bow_name(bow)
    if fixed and any(not sign.fixed for sign in used):
        yield BowSign((Bow.DOWN,), False), tr("lighter: follows from the bow before")
    if any(len(sign.bows) > 1 for sign in used):
        yield None, tr("row {first}: first time, row {next}: next time", first=ROW_LABELS[0], next=ROW_LABELS[1])
    if any(sign.retake for sign in used):
        yield BowSign((Bow.DOWN,), True, True), tr("lift, take the same bow again")
    if hooked:
        yield None, tr("dots under a slur: stop the bow, go on the same way")
    if Ornament.ROLL in ornaments:
        yield None, tr("~ roll")
    if Ornament.CUT in ornaments:
        yield None, tr("/ cut")
    if Ornament.BOWED_TRIPLET in ornaments:
        yield None, tr("3 and a slash through the stem: bowed triplet, three quick bows on the note")
    for met in Met:
        if met in mets:
            yield met, tr("accent {how}", how=tr(MET_WORDS[met]))


def legend_block(entries: Sequence[Entry], page: SheetFormat) -> Block | None:
    """The legend, in as many rows as it takes; None where there is nothing to explain."""
    if not entries:
        return None
    em = NOTE * page.text
    rows: list[list[tuple[Entry, float]]] = [[]]
    x = 0.0
    for entry in entries:
        width = _sign_width(entry[0], em) + run_width(Run(entry[1], em)) + AFTER_EMS * em
        if rows[-1] and x + width > page.inner_mm:
            rows.append([])
            x = 0.0
        rows[-1].append((entry, width))
        x += width
    texts: list[Text] = []
    signs: list[PlacedSign] = []
    mets: list[PlacedMet] = []
    height = LEADING_EMS * em * len(rows)
    for number, row in enumerate(rows):
        x, y = page.margin_mm, height - LEADING_EMS * em * (len(rows) - 1 - number) - 0.25 * em
        for (sign, words), width in row:
            if isinstance(sign, BowSign):
                right = bow_sign_path(sign.bows[0], sign.retake, SIGN_EMS * em).boundingRect().right()
                signs.append(PlacedSign(x + _sign_width(sign, em) - em / 2 - right, y, SIGN_EMS * em, sign))
            elif sign is not None:
                mets.append(PlacedMet(x + MET_EMS * em / 2, y - 0.33 * em, MET_EMS * em, sign))
            texts.append(Text(x + _sign_width(sign, em), y, Anchor.START, (Run(words, em),)))
            x += width
    return Block(height, texts=tuple(texts), signs=tuple(signs), mets=tuple(mets))


def _sign_width(sign: BowSign | Met | None, em: float) -> float:
    """Width of a sign with the room behind it."""
    if sign is None:
        return 0.0
    if isinstance(sign, Met):
        return (MET_EMS + 0.5) * em
    return bow_sign_path(sign.bows[0], sign.retake, SIGN_EMS * em).boundingRect().width() + em / 2
