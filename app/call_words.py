"""What the standard parser of the command line says itself, in the language that is spoken.

``argparse`` takes its headings and messages from ``gettext`` under the name ``_``; there is no other way to give it
those of another language. A message that is not in the table is said in English.
"""

from __future__ import annotations

import argparse

from core.translation import tr, translatable

WORDS = frozenset(
    translatable(
        (
            "usage: ",
            "positional arguments",
            "options",
            "show this help message and exit",
            "%(prog)s: error: %(message)s\n",
            "argument %(argument_name)s: %(message)s",
            "the following arguments are required: %s",
            "unrecognized arguments: %s",
            "expected one argument",
            "expected at least one argument",
            "ignored explicit argument %r",
            "ambiguous option: %(option)s could match %(matches)s",
            "invalid choice: %(value)r (choose from %(choices)s)",
            "invalid %(type)s value: %(value)r",
        ),
        "of the command line",
    )
)


def translate_calls() -> None:
    """Have all parsers of the command line speak the language that is spoken when they do."""
    setattr(argparse, "_", _said)  # noqa: B010  (no name that type checkers know)


def _said(text: str) -> str:
    return tr(text, "of the command line") if text in WORDS else text
