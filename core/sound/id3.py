"""Title, composer and comment of an MP3 file, as an ID3v2.4 tag in UTF-8.

The encoder would write its own, in which letters beyond Latin 1 are lost. Source: ID3 tag version 2.4.0, main structure
and native frames (2000), from memory; the tests read tags with another library.
"""

from __future__ import annotations

from core.sound.tags import Tags
from core.translation import tr

UTF_8 = b"\x03"
LARGEST = 1 << 28  # sizes have 28 bits


def id3_tag(tags: Tags) -> bytes:
    """The tag that stands before the first frame of the sound; empty where there is nothing to say."""
    frames = _text(b"TIT2", tags.title) + _text(b"TPE1", tags.composer)
    if tags.comment:
        frames += _frame(b"COMM", UTF_8 + b"eng" + b"\0" + tags.comment.encode())
    return b"ID3\x04\x00\x00" + _size(len(frames)) + frames if frames else b""


def _text(name: bytes, text: str) -> bytes:
    return _frame(name, UTF_8 + text.encode()) if text else b""


def _frame(name: bytes, body: bytes) -> bytes:
    return name + _size(len(body)) + b"\0\0" + body


def _size(size: int) -> bytes:
    """Seven bits to the byte, so that no byte looks like the beginning of sound."""
    if size >= LARGEST:
        raise ValueError(tr("The words are too long for a tag."))
    return bytes(size >> shift & 0x7F for shift in (21, 14, 7, 0))
