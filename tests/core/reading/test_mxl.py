import io
import struct
import zipfile
import zlib

import pytest

from core.errors import UnreadableFileError
from core.reading import mxl, read_file
from core.reading.musicxml import read_mxl
from core.reading.mxl import CONTAINER, unpack_mxl
from core.writing.mxl import pack_mxl
from tests.core.reading.scores import note, score

SCORE = score(note("A4", 4))


def packed(members: dict[str, str | bytes], method: int = zipfile.ZIP_DEFLATED) -> bytes:
    data = io.BytesIO()
    with zipfile.ZipFile(data, "w", method) as archive:
        for name, content in members.items():
            archive.writestr(name, content)
    return data.getvalue()


def container(*paths: str) -> str:
    roots = "".join(f'<rootfile full-path="{path}"/>' for path in paths)
    return f"<container><rootfiles>{roots}</rootfiles></container>"


def refusal(data: bytes) -> str:
    """The sentence with which a file is refused; a full stop for one that is read."""
    try:
        return "." if read_mxl(data).lessons else "read without lessons"
    except UnreadableFileError as error:
        return error.text


def test_the_first_score_that_the_container_names_is_read() -> None:
    data = packed({"b.xml": "<b/>", "a.musicxml": SCORE, CONTAINER: container("a.musicxml", "b.xml")})
    assert unpack_mxl(data) == SCORE.encode()


def test_a_container_with_a_namespace_is_understood() -> None:
    namespace = "urn:oasis:names:tc:opendocument:xmlns:container"
    named = container("a.xml").replace("<container>", f'<container xmlns="{namespace}">')
    assert unpack_mxl(packed({CONTAINER: named, "a.xml": SCORE})) == SCORE.encode()


def test_without_a_container_the_first_document_is_read() -> None:
    assert unpack_mxl(packed({"notes.txt": "no", "a.xml": SCORE})) == SCORE.encode()


def test_packed_files_are_told_by_their_bytes() -> None:
    assert read_file(pack_mxl(SCORE)) == read_mxl(pack_mxl(SCORE))


@pytest.mark.parametrize(
    ("members", "sentence"),
    [
        ({}, "The packed file holds no MusicXML document."),
        ({"a.txt": "x"}, "The packed file holds no MusicXML document."),
        ({CONTAINER: container("gone.xml"), "a.xml": SCORE}, "names “gone.xml” as its score, but does not hold it"),
        ({CONTAINER: container("../../etc/hostname")}, "names “../../etc/hostname” as its score"),
        ({CONTAINER: container("/etc/hostname")}, "names “/etc/hostname” as its score"),
        ({CONTAINER: "<container", "a.xml": SCORE}, "no complete XML document"),
        ({CONTAINER: '<!DOCTYPE x [<!ENTITY a "b">]><x/>', "a.xml": SCORE}, "declares an entity"),
        ({"a.xml": "<x/>"}, "not a MusicXML score"),
    ],
)
def test_packed_files_without_a_score_are_refused(members: dict[str, str | bytes], sentence: str) -> None:
    with pytest.raises(UnreadableFileError, match=sentence.replace(".", r"\.")):
        read_mxl(packed(members))


def test_a_name_that_leads_elsewhere_is_only_a_name() -> None:
    path = "../../../outside.xml"
    assert unpack_mxl(packed({path: SCORE, CONTAINER: container(path)})) == SCORE.encode()


def test_a_bomb_is_refused_before_it_is_unpacked_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mxl, "MAX_BYTES", 2**20)
    bomb = packed({"a.xml": b" " * 2**26})
    assert len(bomb) < 2**17
    with pytest.raises(UnreadableFileError, match="unpacks to more than 1 megabytes"):
        unpack_mxl(bomb)


def test_a_bomb_that_claims_to_be_small_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mxl, "MAX_BYTES", 2**20)
    bomb, real = packed({"a.xml": b" " * 2**22}), struct.pack("<I", 2**22)
    assert real in bomb
    with pytest.raises(UnreadableFileError):
        read_mxl(bomb.replace(real, struct.pack("<I", 100)))


def test_too_many_members_are_refused() -> None:
    with pytest.raises(UnreadableFileError, match="has 1001 members; at most 1000 are read"):
        unpack_mxl(packed({f"{number}.txt": "" for number in range(1001)}))


def test_ways_of_packing_that_the_format_does_not_have_are_refused() -> None:
    with pytest.raises(UnreadableFileError, match="in a way that MusicXML does not use"):
        unpack_mxl(packed({"a.xml": SCORE}, zipfile.ZIP_LZMA))


def test_locked_files_are_refused() -> None:
    data = bytearray(packed({"a.xml": SCORE}))
    data[6] |= 1  # the flag in the member's own header
    data[data.index(b"PK\x01\x02") + 8] |= 1  # and in the directory
    with pytest.raises(UnreadableFileError, match="locked with a password"):
        unpack_mxl(bytes(data))


def test_a_packed_file_cut_off_or_spoilt_anywhere_is_refused_or_read() -> None:
    data = pack_mxl(SCORE)
    for length in range(0, len(data), 50):
        with pytest.raises(UnreadableFileError):
            read_mxl(data[:length])
    for place in range(len(data)):
        spoilt = bytearray(data)
        spoilt[place] ^= 0xFF
        assert refusal(bytes(spoilt)).endswith(".")


def test_a_wrong_checksum_is_refused() -> None:
    data = packed({"a.xml": SCORE}, zipfile.ZIP_STORED)
    checksum = struct.pack("<I", zlib.crc32(SCORE.encode()))
    with pytest.raises(UnreadableFileError, match="The packed file is broken"):
        unpack_mxl(data.replace(checksum, b"\1\2\3\4"))
