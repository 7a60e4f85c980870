from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from music21 import harmony

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Bowing
from core.chords import KINDS, parse_chord
from core.sound.backing import Backing, back, strums
from core.sound.chord_notes import chord_notes
from core.sound.mix import USUAL, Part, mix
from core.sound.performance import Manner, Performance, perform
from core.sound.plucked import plucked
from core.tune import ChordSymbol, Key, Meter, Tempo
from tests.core.builders import bowed
from tests.core.sound.measures import cents_off
from tests.core.test_chords import ROOTS, SPELLINGS, tones
from tests.property.strategies import METERS, bowings, tunes

NAMES = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")


def chorded(*chords: str, text: str = "A8|", meter: str = "4/4", key: Key | None = None) -> Performance:
    """A playing of one bar for each chord, at 120 quarters a minute."""
    tune, bowing = bowed(text * max(len(chords), 1), meter, AccentPlan(PlanKind.NONE))
    bars = tuple(
        replace(bar, chords=(ChordSymbol(Fraction(0), chord),) if chord else (), key=key or bar.key)
        for bar, chord in zip(tune.bars, chords or [""], strict=True)
    )
    return perform(replace(tune, bars=bars), bowing, manner=Manner(Tempo(Fraction(1), Fraction(120))))


def plucks(backing: Backing) -> list[tuple[float, list[str]]]:
    return [(float(strum.at), [NAMES[key % 12] for key in strum.keys]) for strum in backing.strums]


def test_a_bar_of_four_is_bass_chord_fifth_chord():
    assert plucks(back(chorded("D"))) == [
        (0.0, ["D"]), (0.5, ["F#", "A", "D"]), (1.0, ["A"]), (1.5, ["F#", "A", "D"]),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("meter", "text", "places"),
    [
        ("6/8", "A6|", [0, 1, 1.5, 2.5]), ("9/8", "A9|", [0, 1, 1.5, 2.5, 3, 4]), ("3/4", "A6|", [0, 1, 2]),
        ("2/4", "A4|", [0, 0.5, 1, 1.5]), ("12/8", "A9A3|", [0, 1, 1.5, 2.5, 3, 4, 4.5, 5.5]),
    ],
)  # fmt: skip
def test_each_metre_has_its_vamp(meter, text, places):
    found = [at * 2 for at, _ in plucks(back(chorded("G", text=text, meter=meter)))]
    assert found == places


def test_the_bass_is_the_one_named():
    assert plucks(back(chorded("G/B")))[0] == (0.0, ["B"])


def test_a_chord_goes_on_until_the_next_and_no_chord_is_silence():
    found = [at for at, _ in plucks(back(chorded("D", "", "N.C.", "G")))]
    assert found == [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 6, 6.5, 7, 7.5]


def test_a_chord_that_changes_within_the_bar_brings_its_own_bass():
    playing = chorded("D")
    bar = replace(playing.tune.bars[0], chords=(ChordSymbol(Fraction(0), "D"), ChordSymbol(Fraction(2), "G")))
    playing = replace(playing, tune=replace(playing.tune, bars=(bar,)))
    assert [names for _, names in plucks(back(playing))] == [["D"], ["F#", "A", "D"], ["G"], ["G", "B", "D"]]


def test_a_chord_that_cannot_be_read_is_told_once_and_passed_over():
    found = back(chorded("D", "H7"))
    assert found.unread == ("Bar 2: “H7” is no chord; the chord before it goes on.",)
    assert [names for _, names in plucks(found)[4:]] == [names for _, names in plucks(found)[:4]]


def test_a_tune_without_chords_is_backed_by_a_drone_of_its_tonic():
    found = {name for _, names in plucks(back(chorded(key=Key(1, "dorian")))) for name in names}
    assert found == {"A", "E"}


def test_a_tune_without_chords_and_tonic_has_no_backing():
    assert back(chorded(key=Key(0, "none"))) == Backing(())


def test_twenty_chords_are_twenty_chords():
    names = [root + kind for root in ("C", "D", "E", "F", "G") for kind in ("", "m", "7", "maj7")]
    found = plucks(back(chorded(*names)))
    assert len(found) == 80
    for place, name in enumerate(names):
        notes = chord_notes(parse_chord(name))
        heard = {NAMES.index(note) for _, names in found[4 * place : 4 * place + 4] for note in names}
        assert heard == set(notes.tones)


