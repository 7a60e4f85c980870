"""Drills: one task of the bow for any tune, as a table; the planner bows the tune for each.

A drill says where slurs are due among the running notes (those of the tune's commonest length) and which accents the
rest is to drive. Where its slurs do not fit, at rests, long notes and between sections, the planner goes on from there.
The drills are ours; what they train is common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from fractions import Fraction

from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing, Join, Mark, separate_bows, set_plan
from core.errors import RefusedEditError
from core.planner import Flow, PlannerSettings, work_out_plan
from core.strokes import work_out
from core.translation import tr
from core.tune import Bar, Note, Tune
from core.values import dataclass

TIME_LIMIT_S = 3.0

Pattern = Mapping[bool, tuple[int, ...]]
"""Under False for simple and under True for compound time: for each running note of a group in turn, whether it is
slurred to the note before it. A group begins where the bar does; its first note may be slurred over the bar line."""


@dataclass(frozen=True, slots=True)
class Drill:
    """One drill.

    Attributes:
        title: Heading of its sheet, in English.
        task: What the player is to do, in one sentence, in English.
        accents: The accents that it drives.
        flow: How much the planner slurs besides; None where it is not asked.
        slurs: Where slurs are due; None where the planner alone decides.
        turned: The bowing that is given, begun on the other bow; nothing is planned.
    """

    title: str
    task: str
    accents: PlanKind = PlanKind.NONE
    flow: Flow | None = Flow.FEWEST_SLURS
    slurs: Pattern | None = None
    turned: bool = False


DRILLS: Mapping[str, Drill] = immutabledict({
    "separate": Drill(
        "Separate bows", "Give every note a bow of its own, all of them equally long.", flow=None,
    ),
    "on-beat": Drill(
        "Down on the beat", "Begin a down-bow on every beat that is accented, with as few slurs as it takes.",
        PlanKind.ON_BEAT,
    ),
    "backbeat": Drill(
        "Down on the backbeat", "Begin a down-bow on every backbeat, with as few slurs as it takes.", PlanKind.BACKBEAT,
    ),
    "smooth": Drill(
        "Long bows", "Play two and three notes to a bow, and still begin a down-bow on every accented beat.",
        PlanKind.ON_BEAT, Flow.SMOOTH,
    ),
    "pairs": Drill(
        "In pairs", "Slur the running notes two by two, each pair beginning with the beat.",
        slurs={False: (0, 1), True: (0, 1, 0)},
    ),
    "pairs-across": Drill(
        "Pairs across the beat", "Slur the last note before each beat to the first note on it, and over the bar line.",
        slurs={False: (1, 0), True: (1, 0, 0)},
    ),
    "three-and-one": Drill(
        "Three and one", "Slur three running notes from the beat on and give what is left a bow of its own.",
        PlanKind.ON_BEAT, slurs={False: (0, 1, 1, 0), True: (0, 1, 1)},
    ),
    "one-and-three": Drill(
        "One and three", "Give the note on the beat a bow of its own and slur those behind it.",
        PlanKind.ON_BEAT, slurs={False: (0, 0, 1, 1), True: (0, 0, 1)},
    ),
    "threes-across": Drill(
        "Threes over the bar line", "Slur three notes over the bar line, so that the backbeat has the down-bow.",
        PlanKind.BACKBEAT, slurs={False: (1, 1, 0, 0), True: (1, 1, *(0,) * 10)},
    ),
    "other-bow": Drill(
        "On the other bow", "Play the bowing that you know, but begin on the other bow: all down-bows are up-bows now.",
        turned=True,
    ),
})  # fmt: skip
"""All drills by the name that the command line has for them."""


def drill_bowing(tune: Tune, bowing: Bowing, name: str, go_on: Callable[[], None] = lambda: None) -> Bowing:
    """Bow a tune for a drill.

    Args:
        tune: The tune.
        bowing: Its signs (ornaments, fingering ...) are taken over.
        name: Key of ``DRILLS``.
        go_on: Called now and then; an error that it raises ends the planning and is passed on.
    Returns:
        An ordinary bowing named after the drill.
    Raises:
        KeyError: there is no such drill.
        RefusedEditError: the tune has no notes, or none that the drill is about.
    """
    drill = DRILLS[name]
    if drill.turned:
        return replace(_turned(tune, bowing), name=tr(drill.title))
    bare = set_plan(tune, separate_bows(bowing, tr(drill.title)), AccentPlan(drill.accents))
    if drill.flow is None:
        return bare
    if drill.slurs is not None:
        joins = dict.fromkeys(_due(tune, drill.slurs), Join.SLUR)
        if not joins:
            raise RefusedEditError(
                tr("“{title}” needs running notes of one length, and this tune has too few.", title=tr(drill.title))
            )
        bare = replace(bare, joins=immutabledict(joins))
    settings = PlannerSettings(flow=drill.flow, time_limit_s=TIME_LIMIT_S)
    return replace(work_out_plan(tune, bare, settings, go_on=go_on).bowing, name=tr(drill.title))


def _turned(tune: Tune, bowing: Bowing) -> Bowing:
    """The bowing with every stroke turned round; retakes stay what they are."""
    played = work_out(tune, bowing).played
    if not played:
        raise RefusedEditError(tr("There is nothing to bow: the tune has no notes."))
    marks = {note_id: replace(mark, bow=mark.bow.turned) for note_id, mark in bowing.marks.items()}
    first = played[0]
    if first.note_id not in marks:
        later = any(other.note_id == first.note_id and other.pass_number > 1 for other in played)
        marks[first.note_id] = Mark(first.bow.turned, 1 if later else None)
    return replace(bowing, marks=immutabledict(marks))


def _due(tune: Tune, slurs: Pattern) -> Iterator[str]:
    """Ids of the running notes that a pattern slurs to the one before."""
    running = running_length(tune)
    before: tuple[Bar, Note] | None = None
    for bar in tune.bars:
        pattern = slurs[bar.meter.is_compound]
        for note in bar.notes:
            place = (bar.start + note.at) / running
            if (
                before is not None
                and note.length == before[1].length == running <= bar.meter.beat_length
                and place.denominator == 1
                and pattern[place.numerator % len(pattern)]
                and not (note.is_rest or note.held or before[1].is_rest)
                and note.pitches != before[1].pitches  # one bow would make them one note
                and (bar is before[0] or not _parts(before[0], bar))
            ):
                yield note.id
            before = bar, note


def running_length(tune: Tune) -> Fraction:
    """The commonest length of a struck note, the shorter of two that are as common; 0 where nothing sounds."""
    lengths = Counter(note.length for note in tune.sequence if not (note.is_rest or note.held))
    return min(lengths, key=lambda length: (-lengths[length], length), default=Fraction(0))


def _parts(before: Bar, bar: Bar) -> bool:
    """Whether a section ends between two bars, so that no slur is due."""
    return before.ends_section or bar.opens_repeat or bool(bar.part) or before.ending != bar.ending
