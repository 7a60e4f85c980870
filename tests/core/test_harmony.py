import pytest
from lxml import etree

from core.harmony import is_known_kind, read_harmony, write_harmony


def xml(text: str) -> str:
    return etree.tostring(write_harmony(text), encoding="unicode")


@pytest.mark.parametrize(
    "text", ["G", "Am7", "F#m7b5", "Bb/D", "N.C.", "G(Em)", "G/B(Em)", "C♯", "Fine", "?", "A7b9", "D/d", "  G", "<&>"]
)
def test_any_text_comes_back(text: str) -> None:
    assert read_harmony(etree.fromstring(xml(text))) == text


def test_root_kind_and_bass_are_told() -> None:
    assert xml("Am7/G") == (
        "<harmony><root><root-step>A</root-step></root>"
        '<kind text="m7">minor-seventh</kind>'
        "<bass><bass-step>G</bass-step></bass></harmony>"
    )


def test_degrees_that_the_text_shows_are_not_printed_again() -> None:
    assert '<kind text="7b9">dominant</kind><degree print-object="no">' in xml("A7b9")


def test_a_text_that_is_no_chord_hides_its_root() -> None:
    assert xml("?") == ('<harmony><root><root-step text="">C</root-step></root><kind text="?">other</kind></harmony>')


@pytest.mark.parametrize(
    ("inner", "text"),
    [
        ("<root><root-step>B</root-step><root-alter>-1</root-alter></root><kind>dominant</kind>", "Bb7"),
        ("<root><root-step>A</root-step></root><kind>half-diminished</kind>", "Aø"),
        ("<root><root-step>C</root-step></root><kind>none</kind>", "N.C."),
        ('<root><root-step text="H">B</root-step></root><kind text="">major</kind>', "H"),
        (
            "<root><root-step>C</root-step></root><kind>major</kind><degree><degree-value>9</degree-value>"
            "<degree-alter>0</degree-alter><degree-type>add</degree-type></degree>",
            "C(add9)",
        ),
        (
            "<root><root-step>C</root-step></root><kind>minor</kind><bass><bass-step>E</bass-step>"
            "<bass-alter>-1</bass-alter></bass>",
            "Cm/Eb",
        ),
        ("<numeral><numeral-root>5</numeral-root></numeral><kind>major</kind>", ""),
    ],
)
def test_what_other_programs_write(inner: str, text: str) -> None:
    assert read_harmony(etree.fromstring(f"<harmony>{inner}</harmony>")) == text


def test_kinds_that_have_no_usual_name() -> None:
    element = etree.fromstring("<harmony><root><root-step>C</root-step></root><kind>Tristan</kind></harmony>")
    assert not is_known_kind(element)
    assert is_known_kind(write_harmony("C7"))
