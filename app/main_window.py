"""The window: puts the parts together, opens and saves, and passes on what one part has to say to another.

Parts never write to each other. What they say goes through signals to here; what changes the lesson goes to the
document, whose announcement every part follows by itself.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QSize, Qt
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication, QKeySequence
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QMainWindow,
    QMenu,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QStatusBar,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from app.actions import (
    ACTIONS,
    COMPARE_WITH,
    NOTE_ITEMS,
    PLANS,
    RECENT,
    STRIP_ITEMS,
    MenuItems,
    fill_menu,
    fill_menu_bar,
    fill_tool_bar,
    make_actions,
    set_icons,
)
from app.bow_trace import BowTrace
from app.bowings_pane import BowingsPane
from app.comparison import Comparison
from app.dialogs import Dialogs
from app.document import Document, State
from app.files import (
    ABC_SUFFIX,
    FileError,
    is_slow_to_read,
    read_known,
    save_abc,
    suggested_name,
)
from app.gestures import NOTE_TIPS, SIGN_TIPS
from app.imprint import Imprint
from app.lesson_file import Change, LessonFile
from app.notice import Notice
from app.page_area import PageArea
from app.page_view import PageView
from app.plan_pane import PlanPane
from app.plan_preview import PlanPreview
from app.player_desk import PlayerDesk
from app.preview_banner import PreviewBanner
from app.printing import print_sheet_of, write_sheet
from app.proposals import Extent
from app.recovery import Recovery
from app.recovery_copy import Left
from app.recovery_dialog import about
from app.saving import Saving
from app.set_list import SetList
from app.set_window import SetWindow
from app.settings import Look, Settings
from app.sheet import Printed
from app.sheet_dialog import SheetChoice, Way, printed
from app.shelf_dock import ShelfDock
from app.side_list import SideList
from app.side_tabs import SideTabs
from app.theme import Theme, apply_theme, choose_theme
from app.welcome import Welcome
from core.accent_plan import PlanKind
from core.bowing import Bow, Ornament
from core.check import Finding, Severity
from core.engraving.bow_signs import MarkDensity
from core.errors import RefusedEditError, UnreadableFileError
from core.reading import Reading, read_file
from core.shelf.search import Entry, lesson_of

if TYPE_CHECKING:
    from app.pack_dialog import PackDialog

SIDE_WIDTH, SIDE_LEAST = 350, 280
FIRST_SIZE = (1280, 820)
FRAME = QSize(8, 40)  # what the system puts round a window, about
LEAST_PAGE = 160  # pixels of height
PASTED = "The pasted text"


class MainWindow(QMainWindow):
    """One lesson in one window.

    Args:
        settings: What is remembered; the user's own where None.
        dialogs: Asks the user; tests give one that answers by itself.
    """

    def __init__(self, settings: Settings | None = None, dialogs: Dialogs | None = None) -> None:
        super().__init__()
        self._settings = settings or Settings()
        self._dialogs = dialogs or Dialogs()
        self.document = Document(self)
        self.comparison = Comparison(self.document, self)  # knows of a change before the views do
        self.file = LessonFile(self.document, parent=self)
        self.recovery = Recovery(self.document, lambda: self.file.known, parent=self)
        self.saving = Saving(self.document, self.file, self._dialogs, lambda: self._settings.folder, self)
        self.sets = SetList(self.document, self)
        self.set_window: SetWindow | None = None  # made when it is first wanted
        self.pack_dialog: PackDialog | None = None  # and so is this
        self._note_menu: QMenu | None = None
        self.page = PageView(self.document, comparison=self.comparison)
        self.page.set_density(MarkDensity(self._settings.marks))
        self.area = PageArea(self.page)
        self.side_list = SideList(self.document, comparison=self.comparison)
        self.bowings = BowingsPane(self.document, comparison=self.comparison)
        self.plan = PlanPane(self.document, self._settings, lambda: self.page.selection)
        self.tabs = SideTabs(self.side_list, (self.plan,), ("Bow check", "Plan"))
        self.banner = PreviewBanner()
        self.trace = BowTrace(self.document)
        self.playing = PlayerDesk(self.document, self.sets, self._settings, self.page, self)
        self.notice = Notice()
        self.welcome = Welcome()
        self.shelf = ShelfDock(self)
        self._build()
        self.actions_by_name = make_actions(self, self.page, self._handlers())
        self._open_menus = fill_menu_bar(self.menuBar(), self.actions_by_name)
        self._open_menus[RECENT].aboutToShow.connect(self._fill_recent_menu)
        self._open_menus[COMPARE_WITH].aboutToShow.connect(self._fill_compare_menu)
        fill_tool_bar(self._tool_bar, self.actions_by_name)
        self.playing.use(self.actions_by_name)
        self._connect()
        self._restore()
        self._show_title()
        self._show_stack_texts()

    # ------------------------------------------------------------------------------------------------- building

    def _build(self) -> None:
        self._tool_bar = QToolBar("Tools")
        self._tool_bar.setObjectName("tools")
        self._tool_bar.setMovable(False)
        self._tool_bar.setFloatable(False)
        self._tool_bar.setIconSize(QSize(20, 20))
        self.addToolBar(self._tool_bar)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.welcome)
        self._stack.addWidget(self.area)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.notice)
        column.addWidget(self.banner)
        column.addWidget(self._stack, 1)
        column.addWidget(self.playing.bar)
        column.addWidget(self.trace)
        self.trace.hide()  # until there is a lesson
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.bowings)
        column.addWidget(self.tabs, 1)
        right.setMinimumWidth(SIDE_LEAST)
        self._splitter = QSplitter(Qt.Orientation.Horizontal)
        self._splitter.addWidget(left)
        self._splitter.addWidget(right)
        self._splitter.setStretchFactor(0, 1)
        self._splitter.setStretchFactor(1, 0)
        self._splitter.setCollapsible(0, False)
        self._splitter.setSizes([FIRST_SIZE[0] - SIDE_WIDTH, SIDE_WIDTH])
        self.setCentralWidget(self._splitter)
        self.addDockWidget(Qt.DockWidgetArea.LeftDockWidgetArea, self.shelf)
        self._side = right
        self._side.hide()  # until there is a lesson
        status = QStatusBar()
        status.setSizeGripEnabled(False)
        status.setContentsMargins(12, 0, 14, 0)
        self._hint = QLabel()
        self._hint.setAccessibleName("What the pointer would do")
        self._hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)  # a long one widens nothing
        self._zoom_label = QLabel()
        self._zoom_label.setProperty("rank", "quiet")
        status.addWidget(self._hint, 1)
        status.addPermanentWidget(self._zoom_label)
        self.setStatusBar(status)
        self.setAcceptDrops(True)
        QWidget.setTabOrder(self.page, self.bowings.list)

    def _handlers(self) -> dict[str, Callable[[], object]]:
        page, bowings = self.page, self.bowings
        handlers: dict[str, Callable[[], object]] = {
            "open": self.ask_and_open,
            "save": self.save,
            "save_as": self.save_as,
            "recover": partial(self.offer_left_behind, asked=True),
            "print": self.print_lesson,
            "preview": partial(self.print_lesson, Way.KEEP),
            "export_pdf": partial(self.print_lesson, Way.EXPORT),
            "export_abc": self.export_abc,
            "pack": self.show_pack,
            "close": self.close,
            "undo": self.undo,
            "redo": self.document.stack.redo,
            "paste": self.open_pasted,
            "slur": page.toggle_slur,
            "separate": page.separate,
            "hook": page.hook,
            "turn": page.turn,
            "down": partial(page.fix, Bow.DOWN),
            "up": partial(page.fix, Bow.UP),
            "free": page.free,
            "retake": page.retake,
            "pass_all": partial(page.limit, None),
            "accent": page.toggle_accent,
            "ornament_cut": partial(page.toggle_ornament, Ornament.CUT),
            "ornament_roll": partial(page.toggle_ornament, Ornament.ROLL),
            "ornament_turn": partial(page.toggle_ornament, Ornament.TURN),
            "ornament_triplet": partial(page.toggle_ornament, Ornament.BOWED_TRIPLET),
            "strip": self.toggle_strip,
            "trace": self.toggle_trace,
            "bow_and_fiddle": self.set_bow_and_fiddle,
            "bowing_add": bowings.add,
            "bowing_copy": bowings.copy,
            "bowing_rename": bowings.start_renaming,
            "bowing_up": partial(bowings.move_by, -1),
            "bowing_down": partial(bowings.move_by, 1),
            "bowing_delete": bowings.delete,
            "bowing_next": partial(bowings.show_by, 1),
            "bowing_previous": partial(bowings.show_by, -1),
            "compare": self.toggle_comparison,
            "compare_reference": self.tell_from_this,
            "plan": self.work_out_plan,
            "plan_onward": self.mend_from_here,
            "planner": self.toggle_planner,
            "plan_compare": self.compare_accents,
            "plan_versions": self.plan.add_starting_versions,
            "plan_take": self.plan.take,
            "plan_take_new": self.plan.take_as_new,
            "plan_drop": self.plan.drop,
            "finding_next": partial(self.side_list.step, 1),
            "finding_previous": partial(self.side_list.step, -1),
            "mend": self.side_list.apply_remedy,
            "tell_as_note": partial(self.side_list.turn_down, Severity.NOTE),
            "tell_not": partial(self.side_list.turn_down, None),
            "tell_all": self.side_list.tell_all,
            "tune_set": self.show_set,
            "shelf": self.shelf.toggle,
            "zoom_in": self.area.zoom_in,
            "zoom_out": self.area.zoom_out,
            "zoom_fit": self.area.fit_width,
            "keys": self.show_keys,
            "about": self.show_about,
        }
        handlers |= self.playing.handlers()
        handlers |= {f"pass_{number}": partial(page.limit, number) for number in range(1, 5)}
        handlers |= {
            f"plan_{extent.value}_{plan}": partial(page.set_plan, extent, None if plan == "drawn" else PlanKind(plan))
            for extent in Extent
            for plan in PLANS
        }
        handlers |= {f"marks_{density.value}": partial(self.set_density, density) for density in MarkDensity}
        handlers |= {f"look_{look.value}": partial(self.set_look, look) for look in Look}
        return handlers

    def _connect(self) -> None:
        self.page.hinted.connect(self._show_hint)
        self.page.note_focused.connect(self.side_list.show_note)
        self.page.note_focused.connect(self.trace.show_note)
        self.trace.note_wanted.connect(self.page.focus_on)
        self.trace.hinted.connect(self._show_hint)
        self.page.menu_wanted.connect(self._show_note_menu)
        self.page.strip_menu_wanted.connect(self._show_strip_menu)
        self.side_list.hinted.connect(self._show_hint)
        self.side_list.finding_chosen.connect(self._on_finding_chosen)
        self.side_list.remedy_pointed.connect(self.page.preview_remedy)
        self.bowings.hinted.connect(self._show_hint)
        self.plan.hinted.connect(self._show_hint)
        self.playing.hinted.connect(self._show_hint)
        self.plan.previewed.connect(self._on_plan_previewed)
        self.actions_by_name["plan"].hovered.connect(self.plan.look_ahead)
        self.plan.likely.connect(self.page.foresee_plan)
        self.plan.note_wanted.connect(self.page.focus_on)
        self.plan.page_wanted.connect(self.page.setFocus)
        self.banner.take_wanted.connect(self.plan.take)
        self.banner.drop_wanted.connect(self.plan.drop)
        self.tabs.close_wanted.connect(lambda _: self.show_planner(False))
        self.area.zoomed.connect(self._on_zoomed)
        self.shelf.opened.connect(self.open_entry)
        self.shelf.folder_wanted.connect(self.ask_and_shelve)
        self.shelf.left.connect(self._focus_work)
        self.shelf.hinted.connect(self._show_hint)
        self.shelf.told.connect(self.notice.say)
        self.shelf.visibilityChanged.connect(self.actions_by_name["shelf"].setChecked)
        self.welcome.open_wanted.connect(self.ask_and_open)
        self.welcome.paste_wanted.connect(self.open_pasted)
        self.welcome.file_chosen.connect(self.open_path)
        self.welcome.sample_chosen.connect(self.open_sample)
        self.saving.saved.connect(self._on_saved)
        self.saving.told.connect(self.notice.say)
        self.saving.hinted.connect(self._show_hint)
        self.recovery.failed.connect(self.notice.say)
        self.file.changed.connect(self._on_file_changed)
        self.document.lesson_changed.connect(self._on_lesson_changed)
        self.document.lesson_changed.connect(self._enable_comparing)
        self.comparison.changed.connect(self._enable_comparing)
        self.document.modified_changed.connect(self._show_title)
        self.document.path_changed.connect(self._show_title)
        stack = self.document.stack
        stack.canUndoChanged.connect(self._show_stack_texts)
        stack.canRedoChanged.connect(self._show_stack_texts)
        stack.indexChanged.connect(self._show_stack_texts)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._on_system_look_changed)

    def _restore(self) -> None:
        room = self.screen().availableGeometry().size() - FRAME
        self.resize(QSize(*FIRST_SIZE).boundedTo(room))
        self.restoreGeometry(self._settings.window("place"))
        self._splitter.restoreState(self._settings.window("split"))
        self.restoreState(self._settings.window("docks"))
        self.actions_by_name[f"marks_{self._settings.marks}"].setChecked(True)
        self.actions_by_name[f"look_{self._settings.look.value}"].setChecked(True)
        self.actions_by_name["strip"].setChecked(self._settings.strip)
        self.page.show_strip(self._settings.strip)
        self.actions_by_name["trace"].setChecked(self._settings.trace)
        self.show_planner(self._settings.planner)
        self.tabs.choose(self.side_list)
        self._take_theme(choose_theme(self._settings.look))
        if self._settings.zoom is not None:
            self.area.set_zoom(self._settings.zoom)
        self.welcome.show_recent(self._settings.recent_files)
        self._enable_actions()
        self.welcome.open_button.setFocus()

    # ------------------------------------------------------------------------------------------------- opening

    def ask_and_open(self) -> None:
        """Ask for a file and open it."""
        path = self._dialogs.path_to_open(self, self._settings.folder)
        if path is not None:
            self.open_path(path)

    def open_entry(self, entry: Entry) -> bool:
        """Open a tune of the shelf."""
        return self.open_path(entry.file, entry)

    def ask_and_shelve(self) -> None:
        """Ask for a folder and put it on the shelf."""
        folder = self._dialogs.folder_to_shelve(self, self._settings.folder)
        if folder is not None:
            self.shelf.add_places([folder])

    def open_path(self, path: Path, entry: Entry | None = None) -> bool:
        """Open a file; the open lesson stays as it is where that fails or the user thinks better of it.

        Args:
            entry: Which tune of it is wanted, as the shelf has it; asked where None.
        """
        is_own = self.document.path is not None and path.absolute() == self.document.path.absolute()
        if is_own and not self.saving.may_leave():  # which may write the file that is to be read
            return False
        try:
            read = self._read(path)
        except FileError as fault:
            self._settings.forget_file(path)
            self.notice.say(str(fault))
            return False
        if read is None or not (is_own or self.saving.may_leave()):
            return False
        if not self._put_reading(read[0], path.name, path, read[1], entry=entry):
            return False
        self._settings.remember_file(path)
        return True

    def open_sample(self, path: Path) -> bool:
        """Open a tune that comes with the program; saving asks for a file of the user's own."""
        try:
            reading = read_known(path)[0]
        except FileError as fault:
            self.notice.say(str(fault))
            return False
        return self.saving.may_leave() and self._put_reading(reading, path.name)

    def open_pasted(self) -> bool:
        """Open the tune in the clipboard, ABC or MusicXML text."""
        text = QGuiApplication.clipboard().text()
        if not text.strip():
            self._show_hint("There is no text to paste: copy a tune first.")
            return False
        try:
            reading = read_file(text.encode())
        except UnreadableFileError as fault:
            self.notice.say(f"{PASTED} is no tune that can be read: {fault}")
            return False
        return self.saving.may_leave() and self._put_reading(reading, PASTED, unsaved=True)

    def offer_left_behind(self, *, asked: bool = False) -> None:
        """Offer lessons that were not saved when a window ended, if there are any.

        Args:
            asked: The user wants to know, so say if there are none.
        """
        left = self.recovery.left_behind()
        if not left:
            if asked:
                self._show_hint("All lessons were saved.")
            return
        chosen = self._dialogs.lesson_left_behind(self, left)
        if chosen is not None and not self.saving.may_leave():
            chosen = None
        for other in left:
            if other is not chosen:
                other.hold.let_go()
        if chosen is not None:
            self._open_left(chosen)

    def _open_left(self, left: Left) -> None:
        assert left.lesson is not None
        self.sets.book_opens(left.note.file, (left.lesson,))
        self.recovery.open_left(left)
        self.file.know(left.note.file, left.note.known)
        title = left.note.title or "Untitled"
        self.notice.say(f"“{title}” is open as it stood, and is not saved yet. {about(left)}{self._elsewhere()}")
        self.page.setFocus()

    def _elsewhere(self) -> str:
        """A sentence where another window has the same file open."""
        path = self.document.path
        if path is None or not self.file.is_open_elsewhere:
            return ""
        return f" {path.name} is open in another window too: whoever saves second is asked which of the two to keep."

    def _on_file_changed(self, change: Change) -> None:
        path = self.document.path
        if path is None:
            return
        if change is Change.GONE:
            self.document.stack.resetClean()  # it stands in no file any more
            self.notice.say(f"{path.name} is no longer where it was.", act=("&Save it again", self.save))
        elif self.document.is_modified:
            self.notice.say(
                f"{path.name} has been changed by another window or program. Saving will ask which of the two to keep."
            )
        else:
            self.notice.say(
                f"{path.name} has been changed by another window or program.",
                act=("&Read it again", partial(self.open_path, path)),
            )

    def _read(self, path: Path) -> tuple[Reading, Imprint] | None:
        """Read a file; a large one with a way to leave off, and then None."""
        if not is_slow_to_read(path):
            return read_known(path)
        return self._dialogs.wait(self, f"Reading {path.name} …", partial(read_known, path))

    def _put_reading(
        self,
        reading: Reading,
        name: str,
        path: Path | None = None,
        known: Imprint | None = None,
        *,
        unsaved: bool = False,
        entry: Entry | None = None,
    ) -> bool:
        """Put what was read in the place of the open lesson, which may go."""
        index = self._choose_lesson(reading, name, entry)
        if index is None:
            return False
        lesson = reading.lessons[index]
        own = path if path is not None and reading.is_lesson_file and len(reading.lessons) == 1 else None
        self.sets.book_opens(path, reading.lessons)
        self.document.open(lesson, own, unsaved=unsaved)
        self.file.know(own, known)
        if path is not None:
            self.shelf.note_opened(path, index)
        if reading.problems:
            count = len(reading.problems)
            what = "1 thing was" if count == 1 else f"{count} things were"
            lines = [str(problem)[:1].upper() + str(problem)[1:] for problem in reading.problems]
            self.notice.say(f"{name} is open; {what} repaired or left out on the way.{self._elsewhere()}", lines)
        elif self._elsewhere():
            self.notice.say(self._elsewhere().strip())
        else:
            self.notice.hide()
        self.page.setFocus()
        return True

    def _choose_lesson(self, reading: Reading, name: str, entry: Entry | None) -> int | None:
        if len(reading.lessons) == 1:
            return 0
        found = lesson_of(entry, reading.lessons) if entry is not None else None
        return self._dialogs.tune_of_book(self, name, reading.lessons) if found is None else found

    # ------------------------------------------------------------------------------------------------- saving

    def save(self) -> bool:
        """Save the lesson in its file; asks for one where it has none. Whether it is saved."""
        return self.saving.save()

    def save_as(self) -> bool:
        """Ask for a file and save the lesson in it. Whether it is saved."""
        return self.saving.save_as()

    def _on_saved(self, path: Path) -> None:
        self.notice.hide()
        self.shelf.read_again(path)
        self._settings.remember_file(path)

    # ------------------------------------------------------------------------------------------------- printing

    def export_abc(self) -> None:
        """Ask for a file and write the lesson in it as ABC; tell what ABC has no place for."""
        state = self.document.state
        if state is None:
            return
        suggestion = self._settings.folder / Path(suggested_name(state.tune.title)).with_suffix(ABC_SUFFIX)
        chosen = self._dialogs.path_to_export(self, suggestion)
        if chosen is None:
            return
        path = chosen if chosen.suffix.lower() == ABC_SUFFIX else chosen.with_name(chosen.name + ABC_SUFFIX)
        try:
            losses = save_abc(state.lesson, path)
        except FileError as fault:
            self.notice.say(str(fault))
            return
        if losses:
            self.notice.say(f"{path.name} is written; ABC has no place for all that the lesson holds.", losses)
        else:
            self._show_hint(f"Written to {path.name}.")

    def print_lesson(self, way: Way = Way.PRINT) -> None:
        """Set up a sheet beside its pages; keep it in the lesson, and print it or write it to a PDF file."""
        state = self.document.state
        if state is None:
            return
        plan = state.lesson.sheet or replace(self._settings.sheet, bowings=(state.bowing.name,))
        tune_set = self.sets.state.tune_set if self.sets.state.tunes else None
        choice = self._dialogs.sheet(self, state.lesson, plan, way, tune_set)
        if choice is None:
            return
        self._settings.sheet = choice.plan
        if choice.plan != plan or choice.way is Way.KEEP:
            self.document.change("Set up the sheet", lambda lesson: replace(lesson, sheet=choice.plan), state.shown)
        try:
            self._put_on_paper(printed(state.lesson, tune_set, choice.plan), choice, state.tune.title)
        except (OSError, RefusedEditError) as fault:
            said = str(fault) if isinstance(fault, RefusedEditError) else fault.strerror or str(fault)
            self.notice.say(f"The sheet cannot be printed: {said}")

    def _put_on_paper(self, given: Printed, choice: SheetChoice, title: str) -> None:
        if choice.way is Way.PRINT:
            printer = self._dialogs.printer(self)
            if printer is not None:
                print_sheet_of(printer, given, choice.plan)
        elif choice.way is Way.EXPORT:
            suggestion = self._settings.folder / Path(suggested_name(title)).with_suffix(".pdf")
            path = self._dialogs.path_to_export(self, suggestion)
            if path is not None:
                path = path if path.suffix else path.with_suffix(".pdf")
                pages = write_sheet(given, choice.plan, path)
                self._show_hint(f"Wrote {path.name}, {pages} {'page' if pages == 1 else 'pages'}.")

    def show_pack(self) -> None:
        """Show what goes into a lesson pack, or how far the one is that is being made."""
        if self.pack_dialog is None:
            from app.pack_dialog import PackDialog  # not for the window's start

            self.pack_dialog = PackDialog(self.document, self._settings, self._dialogs, self)
        self.pack_dialog.present()

    # ------------------------------------------------------------------------------------------------- planning

    def work_out_plan(self) -> None:
        """Work out the best bowing and show it on the page."""
        self.show_planner(True)
        self.plan.work_out()

    def mend_from_here(self) -> None:
        """Keep all up to the focus note and work out the rest."""
        self.show_planner(True)
        self.plan.mend_from_here()

    def compare_accents(self) -> None:
        """Show which accent plan suits the tune."""
        self.show_planner(True)
        self.plan.compare()

    def toggle_planner(self) -> None:
        """Bring the planner into sight, with the keyboard; hide it where it is in sight."""
        shown = self.tabs.current is not self.plan
        self.show_planner(shown)
        (self.plan.form.accents if shown else self.page).setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_planner(self, shown: bool) -> None:
        """Show the planner in a tab beside the bow check, or hide it, and remember it."""
        self._settings.planner = shown
        self.actions_by_name["planner"].setChecked(shown)
        if shown:
            self.tabs.choose(self.plan)
            page, side = self._splitter.sizes()
            if 0 < side < self.plan.wanted_width < page:
                self._splitter.setSizes([page + side - self.plan.wanted_width, self.plan.wanted_width])
        else:
            self.plan.drop()
            self.tabs.close_pane(self.plan)

    def undo(self) -> None:
        """Take back the last edit; where a preview is shown, that is what goes."""
        if self.page.plan is not None:
            self.plan.drop()
        else:
            self.document.stack.undo()

    def _on_plan_previewed(self, preview: PlanPreview | None) -> None:
        self.page.show_plan(preview)
        self.trace.show_plan(preview)
        self.playing.show_plan(preview)
        self.banner.show_preview(preview)
        self._show_stack_texts()
        self._enable_taking()
        if preview is not None:
            self._show_hint(preview.sentence)

    def _enable_taking(self) -> None:
        for name in ("plan_take", "plan_take_new", "plan_drop"):
            self.actions_by_name[name].setEnabled(self.page.plan is not None)

    # ------------------------------------------------------------------------------------------------- comparing

    def toggle_comparison(self) -> None:
        """Compare bowings, those that were compared last or all, or show one alone again, as the menu entry says."""
        if self.comparison.runs:
            self.comparison.end()
        else:
            self.comparison.start()
            self._show_hint(self.page.comparison_words())
        self._enable_comparing()

    def tell_from_this(self) -> None:
        """Tell the other bowings that are compared from the one that is worked on."""
        state = self.document.state
        if state is not None:
            self.comparison.refer_to(state.shown)
            self._show_hint(self.page.comparison_words())

    def _enable_comparing(self) -> None:
        state, runs = self.document.state, self.comparison.runs
        several = state is not None and len(state.lesson.bowings) > 1
        self.actions_by_name["compare"].setChecked(runs)
        self.actions_by_name["compare"].setEnabled(several)
        self.actions_by_name["compare_reference"].setEnabled(runs)
        self._open_menus[COMPARE_WITH].menuAction().setEnabled(several)

    def _fill_compare_menu(self) -> None:
        menu, state = self._open_menus[COMPARE_WITH], self.document.state
        menu.clear()
        for place, bowing in enumerate(state.lesson.bowings if state is not None else ()):
            action = menu.addAction(bowing.name.replace("&", "&&"))
            action.setCheckable(True)
            action.setChecked(place in self.comparison.chosen)
            action.setEnabled(self.comparison.runs or state is None or place != state.shown)
            action.toggled.connect(partial(self.comparison.put, place))

    # ------------------------------------------------------------------------------------------------- sets

    def show_set(self) -> None:
        """Show the set of tunes beside the page."""
        if self.set_window is None:
            self.set_window = SetWindow(self.sets, self.document, self._settings, self._dialogs, self)
            self.set_window.hinted.connect(self._show_hint)
            self.set_window.notes_wanted.connect(self.page.mark_notes)
            self.set_window.set_theme(choose_theme(self._settings.look))
        self.set_window.show()
        self.set_window.raise_()
        self.set_window.activateWindow()

    # ------------------------------------------------------------------------------------------------- looks

    def set_density(self, density: MarkDensity) -> None:
        """Choose which strokes carry a bow mark, and remember it."""
        self._settings.marks = density.value
        self.page.set_density(density)

    def toggle_strip(self) -> None:
        """Show the accent strip or hide it, as its menu entry says, and remember it."""
        self._settings.strip = self.actions_by_name["strip"].isChecked()
        self.page.show_strip(self._settings.strip)

    def toggle_trace(self) -> None:
        """Show the way of the bow under the page or hide it, as its menu entry says, and remember it."""
        self._settings.trace = self.actions_by_name["trace"].isChecked()
        self.trace.setVisible(self._settings.trace)

    def set_bow_and_fiddle(self) -> None:
        """Ask what the lesson assumes of bow, tempo and strings, and set it as one undo step."""
        state = self.document.state
        if state is None:
            return
        choice = self._dialogs.bow_and_fiddle(self, state.lesson)
        if choice is not None:
            changed = replace(state.lesson, reach=choice[0], tuning=choice[1])
            self.document.change("Bow and fiddle", lambda _: changed, state.shown)

    def set_look(self, look: Look) -> None:
        """Choose light, dark, or as the system is, and remember it."""
        self._settings.look = look
        self._take_theme(choose_theme(look))

    def _on_system_look_changed(self) -> None:
        if self._settings.look is Look.SYSTEM:
            self._take_theme(choose_theme(Look.SYSTEM))

    def _take_theme(self, theme: Theme) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        apply_theme(app, theme)
        set_icons(self.actions_by_name, theme)
        self.page.set_theme(theme)
        self.side_list.set_theme(theme)
        if self.set_window is not None:
            self.set_window.set_theme(theme)
        self.trace.set_theme(theme)
        self.playing.set_theme(theme)

    def _on_zoomed(self, zoom: float, fits: bool) -> None:
        self._settings.zoom = None if fits else zoom
        if self.document.state is not None:
            self._zoom_label.setText(f"Fits the width, {zoom:.0%}" if fits else f"{zoom:.0%}")

    def show_keys(self) -> None:
        """Show what mouse and keys do."""
        rows = [
            f"<tr><td style='padding-right:18px'>{sequence.toString(QKeySequence.SequenceFormat.NativeText)}</td>"
            f"<td>{spec.tip}</td></tr>"
            for spec in ACTIONS
            if spec.page_only and (sequence := self.actions_by_name[spec.name].shortcut())
        ]
        self._dialogs.tell(
            self,
            "Keys and gestures",
            "<p><b>Mouse.</b> Click a note to slur it to the next, or to separate the two. "
            f"{NOTE_TIPS} Shift+click selects up to a note. Click a bow mark to turn the stroke round. {SIGN_TIPS} "
            "The right button opens the menu of a note. Ctrl and the wheel zoom.</p>"
            "<p><b>Accents under the staff.</b> A full wedge is driven by a down-bow, an open wedge lies on an up-bow, "
            "a dot under an arch is buried inside a slur, a ring is not struck; two shapes stand for two passes. Click "
            "under a note to accent that place in its bar, or to stop doing so.</p>"
            "<p><b>Bowings under one another.</b> An arch under a line: slurred here; a cut arch: slurred in the "
            "bowing told from; a dotted arch: slurred in one, hooked in the other. A full square: a sign more; an "
            "empty one: a sign less; half full: another sign. A line with ticks: the bow goes the other way. "
            "Click a line to work on its bowing; Up and Down go from bowing to bowing.</p>"
            "<p><b>Keys on the page.</b> Arrow keys, Home and End move the focus note; with Shift they select.</p>"
            f"<table>{''.join(rows)}</table>",
        )

    def show_about(self) -> None:
        """Show what this program is."""
        self._dialogs.tell(
            self,
            "About Bowbench",
            "<p><b>Bowbench</b> works out, checks and prints the bowings of a fiddle tune.</p>"
            "<p>Free software under the MIT licence.</p>",
        )

    # ------------------------------------------------------------------------------------------------- passing on

    def _on_lesson_changed(self, before: State | None, after: State) -> None:
        if before is None:
            self._stack.setCurrentWidget(self.area)
            self._stack.setMinimumHeight(LEAST_PAGE)  # no longer that of the welcome
            self._side.show()
            self.trace.setVisible(self._settings.trace)
            self._enable_actions()
        if before is None or before.tune is not after.tune:
            self._show_title()
            self._show_hint("")

    def _focus_work(self) -> None:
        if self.document.state is None:
            self.welcome.open_button.setFocus()
        else:
            self.page.setFocus()

    def _on_finding_chosen(self, finding: Finding | None) -> None:
        if finding is None:
            self.page.mark_notes((), Severity.NOTE)
        else:
            self.page.mark_notes(finding.notes, finding.severity)

    def _show_hint(self, text: str) -> None:
        self._hint.setText(text or self.page.accessibleDescription())

    def _show_title(self) -> None:
        state = self.document.state
        self.setWindowTitle("Bowbench" if state is None else f"{state.tune.title or 'Untitled'}[*] – Bowbench")
        self.setWindowModified(state is not None and self.document.is_modified)
        self.setWindowFilePath(str(self.document.path) if self.document.path is not None else "")

    def _show_stack_texts(self) -> None:
        stack, previews = self.document.stack, self.page.plan is not None
        for name, word, text, can in (
            ("undo", "&Undo", "Preview" if previews else stack.undoText(), previews or stack.canUndo()),
            ("redo", "&Redo", stack.redoText(), stack.canRedo()),
        ):
            action = self.actions_by_name[name]
            action.setText(f"{word} “{text}”" if text else word)
            action.setEnabled(can)

    def _enable_actions(self) -> None:
        always = {"tune_set", "pack", "open", "recover", "paste", "shelf", "close", "keys", "about", "undo", "redo"}
        for spec in ACTIONS:
            if spec.name not in always and not spec.group:
                self.actions_by_name[spec.name].setEnabled(self.document.state is not None)
        self._enable_taking()
        self._enable_comparing()

    def _fill_recent_menu(self) -> None:
        menu = self._open_menus[RECENT]
        menu.clear()
        for path in self._settings.recent_files:
            action = menu.addAction(f"{path.name}    {path.parent}")
            action.triggered.connect(partial(self.open_path, path))
        if menu.isEmpty():
            menu.addAction("Nothing opened yet").setEnabled(False)

    def _show_note_menu(self, place: QPoint) -> None:
        passes = self.page.passes()
        left_out = {f"pass_{number}" for number in range(passes + 1, 5)}
        if passes < 2:
            left_out |= {"pass_all", "pass_1"}
        self._show_page_menu(tuple(item for item in NOTE_ITEMS if item not in left_out), place)

    def _show_strip_menu(self, place: QPoint) -> None:
        self._show_page_menu(STRIP_ITEMS, place)

    def _show_page_menu(self, items: MenuItems, place: QPoint) -> None:
        if self._note_menu is not None and self._note_menu.isVisible():
            return  # some systems tell of the menu key twice
        menu = self._note_menu = QMenu(self)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.destroyed.connect(self._forget_note_menu)
        fill_menu(menu, items, self.actions_by_name)
        menu.popup(place)

    def _forget_note_menu(self) -> None:
        self._note_menu = None

    # ------------------------------------------------------------------------------------------------- Qt events

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        urls = event.mimeData().urls()
        if len(urls) == 1 and urls[0].isLocalFile():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        event.acceptProposedAction()
        self.open_path(Path(event.mimeData().urls()[0].toLocalFile()))

    def closeEvent(self, event: QCloseEvent) -> None:
        if not self.saving.may_leave():
            event.ignore()
            return
        if self.set_window is not None:
            self.set_window.close()
        if self.pack_dialog is not None:
            self.pack_dialog.work.close()
            self.pack_dialog.close()
        self.plan.close_down()
        self.playing.close_down()
        self._settings.set_window("place", self.saveGeometry())
        self._settings.set_window("split", self._splitter.saveState())
        self._settings.set_window("docks", self.saveState())
        self.shelf.end()
        self.recovery.end()
        self.file.end()
        event.accept()
