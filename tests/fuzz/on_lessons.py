"""The readers of lessons: ABC, MusicXML, packed MusicXML, and the fields of lesson files."""

from __future__ import annotations

import io
import random
import re
import warnings
import zipfile
from collections.abc import Callable
from functools import partial
from xml.sax.saxutils import escape

from lxml import etree

from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading import Reading
from core.reading.abc import decode, read_abc
from core.reading.musicxml import read_musicxml, read_mxl
from tests.fuzz import abc_grammar, corpus, pipeline
from tests.fuzz.mutation import BYTES, NUMBERS, TEXTS, spoil_bytes, spoil_json, spoil_text, spoil_tree, spoil_words
from tests.fuzz.outcomes import LAW_EACH, PIPELINE_EACH, READ, REFUSED, Reader, must_be_a_sentence


def feed_lessons(read: Callable[[bytes], Reading], data: bytes, number: int) -> str:
    try:
        reading = read(data)
    except UnreadableFileError as refusal:
        must_be_a_sentence(str(refusal))
        return REFUSED
    assert reading.lessons
    for problem in reading.problems:
        assert len(problem.text) < 400, problem
    for lesson in _some(reading.lessons, number, LAW_EACH):
        pipeline.keeps_promises(lesson)
    for lesson in _some(reading.lessons, number, PIPELINE_EACH):
        pipeline.goes_through(lesson)
    return READ


def _some(lessons: tuple[Lesson, ...], number: int, each: int) -> tuple[Lesson, ...]:
    return lessons[:2] if number % each == 0 else ()


def abc(chance: random.Random) -> bytes:
    way = chance.randrange(10)
    text = abc_grammar.tune(chance) if way < 4 else chance.choice(corpus.abc_tunes())
    if 4 <= way < 8:
        words = re.findall(r"[A-Za-z]:[^\n]*\n|[\^_=]*[A-Ga-gz][,']*[0-9/]*|\s+|.", text, re.DOTALL)
        text = "".join(spoil_words(words, chance, abc_grammar.WORDS))
    encoding = chance.choice(("utf-8",) * 8 + ("latin-1", "utf-16"))
    data = text.encode(encoding, "replace")
    return spoil_bytes(data, chance) if way >= 8 else data


def score(chance: random.Random) -> bytes:
    data = chance.choice(corpus.scores())
    if chance.randrange(5) == 0:
        return spoil_bytes(data, chance)
    root = etree.fromstring(data, etree.XMLParser(remove_comments=True, remove_pis=True, resolve_entities=False))
    spoil_tree(root, chance)
    data = etree.tostring(root, encoding=chance.choice(("UTF-8",) * 8 + ("UTF-16", "ISO-8859-1")))
    match chance.randrange(30):
        case 0:
            return chance.choice(PROLOGS).encode() + data[data.find(b"<score") :]
        case 1:
            return data.replace(
                b"</", chance.choice((b"&a;", b"&#1;", b"<![CDATA[x]]>", b"<!--", b"<?x?>", b"<a " * 300)) + b"</", 1
            )
    return data


PROLOGS = (
    '<!DOCTYPE score-partwise [<!ENTITY a "b">]>', '<!DOCTYPE x SYSTEM "file:///etc/hostname">',
    "<?xml version='1.0'?>" * 2,
    '<!DOCTYPE x [<!ENTITY % a SYSTEM "file:///dev/zero">%a;]>', '<?xml version="1.1" encoding="klingon"?>',
    "\n \n<?xml version='1.0'?>",
    '<!DOCTYPE x [<!ATTLIST score-partwise version CDATA "9">]>', "<!--" + "-" * 5000 + "-->", "\ufeff",
    "<?xml version='1.0' standalone='no'?>",
)  # fmt: skip


def fields(chance: random.Random) -> bytes:
    """A lesson file with its miscellaneous fields spoilt."""
    text = chance.choice(corpus.our_scores())
    rows = [(f"bowbench:{name}", value) for name, value in chance.choices(FIELDS, k=chance.choice((1, 2, 4)))]
    spoilt = []
    for name, value in rows:
        match chance.randrange(8):
            case 0:
                pass
            case 1:
                value = chance.choice((*NUMBERS, *TEXTS))
            case 2 if value[:1] in ("[", "{"):
                value = spoil_json(value, chance)
            case 3:
                name = chance.choice(
                    (spoil_text(name, chance), "bowbench:", "bowbench:.", "bowbench:..marks", "bowbench:credit.")
                )
            case _:
                words = re.findall(r"\w+|\s+|.", value, re.DOTALL)
                value = "".join(
                    spoil_words(words, chance, (*NUMBERS, *TEXTS, "=", "/", ":", ",", ";", "P1", "b0n1", "down"))
                )
        spoilt.append(f'<miscellaneous-field name="{_xml(name)}">{_xml(value)}</miscellaneous-field>')
    return text.replace("<miscellaneous>", "<miscellaneous>" + "".join(spoilt), 1).encode()


