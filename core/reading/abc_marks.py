"""What stands beside ABC notes: decorations, chord symbols, words and grace notes (ABC 2.1, 4.12, 4.14 to 4.20).

All of it waits for the note that it belongs to; at a bar line the signs of playing order go to the bar before or the
bar after, and the rest waits on.
"""

from __future__ import annotations

import re
from typing import TypeVar

from core.bowing import Articulation, Bow, Grace, Ornament
from core.chords import parse_chord
from core.reading.abc_draft import Complaints, DraftBar, DraftNote
from core.reading.abc_signs import LONG, QUOTED, BarSign, Finger, LeftOut, Meaning
from core.reading.abc_text import plain_text
from core.reading.limits import MAX_GRACES
from core.translation import tr
from core.tune import Jump

MAX_WORDS = 200  # characters beside a note
_FINGER = re.compile(r"[\^_<>@]?\s*([0-4])\s*$")
_OFFSET = re.compile(r"-?[0-9.]+,-?[0-9.]+\s*")  # at the head of a text placed by "@x,y ..."
_Item = TypeVar("_Item")


def sign_in_words(words: str) -> Meaning | None:
    """The sign that words in quotation marks stand for, as ``D.C.`` does, or None where they are words."""
    return QUOTED.get("".join(words.lower().replace(".", "").split())) if len(words) < 20 else None


