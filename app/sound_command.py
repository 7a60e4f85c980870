"""``bowbench sound``: a tune in its bowing, or a set, as a sound file; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Callable, Sequence
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from app.files import written_beside
from app.set_entries import FORM, EntryError, find_entry, parse_entry, refuse_too_many
from app.tune_choice import first_taken
from core.bowing import Bowing
from core.file_faults import why
from core.lesson import Lesson
from core.reading import Reading
from core.sound.ladder import Ladder, parse_ladder
from core.sound.loops import MOST_TIMES, excerpt
from core.sound.performance import MOST_COUNT_IN, Manner, Performance, perform
from core.strokes import Strokes, work_out
from core.tempos import beat_of
from core.translation import tr
from core.tune import Tempo, Tune
from core.tune_set import Entry, TuneSet
from core.values import dataclass

if TYPE_CHECKING:
    from core.sound.part import Levels
    from core.sound.tags import Tags

DONE, WRONG_CALL, UNREADABLE = 0, 2, 3  # as ``app.cli`` has them
FOR_ONE_TUNE = {"tune": None, "bars": None, "times": 1, "ladder": None, "apart": False}
"""Options that a set does not take, and what they are where they are not given."""

V = TypeVar("V")


class _CallError(Exception):
    """The call asks for what there is not; ``str()`` is one sentence."""


def add_sound_parser(
    commands: argparse._SubParsersAction[argparse.ArgumentParser], beats: Callable[[str], Fraction]
) -> None:
    """Add the command to those of the program; ``beats`` reads a tempo."""
    sound = commands.add_parser("sound", help=tr("write a tune as it is bowed to a sound file"))
    sound.add_argument("files", nargs="+", metavar="FILE")
    sound.add_argument(
        "--set", action="store_true", help=tr("play the tunes one after the other; each FILE is then {form}", form=FORM)
    )
    sound.add_argument("--out", required=True, metavar="OUT", type=Path, help=tr(".wav, .flac, .ogg, .mp3 or .mid"))
    sound.add_argument(
        "--tune", type=int, metavar="N", help=tr("the tune of this number in a book; the first if left out")
    )
    sound.add_argument("--bowing", metavar="NAME", help=tr("this bowing; the first if left out"))
    sound.add_argument("--tempo", metavar="BPM", type=beats, help=tr("in beats of the dance (a reel's: half notes)"))
    sound.add_argument("--backing", action=argparse.BooleanOptionalAction, default=True, help=tr("chords, or a drone"))
    sound.add_argument("--click", action="store_true", help=tr("a click on each beat"))
    sound.add_argument(
        "--count-in", metavar="N", type=_up_to(0, MOST_COUNT_IN), default=1, help=tr("bars; 1 if left out")
    )
    sound.add_argument("--bars", metavar="FROM-TO", type=_bars, help=tr("these bars only, by their printed numbers"))
    sound.add_argument("--times", metavar="N", type=_up_to(1, MOST_TIMES), default=1, help=tr("so often in a row"))
    sound.add_argument("--ladder", metavar="FROM-TO[/STEP][xTIMES]", type=_saying(parse_ladder),
                       help=tr("faster and faster, in percent of the tempo: 60-100/5x2 plays "
                                 "60, 60, 65 ..."))  # fmt: skip
    sound.add_argument("--apart", action="store_true", help=tr("a file for each rung of the ladder: OUT-060.ogg ..."))


def run_sound(options: argparse.Namespace, read: Callable[[str], Reading | None]) -> int:
    """Write a tune or a set as sound.

    Args:
        options: What was asked for.
        read: Reads a file and tells its problems; None where nothing can be read.
    Returns:
        Exit status.
    """
    from core.sound.files import SUFFIXES, SoundFileError, write_sound  # the encoders are loaded for this command alone

    suffix = options.out.suffix.lower()
    try:
        if suffix not in SUFFIXES:
            raise _CallError(
                tr("{file}: expected a name that ends in {suffixes}", file=options.out, suffixes=", ".join(SUFFIXES))
            )
        files = _set_files(options, read) if options.set else _files(options, read)
        if files is None:
            return UNREADABLE
        if options.backing and suffix not in (".mid", ".midi"):
            _tell_unread(files[0])
        for file in files:
            with written_beside(file.path) as out:
                write_sound(out, suffix, file.playings, file.tags, _levels(options), _shown(file.path))
    except (_CallError, EntryError, SoundFileError) as fault:
        return _refuse(str(fault))
    except OSError as fault:
        return _refuse(tr("{path} cannot be written: {reason}.", path=options.out, reason=why(fault, writing=True)))
    return DONE


@dataclass(frozen=True)
class _SoundFile:
    """What goes into one file.

    Attributes:
        path: The file.
        playings: In their order.
        sources: The file that each was read from.
        tags: What it says of itself.
    """

    path: Path
    playings: Sequence[Performance]
    sources: Sequence[str]
    tags: Tags


def _tell_unread(file: _SoundFile) -> None:
    """Say which chords cannot be read, once for each tune."""
    from core.sound.backing import back

    of_each_tune = {(source, one.tune.number): one for source, one in zip(file.sources, file.playings, strict=True)}
    for (source, _), one in of_each_tune.items():
        for sentence in back(one).unread:
            _say(f"{source}: {sentence}")


# ---- a tune


def _files(options: argparse.Namespace, read: Callable[[str], Reading | None]) -> list[_SoundFile] | None:
    """The files of one tune; None where it cannot be read."""
    from core.sound.tags import tags_of

    if len(options.files) > 1:
        raise _CallError(tr("One FILE is expected; with --set several are played one after the other"))
    if options.apart and options.ladder is None:
        raise _CallError(tr("--apart needs --ladder"))
    file = options.files[0]
    reading = read(file)
    if reading is None:
        return None
    lesson = _lesson(options, file, reading)
    bowing = _bowing(options, file, lesson)
    strokes = _strokes(options, file, lesson.tune, bowing)
    return [
        _SoundFile(path, playings, [file] * len(playings), tags_of(lesson, bowing.name, playings))
        for path, playings in _playings(options, lesson, bowing, strokes)
    ]


def _lesson(options: argparse.Namespace, file: str, reading: Reading) -> Lesson:
    chosen = [lesson for lesson in reading.lessons if options.tune in (None, lesson.tune.number)]
    if not chosen:
        raise _CallError(tr("{file}: there is no tune number {number}", file=file, number=options.tune))
    if options.tune is None and len(chosen) > 1:
        _say(first_taken(file, len(chosen), chosen[0]))
    return chosen[0]


def _bowing(options: argparse.Namespace, file: str, lesson: Lesson) -> Bowing:
    if options.bowing is None:
        return lesson.bowings[0]
    try:
        return lesson.named(options.bowing)
    except KeyError:
        names = ", ".join(f"“{bowing.name}”" for bowing in lesson.bowings)
        raise _CallError(
            tr(
                "{file}: no bowing named “{missing}”; there is {names}",
                file=file,
                missing=options.bowing,
                names=names,
            )
        ) from None


def _strokes(options: argparse.Namespace, file: str, tune: Tune, bowing: Bowing) -> Strokes:
    """The strokes of the bars that are asked for: each the first time that it is played, or the tune with repeats."""
    strokes = work_out(tune, bowing)
    visits: Sequence[int] = range(len(strokes.order))
    if options.bars is not None:
        first, last = options.bars
        visits = [
            visit for visit, (bar, number) in enumerate(strokes.order)
            if number == 1 and first <= tune.bars[bar].number <= last
        ]  # fmt: skip
        if not visits:
            numbers = [bar.number for bar in tune.bars]
            raise _CallError(
                tr(
                    "{file}: bars {first}-{last} are not among {least}-{most}",
                    file=file,
                    first=first,
                    last=last,
                    least=min(numbers),
                    most=max(numbers),
                )
            )
    return strokes if options.bars is None and options.times == 1 else excerpt(strokes, visits, options.times)


def _playings(
    options: argparse.Namespace, lesson: Lesson, bowing: Bowing, strokes: Strokes
) -> list[tuple[Path, list[Performance]]]:
    """What goes into each file."""

    def play(percent: int) -> Performance:
        return perform(lesson.tune, bowing, strokes, _manner(options, lesson, percent))

    ladder: Ladder | None = options.ladder
    if ladder is None:
        return [(options.out, [play(100)])]
    rungs = [(percent, [play(percent)] * ladder.times) for percent in ladder.rungs]
    if options.apart:
        return [(options.out.with_stem(f"{options.out.stem}-{percent:03}"), playings) for percent, playings in rungs]
    return [(options.out, [playing for _, playings in rungs for playing in playings])]


def _manner(options: argparse.Namespace, lesson: Lesson, percent: int = 100) -> Manner:
    tempo = lesson.reach.tempo
    if options.tempo is not None:
        tempo = Tempo(beat_of(lesson.tune.bars[0].meter), options.tempo)
    return Manner(tempo, Fraction(percent, 100), count_in=options.count_in)


# ---- a set


def _set_files(options: argparse.Namespace, read: Callable[[str], Reading | None]) -> list[_SoundFile] | None:
    """The one file of a set; None where a tune of it cannot be read."""
    from core.sound.set_playing import perform_set
    from core.sound.tags import set_tags

    for option, not_given in FOR_ONE_TUNE.items():
        if getattr(options, option) != not_given:
            raise _CallError(tr("--{option} is for one tune, not for a set", option=option))
    names = [parse_entry(word) for word in options.files]
    readings = {file: read(file) for file in dict.fromkeys(name.file for name in names)}
    entries, manners, sources = [], [], []
    for name in names:
        reading = readings[name.file]
        if reading is None:
            return None
        lesson, bowing = find_entry(name, reading, options.bowing)
        entries.append(Entry(lesson.tune, bowing, name.times))
        manners.append(_manner(options, lesson))
        sources += [name.file] * name.times
    refuse_too_many(len(entries))
    tune_set = TuneSet(tuple(entries))
    playings = perform_set(tune_set, manners)
    return [_SoundFile(options.out, playings, sources, set_tags(tune_set, playings))]


def _levels(options: argparse.Namespace) -> Levels:
    from core.sound.part import USUAL, Part

    levels = USUAL if options.backing else USUAL.delete(Part.BACKING)
    return levels.set(Part.CLICK, 0.0) if options.click else levels


def _shown(path: Path) -> Callable[[float], None]:
    """What shows on a terminal how much of a file is written; elsewhere nothing is shown."""

    def show(share: float) -> None:
        if sys.stderr.isatty():
            print(f"\r{path.name}: {share:.0%}", end="" if share < 1 else "\n", file=sys.stderr, flush=True)

    return show


def _up_to(least: int, most: int) -> Callable[[str], int]:
    def read(text: str) -> int:
        if not text.isdecimal() or not least <= int(text) <= most:
            raise argparse.ArgumentTypeError(
                tr("“{text}” is not a number from {least} to {most}", text=text, least=least, most=most)
            )
        return int(text)

    return read


def _bars(text: str) -> tuple[int, int]:
    found = re.fullmatch(r"(\d{1,5})(?:-(\d{1,5}))?", text)
    first, last = (int(found[1]), int(found[2] or found[1])) if found else (1, 0)
    if first > last:
        raise argparse.ArgumentTypeError(tr("“{text}” names no bars: expected FROM-TO, such as 5-8", text=text))
    return first, last


def _saying(parse: Callable[[str], V]) -> Callable[[str], V]:
    """A reader of an argument whose refusal is told as it is."""

    def read(text: str) -> V:
        try:
            return parse(text)
        except ValueError as fault:
            raise argparse.ArgumentTypeError(str(fault)) from None

    return read


def _refuse(text: str) -> int:
    _say(text)
    return WRONG_CALL


def _say(text: str) -> None:
    print(text, file=sys.stderr)
