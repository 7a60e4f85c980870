from hypothesis import given, settings

from core.pitch_numbers import REST, pitch_numbers
from core.tune import Tune
from tests.core.builders import tune_of
from tests.property.strategies import tunes


def test_pitches_are_numbered_as_they_come() -> None:
    assert pitch_numbers(tune_of("A2 z2 B2 A2|B8|")).bars == ((1, REST, 2, 1), (2,))


@given(tunes())
@settings(max_examples=40, deadline=None)
def test_numbers_are_equal_where_pitches_are(tune: Tune) -> None:
    found = pitch_numbers(tune)
    numbered = [number for bar in found.bars for number in bar]
    pitches = [note.pitches for note in tune.sequence]
    assert len(set(zip(numbered, pitches, strict=True))) == len(set(numbered)) == len(set(pitches))
    for number, sounding in zip(numbered, pitches, strict=True):
        assert found.heights[number] == (sounding[-1].height if sounding else 0)
