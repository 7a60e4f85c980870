"""Three open tune collections that come with music21, read by our ABC reader and by music21 and compared tune by tune.

``python -m tests.outside.abc_collections [folder ...]`` compares all 4,248 tunes (some minutes), prints every
difference with the class that explains it, and ends with the figures.

music21 is a second opinion with gaps of its own. So a tune whose two readings differ is first written otherwise, with
the same meaning for what is compared, in the ways of ``REWRITINGS``: each names what music21 loses. Where they still
differ, the difference must fall in one of ``CLASSES``; what does not is unexplained, and the test fails.
"""

from __future__ import annotations

import re
import sys
import warnings
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, fields
from fractions import Fraction
from pathlib import Path
from unittest.mock import patch

import music21
from music21.abcFormat import ABCFile
from music21.abcFormat.translate import abcToStreamScore

from core.reading.abc import decode, read_abc
from core.tune import BarLine

FOLDERS = ("ryansMammoth", "oneills1850", "airdsAirs")
CORPUS = Path(music21.__file__).parent / "corpus"


@dataclass(frozen=True)
class Source:
    """One tune of a collection.

    Attributes:
        place: Folder, file and ``X:`` line.
        text: From its ``X:`` to the next.
    """

    place: str
    text: str


@dataclass(frozen=True)
class Facts:
    """What both readers must agree on; places count struck notes and rests from 0 (a tied group is one note).

    Attributes:
        notes: MIDI keys, low to high, and length in quarter notes.
        joins: Places of notes under a slur with the note before.
        marks: Place and direction of each bow mark.
        repeats: Place, and ``"start"`` or ``"end"``.
        endings: Passes, place of the first note, and for a first ending that a repeat closes the place after its last
        note (music21 gives later endings one bar only), else None.
    """

    notes: list[tuple[tuple[int, ...], Fraction]]
    joins: set[int]
    marks: list[tuple[int, str]]
    repeats: list[tuple[int, str]]
    endings: list[tuple[tuple[int, ...], int, int | None]]

    def differences(self, other: Facts) -> set[str]:
        """Names of the facts that differ."""
        return {field.name for field in fields(self) if getattr(self, field.name) != getattr(other, field.name)}


def _facts(
    notes: list[tuple[tuple[int, ...], Fraction]],
    joins: set[int],
    marks: list[tuple[int, str]],
    repeats: list[tuple[int, str]],
    endings: list[tuple[tuple[int, ...], int, int]],
) -> Facts:
    ends = {place for place, kind in repeats if kind == "end"}
    return Facts(
        notes,
        {place for place in joins if notes[place][0] and notes[place - 1][0]},  # music21 slurs over rests
        [(_next_sound(notes, place), bow) for place, bow in marks],
        repeats,
        [
            (passes, first, stop if 1 in passes and stop in ends else None)
            for passes, first, stop in sorted(endings, key=lambda ending: ending[1])
        ],
    )


def _next_sound(notes: list[tuple[tuple[int, ...], Fraction]], place: int) -> int:
    """Place of the first note that is no rest; a bow mark on a rest is meant for it."""
    while place + 1 < len(notes) and not notes[place][0]:
        place += 1
    return place


def sources(*folders: str) -> list[Source]:
    """All tunes of the folders, in the order of their files."""
    found = []
    for folder in folders:
        for path in sorted((CORPUS / folder).glob("*.abc")):
            for text in re.split(r"(?m)^(?=X:)", decode(path.read_bytes())):
                if text.startswith("X:"):
                    found.append(Source(f"{folder}/{path.name} {text.splitlines()[0].strip()}", text))
    return found


def our_facts(text: str) -> Facts:
    """Facts as our reader gives them."""
    lesson = read_abc(text).lessons[0]
    bowing = lesson.bowings[0]
    notes: list[tuple[tuple[int, ...], Fraction]] = []
    joins, marks, repeats = set(), [], []
    endings: list[tuple[tuple[int, ...], int, int]] = []
    goes_on: tuple[int, ...] = ()
    for bar in lesson.tune.bars:
        if bar.opens_repeat:
            repeats.append((len(notes), "start"))
        first = len(notes)
        for note in bar.notes:
            if note.held:
                notes[-1] = (notes[-1][0], notes[-1][1] + note.length)
                continue
            if note.id in bowing.joins:
                joins.add(len(notes))
            if note.id in bowing.marks:
                marks.append((len(notes), bowing.marks[note.id].bow.value))
            notes.append((tuple(pitch.midi for pitch in note.pitches), note.length))
        if bar.ending and bar.ending == goes_on:
            endings[-1] = (bar.ending, endings[-1][1], len(notes))
        elif bar.ending:
            endings.append((bar.ending, first, len(notes)))
        goes_on = () if bar.repeats or bar.line is not BarLine.PLAIN else bar.ending
        if bar.repeats:
            repeats.append((len(notes), "end"))
    return _facts(notes, joins, marks, repeats, endings)


