"""Pieces of work at the same time, and leaving them off."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import CancelledError
from threading import Event, current_thread

import pytest

from core.style.together import done_together

LONG_S = 30  # a test that hangs ends after this


def rounds(count: int, answer: int) -> Callable[[Callable[[], None]], int]:
    def piece(after_round: Callable[[], None]) -> int:
        for _ in range(count):
            after_round()
        return answer

    return piece


def test_answers_come_in_the_order_of_the_pieces() -> None:
    told: list[int] = []
    assert done_together([rounds(count, count) for count in (50, 0, 5)], told.append) == [50, 0, 5]
    assert told == sorted(told)
    assert told[-1] == 55


def test_the_watch_is_called_in_the_callers_thread() -> None:
    threads = set()
    done_together([rounds(1, 1)], lambda _: threads.add(current_thread()))
    assert threads == {current_thread()}


def test_what_is_left_off_ends_with_its_round() -> None:
    begun, ended = Event(), Event()

    def piece(after_round: Callable[[], None]) -> None:
        try:
            while True:
                begun.set()
                after_round()
        except CancelledError:
            ended.set()
            raise

    def watch(done: int) -> None:
        assert begun.wait(LONG_S)
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        done_together([piece], watch)
    assert ended.wait(LONG_S)


def test_nobody_waits_for_a_round_that_is_long() -> None:
    goes_on, ended = Event(), Event()

    def piece(after_round: Callable[[], None]) -> None:
        goes_on.wait(LONG_S)
        ended.set()

    def watch(done: int) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        done_together([piece], watch)
    assert not ended.is_set()
    goes_on.set()
    assert ended.wait(LONG_S)


def test_a_piece_that_fails_says_why() -> None:
    def piece(after_round: Callable[[], None]) -> int:
        raise ValueError("no")

    with pytest.raises(ValueError, match="no"):
        done_together([rounds(3, 1), piece], lambda _: None)
