"""The manual stays true: its pictures are there, and what it names is in the program."""

from __future__ import annotations

import html
import re
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QImage, QKeySequence, QTextBlock, QTextDocument
from PySide6.QtTest import QTest

from app.actions import ACTIONS, MENUS, OPEN_MENUS, SEPARATOR, plain
from app.language import ENGLISH
from app.manual import PAGES, manual_folder, manual_languages
from app.manual_window import ManualWindow
from core.style.learning import FEWEST_LESSONS, FEWEST_SLURRED
from core.translation import tr
from tests.manual.keys_page import keys_page
from tests.manual.scenes import SCENES, WORDLESS, staged
from tests.manual.speaking import speaking
from tests.translations import ts_file
from tests.translations.__main__ import ts_path

TOP = Path(__file__).parents[2]
FILES = [page.file for page in PAGES]
LANGUAGES = manual_languages()
OTHERS = [language for language in LANGUAGES if language != ENGLISH]
OTHER_KEYS = {
    "en": {
        "Home", "End", "Shift", "Tab", "Alt", "Ctrl",  # the page and Qt's own
        "S", "T",  # the shelf: status and tags
        "u", "d", "s",  # typed into its field
    },
    "de": {"Pos1", "Ende", "Umschalt", "Tab", "Alt", "Strg", "Return", "Hoch", "Herunter", "S", "T", "u", "d", "s"},
}  # fmt: skip
SAME_KEYS = {"en": {}, "de": {"Eingabe": "Return"}}  # what the program calls a key beside what Qt does
CAUTIONS = {
    "en": r"hurts.*teacher.*doctor|hurt.*doctor",
    "de": r"Lehrkraft oder Arzt.*wissen es\s+besser|schmerzt.*Lehrkraft oder Arzt",
}
WELL = {"en": "Take care of yourself", "de": "Auf den Körper achten"}  # a heading of the first page


@pytest.fixture(params=LANGUAGES)
def language(request, qapp) -> Iterator[str]:
    with speaking(request.param):
        yield request.param


@cache
def text_of(language: str, file: str) -> str:
    return (manual_folder(language) / file).read_text("utf-8")


def marked(language: str, element: str) -> list[tuple[str, str]]:
    """What stands in an element, with the page it stands on."""
    found = []
    for file in FILES:
        inside = re.findall(rf"<{element}>(.*?)</{element}>", text_of(language, file), re.DOTALL)
        found += [(file, html.unescape(" ".join(text.split()))) for text in inside]
    assert found
    return found


def read(text: str) -> str:
    """A text of the program as it is read, in the language that is spoken."""
    return plain(text).rstrip("…")


def menu_paths() -> set[str]:
    texts = {spec.name: spec.text for spec in ACTIONS} | OPEN_MENUS

    def walk(items, above: str) -> set[str]:
        paths = set()
        for item in items:
            if isinstance(item, str):
                paths |= {f"{above} > {read(texts[item])}"} if item != SEPARATOR else set()
            else:
                paths |= walk(item[1], f"{above} > {read(item[0])}")
        return paths

    return set().union(*(walk(items, read(title)) for title, items in MENUS))


@cache
def program_texts(language: str) -> frozenset[str]:
    """Every text of the program for people, in a language; a file of translations holds the English ones too."""
    entries = ts_file.read(ts_path(OTHERS[0] if language == ENGLISH else language)).values()
    texts = [text for entry in entries for text in ((entry.source,) if language == ENGLISH else entry.forms)]
    return frozenset(text.replace("&", "").rstrip("…") for text in texts)


def test_the_folders_hold_the_pages_and_nothing_else(language):
    assert {path.name for path in manual_folder(language).glob("*.html")} == set(FILES)


def test_a_language_without_pages_shows_the_english_ones():
    assert manual_folder("xx") == manual_folder(ENGLISH)
    assert len({manual_folder(language) for language in LANGUAGES}) == len(LANGUAGES) > 1


def test_a_page_has_its_title_and_the_first_page_leads_to_it(language):
    for page in PAGES:
        text, title = text_of(language, page.file), tr(page.title)
        assert f'<html lang="{language}">' in text
        assert f"<title>{title} – Bowbench</title>" in text
        assert f"<h1>{title}</h1>" in text
        assert page.name == "index" or f'<a href="{page.file}">{title}</a>' in text_of(language, "index.html")


def test_links_lead_to_pages(language):
    for file in FILES:
        assert set(re.findall(r'<a href="([^"]*)"', text_of(language, file))) <= set(FILES), file
        (style,) = re.findall(r'<link rel="stylesheet" type="text/css" href="([^"]*)"', text_of(language, file))
        assert (manual_folder(language) / style).is_file()


def test_every_picture_is_there_is_told_in_words_and_can_be_made_again(language):
    named, folder = {}, manual_folder(language)
    for file in FILES:
        for source, words in re.findall(r'<img src="([^"]*)" alt="([^"]*)"', text_of(language, file)):
            assert not QImage(str(folder / source)).isNull(), source
            assert words
            named[Path(source).stem] = source
        assert text_of(language, file).count("<img") == len(
            re.findall(r'<img src="[^"]*" alt="[^"]+"', text_of(language, file))
        )
    own = {name for name, source in named.items() if source == f"pictures/{name}.png"}
    assert own == set(SCENES) - (WORDLESS if language != ENGLISH else set())
    assert own == {path.stem for path in (folder / "pictures").iterdir()}
    assert {name: f"../pictures/{name}.png" for name in set(SCENES) - own} == {
        name: source for name, source in named.items() if name not in own
    }


