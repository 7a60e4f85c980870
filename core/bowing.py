"""A bowing: one version of how a tune is bowed, and the edits that make another one of it.

A bowing holds all that may differ between versions of a tune: which notes share a stroke, where the player fixed a
direction, retakes, and the signs on notes (grace notes, ornaments, articulation, fingering). Directions that follow
from these are not stored; ``core.strokes`` works them out.

Edits are functions that take the tune and a bowing and return a new bowing; what has no meaning raises
``RefusedEditError``, and an edit that changes nothing returns an equal bowing.
"""

from __future__ import annotations

from dataclasses import replace
from enum import Enum
from fractions import Fraction
from itertools import pairwise

from immutabledict import immutabledict

from core.accent_plan import AccentPlan
from core.errors import RefusedEditError
from core.translation import tr
from core.tune import Note, Pitch, Tune
from core.values import dataclass


class Bow(Enum):
    """Direction of a stroke."""

    DOWN = "down"
    UP = "up"

    __hash__ = object.__hash__  # members are singletons; Enum's own hash is slow, and tables are read for every note

    @property
    def turned(self) -> Bow:
        return Bow.UP if self is Bow.DOWN else Bow.DOWN


class Join(Enum):
    """How a note shares the stroke of the note before it."""

    SLUR = "slur"  # no new attack (rule B2)
    HOOK = "hook"  # a stop between, so a new attack in the same direction (rule B9)


@dataclass(frozen=True, slots=True)
class Mark:
    """A direction fixed by the player (rule B4).

    Attributes:
        bow: The direction.
        only_pass: The one pass (counted from 1) on which it holds, or None for every pass (rule B12).
    """

    bow: Bow
    only_pass: int | None = None

    def holds_on(self, pass_number: int) -> bool:
        return self.only_pass is None or self.only_pass == pass_number


class Ornament(Enum):
    """Ornament signs over a note; values are our names in files and texts."""

    ROLL = "roll"
    CUT = "cut"
    TURN = "turn"
    INVERTED_TURN = "inverted turn"
    TRILL = "trill"
    MORDENT = "mordent"  # with the line: main, lower, main
    UPPER_MORDENT = "upper mordent"  # without the line: main, upper, main
    SLIDE = "slide"
    BOWED_TRIPLET = "bowed triplet"


class Articulation(Enum):
    """Articulation and other playing signs on a note; values are the MusicXML 4.0 element names."""

    ACCENT = "accent"
    STRONG_ACCENT = "strong-accent"
    STACCATO = "staccato"
    TENUTO = "tenuto"
    DETACHED_LEGATO = "detached-legato"
    STACCATISSIMO = "staccatissimo"
    SPICCATO = "spiccato"
    STRESS = "stress"
    UNSTRESS = "unstress"
    BREATH_MARK = "breath-mark"
    FERMATA = "fermata"
    OPEN_STRING = "open-string"
    HARMONIC = "harmonic"
    SNAP_PIZZICATO = "snap-pizzicato"


