"""The window in other languages: nothing is cut off, keys of menus are unique, nothing stays English."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QCheckBox,
    QDialog,
    QLabel,
    QSizePolicy,
    QToolButton,
    QWidget,
)

from app.about_dialog import AboutDialog
from app.actions import ACTIONS, MENUS, OPEN_MENUS, Menu
from app.bow_fiddle_dialog import BowFiddleDialog
from app.language import ENGLISH, LANGUAGES, use_language
from app.pack_dialog import PackDialog
from app.set_list import SetList
from app.set_window import SetWindow
from app.sheet_choice import Way
from app.sheet_dialog import SheetDialog
from app.tune_chooser import TuneChooser
from core import translation
from core.sheet_plan import SheetKind, begin
from core.translation import tr
from tests.translations.messages import messages

PSEUDO = "longer"
GROWTH = 0.4  # translations of short English texts are that much longer or more; common practice, no source
SCREEN = (1366, 768)
OF_QT = {"Close", "Float", "Scroll Left", "Scroll Right"}  # its own translations are loaded by the program, not here
_PLACE = re.compile(r"\{\w*\}|<[^>]*>|&")


def pseudo(text: str, comment: str, n: int | None) -> str:
    """A text in brackets, longer by 40 %; places, markup and the letter of a key stay."""
    if comment.startswith(("decimal sign", "first letter", "code of")) or len(text) < 3:
        return ""
    if "narrow" in comment:  # translators are told to find short words
        return ""
    return f"[{text}{'~' * round(GROWTH * len(_PLACE.sub('', text)))}]"


@pytest.fixture(params=[PSEUDO, *sorted(set(LANGUAGES) - {ENGLISH})])
def spoken(request) -> Iterator[str]:
    if request.param == PSEUDO:
        translation.install(pseudo)
    else:
        use_language(request.param)
    yield request.param
    use_language(ENGLISH)


@pytest.fixture
def window(spoken, window):
    window.resize(*SCREEN)
    QApplication.processEvents()
    return window


def cut(top: QWidget) -> list[str]:
    """Buttons, boxes and labels in sight that have less room than their texts need."""
    found = []
    for widget in top.findChildren(QWidget):
        if not widget.isVisible() or widget.window() is not top.window():
            continue
        text = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
        ignored = widget.sizePolicy().horizontalPolicy() is QSizePolicy.Policy.Ignored
        if not text or ignored:
            continue
        if isinstance(widget, QLabel) and widget.wordWrap():
            if widget.heightForWidth(widget.width()) > widget.height() + 1:
                found.append(f"{text!r}: {widget.height()} of {widget.heightForWidth(widget.width())} high")
        elif widget.width() < widget.minimumSizeHint().width():
            found.append(f"{text!r}: {widget.width()} of {widget.minimumSizeHint().width()} wide")
        elif isinstance(widget, QToolButton | QCheckBox | QLabel) and widget.width() < widget.sizeHint().width() - 1:
            found.append(f"{text!r}: {widget.width()} of {widget.sizeHint().width()} wide")
        elif isinstance(top, QDialog) and widget.mapTo(top, widget.rect().topRight()).x() > top.width():
            found.append(f"{text!r}: beyond the edge")
    return found


def shown(qtbot, dialog: QWidget) -> QWidget:
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitExposed(dialog)
    return dialog


def test_the_window_fits_a_small_laptop(window):
    assert not cut(window)
    assert window.minimumSizeHint().width() <= SCREEN[0]


def test_the_planner_is_not_cut(window):
    window.actions_by_name["planner"].setChecked(True)
    window.show_planner(True)
    QApplication.processEvents()
    assert not cut(window)


@pytest.mark.parametrize("kind", [SheetKind.TEACHER, SheetKind.EXERCISE])
def test_the_sheet_dialog_is_not_cut(spoken, qtbot, four_bars, kind):
    dialog = shown(qtbot, SheetDialog(four_bars, begin(kind), Way.PRINT))
    for page in range(dialog.form.tabs.count()):
        dialog.form.tabs.setCurrentIndex(page)
        QApplication.processEvents()
        assert not cut(dialog)
    assert dialog.width() <= SCREEN[0]


def test_the_dialog_of_bow_and_fiddle_is_not_cut(spoken, qtbot, four_bars):
    assert not cut(shown(qtbot, BowFiddleDialog(four_bars)))


def test_the_tune_chooser_is_not_cut(spoken, qtbot, four_bars):
    assert not cut(shown(qtbot, TuneChooser("book.abc", [four_bars, four_bars])))


def test_the_pack_dialog_is_not_cut(spoken, qtbot, document, settings, dialogs):
    assert not cut(shown(qtbot, PackDialog(document, settings, dialogs)))


def test_the_set_window_is_not_cut(spoken, qtbot, document, settings, dialogs):
    assert not cut(shown(qtbot, SetWindow(SetList(document), document, settings, dialogs)))


def test_the_about_dialog_is_not_cut(spoken, qtbot):
    assert not cut(shown(qtbot, AboutDialog()))


# ---- keys of menus


def letters(menu: Menu) -> Iterator[str]:
    texts = {spec.name: spec.text for spec in ACTIONS} | OPEN_MENUS
    for item in menu.items:
        title = item.title if isinstance(item, Menu) else texts.get(item, "")
        letter = re.search("&([^&])", tr(title)) if title else None
        if letter is not None:
            yield letter[1].lower()


def all_menus(menus: tuple) -> Iterator[Menu]:
    for item in menus:
        if isinstance(item, Menu):
            yield item
            yield from all_menus(item.items)


@pytest.mark.parametrize("menu", list(all_menus(MENUS)), ids=lambda menu: menu.title.replace("&", ""))
def test_no_two_entries_of_a_menu_have_one_letter(spoken, menu):
    twice = [letter for letter, count in Counter(letters(menu)).items() if count > 1]
    assert not twice


def test_no_two_menus_have_one_letter(spoken):
    assert not [letter for letter, count in Counter(letters(Menu("", MENUS))).items() if count > 1]


# ---- nothing stays English


@pytest.mark.parametrize("spoken", [PSEUDO], indirect=True)
def test_every_word_of_the_window_was_asked_for(window, spoken):
    """In the language of brackets, whatever has none came past the translator."""
    lesson = window.document.state.lesson
    own = {message.source for message in messages() if "narrow" in message.comment}
    own |= {lesson.tune.title, *(bowing.name for bowing in lesson.bowings)}
    bare = set()
    for widget in window.findChildren(QWidget):
        texts = [widget.accessibleName(), widget.toolTip(), widget.whatsThis(), widget.statusTip()]
        texts += [widget.text()] if isinstance(widget, QAbstractButton | QLabel) else []
        bare |= {text for text in texts if re.search("[A-Za-z]{3}", text) and "[" not in text and text not in own}
    assert bare <= OF_QT