@pytest.mark.parametrize("language", OTHERS)
def test_pages_in_other_languages_tell_the_same(language):
    """What is named on a page, counted: nothing is added to one language alone."""
    for file in FILES:
        for tag in ("<h2>", "<li>", "<p", "<b>", "<em>", "<img", "<tr>"):
            there = text_of(language, file).count(tag)
            assert there == text_of(ENGLISH, file).count(tag), (file, tag)


def test_every_command_that_is_named_is_in_the_menus(language):
    paths = menu_paths()
    assert not [named for named in marked(language, "b") if named[1] not in paths]


def test_every_label_that_is_named_is_in_the_program(language):
    texts = program_texts(language)
    assert not [named for named in marked(language, "em") if named[1].rstrip("…") not in texts]


def test_every_key_that_is_named_does_something(language):
    native = QKeySequence.SequenceFormat.NativeText
    sequences = [QKeySequence(key) for spec in ACTIONS for key in spec.keys if isinstance(key, str)]
    for spec in ACTIONS:
        for key in spec.keys:
            sequences += [] if isinstance(key, str) else QKeySequence.keyBindings(key)
    keys = {sequence.toString(native) for sequence in sequences} | OTHER_KEYS[language]
    for file, named in marked(language, "kbd"):
        key = "+".join(SAME_KEYS[language].get(part, part) for part in named.split("+"))
        assert key in keys or named in keys, (file, named)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="standard keys are those of the system")
def test_the_page_of_keys_is_that_of_the_commands(language):
    """``python -m tests.manual`` writes it anew."""
    assert text_of(language, "keys.html") == keys_page()


def test_the_caution_stands_where_long_practice_is_told_of(language):
    for file in ("index.html", "hear.html"):
        assert re.search(CAUTIONS[language], text_of(language, file), re.DOTALL), file


def test_what_learning_needs_is_told_as_it_is(language):
    lessons, notes = re.findall(r"\b(\d+)\b", text_of(language, "carry.html").split("1883")[-1])
    assert (int(lessons), int(notes)) == (FEWEST_LESSONS, FEWEST_SLURRED)


def test_a_picture_is_still_what_the_window_shows(qapp, tmp_path, monkeypatch):
    """Pictures of the page are set in fonts of ours: the kept one looks like today's, and unlike the next one's."""
    monkeypatch.chdir(tmp_path)
    with staged(tmp_path) as stage:
        today = SCENES["page"](stage)
        slurred = SCENES["slur"](stage)
    kept = QImage(str(manual_folder() / "pictures" / "page.png"))
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
def manual(qtbot, language) -> ManualWindow:
    manual = ManualWindow()
    qtbot.addWidget(manual)
    manual.show()
    qtbot.waitExposed(manual)
    return manual


def test_the_window_shows_each_page_with_its_pictures(language, manual):
    for row, page in enumerate(PAGES):
        manual.show_page(row)
        shown = manual.text.toPlainText()
        assert tr(page.title) in shown
        assert shown.count("\ufffc") == text_of(language, page.file).count("<img")


def test_pictures_come_from_the_folder_of_the_language_or_the_shared_one(language, manual):
    for name, source in (("first_bowing", "page"), ("check", "check")):
        manual.show_page([page.name for page in PAGES].index(name))
        (address,) = re.findall(rf'<img src="([^"]*/{source}\.png)"', text_of(language, f"{name}.html"))
        picture = manual.text.loadResource(QTextDocument.ResourceType.ImageResource.value, QUrl(address))
        assert not picture.isNull()


def test_a_link_is_followed_the_list_goes_along_and_one_key_goes_back(qtbot, language, manual):
    manual.text.setSource(manual.text.source().resolved("plan.html"))
    assert PAGES[manual.pages.currentRow()].name == "plan"
    QTest.keyClick(manual, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: manual.pages.currentRow() == 0)
    assert WELL[language] in manual.text.toPlainText()


def test_no_gap_is_left_under_a_picture(manual):
    """The line of a picture is as high as the picture, whatever the lines of text are."""
    manual.show_page([page.name for page in PAGES].index("compare"))
    document = manual.text.document()
    blocks = [block for block in document_blocks(document) if "\ufffc" in block.text()]
    assert len(blocks) == 1
    picture = manual.text.loadResource(QTextDocument.ResourceType.ImageResource.value, QUrl("pictures/compare.png"))
    assert document.documentLayout().blockBoundingRect(blocks[0]).height() < picture.height() * 1.1


def document_blocks(document: QTextDocument) -> Iterator[QTextBlock]:
    block = document.begin()
    while block.isValid():
        yield block
        block = block.next()


def test_pictures_fit_a_narrow_window(manual, qtbot):
    manual.show_page([page.name for page in PAGES].index("plan"))
    manual.resize(600, 500)
    qtbot.wait(50)
    assert manual.text.horizontalScrollBar().maximum() == 0


def test_escape_closes_it(manual):
    QTest.keyClick(manual.pages, Qt.Key.Key_Escape)
    assert not manual.isVisible()
