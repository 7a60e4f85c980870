from pathlib import Path

import pytest

from app import fonts

pytestmark = pytest.mark.usefixtures("qapp")


def test_both_fonts_of_the_page_come_with_the_program() -> None:
    assert fonts.load_fonts() == ("Leipzig", "Liberation Serif")


def test_a_plain_font_stands_in_where_they_are_missing_or_broken(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "Leipzig.css").write_text("@font-face {src: url(data:font/woff2;base64,AAAA)}")
    monkeypatch.setattr(fonts, "engraver_data", lambda: tmp_path)
    assert fonts.load_fonts.__wrapped__() == ("serif", "serif")


def test_fonts_are_set_by_pixels_in_the_style_asked_for() -> None:
    font = fonts.page_font(music=False, bold=True, italic=False, pixels=200)
    assert (font.family(), font.pixelSize(), font.bold(), font.italic()) == ("Liberation Serif", 200, True, False)
