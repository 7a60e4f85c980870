"""Every text has a finished translation in every language, of the texts as they are in the sources now."""

import pytest

from app.language import ENGLISH, LANGUAGES
from tests.translations import ts_file
from tests.translations.__main__ import FOLDER, PLURAL_FORMS, compiled, ts_path
from tests.translations.messages import by_key, messages, named

OTHERS = sorted(set(LANGUAGES) - {ENGLISH})


@pytest.fixture(scope="module")
def found():
    return messages()


@pytest.fixture(scope="module", params=OTHERS)
def language(request):
    return request.param


@pytest.fixture(scope="module")
def entries(language):
    return ts_file.read(ts_path(language))


def test_there_is_a_file_for_each_language_and_no_other():
    assert {path.name for path in FOLDER.iterdir()} == {
        f"bowbench_{code}.{kind}" for code in OTHERS for kind in ("ts", "qm")
    }


def test_one_text_is_counted_everywhere_or_nowhere(found):
    mixed = [places for places in by_key(found).values() if len({message.one for message in places}) > 1]
    assert not mixed


def test_the_file_has_the_texts_of_the_sources(found, entries):
    missing = [key for key in by_key(found) if key not in entries]
    left_over = [key for key in entries if key not in by_key(found)]
    assert not missing, "python -m tests.translations takes these in"
    assert not left_over, "python -m tests.translations --drop forgets these"


def test_the_file_counts_what_the_sources_count(found, language, entries):
    assert ts_file.updated(entries, found, PLURAL_FORMS[language]) == entries


def test_every_text_is_translated(entries):
    assert not [entry.source for entry in entries.values() if entry.state or not all(entry.forms)]


def test_every_count_has_all_forms_of_the_language(language, entries):
    counted = [entry for entry in entries.values() if entry.counted]
    assert counted
    assert not [entry.source for entry in counted if len(entry.forms) != PLURAL_FORMS[language]]


def test_translations_have_the_places_of_the_text(found, entries):
    wrong = []
    for key, places in by_key(found).items():
        count = {"n"} if places[0].one is not None else set()  # "einmal" says it without the figure
        for form in entries[key].forms:
            if named(form) | count != named(key[0]) | count:
                wrong.append((key, form))
    assert not wrong


def test_translations_begin_and_end_as_the_text(entries):
    def blanks(text: str) -> tuple[bool, bool, bool]:
        return text[:1].isspace(), text[-1:].isspace(), text.endswith("…")

    assert not [
        entry.source for entry in entries.values() for form in entry.forms if blanks(form) != blanks(entry.source)
    ]


def test_the_compiled_file_is_that_of_the_translations(language, tmp_path):
    assert compiled(ts_path(language), tmp_path / "new.qm") == (ts_path(language).with_suffix(".qm")).read_bytes()
