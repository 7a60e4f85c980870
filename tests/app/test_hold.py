"""Claims on a file: one at a time, across processes, and none outlives its process."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from app.hold import Hold, hold_on, turn

HOLDER = """
import sys; from pathlib import Path; from app.hold import Hold
print(Hold(Path(sys.argv[1])).take(), flush=True); sys.stdin.read()
"""
COUNTER = """
import sys; from pathlib import Path; from app.hold import Hold, turn
folder, rounds = Path(sys.argv[1]), int(sys.argv[2])
for _ in range(rounds):
    with turn(Hold(folder / "turn"), 60):
        count = folder / "count"
        count.write_text(str(int(count.read_text()) + 1))
"""


def test_only_one_has_a_claim_and_letting_go_leaves_nothing(tmp_path: Path):
    first, second = Hold(tmp_path / "a" / "claim"), Hold(tmp_path / "a" / "claim")
    assert first.take()
    assert first.take()  # again is no harm
    assert not second.take()
    first.let_go()
    assert list((tmp_path / "a").iterdir()) == []
    assert second.take()
    second.let_go()


def test_a_claim_ends_with_a_process_that_is_killed(tmp_path: Path):
    with subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(tmp_path / "claim")], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    ) as holder:
        assert holder.stdout is not None
        assert holder.stdout.readline() == b"True\n"
        mine = Hold(tmp_path / "claim")
        assert not mine.take()
        os.kill(holder.pid, signal.SIGKILL)
        holder.wait()
    assert (tmp_path / "claim").exists()
    assert mine.take()
    mine.let_go()


def test_processes_that_take_turns_lose_no_count(tmp_path: Path):
    (tmp_path / "count").write_text("0")
    run = [sys.executable, "-c", COUNTER, str(tmp_path), "60"]
    counters = [subprocess.Popen(run) for _ in range(3)]
    assert [counter.wait() for counter in counters] == [0, 0, 0]
    assert (tmp_path / "count").read_text() == "180"


def test_waiting_for_a_turn_ends(tmp_path: Path):
    held = Hold(tmp_path / "claim")
    held.take()
    with pytest.raises(TimeoutError), turn(Hold(tmp_path / "claim"), 0.05):
        pass
    held.let_go()


def test_a_file_is_claimed_by_whatever_way_it_is_reached(tmp_path: Path):
    (tmp_path / "real").write_text("")
    (tmp_path / "link").symlink_to(tmp_path / "real")
    folder = tmp_path / "claims"
    assert hold_on(folder, tmp_path / "link").path == hold_on(folder, tmp_path / "real").path
    assert hold_on(folder, tmp_path / "other").path != hold_on(folder, tmp_path / "real").path
