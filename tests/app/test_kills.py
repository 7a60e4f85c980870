"""A dozen windows killed at random moments while they are worked in; ``tests.benchmarks.kills`` takes a thousand."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest


@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs processes that begin as copies of one")
def test_a_dozen_kills_lose_nothing_and_leave_nothing_unreadable():
    run = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.kills", "12", "7"],
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    assert run.returncode == 0, run.stdout + run.stderr
    assert "lost or unreadable: 0 of 12" in run.stdout
