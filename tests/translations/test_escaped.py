"""No text for people escapes translation."""

import pytest

from tests.translations.escaped import escaped
from tests.translations.messages import ROOT, python_files

EXCEPTIONS = {
    "app/cli.py": "examples of commands, which are the same in every language",
    "app/lesson_file.py": "name of a thread",
    "app/licences.py": "names of licences and of parts",
    "app/pack_folder.py": "name of the zip where the folder has none",
    "app/pack_form.py": "stands for the lesson on the page, in a list of paths",
    "app/recovery.py": "name of a thread",
    "app/shelf_desk.py": "names of threads",
    "core/engraving/glyphs.py": "error of whoever installed it",
    "core/lesson.py": "name of the bowing that a tune without one has: it is looked for in files",
    "core/reading/abc_marks.py": "keys under which a complaint is said once",
    "core/reading/abc_music.py": "keys under which a complaint is said once",
    "core/reading/abc_slurs.py": "keys under which a complaint is said once",
    "core/shelf/query.py": "what is typed for tunes without a key",
    "core/shelf/search.py": "SQL",
    "core/strings.py": "keys of a table whose words stand beside it",
    "core/style/contexts.py": "names of measurements",
    "core/style/numbers.py": "names of measurements",
    "core/tempos.py": "names of dances, as in the tunes, and where figures are from",
    "core/tune.py": "how a key is told in JSON",
    "core/values.py": "source of methods, and errors of programmers",
    "core/writing/beam_values.py": "values of MusicXML",
}
"""Modules with texts that read like words for people and are none, and what they are."""


@pytest.mark.parametrize("path", python_files(), ids=lambda path: path.relative_to(ROOT).as_posix())
def test_what_people_read_is_to_be_translated(path):
    name = path.relative_to(ROOT).as_posix()
    found = [f"{name}:{line}: {text}" for line, text in escaped(path.read_text("utf-8"))]
    found = [text for text in found if not text.endswith(": Bowbench")]
    if name in EXCEPTIONS:
        assert found, f"{name} is no exception any more"
    else:
        assert not found, "give these to tr, plural or translatable (core/translation.py)"


@pytest.mark.parametrize(
    "source",
    [
        'label.setText("Save")',
        'label.setText("Save" if new else "Save as")',
        'label.setToolTip(f"Save {name}")',
        'TITLE = "A title of a window"',
        'raise RefusedEditError("No stroke begins here.")',
        'said = f"{count} bars are left"',
    ],
)
def test_a_text_that_escapes_is_found(source):
    assert list(escaped(source))


@pytest.mark.parametrize(
    "source",
    [
        'label.setText(tr("Save"))',
        'TITLE = translatable("A title of a window")',
        '"""What this does for people."""',
        'raise ValueError("a count must be above zero")',
        'connection.execute("SELECT path FROM file WHERE id = ?")',
        'label.setObjectName("heading")',
        'class Kind(Enum):\n    SHORT = "short of a bar"',
    ],
)
def test_what_is_no_text_for_people_is_passed_over(source):
    assert not list(escaped(source))
