"""MIDI as two other readers have it: mido message by message, pretty_midi note by note."""

import io
from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pretty_midi
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from mido import MidiFile

from core.accent_plan import AccentPlan, PlanKind
from core.sound.midi import midi_file
from core.sound.performance import Manner, Performance, perform
from core.sound.tags import Tags
from core.tune import Key, Tempo
from tests.core.builders import bowed
from tests.property.strategies import bowings, legal_text, tunes

TEMPO = Tempo(Fraction(1), Fraction(120))


def played(text: str, meter: str = "4/4", accents: AccentPlan | None = None, **manner: object) -> Performance:
    tune, bowing = bowed(text, meter, accents or AccentPlan(PlanKind.NONE))
    return perform(tune, bowing, manner=Manner(**{"tempo": TEMPO, **manner}))


def read(data: bytes) -> pretty_midi.PrettyMIDI:
    return pretty_midi.PrettyMIDI(io.BytesIO(data))


def notes(performance: Performance) -> list[pretty_midi.Note]:
    (fiddle,) = read(midi_file([performance], Tags())).instruments
    return sorted(fiddle.notes, key=lambda note: note.start)


def test_the_instrument_is_the_fiddle_of_general_midi():
    (fiddle,) = read(midi_file([played("A8|")], Tags())).instruments
    assert pretty_midi.program_to_instrument_name(fiddle.program) == "Fiddle"
    assert not fiddle.is_drum


def test_notes_begin_where_they_are_played_and_strokes_are_parted():
    first, second, third = notes(played("A4 B2 c2|"))
    assert [note.start for note in (first, second, third)] == pytest.approx([0, 1, 1.5], abs=0.001)
    assert first.end < second.start
    assert second.end < third.start
    assert [note.pitch for note in (first, second, third)] == [69, 71, 72]


def test_slurred_notes_overlap_and_are_softer():
    first, second = notes(played("(A4 B4)|"))
    assert second.start < first.end < second.start + 0.02
    assert second.velocity < first.velocity


def test_hooked_notes_are_parted_by_a_stop():
    first, second = notes(played("A4=B4|"))
    assert second.start - first.end > 0.04


def test_accents_are_velocities():
    loud = [note.velocity for note in notes(played("A2 B2 c2 d2|", accents=AccentPlan()))]
    assert min(loud[0], loud[2]) - max(loud[1], loud[3]) >= 20
    plain = [note.velocity for note in notes(played("A2 B2 c2 d2|"))]
    assert plain[0] > plain[1]  # down, up


def test_equal_notes_under_a_slur_are_one_note():
    (note,) = notes(played("(A4 A4)|"))
    assert note.end == pytest.approx(2, abs=0.03)


def test_tempo_metre_and_key_are_told():
    tune, bowing = bowed("A6|B6|", "6/8")
    bars = tuple(replace(bar, key=Key(2, "mixolydian")) for bar in tune.bars)
    playing = perform(replace(tune, bars=bars), bowing, manner=Manner(Tempo(Fraction(3, 2), Fraction(120))))
    found = read(midi_file([playing], Tags()))
    assert found.get_tempo_changes()[1] == pytest.approx([180], rel=2e-6)  # whole microseconds
    (meter,) = found.time_signature_changes
    assert (meter.numerator, meter.denominator, meter.time) == (6, 8, 0)
    assert [pretty_midi.key_number_to_key_name(key.key_number) for key in found.key_signature_changes] == ["D Major"]


def test_a_pick_up_is_a_short_bar_and_the_next_bar_line_is_where_it_was():
    found = read(midi_file([played("A2|B8|c8|")], Tags()))
    assert [(meter.numerator, meter.denominator, meter.time) for meter in found.time_signature_changes] == [
        (1, 4, 0), (4, 4, 0.5),
    ]  # fmt: skip
    assert found.get_downbeats()[:3] == pytest.approx([0, 0.5, 2.5])


def test_a_counted_in_pick_up_stands_at_the_end_of_its_bar():
    found = read(midi_file([played("A2|B8|c8|", count_in=1)], Tags()))
    assert [(meter.numerator, meter.time) for meter in found.time_signature_changes] == [(4, 0)]
    assert found.get_downbeats()[:3] == pytest.approx([0, 2, 4])
    assert found.instruments[0].notes[0].start == pytest.approx(1.5, abs=0.001)


def test_playings_follow_each_other_each_at_its_tempo():
    slow, fast = played("A8|", speed=Fraction(1, 2)), played("A8|")
    found = read(midi_file([slow, fast], Tags()))
    times, tempos = found.get_tempo_changes()
    assert times == pytest.approx([0, 4])
    assert tempos == pytest.approx([60, 120], rel=2e-6)
    assert found.instruments[0].notes[1].start == pytest.approx(4, abs=0.001)


def test_the_slowest_tempo_that_can_be_set_is_written_in_time():
    playing = played("A8|B8|", tempo=Tempo(Fraction(1, 8), Fraction(5)))
    assert MidiFile(file=io.BytesIO(midi_file([playing], Tags()))).length == pytest.approx(float(playing.end), abs=0.01)


def test_titles_and_bowings_are_kept_in_any_script():
    data = midi_file([played("A8|")], Tags("Nørre 🎻", "“Slåtter”", lines=("Über",)))
    file = MidiFile(file=io.BytesIO(data), charset="utf-8")
    assert file.tracks[0].name == "Nørre 🎻"
    texts = {message.text for message in file.tracks[0] if message.type == "text"}
    assert texts == {"Bowing: “Slåtter”", "Über"}


@settings(max_examples=20, deadline=None)
@given(st.data(), tunes(), st.integers(0, 2), legal_text)
def test_any_playing_is_read_back_with_its_notes_and_times(data, tune, count_in, title):
    playing = perform(tune, data.draw(bowings(tune)), manner=Manner(count_in=count_in))
    written = midi_file([playing], Tags(title))
    file = MidiFile(file=io.BytesIO(written), charset="utf-8")
    assert file.length == pytest.approx(float(playing.end), rel=1e-5, abs=0.001)
    now, sounding, begun = 0.0, Counter(), []
    for message in file:
        now += message.time
        if message.type == "note_on":
            assert not sounding[message.note]  # a key is never struck while it sounds
            sounding[message.note] += 1
            begun.append((now, message.note))
        elif message.type == "note_off":
            sounding[message.note] -= 1
            assert not sounding[message.note]
    assert not any(sounding.values())
    written_ones = [(float(attack.begin), attack.tones[0].keys[0]) for attack in playing.attacks]
    nearest = {}
    for time, key in begun:
        nearest.setdefault(key, []).append(time)
    for time, key in written_ones:
        assert min(abs(found - time) for found in nearest[key]) < 0.006 + 1e-5 * time
