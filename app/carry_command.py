"""``bowbench bow --style``: a bowing in a style, of the bars that are marked or of the whole tune."""

from __future__ import annotations

import argparse
from dataclasses import replace

from immutabledict import immutabledict

from app.carrying import THIS_TUNE, carried_name, carried_sentence, pose_carrying, proposal_for, slurs_text
from app.styles import known_name
from core.bowing import Bowing
from core.lesson import Lesson
from core.style.carry_on import LIKELY, SURE, Proposal

ITSELF = "this-tune"
"""The style that is nothing but the marked bars."""


def carried(lesson: Lesson, options: argparse.Namespace) -> Proposal:
    """Propose a bowing as the options ask for it.

    Raises:
        RefusedEditError: there is no such style, or too little to go by, or what is kept leaves no bowing.
    """
    first = lesson.bowings[0]
    bowing = first if options.keep else _bare(first)
    question = pose_carrying(lesson.tune, bowing, _style(options), (), options.accents)
    if not options.keep:
        question = replace(question, marked=frozenset())
    return proposal_for(question, lambda: None, SURE if options.sure else LIKELY)


def name_of(options: argparse.Namespace) -> str:
    """What the bowing is called."""
    return carried_name(_style(options))


def line_of(lesson: Lesson, proposal: Proposal) -> str:
    """What there is to say of it."""
    return carried_sentence(lesson.tune, proposal, slurs_text(lesson.tune, proposal.bowing))


def bars_json(lesson: Lesson, proposal: Proposal) -> list[dict[str, object]]:
    """How sure each proposed bar is, in written order."""
    return [
        {"bar": lesson.tune.bars[index].number, "sure": round(chance, 3)}
        for index, chance in sorted(proposal.bar_chances.items())
    ]


def _style(options: argparse.Namespace) -> str:
    return THIS_TUNE if options.style == ITSELF else known_name(options.style) or str(options.style)


def _bare(bowing: Bowing) -> Bowing:
    return replace(bowing, joins=immutabledict(), marks=immutabledict(), retakes=frozenset())