def their_facts(text: str) -> Facts:
    """Facts as music21 gives them, told to read by ABC 2.1 (else accidentals do not carry through the bar).

    Beams, which take it half the time, are left out; nothing is compared there.
    """
    with warnings.catch_warnings(), patch.object(music21.stream.Part, "makeBeams"):
        warnings.simplefilter("ignore")
        score = abcToStreamScore(ABCFile().readstr("%abc-2.1\n" + text))
    part = score.parts[0]
    notes: list[tuple[tuple[int, ...], Fraction]] = []
    joins, marks, repeats = set(), [], []
    places: dict[int, int] = {}
    spans: dict[int, tuple[int, int]] = {}
    for measure in list(part.getElementsByClass(music21.stream.Measure)) or [part]:
        first = len(notes)
        repeats += _repeat(getattr(measure, "leftBarline", None), first)
        for note in measure.notesAndRests:
            places[id(note)] = len(notes)
            if note.duration.isGrace or isinstance(note, music21.harmony.ChordSymbol):
                continue
            pitches = () if note.isRest else tuple(sorted(pitch.midi for pitch in note.pitches))
            length = Fraction(note.duration.quarterLength).limit_denominator(5000)
            if note.tie is not None and note.tie.type in ("stop", "continue") and notes:
                if pitches == notes[-1][0]:
                    notes[-1] = (pitches, notes[-1][1] + length)
                    places[id(note)] = len(notes) - 1
                    continue
                joins.add(len(notes))  # a tie between different notes, which we read as a slur
            for mark in note.articulations:
                if isinstance(mark, music21.articulations.UpBow | music21.articulations.DownBow):
                    marks.append((len(notes), "up" if isinstance(mark, music21.articulations.UpBow) else "down"))
            notes.append((pitches, length))
        repeats += _repeat(getattr(measure, "rightBarline", None), len(notes))
        spans[id(measure)] = (first, len(notes))
    for slur in part.recurse().getElementsByClass(music21.spanner.Slur):
        first, last = (places.get(id(note)) for note in (slur.getFirst(), slur.getLast()))
        if first is not None and last is not None:
            joins.update(range(first + 1, min(last + 1, len(notes))))
    endings = []
    for bracket in part.recurse().getElementsByClass(music21.spanner.RepeatBracket):
        measures = bracket.getSpannedElements()
        if measures:
            endings.append((tuple(bracket.numberRange), spans[id(measures[0])][0], spans[id(measures[-1])][1]))
    return _facts(notes, joins, marks, repeats, endings)


def _repeat(bar_line: object, place: int) -> list[tuple[int, str]]:
    return [(place, bar_line.direction)] if isinstance(bar_line, music21.bar.Repeat) else []


# Ways of writing the same in words that music21 reads

_NOTE = r"(?:\^\^?|__?|=)?[A-Ga-g][,']*"
_LENGTH = r"[0-9]*/*[0-9]*"
_SOUND = rf"(?:{_NOTE}|z|\[(?:{_NOTE}{_LENGTH})+\])"
_BROKEN = re.compile(
    rf"(?P<first>{_SOUND})(?P<first_length>{_LENGTH})(?P<close>[-()]*)\s*(?P<signs>[<>]+)"
    rf"(?P<between>[-(uv)\s]*)(?P<second>{_SOUND})(?P<second_length>{_LENGTH})"
)
_TRIPLET = re.compile(rf"\(3(?P<open>\(?)((?:{_NOTE}{_LENGTH}[ )uv]*){{3}})")
_FIELD = re.compile(r"[H-WXYZh-wy+]:|[A-Ga-gxz]:(?![|:])|%")


def _times(text: str) -> Fraction:
    top, slash, bottom = text.partition("/")
    if slash and not bottom.strip("/"):
        return Fraction(int(top or 1), 2 ** (1 + len(bottom)))
    return Fraction(int(top or 1), int(bottom or 1))


