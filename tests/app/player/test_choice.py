"""What is remembered of how tunes are played."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.player_choice import MOST_COUNTED, MOST_DELAY_MS, PlayerChoice, read_choice, write_choice
from core.sound.ladder import Ladder
from core.sound.mix import Part


@given(
    st.builds(
        PlayerChoice,
        ladder=st.builds(lambda first, more, step: Ladder(first, first + more, step, 2),
                         st.integers(10, 100), st.integers(0, 50), st.integers(2, 9)),
        count_in=st.integers(0, MOST_COUNTED),
        levels=st.fixed_dictionaries({part: st.integers(-24, 6).map(float) for part in Part}).map(
            PlayerChoice().levels.update
        ),
        muted=st.frozensets(st.sampled_from(list(Part))),
        delay_ms=st.integers(-MOST_DELAY_MS, MOST_DELAY_MS),
    )
)  # fmt: skip
def test_what_is_written_is_read_again(choice):
    assert read_choice(write_choice(choice)) == choice


def test_what_belongs_to_one_practice_is_not_kept():
    choice = PlayerChoice(speed=40, loops=True, bars=(3, 4), climbs=True, plays_set=True)
    assert read_choice(write_choice(choice)) == PlayerChoice()


@pytest.mark.parametrize(
    "text",
    ["", "{", "[]", "7", '{"ladder": [90, 60, 5, 1]}', '{"ladder": "abcd"}', '{"count_in": true, "delay_ms": 1e9}',
     '{"levels": {"fiddle": 90, "click": "x"}, "muted": 3}', '{"levels": {"fiddle": NaN}}', "[" * 100_000],
)  # fmt: skip
def test_nonsense_leaves_all_as_it_is_at_first(text):
    assert replace(read_choice(text), muted=PlayerChoice().muted) == PlayerChoice()


def test_muted_parts_are_not_heard_and_keep_their_level():
    choice = PlayerChoice(muted=frozenset({Part.BACKING}))
    assert Part.BACKING not in choice.heard
    assert choice.levels[Part.BACKING] == 0.0
