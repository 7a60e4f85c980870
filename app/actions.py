"""Menus, tool bar and keys as one list of data; the main window says what each name does."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from math import ceil
from typing import NamedTuple

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QActionGroup, QIcon, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar, QToolBar, QToolButton, QWidget

from app.menu_keys import MenuKeys
from app.own_files import resource
from app.theme import Theme, mix, tinted_icon
from core.translation import tr, translatable
from core.values import dataclass

Key = str | QKeySequence.StandardKey
Standard = QKeySequence.StandardKey


@dataclass(frozen=True)
class ActionSpec:
    """One thing to do from a menu, a key or the tool bar.

    Attributes:
        name: What the main window and the menus call it.
        text: In menus; ``&`` before the letter that opens it.
        keys: Keys that do it.
        tip: One sentence for the status line and the tool tip.
        icon: Name of a drawing in ``resources/icons``, or "".
        page_only: Its keys are plain letters and work only while the page has the keyboard.
        group: Exactly one action of the same group is checked; "" for an action without a check mark.
        short: Words on the tool bar where they differ from ``text``.
        is_switch: It is on or off by itself, with a check mark.
        where: Words before the tip, for actions of several menus that are called alike.

    Texts stand in English and are translated where they are shown (``plain``, ``told_tip``).
    """

    name: str
    text: str
    keys: tuple[Key, ...] = ()
    tip: str = ""
    icon: str = ""
    page_only: bool = False
    group: str = ""
    short: str = ""
    is_switch: bool = False
    where: str = ""


EXTENTS = translatable({"bar": "In this &bar", "phrase": "In this &phrase", "part": "In this pa&rt",
                        "tune": "In the whole &tune"})  # fmt: skip
PLANS = translatable({"on-beat": "On the &beat", "backbeat": "On the b&ackbeat",
                      "by-phrase": "As each &phrase does better", "none": "&None",
                      "drawn": "As &drawn in this bar"})  # fmt: skip
PARTS = translatable({"fiddle": "&Fiddle", "backing": "&Backing", "click": "&Click", "count-in": "C&ount-in"})
HEARD = translatable("Let it be heard, or not")

ACTIONS = (
    ActionSpec("open", "&Open…", (Standard.Open,), "Open a lesson, a score or a tune book", "open", short="Open"),
    ActionSpec("save", "&Save", (Standard.Save,), "Save the lesson", "save"),
    ActionSpec("save_as", "Save &as…", (Standard.SaveAs, "Ctrl+Shift+S"), "Save the lesson under another name"),
    ActionSpec("recover", "&Unsaved lessons…", (), "Lessons that were not saved when the program ended"),
    ActionSpec("print", "&Print…", (Standard.Print,), "Print bowings of the lesson", "print", short="Print"),
    ActionSpec("preview", "Set up s&heet…", ("Ctrl+Shift+P",), "Choose what is printed and see its pages"),
    ActionSpec("export_pdf", "&Export as PDF…", ("Ctrl+E",), "Write the printed pages to a PDF file"),
    ActionSpec("export_abc", "Export as A&BC…", (), "Write all bowings of the lesson as a tune book in ABC"),
    ActionSpec("pack", "Lesson pac&k…", (), "Make sheets and files of many lessons in one folder, with a zip of all"),
    ActionSpec("close", "&Close window", (Standard.Close, "Ctrl+Q"), "Close the window"),
    ActionSpec("undo", "&Undo", (Standard.Undo,), "Take back the last edit", "undo"),
    ActionSpec("redo", "&Redo", (Standard.Redo,), "Do again what was taken back", "redo"),
    ActionSpec("paste", "Open &pasted tune", (Standard.Paste,), "Open the tune (ABC or MusicXML text) that was copied"),
    ActionSpec("slur", "&Slur", ("Space",), "Slur to the next note or separate the two; a selection becomes one slur",
               "slur", page_only=True),
    ActionSpec("separate", "S&eparate bows", ("S",), "Give the note, or each selected note, a bow of its own",
               "separate", page_only=True, short="Separate"),
    ActionSpec("hook", "&Hook to the next note", ("H",), "Same direction, with a stop between",
               "hook", page_only=True, short="Hook"),
    ActionSpec("turn", "&Turn the bow", ("T",), "Turn this stroke round and fix it so", "turn", page_only=True,
               short="Turn"),
    ActionSpec("down", "Fix as &down-bow", ("D",), "Fix this stroke as a down-bow", page_only=True),
    ActionSpec("up", "Fix as &up-bow", ("U",), "Fix this stroke as an up-bow", page_only=True),
    ActionSpec("free", "&Free the bow", ("F",), "Let this stroke follow from the strokes before it again",
               "free", page_only=True, short="Free"),
    ActionSpec("retake", "&Retake", ("R",), "Lift and take the direction of the stroke before once more",
               "retake", page_only=True),
    ActionSpec("pass_all", "Mark holds on every &pass", ("0",), "The fixed mark holds on every pass", page_only=True),
    ActionSpec("pass_1", "Mark holds on pass &1 only", ("1",), "The fixed mark holds on pass 1 only", page_only=True),
    ActionSpec("pass_2", "Mark holds on pass &2 only", ("2",), "The fixed mark holds on pass 2 only", page_only=True),
    ActionSpec("pass_3", "Mark holds on pass &3 only", ("3",), "The fixed mark holds on pass 3 only", page_only=True),
    ActionSpec("pass_4", "Mark holds on pass &4 only", ("4",), "The fixed mark holds on pass 4 only", page_only=True),
    ActionSpec("accent", "&Accent this place", ("A",), "Accent this place of the bar, or stop doing so",
               page_only=True),
    *(
        ActionSpec(f"plan_{extent}_{plan}", text, (), text, where=place)
        for extent, place in EXTENTS.items()
        for plan, text in PLANS.items()
    ),
    ActionSpec("ornament_cut", "&Cut", ("C",), "A cut: a short grace note of the next step up, or take it away",
               page_only=True),
    ActionSpec("ornament_roll", "&Roll", ("L",), "A roll sign over the note, or take it away", page_only=True),
    ActionSpec("ornament_turn", "&Turn", ("N",), "A turn sign over the note, or take it away", page_only=True),
    ActionSpec("ornament_triplet", "&Bowed triplet", ("B",), "Three quick strokes on the note, or take them away",
               page_only=True),
    ActionSpec("bowing_add", "&Add a bowing", ("Ctrl+B",), "Add a bowing with separate bows"),
    ActionSpec("bowing_copy", "&Copy this bowing", ("Ctrl+Shift+B",), "Add a copy of the bowing on the page"),
    ActionSpec("bowing_rename", "&Rename this bowing", ("F2",), "Type another name for the bowing on the page"),
    ActionSpec("bowing_up", "Move &up", ("Alt+Up",), "Move the bowing up in the list"),
    ActionSpec("bowing_down", "Move &down", ("Alt+Down",), "Move the bowing down in the list"),
    ActionSpec("bowing_delete", "De&lete this bowing", ("Ctrl+Delete",), "Take the bowing on the page away"),
    ActionSpec("bowing_next", "&Next bowing", ("Ctrl+PgDown",), "Put the next bowing on the page"),
    ActionSpec("bowing_previous", "&Previous bowing", ("Ctrl+PgUp",), "Put the previous bowing on the page"),
    ActionSpec("compare", "C&ompare bowings", ("Ctrl+K",),
               "Show bowings under one another, line by line, with what tells them apart", is_switch=True),
    ActionSpec("compare_reference", "Tell the others &from this one", ("Ctrl+Shift+K",),
               "Mark what tells the others from the bowing that is worked on"),
    ActionSpec("plan", "&Work out the best bowing", ("F9",), "Work out the best bowing for the accents and show it",
               "plan", short="Plan"),
    ActionSpec("plan_onward", "Mend &from here on", ("Shift+F9",),
               "Keep all up to the marked note and work out the rest afresh"),
    ActionSpec("carry_on", "&Carry on this bowing", ("Ctrl+G",),
               "Propose the rest in a style, from the bars that are slurred or marked, or selected"),
    ActionSpec("style_words", "W&hat the style does…", (), "Read what was found in the lessons of the chosen style"),
    ActionSpec("learn_style", "&Learn a style from the shelf…", (),
               "Learn how the lessons that are found on the shelf are slurred"),
    ActionSpec("planner", "&Planner beside the page", ("Ctrl+F9",), "Show what the planner is set to", is_switch=True),
    ActionSpec("plan_compare", "Which accents s&uit this tune", (), "Compare the accent plans on this tune"),
    ActionSpec("plan_versions", "Add &starting versions", (),
               "Add four bowings to start from: separate bows, on the beat, backbeat, smooth"),
    ActionSpec("plan_take", "&Take the preview", ("Return", "Enter"),
               "Put the previewed bowing in the place of this one", page_only=True),
    ActionSpec("plan_take_new", "Ta&ke the preview as a new bowing", ("Shift+Return", "Shift+Enter"),
               "Keep this bowing and add the previewed one", page_only=True),
    ActionSpec("plan_take_bars", "Take this &bar of the preview only", ("Alt+Return", "Alt+Enter"),
               "Take the bar of the marked note, or those of the selection, and drop the others", page_only=True),
    ActionSpec("plan_drop", "&Drop the preview", ("Esc",), "Show the bowing as it is again", page_only=True),
    ActionSpec("finding_next", "&Next finding", ("F8",), "Show the next thing that the check found"),
    ActionSpec("finding_previous", "&Previous finding", ("Shift+F8",), "Show the thing found before this one"),
    ActionSpec("mend", "&Mend the chosen finding", ("Ctrl+Return",), "Do the first that the chosen finding offers"),
    ActionSpec("tell_as_note", "Tell its rule as a no&te", (), "Tell what this rule finds as notes"),
    ActionSpec("tell_not", "&Do not tell its rule", (), "Do not tell in this lesson what this rule finds"),
    ActionSpec("tell_all", "Tell &all rules as they are", (), "Tell again what was turned down in this lesson"),
    ActionSpec("bow_and_fiddle", "Bow and &fiddle…", ("Ctrl+Shift+F",),
               "Set the length of the hair, bow speeds, tempo and strings that this lesson is checked by"),
    ActionSpec("tune_set", "&Set of tunes…", ("Ctrl+T",), "Put tunes together in a set and see how the bow goes on"),
    ActionSpec("play", "&Play", ("F5", "Media Play"), "Play from the bar of the marked note on, or stop", "play"),
    ActionSpec("play_start", "Play from the &beginning", ("Shift+F5",), "Play from the first bar that is to be played"),
    ActionSpec("play_bars", "Play these bars rou&nd and round", ("Ctrl+F5",),
               "Play the bars of the selection, or that of the marked note, round and round"),
    ActionSpec("play_round", "&Round and round", ("Ctrl+F6",), "Begin again at the end", is_switch=True, short="Round"),
    ActionSpec("play_all", "All b&ars", (), "Play the whole tune with its repeats"),
    ActionSpec("play_set", "The set of &tunes", (), "Play the set in the place of the open tune", is_switch=True),
    ActionSpec("slower", "&Slower", ("F6",), "Play slower by five percent of the tempo"),
    ActionSpec("faster", "&Faster", ("F7",), "Play faster by five percent of the tempo"),
    ActionSpec("ladder", "Practice &ladder", ("Ctrl+F7",), "Play again and again, each time a little faster",
               is_switch=True, short="Ladder"),
    *(
        ActionSpec(f"hear_{part}", text, (f"Ctrl+{number}",), text, is_switch=True, where=HEARD)
        for number, (part, text) in enumerate(PARTS.items(), 1)
    ),
    ActionSpec("player", "Pla&yer over the page", (), "Show what is played, how fast, and the bow", is_switch=True),
    ActionSpec("shelf", "S&helf", ("Ctrl+L",), "Find a lesson or a tune of a book on your shelf", is_switch=True),
    ActionSpec("zoom_in", "Zoom &in", (Standard.ZoomIn, "Ctrl+="), "Show the page larger", "zoom-in"),
    ActionSpec("zoom_out", "Zoom &out", (Standard.ZoomOut,), "Show the page smaller", "zoom-out"),
    ActionSpec("zoom_fit", "&Fit the width", ("Ctrl+0",), "As wide as the window has room for", "fit"),
    ActionSpec("marks_every", "&Every stroke", (), "A bow mark on every stroke", group="marks"),
    ActionSpec("marks_bars", "Where each &bar begins", (), "A bow mark on the first stroke of each bar", group="marks"),
    ActionSpec("marks_needed", "Only where &needed", (), "Only the bow marks needed to read the rest", group="marks"),
    ActionSpec("strip", "&Accents under the staff", (), "Show how each accented place is met", is_switch=True),
    ActionSpec("trace", "Bow from fro&g to tip", (), "Show where on the hair each stroke lies", is_switch=True),
    ActionSpec("look_system", "As the s&ystem", (), "Light or dark as the system is", group="look"),
    ActionSpec("look_light", "&Light", (), "Dark ink on light paper", group="look"),
    ActionSpec("look_dark", "&Dark", (), "Light ink on dark paper", group="look"),
    ActionSpec("language_system", "As the s&ystem", (), "The language of the system, from the next start on",
               group="language"),
    ActionSpec("language_en", "&English", (), "English, from the next start on", group="language"),
    ActionSpec("language_de", "&Deutsch", (), "German, from the next start on", group="language"),
    ActionSpec("manual", "&Manual", (Standard.HelpContents,), "Read how everything is done, with pictures"),
    ActionSpec("keys", "&Keys and gestures", ("Ctrl+F1",), "What mouse and keys do on the page"),
    ActionSpec("tour", "&Tour of the window", (), "Be led through the parts of the window"),
    ActionSpec("whats_this", "&What is this?", (Standard.WhatsThis,), "Learn what anything in the window is: click it"),
    ActionSpec("about", "&About Bowbench", (), "Version, and the licences of all that the program is made of"),
)  # fmt: skip

SEPARATOR = "-"
MenuItems = tuple["str | Menu", ...]
"""Names of actions, separators, and menus inside. A name of no action is a menu that the window fills."""


class Menu(NamedTuple):
    """A menu: its title and what it holds."""

    title: str
    items: MenuItems


PLAN_ITEMS: MenuItems = tuple(
    Menu(words, tuple(f"plan_{extent}_{plan}" for plan in PLANS)) for extent, words in EXTENTS.items()
)
STRIP_ITEMS: MenuItems = ("accent", SEPARATOR, *PLAN_ITEMS)
NOTE_ITEMS: MenuItems = (
    "slur", "hook", "separate", SEPARATOR, "turn", "down", "up", "free", "retake", SEPARATOR,
    "pass_all", "pass_1", "pass_2", "pass_3", "pass_4", SEPARATOR,
    Menu("&Ornaments", ("ornament_cut", "ornament_roll", "ornament_turn", "ornament_triplet")),
    Menu("&Accents", STRIP_ITEMS),
)  # fmt: skip
MENUS: tuple[Menu, ...] = (
    Menu("&File", ("open", "recent", "recover", SEPARATOR, "save", "save_as", SEPARATOR, "preview", "print",
                   "export_pdf", "export_abc", SEPARATOR, "pack", SEPARATOR, "close")),
    Menu("&Edit", ("undo", "redo", SEPARATOR, "paste")),
    Menu("&Note", NOTE_ITEMS),
    Menu("&Bowing", ("bowing_add", "bowing_copy", "bowing_rename", "bowing_up", "bowing_down", "bowing_delete",
                     SEPARATOR, "bowing_next", "bowing_previous", SEPARATOR, "compare", "compare_with",
                     "compare_reference")),
    Menu("&Plan", ("plan", "plan_onward", "carry_on", SEPARATOR, "plan_take", "plan_take_new", "plan_take_bars",
                   "plan_drop", SEPARATOR, "plan_compare", "plan_versions", SEPARATOR, "style_words", "learn_style",
                   SEPARATOR, "planner")),
    Menu("Pla&y", ("play", "play_start", "play_bars", SEPARATOR, "play_round", "play_all", "play_set", SEPARATOR,
                   "slower", "faster", "ladder", SEPARATOR,
                   Menu("&Heard", ("hear_fiddle", "hear_backing", "hear_click", "hear_count-in")), "player")),
    Menu("&Check", ("finding_next", "finding_previous", "mend", SEPARATOR, "tell_as_note", "tell_not", "tell_all",
                    SEPARATOR, "tune_set", "bow_and_fiddle")),
    Menu("&View", ("shelf", SEPARATOR, "zoom_fit", "zoom_in", "zoom_out", SEPARATOR,
                   "strip", "trace", Menu("&Bow marks", ("marks_every", "marks_bars", "marks_needed")),
                   Menu("&Colours", ("look_system", "look_light", "look_dark")),
                   Menu("Lang&uage", ("language_system", "language_en", "language_de")))),
    Menu("&Help", ("manual", "keys", "tour", "whats_this", SEPARATOR, "about")),
)  # fmt: skip
RECENT, COMPARE_WITH = "recent", "compare_with"
OPEN_MENUS = translatable({RECENT: "Open &recent", COMPARE_WITH: "Compare &with"})  # menus that the window fills
TOOL_BAR = (
    "open", "save", SEPARATOR, "undo", "redo", SEPARATOR, "slur", "hook", "separate", "turn", "free", "retake",
    SEPARATOR, "plan", "play", SEPARATOR, "zoom_out", "zoom_fit", "zoom_in", SEPARATOR, "print",
)  # fmt: skip
SHOW_STATE = frozenset({"play"})  # drawn by the desk that knows
ICON_SIZE = 20  # pixels
ICON_ONLY = frozenset({"undo", "redo", "zoom_out", "zoom_fit", "zoom_in"})


def make_actions(parent: QWidget, page: QWidget, handlers: Mapping[str, Callable[[], object]]) -> dict[str, QAction]:
    """Make all actions.

    Args:
        parent: The window.
        page: The widget to whose focus the keys of the ``page_only`` actions are bound.
        handlers: What each action does, by name.
    Raises:
        KeyError: an action has no handler.
    """
    actions = {}
    groups: dict[str, QActionGroup] = {}
    for spec in ACTIONS:
        action = QAction(tr(spec.text), parent)
        action.setObjectName(spec.name)
        action.setIconText(plain(spec.short or spec.text))
        action.setShortcuts([sequence for key in spec.keys for sequence in _sequences(key)])
        if spec.group:
            group = groups.setdefault(spec.group, QActionGroup(parent))
            group.addAction(action)
        action.setCheckable(bool(spec.group) or spec.is_switch)
        if spec.page_only:
            action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
            page.addAction(action)
        else:
            parent.addAction(action)
        handler = handlers[spec.name]
        action.triggered.connect(lambda _=False, do=handler: do())
        actions[spec.name] = action
    return actions


def tell_tips(actions: Mapping[str, QAction]) -> None:
    """Give all actions their tips."""
    for spec in ACTIONS:
        action = actions[spec.name]
        action.setStatusTip(told_tip(spec))
        action.setToolTip(tool_tip(spec, action))


def _sequences(key: Key) -> list[QKeySequence]:
    return QKeySequence.keyBindings(key) if isinstance(key, Standard) else [QKeySequence(key)]


def plain(text: str) -> str:
    """A text of the table as it is read, without the sign before the letter that opens it."""
    return tr(text).replace("&", "")


def told_tip(spec: ActionSpec) -> str:
    """The tip of an action, for the status line."""
    tip = plain(spec.tip)
    return tr("{where}: {tip}", "tip of an action", where=plain(spec.where), tip=tip) if spec.where else tip


def tool_tip(spec: ActionSpec, action: QAction) -> str:
    """The tip of an action with its first key."""
    key = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
    return tr("{tip} ({key})", tip=told_tip(spec), key=key) if key else told_tip(spec)


def fill_menu_bar(bar: QMenuBar, actions: Mapping[str, QAction]) -> dict[str, QMenu]:
    """Build all menus.

    Returns:
        The menus that the window fills itself, by name.
    """
    MenuKeys(bar)
    open_menus: dict[str, QMenu] = {}
    for title, items in MENUS:
        fill_menu(bar.addMenu(tr(title)), items, actions, open_menus)
    return open_menus


def fill_menu(
    menu: QMenu, items: MenuItems, actions: Mapping[str, QAction], open_menus: dict[str, QMenu] | None = None
) -> None:
    """Build one menu and those inside it."""
    MenuKeys(menu)
    for item in items:
        if isinstance(item, Menu):
            fill_menu(menu.addMenu(tr(item.title)), item.items, actions, open_menus)
        elif item == SEPARATOR:
            menu.addSeparator()
        elif item in actions:
            menu.addAction(actions[item])
        elif open_menus is not None:
            open_menus[item] = menu.addMenu(tr(OPEN_MENUS[item]))


def fill_tool_bar(bar: QToolBar, actions: Mapping[str, QAction]) -> None:
    """Build the tool bar: words beside the drawings, drawings alone where they speak for themselves."""
    for name in TOOL_BAR:
        if name == SEPARATOR:
            bar.addSeparator()
            continue
        bar.addAction(actions[name])
        button = bar.widgetForAction(actions[name])
        if isinstance(button, QToolButton):
            style = Qt.ToolButtonStyle
            button.setToolButtonStyle(style.ToolButtonIconOnly if name in ICON_ONLY else style.ToolButtonTextBesideIcon)
            button.setAccessibleName(actions[name].iconText())
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)


def set_icons(actions: Mapping[str, QAction], theme: Theme) -> None:
    """Draw the icons in a theme's colours, but for those that show what is going on."""
    for spec in ACTIONS:
        if spec.icon and spec.name not in SHOW_STATE:
            actions[spec.name].setIcon(draw_icon(spec.icon, theme))


def set_first_icons(actions: Mapping[str, QAction], theme: Theme, ratio: float) -> None:
    """Draw what the first picture of the window shows of the icons, for a screen of this many pixels a point.

    Nothing but the tool bar is in sight then; ``set_icons`` follows.
    """
    for spec in ACTIONS:
        if spec.icon and spec.name in TOOL_BAR and spec.name not in SHOW_STATE:
            size = ceil(ICON_SIZE * ratio)
            svg = resource("icons", f"{spec.icon}.svg").read_text("utf-8")
            actions[spec.name].setIcon(tinted_icon(svg, {QIcon.Mode.Normal: theme.text}, (size,)))


def draw_icon(name: str, theme: Theme, sizes: Sequence[int] = (ICON_SIZE, 2 * ICON_SIZE, 3 * ICON_SIZE)) -> QIcon:
    """A drawing of ``resources/icons`` in a theme's colours, in sizes of pixels."""
    colours = {
        QIcon.Mode.Normal: theme.text,
        QIcon.Mode.Disabled: mix(theme.text, theme.panel, 0.35).name(),
    }
    return tinted_icon(resource("icons", f"{name}.svg").read_text("utf-8"), colours, sizes)
