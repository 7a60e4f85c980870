"""A style in words: what it was learned from and what was found there. No Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING

from core.translation import percent, plural, tr

if TYPE_CHECKING:
    from core.style.style import Style


def learned_from(style: Style) -> str:
    """From how much a style was learned, as a sentence."""
    figures = style.figures
    return plural(
        "Learned from 1 lesson: of {places} notes that could be slurred to the one before, {joined} are ({share}).",
        "Learned from {n} lessons: of {places} notes that could be slurred to the one before, {joined} are ({share}).",
        figures.lessons, places=figures.places, joined=figures.joined,
        share=percent(figures.joined / figures.places if figures.places else 0),
    )  # fmt: skip


def found_in(style: Style) -> list[str]:
    """What was found in the lessons, a sentence each."""
    return [habit.sentence() for habit in style.habits] or [tr("Nothing is slurred much oftener than the rest.")]


def style_text(style: Style) -> str:
    """All there is to say of a style, in paragraphs."""
    habits = "\n".join(f"• {words}" for words in found_in(style))
    return "\n\n".join(filter(None, [learned_from(style), habits, style.notice]))
