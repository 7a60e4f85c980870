"""What is made where no window can open."""

from collections import Counter

from pypdf import PdfReader

from app.sample_pack import make_sample_pack
from core.pack.kinds import Kind


def test_the_sample_lesson_is_packed_with_all_its_bowings(tmp_path):
    report = make_sample_pack(tmp_path / "pack", set(Kind) - {Kind.AUDIO})  # five of them take seconds
    assert (report.made, report.problems, report.remarks) == (1, [], 0)
    folder = tmp_path / "pack" / "The Tuesday Ferry"
    found = Counter(path.suffix for path in folder.iterdir())
    assert found == {".abc": 1, ".mid": 5, ".musicxml": 1, ".pdf": 2}
    text = " ".join(page.extract_text() for page in PdfReader(folder / "The Tuesday Ferry, teacher.pdf").pages)
    assert "The Tuesday Ferry" in " ".join(text.split())
