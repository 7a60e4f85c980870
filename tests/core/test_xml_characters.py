"""Which characters XML can hold, against its own rule."""

from __future__ import annotations

from core.xml_characters import is_xml_text, with_xml_characters

# Source: XML 1.0, fifth edition, section 2.2, production 2 (Char)
CHARACTERS = (range(0x9, 0xB), range(0xD, 0xE), range(0x20, 0xD800), range(0xE000, 0xFFFE), range(0x10000, 0x110000))


def test_every_character_is_taken_or_left_out_as_xml_says():
    held = {code for codes in CHARACTERS for code in codes if code < 0x20000}
    for code in range(0x20000):
        assert is_xml_text(chr(code)) is (code in held), hex(code)
        assert with_xml_characters(f"a{chr(code)}b", "-") == (f"a{chr(code)}b" if code in held else "a-b")


def test_a_text_keeps_all_that_xml_holds():
    assert with_xml_characters("Rül\tps\n\0\ud800 \U0001f3bb") == "Rül\tps\n \U0001f3bb"
    assert not is_xml_text("fiddle\ufffe")
