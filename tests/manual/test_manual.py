"""The manual stays true: its pictures are there, and what it names is in the program."""

from __future__ import annotations

import ast
import html
import re
import sys
from functools import cache
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QKeySequence
from PySide6.QtTest import QTest

from app.actions import ACTIONS, MENUS, OPEN_MENUS, SEPARATOR
from app.manual import PAGES, manual_folder
from app.manual_window import ManualWindow
from tests.manual.keys_page import keys_page
from tests.manual.scenes import SCENES, staged

TOP = Path(__file__).parents[2]
FOLDER = manual_folder()
FILES = [page.file for page in PAGES]
OTHER_KEYS = {
    "Home", "End", "Shift", "Tab", "Alt", "Ctrl",  # the page and Qt's own
    "S", "T",  # the shelf: status and tags
    "u", "d", "s",  # typed into its field
}  # fmt: skip


@cache
def text_of(file: str) -> str:
    return (FOLDER / file).read_text("utf-8")


def marked(element: str) -> list[tuple[str, str]]:
    """What stands in an element, with the page it stands on."""
    found = []
    for file in FILES:
        inside = re.findall(rf"<{element}>(.*?)</{element}>", text_of(file), re.DOTALL)
        found += [(file, html.unescape(" ".join(text.split()))) for text in inside]
    return found


def plain(text: str) -> str:
    return text.replace("&", "").rstrip("…")


def menu_paths() -> set[str]:
    texts = {spec.name: spec.text for spec in ACTIONS} | OPEN_MENUS

    def walk(items, above: str) -> set[str]:
        paths = set()
        for item in items:
            if isinstance(item, str):
                paths |= {f"{above} > {plain(texts[item])}"} if item != SEPARATOR else set()
            else:
                paths |= walk(item[1], f"{above} > {plain(item[0])}")
        return paths

    return set().union(*(walk(items, plain(title)) for title, items in MENUS))


@cache
def program_texts() -> frozenset[str]:
    """Every text that stands in the sources of the program."""
    texts = set()
    for path in (*(TOP / "app").rglob("*.py"), *(TOP / "core").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                texts.add(plain(node.value))
    return frozenset(texts)


def test_the_folder_holds_the_pages_and_nothing_else():
    assert {path.name for path in FOLDER.glob("*.html")} == set(FILES)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_a_page_has_its_title_and_the_first_page_leads_to_it(page):
    text = text_of(page.file)
    assert f"<title>{page.title} – Bowbench</title>" in text
    assert f"<h1>{page.title}</h1>" in text
    assert page.name == "index" or f'<a href="{page.file}">{page.title}</a>' in text_of("index.html")


def test_links_lead_to_pages():
    for file in FILES:
        assert set(re.findall(r'<a href="([^"]*)"', text_of(file))) <= set(FILES), file


def test_every_picture_is_there_is_told_in_words_and_can_be_made_again():
    named = set()
    for file in FILES:
        for picture, words in re.findall(r'<img src="pictures/([^"]*)\.png" alt="([^"]*)"', text_of(file)):
            assert not QImage(str(FOLDER / "pictures" / f"{picture}.png")).isNull(), picture
            assert words
            named.add(picture)
        assert text_of(file).count("<img") == len(
            re.findall(r'<img src="pictures/[^"]*\.png" alt="[^"]+"', text_of(file))
        )
    assert named == set(SCENES) == {path.stem for path in (FOLDER / "pictures").iterdir()}


@pytest.mark.parametrize(("file", "path"), marked("b"))
def test_every_command_that_is_named_is_in_the_menus(file, path):
    assert path in menu_paths()


@pytest.mark.parametrize(("file", "text"), marked("em"))
def test_every_label_that_is_named_is_in_the_program(file, text):
    assert plain(text) in program_texts()


def test_every_key_that_is_named_does_something(qapp):
    keys = {QKeySequence(key).toString() for spec in ACTIONS for key in spec.keys}
    keys |= {k.toString() for spec in ACTIONS for key in spec.keys if not isinstance(key, str)
             for k in QKeySequence.keyBindings(key)}  # fmt: skip
    for file, key in marked("kbd"):
        assert key in OTHER_KEYS or QKeySequence(key).toString() in keys, (file, key)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="standard keys are those of the system")
def test_the_page_of_keys_is_that_of_the_commands(qapp):
    """``python -m tests.manual`` writes it anew."""
    assert text_of("keys.html") == keys_page()


def test_the_caution_stands_where_long_practice_is_told_of():
    for file in ("index.html", "hear.html"):
        assert re.search(r"hurts.*teacher.*doctor|hurt.*doctor", text_of(file), re.DOTALL), file


def test_a_picture_is_still_what_the_window_shows(qapp, tmp_path, monkeypatch):
    """Pictures of the page are set in fonts of ours: the kept one looks like today's, and unlike the next one's."""
    monkeypatch.chdir(tmp_path)
    with staged(tmp_path) as stage:
        today = SCENES["page"](stage)
        slurred = SCENES["slur"](stage)
    kept = QImage(str(FOLDER / "pictures" / "page.png"))
    assert kept.size() == today.size()
    apart = difference(kept, slurred)
    assert difference(kept, today) < apart / 2, "make the pictures anew: python -m tests.manual"


def difference(one: QImage, other: QImage) -> float:
    """Mean difference of two pictures of one size in grey levels, of 255."""
    grey = [image.convertToFormat(QImage.Format.Format_Grayscale8) for image in (one, other)]
    lines = [[bytes(image.constScanLine(y))[: image.width()] for y in range(image.height())] for image in grey]
    total = sum(abs(a - b) for row, pair in zip(*lines, strict=True) for a, b in zip(row, pair, strict=True))
    return total / (one.width() * one.height())


@pytest.fixture
def manual(qtbot, qapp) -> ManualWindow:
    manual = ManualWindow()
    qtbot.addWidget(manual)
    manual.show()
    qtbot.waitExposed(manual)
    return manual


def test_the_window_shows_each_page_with_its_pictures(manual):
    for row, page in enumerate(PAGES):
        manual.show_page(row)
        shown = manual.text.toPlainText()
        assert page.title in shown
        assert shown.count("\ufffc") == text_of(page.file).count("<img")


def test_a_link_is_followed_the_list_goes_along_and_one_key_goes_back(qtbot, manual):
    manual.text.setSource(manual.text.source().resolved("plan.html"))
    assert PAGES[manual.pages.currentRow()].name == "plan"
    QTest.keyClick(manual, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: manual.pages.currentRow() == 0)
    assert "Take care of yourself" in manual.text.toPlainText()


def test_pictures_fit_a_narrow_window(manual, qtbot):
    manual.show_page([page.name for page in PAGES].index("plan"))
    manual.resize(600, 500)
    qtbot.wait(50)
    assert manual.text.horizontalScrollBar().maximum() == 0


def test_escape_closes_it(manual):
    QTest.keyClick(manual.pages, Qt.Key.Key_Escape)
    assert not manual.isVisible()