def _spell_broken_rhythm(text: str) -> str:
    def spell(found: re.Match[str]) -> str:
        short = Fraction(1, 2 ** len(found["signs"]))
        first, second = (2 - short, short) if found["signs"][0] == ">" else (short, 2 - short)
        return (
            f"{found['first']}{_times(found['first_length']) * first}{found['close']}{found['between']}"
            f"{found['second']}{_times(found['second_length']) * second}"
        )

    return _BROKEN.sub(spell, _BROKEN.sub(spell, text))


def _spell_triplets(text: str) -> str:
    def spell(found: re.Match[str]) -> str:
        notes = re.sub(rf"({_NOTE})({_LENGTH})", lambda note: f"{note[1]}{_times(note[2]) * Fraction(2, 3)}", found[2])
        return found["open"] + notes

    return _TRIPLET.sub(spell, text)


def _drop_lone_slurs(text: str) -> str:
    """Take out slur brackets that have no partner, innermost pairs first; music code only."""
    kept, stack = list(text), []
    for place, char in enumerate(text):
        if char == "(" and not text[place + 1 : place + 2].isdigit():
            stack.append(place)
        elif char == ")":
            if stack:
                stack.pop()
            else:
                kept[place] = ""
    for place in stack:
        kept[place] = ""
    return "".join(kept)


def _first_voice(text: str) -> str:
    lines, keep = [], True
    for line in text.split("\n"):
        if voice := re.match(r"\[V:\s*(\S+?)\s*\]", line):
            keep = voice[1] == "1"
            line = line[voice.end() :]
        if (keep or _FIELD.match(line)) and not line.startswith("V:"):
            lines.append(line)
    return "\n".join(lines)


def _in_music(rewrite: Callable[[str], str]) -> Callable[[str], str]:
    """Apply a rewriting to the music of a tune and leave its fields alone."""

    def apply(text: str) -> str:
        runs: list[list[str]] = []
        kinds: list[bool] = []
        for line in text.split("\n"):
            is_field = bool(_FIELD.match(line))
            if not kinds or kinds[-1] != is_field:
                kinds.append(is_field)
                runs.append([])
            runs[-1].append(line)
        return "\n".join(
            "\n".join(run) if kind else rewrite("\n".join(run)) for kind, run in zip(kinds, runs, strict=True)
        )

    return apply


def _replace(pattern: str, by: str) -> Callable[[str], str]:
    return _in_music(lambda text: re.sub(pattern, by, text))


# What music21 loses, and the same said so that it does not. Tried one after the other until both readings agree.
REWRITINGS: tuple[tuple[str, Callable[[str], str]], ...] = (
    ("codes of old mail programs", lambda text: re.sub("=20|=0D", "", text).replace("=3D", "=").replace("=\n", "\n")),
    ("texts and !marks! break what stands beside them", _replace(r'![^! \n]*!|"[^"\n]*"', "")),
    ("dots, letters and ` before a note break it", _replace(r"\.(?!\|)|[~H-TWk`]", "")),
    ("grace notes break rhythm and slurs", _replace(r"\{[^}\n]*\}", "")),
    ("a slur before a triplet, ((3abc), runs on", _replace(r"(\(+)([uv]?\([2-9](?::[0-9]*)*)", r"\2\1")),
    ("broken rhythm with a mark or bracket between", _in_music(_spell_broken_rhythm)),
    ("a length such as 3// is read as 3/", _replace(r"([0-9])//", r"\1/4")),
    ("bare :: loses the repeat", _replace("::", ":||:")),
    ("invisible bar lines hide their neighbours", _replace(r"(?:\[\|\]\s*\\?\s*)+(?=[:|])", "")),
    ("two bar lines with nothing between", _replace(r"\|\s*\\?\n?\s*(:\|)", r"\1")),
    ("||: and |:| and :] and ||1 are not read", _replace(r"(?<!:)\|(\|:|:\||\|[1-9])|(?<=:)\](?=\s)", r"\1")),
    ("a repeat start before a P: line is lost", lambda text: re.sub(r"(?m)^P:.*\n", "", text)),
    ("unseen rests x are not read", _replace(r"x[0-9/]*", "")),
    ("rests of whole bars Z are not read", _replace("Z", "z")),
    ("chords +CEG+ of ABC 1.6", _replace(r"\+([A-Ga-g0-9^_=,'/]+)\+", r"[\1]")),
    ("slur brackets without a partner", _in_music(_drop_lone_slurs)),
    ("a slur around a triplet runs on", _in_music(_spell_triplets)),
    ("voices after the first", _first_voice),
)


