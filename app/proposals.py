"""What a gesture on a note would do, worked out before it is done.

One proposal serves the preview under the pointer, the sentence in the status line, the menu and the edit itself, so
that these four cannot disagree. No Qt: values in, values out; the edits are those of ``core.bowing``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from enum import Enum
from itertools import pairwise

from app.accent_strip import Accented, Place
from app.accent_strip import place_text as strip_text
from app.here import Here
from app.note_words import in_order, notes_between, place_text, span_text
from core.accent_plan import AccentPlan, PlanKind
from core.accents import phrases, toggle_place
from core.bowing import (
    Bow,
    Bowing,
    Join,
    Ornament,
    fix_bow,
    free_bow,
    next_struck,
    separate_span,
    set_plan,
    slur_span,
    stroke_start,
    toggle_join_to_next,
    toggle_retake,
)
from core.checks.words import bow_name
from core.errors import RefusedEditError
from core.order import sections
from core.ornamenting import has_ornament, ornament_name, toggle_ornament
from core.translation import inside, tr, translatable
from core.tune import Tune
from core.values import dataclass


class Extent(Enum):
    """How far an accent plan is to hold."""

    BAR = "bar"
    PHRASE = "phrase"
    PART = "part"
    TUNE = "tune"


PLAN_WORDS = translatable({
    PlanKind.ON_BEAT: "on the beat",
    PlanKind.BACKBEAT: "on the backbeat",
    PlanKind.BY_PHRASE: "as each phrase does better",
    PlanKind.NONE: "none",
    PlanKind.PLACES: "at places of your own",
}, "accents of some bars")  # fmt: skip
CLICK = translatable("Click to {edit}.")
LET_GO = translatable("Let go to {edit}.")


@dataclass(frozen=True)
class Preview:
    """What the page draws lightly while a gesture is only a possibility.

    Attributes:
        joined: Ids of the notes that would come under one slur, in written order.
        joined_too: The same for further slurs, where one edit makes several.
        parted: Pairs of notes, by id, that would be separated.
        turned: Id of a stroke's first note and the direction it would take.
        freed: Id of a stroke's first note whose fixed mark would go.
        place: Place of the accent strip that would be accented or no more: index of the bar, and quarter notes from
            the beginning of the full bar.
    """

    joined: tuple[str, ...] = ()
    joined_too: tuple[tuple[str, ...], ...] = ()
    parted: tuple[tuple[str, str], ...] = ()
    turned: tuple[str, Bow] | None = None
    freed: str = ""
    place: Place | None = None

    @property
    def slurs(self) -> tuple[tuple[str, ...], ...]:
        """The notes of each slur that would be made."""
        return (self.joined, *self.joined_too) if self.joined else ()


NOTHING_SHOWN = Preview()


@dataclass(frozen=True)
class Proposal:
    """What a gesture would do.

    Attributes:
        label: Name of the undo step, as "Slur bar 3, notes 1–2".
        edit: Makes the new bowing; raises ``RefusedEditError`` where ``refusal`` says so.
        refusal: Why the gesture would change nothing, as one sentence, or "".
        preview: What to draw before it is done.
    """

    label: str
    edit: Callable[[Tune, Bowing], Bowing]
    refusal: str = ""
    preview: Preview = Preview()

    def says(self, gesture: str) -> str:
        """One sentence for the status line; ``gesture`` is ``CLICK`` or ``LET_GO``."""
        return self.refusal or tr(gesture, edit=inside(self.label))


def propose_join(here: Here, note_id: str, how: Join = Join.SLUR) -> Proposal:
    """Slur (or hook) a note to the next, or separate the two where they are so already."""
    after = next_struck(here.tune, note_id)
    there = after is not None and here.bowing.joins.get(after.id) is how
    last = after.id if after is not None else note_id
    preview = Preview(parted=((note_id, last),)) if there else Preview(joined=(note_id, last))
    return _proposal(
        here,
        tr(
            "Separate {notes}" if there else "Slur {notes}" if how is Join.SLUR else "Hook {notes}",
            notes=span_text(here.tune, note_id, last),
        ),
        lambda t, b: toggle_join_to_next(t, b, note_id, how),
        preview,
    )


def propose_hook(here: Here, note_id: str) -> Proposal:
    """Hook a note to the next, or separate the two where they are hooked already."""
    return propose_join(here, note_id, Join.HOOK)


def propose_slur(here: Here, first_id: str, last_id: str) -> Proposal:
    """One slur over exactly the notes from first to last, in either order."""
    first_id, last_id = in_order(here.tune, first_id, last_id)
    return _proposal(
        here,
        tr("Slur {notes}", notes=span_text(here.tune, first_id, last_id)),
        lambda t, b: slur_span(t, b, first_id, last_id),
        Preview(joined=notes_between(here.tune, first_id, last_id)),
        tr("These notes are one slur already."),
    )


def propose_separate(here: Here, first_id: str, last_id: str) -> Proposal:
    """Every note from first to last on a bow of its own."""
    first_id, last_id = in_order(here.tune, first_id, last_id)
    if first_id == last_id:  # one note: take it out of its stroke on both sides
        return _propose_apart(here, first_id)
    notes = notes_between(here.tune, first_id, last_id)
    return _proposal(
        here,
        tr("Separate {notes}", notes=span_text(here.tune, first_id, last_id)),
        lambda t, b: separate_span(t, b, first_id, last_id),
        Preview(parted=tuple((a, b) for a, b in pairwise(notes) if b in here.bowing.joins)),
        tr("These notes have bows of their own already."),
    )


def propose_turn(here: Here, note_id: str) -> Proposal:
    """Turn the stroke of a note round and fix it so; a pass that its mark was limited to stays."""
    start = stroke_start(here.tune, here.bowing, note_id).id
    mark = here.bowing.marks.get(start)
    bows = here.strokes.bows.get(start, ())
    now = mark.bow if mark is not None else bows[0] if bows else Bow.UP
    proposal = propose_bow(here, note_id, now.turned, mark.only_pass if mark is not None else None)
    label = tr("Turn {note} to {bow}", note=place_text(here.tune, start), bow=bow_name(now.turned))
    return replace(proposal, label=label)


def propose_bow(here: Here, note_id: str, bow: Bow, only_pass: int | None = None) -> Proposal:
    """Fix the stroke of a note in a direction, on every pass or on one only."""
    start = stroke_start(here.tune, here.bowing, note_id).id
    values = {"note": place_text(here.tune, start), "bow": bow_name(bow)}
    return _proposal(
        here,
        tr("Fix {note} as {bow}", **values)
        if only_pass is None
        else tr("Fix {note} as {bow} on pass {number}", number=only_pass, **values),
        lambda t, b: fix_bow(t, b, note_id, bow, only_pass),
        Preview(turned=(start, bow)),
        tr("This stroke is fixed as {bow} already.", bow=bow_name(bow)),
    )


def propose_free(here: Here, note_id: str) -> Proposal:
    """Let the direction of a note's stroke follow from the strokes before it again."""
    start = stroke_start(here.tune, here.bowing, note_id).id
    return _proposal(
        here,
        tr("Free {note}", note=place_text(here.tune, start)),
        lambda t, b: free_bow(t, b, note_id),
        Preview(freed=start),
        tr("Nothing is fixed here: this bow follows from the strokes before it."),
    )


