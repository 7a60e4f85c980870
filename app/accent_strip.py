"""The strip under a line of music: which places of its bars are accented, how each is met, and where each stands.

Plain values and geometry, no widget; ``app.accent_painting`` draws the shapes.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from core.accents import Accent, Accents, Met, Silence
from core.checks import words
from core.engraving.lines import Line
from core.engraving.picture import STAFF_SPACE, Picture
from core.once import once
from core.translation import tr, translatable
from core.tune import Tune
from core.values import dataclass

REACH = 2.0 * STAFF_SPACE  # how far beside a note the strip still answers for it
BAR_END = 1.0 * STAFF_SPACE  # no place stands nearer to the end of its bar
MET_WORDS = translatable({
    Met.DRIVEN: "driven by a down-bow",
    Met.UP: "on an up-bow",
    Met.BURIED: "buried inside a slur",
    Met.UNSTRUCK: "not struck",
})  # fmt: skip
UNSTRUCK_WORDS = translatable({
    Silence.REST: "not struck (a rest)",
    Silence.HELD: "not struck (a held note)",
    Silence.SOUNDING: "not struck (a note that sounds on)",
})  # fmt: skip

Place = tuple[int, Fraction]  # index in ``Tune.bars``, quarter notes from the beginning of the full bar


@dataclass(frozen=True, slots=True)
class Accented:
    """An accented place of a written bar.

    Attributes:
        note_id: The note or rest that begins there or sounds there.
        met: How the place is met, pass by pass.
        silence: Why it is unstruck on the first pass; None where it is not.
        written: An accent sign on the note makes it, not the plan.
    """

    note_id: str
    met: tuple[Met, ...]
    silence: Silence | None = None
    written: bool = False

    @property
    def shown(self) -> tuple[Met, ...]:
        """What the strip shows: one shape, or two where the passes differ, in the order played."""
        return tuple(dict.fromkeys(self.met))[:2]

    @property
    def says(self) -> str:
        """How it is met, in words."""
        if len(set(self.met)) > 1:
            return tr(", ", "between parts of a sentence").join(
                tr("{how} on pass {number}", how=tr(MET_WORDS[met]), number=number)
                for number, met in enumerate(self.met, 1)
            )
        return tr(UNSTRUCK_WORDS[self.silence]) if self.silence else tr(MET_WORDS[self.met[0]])


@once
def accented(accents: Accents) -> Mapping[Place, Accented]:
    """All accented places of the written bars, in written order."""
    found: dict[Place, list[Met]] = {}
    first: dict[Place, Accent] = {}
    for accent in accents.met:
        place = accent.bar, accent.place
        found.setdefault(place, []).append(accent.met)
        first.setdefault(place, accent)
    return {
        place: Accented(first[place].note_id, tuple(met), first[place].silence, first[place].written)
        for place, met in sorted(found.items())
    }


def onset(tune: Tune, note_id: str) -> Place:
    """Where a note begins."""
    bar = tune.bar_of[note_id]
    return bar, tune.bars[bar].start + tune.note(note_id).at


def place_text(tune: Tune, place: Place) -> str:
    """A place in words, as "bar 3, beat 2"."""
    bar = tune.bars[place[0]]
    where = tr("bar {number}", number=bar.number) if bar.number else tr("pick-up")
    return tr("{bar}, {beat}", bar=where, beat=words.beat(place[1], bar.meter))


def place_x(tune: Tune, picture: Picture, place: Place) -> float | None:
    """x in the picture at which a place stands: over its note, or between two notes as the time lies between them.

    None where the picture does not hold the bar.
    """
    index, offset = place
    if index not in picture.measures:
        return None
    bar = tune.bars[index]
    at = offset - bar.start
    there = next((note.id for note in bar.notes if note.at == at), "")
    if there in picture.heads:
        return picture.heads[there].x
    known = [(note.at, picture.heads[note.id].x) for note in bar.notes if note.id in picture.heads]
    left, right = picture.measures[index].left + BAR_END, picture.measures[index].right - BAR_END
    before = max((item for item in known if item[0] <= at), default=(Fraction(0), left))
    after = min((item for item in known if item[0] > at), default=(bar.length, max(right, before[1])))
    if before[0] == at or after[0] <= before[0]:
        return before[1]
    return before[1] + float((at - before[0]) / (after[0] - before[0])) * (after[1] - before[1])


def place_at(
    tune: Tune, picture: Picture, line: Line, places: Mapping[Place, Accented], x: float
) -> tuple[Place, str] | None:
    """The place of a line that x belongs to, and its note: where a note begins or an accent lies; None beside all."""
    begins = {
        onset(tune, note.id): note.id
        for bar in tune.bars[line.first : line.stop]
        for note in bar.notes
        if note.id in picture.heads
    }
    there = {place: found.note_id for place, found in places.items() if line.first <= place[0] < line.stop} | begins
    near = [
        (abs(at - x), place, note_id)
        for place, note_id in there.items()
        if (at := place_x(tune, picture, place)) is not None
    ]
    distance, place, note_id = min(near, default=(REACH + 1, (0, Fraction(0)), ""))
    return (place, note_id) if distance <= REACH else None
