"""What is made where no window can open."""

from pypdf import PdfReader

from app.sample_pack import make_sample_pack


def test_the_sample_lesson_is_packed_with_all_its_bowings(tmp_path):
    report = make_sample_pack(tmp_path / "pack")
    assert (report.made, report.problems, report.remarks) == (1, [], 0)
    folder = tmp_path / "pack" / "The Tuesday Ferry"
    assert sorted(path.suffix for path in folder.iterdir()) == [".abc", *[".mid"] * 5, ".musicxml", ".pdf", ".pdf"]
    text = " ".join(page.extract_text() for page in PdfReader(folder / "The Tuesday Ferry, teacher.pdf").pages)
    assert "The Tuesday Ferry" in " ".join(text.split())
