"""Carrying on a bowing: what is asked, and the proposals that answer, to run in a thread. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import log
from typing import TYPE_CHECKING

from app.files import FileError
from app.plan_answers import GoOn, Planned, Tell, changes_by_bar
from app.plan_words import count_slurs, met
from app.styles import shown_name, style_of
from app.sureness import Sureness, count_sure, sureness
from core.accent_plan import AccentPlan
from core.bowing import Bowing, set_plan
from core.checks import words
from core.errors import BowbenchError, RefusedEditError
from core.translation import plural, sentence, tr
from core.tune import Tune
from core.values import dataclass

if TYPE_CHECKING:
    from core.style.carry_on import Proposal

THIS_TUNE = ""
"""In the place of a style's name: the marked bars alone."""
MOSTLY = 0.5  # a share of bars


@dataclass(frozen=True)
class Carrying:
    """What is asked.

    Attributes:
        tune, bowing: The tune, and the bowing as far as it is marked, with the accents to drive.
        marked: Indexes in ``Tune.bars`` of the bars that are as the player wants them; None for those that carry signs.
        style: Name of the style, or ``THIS_TUNE``.
        drives: The accents are to be driven; else only where the marked bars drive theirs.
    """

    tune: Tune
    bowing: Bowing
    marked: frozenset[int] | None
    style: str
    drives: bool = False


def pose_carrying(
    tune: Tune, bowing: Bowing, style: str, selection: Sequence[str] = (), accents: AccentPlan | None = None
) -> Carrying:
    """Put what is chosen as a question.

    Args:
        tune: The tune.
        bowing: The bowing on the page.
        style: Name of the style, or ``THIS_TUNE``.
        selection: Ids of the selected notes in written order: their bars are the marked ones. A single note selects
            nothing.
        accents: The plan to drive; None for the accents that the bowing has.
    """
    marked = None
    if len(selection) > 1:
        marked = frozenset(range(tune.bar_of[selection[0]], tune.bar_of[selection[-1]] + 1))
    if accents is not None:
        bowing = set_plan(tune, bowing, accents)
    return Carrying(tune, bowing, marked, style, drives=accents is not None)


def proposal_for(question: Carrying, go_on: GoOn, joined_from: float | None = None) -> Proposal:
    """The likeliest bowing.

    Args:
        question: What is asked.
        go_on: Raises where nobody waits any more.
        joined_from: As in ``core.style.carry_on``; its own where None.
    Raises:
        RefusedEditError: there is too little to go by, or what is kept leaves no bowing.
    """
    from core.style.carry_on import LIKELY, carry_on, marked_bars  # loads numbers of its own

    try:
        style = style_of(question.style) if question.style != THIS_TUNE else None
    except (BowbenchError, FileError) as fault:
        raise RefusedEditError(str(fault)) from fault
    go_on()
    marked = question.marked if question.marked is not None else marked_bars(question.tune, question.bowing)
    bowing = _as_driven(question, marked)
    proposal = carry_on(question.tune, bowing, marked, style, joined_from=joined_from or LIKELY, go_on=go_on)
    return _with_accents(proposal, question)


def sure_only(question: Carrying, likely: Proposal, go_on: GoOn) -> Proposal:
    """Of the same odds a bowing that slurs only what is sure."""
    from core.style.carry_on import SURE, decode

    odds = {note_id: log(chance / (1 - chance)) for note_id, chance in likely.chances.items() if 0 < chance < 1}
    bowing = _as_driven(question, likely.marked)
    proposal = decode(question.tune, bowing, likely.marked, odds, joined_from=SURE, go_on=go_on)
    return _with_accents(proposal, question)


def _as_driven(question: Carrying, marked: frozenset[int]) -> Bowing:
    """The bowing with the accents that are to be driven."""
    from core.style.driving import drives_accents, without_plan

    if question.drives or drives_accents(question.tune, question.bowing, marked):
        return question.bowing
    return without_plan(question.bowing)


def _with_accents(proposal: Proposal, question: Carrying) -> Proposal:
    """The proposal with the accent plan that the bowing has."""
    from core.style.driving import with_plan_of

    bowing = with_plan_of(proposal.bowing, question.bowing)
    return replace(proposal, plan=replace(proposal.plan, bowing=bowing))


def tell_carried(question: Carrying, before: Bowing, go_on: GoOn, tell: Tell) -> None:
    """Tell the likeliest bowing, as a ``Planned``.

    Args:
        question: What is asked.
        before: The bowing on the page, for what changes.
        go_on: Raises where nobody waits any more.
        tell: Takes it.
    Raises:
        RefusedEditError: as ``proposal_for``.
    """
    tell(planned(question, proposal_for(question, go_on), before))


def tell_sure_only(question: Carrying, likely: Planned, before: Bowing, go_on: GoOn, tell: Tell) -> None:
    """Tell beside it the bowing that slurs only what is sure, where that is another."""
    assert likely.proposal is not None
    proposal = sure_only(question, likely.proposal, go_on)
    if proposal.bowing != likely.proposal.bowing:
        tell(planned(question, proposal, before, only_sure=True))


def planned(question: Carrying, proposal: Proposal, before: Bowing, *, only_sure: bool = False) -> Planned:
    """A proposal as it is listed."""
    told = slurs_text(question.tune, proposal.bowing)
    return Planned(
        proposal.plan,
        changes_by_bar(question.tune, before, proposal.bowing),
        tr("Only what is sure: {slurs}" if only_sure else "Most likely: {slurs}", slurs=told),
        carried_sentence(question.tune, proposal, told),
        proposal,
    )


def slurs_text(tune: Tune, bowing: Bowing) -> str:
    """How much is slurred, as part of a sentence."""
    slurs = count_slurs(tune, bowing)
    return plural("1 slur", "{n} slurs", slurs) if slurs else tr("no slurs")


def carried_sentence(tune: Tune, proposal: Proposal, slurs: str) -> str:
    """What there is to say of a proposal: from where, how much, how sure, and what stands in the way."""
    chances = proposal.bar_chances.values()
    told = [_from_where(tune, proposal, slurs)]
    if chances:
        told.append(sentence(count_sure(chances)))
    if sum(sureness(chance) is Sureness.GUESS for chance in chances) > MOSTLY * len(chances):
        told.append(tr("Most of it is a guess: mark more bars first, or choose another style."))
    for group in proposal.contradictions:
        bars = words.bars(tune, group)
        told.append(
            sentence(tr("{bars} are equal but slurred differently, so what is like them is less sure", bars=bars))
        )
    return " ".join(told)


def _from_where(tune: Tune, proposal: Proposal, slurs: str) -> str:
    marked, how = sorted(proposal.marked), met(proposal.plan)
    if not marked:
        return tr("From the style alone: {slurs}; {met}.", slurs=slurs, met=how)
    if not any(note.accented for note in proposal.plan.problem.notes):
        how = tr("accents not sought, as in these bars")
    return tr("From {bars}: {slurs}; {met}.", bars=words.bars(tune, marked), slurs=slurs, met=how)


def carried_name(style: str) -> str:
    """What a new bowing is called that was carried on so."""
    if style == THIS_TUNE:
        return tr("Carried on from its own bars", "name of a bowing")
    return tr("In the style “{style}”", "name of a bowing", style=shown_name(style))