@pytest.mark.parametrize("spelling", [spelling for _, spelling in SPELLINGS], ids=[f"C{row[1]}" for row in SPELLINGS])
def test_every_chord_that_music21_spells_has_the_notes_that_music21_gives_it(spelling):
    theirs = harmony.ChordSymbol("E-" + ("ob9" if spelling == "dimb9" else spelling))  # as in test_chords
    assert set(chord_notes(parse_chord("Eb" + spelling)).tones) == {pitch.pitchClass for pitch in theirs.pitches}
    for root in ROOTS:
        assert set(chord_notes(parse_chord(root + spelling)).tones) == tones(parse_chord(root + spelling))


@pytest.mark.parametrize("text", ["Bb", "B♭7", "G°7", "G/B", "Dsus4", "C6/9", "A(no3)", "E7(b5)", "Gadd9", "F#m7b5/C"])
def test_notes_are_those_of_the_intervals(text):
    notes = chord_notes(parse_chord(text))
    assert {*notes.tones, notes.bass} == tones(parse_chord(text))


def test_no_chord_has_no_notes():
    assert chord_notes(parse_chord("N.C.")) is None


def test_every_kind_is_plucked_on_at_most_four_strings_that_are_its_own():
    for kind, spellings in KINDS.items():
        notes = chord_notes(parse_chord("D" + spellings[0]))
        for strum in back(chorded("D" + spellings[0])).strums:
            assert len(strum.keys) <= 4, kind
            assert {key % 12 for key in strum.keys} <= {*notes.tones, notes.bass}
            assert list(strum.keys) == sorted(set(strum.keys))


@pytest.mark.parametrize("key", range(40, 76, 5))
def test_a_string_is_in_tune(key):
    assert abs(cents_off(plucked(key), 0.0, 1.0, key)) < 2


@settings(max_examples=20, deadline=None)
@given(st.data(), tunes())
def test_the_backing_of_any_tune_stays_in_its_bars(data, tune):
    playing = perform(tune, data.draw(bowings(tune)))
    found = back(playing)
    assert [strum.at for strum in found.strums] == sorted({strum.at for strum in found.strums})
    assert all(playing.begin <= strum.at < playing.end for strum in found.strums)
    assert all(sentence.endswith("goes on.") for sentence in found.unread)


@pytest.mark.parametrize("meter", [*METERS, Meter((7,), 8), Meter((5,), 4)], ids=str)
def test_every_metre_has_a_vamp_that_begins_with_the_bass(meter):
    playing = chorded("D")
    bar = replace(playing.tune.bars[0], meter=meter)
    found = back(perform(replace(playing.tune, bars=(bar,)), Bowing("Plain")))
    assert found.strums[0].keys == (50,)  # the D below middle C
    assert len(found.strums) > 1


def test_a_stretch_of_the_mix_is_the_same_however_it_is_asked_for():
    playing = chorded("D", "G", "A7", "D", text="ABcdefga|")
    whole = mix(playing, back(playing))
    everything = whole.render(0, whole.length)
    for size in (1, 997, 4096):
        starts = range(0, min(whole.length, 400 * size), size)
        joined = np.concatenate([whole.render(start, size) for start in starts])
        assert np.array_equal(joined, everything[: len(joined)])
    assert len(whole.render(whole.length - 10, 50)) == 10
    assert len(whole.render(whole.length + 10, 50)) == 0


def test_parts_can_be_left_out_and_turned_down():
    playing = chorded("D", "G", text="ABcdefga|")
    backing = back(playing)
    all_of_it, alone, soft = (
        mix(playing, backing, levels).render(0, 60_000)
        for levels in (USUAL, USUAL.delete(Part.FIDDLE), USUAL.delete(Part.FIDDLE).set(Part.BACKING, -20.0))
    )
    assert not np.array_equal(all_of_it, alone)
    assert soft == pytest.approx(alone / 10, abs=1e-6)
    assert not mix(playing, backing, {}).render(0, 60_000).any()
    assert strums(backing).render(0, 60_000).any()


def test_nothing_reaches_full_scale():
    playing = chorded(*["C13"] * 2, text="LALBLcLdLeLfLgLa|")
    sound = mix(playing, back(playing), dict.fromkeys(Part, 12.0)).render(0, 200_000)
    assert 0.9 < np.abs(sound).max() <= 0.99


def test_clicks_stand_on_the_beats():
    playing = chorded("D", "D")
    sound = mix(playing, None, {Part.CLICK: 0.0}).render(0, 200_000)
    loud = np.flatnonzero(np.abs(sound) > 0.05)
    begins = [loud[0], *(after for before, after in pairwise(loud) if after - before > 2000)]
    assert np.array(begins) / 44_100 == pytest.approx(np.arange(8) / 2, abs=0.002)
