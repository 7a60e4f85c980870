from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Articulation, Bow, Grace, Ornament, Signs
from core.sound.attacks import Start
from core.sound.loops import excerpt
from core.sound.performance import PLAIN, Manner, Performance, perform
from core.strokes import work_out
from core.tempos import pace
from core.tune import Pitch, Tempo
from tests.core.builders import bowed
from tests.property.strategies import bowings, tunes

NO_ACCENTS = AccentPlan(PlanKind.NONE)
TEMPO = Tempo(Fraction(1), Fraction(120))  # a quarter is half a second, an eighth a quarter of one


def played(text: str, meter: str = "4/4", signs: dict[str, Signs] | None = None, **manner: object) -> Performance:
    tune, bowing = bowed(text, meter, NO_ACCENTS)
    bowing = replace(bowing, signs=immutabledict({**bowing.signs, **(signs or {})}))
    return perform(tune, bowing, manner=Manner(**{"tempo": TEMPO, **manner}))


def attacks(performance: Performance) -> list[tuple[str, float, list[float]]]:
    """How each attack is made, when it ends, and when its tones begin."""
    return [
        (attack.start.name.lower(), float(attack.end), [float(tone.begin) for tone in attack.tones])
        for attack in performance.attacks
    ]


def test_each_stroke_is_one_attack_and_slurred_notes_are_tones_of_it():
    assert attacks(played("(AB) c (dcB)A z|")) == [
        ("stroke", 0.5, [0.0, 0.25]),
        ("stroke", 0.75, [0.5]),
        ("stroke", 1.5, [0.75, 1.0, 1.25]),
        ("stroke", 1.75, [1.5]),
    ]


def test_directions_are_those_of_the_strokes():
    found = played("(AB) c (dcB)A uG|")
    assert [attack.bow for attack in found.attacks] == [Bow.DOWN, Bow.UP, Bow.DOWN, Bow.UP, Bow.UP]


def test_a_hooked_note_is_an_attack_after_a_stop_in_the_same_direction():
    first, second = played("A4=B4|").attacks
    assert (second.start, second.bow) == (Start.HOOKED, first.bow)
    assert first.sounds_until < first.end == second.begin


def test_the_bow_is_lifted_before_a_retake():
    first, second = played("A4rB4|").attacks
    assert (second.start, second.bow) == (Start.RETAKEN, first.bow)
    assert first.sounds_until < first.end


def test_plain_strokes_sound_up_to_one_another():
    first, second = played("A4B4|").attacks
    assert first.sounds_until == first.end == second.begin


def test_a_held_note_sounds_on():
    assert attacks(played("A8-|A4 B4|")) == [("stroke", 3.0, [0.0]), ("stroke", 4.0, [3.0])]


def test_staccato_stops_the_note_halfway():
    (first, _) = played("A4B4|", signs={"b0n1": Signs(articulations=(Articulation.STACCATO,))}).attacks
    assert (first.end, first.sounds_until) == (Fraction(1), Fraction(1, 2))


def test_staccato_under_a_slur_is_a_stop():
    found = played("(A4B4)|", signs={"b0n2": Signs(articulations=(Articulation.STACCATO,))})
    assert [attack.start for attack in found.attacks] == [Start.STROKE, Start.HOOKED]


def test_a_bowed_triplet_is_three_strokes_that_end_as_they_began():
    found = played("A6B2|", signs={"b0n1": Signs(ornaments=(Ornament.BOWED_TRIPLET,))})
    assert attacks(found)[:3] == [("stroke", 0.5, [0.0]), ("stroke", 1.0, [0.5]), ("stroke", 1.5, [1.0])]
    assert [attack.bow for attack in found.attacks] == [Bow.DOWN, Bow.UP, Bow.DOWN, Bow.UP]
    assert {attack.tones[0].keys for attack in found.attacks[:3]} == {(69,)}


def test_a_staccato_bowed_triplet_is_stopped_in_each_of_its_parts():
    signs = Signs(ornaments=(Ornament.BOWED_TRIPLET,), articulations=(Articulation.STACCATO,))
    parts = played("A6B2|", signs={"b0n1": signs}).attacks[:3]
    assert [float(part.sounds_until) for part in parts] == [0.25, 0.75, 1.25]


