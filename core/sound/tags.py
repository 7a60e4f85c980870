"""What a sound file says of itself."""

from __future__ import annotations

from collections.abc import Iterable

from core.lesson import Lesson
from core.sound.performance import Performance
from core.translation import tr
from core.tune import Tune
from core.tune_set import TuneSet
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Tags:
    """Words in a file that players show.

    Attributes:
        title: Of the tune; may be empty.
        bowing: Name of the bowing, or "".
        composer: Who made the tune, or "".
        lines: Tempos and whatever else there is to say, a line each.
    """

    title: str = ""
    bowing: str = ""
    composer: str = ""
    lines: tuple[str, ...] = ()

    @property
    def comment(self) -> str:
        """All but title and composer on one line."""
        return "; ".join((*([f"Bowing: {self.bowing}"] if self.bowing else []), *self.lines))


def tags_of(lesson: Lesson, bowing: str, playings: Iterable[Performance]) -> Tags:
    """Title, bowing, composer and tempos of what is played of a lesson.

    Args:
        lesson: The lesson.
        bowing: Name of the bowing that is played.
        playings: In the order played.
    """
    return Tags(
        _one_line(lesson.tune.title), _one_line(bowing), _one_line(_composer(lesson.tune)), _tempo_lines(playings)
    )


def set_tags(tune_set: TuneSet, playings: Iterable[Performance]) -> Tags:
    """The same of a set: titles in the order played, each composer once."""
    tunes = [entry.tune for entry in tune_set.entries]
    titles = " / ".join(tune.title or tr("Untitled") for tune in tunes)
    composers = "; ".join(dict.fromkeys(filter(None, map(_composer, tunes))))
    return Tags(_one_line(titles), composer=_one_line(composers), lines=_tempo_lines(playings))


def _composer(tune: Tune) -> str:
    return next((credit.text for credit in tune.credits if credit.kind == "composer"), "")


def _tempo_lines(playings: Iterable[Performance]) -> tuple[str, ...]:
    tempos = dict.fromkeys(float(60 / playing.quarter_s) for playing in playings)
    return (f"Quarter notes a minute: {', '.join(f'{tempo:.4g}' for tempo in tempos)}",) if tempos else ()


def _one_line(text: str) -> str:
    """Without line breaks and control characters, which no tag can hold."""
    return " ".join("".join(letter if letter.isprintable() else " " for letter in text).split())
