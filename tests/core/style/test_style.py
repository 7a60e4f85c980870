"""What a style learns of an invented hand, and the laws that it keeps."""

from dataclasses import replace

import numpy as np
import pytest

from core.errors import UnreadableFileError
from core.style.habits import habits
from core.style.learning import TooLittleError, example, first_bars, learn, marked_only
from core.style.style import chance, from_bytes, log_odds, say, to_bytes
from core.tune import Words
from tests.core.style.hands import LESSONS, examples, falls_from_the_beat, lesson, style

NEW = 100  # seed of a lesson that was not learned from


def test_it_knows_the_hand_in_a_tune_that_it_was_not_learned_from():
    for seed in range(NEW, NEW + 5):
        one = example(*lesson(seed))
        said = chance(say(style(), one.read, marked_only(one, first_bars(one))))
        assert np.mean((said > 0.5) == (one.joined > 0)) > 0.95


def test_it_takes_a_hand_from_the_marked_bars():
    """Nothing is slurred in the first bars of a tune: much less will be in the others than where they are slurred."""
    tune, bowing = lesson(NEW)
    bare = replace(bowing, joins=bowing.joins.__class__())
    slurred, plain = (log_odds(style(), tune, each, range(4)) for each in (bowing, bare))
    others = [note_id for note_id in slurred if tune.bar_of[note_id] >= 4 and note_id in bowing.joins]
    assert np.mean([plain[note_id] for note_id in others]) < np.mean([slurred[note_id] for note_id in others]) - 1


def test_the_same_lessons_give_the_same_style_and_the_same_answers():
    again = learn(examples(), "Invented")
    assert to_bytes(again) == to_bytes(style())
    tune, bowing = lesson(NEW)
    assert log_odds(again, tune, bowing, range(4)) == log_odds(style(), tune, bowing, range(4))


def test_a_saved_style_says_the_same():
    tune, bowing = lesson(NEW)
    read = from_bytes(to_bytes(style()))
    assert log_odds(read, tune, bowing, range(4)) == log_odds(style(), tune, bowing, range(4))
    assert (read.name, read.notice, read.figures) == (style().name, style().notice, style().figures)
    assert read.habits == style().habits == habits(examples())


@pytest.mark.parametrize("share", [0.0, 0.1, 0.4, 0.6])
def test_learning_tells_how_far_it_is_and_can_be_left_off(share):
    told = []

    def watch(done, total):
        told.append(done / total)
        if told[-1] >= share:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        learn(examples(), "Invented", watch=watch)
    assert told == sorted(told)
    assert all(each < share for each in told[:-1])
    assert told[-1] < 1


def test_learning_ends_where_all_is_done():
    told = []
    learn(examples(), "Invented", watch=lambda done, total: told.append(done / total))
    assert told[0] == 0
    assert told == sorted(told)
    assert told[-1] == 1


@pytest.mark.parametrize("data", [b"", b"no style", to_bytes(style())[:-100]])
def test_what_is_no_style_is_refused_in_a_sentence(data):
    with pytest.raises(UnreadableFileError, match="This is no style"):
        from_bytes(data)


def test_a_style_whose_trees_lead_nowhere_is_refused():
    (forest, *others), *stages = style().forests
    for astray in (
        replace(forest, rules_out=~np.zeros_like(forest.rules_out)),
        replace(forest, value=forest.value[:, :0]),
        replace(forest, value=np.hstack([forest.value] * 9)),
        replace(forest, column=forest.column + 999),
        replace(forest, column=forest.column / 2),
        replace(forest, limit=forest.limit[1:]),
    ):
        with pytest.raises(UnreadableFileError, match="This is no style"):
            from_bytes(to_bytes(replace(style(), forests=((astray, *others), *stages))))


def test_equal_bars_are_answered_alike():
    tune, bowing = lesson(NEW)
    odds = log_odds(style(), tune, bowing, ())
    for first, again in ((0, 4), (1, 5), (8, 12), (9, 13)):
        inner = zip(tune.bars[first].notes[1:], tune.bars[again].notes[1:], strict=True)
        assert all(odds[one.id] == odds[other.id] for one, other in inner)


def test_bars_equal_to_a_marked_one_are_slurred_as_it_is():
    tune, bowing = lesson(NEW, lambda at: ~falls_from_the_beat(at) & (at.index % 3 == 1))
    odds = log_odds(style(), tune, bowing, range(4))
    for first, again in ((0, 4), (1, 5)):
        for one, other in zip(tune.bars[first].notes[1:], tune.bars[again].notes[1:], strict=True):
            assert (odds[other.id] > 0) == (one.id in bowing.joins)


def test_too_few_lessons_or_slurs_are_too_little_to_learn_from():
    with pytest.raises(TooLittleError, match=r"bowed lessons: 3, .* at least 12"):
        learn(examples()[:3], "Few")
    bare = [example(tune, replace(bowing, joins=bowing.joins.__class__())) for tune, bowing in map(lesson, range(12))]
    with pytest.raises(TooLittleError, match="slurred notes: 0"):
        learn(bare, "Bare")


def test_nothing_is_learned_behind_the_word_segue():
    tune, bowing = lesson(NEW)
    bar = replace(tune.bars[4], words=(Words(tune.bars[4].notes[2].at, "SEGUE"),))
    told = example(replace(tune, bars=(*tune.bars[:4], bar, *tune.bars[5:])), bowing)
    known = [note_id for note_id, joined in zip(told.read.found.ids, told.joined, strict=True) if joined >= 0]
    assert known[-1] == tune.bars[4].notes[1].id
    assert len(example(tune, bowing).joined) > len(known)


def test_a_style_says_what_it_was_learned_from():
    figures = style().figures
    assert figures.lessons == LESSONS
    assert figures.joined == sum(len(bowing.joins) for _, bowing in map(lesson, range(LESSONS)))
