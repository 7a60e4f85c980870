"""Packed MusicXML (``.mxl``): a zip whose ``META-INF/container.xml`` names the score inside."""

from __future__ import annotations

import io
import zipfile

SCORE_NAME = "score.musicxml"
MEDIA_TYPE = "application/vnd.recordare.musicxml"
_CONTAINER = f"""<?xml version="1.0" encoding="UTF-8"?>
<container>
  <rootfiles>
    <rootfile full-path="{SCORE_NAME}" media-type="application/vnd.recordare.musicxml+xml"/>
  </rootfiles>
</container>
"""
_EARLIEST = (1980, 1, 1, 0, 0, 0)  # the earliest time a zip can tell: the same text gives the same bytes


def pack_mxl(text: str) -> bytes:
    """Pack a MusicXML document; ``mimetype`` comes first and unpacked, as the MusicXML 4.0 container format asks."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        for name, content, method in (
            ("mimetype", MEDIA_TYPE, zipfile.ZIP_STORED),
            ("META-INF/container.xml", _CONTAINER, zipfile.ZIP_DEFLATED),
            (SCORE_NAME, text, zipfile.ZIP_DEFLATED),
        ):
            entry = zipfile.ZipInfo(name, _EARLIEST)
            entry.compress_type = method
            archive.writestr(entry, content.encode())
    return packed.getvalue()
