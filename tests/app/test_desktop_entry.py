"""The entry on a Linux desktop: files that desktops can read, and nothing left of them afterwards."""

import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from lxml import etree
from PySide6.QtCore import QMimeDatabase
from PySide6.QtGui import QImage

from app import desktop_entry
from app.cli import main
from app.desktop_entry import ICON_SIZES, entry_files, exec_value, install, program_icon, remove

TYPES = {
    "a.musicxml": "application/vnd.recordare.musicxml+xml",
    "a.mxl": "application/vnd.recordare.musicxml",
    "a.abc": "text/vnd.abc",
}  # MusicXML 4.0, page on the container element; IANA, registration of text/vnd.abc

pytestmark = pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="for Linux desktops")


def values(entry):
    lines = [line.split("=", 1) for line in entry.decode().splitlines() if "=" in line]
    return dict(lines)


def test_the_entry_starts_this_command_and_opens_what_the_program_reads(tmp_path):
    written = install(Path("/opt/bow bench/bowbench"), tmp_path)
    assert all(path.is_file() for path in written)
    entry = values((tmp_path / "applications/bowbench.desktop").read_bytes())
    assert entry["Exec"] == '"/opt/bow bench/bowbench" %f'
    assert set(entry["MimeType"].strip(";").split(";")) == set(TYPES.values())
    assert (tmp_path / f"icons/hicolor/scalable/apps/{entry['Icon']}.svg").is_file()


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("/usr/bin/bowbench", "/usr/bin/bowbench %f"),
        ("/a b/bowbench", '"/a b/bowbench" %f'),
        ("/100%/bowbench", "/100%%/bowbench %f"),
        ("/a$b/bowbench", '"/a\\\\$b/bowbench" %f'),
        ('/a"b/bowbench', '"/a\\\\"b/bowbench" %f'),
        ("/a\\b/bowbench", '"/a\\\\\\\\b/bowbench" %f'),  # "it takes four of them", as the specification says
    ],
)
def test_a_command_is_quoted_as_the_specification_has_it(path, value):
    """Desktop Entry Specification 1.4, "The Exec key" and "Possible value types"."""
    assert exec_value(Path(path)) == value


@pytest.mark.skipif(shutil.which("desktop-file-validate") is None, reason="Debian package desktop-file-utils")
def test_the_validator_has_nothing_to_say(tmp_path):
    install(Path("/a b/bowbench"), tmp_path)
    run = subprocess.run(
        ["desktop-file-validate", str(tmp_path / "applications/bowbench.desktop")], capture_output=True, text=True
    )
    assert (run.returncode, run.stdout + run.stderr) == (0, "")


def test_the_kinds_of_file_are_those_of_the_standards():
    space = "{http://www.freedesktop.org/standards/shared-mime-info}"
    top = etree.fromstring(entry_files(Path("bowbench"))["mime/packages/bowbench.xml"])
    found = {kind.find(f"{space}glob").get("pattern"): kind.get("type") for kind in top}
    assert found == {f"*{Path(name).suffix}": kind for name, kind in TYPES.items()}


@pytest.mark.skipif(shutil.which("update-mime-database") is None, reason="Debian package shared-mime-info")
def test_a_desktop_knows_our_files_by_name_and_by_what_is_in_them(tmp_path):
    """Asked of Qt, which reads the database that is built; in a process of its own, for it is read once."""
    install(Path("/usr/bin/bowbench"), tmp_path)
    samples = Path(__file__).parents[2] / "sample_tunes"
    bare = tmp_path / "bare"
    bare.write_bytes((samples / "tuesday_ferry.musicxml").read_bytes())
    code = (
        "import sys\nfrom PySide6.QtCore import QMimeDatabase as D\n"
        "for name in sys.argv[1:]: print(D().mimeTypeForFile(name).name())\n"
    )
    run = subprocess.run(
        [sys.executable, "-c", code, *map(str, (samples / "second_kettle.abc", bare, tmp_path / "a.mxl"))],
        env={"XDG_DATA_HOME": str(tmp_path), "XDG_DATA_DIRS": "/usr/share", "HOME": str(tmp_path)},
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    assert run.stdout.split() == [TYPES["a.abc"], TYPES["a.musicxml"], TYPES["a.mxl"]]
    assert QMimeDatabase().mimeTypeForName("text/plain").isValid()  # the class is what it is said to be


@pytest.mark.parametrize("size", ICON_SIZES)
def test_the_icon_is_drawn_in_every_size(size, tmp_path):
    install(Path("/usr/bin/bowbench"), tmp_path)
    icon = QImage(str(tmp_path / f"icons/hicolor/{size}x{size}/apps/bowbench.png"))
    assert (icon.width(), icon.height()) == (size, size)
    assert icon.pixelColor(0, 0).alpha() == 0  # round corners
    assert len({icon.pixelColor(x, size // 2).name() for x in range(size)}) > 2


def test_the_windows_have_the_icon(qapp):
    assert {size.width() for size in program_icon().availableSizes()} == set(ICON_SIZES)


def test_what_was_put_in_is_taken_out_and_nothing_else(tmp_path):
    other = tmp_path / "applications/other.desktop"
    other.parent.mkdir(parents=True)
    other.write_text("[Desktop Entry]\n")
    written = install(Path("/usr/bin/bowbench"), tmp_path)
    assert set(remove(tmp_path)) == set(written)
    assert not [path for path in written if path.exists()]
    assert other.exists()
    assert remove(tmp_path) == []


def test_the_command_puts_it_in_and_takes_it_out(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    monkeypatch.setattr(desktop_entry, "own_command", lambda: Path("/usr/bin/bowbench"))
    assert main(["desktop", "install"]) == 0
    told = capsys.readouterr().out.split()
    assert str(tmp_path / "applications/bowbench.desktop") in told
    assert main(["desktop", "remove"]) == 0
    assert capsys.readouterr().out.split() == told
    assert main(["desktop", "remove"]) == 0
    assert "no entry" in capsys.readouterr().err


def test_a_folder_that_cannot_be_written_is_one_sentence(tmp_path, monkeypatch, capsys):
    (tmp_path / "applications").write_text("a file where the folder should be")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    monkeypatch.setattr(desktop_entry, "own_command", lambda: Path("/usr/bin/bowbench"))
    assert main(["desktop", "install"]) == 3
    assert capsys.readouterr().err.count("\n") == 1


def test_without_a_command_nothing_is_entered(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    monkeypatch.setattr(desktop_entry, "own_command", lambda: None)
    assert main(["desktop", "install"]) == 2
    assert "install the program first" in capsys.readouterr().err
    assert not (tmp_path / "applications").exists()