def propose_retake(here: Here, note_id: str) -> Proposal:
    """Lift and take the direction of the stroke before once more, or stop doing so."""
    start = stroke_start(here.tune, here.bowing, note_id).id
    bows = here.strokes.bows.get(start, ())
    return _proposal(
        here,
        tr(
            "Stop retaking at {note}" if start in here.bowing.retakes else "Retake at {note}",
            note=place_text(here.tune, start),
        ),
        lambda t, b: toggle_retake(t, b, note_id),
        Preview(turned=(start, bows[0].turned) if bows else None),
    )


def propose_limit(here: Here, note_id: str, only_pass: int | None) -> Proposal:
    """Limit the fixed mark of a note's stroke to one pass, or let it hold on every pass."""
    start = stroke_start(here.tune, here.bowing, note_id).id

    def limit(t: Tune, b: Bowing) -> Bowing:
        mark = b.marks.get(stroke_start(t, b, note_id).id)
        if mark is None:
            raise RefusedEditError(tr("Only a fixed bow mark can be kept to one pass: turn or fix this stroke first."))
        return fix_bow(t, b, note_id, mark.bow, only_pass)

    mark = here.bowing.marks.get(start)
    preview = Preview(turned=(start, mark.bow)) if mark is not None else Preview()
    return _proposal(
        here,
        tr("Keep the mark at {note} to pass {number} only", note=place_text(here.tune, start), number=only_pass)
        if only_pass
        else tr("Let the mark at {note} hold on every pass", note=place_text(here.tune, start)),
        limit,
        preview,
        tr("This mark holds on pass {number} only already.", number=only_pass)
        if only_pass
        else tr("This mark holds on every pass already."),
    )


def propose_place(here: Here, place: Place, accents: Mapping[Place, Accented]) -> Proposal:
    """Accent a place of one bar, or stop doing so; a written accent goes with its sign and not here."""
    bar, offset = place
    proposal = _proposal(
        here,
        tr(
            "Take the accent from {place}" if place in accents else "Accent {place}",
            place=strip_text(here.tune, place),
        ),
        lambda t, b: toggle_place(t, b, bar, offset),
        Preview(place=place),
    )
    if place in accents and accents[place].written:
        return replace(proposal, refusal=tr("An accent sign on the note accents this place, whatever the plan."))
    return proposal


def propose_plan(here: Here, note_id: str, extent: Extent, kind: PlanKind | None) -> Proposal:
    """Give the bar, phrase, part or tune around a note an accent plan; that of its bar where no kind is named."""
    bar = here.tune.bar_of[note_id]
    bars = extent_bars(here.tune, bar, extent)
    plan = here.bowing.plan_in(bar) if kind is None else AccentPlan(kind)
    return _proposal(
        here,
        tr(
            "Accents of {bars}: {plan}",
            bars=extent_text(here.tune, bars, extent),
            plan=tr(PLAN_WORDS[plan.kind], "accents of some bars"),
        ),
        lambda t, b: set_plan(t, b, plan, bars.start, bars.stop),
        idle=tr("These bars have this accent plan already."),
    )


