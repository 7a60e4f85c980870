"""The folder of a pack: what is ours goes and comes, what is the user's stays."""

import zipfile

import pytest

from app.pack_folder import CONTENTS, MANIFEST, PackFolder, PackFolderError
from core.pack.manifest import LessonRecord, Manifest, record_of
from core.pack.names import Identity


@pytest.fixture
def pack(tmp_path):
    """A pack of two lessons in ``tmp_path/Class``."""
    with PackFolder(tmp_path / "Class") as folder:
        for name in ("Reel", "Jig"):
            (folder.path / name).mkdir()
            file = folder.path / name / f"{name}.abc"
            file.write_text(name)
            record = record_of(f"{name}/{name}.abc", name.encode())
            folder.add(LessonRecord(Identity("s", name, 0), name, "f", (record,)))
        yield folder


def files(folder):
    return {str(path.relative_to(folder.path)) for path in folder.path.rglob("*") if path.is_file()} - {
        MANIFEST, ".bowbench-pack.lock",
    }  # fmt: skip


def finish(folder):
    folder.write_contents("page")
    return folder.write_archive(folder.manifest.lessons, lambda _: False)


def test_a_folder_with_other_files_is_refused(tmp_path):
    (tmp_path / "letters.txt").write_text("mine")
    with pytest.raises(PackFolderError, match="other files"):
        PackFolder(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["letters.txt"]


def test_a_file_in_the_place_of_the_folder_is_told(tmp_path):
    (tmp_path / "out").write_text("mine")
    with pytest.raises(PackFolderError, match="cannot be used"):
        PackFolder(tmp_path / "out")


def test_two_programs_do_not_pack_into_one_folder(pack):
    with pytest.raises(PackFolderError, match="in use by another program"):
        PackFolder(pack.path)
    pack.close()
    PackFolder(pack.path).close()


def test_a_lesson_that_goes_takes_its_files_the_page_and_the_zip_with_it(pack):
    finish(pack)
    assert files(pack) == {"Reel/Reel.abc", "Jig/Jig.abc", CONTENTS, "Class.zip"}
    pack.drop(pack.manifest.lessons[:1])
    assert files(pack) == {"Jig/Jig.abc"}
    assert not (pack.path / "Reel").exists()


def test_what_a_user_changed_is_put_aside_and_told(pack):
    (pack.path / "Reel/Reel.abc").write_text("my own work")
    pack.drop(pack.manifest.lessons)
    assert files(pack) == {"Reel/Reel, changed.abc"}
    assert (pack.path / "Reel/Reel, changed.abc").read_text() == "my own work"
    assert "Reel, changed.abc" in pack.notices[0]


def test_the_zip_holds_all_in_one_folder(pack):
    with zipfile.ZipFile(finish(pack)) as archive:
        assert set(archive.namelist()) == {"Class/Reel/Reel.abc", "Class/Jig/Jig.abc", "Class/Contents.html"}
        assert archive.read("Class/Reel/Reel.abc") == b"Reel"


def test_the_zip_is_written_again_only_where_something_changed(pack):
    path = finish(pack)
    before = path.stat().st_mtime_ns
    assert finish(pack).stat().st_mtime_ns == before
    pack.write_contents("another page")
    pack.write_archive(pack.manifest.lessons, lambda _: False)
    assert path.stat().st_mtime_ns > before


def test_a_zip_that_is_stopped_leaves_nothing(pack):
    pack.write_contents("page")
    assert pack.write_archive(pack.manifest.lessons, lambda done: done == 1) is None
    assert files(pack) == {"Reel/Reel.abc", "Jig/Jig.abc", CONTENTS}


def test_what_a_killed_process_left_half_written_is_swept_away(pack):
    (pack.path / "Reel" / ".Reel.abc.x1.part").write_text("ha")
    (pack.path / ".Class.zip.x2.part").write_text("ha")
    pack.close()
    with PackFolder(pack.path) as again:
        assert files(again) == {"Reel/Reel.abc", "Jig/Jig.abc"}


def test_a_spoilt_manifest_is_told_and_begun_anew(pack):
    pack.close()
    (pack.path / MANIFEST).write_text("{")
    with PackFolder(pack.path) as again:
        assert again.manifest == Manifest()
        assert MANIFEST in again.notices[0]
