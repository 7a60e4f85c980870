"""The fiddle as it is heard: everything here is measured on its samples.

Limits: a stroke is heard to begin where the level dips 6 dB or more, a slur where it does not (ours, with room on
either side); an onset is in time within 6 ms (Friberg and Sundberg, JASA 98, 1995, 2524), a tempo within 1.5 %
(Drake and Botte, Perception & Psychophysics 54, 1993, 277), from their abstracts.
"""

from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Articulation, Bowing, Join, Ornament, Signs
from core.planner import PlannerSettings, work_out_plan
from core.reading import read_file
from core.sound.fiddle import fiddle
from core.sound.fiddle_bank import keys, sounding
from core.sound.performance import Manner, Performance, perform
from core.sound.track import SAMPLES_A_SECOND, sample_at
from core.tune import Bar, Note, Pitch, Tempo, Tune
from tests.core.builders import bowed
from tests.core.sound.measures import cents_off, dip_db, level_db, levels, noise_db, onset
from tests.core.test_sample_tunes import SAMPLES
from tests.property.strategies import bowings, tunes

STROKE_DIP_DB = SLUR_DIP_DB = 6
CLEAR_S = 0.090  # a slurred note so far from its stroke's edges stands for itself
SPELLED = ("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B")
TEMPOS = st.sampled_from([80, 112, 150, 184, 224]).map(lambda quarters: Tempo(Fraction(1), Fraction(quarters)))


