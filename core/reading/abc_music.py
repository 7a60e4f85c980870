"""The music code of ABC 2.1 (section 4): lines of a tune body in, a draft of bars out.

One regular expression cuts a line into tokens, one method per kind of token changes the reader's state. Nothing here
recurses and no pattern backtracks over more than a token, so time grows with the length of the text.

State runs on over line ends, as the standard has it: slurs, ties, tuplets, broken rhythm, and the decorations that
wait for their note.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from functools import lru_cache
from typing import TypeVar

from core.bowing import Articulation, Bow, Grace, Ornament
from core.chords import parse_chord
from core.reading import abc_fields
from core.reading.abc_draft import Complaints, DraftBar, DraftNote, DraftTune
from core.reading.abc_signs import LONG, QUOTED, BarSign, Finger, LeftOut, Meaning
from core.reading.abc_text import plain_text
from core.tune import BarLine, Jump, Key, Meter, Pitch, Tuplet, note_value

MAX_BARS = 2000  # in a tune
MAX_NOTES = 256  # in a bar
MAX_PITCHES = 16  # in a chord
MAX_PASSES = 64  # that an ending can be for
LONGEST = Fraction(64)  # quarter notes in one note
LOWEST_OCTAVE, HIGHEST_OCTAVE = 0, 9

_LENGTH = r"[0-9]*/*[0-9]*"
_NOTE = rf"(?P<note>(\^\^?|__?|=)?([A-Ga-g])([,']*)({_LENGTH})(\.?-)?)"
_TOKEN = re.compile(
    rf"""
      {_NOTE}
    | (?P<space>[ \t`]+ | y{_LENGTH})
    | (?P<bar>(?P<line>\.?(?:\[\||\||:[|:\]])(?:[|:\]]|\[(?=\|))*)(?P<passes>\[?[0-9]+(?:[,-][0-9]+)*)?)
    | (?P<field>\[(?P<letter>[A-Za-z]):(?P<value>[^\[\]]*)\])
    | (?P<ending>\[[0-9]+(?:[,-][0-9]+)*)
    | (?P<chord>\[(?P<inside>(?:"[^"]*"|[^\]\[":|])*)\](?P<times>{_LENGTH})(?P<tied>\.?-)?)
    | (?P<tuplet>\((?P<actual>[0-9]+)(?::(?P<normal>[0-9]*))?(?::(?P<count>[0-9]*))?)
    | (?P<overlay>\(?&\)?)
    | (?P<open>\.?\()
    | (?P<close>\.?\))
    | (?P<grace>\{{(?P<slash>/?)(?P<graces>[^{{}}|]*)\}})
    | (?P<quote>"(?P<quoted>[^"]*)")
    | (?P<broken><+|>+)
    | (?P<rest>(?P<shown>[zx])(?P<long>{_LENGTH}))
    | (?P<bars>(?P<all>[ZX])(?P<number>[0-9]*))
    | (?P<decoration>!(?P<name>[^!\s|\[\]"]{{1,30}})!)
    | (?P<plus>\+(?P<old>[^+\s|\[\]"]{{1,30}})\+)
    | (?P<sign>[.~H-Wh-w])
    | (?P<tie>-)
    | (?P<skipped>[$*;?@#\\!])
    | (?P<digits>[0-9]+)
    | (?P<stray>.)
    """,
    re.VERBOSE | re.DOTALL,
)
_INSIDE = re.compile(  # what may stand within a chord or the braces of grace notes
    rf"""
      {_NOTE}
    | (?P<chord>\[(?P<inside>[^\[\]]*)\](?P<times>{_LENGTH}))
    | (?P<quote>"(?P<quoted>[^"]*)")
    | (?P<decoration>!(?P<name>[^!\s|\[\]"]{{1,30}})!)
    | (?P<sign>[.~H-Wh-w])
    | (?P<other>.)
    """,
    re.VERBOSE | re.DOTALL,
)
_TUPLET_TIMES = {2: 3, 3: 2, 4: 3, 6: 2, 8: 3}  # ABC 2.1, 4.13; for 5, 7 and 9 it depends on the metre
_FINGER = re.compile(r"[\^_<>@]?\s*([0-4])\s*$")
_OFFSET = re.compile(r"-?[0-9.]+,-?[0-9.]+\s*")  # of a text placed by "@x,y ..."
_PLACES = {letter: (letter.upper(), 4 if letter.isupper() else 5) for letter in "ABCDEFGabcdefg"}
_NO_TIE: frozenset[Pitch] = frozenset()
_Item = TypeVar("_Item")


@lru_cache(maxsize=1024)
def _times(text: str) -> Fraction | None:
    """Multiplier that a length such as ``3/2``, ``/`` or ``//`` stands for; None where it is zero or beyond reason."""
    top, slash, rest = text.partition("/")
    bottom = rest.lstrip("/")
    slashes = len(slash) + len(rest) - len(bottom)
    if len(top) > 4 or len(bottom) > 4 or slashes > 9:
        return None
    below = int(bottom) * 2 ** (slashes - 1) if bottom else 2**slashes
    return Fraction(int(top or 1), below) or None if below else None


@lru_cache(maxsize=512)
def _pitch(octave: int, step: str, alter: int) -> Pitch:
    return Pitch(octave, step, alter)


@lru_cache(maxsize=256)
def _bar_line(text: str) -> tuple[int, int, BarLine]:
    """What a bar line says: times that a repeat ends, times that one opens, and how it looks (ABC 2.1, 4.8).

    Read liberally, as the standard asks: colons before a stroke end a repeat, those after the last stroke open one.
    """
    strokes = text.lstrip(".").replace("[|]", "|")  # an invisible bar line divides like a plain one
    bare = strokes.strip(":")
    if not bare:
        return len(strokes) // 2, len(strokes) // 2, BarLine.PLAIN
    opens = len(strokes) - len(strokes.rstrip(":"))
    ends = max(map(len, re.findall(":+", strokes[: len(strokes) - opens])), default=0)
    if "]" in bare:
        look = BarLine.FINAL
    elif ("[" in bare or bare.count("|") > 1) and not ends:
        look = BarLine.DOUBLE
    else:
        look = BarLine.PLAIN
    return ends, opens, look


def _passes(text: str) -> tuple[int, ...]:
    """Passes that an ending such as ``1``, ``1,3`` or ``1-3`` is for, ascending; empty where it makes no sense."""
    passes: set[int] = set()
    for part in text.lstrip("[").split(","):
        first, _, last = part.partition("-")
        if not first or len(first) > 2 or len(last) > 2:
            return ()
        low, high = int(first), int(last or first)
        if not 1 <= low <= high <= MAX_PASSES:
            return ()
        passes.update(range(low, high + 1))
    return tuple(sorted(passes))


class MusicReader:
    """Reads the body of one tune, field by field and line by line.

    Attributes:
        tune: The draft so far; whole after ``finish``.
        symbols: What each user letter stands for: a decoration's name, quoted text, or "" for nothing.
    """

    def __init__(self, complaints: Complaints, symbols: dict[str, str]) -> None:
        self.tune = DraftTune()
        self.symbols = symbols
        self._complaints = complaints
        self._line = 0
        self._handlers: dict[str, Callable[[re.Match[str]], None]] = {
            "ending": self._read_ending,
            "chord": self._read_chord,
            "tuplet": self._read_tuplet,
            "overlay": self._read_overlay,
            "open": self._read_open,
            "close": self._read_close,
            "grace": self._read_graces,
            "quote": lambda token: self._read_quoted(token["quoted"]),
            "broken": self._read_broken,
            "rest": self._read_rest,
            "bars": self._read_bars_of_rest,
            "decoration": lambda token: self._decorate(token["name"]),
            "plus": self._read_plus,
            "sign": lambda token: self._read_sign(token["sign"]),
            "tie": self._read_tie,
            "skipped": self._skip,
            "digits": self._read_digits,
            "stray": self._skip,
        }
        # how to read
        self._meter = abc_fields.FREE_METER
        self._key = Key(0, "none")
        self._alters = self._key.alters()
        self._unit = Fraction(1, 2)
        self._lengths: dict[str, tuple[Fraction, bool]] = {}  # by text, for the unit length in force
        self._bang_breaks = False
        self._plus_decorates = False
        self._accidentals_carry = True
        self._same_octave_only = False
        # which voice
        self._voice = self._main_voice = ""
        self._other_voice = self._overlay = self._full = False
        # where we are
        self._bar = DraftBar(0, self._meter, self._key)
        self._bar_token_end = -1  # in the line, after the last bar line
        self._count = 0  # notes and rests so far
        self._last: DraftNote | None = None
        self._accidentals: dict[str, int] = {}  # written in this bar
        self._ending: tuple[int, ...] = ()
        self._section_times = 2
        self._part = ""
        self._codas: list[tuple[int, int]] = []  # bars: the one a jump would leave, the one it would reach
        # what waits for the next note
        self._signs: list[Meaning] = []
        self._graces: list[Grace] = []
        self._chords: list[str] = []
        self._words: list[tuple[str, bool]] = []
        self._opens = 0
        self._closes = 0
        self._slurs: list[tuple[int, int]] = []  # open ones: place of the first note, line
        self._tie = _NO_TIE
        self._broken: Fraction | None = None  # factor for the next note
        self._tuplet: tuple[int, int] = (1, 1)
        self._tuplet_left = 0
        self._tuplet_opens = False

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
        self._unit = unit if unit is not None else abc_fields.default_unit(meter)
        self._set_key(key)
        self._voice = self._main_voice = voice

    def read_field(self, letter: str, value: str, line: int) -> None:
        """Follow a field that bears on the music: I, K, L, M, P, Q, U or V.

        Args:
            letter: The field's letter.
            value: Text after the colon, comment gone.
            line: Line in the file.
        """
        self._line = line
        if letter == "V":
            self._set_voice(value)
        elif not self._other_voice:
            match letter:
                case "K" if not abc_fields.is_staff_setting(value):
                    self._change_key(abc_fields.parse_key(value, self._say))
                case "L":
                    self._unit = abc_fields.parse_unit(value, self._say) or self._unit
                    self._lengths.clear()
                case "M":
                    if self._bar.notes:
                        self._say("The metre changes inside a bar: it is read as changing at the next bar line.")
                    self._meter = abc_fields.parse_meter(value, self._say)
                case "P":
                    self._part = plain_text(value)[:40]
                case "Q":
                    self._set_tempo(value)
                case "U":
                    self._set_symbol(value)
                case "I":
                    self._instruct(value)

    def _change_key(self, key: Key) -> None:
        if self._bar.notes and key != self._key:
            self._say("The key changes inside a bar: the new signature is shown from the next bar line on.")
        self._set_key(key)
        self._accidentals = {}

    def _set_key(self, key: Key) -> None:
        self._key = key
        self._alters = key.alters()

    def _set_voice(self, value: str) -> None:
        name = value.split(maxsplit=1)[0] if value.strip() else ""
        if not self._count or (not self._main_voice and name == "1"):
            self._main_voice = name
        self._voice = name
        self._other_voice = name != self._main_voice

    def _set_tempo(self, value: str) -> None:
        tempo, words = abc_fields.parse_tempo(value, self._unit, self._say)
        if tempo is None:
            self._words += [(plain_text(words), True)] if words else []
        elif self._count or self.tune.tempo is not None:
            self._say("The tempo changes inside the tune: the one at the start is kept.", "tempo")
        else:
            self.tune.tempo = tempo

    def _set_symbol(self, value: str) -> None:
        symbol = abc_fields.parse_user_symbol(value)
        if symbol is None:
            self._say(f"“U:{value.strip()[:40]}” is no user symbol such as T = !trill!: it is ignored.")
        else:
            self.symbols[symbol[0]] = symbol[1]

    def _instruct(self, value: str) -> None:
        """Follow an instruction that changes how music is read; all others are ignored (ABC 2.1, 3.1.17)."""
        words = value.split()
        match words[:1]:
            case ["linebreak"]:
                self._bang_breaks = "!" in words
            case ["decoration"]:
                self._plus_decorates = "+" in words
            case ["propagate-accidentals"]:
                self._accidentals_carry = "not" not in words
                self._same_octave_only = "octave" in words

    def _say(self, text: str, once: str | None = None) -> None:
        self._complaints.say(self._line, text, once)

    # lines

    def read_line(self, text: str, line: int) -> None:
        """Read one line of music code, comment already gone."""
        self._line = line
        self._bar_token_end = -1
        if self._bang_breaks:
            text = text.replace("!", " ")
        for token in _TOKEN.finditer(text):
            kind = token.lastgroup
            if kind == "space":
                continue
            if kind == "bar":
                self._read_bar_line(token)
            elif kind == "field":
                self._read_inline_field(token)
            elif self._other_voice or self._overlay or self._full:
                self._say_left_out(kind)
            elif kind == "note":
                _, sign, letter, marks, length, tied = token.group(1, 2, 3, 4, 5, 6)
                pitch, courtesy = self._read_pitch(sign, letter, marks)
                self._add(*self._read_length(length), (pitch,)).courtesy = courtesy
                if tied:
                    self._tie = frozenset((pitch,))
            elif kind is not None:
                self._handlers[kind](token)

    def finish(self) -> DraftTune:
        """Close what is open at the end of the tune and give the draft."""
        self._give_up_rhythm()
        self._place_bar_signs()
        if self._bar.notes:
            self._close_bar(BarLine.PLAIN, 0)
        for _, line in self._slurs:
            self._complaints.say(line, "A slur begins here and never ends: it is left out.")
        if self._opens:
            self._say("A slur begins after the last note: it is left out.")
        if self._graces:
            self._say("Grace notes after the last note belong to none: they are left out.")
        if self._tie:
            self._say("A tie leads from the last note to nothing: it is left out.")
        self._settle_codas()
        return self.tune

    def _say_left_out(self, kind: str | None) -> None:
        if kind != "note":
            return
        if self._other_voice:
            self._say(f"Only the first voice is read: voice {self._voice[:20]} is left out.", "voice")
        elif self._overlay:
            self._say("A second voice laid over a bar with & is left out.", "overlay")

    def _read_inline_field(self, token: re.Match[str]) -> None:
        letter = token["letter"]
        if letter in "IKLMPQUV":
            self.read_field(letter, token["value"], self._line)
        elif letter == "m":
            self._say("Macros (m:) are not carried out.", "macro")

    # notes

    def _read_length(self, text: str) -> tuple[Fraction, bool]:
        """Length in quarter notes, and whether it may need more than one note value."""
        known = self._lengths.get(text)
        if known is None:
            times = _times(text)
            if times is None or times * self._unit > LONGEST:
                self._say(f"“{text[:12]}” is no length of a note: read as the unit note length.", f"length {text}")
                times = Fraction(1)
            length = times * self._unit
            known = self._lengths[text] = (length, note_value(length) is None)
        return known

    def _read_pitch(self, sign: str | None, letter: str, marks: str) -> tuple[Pitch, bool]:
        """Pitch of a note, and whether its accidental is one that key and bar do not need (ABC 2.1, 4.1, 4.2, 11.3)."""
        step, octave = _PLACES[letter]
        if marks:
            octave += marks.count("'") - marks.count(",")
            if not LOWEST_OCTAVE <= octave <= HIGHEST_OCTAVE:
                self._say("A note beyond all instruments is moved to the nearest octave that can be shown.", "octave")
                octave = min(max(octave, LOWEST_OCTAVE), HIGHEST_OCTAVE)
        place = f"{step}{octave}" if self._same_octave_only else step
        in_force = self._accidentals.get(place, self._alters[step])
        if sign is not None:
            alter = abc_fields.ACCIDENTAL_ALTERS[sign]
            if self._accidentals_carry:
                self._accidentals[place] = alter
            return _pitch(octave, step, alter), alter == in_force
        for tied in self._tie:
            if tied.step == step and tied.octave == octave:
                return tied, False  # a tie keeps the accidental over the bar line
        return _pitch(octave, step, in_force), False

    def _add(self, length: Fraction, doubtful: bool, pitches: tuple[Pitch, ...]) -> DraftNote:
        """Add a note, double stop or rest (no pitches) with all that waits for it."""
        bar = self._bar
        if not bar.notes:
            bar.file_line, bar.meter, bar.key, bar.ending = self._line, self._meter, self._key, self._ending
            bar.part, self._part = self._part, ""
        elif len(bar.notes) == MAX_NOTES:
            self._say(f"A bar holds more than {MAX_NOTES} notes: it is cut there.")
            self._close_bar(BarLine.PLAIN, 0)
            return self._add(length, doubtful, pitches)
        note = DraftNote(self._line, length, pitches, doubtful)
        if self._tuplet_left:
            self._take_into_tuplet(note)
        if self._broken is not None:
            note.length *= self._broken
            note.doubtful = True
            self._broken = None
        if self._tie:
            self._end_tie(note)
        if self._signs:
            self._apply_signs(note)
        if self._graces:
            self._apply_graces(note)
        if self._chords:
            bar.chords += [(len(bar.notes), text) for text in self._chords]
            self._chords = []
        if self._words:
            bar.words += [(len(bar.notes), text, above) for text, above in self._words]
            self._words = []
        if self._opens:
            self._slurs += [(self._count, self._line)] * self._opens
            self._opens = 0
        bar.notes.append(note)
        self._count += 1
        self._last = note
        if self._closes:
            self._close_slurs_on(note)
        return note

    def _take_into_tuplet(self, note: DraftNote) -> None:
        actual, normal = self._tuplet
        note.tuplet = Tuplet(actual, normal, self._tuplet_opens)
        note.length = note.length * normal / actual
        note.doubtful = True
        self._tuplet_opens = False
        self._tuplet_left -= 1

    def _end_tie(self, note: DraftNote) -> None:
        tie, self._tie = self._tie, _NO_TIE
        last = self._last
        if last is None or not note.pitches:
            self._say("A tie leads to a rest: it is left out.")
        elif tie == frozenset(note.pitches) == frozenset(last.pitches):
            note.held = True
        else:
            self._say("A tie joins notes that are not the same: it and any like it are read as slurs.", "tie as slur")
            self.tune.slurs.append((self._count - 1, self._count, self._line))

    def _apply_graces(self, note: DraftNote) -> None:
        graces, self._graces = self._graces, []
        if note.pitches:
            note.graces = tuple(graces)
        else:
            self._say("Grace notes before a rest are left out.")

    def _read_rest(self, token: re.Match[str]) -> None:
        self._add(*self._read_length(token["long"]), ()).hidden = token["shown"] == "x"

    def _read_bars_of_rest(self, token: re.Match[str]) -> None:
        """Write out a rest of several bars as bars (ABC 2.1, 4.5); inside a bar it can only be a slip for ``z``."""
        number = token["number"]
        if self._bar.notes:
            self._say("A rest of whole bars stands inside a bar: it is read as a short rest.")
            self._add(*self._read_length(number), ()).hidden = token["all"] == "X"
            return
        count = int(number) if number and len(number) < 5 else 1
        length = self._meter.bar_length or Fraction(4)
        for index in range(min(max(count, 1), MAX_BARS)):
            if index:
                self._close_bar(BarLine.PLAIN, 0)
            if self._full:
                return
            self._add(length, True, ()).hidden = token["all"] == "X"

    def _read_chord(self, token: re.Match[str]) -> None:
        self._chord(token["inside"], token["times"], token["tied"] is not None)

    def _chord(self, inside: str, times: str, tied: bool) -> None:
        """Read a double stop or chord; its length is the first note's times what follows the bracket (4.17)."""
        pitches: list[Pitch] = []
        ties: list[Pitch] = []
        length = None
        courtesy = False
        for part in _INSIDE.finditer(inside):
            match part.lastgroup:
                case "note":
                    _, sign, letter, marks, own, own_tie = part.group(1, 2, 3, 4, 5, 6)
                    pitch, needless = self._read_pitch(sign, letter, marks)
                    pitches.append(pitch)
                    courtesy = courtesy or needless
                    if own_tie or tied:
                        ties.append(pitch)
                    if length is None:
                        length, doubtful = self._read_length(own)
                case "quote":
                    self._read_quoted(part["quoted"])
                case "decoration":
                    self._decorate(part["name"])
                case "sign":
                    self._read_sign(part["sign"])
                case _:
                    if not part[0].isspace():
                        self._say(
                            f"“[{inside[:20]}]” holds more than notes: the rest of it is ignored.", f"in {inside}"
                        )
        if length is None:
            self._say(f"“[{inside[:20]}]” holds no notes: it is ignored.")
            return
        if len(pitches) > MAX_PITCHES:
            self._say(f"A chord of more than {MAX_PITCHES} notes is cut to its first ones.")
            del pitches[MAX_PITCHES:], ties[MAX_PITCHES:]
        if times:
            length *= _times(times) or 1
            doubtful = True
        note = self._add(length, doubtful, tuple(sorted(pitches, key=lambda pitch: (pitch.midi, pitch))))
        note.courtesy = courtesy
        self._tie = frozenset(ties)

    def _read_graces(self, token: re.Match[str]) -> None:
        """Read grace notes; a slur that begins or ends among them begins or ends on their main note (4.12)."""
        slashed = token["slash"] == "/"
        opened = 0
        for part in _INSIDE.finditer(token["graces"]):
            match part.lastgroup:
                case "note":
                    _, sign, letter, marks, own, _ = part.group(1, 2, 3, 4, 5, 6)
                    self._graces.append(self._grace([(sign, letter, marks)], own, slashed))
                case "chord":
                    notes = [(note[2], note[3], note[4]) for note in _INSIDE.finditer(part["inside"]) if note["note"]]
                    if notes:
                        self._graces.append(self._grace(notes, part["times"], slashed))
                case "sign" if self.symbols.get(part[0]) in ("upbow", "downbow"):
                    self._read_sign(part[0])
                case _ if part[0] == "(":
                    self._opens += 1
                    opened += 1
                case _ if part[0] == ")" and opened:
                    self._opens -= 1
                    opened -= 1
                case _ if part[0] == ")":
                    self._closes += 1
                case _:
                    pass  # rhythm and signs on grace notes are for a player program
        if len(self._graces) > MAX_NOTES:
            self._say(f"More than {MAX_NOTES} grace notes stand before one note: the others are left out.")
            del self._graces[MAX_NOTES:]

    def _grace(self, notes: list[tuple[str | None, str, str]], length: str, slashed: bool) -> Grace:
        tie, self._tie = self._tie, _NO_TIE
        pitches = sorted({self._read_pitch(*note)[0] for note in notes}, key=lambda pitch: (pitch.midi, pitch))
        self._tie = tie
        shown = Fraction(1, 2) * (_times(length) or 1)
        return Grace(tuple(pitches), shown if note_value(shown) and shown <= 4 else Fraction(1, 2), slashed)

    # rhythm

    def _read_broken(self, token: re.Match[str]) -> None:
        """Lengthen and shorten the notes on both sides of ``>`` or ``<`` (ABC 2.1, 4.4)."""
        signs = token["broken"]
        if self._last is None or not self._bar.notes or self._broken is not None or len(signs) > 3:
            self._say(f"“{signs[:8]}” does not stand between two notes of a bar: it is ignored.")
            return
        short = Fraction(1, 2 ** len(signs))
        first, second = (2 - short, short) if signs[0] == ">" else (short, 2 - short)
        self._last.length *= first
        self._last.doubtful = True
        self._broken = second

    def _read_tuplet(self, token: re.Match[str]) -> None:
        """Begin a tuplet ``(p:q:r`` (ABC 2.1, 4.13)."""
        numbers = [token[name] or "" for name in ("actual", "normal", "count")]
        if any(len(number) > 2 for number in numbers):
            actual = normal = count = 0
        else:
            actual = int(numbers[0])
            by_metre = 3 if self._meter.is_compound else 2
            normal = int(numbers[1]) if numbers[1] else _TUPLET_TIMES.get(actual, by_metre)
            count = int(numbers[2]) if numbers[2] else actual
        if actual < 2 or normal < 1 or count < 1:
            self._say(f"“{token[0][:12]}” is no tuplet: it is ignored.")
            return
        if self._tuplet_left:
            self._say("A tuplet begins before the last one is full: the earlier one ends there.")
        self._tuplet = (actual, normal)
        self._tuplet_left = count if actual != normal else 0
        self._tuplet_opens = True

    def _give_up_rhythm(self) -> None:
        """At a bar line: end a tuplet that is not full and a broken rhythm that lacks its second note."""
        if self._tuplet_left:
            self._say("A tuplet has too few notes before the bar line: it ends there.")
            self._tuplet_left = 0
        if self._broken is not None and self._last is not None:
            self._say("A broken rhythm has no second note before the bar line: it is ignored.")
            self._last.length /= 2 - self._broken
            self._broken = None

    # slurs and ties

    def _read_open(self, token: re.Match[str]) -> None:
        self._opens += 1

    def _read_close(self, token: re.Match[str]) -> None:
        if self._slurs and self._last is not None:
            self._end_slur(self._last)
        elif self._opens:
            self._opens -= 1
            self._say("A slur holds no notes: it is left out.")
        else:
            self._say("A slur ends here that never began: it is left out.")

    def _close_slurs_on(self, note: DraftNote) -> None:
        """End the slurs whose closing bracket stood among the grace notes of this note."""
        closes, self._closes = self._closes, 0
        for _ in range(closes):
            if self._slurs:
                self._end_slur(note)

    def _end_slur(self, note: DraftNote) -> None:
        """End the innermost slur on the last note.

        Where another slur begins on that very note, ``(c d (e) f g a)``, the one before it ends (ABC 2.1, 4.11): both
        are one stroke of the bow, since directions could not differ on the note that they share.
        """
        here = self._count - 1
        first, line = self._slurs.pop()
        if first == here and self._slurs and self._slurs[-1][0] != here and not note.graces:
            first, line = self._slurs[-1]
            self._slurs[-1] = (here, self._line)
            self._say("A slur ends on the note where the next begins: both are read as one stroke.")
        if first < here:
            self.tune.slurs.append((first, here, line))
        elif not note.graces:
            self._say("A slur holds one note only: it is left out.")

    def _read_tie(self, token: re.Match[str]) -> None:
        """Read a tie that does not touch its note: right after a slur's end it is usual, elsewhere told."""
        if self._last is None or not self._last.pitches:
            self._say("A tie has no note before it: it is left out.")
            return
        if token.string[: token.start()].rstrip(" ")[-1:] != ")":
            self._say("A tie must touch the note that it leads from: it is read as if it did.", "loose tie")
        self._tie = frozenset(self._last.pitches)

    # signs and texts

    def _read_sign(self, letter: str) -> None:
        name = self.symbols.get(letter)
        if name is None:
            self._say(f"The letter {letter} stands for nothing here: it is ignored.", f"letter {letter}")
        elif name.startswith('"'):
            self._read_quoted(name.strip('"'))
        elif name:
            self._decorate(name)

    def _read_plus(self, token: re.Match[str]) -> None:
        """Read ``+name+``, the decoration of ABC 2.0, or ``+CEG+``, the chord of 1.6 (ABC 2.1, 10.2)."""
        name = token["old"]
        if self._plus_decorates or (name in LONG and len(name) > 1):
            self._decorate(name)
        else:
            self._chord(name, "", False)

    def _decorate(self, name: str) -> None:
        meaning = LONG.get(name)
        if meaning is None:
            self._say(f"The decoration !{name}! is not known: it is ignored.", f"decoration {name}")
        elif isinstance(meaning, LeftOut):
            self._say(f"{meaning.kind.capitalize()} such as !{name}! are left out.", f"left out {meaning.kind}")
        else:
            self._signs.append(meaning)

    def _read_quoted(self, text: str) -> None:
        """Read text in quotation marks: a fingering, a chord symbol, a sign in words, or words (4.18, 4.19)."""
        finger = _FINGER.match(text)
        if finger:
            self._signs.append(Finger(finger[1]))
            return
        if text == ">":
            self._signs.append(Articulation.ACCENT)
            self._say("“>” in quotation marks is read as an accent.", "quoted >")
            return
        placed = text[:1] in ("^", "_", "<", ">", "@")
        words = _OFFSET.sub("", text[1:], count=1) if text[:1] == "@" else text[1:] if placed else text
        words = plain_text(words)[:200]
        meaning = QUOTED.get("".join(words.lower().replace(".", "").split())) if len(words) < 20 else None
        if not words:
            return
        if meaning is not None:
            self._signs.append(meaning)
            self._say(f"“{words}” in quotation marks is read as the sign.", f"quoted {words}")
        elif placed:
            self._words.append((words, text[0] != "_"))
        elif parse_chord(words) is not None:
            self._chords.append(words)
        else:
            self._words.append((words, True))
            self._say(f"“{words[:40]}” is no chord symbol: it is read as words above the staff.", f"words {words}")

    def _apply_signs(self, note: DraftNote) -> None:
        signs, self._signs = self._signs, []
        index = len(self.tune.bars)
        for sign in signs:
            if isinstance(sign, BarSign | Jump):
                self._put_bar_sign(sign, self._bar, index, index)
            elif not note.pitches and isinstance(sign, Bow):
                self._signs = _with(self._signs, sign)
                self._say("A bow mark on a rest is read on the note after it.", "bow on rest")
            elif not note.pitches and sign not in (Articulation.FERMATA, Articulation.BREATH_MARK):
                self._say("A mark on a rest is left out.", "mark on rest")
            elif isinstance(sign, Bow):
                self._mark(note, sign)
            elif isinstance(sign, Ornament):
                note.ornaments = _with(note.ornaments, sign)
            elif isinstance(sign, Articulation):
                note.articulations = _with(note.articulations, sign)
            elif isinstance(sign, Finger):
                note.fingerings = _with(note.fingerings, sign.text)

    def _mark(self, note: DraftNote, bow: Bow) -> None:
        if note.held:
            self._say("A bow mark on the second note of a tie is left out: nothing is struck there.")
        elif note.bow is not None and note.bow is not bow:
            self._say("An up-bow and a down-bow stand on one note: the first is kept.")
        else:
            note.bow = bow

    def _put_bar_sign(self, sign: BarSign | Jump, bar: DraftBar, leaves: int, reaches: int) -> None:
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

    def _settle_codas(self) -> None:
        """Tell the coda sign that a jump leaves at from the one that it reaches: of two, the first is left at."""
        bars = self.tune.bars
        if len(self._codas) > 1 and not any(bar.to_coda for bar in bars):
            bars[min(max(self._codas[0][0], 0), len(bars) - 1)].to_coda = True
        if self._codas and self._codas[-1][1] < len(bars):
            bars[self._codas[-1][1]].coda = True

    def _place_bar_signs(self) -> None:
        """At a bar line: signs of playing order go to the bar before it or after it; other signs wait on.

        A segno marks the bar that follows; Fine, D.C. and the like end the bar before.
        """
        bars = self.tune.bars
        closes = self._bar if self._bar.notes else bars[-1] if bars else None
        reaches = len(bars) + bool(self._bar.notes)
        waiting: list[Meaning] = []
        for sign in self._signs:
            if sign is BarSign.SEGNO or not isinstance(sign, BarSign | Jump):
                waiting.append(sign)
            elif closes is not None:
                self._put_bar_sign(sign, closes, reaches - 1, reaches)
        if Articulation.FERMATA in waiting:
            waiting.remove(Articulation.FERMATA)
            self._say("A fermata on a bar line is left out.", "fermata on bar line")
        if any(isinstance(sign, Bow) for sign in waiting):
            self._say("A bow mark before a bar line is read on the note after it.", "mark on bar line")
        self._signs = list(dict.fromkeys(waiting))
        if self._words and self._bar.notes:
            self._bar.words += [(len(self._bar.notes) - 1, text, above) for text, above in self._words]
            self._words = []

    # bars

    def _read_bar_line(self, token: re.Match[str]) -> None:
        self._overlay = False
        if self._other_voice:
            return
        self._bar_token_end = token.end()
        text = token["line"]
        if text == ".|" and self._is_unfinished():
            return  # an editorial bar line inside a long bar
        ends, opens, look = _bar_line(text)
        self._give_up_rhythm()
        if self._signs or self._words:
            self._place_bar_signs()
        self._accidentals = {}
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
        bar.repeats = max(ends + 1, self._section_times) if ends else 0
        self.tune.bars.append(bar)
        self._bar = DraftBar(self._line, self._meter, self._key)
        if len(self.tune.bars) >= MAX_BARS and not self._full:
            self._full = True
            self._say(f"The tune has more than {MAX_BARS} bars: what follows is left out.")

    def _strengthen_last_bar_line(self, look: BarLine, ends: int) -> None:
        """A bar line with nothing since the last one says more about that one."""
        if not self.tune.bars:
            if ends:
                self._say("A repeat ends before the first note: it is ignored.")
            return
        last = self.tune.bars[-1]
        if ends and not last.repeats:
            last.repeats = max(ends + 1, self._section_times)
        if last.line is BarLine.PLAIN or look is BarLine.FINAL:
            last.line = look

    def _read_ending(self, token: re.Match[str]) -> None:
        if self._bar.notes:  # an ending that begins inside a bar parts it; accidentals hold on
            self._close_bar(BarLine.PLAIN, 0)
        self._begin_ending(token["ending"])

    def _read_digits(self, token: re.Match[str]) -> None:
        between = token.string[self._bar_token_end : token.start()] if self._bar_token_end >= 0 else "?"
        if not between.strip():
            self._say(f"The ending {token[0][:10]} should touch its bar line: it is read as if it did.", "loose ending")
            self._begin_ending(token[0])
        else:
            self._say(f"The number {token[0][:10]} belongs to no note: it is ignored.")

    def _begin_ending(self, text: str) -> None:
        passes = _passes(text)
        if passes:
            self._ending = passes
        else:
            self._say(f"“{text.lstrip('[')[:12]}” is no list of passes for an ending: it is ignored.")

    # what has no meaning

    def _read_overlay(self, token: re.Match[str]) -> None:
        self._overlay = "&)" not in token[0]

    def _skip(self, token: re.Match[str]) -> None:
        char = token[0]
        if char in "$\\!":
            return  # line breaks and continuation say how to print, not what
        if char in "*;?@#":
            self._say(f"The sign {char} is kept for later versions of ABC: it is ignored.", f"sign {char}")
        elif char == '"':
            self._say("A quotation mark has no partner on its line: it is ignored.")
        elif char in "[]{}":
            self._say(f"“{char}” has no partner here: it is ignored.", f"bracket {char}")
        else:
            self._say(f"The sign “{char}” has no meaning in music: it is ignored.", f"sign {char}")


def _with(items: list[_Item] | None, item: _Item) -> list[_Item]:
    """A list with the item in it once."""
    if items is None:
        return [item]
    return items if item in items else [*items, item]
