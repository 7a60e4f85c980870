"""Packed MusicXML (``.mxl``): the score inside, unpacked with limits on size, number and names of members."""

from __future__ import annotations

import io
import zipfile
import zlib

from core.errors import UnreadableFileError
from core.reading.limits import MAX_BYTES, MAX_MEMBERS
from core.reading.xml_tree import parse_xml
from core.translation import tr

CONTAINER = "META-INF/container.xml"
_CHUNK = 2**16
_ENTRY = b"PK\x01\x02"  # at the head of each member in the directory (PKWARE, APPNOTE 6.3.10, 4.3.12)
_METHODS = {zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED}


def unpack_mxl(data: bytes) -> bytes:
    """The first score of a packed file.

    Returns:
        The bytes of the MusicXML document that the container names; without a container, of the first document.
    Raises:
        UnreadableFileError: broken, locked or too large, or no score inside.
    """
    try:
        count = data.count(_ENTRY)  # before any is looked at: a directory may be all that there is
        if count > MAX_MEMBERS:
            raise UnreadableFileError(
                tr("The packed file has {count} members; at most {most} are read.", count=count, most=MAX_MEMBERS)
            )
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            return _read_member(archive, _score_name(archive))
    except (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, OSError, ValueError, RuntimeError) as error:
        raise UnreadableFileError(tr("The packed file is broken: it cannot be unpacked.")) from error


def _score_name(archive: zipfile.ZipFile) -> str:
    """Name of the member that holds the score."""
    names = archive.namelist()
    if CONTAINER in names:
        container = parse_xml(_read_member(archive, CONTAINER))
        for rootfile in container.iter("{*}rootfile"):  # the first one is the score (MusicXML 4.0, container)
            path = rootfile.get("full-path") or ""
            if path not in names:
                raise UnreadableFileError(
                    tr("The packed file names “{path}” as its score, but does not hold it.", path=path[:80])
                )
            return path
    for name in names:
        if name.lower().endswith((".musicxml", ".xml")) and not name.startswith("META-INF/"):
            return name
    raise UnreadableFileError(tr("The packed file holds no MusicXML document."))


def _read_member(archive: zipfile.ZipFile, name: str) -> bytes:
    """Unpack one member into memory, piece by piece, whatever size it claims to have.

    Nothing is ever written to disk, so a path that leads elsewhere (``../``) is only a name.
    """
    entry = archive.getinfo(name)
    if entry.flag_bits & 0x1:
        raise UnreadableFileError(tr("The packed file is locked with a password."))
    if entry.compress_type not in _METHODS:
        raise UnreadableFileError(tr("The packed file is packed in a way that MusicXML does not use."))
    pieces, size = [], 0
    with archive.open(entry) as member:
        while piece := member.read(_CHUNK):
            size += len(piece)
            if size > MAX_BYTES:
                raise UnreadableFileError(
                    tr(
                        "The packed file unpacks to more than {most} megabytes; so much is not read.",
                        most=MAX_BYTES // 2**20,
                    )
                )
            pieces.append(piece)
    return b"".join(pieces)
