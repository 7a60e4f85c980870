from core.accidentals import BarAccidentals
from core.tune import Key, Pitch


def test_the_signature_is_known() -> None:
    bar = BarAccidentals(Key(1))
    assert not bar.needed(Pitch(4, "F", 1))
    assert bar.needed(Pitch(4, "F"))


def test_an_accidental_holds_to_the_end_of_the_bar_in_its_octave() -> None:
    bar = BarAccidentals(Key(0))
    bar.write(Pitch(4, "C", 1))
    assert not bar.needed(Pitch(4, "C", 1))
    assert bar.needed(Pitch(4, "C"))
    assert bar.needed(Pitch(5, "C", 1))
