"""The music code of ABC 2.1 (section 4): lines of a tune body in, a draft of bars out.

``abc_tokens`` cuts a line into tokens, one method per kind of token changes the reader's state. Helpers keep the
account of one thing each: ``Pitches`` of accidentals, ``Rhythm`` of tuplets and broken rhythm, ``Slurs`` of slurs and
ties, ``Marks`` of what waits beside the next note. All state runs on over line ends, as the standard has it. Nothing
recurses, so no text is too deep.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from fractions import Fraction

from core.bowing import Grace
from core.reading import abc_fields
from core.reading.abc_draft import Complaints, DraftBar, DraftNote, DraftTune
from core.reading.abc_marks import Marks
from core.reading.abc_pitches import Pitches
from core.reading.abc_rhythm import Rhythm
from core.reading.abc_signs import LONG
from core.reading.abc_slurs import Slurs
from core.reading.abc_text import plain_text
from core.reading.abc_tokens import INSIDE, NOTE_GROUPS, TOKEN, bar_line, multiplier, passes
from core.reading.limits import LONGEST_GRACE, MAX_BARS, MAX_NOTES, MAX_PASSES, MAX_PITCHES
from core.translation import tr
from core.tune import BarLine, Key, Meter, Pitch, note_value


class MusicReader:
    """Reads the body of one tune, field by field and line by line."""

    def __init__(self, complaints: Complaints, symbols: dict[str, str]) -> None:
        """Args: where problems go, and what each user letter stands for (changed by ``U:`` fields in the body)."""
        self._complaints = complaints
        self._tune = DraftTune()
        self._pitches = Pitches(complaints)
        self._rhythm = Rhythm(complaints)
        self._slurs = Slurs(complaints)
        self._marks = Marks(complaints, symbols)
        self._handlers: dict[str, Callable[[re.Match[str]], None]] = {
            "note": self._read_note,
            "ending": self._read_ending,
            "chord": lambda token: self._read_chord(token["inside"], token["times"], bool(token["tied"])),
            "tuplet": self._read_tuplet,
            "overlay": self._read_overlay,
            "open": lambda _: self._slurs.open(),
            "close": lambda _: self._slurs.close(self._count - 1, self._last),
            "grace": self._read_graces,
            "quote": lambda token: self._marks.quoted(token["quoted"]),
            "broken": self._read_broken,
            "rest": self._read_rest,
            "bars": self._read_bars_of_rest,
            "decoration": lambda token: self._marks.decoration(token["name"]),
            "plus": self._read_plus,
            "sign": lambda token: self._marks.letter(token["sign"]),
            "tie": self._read_loose_tie,
            "skipped": self._skip,
            "digits": self._read_digits,
            "stray": self._skip,
        }
        self._meter = abc_fields.FREE_METER
        self._bang_breaks = False  # ! ends a printed line and opens no decoration
        self._plus_decorates = False
        self._voice = self._main_voice = ""
        self._in_other_voice = self._in_overlay = self._is_full = False
        self._bar = DraftBar(0, meter=self._meter, key=self._pitches.key)
        self._count = 0  # notes and rests so far
        self._last: DraftNote | None = None
        self._bar_token_end = -1  # place in the line after the last bar line; -1 where the line has none yet
        self._ending: tuple[int, ...] = ()
        self._section_times = 2  # what :| plays
        self._part = ""

    # fields

    def start(self, meter: Meter | None, unit: Fraction | None, key: Key, voice: str) -> None:
        """Take over what the header says; called once, before the first line of music.

        Args:
            meter: None where no ``M:`` stands, which means free metre.
            unit: Unit note length in quarter notes, None where no ``L:`` stands.
            key: The key.
            voice: First voice that the header names, or "".
        """
        self._meter = meter if meter is not None else abc_fields.FREE_METER
        self._rhythm.set_unit(unit if unit is not None else abc_fields.default_unit(meter))
        self._pitches.change_key(key)
        self._voice = self._main_voice = voice

    def read_field(self, letter: str, value: str, line: int) -> None:
        """Follow a field that bears on the music: I, K, L, M, P, Q, U or V.

        Args:
            letter: The field's letter.
            value: Text after the colon, comment gone.
            line: Line in the file.
        """
        self._complaints.line = line
        say = self._complaints.say
        if letter == "V":
            self._change_voice(value)
        elif not self._in_other_voice:
            match letter:
                case "K" if not abc_fields.is_staff_setting(value):
                    key = abc_fields.parse_key(value, say)
                    if self._bar.notes and key != self._pitches.key:
                        say(tr("The key changes inside a bar: the new signature is shown from the next bar line on."))
                    self._pitches.change_key(key)
                case "L":
                    self._rhythm.set_unit(abc_fields.parse_unit(value, say) or self._rhythm.unit)
                case "M":
                    if self._bar.notes:
                        say(tr("The metre changes inside a bar: it is read as changing at the next bar line."))
                    self._meter = abc_fields.parse_meter(value, say)
                case "P":
                    self._part = plain_text(value)[:40]
                case "Q":
                    self._set_tempo(value)
                case "U":
                    abc_fields.define_symbol(value, self._marks.symbols, say)
                case "I":
                    self._instruct(value)

    def _change_voice(self, value: str) -> None:
        name = value.split(maxsplit=1)[0] if value.strip() else ""
        if not self._count or (not self._main_voice and name == "1"):
            self._main_voice = name
        self._voice = name
        self._in_other_voice = name != self._main_voice

    def _set_tempo(self, value: str) -> None:
        tempo, words = abc_fields.parse_tempo(value, self._rhythm.unit, self._complaints.say)
        if tempo is None:
            self._marks.words(plain_text(words), above=True)
        elif self._count or self._tune.tempo is not None:
            self._complaints.say(tr("The tempo changes inside the tune: the one at the start is kept."), once="tempo")
        else:
            self._tune.tempo = tempo

    def _instruct(self, value: str) -> None:
        """Follow an instruction that changes how music is read; all others are ignored (ABC 2.1, 3.1.17)."""
        words = value.split()
        match words[:1]:
            case ["linebreak"]:
                self._bang_breaks = "!" in words
            case ["decoration"]:
                self._plus_decorates = "+" in words
            case ["propagate-accidentals"]:
                self._pitches.accidentals_carry = "not" not in words
                self._pitches.same_octave_only = "octave" in words

    # lines

    def read_line(self, text: str, line: int) -> None:
        """Read one line of music code, comment already gone."""
        self._complaints.line = line
        self._bar_token_end = -1
        handlers = self._handlers
        if self._bang_breaks:
            text = text.replace("!", " ")
        for token in TOKEN.finditer(text):
            kind = token.lastgroup
            if kind == "space" or kind is None:
                continue
            if kind == "bar":
                self._read_bar_line(token)
            elif kind == "field":
                self._read_inline_field(token)
            elif self._in_other_voice or self._in_overlay or self._is_full:
                self._tell_left_out(kind)
            else:
                handlers[kind](token)

    def finish(self) -> DraftTune:
        """Close what is open at the end of the tune and give the draft."""
        bars = self._tune.bars
        self._rhythm.end_bar(self._last)
        self._marks.end_bar(bars, self._bar)
        if self._bar.notes:
            self._close_bar(BarLine.PLAIN, 0)
        self._slurs.finish()
        self._marks.finish(bars)
        self._tune.slurs = self._slurs.found
        return self._tune

    def _tell_left_out(self, kind: str) -> None:
        if kind == "note" and self._in_other_voice:
            text = tr("Only the first voice is read: voice {voice} is left out.", voice=self._voice[:20])
            self._complaints.say(text, once="voice")
        elif kind == "note" and self._in_overlay:
            self._complaints.say(tr("A second voice laid over a bar with & is left out."), once="overlay")
        elif kind in ("note", "chord", "rest", "bars") and self._is_full:
            text = tr("The tune has more than {most} bars: what follows is left out.", most=MAX_BARS)
            self._complaints.say(text, once="bars")

    def _read_inline_field(self, token: re.Match[str]) -> None:
        letter = token["letter"]
        if letter in "IKLMPQUV":
            self.read_field(letter, token["value"], self._complaints.line)
        elif letter == "m":
            self._complaints.say(tr("Macros (m:) are left out."), once="m")

    # notes

    def _read_note(self, token: re.Match[str]) -> None:
        accidental, letter, marks, length, tied = token.group(*NOTE_GROUPS)
        pitch, courtesy = self._pitches.read(accidental, letter, marks, self._slurs.tie)
        note = self._add(*self._rhythm.read(length), (pitch,))
        if courtesy:
            note.courtesy = True
        if tied:
            self._slurs.tie = frozenset((pitch,))

    def _add(self, length: Fraction, doubtful: bool, pitches: tuple[Pitch, ...]) -> DraftNote:
        """Add a note, double stop or rest (no pitches) with all that waits for it."""
        if len(self._bar.notes) == MAX_NOTES:
            self._complaints.say(tr("A bar holds more than {most} notes: it is cut there.", most=MAX_NOTES))
            self._close_bar(BarLine.PLAIN, 0)
        bar = self._bar
        if not bar.notes:
            bar.file_line, bar.meter, bar.key = self._complaints.line, self._meter, self._pitches.key
            bar.ending, bar.part, self._part = self._ending, self._part, ""
        note = DraftNote(self._complaints.line, length, pitches, doubtful)
        self._rhythm.shape(note)
        if self._slurs.tie:
            self._slurs.end_tie(self._count, note, self._last)
        self._marks.give(note, bar, len(self._tune.bars))
        self._slurs.take(self._count, note)
        bar.notes.append(note)
        self._count += 1
        self._last = note
        return note

    def _read_rest(self, token: re.Match[str]) -> None:
        self._add(*self._rhythm.read(token["long"]), ()).hidden = token["shown"] == "x"

    def _read_bars_of_rest(self, token: re.Match[str]) -> None:
        """Write out a rest of several bars as bars (ABC 2.1, 4.5); inside a bar it can only be a slip for ``z``."""
        number, hidden = token["number"], token["all"] == "X"
        if self._bar.notes:
            self._complaints.say(tr("A rest of whole bars stands inside a bar: it is read as a short rest."))
            self._add(*self._rhythm.read(number), ()).hidden = hidden
            return
        count = int(number) if number and len(number) < 5 else 1
        for index in range(min(max(count, 1), MAX_BARS)):
            if index:
                self._close_bar(BarLine.PLAIN, 0)
            if self._is_full:
                self._tell_left_out("bars")
                return
            self._add(self._meter.bar_length or Fraction(4), True, ()).hidden = hidden

    def _read_chord(self, inside: str, times: str, tied: bool) -> None:
        """Read a double stop or chord; its length is the first note's times what follows the bracket (4.17)."""
        pitches: list[Pitch] = []
        ties: list[Pitch] = []
        length: tuple[Fraction, bool] | None = None
        courtesy = False
        for part in INSIDE.finditer(inside):
            match part.lastgroup:
                case "note":
                    accidental, letter, marks, own, own_tie = part.group(*NOTE_GROUPS)
                    pitch, needless = self._pitches.read(accidental, letter, marks, self._slurs.tie)
                    pitches.append(pitch)
                    courtesy = courtesy or needless
                    if own_tie or tied:
                        ties.append(pitch)
                    length = length or self._rhythm.read(own)
                case "quote":
                    self._marks.quoted(part["quoted"])
                case "decoration":
                    self._marks.decoration(part["name"])
                case "sign":
                    self._marks.letter(part["sign"])
                case _ if not part[0].isspace():
                    text = tr("“[{inside}]” holds more than notes: the rest is ignored.", inside=inside[:20])
                    self._complaints.say(text, once=f"chord {inside}")
        if length is None:
            self._complaints.say(tr("“[{inside}]” holds no notes: it is ignored.", inside=inside[:20]))
            return
        if len(pitches) > MAX_PITCHES:
            self._complaints.say(tr("A chord of more than {most} notes is cut to its first ones.", most=MAX_PITCHES))
            del pitches[MAX_PITCHES:], ties[MAX_PITCHES:]
        factor = multiplier(times) or 1
        note = self._add(length[0] * factor, length[1] or factor != 1, _low_to_high(pitches))
        note.courtesy = courtesy
        self._slurs.tie = frozenset(ties)

    def _read_graces(self, token: re.Match[str]) -> None:
        """Read grace notes; a slur that begins or ends among them begins or ends on their main note (4.12)."""
        slashed = token["slash"] == "/"
        opened = 0
        for part in INSIDE.finditer(token["graces"]):
            match part.lastgroup:
                case "note":
                    accidental, letter, marks, length, _ = part.group(*NOTE_GROUPS)
                    self._add_grace([(accidental, letter, marks)], length, slashed)
                case "chord":
                    notes = [note for note in INSIDE.finditer(part["inside"]) if note.lastgroup == "note"]
                    self._add_grace([(note[2], note[3], note[4]) for note in notes], part["times"], slashed)
                case "sign" if self._marks.symbols.get(part[0]) in ("upbow", "downbow"):
                    self._marks.letter(part[0])
                case _ if part[0] == "(":
                    self._slurs.open()
                    opened += 1
                case _ if part[0] == ")" and opened:
                    self._slurs.take_back()
                    opened -= 1
                case _ if part[0] == ")":
                    self._slurs.close_on_next()
                case _:
                    pass  # rhythm and signs on grace notes are for a player program

    def _add_grace(self, notes: list[tuple[str | None, str, str]], length: str, slashed: bool) -> None:
        pitches = _low_to_high({self._pitches.read(*note)[0] for note in notes[:MAX_PITCHES]})
        shown = Fraction(1, 2) * (multiplier(length) or 1)
        if shown > LONGEST_GRACE or note_value(shown) is None:
            shown = Fraction(1, 2)
        if pitches:
            self._marks.grace(Grace(pitches, shown, slashed))

    def _read_broken(self, token: re.Match[str]) -> None:
        before = self._last if self._bar.notes else None
        if not self._rhythm.break_rhythm(token["broken"], before):
            self._complaints.say(
                tr("“{text}” does not stand between two notes of a bar: it is ignored.", text=token[0][:8])
            )

    def _read_tuplet(self, token: re.Match[str]) -> None:
        if not self._rhythm.begin_tuplet(token["actual"], token["normal"], token["count"], self._meter):
            self._complaints.say(tr("“{text}” is no tuplet: it is ignored.", text=token[0][:12]))

    def _read_loose_tie(self, token: re.Match[str]) -> None:
        """Read a tie that does not touch its note: right after a slur's end it is usual, elsewhere told."""
        if self._last is None or not self._last.pitches:
            self._complaints.say(tr("A tie has no note before it: it is left out."))
            return
        if token.string[: token.start()].rstrip(" ")[-1:] != ")":
            text = tr("A tie must touch the note that it leads from: it is read as if it did.")
            self._complaints.say(text, once="loose tie")
        self._slurs.tie = frozenset(self._last.pitches)

    def _read_plus(self, token: re.Match[str]) -> None:
        """Read ``+name+``, the decoration of ABC 2.0, or ``+CEG+``, the chord of 1.6 (ABC 2.1, 10.2)."""
        name = token["old"]
        if self._plus_decorates or (name in LONG and len(name) > 1):
            self._marks.decoration(name)
        else:
            self._read_chord(name, "", tied=False)

    # bars

    def _read_bar_line(self, token: re.Match[str]) -> None:
        self._in_overlay = False
        if self._in_other_voice:
            return
        self._bar_token_end = token.end()
        if token["line"] == ".|" and self._is_unfinished():
            return  # an editorial bar line inside a long bar
        ends, opens, look = bar_line(token["line"])
        self._rhythm.end_bar(self._last)
        self._marks.end_bar(self._tune.bars, self._bar)
        self._pitches.end_bar()
        if ends or opens or look is not BarLine.PLAIN:
            self._ending = ()
        if self._bar.notes:
            self._close_bar(look, ends)
        else:
            self._strengthen_last_bar_line(look, ends)
        if ends:
            self._section_times = 2
        if opens:
            self._bar.opens_repeat = True
            self._section_times = opens + 1
        if token["passes"]:
            self._begin_ending(token["passes"])

    def _is_unfinished(self) -> bool:
        full = self._meter.bar_length
        return full is not None and sum(note.length for note in self._bar.notes) < full

    def _close_bar(self, look: BarLine, ends: int) -> None:
        bar = self._bar
        bar.line = look
        bar.repeats = self._times(ends) if ends else 0
        self._tune.bars.append(bar)
        self._bar = DraftBar(self._complaints.line, meter=self._meter, key=self._pitches.key)
        self._is_full = len(self._tune.bars) >= MAX_BARS

    def _times(self, ends: int) -> int:
        """How often a section is played that ends with so many colons."""
        return min(max(ends + 1, self._section_times), MAX_PASSES)

    def _strengthen_last_bar_line(self, look: BarLine, ends: int) -> None:
        """A bar line with nothing since the last one says more about that one."""
        if not self._tune.bars:
            if ends:
                self._complaints.say(tr("A repeat ends before the first note: it is ignored."))
            return
        last = self._tune.bars[-1]
        if ends and not last.repeats:
            last.repeats = self._times(ends)
        if last.line is BarLine.PLAIN or look is BarLine.FINAL:
            last.line = look

    def _read_ending(self, token: re.Match[str]) -> None:
        if self._bar.notes:  # an ending that begins inside a bar parts it; accidentals hold on
            self._close_bar(BarLine.PLAIN, 0)
        self._begin_ending(token["ending"])

    def _read_digits(self, token: re.Match[str]) -> None:
        between = token.string[self._bar_token_end : token.start()] if self._bar_token_end >= 0 else "?"
        if between.strip():
            self._complaints.say(tr("The number {text} belongs to no note: it is ignored.", text=token[0][:10]))
            return
        text = tr("The ending {text} should touch its bar line: it is read as if it did.", text=token[0][:10])
        self._complaints.say(text, once="loose ending")
        self._begin_ending(token[0])

    def _begin_ending(self, text: str) -> None:
        numbers = passes(text)
        if numbers:
            self._ending = numbers
        else:
            self._complaints.say(
                tr("“{text}” is no list of passes for an ending: it is ignored.", text=text.lstrip("[")[:12])
            )

    # what has no meaning

    def _read_overlay(self, token: re.Match[str]) -> None:
        self._in_overlay = "&)" not in token[0]

    def _skip(self, token: re.Match[str]) -> None:
        char = token[0]
        if char in "$\\!":
            return  # line breaks and continuation say how to print, not what
        if char in "*;?@#":
            text = tr("The sign {char} is kept for later versions of ABC: it is ignored.", char=char)
        elif char == '"':
            text = tr("A quotation mark has no partner on its line: it is ignored.")
        elif char in "[]{}":
            text = tr("“{char}” has no partner here: it is ignored.", char=char)
        else:
            text = tr("The sign “{char}” has no meaning in music: it is ignored.", char=char)
        self._complaints.say(text, once=f"sign {char}")


def _low_to_high(pitches: Iterable[Pitch]) -> tuple[Pitch, ...]:
    return tuple(sorted(pitches, key=lambda pitch: (pitch.midi, pitch)))