@pytest.mark.parametrize(
    ("ornament", "keys"),
    [
        (Ornament.CUT, [71, 69]),
        (Ornament.ROLL, [69, 71, 69, 67, 69]),  # three eighths: a long roll
        (Ornament.TURN, [71, 69, 67, 69]),
        (Ornament.INVERTED_TURN, [67, 69, 71, 69]),
        (Ornament.MORDENT, [69, 67, 69]),
        (Ornament.UPPER_MORDENT, [69, 71, 69]),
    ],
)
def test_an_ornament_is_fingered_within_the_stroke(ornament, keys):
    (first, _) = played("A3 B5|", signs={"b0n1": Signs(ornaments=(ornament,))}).attacks
    assert [tone.keys for tone in first.tones] == [(key,) for key in keys]


def test_a_roll_on_two_eighths_begins_with_the_cut():
    (first, _) = played("A2 B6|", signs={"b0n1": Signs(ornaments=(Ornament.ROLL,))}).attacks
    assert [tone.keys for tone in first.tones] == [(71,), (69,), (67,), (69,)]
    assert [float(tone.begin) for tone in first.tones] == [0.0, 0.045, 0.25, 0.295]


def test_a_trill_is_even_and_ends_on_its_note():
    (first, _) = played("A4 B4|", signs={"b0n1": Signs(ornaments=(Ornament.TRILL,))}).attacks
    assert first.tones[0].keys == first.tones[-1].keys == (69,)
    assert {tone.keys for tone in first.tones[1::2]} == {(71,)}
    steps = {after.begin - before.begin for before, after in pairwise(first.tones)}
    assert len(steps) == 1


def test_a_slide_sets_down_below_its_note():
    (first, _) = played("A4 B4|", signs={"b0n1": Signs(ornaments=(Ornament.SLIDE,))}).attacks
    assert [(tone.keys, tone.slide) for tone in first.tones] == [((69,), -1)]


def test_grace_notes_begin_on_the_beat_and_take_their_time_from_the_note():
    graces = Signs(graces=(Grace((Pitch(5, "C"),)), Grace((Pitch(4, "B"),))))
    (_, second) = played("G4 A4|", signs={"b0n2": graces}).attacks
    assert [(float(tone.begin), tone.keys) for tone in second.tones] == [(1.0, (72,)), (1.045, (71,)), (1.09, (69,))]


def test_accents_of_the_plan_are_driven_where_a_stroke_begins_and_nowhere_else():
    tune, bowing = bowed("A2 B2 c2 d2|(A2 B2 c2) d2|")  # in bar 2 the slur buries the second accent
    loud = [attack.loud_db for attack in perform(tune, bowing).attacks]
    down, up = loud[2], loud[1]
    assert down > 5
    assert -2 < up < 0
    assert loud == [down, up, down, up, down, up]


def test_an_accent_that_falls_on_an_up_bow_is_heard_and_a_little_weaker():
    tune, bowing = bowed("A2 B2 uc2 d2|")
    loud = [attack.loud_db for attack in perform(tune, bowing).attacks]
    assert loud[0] > loud[2] > 3


def test_written_accents_are_heard():
    plain, accented = (played(f"A2 B2 {sign}c2 d2|").attacks[2] for sign in ("", "L"))
    assert accented.loud_db - plain.loud_db >= 6


def test_eighths_of_a_hornpipe_are_swung_and_its_dots_are_not():
    tune, bowing = bowed("AB c3/2d/ e4|")
    begins = [tone.begin for attack in perform(replace(tune, dance="hornpipe"), bowing, manner=Manner(TEMPO)).attacks
              for tone in attack.tones]  # fmt: skip
    assert begins == [0, Fraction(1, 3), Fraction(1, 2), Fraction(7, 8), 1]


def test_a_swung_pick_up_is_as_short_as_the_eighth_that_it_stands_for():
    tune, bowing = bowed("G|AB cd ef g|")
    found = perform(replace(tune, dance="hornpipe"), bowing, manner=Manner(TEMPO))
    assert found.bars[0].end - found.bars[0].begin == Fraction(1, 6)  # of half a second
    assert found.end == 2


def test_reels_and_jigs_are_even():
    for dance, text, meter in (("reel", "ABcdefga|", "4/4"), ("jig", "ABcdef|", "6/8")):
        tune, bowing = bowed(text, meter)
        found = perform(replace(tune, dance=dance), bowing)
        assert len({attack.end - attack.begin for attack in found.attacks}) == 1


def test_a_count_in_is_so_many_bars_and_a_pick_up_falls_into_its_last():
    found = played("A2|B8|", count_in=2)
    assert found.begin == 2 * 2 - Fraction(1, 2)
    counted = [(float(click.at), click.strong) for click in found.clicks if click.counting_in]
    assert counted == [(beat / 2, beat % 4 == 0) for beat in range(7)]
    assert found.attacks[0].begin == found.begin