def _is_over_full(text: str) -> bool:
    return any(
        bar.meter.bar_length is not None and bar.start + bar.length > bar.meter.bar_length
        for bar in read_abc(text).lessons[0].tune.bars
    )


def _has(pattern: str) -> Callable[[str], bool]:
    return lambda text: re.search(pattern, text) is not None


def _has_lone_bracket(text: str) -> bool:
    music = "".join(line for line in text.split("\n") if not _FIELD.match(line))
    return re.search(r"\[[^\]|:]*(?:[\[|]|$)", re.sub(r"\[\||\|\]|\[[1-9]|:\]", "|", music)) is not None


def _has_prose(text: str) -> bool:
    return any(
        "is not music" in problem.text or "is not a field" in problem.text for problem in read_abc(text).problems
    )


EVERYTHING = {field.name for field in fields(Facts)}

# What no rewriting mends: name, the facts that it can touch, and what the tune must hold. First match names it.
CLASSES: tuple[tuple[str, set[str], Callable[[str], bool]], ...] = (
    ("bars fuller than the metre are split", {"repeats", "endings"}, _is_over_full),
    ("a metre inside the tune is not used", {"repeats", "endings"}, _has(r"(?s)\nM:.*\nM:")),
    ("bow marks and slurs on chords are lost", {"marks", "joins"}, _has(r"[uv(]\[|\][0-9/]*\)")),
    ("ties of chords are lost", EVERYTHING, _has(r"\][0-9/]*-|-\]")),
    ("an accidental in a chord does not carry", {"notes"}, _has(r"\[[^\]\n]*[_^=][A-Ga-g]")),
    ("an ending that no repeat closes is dropped", {"endings"}, _has(r"\|1[^:]*\|\]")),
    ("a stray accidental takes a note with it", {"notes"}, _has(r"[_^][0-9]")),
    ("a slur around two tuplets at once runs on", {"joins"}, _has(r"\(+[2-9]\(+[2-9]")),
    ("a bracket without a partner makes one chord of the rest", {"notes", "joins"}, _has_lone_bracket),
    ("prose among the lines is read as notes", EVERYTHING, _has_prose),
)


@dataclass(frozen=True)
class Verdict:
    """How the two readings of a tune compare.

    Attributes:
        source: The tune.
        name: ``""`` where they agree as it stands; the rewriting or class that explains a difference; or
            ``"unexplained"``.
        mended: They agree once music21 has been given the tune in words that it reads.
        differences: Facts that differ to the last.
    """

    source: Source
    name: str
    mended: bool
    differences: tuple[str, ...] = ()


def _differences(text: str) -> set[str]:
    """Facts that differ; all where music21 gives up, as on some texts below the staff, which it takes for chords."""
    try:
        theirs = their_facts(text)
    except music21.exceptions21.Music21Exception:
        return EVERYTHING
    return our_facts(text).differences(theirs)


def compare(source: Source) -> Verdict:
    """Compare both readings of a tune."""
    text = source.text
    differences = _differences(text)
    if not differences:
        return Verdict(source, "", True)
    for name, rewrite in REWRITINGS:
        rewritten = rewrite(text)
        if rewritten == text:
            continue
        text = rewritten
        differences = _differences(text)
        if not differences:
            return Verdict(source, name, True)
    for name, touched, holds in CLASSES:
        if differences <= touched and holds(text):
            return Verdict(source, name, False, tuple(sorted(differences)))
    return Verdict(source, "unexplained", False, tuple(sorted(differences)))


def _report(verdicts: Iterator[Verdict]) -> None:
    counts: dict[str, Counter[str]] = {}
    examples: dict[str, str] = {}
    for verdict in verdicts:
        folder = verdict.source.place.partition("/")[0]
        counts.setdefault(folder, Counter())["tunes"] += 1
        counts[folder][verdict.name or "equal as it stands"] += 1
        counts[folder]["equal in all that music21 reads"] += verdict.mended
        if verdict.name and verdict.name not in examples:
            examples[verdict.name] = verdict.source.place
        if not verdict.mended:
            print(f"{verdict.source.place}: {verdict.name} ({', '.join(verdict.differences)})", flush=True)
    for folder, counted in counts.items():
        print(f"\n{folder}: {counted['equal in all that music21 reads']} of {counted['tunes']} equal")
        for name, count in counted.most_common():
            print(f"  {count:5} {name}" + (f", e.g. {examples[name]}" if name in examples else ""))


if __name__ == "__main__":
    _report(map(compare, sources(*(sys.argv[1:] or FOLDERS))))
