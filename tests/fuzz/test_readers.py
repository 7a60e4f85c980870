"""A few hundred inputs for each reader, the same at every run; ``python -m tests.fuzz`` feeds as many as are wanted."""

from __future__ import annotations

import time

import pytest

from tests.fuzz import running
from tests.fuzz.outcomes import READ, REFUSED
from tests.fuzz.readers import READERS, input_of, reader_of
from tests.fuzz.running import HANG_S, Report, run

SEED = 1
COUNTS = {"abc": 250, "musicxml": 250, "mxl": 300, "fields": 250, "manifest": 150, "recovery": 120, "shelf": 60}
OTHERS = 200


@pytest.mark.parametrize("name", READERS)
def test_a_reader_reads_or_refuses_whatever_it_is_given(name: str, qapp: object) -> None:
    reader = reader_of(name)
    for number in range(1, COUNTS.get(name, OTHERS)):  # number 0 would be followed through everything
        began = time.monotonic()
        assert reader.feed(input_of(name, SEED, number), number) in (READ, REFUSED)
        assert time.monotonic() - began < 2 * HANG_S, number


@pytest.mark.parametrize("name", READERS)
def test_an_input_is_the_same_ever_again(name: str, qapp: object) -> None:
    assert [input_of(name, 3, number) for number in range(5)] == [input_of(name, 3, number) for number in range(5)]
    assert input_of(name, 3, 1) != input_of(name, 4, 1)


def test_what_fails_hangs_or_dies_is_kept_and_counted_and_the_run_goes_on(tmp_path: object) -> None:
    report = run("faulty", 12, seed=5, keep=tmp_path, hang_s=1)
    assert report.outcomes == {READ: 8, "failed": 4}
    assert sorted(kind.split(" ")[0] for kind in report.kinds) == ["HangError", "MemoryError", "ValueError", "crash,"]
    assert {path.name for path in tmp_path.iterdir()} == {
        f"faulty-5-{number}.txt{ending}" for number in (2, 5, 6, 8) for ending in ("", ".why")
    }


def test_a_run_that_is_interrupted_tells_what_came_of_its_inputs(monkeypatch: pytest.MonkeyPatch) -> None:
    workers: list[running._Worker] = []
    begin = running._Worker._begin
    monkeypatch.setattr(running._Worker, "_begin", lambda worker, at: (workers.append(worker), begin(worker, at)))

    def interrupt(*_: object) -> None:
        time.sleep(0.1)
        if workers[0]._state.read >= 3:
            raise KeyboardInterrupt

    monkeypatch.setattr(running, "wait", interrupt)
    report = run("arguments", 10**6, seed=5)
    assert 3 <= report.outcomes[READ] < 10**6
    assert not workers[0]._process.is_alive()


def test_a_report_tells_what_failed_first() -> None:
    report = Report("abc", 7)
    assert [report.fail("KeyError", number) for number in (4, 9)] == [1, 2]
    assert "2 × KeyError (first: number 4)" in str(report)
