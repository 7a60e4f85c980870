import io
import zipfile

from core.writing.mxl import pack_mxl


def test_the_container_names_the_score_and_the_type_comes_first() -> None:
    with zipfile.ZipFile(io.BytesIO(pack_mxl("<score-partwise/>"))) as archive:
        assert archive.namelist() == ["mimetype", "META-INF/container.xml", "score.musicxml"]
        assert archive.getinfo("mimetype").compress_type == zipfile.ZIP_STORED
        assert archive.read("mimetype") == b"application/vnd.recordare.musicxml"
        assert b'full-path="score.musicxml"' in archive.read("META-INF/container.xml")
        assert archive.read("score.musicxml") == b"<score-partwise/>"


def test_the_same_text_gives_the_same_bytes() -> None:
    assert pack_mxl("<x/>") == pack_mxl("<x/>")
