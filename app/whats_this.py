"""Help in place: what each part of the window, each command and each menu is.

Commands say so in the status line and, like the parts, when they are asked (Shift+F1, then a click). A part answers for
all that is in it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QDockWidget, QMenu, QMenuBar, QToolBar, QWidget

from app.actions import OPEN_MENUS, MenuItems
from core.translation import tr, translatable

PARTS = translatable({
    "page": "The tune, bowed. Click a note to slur it to the next or to separate the two; drag over notes to put them "
    "in one bow. Click a bow mark to turn the stroke round: dark marks are fixed by you, lighter ones follow from the "
    "strokes before. Under the staff stands how each accent is met. The right button tells all that can be done.",
    "welcome": "Ways to open a tune: a file, text that was copied, one of the tunes that come with the program, or "
    "what you opened lately.",
    "notice": "What there is to know of the file that was opened or saved.",
    "bowings": "The bowings of this tune. Choose one to work on it; tick several to see them under one another.",
    "check": "What a player would trip over in this bowing: totals, the accents that it should drive, and what was "
    "found. Choose a finding to see its notes, why it matters and what mends it; the right button turns its rule down.",
    "plan": "Has a bowing worked out. Choose the accents to drive and how much to slur: the best bowing is shown on "
    "the page before anything is changed. Enter on the page takes it, Esc drops it.",
    "tabs": "Which pane stands beside the page.",
    "banner": "A bowing that was worked out is shown, and nothing is edited yet: take it or drop it.",
    "trace": "Where on its hair the bow is, from frog (below) to tip, as the tune goes on at an even speed. A triangle "
    "stands where it would leave the hair, a full one where no ordinary speed could keep it on. Click to go to a note.",
    "player": "What is played, how fast, and where the bow is. The three dots say from where to where the speed "
    "climbs; Levels turns parts up, down or off.",
    "shelf": "A catalogue of your lessons and tune books. Type words or first notes to find a tune, Enter opens it. "
    "Your files are read, never changed.",
    "tools": "What is needed most; everything else is in the menus.",
    "status": "What the pointer would do, or what was just done; at the right how large the page is.",
})  # fmt: skip
MENU_TIPS = translatable(
    {
        "File": "Open, save, print and export lessons",
        "Open recent": "Lessons and books that were open lately",
        "Edit": "Take back what was done, and open copied tunes",
        "Note": "What can be done with the marked note, or the selected ones",
        "Ornaments": "Cuts, rolls, turns and bowed triplets of this bowing",
        "Accents": "Which places of the bar are driven, from here on",
        "In this bar": "Which places of this bar are driven",
        "In this phrase": "Which places of this phrase are driven",
        "In this part": "Which places of this part are driven",
        "In the whole tune": "Which places of the whole tune are driven",
        "Bowing": "Add, copy, name and compare bowings of the tune",
        "Compare with": "Choose which bowings stand under this one",
        "Plan": "Have bowings worked out for the accents",
        "Play": "Hear the tune as it is bowed",
        "Heard": "What is heard: fiddle, backing, click, count-in",
        "Check": "Go through what was found, and set what is told",
        "View": "What is shown, how large and in which colours",
        "Bow marks": "Which strokes carry a bow mark on the page",
        "Colours": "Light or dark",
        "Language": "In which language the program speaks",
        "Help": "The manual, all keys, the tour, and what the program is made of",
    }
)  # by title in English, without the sign before the letter that opens it
TOGGLE = translatable("Show or hide: {part}")


def tell_parts(parts: Mapping[str, QWidget]) -> None:
    """Let parts of the window tell what they are.

    Args:
        parts: Widgets by their names in ``PARTS``; a name that is missing there is an error.
    """
    for name, widget in parts.items():
        widget.setWhatsThis(tr(PARTS[name]))


def tell_commands(actions: Iterable[QAction]) -> None:
    """Let commands tell, when they are asked, what they tell in a tool tip."""
    for action in actions:
        action.setWhatsThis(action.toolTip())


def tell_toggles(parts: Iterable[QToolBar | QDockWidget]) -> None:
    """Let the entries that show and hide parts of the window, in the menu that Qt makes of them, tell so."""
    for part in parts:
        part.toggleViewAction().setStatusTip(tr(TOGGLE, part=part.windowTitle()))


def tell_menus(bar: QMenuBar, menus: MenuItems) -> None:
    """Let menus tell what is in them, in the status line.

    Args:
        bar: Filled with ``menus``, in their order.
    """
    _tell(bar.actions(), menus)


def _tell(actions: Sequence[QAction], items: MenuItems) -> None:
    for action, item in zip(actions, items, strict=True):
        menu = action.menu()
        if not isinstance(menu, QMenu):
            continue
        title, inside = (OPEN_MENUS[item], ()) if isinstance(item, str) else item
        tip = tr(MENU_TIPS[title.replace("&", "")])
        action.setStatusTip(tip)
        action.setWhatsThis(tip)
        if inside:
            _tell(menu.actions(), inside)
