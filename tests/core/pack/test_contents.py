"""The contents page: every lesson with all its files, and nothing that a title could break."""

from urllib.parse import unquote

from lxml import html

from core.pack.contents import Row, contents_page
from core.pack.facts import Facts
from core.pack.manifest import FileRecord, LessonRecord
from core.pack.names import Identity


def row(title, *endings, remarks=(), said=()):
    facts = Facts(title, ("Another name",), "reel", "D major", "4/4", (("Smooth <1>", "backbeat"),), 0, "f")
    files = tuple(FileRecord(f"Reel #1/Reel #1{ending}", 1, "x") for ending in endings)
    return Row(facts, LessonRecord(Identity("s", title, 0), "Reel #1", "f", files, remarks), said)


def told(page):
    return html.document_fromstring(page)


def test_links_lead_to_the_files_and_say_what_they_are():
    page = told(contents_page("Class", [row("Reel", ", teacher.pdf", ".abc", ", Smooth.mid")]))
    links = [(link.text, unquote(link.get("href"))) for link in page.iter("a")]
    assert links == [
        ("Sheet (teacher)", "Reel #1/Reel #1, teacher.pdf"),
        ("ABC", "Reel #1/Reel #1.abc"),
        ("MIDI (Smooth)", "Reel #1/Reel #1, Smooth.mid"),
    ]
    assert not any(set(link.get("href")) & set("# ,") for link in page.iter("a"))


def test_a_lesson_is_told_in_words():
    text = " ".join(told(contents_page("Class", [row("Reel")])).text_content().split())
    for words in ("Reel", "Another name", "reel, 4/4", "D major", "Smooth <1> (accents backbeat)", "1 lesson"):
        assert words in text


def test_lessons_stand_in_the_order_of_their_titles():
    page = told(contents_page("Class", [row("The Weir"), row("ash"), row("Élan")]))
    titles = [cell.text for cell in page.iter("th") if cell.get("scope") == "row"]
    assert titles == ["ash", "Élan", "The Weir"]


def test_what_went_wrong_stands_with_its_lesson_and_below():
    rows = [row("Reel", remarks=("A & B",), said=("Line 3: <x>",))]
    text = told(contents_page("Class", rows, ["bad.abc: no tune"], ["Sound"])).text_content()
    for words in ("A & B", "Line 3: <x>", "bad.abc: no tune", "cannot make it: Sound"):
        assert words in text


def test_a_title_cannot_become_part_of_the_page():
    page = told(contents_page("<b>", [row("<script>alert(1)</script>")]))
    assert not list(page.iter("script", "b"))