PARTING = {  # common practice, no source
    Articulation.STACCATO, Articulation.STACCATISSIMO, Articulation.SPICCATO,
    Articulation.TENUTO, Articulation.DETACHED_LEGATO,
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Grace:
    """One grace note before a note.

    Attributes:
        pitches: Low to high, at least one.
        length: Note value in quarter notes, 1/2 for the usual eighth; takes no time of its own in the bar.
        slashed: Printed with a stroke through the flag.
    """

    pitches: tuple[Pitch, ...]
    length: Fraction = Fraction(1, 2)
    slashed: bool = False


@dataclass(frozen=True, slots=True)
class Signs:
    """What stands on one note in one bowing, slurs and bow marks apart.

    Attributes:
        graces: Grace notes before it, in the order played; they belong to its stroke (rule B8).
        ornaments: Ornament signs, in file order.
        articulations: Articulation signs, in file order, none twice.
        fingerings: Fingers ``"0"`` to ``"4"``, one or more.
    """

    graces: tuple[Grace, ...] = ()
    ornaments: tuple[Ornament, ...] = ()
    articulations: tuple[Articulation, ...] = ()
    fingerings: tuple[str, ...] = ()

    def __bool__(self) -> bool:
        return bool(self.graces or self.ornaments or self.articulations or self.fingerings)

    @property
    def parts(self) -> bool:
        """Under a slur these signs part the note from an equal one before it."""
        return bool(self.graces or self.ornaments) or not PARTING.isdisjoint(self.articulations)


NO_SIGNS = Signs()


@dataclass(frozen=True)
class Bowing:
    """One version of how a tune is bowed.

    Attributes:
        name: Shown to the user; unique in its lesson.
        joins: For each note (by id) that shares the stroke of the note written before it: how. Never a rest, a held
            note, or a note after a rest.
        marks: Directions fixed by the player, by note id.
        retakes: Ids of notes whose new stroke repeats the direction of the stroke before (lifted bow). A note in
            ``retakes`` is neither in ``joins`` nor in ``marks``.
        signs: What else stands on a note, by note id; a note with nothing is not listed.
        accents: The plan that the bowing is meant to drive.
        accent_changes: Other plans by index of the bar in ``Tune.bars`` from which on each holds, until the next.
    """

    name: str
    joins: immutabledict[str, Join] = immutabledict()
    marks: immutabledict[str, Mark] = immutabledict()
    retakes: frozenset[str] = frozenset()
    signs: immutabledict[str, Signs] = immutabledict()
    accents: AccentPlan = AccentPlan()
    accent_changes: immutabledict[int, AccentPlan] = immutabledict()

    def plan_in(self, bar: int) -> AccentPlan:
        """The accent plan in force in a bar, by index in ``Tune.bars``."""
        begins = max((index for index in self.accent_changes if index <= bar), default=None)
        return self.accents if begins is None else self.accent_changes[begins]

    def plans(self, bar_count: int) -> tuple[AccentPlan, ...]:
        """The accent plan in force in each of the first bars."""
        plans, plan = [], self.accents
        for bar in range(bar_count):
            plan = self.accent_changes.get(bar, plan)
            plans.append(plan)
        return tuple(plans)

    def signs_on(self, note_id: str) -> Signs:
        """Signs on a note; empty signs where there are none."""
        return self.signs.get(note_id, NO_SIGNS)


def can_join(tune: Tune, note_id: str) -> bool:
    """Whether a note can share the stroke of the note written before it: both are notes, and it is not held."""
    note, before = tune.note(note_id), tune.before(note_id)
    return before is not None and not note.is_rest and not before.is_rest and not note.held


def stroke_start(tune: Tune, bowing: Bowing, note_id: str) -> Note:
    """First note, in written order, of the stroke that a note belongs to (itself for a rest)."""
    place = tune.places[note_id]
    sequence = tune.sequence
    while place and (sequence[place].held or sequence[place].id in bowing.joins):
        place -= 1
    return sequence[place]


def stroke_notes(tune: Tune, bowing: Bowing, note_id: str) -> tuple[Note, ...]:
    """All written notes of the stroke that a note belongs to, held notes among them."""
    first = tune.places[stroke_start(tune, bowing, note_id).id]
    sequence = tune.sequence
    stop = first + 1
    while stop < len(sequence) and (sequence[stop].held or sequence[stop].id in bowing.joins):
        stop += 1
    return sequence[first:stop]


def next_struck(tune: Tune, note_id: str) -> Note | None:
    """The next written note or rest that is not a held part of this one, or None at the end."""
    after = tune.after(note_id)
    while after is not None and after.held:
        after = tune.after(after.id)
    return after


def join(tune: Tune, bowing: Bowing, note_id: str, how: Join = Join.SLUR) -> Bowing:
    """Take a note in the stroke of the note before it.

    Raises:
        RefusedEditError: the note is a rest, follows a rest, is held already, or opens the tune.
    """
    if not can_join(tune, note_id):
        raise RefusedEditError(_why_not_joined(tune, note_id))
    return replace(bowing, joins=bowing.joins.set(note_id, how), retakes=bowing.retakes - {note_id})


def separate(bowing: Bowing, note_id: str) -> Bowing:
    """Give a note a stroke of its own start."""
    return replace(bowing, joins=bowing.joins.discard(note_id))


def toggle_join_to_next(tune: Tune, bowing: Bowing, note_id: str, how: Join = Join.SLUR) -> Bowing:
    """Join the note after this one to it, or separate the two where they are joined in this way already.

    Raises:
        RefusedEditError: there is no next note that could share the stroke.
    """
    after = next_struck(tune, note_id)
    if tune.note(note_id).is_rest:
        raise RefusedEditError(tr("A rest has no stroke to join."))
    if after is None:
        raise RefusedEditError(tr("This is the last note: there is no note after it to join."))
    if bowing.joins.get(after.id) is how:
        return separate(bowing, after.id)
    return join(tune, bowing, after.id, how)


def slur_span(tune: Tune, bowing: Bowing, first_id: str, last_id: str) -> Bowing:
    """Make one slur of the notes from first to last (in either order), no more and no less.

    Raises:
        RefusedEditError: a rest stands between, or there are not two notes to slur.
    """
    low, high = sorted((tune.places[first_id], tune.places[last_id]))
    notes = tune.sequence[low : high + 1]
    if any(note.is_rest for note in notes):
        raise RefusedEditError(tr("A slur cannot run over a rest."))
    while notes and notes[0].held:  # a slur that begins on a held note begins where that note was struck
        low -= 1
        notes = tune.sequence[low : high + 1]
    inner = [note.id for note in notes[1:] if not note.held]
    if not inner:
        raise RefusedEditError(tr("One note alone makes no slur: choose two or more."))
    joins = dict(bowing.joins)
    joins.pop(notes[0].id, None)
    after = next_struck(tune, notes[-1].id)
    if after is not None:
        joins.pop(after.id, None)
    joins.update(dict.fromkeys(inner, Join.SLUR))
    return replace(bowing, joins=immutabledict(joins), retakes=bowing.retakes - set(inner))


def separate_span(tune: Tune, bowing: Bowing, first_id: str, last_id: str) -> Bowing:
    """Take away every join among the notes from first to last (in either order)."""
    low, high = sorted((tune.places[first_id], tune.places[last_id]))
    inner = {note.id for note in tune.sequence[low + 1 : high + 1]}
    return replace(bowing, joins=immutabledict({i: how for i, how in bowing.joins.items() if i not in inner}))


def fix_bow(tune: Tune, bowing: Bowing, note_id: str, bow: Bow, only_pass: int | None = None) -> Bowing:
    """Fix the direction of the stroke that a note belongs to, by a mark on the stroke's first note.

    Raises:
        RefusedEditError: the note is a rest.
    """
    if tune.note(note_id).is_rest:
        raise RefusedEditError(tr("A rest has no bow direction."))
    start = stroke_start(tune, bowing, note_id).id
    return replace(bowing, marks=bowing.marks.set(start, Mark(bow, only_pass)), retakes=bowing.retakes - {start})


def free_bow(tune: Tune, bowing: Bowing, note_id: str) -> Bowing:
    """Take away the fixed marks and the retake from the stroke that a note belongs to."""
    ids = {note.id for note in stroke_notes(tune, bowing, note_id)}
    marks = immutabledict({i: mark for i, mark in bowing.marks.items() if i not in ids})
    return replace(bowing, marks=marks, retakes=bowing.retakes - ids)


def toggle_retake(tune: Tune, bowing: Bowing, note_id: str) -> Bowing:
    """Lift and take the stroke of a note in the direction of the stroke before it, or stop doing so.

    Raises:
        RefusedEditError: the note is a rest or its stroke opens the tune.
    """
    if tune.note(note_id).is_rest:
        raise RefusedEditError(tr("A rest has no stroke to retake."))
    start = stroke_start(tune, bowing, note_id).id
    if start in bowing.retakes:
        return replace(bowing, retakes=bowing.retakes - {start})
    if all(note.is_rest for note in tune.sequence[: tune.places[start]]):
        raise RefusedEditError(tr("The first stroke has none before it to retake."))
    return replace(bowing, marks=bowing.marks.discard(start), retakes=bowing.retakes | {start})


def set_signs(bowing: Bowing, note_id: str, signs: Signs) -> Bowing:
    """Replace all signs on a note."""
    kept = bowing.signs.set(note_id, signs) if signs else bowing.signs.discard(note_id)
    return replace(bowing, signs=kept)


def set_plan(tune: Tune, bowing: Bowing, plan: AccentPlan, first_bar: int = 0, stop_bar: int | None = None) -> Bowing:
    """Set the accent plan of some bars; the others keep theirs.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        plan: The plan.
        first_bar: Index of the first bar in ``tune.bars``.
        stop_bar: Index after the last bar; the end of the tune where None.
    """
    count = len(tune.bars)
    plans = list(bowing.plans(count))
    plans[first_bar:stop_bar] = [plan] * len(plans[first_bar:stop_bar])
    base = plans[0] if len(set(plans)) == 1 else bowing.accents
    changes = {bar: now for bar, (before, now) in enumerate(pairwise([base, *plans])) if now != before}
    return replace(bowing, accents=base, accent_changes=immutabledict(changes))


def separate_bows(bowing: Bowing, name: str) -> Bowing:
    """The same tune and signs with every note on a bow of its own and nothing fixed."""
    return replace(bowing, name=name, joins=immutabledict(), marks=immutabledict(), retakes=frozenset())


def _why_not_joined(tune: Tune, note_id: str) -> str:
    note, before = tune.note(note_id), tune.before(note_id)
    if note.is_rest:
        return tr("A rest comes next: a slur cannot run over a rest.")
    if before is None:
        return tr("The first note has none before it to join.")
    if before.is_rest:
        return tr("A rest comes before: a slur cannot run over a rest.")
    return tr("A held note is part of its stroke already.")
