"""Files made to harm: whatever comes in, nothing but ``UnreadableFileError`` comes out, and soon."""

import time
from fractions import Fraction

import pytest
from lxml import etree

from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading import xml_tree
from core.reading.musicxml import read_musicxml
from core.reading.xml_tree import decimal_number, parse_xml
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed

BOMB = "".join(f'<!ENTITY a{n} "{f"&a{n - 1};" * 10}">' for n in range(1, 10))
GUARD_S = 5.0  # of the processor, against what took minutes
HOSTILE = {
    "entity bomb": f'<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a0 "ha">{BOMB}]><x>&a9;</x>',
    "entity bomb in an attribute": f'<!DOCTYPE x [<!ENTITY a0 "ha">{BOMB}]><x y="&a9;"/>',
    "one long entity": f'<!DOCTYPE x [<!ENTITY a "{"a" * 10_000}">]><x>{"&a;" * 10_000}</x>',
    "file of the machine": '<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/hostname">]><x>&a;</x>',
    "file of the net": '<!DOCTYPE x [<!ENTITY a SYSTEM "http://127.0.0.1:9/x">]><x>&a;</x>',
    "parameter entity": '<!DOCTYPE x [<!ENTITY % a SYSTEM "file:///etc/hostname">%a;]><x/>',
    "entity that nobody declared": "<x>&nothing;</x>",
    "deep nesting": "<x>" * 100_000,
    "deep nesting, closed": "<x>" * 5_000 + "</x>" * 5_000,
    "a name without end": "<" + "x" * 20_000_000,
    "many roots": "<x/><x/>",
    "nothing": "",
    "no XML": "X:1\nT:Otter\nK:G\nGABc|",
    "zeros": "\0" * 1000,
    "unknown encoding": '<?xml version="1.0" encoding="klingon"?><x/>',
    "false encoding": '<?xml version="1.0" encoding="utf-16"?><x/>',
}


@pytest.mark.parametrize("text", HOSTILE.values(), ids=HOSTILE)
def test_hostile_documents_are_refused_soon(text: str) -> None:
    started = time.process_time()
    with pytest.raises(UnreadableFileError) as caught:
        read_musicxml(text.encode())
    assert time.process_time() - started < GUARD_S
    assert caught.value.text.endswith(".")


def refusal(data: bytes) -> str:
    """The sentence with which a file is refused; a full stop for one that is read."""
    try:
        return "." if read_musicxml(data).lessons else "read without lessons"
    except UnreadableFileError as error:
        return error.text


def test_nothing_of_another_file_is_read_by_way_of_the_document_type(tmp_path: object) -> None:
    secret = f"{tmp_path}/secret.dtd"
    with open(secret, "w", encoding="utf-8") as file:
        file.write('<!ENTITY a "secret">')
    root = parse_xml(f'<!DOCTYPE x SYSTEM "file://{secret}"><x>plain</x>'.encode())
    assert root.text == "plain"
    root = parse_xml(f'<!DOCTYPE x SYSTEM "file://{secret}"><x>pl&a;ain</x>'.encode())
    assert etree.tostring(root) == b"<x>plain</x>"


def test_the_usual_document_type_does_no_harm() -> None:
    doctype = (
        '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 3.1 Partwise//EN" '
        '"http://www.musicxml.org/dtds/partwise.dtd">'
    )
    assert parse_xml(f"{doctype}<score-partwise/>".encode()).tag == "score-partwise"


def test_a_file_beyond_the_limit_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xml_tree, "MAX_BYTES", 100)
    with pytest.raises(UnreadableFileError, match="megabytes"):
        parse_xml(b"<x>" + b" " * 100 + b"</x>")


def test_a_file_cut_off_anywhere_is_refused() -> None:
    tune, bowing = bowed("A|:(A2B2) c2d2|[1e8:|[2f8|]")
    data = write_musicxml(Lesson(tune, (bowing,))).encode()
    whole = data.rstrip()
    for length in range(0, len(whole), 50):
        with pytest.raises(UnreadableFileError):
            read_musicxml(whole[:length])


def test_noise_in_a_good_file_never_does_worse_than_refuse() -> None:
    tune, bowing = bowed("A|:(A2B2) c2d2|[1e8:|[2f8|]")
    data = bytearray(write_musicxml(Lesson(tune, (bowing,))).encode())
    for place in range(0, len(data), 37):
        for noise in (b"<", b"&", b"\xff", b"9", b"\0"):
            spoilt = bytes(data[:place]) + noise + bytes(data[place + 1 :])
            assert refusal(spoilt).endswith(".")


def test_lines_are_those_of_the_file() -> None:
    with pytest.raises(UnreadableFileError) as caught:
        parse_xml(b'<?xml version="1.0"?>\n<x>\n  <y>\n</x>\n')
    assert caught.value.line == 4


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("24", 24), (" 1.5\n", Fraction(3, 2)), ("-3", -3), ("+3", 3), ("1e5", None), ("", None), (None, None),
        ("1/2", None), ("nan", None), ("9" * 10, None), ("٣", None), ("1_000", None),
    ],
)  # fmt: skip
def test_decimal_numbers(text: str | None, number: Fraction | None) -> None:
    assert decimal_number(text) == number
