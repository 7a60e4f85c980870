from dataclasses import replace
from fractions import Fraction
from itertools import pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Signs
from core.reading.abc import read_abc
from core.strings import (
    CROSSING,
    FOURTH_FINGER,
    LEAP,
    STANDARD,
    TUNINGS,
    Leap,
    Tuning,
    crossings,
    leaps,
    parse_tuning,
    strings_of,
)
from core.tune import Bar, Note, Pitch, Tune

NAMES = "GDAE"


def read(notes: str) -> tuple[Tune, Bowing]:
    lesson = read_abc(f"X:1\nT:\nM:none\nL:1/8\nK:C\n{notes}\n").lessons[0]
    return lesson.tune, lesson.bowings[0]


def strings(notes: str, tuning: Tuning = STANDARD, **signs: Signs) -> list[str | None]:
    """Letters of the strings of each note."""
    tune, bowing = read(notes)
    bowing = replace(bowing, signs=bowing.signs.update(immutabledict(signs)))
    found = strings_of(tune, bowing, tuning)
    return [held and NAMES[held[0] : held[1] + 1] for held in (found[n.id] for n in tune.sequence if not n.is_rest)]


class TestFirstPosition:
    def test_a_scale_changes_string_at_each_open_note(self) -> None:
        assert "".join(map(str, strings("G,A,B,C DEFG ABcd efgab"))) == "GGGGDDDDAAAAEEEEE"

    def test_above_the_fourth_finger_and_below_the_lowest_string_there_is_none(self) -> None:
        assert strings("b c' F, G,") == ["E", None, None, "G"]

    @pytest.mark.parametrize(
        ("notes", "expected"),
        [
            ("G A G", "DDD"),  # the fourth finger saves two crossings
            ("G A B", "DAA"),  # the open string costs no more
            ("B A G", "AAD"),
            ("B c A G F", "AAADD"),
            ("A G F", "DDD"),
            ("B, A f", "GAE"),
            ("d e d e f", "AAAEE"),
            ("G AAAAA G", "DDDDDDD"),
            ("G AAAAAAAAA G", "DAAAAAAAAAD"),  # two crossings cost less than nine fourth fingers
            ("B, A", "GD"),  # a crossing without a leap
        ],
    )
    def test_open_string_or_fourth_finger(self, notes: str, expected: str) -> None:
        assert "".join(map(str, strings(notes))) == expected

    def test_written_fingers_and_open_strings_are_kept_to(self) -> None:
        assert strings("GAG", b0n2=Signs(fingerings=("0",))) == ["D", "A", "D"]
        assert strings("BAB", b0n2=Signs(fingerings=("4",))) == ["A", "D", "A"]
        assert strings("GAG", b0n2=Signs(articulations=(Articulation.OPEN_STRING,))) == ["D", "A", "D"]

    def test_a_finger_that_first_position_has_not_there_leaves_the_string_open(self) -> None:
        assert strings("d2 e2", b0n1=Signs(fingerings=("1",))) == [None, "E"]
        assert strings("A2 e2", b0n1=Signs(articulations=(Articulation.HARMONIC,))) == [None, "E"]

    def test_double_stops_take_neighbouring_strings(self) -> None:
        assert strings("[DA] [G,D] [Ae] [DAe] [GB] [DD] [ce']") == [
            "DA", "GD", "AE", "DAE", "DA", "GD", None,
        ]  # fmt: skip

    def test_rests_and_unknown_notes_are_passed_over(self) -> None:
        assert strings("G z A c' G") == ["D", "D", None, "D"]

    @pytest.mark.parametrize(
        ("tuning", "expected"),
        [  # the same pitches; common practice, no source: names of these tunings go from low to high
            (Tuning(("A3", "E4", "A4", "E5")), "GGDDAA"),
            (Tuning(("A3", "D4", "A4", "E5")), "GDDDAA"),
            (Tuning(("G3", "D4", "G4", "D5")), "GDDAAA"),
        ],
    )
    def test_other_tunings(self, tuning: Tuning, expected: str) -> None:
        assert "".join(map(str, strings("A,2 D2 E2 G2 A2 c2", tuning))) == expected


