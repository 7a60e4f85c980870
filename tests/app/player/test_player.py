"""What is heard when: loops, edits, other bowings and speeds, the ladder, sets, and devices that come and go."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from app.document import Document
from app.plan_preview import PlanPreview
from app.player import Player
from app.player_wanted import bars_numbered
from app.set_list import SetList, SetState, SetTune
from core.bowing import Join, join, separate_bows
from core.lesson import Lesson
from core.reading.abc import read_abc
from core.sound.ladder import Ladder
from core.sound.mix import TAIL, Part
from core.sound.track import SAMPLES_A_SECOND
from core.strokes import work_out
from core.tune import Tempo

QUARTER_S = 60 / (112 * 2)  # of a reel that names no tempo: 112 half notes a minute
BAR_S = 4 * QUARTER_S


@pytest.fixture
def two_bowings(document) -> Lesson:
    """The second slurs the last two notes of each of the first two bars."""
    lesson = document.state.lesson
    bowing = separate_bows(lesson.bowings[0], "Slurred")
    for bar in (0, 1):
        bowing = join(lesson.tune, bowing, lesson.tune.bars[bar].notes[-1].id, Join.SLUR)
    document.change("Add", lambda old: Lesson(old.tune, (*old.bowings, bowing)), 0)
    return document.state.lesson


def test_the_mark_is_within_20_ms_of_what_the_device_plays(listener, player, document):
    notes = [note for bar in document.state.tune.bars for note in bar.notes]
    starts = [BAR_S + QUARTER_S * float(bar.number - 1) * 4 + QUARTER_S * float(note.at)
              for bar in document.state.tune.bars for note in bar.notes]  # fmt: skip
    marks: list[tuple[float, str]] = []
    player.moved.connect(lambda moment: moment and marks.append((listener.seconds, moment.note_id)))
    player.play()
    listener.begin()
    began = listener.seconds
    listener.hear(5 * BAR_S)
    changes = [marks[0], *(mark for before, mark in pairwise(marks) if mark[1] != before[1])]
    seen = 0
    for at, note_id in changes:
        heard_at = at - began - player.choice.delay_ms / 1000
        place = bisect_right(starts, heard_at + 1e-3) - 1
        if place >= 0 and not notes[place].is_rest:
            assert note_id == notes[place].id
            assert heard_at - starts[place] <= 0.02
            seen += 1
    assert seen == sum(not note.is_rest for note in notes)


def test_two_bars_come_round_without_a_gap(listener, player, document):
    player.choose(bars=(2, 3), loops=True)
    player.play()
    listener.begin()
    listener.hear(BAR_S + 5 * BAR_S)
    bars = [moment.bar for moment in _moments(listener, 2 * BAR_S)]
    assert set(bars) == {1, 2}
    assert abs(bars.count(1) - bars.count(2)) <= 2


def _moments(listener, seconds: float) -> list:
    found = []
    listener.player.moved.connect(found.append)
    listener.hear(seconds)
    listener.player.moved.disconnect(found.append)
    return found


def test_it_begins_with_the_bar_of_the_note_and_counts_in_before_it(listener, player, document):
    player.play(document.state.tune.bars[2].notes[3].id)
    listener.begin()
    listener.hear(BAR_S / 2)
    assert player.moment.counted > 0
    assert player.moment.note_id == ""
    listener.hear(BAR_S / 2 + 0.1)
    assert player.moment.bar == 2


def test_repeats_are_played_out_and_then_it_ends(listener, player):
    player.play()
    listener.begin()
    moments = _moments(listener, 12 * BAR_S)
    played = dict.fromkeys((moment.bar, moment.pass_number) for moment in moments if moment and not moment.counted)
    assert list(played) == [(bar, number) for number in (1, 2) for bar in range(4)]
    assert not player.plays
    assert sum(map(len, listener.sink.heard)) == pytest.approx(9 * BAR_S * SAMPLES_A_SECOND + TAIL, abs=2)


def test_an_edit_is_heard_the_next_time_round(listener, player, document):
    tune = document.state.tune
    player.choose(bars=(1, 1), loops=True, count_in=0)
    player.play()
    listener.begin()
    listener.hear(BAR_S / 2)
    document.edit("Slur", lambda tune, bowing: join(tune, bowing, tune.bars[0].notes[6].id, Join.SLUR))
    listener.settle()
    this_time = player.moment.recipe.passage.bowing
    assert tune.bars[0].notes[6].id not in this_time.joins
    listener.hear(BAR_S)
    assert tune.bars[0].notes[6].id in player.moment.recipe.passage.bowing.joins
    attacks = player._feed.place.take.performance.attacks
    assert len(attacks) == len(tune.bars[0].notes) - 1


def test_an_edit_just_before_the_end_is_heard_too(listener, player, document):
    player.choose(bars=(1, 1), loops=True, count_in=0)
    player.play()
    listener.begin()
    listener.hear(BAR_S - 0.02)
    document.edit("Slur", lambda tune, bowing: join(tune, bowing, tune.bars[0].notes[6].id, Join.SLUR))
    listener.hear(0.1)
    assert document.state.tune.bars[0].notes[6].id in player.moment.recipe.passage.bowing.joins


def test_another_bowing_is_heard_at_once_and_keeps_the_place(listener, player, document, two_bowings):
    player.play()
    listener.begin()
    listener.hear(1.5 * BAR_S)
    before = player._feed.place
    document.show(1)
    listener.settle()
    after = player._feed.place
    assert after.sample == before.sample
    assert after.take.recipe.passage.bowing is two_bowings.bowings[1]
    bar = player.moment.bar
    listener.hear(0.05)
    assert player.moment.bar == bar
    assert player.moment.recipe.passage.bowing is two_bowings.bowings[1]


def test_another_speed_is_heard_at_once_and_keeps_the_musical_place(listener, player):
    player.play()
    listener.begin()
    listener.hear(2.3 * BAR_S)
    before = player._feed.place
    player.choose(speed=50)
    listener.settle()
    after = player._feed.place
    assert after.take.recipe.speed == Fraction(1, 2)
    assert abs(after.sample - 2 * before.sample) <= 2
    player.change_speed(-5)
    listener.settle()
    assert player._feed.place.take.recipe.speed == Fraction(45, 100)


def test_the_ladder_climbs_counts_in_before_each_rung_and_ends(listener, player):
    player.choose(bars=(1, 1), climbs=True, ladder=Ladder(80, 100, 10, 2), count_in=1)
    assert player.speed == 80
    player.play()
    listener.begin()
    moments = [moment for moment in _moments(listener, 30 * BAR_S) if moment]
    rounds = list(dict.fromkeys((moment.recipe.step.round, round(moment.recipe.speed * 100)) for moment in moments))
    assert rounds == [(0, 80), (1, 80), (2, 90), (3, 90), (4, 100), (5, 100)]
    counted = {moment.recipe.step.round for moment in moments if moment.counted}
    assert counted == {0, 2, 4}
    assert not player.plays


def test_the_ladder_begins_at_its_first_rung_while_it_plays(listener, player):
    player.choose(loops=True)
    player.play()
    listener.begin()
    listener.hear(1.5 * BAR_S)
    player.choose(climbs=True)
    listener.settle()
    listener.hear(0.05)
    assert player.moment.recipe.speed == Fraction(60, 100)
    assert player.speed == 60
    player.change_speed(5)
    assert (player.choice.climbs, player.choice.speed) == (False, 65)


def test_a_set_is_played_tune_after_tune_each_as_often_as_it_says(listener, player, document, sets):
    other = read_abc("X:2\nT:Second\nR:polka\nM:2/4\nL:1/8\nK:G\nGA BG|AB G2|\n").lessons[0]
    sets._state = SetState((SetTune(document.state.lesson, 0, 1), SetTune(other, 0, 2)))
    player.choose(plays_set=True, count_in=0)
    player.play()
    listener.begin()
    moments = [moment for moment in _moments(listener, 20 * BAR_S) if moment]
    order = list(dict.fromkeys((moment.recipe.step, moment.recipe.passage.tune.title) for moment in moments))
    assert [title for _, title in order] == ["Gate of the Weir", "Second", "Second"]
    _, second, third = dict.fromkeys(moment.recipe for moment in moments)
    last = work_out(document.state.tune, document.state.bowing).played[-1].bow
    assert second.after is last
    assert third.after is not None


def test_the_whole_tune_goes_on_with_the_other_bow_where_it_does_not_come_round(listener, player, document):
    document.open(read_abc("X:1\nR:reel\nM:4/4\nL:1/4\nK:D\nd2 fd|\n").lessons[0])
    player.choose(loops=True, count_in=0)
    player.play()
    listener.begin()
    listener.hear(BAR_S / 8)
    first = player.moment.bow.bow
    listener.hear(BAR_S)
    assert player.moment.bow.bow is first.turned


def test_a_preview_is_heard_at_once(listener, player, document, two_bowings):
    player.play()
    listener.begin()
    listener.hear(1.2 * BAR_S)
    preview = PlanPreview(two_bowings.bowings[1], "", {})
    player.show_plan(preview)
    listener.settle()
    assert player._feed.place.take.recipe.passage.bowing is two_bowings.bowings[1]
    player.show_plan(None)
    listener.settle()
    assert player._feed.place.take.recipe.passage.bowing is two_bowings.bowings[0]


def test_a_muted_part_is_not_heard_any_more_from_now_on(listener, player):
    player.hear(Part.BACKING, False)
    player.play()
    listener.begin()
    listener.hear(1.25 * BAR_S)
    player.hear(Part.FIDDLE, False)
    listener.settle()
    listener.hear(0.1)
    listener.sink.heard.clear()
    listener.hear(0.2)
    assert max(abs(piece).max() for piece in listener.sink.heard) == 0


def test_with_no_device_the_mark_goes_on_and_one_sentence_says_why(listener, player, devices):
    devices.fault = "No sound device was found."
    player.play()
    listener.begin()
    listener.hear(1.5 * BAR_S)
    assert player.moment.bar == 0
    assert player.moment.note_id == "b0n4"
    assert listener.told == ["No sound device was found."]
    assert player.silence == "No sound device was found."


def test_a_device_that_is_pulled_out_leaves_the_mark_where_it_is_and_one_plugged_in_is_heard(
    listener, player, devices
):  # fmt: skip
    player.play()
    listener.begin()
    listener.hear(1.5 * BAR_S)
    place = listener.player.moment.note_id
    devices.fault = "No sound device was found."
    devices.changed.emit()
    listener.hear(0.02)
    assert player.moment.note_id in (place, "b0n4")
    assert player.silence
    devices.fault = ""
    devices.changed.emit()
    assert not player.silence
    listener.hear(0.5 * BAR_S)
    assert player.moment.note_id.startswith("b1n")
    assert len(devices.sinks) == 2


def test_a_stalled_device_is_built_anew_while_it_plays(listener, player, devices):
    player.play()
    listener.begin()
    listener.hear(1.5 * BAR_S)
    for _ in range(6):
        listener.seconds += 0.1
        player.tick()
    assert len(devices.sinks) == 2
    listener.hear(0.7 * BAR_S)
    assert player.moment.bar == 1
    assert not player.silence


def test_another_tune_ends_the_playing(listener, player, document, with_pickup):
    player.choose(bars=(2, 3))
    player.play()
    listener.begin()
    document.open(with_pickup)
    assert not player.plays
    assert player.choice.bars is None
    assert listener.sink.device is None


def test_other_bars_are_begun_at_once(listener, player):
    player.play()
    listener.begin()
    listener.hear(1.2 * BAR_S)
    player.choose(bars=(4, 4), count_in=0)
    listener.begin()
    listener.hear(0.1)
    assert player.moment.bar == 3


def test_the_bars_of_a_selection_are_played_round_and_round(listener, player, document):
    player.play_round(("b1n2", "b2n1"))
    assert player.choice.bars == (2, 3)
    assert player.choice.loops
    listener.begin()
    listener.hear(BAR_S + 0.1)
    assert player.moment.bar == 1


def test_bars_are_known_by_their_printed_numbers(four_bars, with_pickup):
    assert bars_numbered(four_bars.tune, (2, 3)) == (1, 2)
    assert bars_numbered(with_pickup.tune, (0, 1)) == (0, 1)
    assert bars_numbered(four_bars.tune, (7, 9)) is None


def test_without_a_tune_it_says_so(qtbot, devices):
    document = Document()
    player = Player(document, SetList(document), devices=devices)
    told: list[str] = []
    player.hinted.connect(told.append)
    player.toggle()
    assert told == ["There is nothing to play: no tune is open."]
    assert not player.plays
    player.close_down()


def test_the_tempo_of_the_lesson_is_kept(listener, player, document):
    tempo = Tempo(Fraction(2), Fraction(56))
    document.change("Tempo", lambda lesson: replace(lesson, reach=replace(lesson.reach, tempo=tempo)), 0)
    player.choose(count_in=0)
    player.play()
    listener.begin()
    listener.hear(BAR_S + 0.1)
    assert player.moment.bar == 0
    listener.hear(BAR_S)
    assert player.moment.bar == 1
