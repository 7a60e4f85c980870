"""The window: makes the parts, and passes on what one part has to say to another.

Parts never write to each other. What they say goes through signals to here; what changes the lesson goes to the
document, whose announcement every part follows by itself. A *desk* puts one part to work: it says what the part's
actions do (``handlers``) and shows in them what can be done (``use``).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QMainWindow, QWidget

from app import overrides  # noqa: F401  before any class of ours below one of Qt
from app.actions import ACTIONS, COMPARE_WITH, MENUS, RECENT, fill_menu_bar, fill_tool_bar, make_actions, tell_tips
from app.bow_trace import BowTrace
from app.bowings_pane import BowingsPane
from app.comparison import Comparison
from app.comparison_desk import ComparisonDesk
from app.dialogs import Dialogs
from app.document import Document, State
from app.exporting import Exporting
from app.file_news import FileNews
from app.help_desk import HelpDesk
from app.later import Later
from app.lesson_file import LessonFile
from app.looks import Looks
from app.notice import Notice
from app.opening import Opening
from app.page_area import PageArea
from app.page_desk import PageDesk
from app.page_view import PageView
from app.plan_desk import PlanDesk
from app.player_desk import PlayerDesk
from app.preview_banner import PreviewBanner
from app.recovery import Recovery
from app.recovery_offer import RecoveryOffer
from app.saving import Saving
from app.set_list import SetList
from app.settings import Settings
from app.shelf_dock import ShelfDock
from app.side_list import SideList
from app.side_tabs import SideTabs
from app.undo_desk import UndoDesk
from app.way_in import WayIn
from app.welcome import Welcome
from app.whats_this import tell_commands, tell_menus, tell_parts, tell_toggles
from app.window_layout import WindowLayout
from core.check import Finding, Severity
from core.engraving.engraver import Engraver
from core.translation import tr

if TYPE_CHECKING:
    from app.pack_dialog import PackDialog
    from app.plan_pane import PlanPane
    from app.set_window import SetWindow

NEED_NO_LESSON = frozenset((
    "tune_set", "pack", "open", "recover", "paste", "shelf", "learn_style", "close", "undo", "redo",
    "manual", "keys", "tour", "whats_this", "about",
))  # fmt: skip
"""Actions that can be chosen while none is open."""


class MainWindow(QMainWindow):
    """One lesson in one window.

    Args:
        settings: What is remembered; the user's own where None.
        dialogs: Asks the user; tests give one that answers by itself.
        later: What waits until the window is painted for the first time; nothing where None.
        engraver: Engraves the page; one of its own where None.
    """

    def __init__(
        self,
        settings: Settings | None = None,
        dialogs: Dialogs | None = None,
        later: Later | None = None,
        engraver: Engraver | None = None,
    ) -> None:
        super().__init__()
        self.later = later or Later()
        self._settings = settings or Settings()
        self._dialogs = dialogs or Dialogs()
        self._make_models()
        self._make_views(engraver)
        self._make_desks()
        self._name_what_is_asked_of_it()
        self._make_actions()
        self._connect()
        self._restore()

    # ------------------------------------------------------------------------------------------------- making

    def _make_models(self) -> None:
        """What knows something and is not seen."""
        settings, dialogs = self._settings, self._dialogs
        self.document = document = Document(self)
        self.comparison = Comparison(document, self)  # knows of a change before the views do
        self.file = file = LessonFile(document, parent=self)
        self.recovery = Recovery(document, lambda: file.known, parent=self)
        self.sets = SetList(document, self)
        self.saving = Saving(document, file, dialogs, lambda: settings.folder, self)
        self.way_in = WayIn(document, file, self.sets, self.saving, self)
        self.opening = Opening(document, self.way_in, dialogs, settings, self)
        self.news = FileNews(document, file, self.saving.save, self.opening.open_path, self)
        self.left_behind = RecoveryOffer(self.way_in, self.recovery, dialogs, self)
        self.exporting = Exporting(document, self.sets, dialogs, settings, self)

    def _make_views(self, engraver: Engraver | None) -> None:
        """What is seen of it."""
        self.page = PageView(self.document, engraver, comparison=self.comparison)
        self.area = PageArea(self.page)
        self.side_list = SideList(self.document, comparison=self.comparison, later=self.later)
        self.bowings = BowingsPane(self.document, comparison=self.comparison)
        self.tabs = SideTabs(self.side_list, tr("Bow check"))
        self.banner = PreviewBanner()
        self.trace = BowTrace(self.document)
        self.trace.hide()  # until there is a lesson
        self.notice = Notice()
        self.welcome = Welcome()
        self.shelf = ShelfDock(self)
        self.set_window: SetWindow | None = None  # made when it is first wanted
        self.pack_dialog: PackDialog | None = None  # and so is this

    def _make_desks(self) -> None:
        """What puts the views to work, and where they stand."""
        self.looks = Looks(self._settings, self.area, self.trace, self, self.later)
        self.notes = PageDesk(self.page, self)
        self.comparing = ComparisonDesk(self.document, self.comparison, self.page, self)
        self.planning = PlanDesk(self.document, self.tabs, self.banner, self.page, self._settings, self)
        self.undoing = UndoDesk(self.document, self.planning, self)
        self.playing = PlayerDesk(self.document, self.sets, self._settings, self.page, self)
        self._layout = WindowLayout(
            self,
            welcome=self.welcome,
            page=self.area,
            over=(self.notice, self.banner),
            under=(self.playing.place, self.trace),
            side=(self.bowings, self.tabs),
            dock=self.shelf,
        )
        self._hint = self._layout.hint
        self.tool_bar = self._layout.tool_bar
        self.helping = HelpDesk(self, self._dialogs, self._settings)
        self.setAcceptDrops(True)
        QWidget.setTabOrder(self.page, self.bowings.list)

    def _name_what_is_asked_of_it(self) -> None:
        opening, exporting = self.opening, self.exporting
        self.open_path, self.open_entry, self.open_sample = opening.open_path, opening.open_entry, opening.open_sample
        self.open_pasted, self.offer_left_behind = opening.open_pasted, self.left_behind.offer
        self.greet = self.helping.greet
        self.save, self.save_as, self.print_lesson = self.saving.save, self.saving.save_as, exporting.print_lesson
        self.undo, self.show_planner, self.set_look = self.undoing.undo, self.planning.show_planner, self.looks.set_look

    def _make_actions(self) -> None:
        self.actions_by_name = actions = make_actions(self, self.page, self._handlers())
        self._open_menus = open_menus = fill_menu_bar(self.menuBar(), actions)
        open_menus[RECENT].aboutToShow.connect(partial(self.opening.fill_recent, open_menus[RECENT]))
        fill_tool_bar(self.tool_bar, actions)
        self.looks.use(actions)
        self.notes.use(actions)
        self.comparing.use(actions, open_menus[COMPARE_WITH])
        self.planning.use(actions)
        self.undoing.use(actions)
        self.playing.use(actions)
        self.helping.use(actions)
        self.later.do(self._tell_what_it_is)

    def _handlers(self) -> dict[str, Callable[[], object]]:
        bowings, side_list = self.bowings, self.side_list
        handlers: dict[str, Callable[[], object]] = {
            "save": self.saving.save,
            "save_as": self.saving.save_as,
            "recover": partial(self.left_behind.offer, asked=True),
            "pack": self.show_pack,
            "close": self.close,
            "bowing_add": bowings.add,
            "bowing_copy": bowings.copy,
            "bowing_rename": bowings.start_renaming,
            "bowing_up": partial(bowings.move_by, -1),
            "bowing_down": partial(bowings.move_by, 1),
            "bowing_delete": bowings.delete,
            "bowing_next": partial(bowings.show_by, 1),
            "bowing_previous": partial(bowings.show_by, -1),
            "bow_and_fiddle": self.set_bow_and_fiddle,
            "finding_next": partial(side_list.step, 1),
            "finding_previous": partial(side_list.step, -1),
            "mend": side_list.apply_remedy,
            "tell_as_note": partial(side_list.turn_down, Severity.NOTE),
            "tell_not": partial(side_list.turn_down, None),
            "tell_all": side_list.tell_all,
            "tune_set": self.show_set,
            "shelf": self.shelf.toggle,
            "learn_style": self.shelf.learn_style,
        }
        for desk in (self.opening, self.exporting, self.looks, self.notes, self.comparing, self.planning, self.undoing,
                     self.playing, self.helping):  # fmt: skip
            handlers |= desk.handlers()
        return handlers

    def _tell_what_it_is(self) -> None:
        """Tips, and help in place, for every part, command and menu."""
        tell_tips(self.actions_by_name)
        tell_parts({
            "page": self.area, "welcome": self.welcome, "notice": self.notice, "banner": self.banner,
            "trace": self.trace, "player": self.playing.place, "bowings": self.bowings, "check": self.side_list,
            "tabs": self.tabs, "shelf": self.shelf, "tools": self.tool_bar,
            "status": self.statusBar(),
        })  # fmt: skip
        tell_commands(self.actions_by_name.values())
        tell_menus(self.menuBar(), MENUS)
        tell_toggles((self.tool_bar, self.shelf))

    def _connect(self) -> None:
        for part in (self.page, self.trace, self.side_list, self.bowings, self.shelf, self.saving, self.opening,
                     self.left_behind, self.exporting, self.looks, self.comparing, self.planning,
                     self.playing):  # fmt: skip
            part.hinted.connect(self._show_hint)
        for part in (self.shelf, self.saving, self.opening, self.news, self.left_behind, self.exporting):
            part.told.connect(self.notice.say)
        self.recovery.failed.connect(self.notice.say)
        self.page.note_focused.connect(self.side_list.show_note)
        self.page.note_focused.connect(self.trace.show_note)
        self.trace.note_wanted.connect(self.page.focus_on)
        self.side_list.finding_chosen.connect(self._on_finding_chosen)
        self.side_list.remedy_pointed.connect(self.page.preview_remedy)
        self.planning.made.connect(lambda pane: tell_parts({"plan": pane}))
        self.planning.previewed.connect(self.trace.show_plan)
        self.planning.previewed.connect(self.playing.show_plan)
        self.planning.room_wanted.connect(self._layout.widen_side)
        self.looks.zoom_told.connect(self._on_zoom_told)
        for part in (self.page, self.side_list, self.trace, self.playing):
            self.looks.theme_changed.connect(part.set_theme)
        self.shelf.opened.connect(self.opening.open_entry)
        self.shelf.folder_wanted.connect(self.ask_and_shelve)
        self.shelf.learned.connect(self.planning.use_style)
        self.shelf.left.connect(self._focus_work)
        self.shelf.visibilityChanged.connect(self.actions_by_name["shelf"].setChecked)
        self.welcome.open_wanted.connect(self.opening.ask_and_open)
        self.welcome.paste_wanted.connect(self.opening.open_pasted)
        self.welcome.file_chosen.connect(self.opening.open_path)
        self.welcome.sample_chosen.connect(self.opening.open_sample)
        self.opening.read.connect(self.shelf.note_opened)
        self.way_in.opened.connect(self._on_opened)
        self.saving.saved.connect(self._on_saved)
        self.document.lesson_changed.connect(self._on_lesson_changed)
        self.document.modified_changed.connect(self._show_title)
        self.document.path_changed.connect(self._show_title)
        stack = self.document.stack
        for changed in (stack.canUndoChanged, stack.canRedoChanged, stack.indexChanged):
            changed.connect(self._on_stack_changed)

    def _restore(self) -> None:
        self._layout.restore(self._settings)
        self.planning.show_planner(self._settings.planner)
        self.tabs.choose(self.side_list)
        self.looks.restore()
        self.welcome.show_recent(self._settings.recent_files)
        self.welcome.open_button.setFocus()
        self._enable_actions()
        self._show_title()

    @property
    def plan(self) -> PlanPane:
        """The planner, made now if it was not wanted before."""
        return self.planning.pane

    # ------------------------------------------------------------------------------------------------- doing

    def ask_and_shelve(self) -> None:
        """Ask for a folder and put it on the shelf."""
        folder = self._dialogs.folder_to_shelve(self, self._settings.folder)
        if folder is not None:
            self.shelf.add_places([folder])

    def set_bow_and_fiddle(self) -> None:
        """Ask what the lesson assumes of bow, tempo and strings, and set it as one undo step."""
        state = self.document.state
        if state is None:
            return
        choice = self._dialogs.bow_and_fiddle(self, state.lesson)
        if choice is not None:
            changed = replace(state.lesson, reach=choice[0], tuning=choice[1])
            self.document.change(tr("Bow and fiddle"), lambda _: changed, state.shown)

    def show_pack(self) -> None:
        """Show what goes into a lesson pack, or how far the one is that is being made."""
        if self.pack_dialog is None:
            from app.pack_dialog import PackDialog  # not for the window's start

            self.pack_dialog = PackDialog(self.document, self._settings, self._dialogs, self)
        self.pack_dialog.present()

    def show_set(self) -> None:
        """Show the set of tunes beside the page."""
        if self.set_window is None:
            from app.set_window import SetWindow

            self.set_window = SetWindow(self.sets, self.document, self._settings, self._dialogs, self)
            self.set_window.hinted.connect(self._show_hint)
            self.set_window.notes_wanted.connect(self.page.mark_notes)
            self.set_window.set_theme(self.looks.theme)
            self.looks.theme_changed.connect(self.set_window.set_theme)
        self.set_window.show()
        self.set_window.raise_()
        self.set_window.activateWindow()

    # ------------------------------------------------------------------------------------------------- passing on

    def _on_opened(self) -> None:
        self.notice.hide()  # it was about another lesson
        self.page.setFocus()

    def _on_saved(self, path: Path) -> None:
        self.notice.hide()
        self.shelf.read_again(path)
        self._settings.remember_file(path)

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None:
            self._layout.show_page()
            self.looks.show_trace()
            self._enable_actions()
        if before is None or before.tune is not after.tune:
            self._show_title()
        if before is None or before.tune is not after.tune or before.shown != after.shown:
            self._show_hint("")  # what was said is of another bowing

    def _on_stack_changed(self) -> None:
        self.undoing.show_state()  # the stack tells of its own end too, when the window alone hears no more

    def _on_finding_chosen(self, finding: Finding | None) -> None:
        if finding is None:
            self.page.mark_notes((), Severity.NOTE)
        else:
            self.page.mark_notes(finding.notes, finding.severity)

    def _on_zoom_told(self, words: str) -> None:
        if self.document.state is not None:
            self._layout.zoom.setText(words)

    def _focus_work(self) -> None:
        if self.document.state is None:
            self.welcome.open_button.setFocus()
        else:
            self.page.setFocus()

    # ------------------------------------------------------------------------------------------------- showing

    def _show_hint(self, text: str) -> None:
        self._hint.setText(text or self.page.accessibleDescription())

    def _show_title(self) -> None:
        state = self.document.state
        self.setWindowTitle(
            "Bowbench" if state is None else tr("{title}[*] – Bowbench", title=state.tune.title or tr("Untitled"))
        )
        self.setWindowModified(state is not None and self.document.is_modified)
        self.setWindowFilePath(str(self.document.path) if self.document.path is not None else "")

    def _enable_actions(self) -> None:
        for spec in ACTIONS:
            if spec.name not in NEED_NO_LESSON and not spec.group:
                self.actions_by_name[spec.name].setEnabled(self.document.state is not None)
        self.planning.show_state()
        self.comparing.show_state()

    # ------------------------------------------------------------------------------------------------- Qt events

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button that has the keyboard, as it does in dialogs."""
        focus = self.focusWidget()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and isinstance(focus, QAbstractButton):
            focus.click()
        else:
            super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        urls = event.mimeData().urls()
        if len(urls) == 1 and urls[0].isLocalFile():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        event.acceptProposedAction()
        self.open_path(Path(event.mimeData().urls()[0].toLocalFile()))

    def closeEvent(self, event: QCloseEvent) -> None:
        event.ignore()  # a mistake while it is asked must not close the window over unsaved work
        if not self.saving.may_leave():
            return
        event.accept()
        if self.set_window is not None:
            self.set_window.close()
        if self.pack_dialog is not None:
            self.pack_dialog.work.close()
            self.pack_dialog.close()
        self.planning.close_down()
        self.playing.close_down()
        self.helping.close_down()
        self._layout.remember(self._settings)
        self.shelf.end()
        self.recovery.end()
        self.file.end()
        event.accept()