class TestTuning:
    def test_strings_are_called_by_their_letters_unless_two_share_one(self) -> None:
        assert [Tuning().name(string) for string in range(4)] == ["G", "D", "A", "E"]
        cross = Tuning(("A3", "E4", "A4", "C#5"))
        assert [cross.name(string) for string in range(4)] == ["A3", "E", "A4", "C#"]

    def test_keys_of_the_open_strings(self) -> None:
        assert Tuning().open_keys == (55, 62, 69, 76)  # General MIDI 1, from memory

    @pytest.mark.parametrize(
        ("text", "expected"),
        [
            ("G3 D4 A4 E5", ("G3", "D4", "A4", "E5")),
            (" A4, E5 ", ("A4", "E5")),
            ("AEAE", ("A3", "E4", "A4", "E5")),
            ("A E A C♯", ("A3", "E4", "A4", "C#5")),
            ("D D A D", ("D3", "D4", "A4", "D5")),
            ("F B♭ F Bb", ("F3", "Bb3", "F4", "Bb4")),
            ("C3G3D4A4E5", ("C3", "G3", "D4", "A4", "E5")),
        ],
    )
    def test_a_typed_tuning_is_read(self, text: str, expected: tuple[str, ...]) -> None:
        assert parse_tuning(text) == Tuning(expected)

    @pytest.mark.parametrize("text", ["", "G3", "GDAH", "g d a e", "E5 A4 D4 G3", "G D A", "G3 D4 A4 E5;", "A" * 99])
    def test_typed_nonsense_is_refused_in_one_sentence(self, text: str) -> None:
        with pytest.raises(ValueError, match=r"^[^.]+\.$"):
            parse_tuning(text)

    @pytest.mark.parametrize("tuning", TUNINGS.values(), ids=TUNINGS)
    def test_every_common_tuning_is_read_as_it_is_written(self, tuning: Tuning) -> None:
        assert parse_tuning(str(tuning)) == tuning
        assert parse_tuning("".join(pitch[:-1] for pitch in tuning.strings)) == tuning

    @pytest.mark.parametrize("pitches", [("G3",), ("D4", "G3"), ("G3", "H4"), ("G3", "4D"), ()])
    def test_what_is_no_tuning_is_refused(self, pitches: tuple[str, ...]) -> None:
        with pytest.raises(ValueError, match=r"tuning names|is no pitch"):
            Tuning(pitches)


LOWEST = 55
SPELLED = [
    ("C", 0), ("C", 1), ("D", 0), ("D", 1), ("E", 0), ("F", 0),
    ("F", 1), ("G", 0), ("G", 1), ("A", 0), ("A", 1), ("B", 0),
]  # fmt: skip


def pitch(key: int) -> Pitch:
    return Pitch(key // 12 - 1, *SPELLED[key % 12])


@given(st.lists(st.integers(LOWEST, 83), min_size=1, max_size=8))
def test_no_choice_of_strings_costs_less(keys: list[int]) -> None:
    """Tries every choice; costs are counted from the documented weights."""
    notes = tuple(Note(f"b0n{k}", Fraction(k), Fraction(1), (pitch(key),)) for k, key in enumerate(keys))
    found = strings_of(Tune("", (Bar(1, notes),)), Bowing(""))
    choices = [[string for string, low in enumerate((55, 62, 69, 76)) if low <= key <= low + 7] for key in keys]

    def cost(chosen: tuple[int, ...]) -> int:
        total = sum(FOURTH_FINGER * (string < max(can)) for string, can in zip(chosen, choices, strict=True))
        for old, new in pairwise(chosen):
            total += CROSSING * (old != new) + LEAP * max(0, abs(old - new) - 1)
        return total

    taken = tuple(held[0] for note in notes if (held := found[note.id]) is not None)
    assert cost(taken) == min(map(cost, product(*choices)))


class TestCrossings:
    def test_changes_of_string_are_counted_in_each_stroke(self) -> None:
        assert list(crossings(*read("(GAB)c (dg)f (B,E)(cBcEc)")).values()) == [1, 0, 1, 0, 1, 2]

    def test_held_notes_and_rests(self) -> None:
        assert crossings(*read("G-G (GB) z (Bf)")) == {"b0n1": 0, "b0n3": 1, "b0n6": 1}

    def test_a_note_without_a_string_is_passed_over(self) -> None:
        assert list(crossings(*read("(ec'f) (Bc'f)")).values()) == [0, 1]


class TestLeaps:
    def test_an_octave_on_the_outer_two_of_three_strings(self) -> None:
        assert leaps(*read("(Gg)")) == (Leap("b0n2", 1, 3),)
        assert leaps(*read("(gG)")) == (Leap("b0n2", 3, 1),)
        assert leaps(*read("(G,g)")) == (Leap("b0n2", 0, 3),)

    @pytest.mark.parametrize(
        "notes",
        [
            "(Aa)",  # neighbours
            "(Ee)",  # the fourth finger on the A string
            "Gg",
            "(GBg)",  # by way of the A string
            "(Gc')",  # played who knows where
            "([GB]g)",
            "(G2G2)-G2 g2",
        ],
    )
    def test_no_leap(self, notes: str) -> None:
        assert leaps(*read(notes)) == ()

    def test_a_hook_lets_the_bow_cross(self) -> None:
        assert leaps(*read("(.G.g)")) == ()

    def test_a_written_finger_takes_the_way_out(self) -> None:
        tune, bowing = read("(Ee)")
        open_e = replace(bowing, signs=immutabledict(b0n2=Signs(fingerings=("0",))))
        assert leaps(tune, open_e) == (Leap("b0n2", 1, 3),)

    def test_one_note_cannot_be_on_two_strings_at_once(self) -> None:
        """Each pair is near, but A4 would have to be a fourth finger for B3 and an open string for F5."""
        assert leaps(*read("(B,Af)")) == (Leap("b0n3", 1, 3),)

    def test_a_held_note_goes_on_where_it_is(self) -> None:
        assert leaps(*read("(A-A B, f)")) == (Leap("b0n4", 0, 3),)
        assert leaps(*read("(A-A f)")) == ()
        assert leaps(*read("(B,A-A f)")) == (Leap("b0n4", 1, 3),)

    def test_a_tuning_can_bring_strings_together(self) -> None:
        assert leaps(*read("(Gg)"), Tuning(("G3", "D4", "G4", "D5"))) == ()
