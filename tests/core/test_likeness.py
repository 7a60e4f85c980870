import random
from time import perf_counter

import pytest
from hypothesis import given, settings

from core.likeness import FEWEST_NOTES_ALONE, Likeness, Model, models
from core.recurrence import bar_classes
from core.tune import Bar, Tune
from tests.core.builders import tune_of
from tests.property.strategies import tunes

ONE = "ABcd efga|"
OTHER = "gfga bgec|"


def found(text: str) -> dict[int, tuple[int, Likeness]]:
    return {bar: (model.bar, model.likeness) for bar, model in models(tune_of(text)).items()}


def test_the_same_bars_are_the_same() -> None:
    assert found(ONE + OTHER + ONE + OTHER) == {2: (0, Likeness.SAME), 3: (1, Likeness.SAME)}


@pytest.mark.parametrize(
    "changed",
    [
        "BBcd efga|",  # another pitch at the beginning
        "ABcd eaga|",  # inside
        "ABcd efgb|",  # at the end
        "ABcd efg/g/a|",  # one note parted in two
        "ABcd e2ga|",  # two drawn into one
        "A2cd efga|",
        "ABcd efg2|",
    ],
)
def test_a_bar_with_one_note_changed(changed: str) -> None:
    assert found(ONE + OTHER + changed) == {2: (0, Likeness.ONE_NOTE)}


@pytest.mark.parametrize(
    "changed",
    [
        "BBcd efgb|",  # two pitches
        "ABcd efgz|",  # a rest is another thing
        "A/B3/2cd efga|",  # the place of a note moves
        "A-Acd efga|",
    ],
)
def test_more_than_one_note_is_no_likeness(changed: str) -> None:
    assert found(ONE + OTHER + changed) == {}


def test_too_few_notes_are_alike_by_chance() -> None:
    assert found("A4B2c2|d8|A4B2d2|") == {}


@pytest.mark.parametrize(
    "changed",
    [
        "A2B2c2e2|",  # one of four notes
        "B2c2d2e2|",  # four notes, a step higher
    ],
)
def test_a_bar_of_few_notes_alone_is_alike_by_chance(changed: str) -> None:
    few = "A2B2c2d2|"
    assert found(few + OTHER + changed) == {}


def test_a_bar_of_few_notes_is_like_another_in_a_phrase_that_is() -> None:
    few, changed = "A2B2c2d2|", "A2B2c2e2|"
    assert found(few + OTHER + changed + OTHER) == {2: (0, Likeness.ONE_NOTE), 3: (1, Likeness.SAME)}
    assert found(OTHER + few + OTHER + changed) == {2: (0, Likeness.SAME), 3: (1, Likeness.ONE_NOTE)}
    assert found(few + ONE + OTHER + changed) == {}


def test_a_bar_transposed_within_the_key() -> None:
    tune = tune_of(ONE + OTHER + "Bcde fgab|")
    assert models(tune) == {2: Model(0, Likeness.SHIFTED, 1, 2)}
    assert models(tune_of("Bcde fgab|" + OTHER + ONE)) == {2: Model(0, Likeness.SHIFTED, -1, 2)}


def test_beyond_an_octave_nothing_is_transposed() -> None:
    assert found("CDEF GFED|" + OTHER + "defg agfe|") == {}
    assert found("CDEF GFED|" + OTHER + "cdef gfed|") == {2: (0, Likeness.SHIFTED)}


def test_the_same_rhythm_rising_and_falling_alike_counts_for_two_bars_in_a_row() -> None:
    bars, alike = "A2ce a2ec|B2df bfdB|", "G2ce g2eB|A2df afdA|"
    assert found(bars + "a8|" + alike) == {3: (0, Likeness.SHAPE), 4: (1, Likeness.SHAPE)}
    assert found(bars + "a8|" + alike.split("|")[0] + "|") == {}


def test_the_same_rhythm_alone_is_no_likeness() -> None:
    assert found("A2ce a2ec|B2df bfdB|a8|a2ec A2ce|b2fd BdfB|") == {}


def test_a_changed_bar_keeps_to_the_phrase_of_its_neighbours() -> None:
    near, far = "ABcd efge|", "ABcd efgd|"  # both are one note from the third
    text = near + "b8|" + far + OTHER + "c8|" + "ABcd efga|" + OTHER
    assert found(text)[5] == (2, Likeness.ONE_NOTE)
    assert found(near + "b8|" + far + "g8|c8|" + "ABcd efga|")[5] == (0, Likeness.ONE_NOTE)


def test_endings_and_pickups_do_not_lengthen_the_distance() -> None:
    tune = tune_of("|:" + ONE + OTHER + "[1c8:|[2d8||" + ONE + OTHER + "d8|]")
    assert [(model.bar, model.distance) for model in models(tune).values()] == [(0, 3), (1, 3), (3, 3)]


def test_empty_bars_are_like_nothing() -> None:
    assert models(Tune("", (Bar(1, ()), Bar(2, ())))) == {}


def _differ_in_one(one: Bar, other: Bar) -> bool:
    """Looked for everywhere: cut out one or two struck notes from each in all ways and compare what is left."""

    def cuttings(bar: Bar, count: int) -> set[object]:
        cut = set()
        for first in range(len(bar.notes) - count + 1):
            gone = bar.notes[first : first + count]
            if any(note.is_rest or note.held for note in gone):
                continue
            left = [
                (note.at, note.length, note.pitches, note.held)
                for place, note in enumerate(bar.notes)
                if not first <= place < first + count
            ]
            cut.add((bar.start, bar.length, gone[0].at, gone[-1].at + gone[-1].length, tuple(left)))
        return cut

    return any(cuttings(one, a) & cuttings(other, b) for a, b in ((1, 1), (1, 2), (2, 1)))


@given(tunes())
@settings(max_examples=40, deadline=None)
def test_every_model_comes_before_and_is_alike_as_said(tune: Tune) -> None:
    classes = bar_classes(tune)
    for bar, model in models(tune).items():
        assert model.bar < bar
        new, old = tune.bars[bar], tune.bars[model.bar]
        if model.likeness is Likeness.SAME:
            assert classes[bar] == classes[model.bar]
        elif model.likeness is Likeness.ONE_NOTE:
            assert _differ_in_one(new, old)
        else:
            assert [note.length for note in new.notes] == [note.length for note in old.notes]


def test_one_note_apart_agrees_with_looking_everywhere() -> None:
    chance = random.Random(4)
    for _ in range(300):
        texts = ["".join(chance.choice(["A", "B", "A2", "z", "B/B/"]) for _ in range(5)) + "|" for _ in range(4)]
        tune = tune_of("".join(texts))
        told = {bar for bar, model in models(tune).items() if model.likeness in (Likeness.SAME, Likeness.ONE_NOTE)}
        for bar in range(1, 4):
            struck = [sum(not n.is_rest and not n.held for n in b.notes) >= FEWEST_NOTES_ALONE for b in tune.bars]
            near = [
                other
                for other in range(bar)
                if struck[bar] and struck[other] and _differ_in_one(tune.bars[bar], tune.bars[other])
            ]
            if near:
                assert bar in told


def test_two_thousand_bars_of_one_rhythm_take_a_moment() -> None:
    chance = random.Random(2)
    tune = tune_of("".join("".join(chance.choice("ABcdefg") for _ in range(8)) + "|" for _ in range(2000)))
    began = perf_counter()
    models(tune)
    assert perf_counter() - began < 2
