"""Texts read off sources."""

import pytest

from tests.translations.messages import SourceError, messages_of

SOURCE = """
TITLE = translatable("A title", "of a window")
NAMES = translatable({"key": "One name", "other": ("two", "three")})
ROW = ActionSpec("slur", "&Slur", ("Space",), "Slur two notes", short="Slur")

def text(count, bars, on):
    tr(TITLE, "of a window")
    tr("On" if on else "Off")
    tr("{bars}: one text "
       "over two lines", bars=bars)
    return plural("1 slur in {bars}", "{n} slurs in {bars}", count, "of a plan", bars=bars)
"""


def found(source: str) -> list[tuple[str, str, str | None]]:
    return [(message.source, message.comment, message.one) for message in messages_of(source, "x.py")]


def test_every_way_to_write_a_text_is_read():
    assert found(SOURCE) == [
        ("A title", "of a window", None),
        ("One name", "", None),
        ("two", "", None),
        ("three", "", None),
        ("&Slur", "", None),
        ("Slur two notes", "", None),
        ("Slur", "", None),
        ("On", "", None),
        ("Off", "", None),
        ("{bars}: one text over two lines", "", None),
        ("{n} slurs in {bars}", "of a plan", "1 slur in {bars}"),
    ]


@pytest.mark.parametrize(
    "source",
    [
        'tr(f"{bars} again")',
        'plural("1 slur", many, 2)',
        'tr("{bars}: {count}", bars=bars)',
        'plural("1 slur", "{n} slurs {where}", 2)',
        'translatable(f"{x}")',
        'tr("text", comment)',
        'ActionSpec("slur", f"Slur {x}")',
    ],
)
def test_what_cannot_be_translated_is_refused(source):
    with pytest.raises(SourceError, match=r"x\.py:1"):
        messages_of(source, "x.py")
