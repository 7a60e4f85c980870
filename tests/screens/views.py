"""What is looked at on screens of several sizes: the window at work, and its dialogs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtGui import QImage
from PySide6.QtWidgets import QDialog, QWidget

from app.files import read_path
from tests.manual.scenes import ON_THE_BEAT, Stage

WAYS = 4  # bowings that are compared


def main(stage: Stage) -> QImage:
    stage.show_bowing(ON_THE_BEAT)
    choose_finding(stage)
    return stage.picture()


def welcome(stage: Stage) -> QImage:
    from app.main_window import MainWindow
    from app.samples import sample_files, sample_label

    empty = MainWindow(stage.settings)
    empty.resize(stage.window.size())
    empty.welcome.samples.show_files(sample_files(), sample_label)
    empty.show()
    picture = stage.picture(empty)
    empty.close()
    empty.deleteLater()
    return picture


def plan(stage: Stage) -> QImage:
    stage.do("planner")
    stage.window.page.setFocus()
    stage.do("plan")
    stage.wait(lambda: stage.window.page.plan is not None and not stage.window.plan.works)
    stage.settle()
    return stage.picture()


def compare(stage: Stage) -> QImage:
    document = stage.window.document
    lesson = document.state.lesson
    more = [replace(lesson.bowings[place % len(lesson.bowings)], name=f"{lesson.bowings[0].name} {place + 1}")
            for place in range(len(lesson.bowings), WAYS)]  # fmt: skip
    document.change("more", lambda lesson: replace(lesson, bowings=(*lesson.bowings, *more)), 0)
    stage.do("compare")
    choose_finding(stage)
    return stage.picture()


def player(stage: Stage) -> QImage:
    stage.do("player")
    return stage.picture()


def shelf(stage: Stage) -> QImage:
    stage.window.shelf.add_places([stage.tunes])
    stage.do("shelf")
    pane = stage.window.shelf.pane
    stage.wait(lambda: not pane.desk.scans and not pane.desk.waits and pane.table.model().rowCount() > 10)
    stage.settle()
    return stage.picture()


def tour(stage: Stage) -> QImage:
    stage.do("tour")
    return stage.picture()


def choose_finding(stage: Stage) -> None:
    """Choose the finding with the most remedies."""
    side = stage.window.side_list
    offered = []
    for row in range(side.model.rowCount()):
        side.choose(row)
        stage.wait(lambda: not side.waits)
        offered.append(len(side.remedies.remedies))
    if offered:
        side.choose(offered.index(max(offered)))
        stage.wait(lambda: not side.waits)


# ------------------------------------------------------------------------------------------------- dialogs


def sheet(stage: Stage) -> QImage:
    from app.sheet_choice import Way
    from app.sheet_dialog import SheetDialog
    from core.sheet_plan import SheetKind, begin

    dialog = SheetDialog(stage.window.document.state.lesson, begin(SheetKind.TEACHER), Way.KEEP, None, stage.window)
    dialog.show()
    stage.wait(lambda: not dialog.work.runs)
    return stage.picture(dialog)


def pack(stage: Stage) -> QImage:
    stage.do("pack")
    dialog = stage.window.pack_dialog
    dialog.form.add([Path("Tunes/tuesday_class_book.abc"), Path("Tunes/second_kettle.abc")])
    dialog.form.folder.setText("Tuesday class")
    return stage.picture(dialog)


def bow_and_fiddle(stage: Stage) -> QImage:
    from app.bow_fiddle_dialog import BowFiddleDialog

    return shown(stage, BowFiddleDialog(stage.window.document.state.lesson, stage.window))


def tune_set(stage: Stage) -> QImage:
    stage.do("tune_set")
    for name in ("stools_to_the_wall.abc", "second_kettle.abc", "nine_geese_at_the_gate.abc"):
        stage.window.sets.add(stage.tunes / name, read_path(stage.tunes / name).lessons[0])
    return stage.picture(stage.window.set_window)


def about(stage: Stage) -> QImage:
    from app.about_dialog import AboutDialog

    return shown(stage, AboutDialog(stage.window))


def chooser(stage: Stage) -> QImage:
    from app.tune_chooser import TuneChooser

    lessons = read_path(stage.tunes / "tuesday_class_book.abc").lessons
    return shown(stage, TuneChooser("tuesday_class_book.abc", lessons, stage.window))


def recovery(stage: Stage) -> QImage:
    from app.recovery_copy import Note, left_behind, new_path, write_copy
    from app.recovery_dialog import RecoveryDialog

    folder, lesson = stage.tunes.parent / "left", stage.window.document.state.lesson
    when = datetime(2031, 5, 4, 17, 30, tzinfo=UTC)
    write_copy(new_path(folder), lesson, Note(lesson.tune.title, when, 12, stage.tunes / "gone.musicxml"))
    write_copy(new_path(folder), lesson, Note("The Second Kettle", when, 1))
    left = left_behind(folder)
    picture = shown(stage, RecoveryDialog(left, stage.window))
    for one in left:
        one.hold.let_go()
    return picture


def learn(stage: Stage) -> QImage:
    from app.learn_dialog import LearnDialog
    from core.shelf.query import Query

    return shown(stage, LearnDialog(stage.tunes.parent / "shelf.db", Query(), 30, stage.window))


def style(stage: Stage) -> QImage:
    from app.style_dialog import StyleDialog
    from app.styles import BOOK

    return shown(stage, StyleDialog(BOOK, stage.window))


def manual(stage: Stage) -> QImage:
    stage.do("manual")
    window = stage.window.helping.manual
    window.show_page(2)
    return shown(stage, window)


def shown(stage: Stage, dialog: QWidget) -> QImage:
    dialog.show()
    picture = stage.picture(dialog)
    if isinstance(dialog, QDialog):
        dialog.reject()
    return picture


WINDOWS: dict[str, Callable[[Stage], QImage]] = {
    "main": main,
    "welcome": welcome,
    "plan": plan,
    "compare": compare,
    "player": player,
    "shelf": shelf,
    "tour": tour,
}
DIALOGS: dict[str, Callable[[Stage], QImage]] = {
    "sheet": sheet,
    "pack": pack,
    "bow-and-fiddle": bow_and_fiddle,
    "set": tune_set,
    "about": about,
    "chooser": chooser,
    "recovery": recovery,
    "learn": learn,
    "style": style,
    "manual": manual,
}
VIEWS = WINDOWS | DIALOGS  # by the name of the picture