def _xml(text: str) -> str:
    """Text as XML can hold it."""
    kept = "".join(
        char
        for char in text
        if char in "\t\n\r" or " " <= char <= "\ud7ff" or "\ue000" <= char <= "\ufffd" or char > "\uffff"
    )
    return escape(kept, {'"': "&quot;"})


FIELDS = (
    ("format", "1"), ("number", "3"), ("dance", "reel"), ("other-titles", '["One", "Two"]'), ("part-order",
    '["A", "B", "A"]'),
    ("credit-order", "1 0"), ("quiet", "accent-up=note retake=off"), ("reach", "hair-cm=60 even-cm-s=27.5 tempo=2:112"),
    ("tuning", "A3 E4 A4 E5"), ("bars", "0 start=3/2 key=1,dorian,B-1; 1 times=3 line=final; 8X1 start=1/2"),
    ("sheet",
    '{"kind": "class", "footer": "x", "before": ["Listen", "to this"], "from_bar": 3, "copies": 2, "bowings": ["a"]}'),
    ("P1.accents", "0,3/2"), ("P1.accent-changes", "0=backbeat 1=0,3/2"), ("P1.marks", "b0n1=down b0n2=up/1"),
    ("P1.retakes", "b0n2 b0n3"), ("P1.slurs", "b0n2"), ("P1.dots", "b0n1"), ("credit.origin", "Here"),
)  # fmt: skip


def mxl(chance: random.Random) -> bytes:
    """A packed score, its members, their names or the archive itself spoilt."""
    document = score(chance) if chance.randrange(2) else chance.choice(corpus.scores())
    name = chance.choice(
        ("score.xml", "a.musicxml", "../../a.xml", "/a.xml", "a/b/c.xml", "C:\\a.xml", "é.xml", "a\\b.xml", "x" * 300)
    )
    named = chance.choice((name, name, name, "gone.xml", "META-INF/container.xml", "", "../" + name, "a.mxl"))
    container = f'<container><rootfiles><rootfile full-path="{_xml(named)}"/></rootfiles></container>'
    members: list[tuple[str, bytes]] = [("META-INF/container.xml", container.encode()), (name, document)]
    match chance.randrange(12):
        case 0:
            del members[chance.randrange(2)]
        case 1:
            members.append(members[chance.randrange(2)])  # the same name twice
        case 2:
            members.append(("a.mxl", pack(members, zipfile.ZIP_DEFLATED)))
        case 3:
            members[0] = (members[0][0], spoil_bytes(members[0][1], chance))
        case 4:
            members[1] = (name, b"<x>" + b" " * chance.choice((10**4, 10**5)) + b"</x>")
        case 5:
            members += [(f"{place}.txt", b"") for place in range(chance.choice((1, 3, 9, 30, 30, 30, 30, 998, 999)))]
        case 6:
            members[1] = (name, chance.choice((b"", *BYTES, b"PK\x03\x04" * 50)))
        case 7:
            members.reverse()
    data = pack(
        members, chance.choice((zipfile.ZIP_DEFLATED, zipfile.ZIP_STORED) * 20 + (zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA))
    )
    return _spoil_archive(data, chance) if chance.randrange(2) else data


def pack(members: list[tuple[str, bytes]], method: int) -> bytes:
    """A zip of members; names may come twice."""
    data = io.BytesIO()
    with warnings.catch_warnings(), zipfile.ZipFile(data, "w", method) as archive:
        warnings.simplefilter("ignore")
        for name, content in members:
            entry = zipfile.ZipInfo(name)
            entry.compress_type = method
            archive.writestr(entry, content)
    return data.getvalue()


def _spoil_archive(data: bytes, chance: random.Random) -> bytes:
    """Spoil the headers of an archive, where all that it claims stands."""
    spoilt = bytearray(data)
    for _ in range(chance.choice((1, 1, 2, 6))):
        heads = [found.start() for found in re.finditer(b"PK(?:\x01\x02|\x03\x04|\x05\x06)", spoilt)]
        place = chance.choice(heads or [0]) + chance.randrange(48)
        size = chance.choice((1, 2, 4))
        spoilt[place : place + size] = chance.choice((chance.randbytes(size), b"\xff" * size, b"\0" * size))
    match chance.randrange(8):
        case 0:
            del spoilt[chance.randrange(len(spoilt)) :]
        case 1:
            return b"PK\x03\x04" + chance.randbytes(200) + bytes(spoilt)
        case 2:
            return spoil_bytes(bytes(spoilt), chance)
    return bytes(spoilt)


FED = {
    "abc": Reader(abc, partial(feed_lessons, lambda data: read_abc(decode(data))), ".abc"),
    "musicxml": Reader(score, partial(feed_lessons, read_musicxml), ".musicxml"),
    "mxl": Reader(mxl, partial(feed_lessons, read_mxl), ".mxl"),
    "fields": Reader(fields, partial(feed_lessons, read_musicxml), ".musicxml"),
}
