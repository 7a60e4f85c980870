"""What keys and gestures do, as the help menu tells it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtGui import QAction, QKeySequence

from app.actions import ACTIONS, told_tip
from app.gestures import NOTE_TIPS, SIGN_TIPS
from core.translation import tr, translatable

KEYS_TITLE = translatable("Keys and gestures")
GESTURES = translatable(
    "<p><b>Mouse.</b> Click a note to slur it to the next, or to separate the two. "
    "{note_tips} Shift+click selects up to a note. Click a bow mark to turn the stroke round. {sign_tips} "
    "The right button opens the menu of a note. Ctrl and the wheel zoom.</p>"
    "<p><b>Accents under the staff.</b> A full wedge is driven by a down-bow, an open wedge lies on an up-bow, "
    "a dot under an arch is buried inside a slur, a ring is not struck; two shapes stand for two passes. Click "
    "under a note to accent that place in its bar, or to stop doing so.</p>"
    "<p><b>Bowings under one another.</b> An arch under a line: slurred here; a cut arch: slurred in the "
    "bowing told from; a dotted arch: slurred in one, hooked in the other. A full square: a sign more; an "
    "empty one: a sign less; half full: another sign. A line with ticks: the bow goes the other way. "
    "Click a line to work on its bowing; Up and Down go from bowing to bowing.</p>"
    "<p><b>Keys on the page.</b> Arrow keys, Home and End move the focus note; with Shift they select.</p>"
)


def keys_text(actions: Mapping[str, QAction]) -> str:
    """What mouse and keys do on the page; keys as they are set now."""
    rows = [
        f"<tr><td style='padding-right:18px'>{sequence.toString(QKeySequence.SequenceFormat.NativeText)}</td>"
        f"<td>{told_tip(spec)}</td></tr>"
        for spec in ACTIONS
        if spec.page_only and (sequence := actions[spec.name].shortcut())
    ]
    gestures = tr(GESTURES, note_tips=tr(NOTE_TIPS), sign_tips=tr(SIGN_TIPS))
    return f"{gestures}<table>{''.join(rows)}</table>"
