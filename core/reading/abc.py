"""Reading ABC 2.1 (December 2011): tune books, single tunes and pasted fragments, loosely and with every repair told.

``abc_text`` turns bytes into text, this module cuts the text into tunes and reads their headers, ``abc_fields`` knows
what each field may say, ``abc_music`` and its helpers read the music into the draft of ``abc_draft``, ``abc_bars``
makes values of it.

A note that ``core.writing.abc`` puts there, ``N:Bowing: NAME``, is the name of the bowing.

Not read, and said so: voices other than the first, voices laid over a bar with ``&``, lyrics under the notes (``w:``),
symbol lines (``s:``) and macros (``m:``). Layout (``%%`` lines, line breaks, beams) is ours and not the file's.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import field, replace
from fractions import Fraction

from core.accent_plan import plan_of_dance
from core.errors import Problem, UnreadableFileError
from core.lesson import Lesson
from core.reading import Reading, abc_bars, abc_fields
from core.reading.abc_draft import Complaints
from core.reading.abc_music import MusicReader
from core.reading.abc_signs import SHORT
from core.reading.abc_text import decode, plain_text, without_comment
from core.reading.limits import MAX_FILE_PROBLEMS, MAX_LINES, MAX_NOTES_IN_BOOK, MAX_TEXT, MAX_TUNES
from core.translation import tr, translatable
from core.tune import Credit, Key, Meter, Tune
from core.values import dataclass

__all__ = ["decode", "read_abc"]

_FIELD = re.compile(r"[A-Ga-gxz]:(?![|:\]])|[H-WXYZh-wy+]:")  # “e:|” at the start of a line is music
_NOTE = re.compile(r"[A-Ga-gzxZX]")
_MUSIC = re.compile(r"[A-Ga-gz|]")
_NOT_MUSIC = re.compile(r"[^A-Ga-gzxZXyH-Wh-w0-9 \t|:\[\](){}<>/,'^_=.~!+\"\-\\$*&`#%]")
_UNDEFINED = re.compile(r"[h-tw]")  # letters that stand for nothing unless a U: field says so
_QUOTED_OR_LONG = re.compile(r'"[^"]*"|![^! ]*!|\+[^+ ]*\+|\[[A-Za-z]:[^\[\]]*\]')
_INDENTED_TUNE = re.compile(r"(?m)^[ \t>]+X:")
_MAIL_CODE = re.compile(r"=(?:3D|20|0D|09|2E)")
_CREDITS = {letter: kind for kind, letter in abc_fields.CREDIT_LETTERS.items()}
_LEFT_OUT = translatable({
    "w": "Lyrics under the notes (w:) are left out.",
    "s": "Symbol lines (s:) are left out.",
    "m": "Macros (m:) are left out.",
})  # fmt: skip
_TO_MUSIC = frozenset("IKLMPQUV")


@dataclass(slots=True)
class _Line:
    number: int  # in the file, from 1
    text: str


@dataclass(slots=True)
class _Header:
    """What the fields before the music say; a file header is the beginning of every tune's (ABC 2.1, 2.2.2)."""

    number: int | None = None
    titles: list[str] = field(default_factory=list)
    credits: list[Credit] = field(default_factory=list)
    dance: str = ""
    meter: Meter | None = None
    unit: Fraction | None = None
    tempo: tuple[str, int] | None = None
    parts: tuple[str, int] | None = None
    voice: str = ""
    key: Key | None = None
    symbols: dict[str, str] = field(default_factory=lambda: dict(SHORT))
    instructions: list[tuple[str, int]] = field(default_factory=list)

    def copy(self) -> _Header:
        """A header that can be changed without changing this one."""
        return replace(
            self,
            titles=list(self.titles),
            credits=list(self.credits),
            symbols=dict(self.symbols),
            instructions=list(self.instructions),
        )


