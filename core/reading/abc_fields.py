"""The values of ABC information fields (ABC 2.1, section 3): key, metre, unit length, tempo, part order, user symbols.

Every function takes the text after the colon, comment already gone, and a ``say`` that is told one sentence for each
thing that had to be repaired or left out; none raises on any text.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from core.reading.abc_text import plain_text
from core.translation import tr
from core.tune import MODE_FIFTHS, SHARP_ORDER, Key, Meter, Tempo

Say = Callable[[str], None]

FREE_METER = Meter(groups=())
ACCIDENTAL_ALTERS = {"^^": 2, "^": 1, "=": 0, "_": -1, "__": -2}
MAX_COUNT = 64  # units in a bar
MAX_PARTS = 200  # parts in a playing order
MAX_BOWING_NAME = 200  # characters
CREDIT_LETTERS = {  # kind of credit -> letter of its field (3.1)
    "area": "A", "book": "B", "composer": "C", "discography": "D", "file": "F", "group": "G", "history": "H",
    "notes": "N", "origin": "O", "source": "S", "lyrics": "W", "transcriber": "Z",
}  # fmt: skip
BOWING_NOTE = "Bowing: "  # before a bowing's name in an N: field
UNIT_LENGTHS = tuple(Fraction(1, 2**power) for power in range(10))

_MODES = {mode[:3]: mode for mode in MODE_FIFTHS}
_TONIC = re.compile(r"([A-G])([#b♯♭]?)")
_SETTINGS = "clef|middle|m|transpose|t|octave|stafflines|staves|name|nm|sname|snm|score|sound|shift"
_KEY_PART = re.compile(rf"(\^\^|\^|__|_|=)([A-Ga-g])|((?<!\S)(?:{_SETTINGS})=\S*|[^\s^_=]+)|[\^_=]")
_CLEF = re.compile(r"(?:clef=)?(treble|alto|tenor|bass|baritone|soprano|mezzosoprano|perc|none)[1-5]?([+-]8)?$")
_STAFF_SETTING = re.compile(rf"(?:{_SETTINGS})=")
_RATIO = re.compile(r"([0-9]{1,3})\s*/\s*([0-9]{1,4})$")
_LENGTH_IS = re.compile(r"((?:[0-9]{1,3}/[0-9]{1,3}\s*){1,4})=\s*(?:ca?\.?\s*)?([0-9]{1,4}(?:\.[0-9]{1,3})?)")
_OLD_TEMPO = re.compile(r"(?:C([0-9]{0,2})\s*=\s*)?([0-9]{1,4}(?:\.[0-9]{1,3})?)$")


def parse_meter(text: str, say: Say) -> Meter:
    """Metre of an ``M:`` field (ABC 2.1, 3.1.6): ``6/8``, ``C``, ``C|``, ``none``, ``(2+3+2)/8``."""
    value = text.strip()
    if value == "C":
        return Meter((4,), 4, "common")
    if value == "C|":
        return Meter((2,), 2, "cut")
    if value.lower() in ("none", ""):
        return FREE_METER
    top, slash, bottom = value.partition("/")
    bottom = bottom.strip()
    counts = [part.strip(" ()") for part in top.split("+")]
    if slash and bottom in ("1", "2", "4", "8", "16", "32", "64") and all(map(_is_small_number, counts)):
        groups = tuple(map(int, counts))
        if 0 < sum(groups) <= MAX_COUNT and all(groups):
            return Meter(groups, int(bottom))
    say(tr("The metre “{text}” is not one of 6/8, C, C|, (2+3+2)/8 or none: read as free metre.", text=_short(value)))
    return FREE_METER


def default_unit(meter: Meter | None) -> Fraction:
    """Unit note length where no ``L:`` says it (ABC 2.1, 3.1.7), in quarter notes.

    A sixteenth where the metre as a number is below 0.75, else an eighth.
    """
    small = meter is not None and meter.bar_length is not None and meter.bar_length < 3
    return Fraction(1, 4) if small else Fraction(1, 2)


def parse_unit(text: str, say: Say) -> Fraction | None:
    """Unit note length of an ``L:`` field in quarter notes, or None where the text is none (ABC 2.1, 3.1.7)."""
    value = text.strip()
    found = _RATIO.match(value)
    if value == "1":
        return Fraction(4)
    if found and int(found[2]) and Fraction(int(found[1]), int(found[2])) in UNIT_LENGTHS:
        return Fraction(4 * int(found[1]), int(found[2]))
    say(
        tr(
            "The unit note length “{text}” is not one of 1, 1/2, 1/4 ... 1/512: the field is ignored.",
            text=_short(value),
        )
    )
    return None


def parse_tempo(text: str, unit: Fraction, say: Say) -> tuple[Tempo | None, str]:
    """Tempo of a ``Q:`` field (ABC 2.1, 3.1.8).

    Args:
        text: ``1/4=120``, ``"Slowly" 3/8=50``, ``1/4 3/8 1/4 3/8=40``, ``"Andante"``, and the old ``120`` or ``C3=40``.
        unit: Unit note length in quarter notes, which the old forms count.
        say: Told what could not be read.
    Returns:
        The tempo (None where no number is given) and the words beside it.
    """
    words = plain_text(" ".join(part for part in text.split('"')[1::2] if part))
    number = "".join(text.split('"')[0::2]).strip()
    if not number:
        return None, words
    beat, speed = Fraction(0), Fraction(0)
    if found := _LENGTH_IS.match(number):
        for part in found[1].split():
            top, _, bottom = part.partition("/")
            beat += Fraction(4 * int(top), int(bottom)) if int(bottom) else 0
        speed = Fraction(found[2])
    elif found := _OLD_TEMPO.match(number):
        beat, speed = unit * int(found[1] or 1), Fraction(found[2])
    if beat <= 0 or beat > 16 or not 1 <= speed <= 1000:
        say(tr("The tempo “{text}” has no beat and number such as 1/4=120: it is left out.", text=_short(text.strip())))
        return None, words
    return Tempo(beat, speed, words), words


def parse_part_order(text: str, say: Say) -> tuple[str, ...]:
    """Order of the parts in a header's ``P:`` field, written out (ABC 2.1, 3.1.9).

    >>> "".join(parse_part_order("((AB)3.(CD)3)2", print))
    'ABABABCDCDCDABABABCDCDCD'
    """
    stack: list[list[str]] = [[]]
    last: list[str] = []
    complaint = ""
    for token in re.findall(r"[A-Za-z]|[0-9]+|[^\s.]", text):
        if token.isalpha():
            last = [token]
            stack[-1] += last
        elif token == "(":
            stack.append([])
            last = []
        elif token == ")" and len(stack) > 1:
            last = stack.pop()
            stack[-1] += last
        elif token.isdecimal() and last:
            times = int(token) if len(token) < 4 else MAX_PARTS + 1
            stack[-1] += last * min(times - 1, MAX_PARTS + 1)
            last = []
        else:
            complaint = complaint or token
        if len(stack) > MAX_PARTS or sum(map(len, stack[-2:])) > 2 * MAX_PARTS:
            break
    order = [part for level in stack for part in level]
    if len(order) > MAX_PARTS or len(stack) > MAX_PARTS:
        say(tr("The part order plays more than {most} parts: it is ignored.", most=MAX_PARTS))
        return ()
    if complaint or len(stack) > 1:
        say(
            tr("The part order “{text}” is read as {order}.", text=_short(text.strip()), order="".join(order) or "none")
        )
    return tuple(order)


def parse_key(text: str, say: Say) -> Key:
    """Key of a ``K:`` field (ABC 2.1, 3.1.14 and 4.6).

    Tonic, mode, changed accidentals and ``exp`` are read; a clef or another staff setting changes nothing on a treble
    staff for the fiddle and is said to be left out where it would.
    """
    value = text.strip()
    if value[:2] in ("HP", "Hp") and not value[2:3].isalpha():
        if value[:2] == "HP":
            say(tr("K:HP hides the sharps of the pipes' scale: F and C sharp are shown as the key signature."))
        return Key(2, "none")
    tonic = None if value.lower().startswith(("bass", "alto", "clef", "none")) else _TONIC.match(value)
    mode = "major" if tonic else "none"
    changes: list[tuple[str, int]] = []
    explicit = False
    first = True
    for sign, step, word in _KEY_PART.findall(value, tonic.end() if tonic else 0):
        lower = word.lower()
        if sign:
            changes.append((step.upper(), ACCIDENTAL_ALTERS[sign]))
        elif not word or lower == "none":
            pass
        elif lower == "exp":
            explicit = True
        elif tonic and first and lower == "m":
            mode = "minor"
        elif clef := _CLEF.match(lower):
            if clef[1] not in ("treble", "none") or clef[2]:
                say(tr("The clef “{text}” is left out: the tune is shown in the treble clef.", text=_short(word)))
        elif _STAFF_SETTING.match(lower):
            if lower.startswith(("transpose", "t=", "octave", "shift")):
                say(
                    tr(
                        "“{text}” in the key field is left out: the tune is shown at the pitch written.",
                        text=_short(word),
                    )
                )
        elif tonic and first and lower[:3] in _MODES:
            mode = _MODES[lower[:3]]
        elif tonic:
            say(tr("“{text}” in the key “{key}” is no mode: it is ignored.", text=_short(word), key=_short(value)))
        first = first and not word
    if tonic is None and value and not changes and not explicit and _is_no_key(value):
        say(tr("“{text}” is no key: read as no sharps and no flats.", text=_short(value)))
    return _signature(tonic, mode, changes, explicit, say)


def _signature(tonic: re.Match[str] | None, mode: str, changes: list[tuple[str, int]], explicit: bool, say: Say) -> Key:
    if tonic is None or explicit:
        return _explicit_key(changes)
    alter = {"": 0, "#": 1, "♯": 1, "b": -1, "♭": -1}[tonic[2]]
    fifths = SHARP_ORDER.index(tonic[1]) - 1 + 7 * alter + MODE_FIFTHS[mode]
    altered = dict(changes)
    if not -7 <= fifths <= 7:
        say(
            tr(
                "A key of {count} sharps or flats cannot be shown: the doubled ones stand beside the signature.",
                count=abs(fifths),
            )
        )
        for place in range(7, abs(fifths)):
            step = SHARP_ORDER[place - 7] if fifths > 0 else SHARP_ORDER[13 - place]
            altered.setdefault(step, 2 if fifths > 0 else -2)
        return Key(7 if fifths > 0 else -7, "none", tuple(altered.items()))
    plain = Key(fifths).alters()
    kept = tuple((step, value) for step, value in altered.items() if plain[step] != value)
    return Key(fifths, mode, kept)


def _explicit_key(changes: list[tuple[str, int]]) -> Key:
    """A signature given note by note: as a count of sharps or flats where it is one, else as single accidentals."""
    wanted = dict.fromkeys(SHARP_ORDER, 0) | dict(changes)
    for fifths in range(-7, 8):
        if Key(fifths).alters() == wanted:
            return Key(fifths, "none")
    return Key(0, "none", tuple((step, alter) for step, alter in dict(changes).items() if alter))


def is_staff_setting(value: str) -> bool:
    """Whether a key field names a clef or the like and no key, so that the key in force stays (ABC 2.1, 4.6)."""
    words = value.lower().split()
    return bool(words) and words[0] != "none" and all(_CLEF.match(word) or _STAFF_SETTING.match(word) for word in words)


def _is_no_key(value: str) -> bool:
    words = value.lower().split()
    return not all(word == "none" or _CLEF.match(word) or _STAFF_SETTING.match(word) for word in words)


def bowing_of_note(text: str) -> str:
    """Name of the bowing that a note of ours tells; empty where it tells none.

    >>> bowing_of_note("Bowing: Long slurs")
    'Long slurs'
    """
    name = text.removeprefix(BOWING_NOTE)
    return name if name != text and 0 < len(name) <= MAX_BOWING_NAME else ""


def define_symbol(text: str, symbols: dict[str, str], say: Say) -> None:
    """Give a letter the meaning that a ``U:`` field says (ABC 2.1, 4.16).

    Args:
        text: Such as ``T = !trill!`` or ``p = "^+"``.
        symbols: Changed: for the letter the decoration's name, the quoted text with its quotation marks, or "" where
            the letter is freed by ``!nil!`` or ``!none!``.
        say: Told where the field says none of these.
    """
    letter, equals, value = text.partition("=")
    letter, value = letter.strip(), value.strip()
    name: str | None = None
    if len(value) > 2 and value[0] == value[-1]:
        name = value if value[0] == '"' else value[1:-1].strip() if value[0] in "!+" else None
    if equals and name and re.fullmatch(r"[H-Wh-w~]", letter):
        symbols[letter] = "" if name in ("nil", "none") else name
    else:
        say(tr("“U:{text}” is no user symbol such as T = !trill!: it is ignored.", text=_short(text.strip())))


def _is_small_number(text: str) -> bool:
    return text.isascii() and text.isdecimal() and len(text) <= 2


def _short(text: str) -> str:
    """At most forty characters of a text, for quoting in a sentence."""
    return text if len(text) <= 40 else text[:39] + "…"
