"""``bowbench sound``: a tune in its bowing as a sound file; DEVELOPERS.md holds the contract."""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Callable, Sequence
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from app.files import written_beside
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

if TYPE_CHECKING:
    from core.sound.mix import Levels

DONE, WRONG_CALL = 0, 2  # as ``app.cli`` has them
V = TypeVar("V")


class _CallError(Exception):
    """The call asks for what there is not; ``str()`` is one sentence."""


def add_sound_parser(
    commands: argparse._SubParsersAction[argparse.ArgumentParser], beats: Callable[[str], Fraction]
) -> None:
    """Add the command to those of the program; ``beats`` reads a tempo."""
    sound = commands.add_parser("sound", help=tr("write a tune as it is bowed to a sound file"))
    sound.add_argument("file", metavar="FILE")
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


def run_sound(options: argparse.Namespace, reading: Reading) -> int:
    """Write one tune of a file as sound.

    Returns:
        Exit status.
    """
    from core.sound.backing import back  # numpy and the encoders are loaded for this command alone
    from core.sound.files import SUFFIXES, SoundFileError, write_sound
    from core.sound.tags import tags_of

    suffix = options.out.suffix.lower()
    try:
        if suffix not in SUFFIXES:
            raise _CallError(
                tr("{file}: expected a name that ends in {suffixes}", file=options.out, suffixes=", ".join(SUFFIXES))
            )
        if options.apart and options.ladder is None:
            raise _CallError(tr("--apart needs --ladder"))
        lesson = _lesson(options, reading)
        bowing = _bowing(options, lesson)
        strokes = _strokes(options, lesson.tune, bowing)
        files = _playings(options, lesson, bowing, strokes)
        if options.backing and suffix not in (".mid", ".midi"):
            for sentence in back(files[0][1][0]).unread:
                _say(f"{options.file}: {sentence}")
        for path, playings in files:
            tags = tags_of(lesson, bowing.name, playings)
            with written_beside(path) as out:
                write_sound(out, suffix, playings, tags, _levels(options), _shown(path))
    except (_CallError, SoundFileError) as fault:
        return _refuse(str(fault))
    except OSError as fault:
        return _refuse(tr("{path} cannot be written: {reason}.", path=options.out, reason=why(fault, writing=True)))
    return DONE


def _lesson(options: argparse.Namespace, reading: Reading) -> Lesson:
    chosen = [lesson for lesson in reading.lessons if options.tune in (None, lesson.tune.number)]
    if not chosen:
        raise _CallError(tr("{file}: there is no tune number {number}", file=options.file, number=options.tune))
    if options.tune is None and len(chosen) > 1:
        _say(first_taken(options.file, len(chosen), chosen[0]))
    return chosen[0]


def _bowing(options: argparse.Namespace, lesson: Lesson) -> Bowing:
    if options.bowing is None:
        return lesson.bowings[0]
    try:
        return lesson.named(options.bowing)
    except KeyError:
        names = ", ".join(f"“{bowing.name}”" for bowing in lesson.bowings)
        raise _CallError(
            tr(
                "{file}: no bowing named “{missing}”; there is {names}",
                file=options.file,
                missing=options.bowing,
                names=names,
            )
        ) from None


def _strokes(options: argparse.Namespace, tune: Tune, bowing: Bowing) -> Strokes:
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
                    file=options.file,
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
    tempo = lesson.reach.tempo
    if options.tempo is not None:
        tempo = Tempo(beat_of(lesson.tune.bars[0].meter), options.tempo)

    def play(percent: int) -> Performance:
        manner = Manner(tempo, Fraction(percent, 100), count_in=options.count_in)
        return perform(lesson.tune, bowing, strokes, manner)

    ladder: Ladder | None = options.ladder
    if ladder is None:
        return [(options.out, [play(100)])]
    rungs = [(percent, [play(percent)] * ladder.times) for percent in ladder.rungs]
    if options.apart:
        return [(options.out.with_stem(f"{options.out.stem}-{percent:03}"), playings) for percent, playings in rungs]
    return [(options.out, [playing for _, playings in rungs for playing in playings])]


def _levels(options: argparse.Namespace) -> Levels:
    from core.sound.mix import USUAL, Part

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