def read_abc(text: str) -> Reading:
    """Read a tune book, a tune, or a fragment without a header.

    Args:
        text: As ``decode`` gives it.
    Returns:
        One lesson for each tune that has notes, its bowing as written, and all problems in file order.
    Raises:
        UnreadableFileError: there is no tune in the text.
    """
    if len(text) > MAX_TEXT:
        raise UnreadableFileError(tr("The text is longer than {most} million characters.", most=MAX_TEXT // 1000000))
    if text.count("\n") > MAX_LINES:
        raise UnreadableFileError(tr("The text has more than {most} lines.", most=MAX_LINES))
    lessons: list[Lesson] = []
    problems: list[Problem] = []
    if not text.startswith("X:") and "\nX:" not in text and (indented := _INDENTED_TUNE.search(text)):
        problems.append(Problem(text.count("\n", 0, indented.start()) + 1, tr("The text is indented: read as if not.")))
        text = "\n".join(line.lstrip(" \t>") for line in text.split("\n"))
    preamble, tunes = _cut(text)
    file_header = _Header()
    fragment = _fragment(preamble)
    if fragment is not None:
        tunes = [fragment, *tunes]
    else:
        complaints = Complaints()
        _read_header([line for line in preamble if _FIELD.match(line.text)], file_header, complaints)
        file_header.key = None
        problems += complaints.problems
    room = MAX_NOTES_IN_BOOK
    for place, lines in enumerate(tunes):
        if room <= 0:
            said = tr("The file has more than {most} notes and bars: the rest is left out.", most=MAX_NOTES_IN_BOOK)
            problems.append(Problem(lines[0].number, said))
            break
        if place >= MAX_TUNES:
            said = tr("The file has more than {most} tunes: the rest is left out.", most=MAX_TUNES)
            problems.append(Problem(lines[0].number, said))
            break
        complaints = Complaints()
        lesson = _read_tune(lines, file_header.copy(), place + 1, complaints)
        if lesson is not None:
            lessons.append(lesson)
            room -= sum(3 + len(bar.notes) for bar in lesson.tune.bars)
        if len(problems) < MAX_FILE_PROBLEMS:
            problems += complaints.problems
    if not lessons:
        raise _unreadable(text, problems)
    return Reading(tuple(lessons), tuple(problems))


def _unreadable(text: str, problems: list[Problem]) -> UnreadableFileError:
    first = next((number for number, line in enumerate(text.split("\n"), 1) if line.strip()), None)
    if first is None:
        return UnreadableFileError(tr("The text is empty: expected a tune in ABC, beginning with X:1."), 1)
    if problems:
        return UnreadableFileError(tr("No tune can be read. {problem}", problem=problems[0].text), problems[0].line)
    return UnreadableFileError(
        tr("No tune found: expected MusicXML, or ABC with X:1, T: a title, K: a key, and notes below."), first
    )


# tunes in a text


def _cut(text: str) -> tuple[list[_Line], list[list[_Line]]]:
    """Cut a text into what stands before the first ``X:`` and the lines of each tune.

    Blocks of free text, ``%%begintext`` to ``%%endtext`` and the like (ABC 2.1, 11.4), are left out.
    """
    preamble: list[_Line] = []
    tunes: list[list[_Line]] = []
    current = preamble
    in_block = False
    for number, line in enumerate(text.split("\n"), 1):
        if line.startswith("X:"):
            current = []
            tunes.append(current)
            in_block = False
        elif line.startswith("%%"):
            in_block = line.startswith("%%begin") or (in_block and not line.startswith("%%end"))
        elif in_block:
            continue
        current.append(_Line(number, line))
    return preamble, tunes


def _fragment(lines: list[_Line]) -> list[_Line] | None:
    """Lines before any ``X:`` if they are a tune whose first line is missing, else None."""
    start = 0
    has_key = False
    for index, line in enumerate(lines):
        if _FIELD.match(line.text):
            has_key = has_key or line.text.startswith("K:")
        elif has_key or _looks_like_music(line.text, strictly=True):
            if _looks_like_music(line.text, strictly=not has_key):
                return lines[start:]
        elif not line.text.strip() and not has_key:
            start = index + 1
    return None


def _looks_like_music(line: str, strictly: bool) -> bool:
    """Whether a line is music code rather than prose.

    Args:
        line: The line.
        strictly: Ask that nearly all of it is music, where nothing else says so.
    """
    text = without_comment(line)
    bare = _QUOTED_OR_LONG.sub(" ", text)
    if not _NOTE.search(bare):
        return False
    strange = len(_NOT_MUSIC.findall(bare))
    notes = len(_MUSIC.findall(bare))
    if not strictly:
        return notes > strange
    return notes > 0 and strange == 0 and 6 * len(_UNDEFINED.findall(bare)) <= notes


def _is_prose(line: str, symbols: dict[str, str]) -> bool:
    """Whether a line among the music is text that somebody forgot to mark as a comment."""
    bare = _QUOTED_OR_LONG.sub(" ", without_comment(line))
    undefined = sum(letter not in symbols for letter in _UNDEFINED.findall(bare))
    return 2 * (undefined + len(_NOT_MUSIC.findall(bare))) > len(_MUSIC.findall(bare))


def _blocks(lines: list[_Line]) -> Iterator[list[_Line]]:
    """Runs of lines between empty lines."""
    block: list[_Line] = []
    for line in lines:
        if line.text.strip():
            block.append(line)
        elif block:
            yield block
            block = []
    if block:
        yield block


def _lines_of_tune(lines: list[_Line], complaints: Complaints) -> list[_Line]:
    """Lines of a tune up to the empty line that ends it (ABC 2.1, 2.2.1).

    An empty line inside a header, or before what is plainly more of the tune's music, is read over and told.
    """
    kept: list[_Line] = []
    has_key = has_music = False
    for block in _blocks(lines):
        if kept:
            goes_on = _goes_on(block, has_key, has_music)
            if not goes_on:
                break
            text = tr("An empty line stands inside the tune: the tune is read on after it.")
            complaints.say(text, line=block[0].number)
        kept += block
        has_key = has_key or any(line.text.startswith("K:") for line in block)
        has_music = has_music or any(
            not _FIELD.match(line.text) and _looks_like_music(line.text, strictly=False) for line in block
        )
    return kept


def _goes_on(block: list[_Line], has_key: bool, has_music: bool) -> bool:
    """Whether a block of lines after an empty line still belongs to the tune."""
    if not has_music:
        return any(_FIELD.match(line.text) or _looks_like_music(line.text, strictly=True) for line in block)
    music = [line.text for line in block if not _FIELD.match(line.text) and not line.text.startswith("%")]
    return bool(music) and "|" in "".join(music) and all(_looks_like_music(line, strictly=True) for line in music)


# one tune


def _read_tune(lines: list[_Line], header: _Header, place: int, complaints: Complaints) -> Lesson | None:
    first = lines[0].number
    kept = _joined_fields(_without_mail_codes(_lines_of_tune(lines, complaints), complaints))
    if not kept:
        return None
    if not kept[0].text.startswith("X:"):
        complaints.say(tr("The tune has no X: line: it is read as tune 1."), line=kept[0].number)
    body = _read_header(kept, header, complaints)
    if header.key is None:
        complaints.say(tr("The tune has no K: line: it is read without sharps and flats."), line=first)
    music = MusicReader(complaints, header.symbols)
    music.start(header.meter, header.unit, header.key or Key(0, "none"), header.voice)
    for value, line in header.instructions:
        music.read_field("I", value, line)
    if header.tempo:
        music.read_field("Q", *header.tempo)
    _read_body(kept[body:], header, music, complaints)
    draft = music.finish()
    titles = header.titles or [""]
    if not draft.bars:
        if titles[0]:
            text = tr("The tune “{title}” has no notes: it is left out.", title=titles[0][:40])
        else:
            text = tr("The tune has no notes: it is left out.")
        complaints.say(text, line=first)
        return None
    bars, bowing = abc_bars.build(draft, complaints)
    name = _take_bowing_name(header.credits)
    tune = Tune(
        title=titles[0],
        bars=bars,
        other_titles=tuple(titles[1:]),
        dance=header.dance,
        tempo=draft.tempo,
        credits=tuple(header.credits),
        part_order=_part_order(header, {bar.part for bar in bars}, complaints),
        number=header.number if header.number is not None else place,
    )
    accents = plan_of_dance(tune.dance, tune.bars[0].meter)
    return Lesson(tune, (replace(bowing, name=name or bowing.name, accents=accents),))


def _take_bowing_name(credits: list[Credit]) -> str:
    """Name of the bowing that the last note of ours tells, which is taken out; empty where there is none."""
    for place in range(len(credits) - 1, -1, -1):
        if credits[place].kind == "notes" and (name := abc_fields.bowing_of_note(credits[place].text)):
            del credits[place]
            return name
    return ""


def _part_order(header: _Header, parts: set[str], complaints: Complaints) -> tuple[str, ...]:
    """The header's order of parts, if the parts that it names are marked in the tune."""
    if header.parts is None:
        return ()
    value, line = header.parts
    order = abc_fields.parse_part_order(value, lambda text: complaints.say(text, line=line))
    missing = sorted(set(order) - parts)
    if missing:
        text = tr(
            "The part order names {names}, which no P: in the tune begins: the order is left out.",
            names=", ".join(missing),
        )
        complaints.say(text, line=line)
        return ()
    return order


def _without_mail_codes(lines: list[_Line], complaints: Complaints) -> list[_Line]:
    """Lines with the codes undone that old mail programs put into text: ``=3D`` for =, ``=20`` for a space at the end.

    No music has a natural sign before a digit, so the codes cannot be anything else.
    """
    coded = next((line for line in lines if "=" in line.text and _MAIL_CODE.search(line.text)), None)
    if coded is None:
        return lines
    text = tr("The text went through a mail program that wrote =3D for = and the like: undone.")
    complaints.say(text, line=coded.number)
    return [
        _Line(line.number, _MAIL_CODE.sub(lambda code: chr(int(code[0][1:], 16)), line.text.removesuffix("=")).rstrip())
        for line in lines
    ]


def _joined_fields(lines: list[_Line]) -> list[_Line]:
    """Lines with ``+:`` taken into the field before (ABC 2.1, 3.3); comments and ``%%`` lines between may stand."""
    if not any(line.text.startswith("+:") for line in lines):
        return lines
    joined: list[_Line] = []
    parts: dict[int, list[str]] = {}  # by place in joined, of the fields that are continued
    last: int | None = None
    for line in lines:
        if line.text.startswith("+:") and last is not None:
            parts.setdefault(last, [without_comment(joined[last].text)]).append(without_comment(line.text[2:]))
            continue
        if not line.text.startswith("%"):
            last = len(joined) if _FIELD.match(line.text) else None
        joined.append(line)
    for place, texts in parts.items():
        joined[place] = _Line(joined[place].number, " ".join(text.strip() for text in texts))
    return joined


def _read_header(lines: list[_Line], header: _Header, complaints: Complaints) -> int:
    """Read fields up to the first ``K:`` or the first line of music.

    Returns:
        Index of the first line of the body.
    """
    history: list[str] | None = None  # of an H: field, which in old files runs on without a letter (10.1)
    histories: list[tuple[int, list[str]]] = []
    end = len(lines)
    for index, line in enumerate(lines):
        text = line.text
        if text.startswith("%") or not text.strip():
            continue
        if not _FIELD.match(text):
            if history is not None and not _looks_like_music(text, strictly=True):
                history.append(plain_text(text))
            elif _looks_like_music(text, strictly=False) and not _is_prose(text, header.symbols):
                end = index
                break
            else:
                complaints.say(
                    tr("“{line}” is not a field such as T:, M: or K:: the line is ignored.", line=text.strip()[:40]),
                    line=line.number,
                )
            continue
        letter, value = text[0], without_comment(text[2:])
        if letter == "H":
            history = [plain_text(value)]
            histories.append((len(header.credits), history))
        else:
            history = None
        _read_header_field(letter, value, line.number, header, complaints)
        if letter == "K":
            end = index + 1
            break
    for place, texts in histories:
        header.credits[place] = Credit("history", " ".join(filter(None, texts)))
    return end


def _read_header_field(letter: str, value: str, number: int, header: _Header, complaints: Complaints) -> None:
    complaints.line = number
    say = complaints.say
    match letter:
        case "X":
            digits = value.strip()
            if digits.isascii() and digits.isdecimal() and len(digits) < 10:
                header.number = int(digits)
            elif digits:
                say(tr("“X:{number}” is no tune number: the tune's place in the file is taken.", number=digits[:20]))
        case "T":
            header.titles.append(plain_text(value))
        case "R":
            header.dance = header.dance or plain_text(value).lower()
        case "M":
            header.meter = abc_fields.parse_meter(value, say)
        case "L":
            header.unit = abc_fields.parse_unit(value, say)
        case "Q":
            header.tempo = (value, number)
        case "P":
            header.parts = (value, number)
        case "V":
            header.voice = header.voice or next(iter(value.split()), "")
        case "K":
            header.key = abc_fields.parse_key(value, say)
        case "I":
            header.instructions.append((value, number))
        case "U":
            abc_fields.define_symbol(value, header.symbols, say)
        case _ if letter in _CREDITS:
            header.credits.append(Credit(_CREDITS[letter], plain_text(value)))
        case _ if letter in _LEFT_OUT:
            say(tr(_LEFT_OUT[letter]), once=letter)


def _read_body(lines: list[_Line], header: _Header, music: MusicReader, complaints: Complaints) -> None:
    for line in lines:
        text = line.text
        if text.startswith("%"):
            if text.startswith("%%propagate-accidentals"):
                music.read_field("I", text[2:], line.number)
            continue
        if not _FIELD.match(text):
            if _UNDEFINED.search(text) and _is_prose(text, header.symbols):
                complaints.say(
                    tr("“{line}” is not music: the line is ignored.", line=text.strip()[:40]), line=line.number
                )
            else:
                music.read_line(without_comment(text), line.number)
            continue
        letter, value = text[0], without_comment(text[2:])
        if letter in _TO_MUSIC:
            music.read_field(letter, value, line.number)
        elif letter in _LEFT_OUT:
            complaints.say(tr(_LEFT_OUT[letter]), once=letter, line=line.number)
        elif letter == "T":
            header.titles.append(plain_text(value))
        elif letter in _CREDITS:
            header.credits.append(Credit(_CREDITS[letter], plain_text(value)))
