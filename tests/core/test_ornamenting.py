import pytest

from core.bowing import Bowing, Grace, Ornament, Signs, set_signs
from core.errors import RefusedEditError
from core.ornamenting import has_ornament, lower_neighbour, toggle_ornament, upper_neighbour
from core.reading.abc import read_abc
from core.strokes import work_out
from core.tune import Pitch, Tune


def read(music: str, key: str = "D") -> tuple[Tune, Bowing]:
    lesson = read_abc(f"X:1\nM:4/4\nL:1/8\nK:{key}\n{music}\n").lessons[0]
    return lesson.tune, lesson.bowings[0]


@pytest.mark.parametrize(
    ("music", "key", "note_id", "expected"),
    [
        ("E8|", "D", "b0n1", "F#4"),
        ("E8|", "C", "b0n1", "F4"),
        ("B8|", "D", "b0n1", "C#5"),  # over the octave
        ("=c2 B6|", "D", "b0n2", "C5"),  # an accidental in the bar holds
        ("B6 =c2|", "D", "b0n1", "C#5"),  # not before it stands there
        ("=c8|B8|", "D", "b1n1", "C#5"),  # nor in the next bar
        ("=C2 B6|", "D", "b0n2", "C#5"),  # nor in another octave
        ("[EB]8|", "D", "b0n1", "C#5"),  # over the upper note of a double stop
    ],
)
def test_the_upper_neighbour_lies_in_the_key_in_force(music: str, key: str, note_id: str, expected: str) -> None:
    tune, _ = read(music, key)
    assert str(upper_neighbour(tune, note_id)) == expected


@pytest.mark.parametrize(
    ("music", "key", "expected"),
    [
        ("E8|", "D", "D4"),
        ("D8|", "D", "C#4"),
        ("D8|", "C", "C4"),
        ("c8|", "C", "B4"),  # under the octave
        ("[EB]8|", "D", "A4"),  # under the upper note of a double stop
    ],
)
def test_the_lower_neighbour_lies_in_the_key_in_force(music: str, key: str, expected: str) -> None:
    tune, _ = read(music, key)
    assert str(lower_neighbour(tune, "b0n1")) == expected


def test_a_cut_is_a_slashed_grace_note_and_goes_again() -> None:
    tune, bowing = read("E2F2 G2A2|")
    cut = toggle_ornament(tune, bowing, ["b0n1"], Ornament.CUT)
    assert cut.signs_on("b0n1").graces == (Grace((Pitch(4, "F", 1),), slashed=True),)
    assert has_ornament(cut, "b0n1", Ornament.CUT)
    assert toggle_ornament(tune, cut, ["b0n1"], Ornament.CUT) == bowing


def test_other_grace_notes_stay_before_a_cut() -> None:
    tune, bowing = read("{G}E8|")
    cut = toggle_ornament(tune, bowing, ["b0n1"], Ornament.CUT)
    assert [str(grace.pitches[0]) for grace in cut.signs_on("b0n1").graces] == ["G4", "F#4"]
    assert toggle_ornament(tune, cut, ["b0n1"], Ornament.CUT) == bowing


def test_a_cut_that_a_file_wrote_as_a_sign_is_taken_away() -> None:
    tune, bowing = read("E8|")
    signed = set_signs(bowing, "b0n1", Signs(ornaments=(Ornament.CUT,)))
    assert toggle_ornament(tune, signed, ["b0n1"], Ornament.CUT) == bowing


@pytest.mark.parametrize("ornament", [Ornament.ROLL, Ornament.TURN, Ornament.BOWED_TRIPLET])
def test_a_sign_comes_and_goes(ornament: Ornament) -> None:
    tune, bowing = read("E2F2 G2A2|")
    signed = toggle_ornament(tune, bowing, ["b0n2"], ornament)
    assert signed.signs_on("b0n2").ornaments == (ornament,)
    assert toggle_ornament(tune, signed, ["b0n2"], ornament) == bowing


def test_a_figure_replaces_another_and_leaves_other_signs() -> None:
    tune, bowing = read("E8|")
    for ornament in (Ornament.ROLL, Ornament.SLIDE, Ornament.TURN):
        bowing = toggle_ornament(tune, bowing, ["b0n1"], ornament)
    assert bowing.signs_on("b0n1").ornaments == (Ornament.SLIDE, Ornament.TURN)


def test_a_selection_gets_the_ornament_where_it_lacks_and_loses_it_where_all_have_it() -> None:
    tune, bowing = read("E2F2 G2z2|")
    first = toggle_ornament(tune, bowing, ["b0n1"], Ornament.ROLL)
    all_three = toggle_ornament(tune, first, [note.id for note in tune.sequence], Ornament.ROLL)
    assert sorted(all_three.signs) == ["b0n1", "b0n2", "b0n3"]
    assert toggle_ornament(tune, all_three, [note.id for note in tune.sequence], Ornament.ROLL) == bowing


@pytest.mark.parametrize(("music", "note_id", "words"), [("E4z4|", "b0n2", "rest"), ("E8-|E8|", "b1n1", "held note")])
def test_a_rest_and_a_held_note_take_none(music: str, note_id: str, words: str) -> None:
    tune, bowing = read(music)
    with pytest.raises(RefusedEditError, match=f"A {words} takes no ornament"):
        toggle_ornament(tune, bowing, [note_id], Ornament.CUT)


@pytest.mark.parametrize("ornament", [Ornament.CUT, Ornament.ROLL, Ornament.TURN, Ornament.BOWED_TRIPLET])
def test_no_ornament_turns_a_stroke(ornament: Ornament) -> None:  # rule B8
    tune, bowing = read("(E2F2) G2A2|B2(A2 G2)F2|")
    ornamented = toggle_ornament(tune, bowing, [note.id for note in tune.sequence], ornament)
    assert work_out(tune, ornamented).bows == work_out(tune, bowing).bows