def propose_ornament(here: Here, first_id: str, last_id: str, ornament: Ornament) -> Proposal:
    """Put an ornament on the notes from first to last, or take it away where all have it."""
    first_id, last_id = in_order(here.tune, first_id, last_id)
    notes = notes_between(here.tune, first_id, last_id)
    struck = [note for note in notes if not here.tune.note(note).is_rest and not here.tune.note(note).held]
    there = bool(struck) and all(has_ornament(here.bowing, note, ornament) for note in struck)
    return _proposal(
        here,
        tr(
            "Take a {ornament} from {notes}" if there else "Put a {ornament} on {notes}",
            ornament=ornament_name(ornament),
            notes=span_text(here.tune, first_id, last_id),
        ),
        lambda t, b: toggle_ornament(t, b, notes, ornament),
    )


def extent_bars(tune: Tune, bar: int, extent: Extent) -> range:
    """Indexes of the bars of the bar, phrase, part or tune that a bar belongs to."""
    match extent:
        case Extent.BAR:
            return range(bar, bar + 1)
        case Extent.PHRASE:
            return next(found for found in phrases(tune) if bar in found)
        case Extent.PART:
            return next(found for found in sections(tune) if bar in found)
        case Extent.TUNE:
            return range(len(tune.bars))


def extent_text(tune: Tune, bars: range, extent: Extent) -> str:
    """Which bars, as "bar 3", "bars 5–8" or "the tune"."""
    if extent is Extent.TUNE:
        return tr("the tune")
    first, last = tune.bars[bars.start].number, tune.bars[bars.stop - 1].number
    if first == last:
        return tr("bar {number}", number=first) if first else tr("the pick-up")
    return tr("bars {first}–{last}", first=first, last=last)


def propose_edit(here: Here, label: str, edit: Callable[[Tune, Bowing], Bowing]) -> Proposal:
    """An edit that comes from elsewhere; what it would do is seen from the joins and marks that it changes."""
    proposal = _proposal(here, label, edit)
    return proposal if proposal.refusal else replace(proposal, preview=_difference(here, edit(here.tune, here.bowing)))


def _difference(here: Here, after: Bowing) -> Preview:
    tune, before = here.tune, here.bowing
    joined = [note.id for note in tune.sequence if note.id in after.joins and note.id not in before.joins]
    parted = [note.id for note in tune.sequence if note.id in before.joins and note.id not in after.joins]
    slurs: list[tuple[str, ...]] = []
    for note_id in joined:
        first = _struck_before(tune, note_id)
        if slurs and slurs[-1][-1] == first:
            slurs[-1] = notes_between(tune, slurs[-1][0], note_id)
        else:
            slurs.append(notes_between(tune, first, note_id))
    fixed = [note.id for note in tune.sequence if after.marks.get(note.id) not in (None, before.marks.get(note.id))]
    freed = [note.id for note in tune.sequence if note.id in before.marks and note.id not in after.marks]
    return Preview(
        joined=slurs[0] if slurs else (),
        joined_too=tuple(slurs[1:]),
        parted=tuple((_struck_before(tune, note_id), note_id) for note_id in parted),
        turned=(fixed[0], after.marks[fixed[0]].bow) if fixed else None,
        freed=freed[0] if freed else "",
    )


def _struck_before(tune: Tune, note_id: str) -> str:
    """Id of the last note struck before a note; its own where there is none."""
    before = tune.before(note_id)
    while before is not None and before.held:
        before = tune.before(before.id)
    return before.id if before is not None else note_id


def _propose_apart(here: Here, note_id: str) -> Proposal:
    before, after = here.tune.before(note_id), next_struck(here.tune, note_id)
    pairs = []
    if before is not None and note_id in here.bowing.joins:
        pairs.append((before.id, note_id))
    if after is not None and after.id in here.bowing.joins:
        pairs.append((note_id, after.id))
    ends = {last for _, last in pairs}

    def apart(t: Tune, b: Bowing) -> Bowing:
        joins = b.joins
        for note in ends:
            joins = joins.discard(note)
        return replace(b, joins=joins)

    return _proposal(
        here,
        tr("Separate {notes}", notes=place_text(here.tune, note_id)),
        apart,
        Preview(parted=tuple(pairs)),
        tr("This note has a bow of its own already."),
    )


def _proposal(
    here: Here,
    label: str,
    edit: Callable[[Tune, Bowing], Bowing],
    preview: Preview = NOTHING_SHOWN,
    idle: str = "",
) -> Proposal:
    try:
        changes = edit(here.tune, here.bowing) != here.bowing
    except RefusedEditError as refusal:
        return Proposal(label, edit, str(refusal))
    return (
        Proposal(label, edit, preview=preview)
        if changes
        else Proposal(label, edit, idle or tr("Nothing would change."))
    )