def heard(performance: Performance) -> np.ndarray:
    return fiddle(performance).render(0, sample_at(performance.end) + SAMPLES_A_SECOND // 2)


def pitch(key: int) -> Pitch:
    return Pitch(key // 12 - 1, SPELLED[key % 12][0], len(SPELLED[key % 12]) - 1)


@st.composite
def lines(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """Four bars of eighths in the range of the fiddle, by steps and leaps, in strokes of one to four."""
    key = draw(st.integers(60, 80))
    keys = []
    for leap in draw(st.lists(st.sampled_from((-7, -4, -3, -2, -1, 1, 2, 3, 5, 8)), min_size=32, max_size=32)):
        keys.append(key)
        key += leap if 55 <= key + leap <= 88 else -leap
    notes = [Note(f"n{place}", Fraction(place % 8, 2), Fraction(1, 2), (pitch(key),)) for place, key in enumerate(keys)]
    bars = tuple(Bar(first // 8 + 1, tuple(notes[first : first + 8])) for first in range(0, 32, 8))
    joins: dict[str, Join] = {}
    place = 0
    for size in draw(st.lists(st.integers(1, 4), min_size=32, max_size=32)):
        joins.update((f"n{slurred}", Join.SLUR) for slurred in range(place + 1, min(place + size, 32)))
        place += size
    return Tune("Line", bars), Bowing("Drawn", immutabledict(joins))


NO_SHRINKING = tuple(set(Phase) - {Phase.shrink, Phase.explain})  # rendering is too slow for hundreds of trials


@settings(max_examples=12, deadline=None, phases=NO_SHRINKING)
@given(lines(), TEMPOS)
def test_the_ear_hears_strokes_slurs_pitches_and_times(line, tempo):
    performance = perform(*line, manner=Manner(tempo))
    sound = heard(performance)
    measured = levels(sound)
    for before, attack in pairwise(performance.attacks):
        assert dip_db(measured, float(attack.begin)) >= STROKE_DIP_DB, (before, attack)
        assert abs(onset(sound, float(attack.begin), float(attack.end)) - attack.begin) < 0.006
    for attack in performance.attacks:
        ends = [float(tone.begin) for tone in attack.tones[1:]] + [float(attack.end)]
        for number, (tone, end) in enumerate(zip(attack.tones, ends, strict=True)):
            if number and min(tone.begin - attack.begin, attack.end - tone.begin) >= CLEAR_S:
                assert dip_db(measured, float(tone.begin)) < SLUR_DIP_DB, tone
            if end - tone.begin > 0.12:
                assert abs(cents_off(sound, float(tone.begin), end, tone.keys[0])) < 15, tone


def beating(keys: tuple[int, ...]) -> bool:
    """Whether a double stop is so close that its own level goes up and down some times a second."""
    return any(after - before < 3 for before, after in pairwise(keys))


@settings(max_examples=12, deadline=None, phases=NO_SHRINKING)
@given(st.data(), tunes(), TEMPOS)
def test_strokes_and_slurs_are_told_apart_in_any_bowing(data, tune, tempo):
    performance = perform(tune, data.draw(bowings(tune)), manner=Manner(tempo))
    measured = levels(heard(performance))
    for before, attack in pairwise(performance.attacks):
        if min(before.sounds_until - before.begin, attack.sounds_until - attack.begin) >= CLEAR_S:
            silence = before.sounds_until < attack.begin
            assert dip_db(measured, float(attack.begin), after_silence=silence) >= STROKE_DIP_DB, (before, attack)
    for attack in performance.attacks:
        for before, tone in pairwise(attack.tones):
            apart = min(tone.begin - attack.begin, attack.sounds_until - tone.begin)
            if apart >= CLEAR_S and not beating(before.keys) and not beating(tone.keys):
                assert dip_db(measured, float(tone.begin)) < SLUR_DIP_DB, tone


def test_tempo_does_not_drift():
    tune, bowing = bowed("|:" + "ABcdefga|" * 16)
    performance = perform(tune, bowing, manner=Manner(Tempo(Fraction(2), Fraction(112))))
    sound = heard(performance)
    found = [onset(sound, float(attack.begin), float(attack.end)) for attack in performance.attacks]
    beats = np.diff(found[::4])  # half notes
    assert np.abs(beats / (60 / 112) - 1).max() < 0.015
    assert abs(found[-1] - found[0] - float(performance.attacks[-1].begin)) < 0.006


@pytest.mark.parametrize("key", [55, 62, 69, 76, 81, 88])
def test_an_accented_note_is_at_least_3_db_louder_than_a_plain_one_of_the_same_pitch(key):
    notes = tuple(Note(f"n{place}", Fraction(place), Fraction(1), (pitch(key),)) for place in range(4))
    tune = Tune("Four", (Bar(1, notes),))
    silent = AccentPlan(PlanKind.NONE)
    signs = immutabledict({"n2": Signs(articulations=(Articulation.ACCENT,))})
    plans = {"plan": Bowing("Plan", accents=AccentPlan(PlanKind.PLACES, (Fraction(1), Fraction(2)))),
             "sign": Bowing("Sign", accents=silent, signs=signs)}  # fmt: skip
    for bowing in plans.values():
        performance = perform(tune, bowing, manner=Manner(Tempo(Fraction(1), Fraction(200))))
        sound = heard(performance)
        loud = [level_db(sound, float(a.begin) + 0.005, float(a.begin) + 0.12) for a in performance.attacks]
        assert loud[2] - loud[0] >= 3  # both are down-bows
        if bowing.name == "Plan":
            assert loud[1] - loud[0] >= 3  # an up-bow, beside a plain down-bow
            assert loud[2] > loud[1]
        else:
            assert 0.5 < loud[0] - loud[1] < 3  # down-bows are a little stronger


def test_a_slurred_note_speaks_without_the_noise_of_an_attack():
    cleaner = []
    for key in range(62, 86):
        first, second = (Note(f"n{k}", Fraction(k), Fraction(1), (pitch(key - 2 + 2 * k),)) for k in (0, 1))
        tune = Tune("Two", (Bar(1, (first, second)),))
        noise = []
        for joins in ({}, {"n1": Join.SLUR}):
            bowing = Bowing("Two", immutabledict(joins), accents=AccentPlan(PlanKind.NONE))
            sound = heard(perform(tune, bowing, manner=Manner(Tempo(Fraction(1), Fraction(120)))))
            noise.append(noise_db(sound, 0.505, 0.555, key))
        cleaner.append(noise[0] - noise[1])
    assert np.median(cleaner) > 3


@pytest.mark.parametrize("name", ["tuesday_ferry", "lock_keepers_spectacles", "mistress_orrick", "stools_to_the_wall"])
def test_two_bowings_of_one_tune_put_their_weight_on_their_own_beats(name):
    lesson = read_file((SAMPLES / f"{name}.abc").read_bytes()).lessons[0]
    weights = {}
    for kind in (PlanKind.ON_BEAT, PlanKind.BACKBEAT):
        bare = Bowing(kind.value, accents=AccentPlan(kind))
        bowing = work_out_plan(lesson.tune, bare, PlannerSettings(), keep=False).bowing
        performance = perform(lesson.tune, bowing)
        sound = heard(performance)
        begun: dict[Fraction, list[float]] = {}
        for visit, bar in enumerate(performance.bars):
            for place in map(Fraction, range(4)):
                if lesson.tune.bars[bar.bar].length == 4:
                    at = float(performance.second_of(visit, place))
                    begun.setdefault(place, []).append(level_db(sound, at + 0.005, at + 0.1))
        weights[kind] = {int(place): np.median(found) for place, found in begun.items()}
    on, back = weights[PlanKind.ON_BEAT], weights[PlanKind.BACKBEAT]
    assert min(on[0], on[2]) - max(on[1], on[3]) >= 3
    assert min(back[1], back[3]) - max(back[0], back[2]) >= 3


@settings(max_examples=8, deadline=None, phases=NO_SHRINKING)
@given(st.data(), tunes(), st.integers(1, 5000))
def test_blocks_of_any_size_join_to_the_same_samples(data, tune, size):
    track = fiddle(perform(tune, data.draw(bowings(tune))))
    length = min(sum(clip.length for clip in track.clips), 4 * SAMPLES_A_SECOND)
    joined = [track.render(start, min(size, length - start)) for start in range(0, length, size)]
    assert np.array_equal(np.concatenate([*joined, np.zeros(0, np.float32)]), track.render(0, length))


def test_a_note_read_for_longer_is_the_same_note():
    short, long = sounding(70, 20_000, attacked=True), sounding(70, 200_000, attacked=True)
    assert np.array_equal(short[:16_000], long[:16_000])


def test_a_long_note_stays_in_tune_and_at_its_level():
    for key in map(round, keys()):
        sound = sounding(key, 6 * SAMPLES_A_SECOND, attacked=True)
        assert abs(cents_off(sound, 0.5, 6, key)) < 5
        loud = [level_db(sound, second, second + 0.5) for second in np.arange(0, 5.5, 0.5)]
        assert max(loud) - min(loud) < 3


def test_a_double_stop_sounds_both_notes():
    tune = Tune("Stop", (Bar(1, (Note("n", Fraction(0), Fraction(4), (pitch(62), pitch(69))),)),))
    sound = heard(perform(tune, Bowing("Plain"), manner=Manner(Tempo(Fraction(1), Fraction(60)))))
    spectrum = np.abs(np.fft.rfft(sound[:SAMPLES_A_SECOND]))
    floor = np.median(spectrum[200:800])
    for key in (62, 69):
        hertz = round(440 * 2 ** ((key - 69) / 12))
        assert spectrum[hertz - 3 : hertz + 4].max() > 20 * floor


def test_a_slide_comes_from_below():
    tune = Tune("Slide", (Bar(1, (Note("n", Fraction(0), Fraction(2), (pitch(69),)),)),))
    bowing = Bowing("Slid", signs=immutabledict({"n": Signs(ornaments=(Ornament.SLIDE,))}))
    sound = heard(perform(tune, bowing, manner=Manner(Tempo(Fraction(1), Fraction(60)))))
    early = sound[: round(0.03 * SAMPLES_A_SECOND)]
    late = sound[round(0.3 * SAMPLES_A_SECOND) : round(0.33 * SAMPLES_A_SECOND)]

    def hertz(stretch: np.ndarray) -> float:
        spectrum = np.abs(np.fft.rfft(stretch * np.hanning(len(stretch)), 1 << 16))
        low, high = int(380 / SAMPLES_A_SECOND * (1 << 16)), int(480 / SAMPLES_A_SECOND * (1 << 16))
        return (low + int(spectrum[low:high].argmax())) * SAMPLES_A_SECOND / (1 << 16)

    assert 1200 * np.log2(hertz(late) / hertz(early)) > 40


def test_no_signs_no_sound():
    tune = Tune("Rest", (Bar(1, (Note("n", Fraction(0), Fraction(4)),)),))
    assert not np.any(heard(perform(tune, Bowing("Plain"))))