class Marks:
    """Collects what waits for the next note and gives it to that note.

    Attributes:
        symbols: What each letter stands for: a decoration's name, quoted text, or "" for nothing.
    """

    def __init__(self, complaints: Complaints, symbols: dict[str, str]) -> None:
        self.symbols = symbols
        self._complaints = complaints
        self._signs: list[Meaning] = []
        self._graces: list[Grace] = []
        self._chords: list[str] = []
        self._words: list[tuple[str, bool]] = []
        self._codas: list[tuple[int, int]] = []  # bars: the one a jump would leave, the one it would reach

    # what comes in

    def letter(self, letter: str) -> None:
        """Read a letter that stands for a decoration (4.14, 4.16)."""
        name = self.symbols.get(letter)
        if name is None:
            text = tr("The letter {letter} stands for nothing here: it is ignored.", letter=letter)
            self._complaints.say(text, once=f"letter {letter}")
        elif name.startswith('"'):
            self.quoted(name.strip('"'))
        elif name:
            self.decoration(name)

    def decoration(self, name: str) -> None:
        """Read a decoration by its long name (4.14)."""
        meaning = LONG.get(name)
        if meaning is None:
            text = tr("The decoration !{name}! is not known: it is ignored.", name=name)
            self._complaints.say(text, once=f"decoration {name}")
        elif isinstance(meaning, LeftOut):
            text = tr(meaning.kind, name=name)
            self._complaints.say(text, once=f"left out {meaning.kind}")
        else:
            self._signs.append(meaning)

    def quoted(self, text: str) -> None:
        """Read text in quotation marks: a finger, a chord symbol, a sign in words, or words (4.18, 4.19)."""
        if finger := _FINGER.match(text):
            self._signs.append(Finger(finger[1]))
            return
        if text == ">":
            self._signs.append(Articulation.ACCENT)
            self._complaints.say(tr("“>” in quotation marks is read as an accent."), once="quoted >")
            return
        placed = text[:1] in ("^", "_", "<", ">", "@")
        words = text[1:] if placed else text
        if text[:1] == "@" and (offset := _OFFSET.match(words)):
            words = words[offset.end() :]
        words = plain_text(words)[:MAX_WORDS]
        meaning = sign_in_words(words)
        if meaning is not None:
            self._signs.append(meaning)
            self._complaints.say(
                tr("“{words}” in quotation marks is read as the sign.", words=words), once=f"quoted {words}"
            )
        elif placed or not words:
            self.words(words, above=text[:1] != "_")
        elif parse_chord(words) is not None:
            self._chords.append(words)
        else:
            self.words(words, above=True)
            problem = tr("“{words}” is no chord symbol: it is read as words above the staff.", words=words[:40])
            self._complaints.say(problem, once=f"words {words}")

    def words(self, text: str, above: bool) -> None:
        """Put words beside the next note."""
        if text:
            self._words.append((text, above))

    def grace(self, grace: Grace) -> None:
        """Put a grace note before the next note."""
        if len(self._graces) < MAX_GRACES:
            self._graces.append(grace)
        else:
            text = tr("More than {most} grace notes stand before one note: the others are left out.", most=MAX_GRACES)
            self._complaints.say(text, once="graces")

    # where it goes

    def give(self, note: DraftNote, bar: DraftBar, bar_index: int) -> None:
        """Give all that waits to a note that is about to be added to its bar."""
        if self._signs:
            signs, self._signs = self._signs, []
            for sign in signs:
                self._put(sign, note, bar, bar_index)
        if self._graces:
            graces, self._graces = self._graces, []
            if note.pitches:
                note.graces = tuple(graces)
            else:
                self._complaints.say(tr("Grace notes before a rest are left out."))
        place = len(bar.notes)
        if self._chords:
            bar.chords += [(place, text) for text in self._chords]
            self._chords = []
        if self._words:
            bar.words += [(place, text, above) for text, above in self._words]
            self._words = []

    def _put(self, sign: Meaning, note: DraftNote, bar: DraftBar, bar_index: int) -> None:
        if isinstance(sign, BarSign | Jump):
            self._put_on_bar(sign, bar, bar_index, bar_index)
        elif not note.pitches and isinstance(sign, Bow):
            self._signs = _with(self._signs, sign)
            self._complaints.say(tr("A bow mark on a rest is read on the note after it."), once="bow on rest")
        elif not note.pitches and sign not in (Articulation.FERMATA, Articulation.BREATH_MARK):
            self._complaints.say(tr("A mark on a rest is left out."), once="mark on rest")
        elif isinstance(sign, Bow):
            if note.held:
                text = tr("A bow mark on the second note of a tie is left out: nothing is struck there.")
                self._complaints.say(text)
            elif note.bow is not None and note.bow is not sign:
                self._complaints.say(tr("An up-bow and a down-bow stand on one note: the first is kept."))
            else:
                note.bow = sign
        elif isinstance(sign, Ornament):
            note.ornaments = _with(note.ornaments, sign)
        elif isinstance(sign, Articulation):
            note.articulations = _with(note.articulations, sign)
        elif isinstance(sign, Finger):
            note.fingerings = _with(note.fingerings, sign.text)

    def _put_on_bar(self, sign: BarSign | Jump, bar: DraftBar, leaves: int, reaches: int) -> None:
        match sign:
            case BarSign.SEGNO:
                bar.segno = True
            case BarSign.CODA:
                self._codas.append((leaves, reaches))
            case BarSign.TO_CODA:
                bar.to_coda = True
            case BarSign.FINE:
                bar.fine = True
            case Jump():
                bar.jump = sign

    def end_bar(self, bars: list[DraftBar], bar: DraftBar) -> None:
        """At a bar line: place signs of playing order and words; other signs wait on.

        A segno marks the bar that follows; Fine, D.C. and the like end the bar before.

        Args:
            bars: Closed so far.
            bar: About to be closed if it holds notes.
        """
        if self._signs:
            closes = bar if bar.notes else bars[-1] if bars else None
            reaches = len(bars) + bool(bar.notes)
            waiting: dict[Meaning, None] = {}
            for sign in self._signs:
                if sign is BarSign.SEGNO or not isinstance(sign, BarSign | Jump):
                    waiting[sign] = None
                elif closes is not None:
                    self._put_on_bar(sign, closes, reaches - 1, reaches)
            if Articulation.FERMATA in waiting:
                del waiting[Articulation.FERMATA]
                self._complaints.say(tr("A fermata on a bar line is left out."), once="fermata on bar line")
            if Bow.UP in waiting or Bow.DOWN in waiting:
                self._complaints.say(
                    tr("A bow mark before a bar line is read on the note after it."), once="bow on bar line"
                )
            self._signs = list(waiting)
        if self._words and bar.notes:
            bar.words += [(len(bar.notes) - 1, text, above) for text, above in self._words]
            self._words = []

    def finish(self, bars: list[DraftBar]) -> None:
        """Tell what is left without a note, and tell the coda that is left at from the one that is reached.

        Of two coda signs, and no "to coda", the first is where a jump leaves; the last is where it arrives.
        """
        if self._graces:
            self._complaints.say(tr("Grace notes after the last note belong to none: they are left out."))
        if len(self._codas) > 1 and not any(bar.to_coda for bar in bars):
            bars[min(max(self._codas[0][0], 0), len(bars) - 1)].to_coda = True
        if self._codas and self._codas[-1][1] < len(bars):
            bars[self._codas[-1][1]].coda = True


def _with(items: list[_Item] | None, item: _Item) -> list[_Item]:
    """A list with the item in it once."""
    if items is None:
        return [item]
    return items if item in items else [*items, item]
