"""Every limit of ``core.reading.limits``: what is just below it is read, what is above is told in a sentence."""

from __future__ import annotations

import pytest

from core.errors import UnreadableFileError
from core.reading import limits, read_file
from core.reading.abc import read_abc
from core.reading.musicxml import read_musicxml, read_mxl
from core.tune import Tune
from tests.core.reading.scores import note, part, score, scores
from tests.fuzz.on_lessons import pack

HEAD = "X:1\nL:1/8\nK:C\n"
SCORE = score(note("A4", 4)).encode()


def tune_of(text: str) -> Tune:
    return read_abc(text).lessons[0].tune


def told(problems: object, words: str) -> bool:
    return any(words in problem.text and problem.text.endswith(".") for problem in problems)


# What holds N of something, and the sentence when there are more than N. The limit is made small where it is large.
LEFT_OUT = [
    ("core.reading.abc", "MAX_TUNES", 3, lambda n: f"{HEAD}A|\n\n" * n, "more than 3 tunes: the rest is left out"),
    ("core.reading.abc_music", "MAX_BARS", 5, lambda n: HEAD + "A|" * n, "more than 5 bars: what follows is left out"),
    ("core.reading.abc_music", "MAX_NOTES", 256, lambda n: HEAD + "A" * n, "more than 256 notes: it is cut there"),
    ("core.reading.abc_music", "MAX_PITCHES", 16, lambda n: f"{HEAD}[{'A' * n}]|", "more than 16 notes is cut"),
    ("core.reading.abc_marks", "MAX_GRACES", 64, lambda n: f"{HEAD}{{{'g' * n}}}A|", "More than 64 grace notes"),
]
LEFT_OUT_OF_SCORES = [
    ("musicxml", "MAX_PARTS", 4,
     lambda n: scores(*(part(note("A4", 4), part_id=f"P{i}") for i in range(1, n + 1)), names=("A",) * n),
     "more than 4 parts: some were left out"),
    ("measure_reader", "MAX_BARS", 5, lambda n: score(*[note("A4", 4)] * n), "more than 5 measures: the rest was left"),
    ("measure_reader", "MAX_NOTES_IN_SCORE", 6, lambda n: score(*[note("A4", 4)] * n), "more than 6 notes: the rest"),
    ("musicxml_bars", "MAX_NOTES", 256, lambda n: score(note("A4", 0.25) * n),
    "more than 256 notes: the rest was left"),
    ("measure_reader", "MAX_GRACES", 64,
     lambda n: score("<note><grace/><pitch><step>A</step><octave>4</octave></pitch></note>" * n + note("A4", 4)),
     "More than 64 grace notes"),
]  # fmt: skip


@pytest.mark.parametrize(("module", "name", "most", "text", "words"), LEFT_OUT, ids=[row[1] for row in LEFT_OUT])
def test_what_is_beyond_a_limit_of_abc_is_left_out_and_told(monkeypatch, module, name, most, text, words) -> None:
    monkeypatch.setattr(f"{module}.{name}", most)
    assert not told(read_abc(text(most)).problems, words)
    assert told(read_abc(text(most + 1)).problems, words)


@pytest.mark.parametrize(
    ("module", "name", "most", "text", "words"), LEFT_OUT_OF_SCORES, ids=[row[1] for row in LEFT_OUT_OF_SCORES]
)
def test_what_is_beyond_a_limit_of_scores_is_left_out_and_told(monkeypatch, module, name, most, text, words) -> None:
    if name == "MAX_NOTES_IN_SCORE":
        monkeypatch.setattr(f"core.reading.{module}.Budget.__init__.__defaults__", (most,))
    monkeypatch.setattr(f"core.reading.{module}.{name}", most)
    assert not told(read_musicxml(text(most).encode()).problems, words)
    assert told(read_musicxml(text(most + 1).encode()).problems, words)


def test_a_book_of_too_many_notes_ends_before_the_tune_that_has_no_room(monkeypatch) -> None:
    monkeypatch.setattr("core.reading.abc.MAX_NOTES_IN_BOOK", 10)
    book = f"{HEAD}ABc|\n\n" * 3  # six each, with three for the bar
    reading = read_abc(book)
    assert len(reading.lessons) == 2
    assert told(reading.problems, "more than 10 notes and bars: the rest is left out")


def test_a_tuplet_of_too_many_notes_is_none() -> None:
    assert tune_of(f"{HEAD}({limits.MAX_TUPLET}:2:1AB|").sequence[0].tuplet is not None
    assert tune_of(f"{HEAD}({limits.MAX_TUPLET + 1}:2:1AB|").sequence[0].tuplet is None


def test_an_ending_for_too_many_passes_is_none() -> None:
    assert tune_of(f"{HEAD}|:A|[1-{limits.MAX_PASSES}B:|").bars[1].ending
    assert not tune_of(f"{HEAD}|:A|[1-{limits.MAX_PASSES + 1}B:|").bars[-1].ending


@pytest.mark.parametrize(
    ("limit", "most", "data", "sentence"),
    [
        (
            "abc.MAX_TEXT",
            2 * 10**6,
            lambda n: HEAD + "A|" + " " * (n - len(HEAD) - 2),
            "longer than 2 million characters",
        ),
        ("abc.MAX_LINES", 10, lambda n: HEAD + "A|" + "\n" * (n - 3), "more than 10 lines"),
        ("xml_tree.MAX_MARKUP", 200, lambda n: _marked_up(n), "more than 200 tags and attributes"),
        ("xml_tree.MAX_BYTES", 2**20, lambda n: _padded(n), "at most 1 are read"),
    ],
    ids=["text", "lines", "markup", "bytes"],
)
def test_a_file_beyond_a_limit_is_refused(monkeypatch, limit, most, data, sentence) -> None:
    monkeypatch.setattr(f"core.reading.{limit}", most)
    assert read_file(data(most).encode()).lessons
    with pytest.raises(UnreadableFileError, match=sentence):
        read_file(data(most + 1).encode())


def _marked_up(count: int) -> str:
    text = SCORE.decode()
    return text.replace("<note ", "<x/>" * (count - text.count("<") - text.count("=")) + "<note ")


def _padded(count: int) -> str:
    text = SCORE.decode()
    return text + " " * (count - len(text))


def test_a_packed_file_of_too_many_members_is_refused_by_its_directory() -> None:
    members = [("a.xml", SCORE), *((f"{number}.txt", b"") for number in range(limits.MAX_MEMBERS - 1))]
    assert read_mxl(pack(members, 0)).lessons
    with pytest.raises(UnreadableFileError, match="has 1001 members; at most 1000 are read"):
        read_mxl(pack([*members, ("one.txt", b"")], 0))


def test_what_unpacks_to_more_than_a_document_may_have_is_refused(monkeypatch) -> None:
    monkeypatch.setattr("core.reading.mxl.MAX_BYTES", 2**20)
    assert read_mxl(pack([("a.xml", _padded(2**20).encode())], 8)).lessons
    with pytest.raises(UnreadableFileError, match="unpacks to more than 1 megabytes"):
        read_mxl(pack([("a.xml", _padded(2**20 + 1).encode())], 8))


@pytest.mark.parametrize("depth", [200, 300])
def test_a_document_is_read_to_a_depth_and_no_deeper(depth: int) -> None:
    nested = "<x>" * depth + "</x>" * depth
    data = SCORE.replace(b"<note ", nested.encode() + b"<note ", 1)
    if depth < 250:
        assert read_musicxml(data).lessons
    else:
        with pytest.raises(UnreadableFileError, match="no complete XML document"):
            read_musicxml(data)