@pytest.mark.parametrize(("meter", "text", "beats"), [("6/8", "A3B3|", 2), ("3/4", "A6|", 3), ("9/8", "A9|", 3)])
def test_beats_are_those_of_the_metre(meter, text, beats):
    assert len(played(text, meter).clicks) == beats


def test_half_speed_takes_twice_the_time():
    assert played("A8|B8|", speed=Fraction(1, 2)).end == 2 * played("A8|B8|").end


@pytest.mark.parametrize("fault", [{"speed": Fraction(0)}, {"swing": Fraction(9)}, {"count_in": -1}, {"count_in": 99}])
def test_a_manner_beyond_its_limits_is_refused_in_a_sentence(fault):
    with pytest.raises(ValueError, match=r"^The .* must be .*\.$"):
        Manner(**fault)


def test_at_a_time_the_performance_knows_bar_and_tone():
    found = played("A4 z4|B8|")
    assert [found.visit_at(seconds) for seconds in (-1, 0, 1.9, 2, 99)] == [0, 0, 0, 1, 1]
    assert [tone and tone.keys for tone in map(found.tone_at, (-1, 0.5, 1.5, 2))] == [None, (69,), None, (71,)]


def test_excerpts_keep_their_directions_and_begin_strokes_of_their_own():
    tune, bowing = bowed("A2 B2 c2 (d2|e2) f4 g2|a8|")
    whole = work_out(tune, bowing)
    twice = excerpt(whole, [1], times=2)
    found = perform(tune, bowing, twice, Manner(TEMPO))
    assert [attack.bow for attack in found.attacks] == [*whole.visits[1].bows] * 2
    assert [bar.bar for bar in found.bars] == [1, 1]
    assert [attack.start for attack in found.attacks[::3]] == [Start.STROKE, Start.RETAKEN]  # begins and ends up


def test_excerpts_run_on_where_their_bars_do():
    tune, bowing = bowed("A2 B2 c2 (d2|e2) f4 g2|a8|")
    whole = work_out(tune, bowing)
    assert excerpt(whole, [0, 1, 2]).visits == whole.visits


@pytest.mark.parametrize(("visits", "times"), [([], 1), ([3], 1), ([-1], 1), ([0], 0), ([0], 101)])
def test_an_excerpt_of_nothing_is_refused(visits, times):
    tune, bowing = bowed("A8|B8|c8|")
    with pytest.raises(ValueError, match=r"can be played|must be at least"):
        excerpt(work_out(tune, bowing), visits, times)


@settings(max_examples=30, deadline=None)
@given(st.data(), tunes(), st.integers(0, 3), st.fractions(Fraction(1, 4), 2, max_denominator=20))
def test_any_bowing_is_played_in_time(data, tune, count_in, speed):
    bowing = data.draw(bowings(tune))
    manner = Manner(speed=speed, swing=Fraction(1), count_in=count_in)
    found = perform(tune, bowing, manner=manner)
    strokes = found.strokes
    quarter = Fraction(60) / (pace(tune).tempo.per_minute * pace(tune).tempo.beat * speed)
    assert found.end - found.begin == sum((tune.bars[bar].length for bar, _ in strokes.order), Fraction(0)) * quarter
    begins, now = {}, found.begin
    index = 0
    for bar, _ in strokes.order:
        for note in tune.bars[bar].notes:
            if not note.is_rest:
                begins[index] = now + note.at * quarter
                index += 1
        now += tune.bars[bar].length * quarter
    written = [begins[place] for place, played in enumerate(strokes.played) if played.struck]
    attacked = [attack.begin for attack in found.attacks]
    assert set(written) <= set(attacked)  # every stroke and every hooked note has its attack, at the written time
    assert attacked == sorted(set(attacked))
    for attack, after in pairwise([*found.attacks, None]):
        assert attack.begin == attack.tones[0].begin < attack.sounds_until <= attack.end
        assert [tone.begin for tone in attack.tones] == sorted({tone.begin for tone in attack.tones})
        assert attack.tones[-1].begin < attack.sounds_until
        assert attack.end <= (after.begin if after else found.end)
        assert all(tone.keys for tone in attack.tones)


@settings(max_examples=15, deadline=None)
@given(st.data(), tunes())
def test_the_same_bars_are_played_the_same_way_whatever_is_counted_in(data, tune):
    bowing = data.draw(bowings(tune))
    plain, counted = (perform(tune, bowing, manner=replace(PLAIN, count_in=count)) for count in (0, 1))
    by = counted.begin
    assert [attack.begin + by for attack in plain.attacks] == [attack.begin for attack in counted.attacks]
