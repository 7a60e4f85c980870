"""Where two notes may share a stroke, and what is read of it."""

import numpy as np

from core.style.contexts import CONTEXTS, LIKENESS, digests
from core.style.places import UNIT, places
from tests.core.builders import tune_of


def ats(text: str, **more: str) -> list[tuple[int, float]]:
    note = places(tune_of(text, **more)).note
    return list(zip(note.bar.tolist(), (note.at / UNIT).tolist(), strict=True))


def test_every_note_but_the_first_is_a_place():
    assert ats("A2 B2 c2 d2 | e8") == [(0, 1), (0, 2), (0, 3), (1, 0)]


def test_a_held_note_is_none_and_makes_its_note_longer():
    tune = tune_of("A4 B4- | B2 c6")
    found = places(tune)
    assert found.ids == (tune.bars[0].notes[1].id, tune.bars[1].notes[1].id)
    assert (found.note.length / UNIT).tolist() == [3, 3]
    assert (found.before.length / UNIT).tolist() == [2, 3]


def test_nothing_is_joined_over_a_rest_or_a_repeat():
    assert ats("A4 z2 B2 | c8 :: d4 e4 :|") == [(1, 0), (2, 2)]


def test_places_know_their_bar_and_its_like():
    found = places(tune_of("A4 B4 | c8 | A4 B4 | A4 c4"))
    later = found.index > 0
    first, again, other = found.bar.kind[later]
    assert first == again != other
    assert found.bar.alike[later].tolist() == [2, 2, 1]
    assert found.bar.again[later].tolist() == [0, 1, 0]
    assert found.bar.full_bars_behind[later].tolist() == [3, 1, 0]


def test_pick_ups_stand_where_they_sound():
    assert ats("A2 | B4 c4") == [(1, 0), (1, 2)]


def test_each_context_tells_some_places_apart_and_takes_some_for_alike():
    found = places(tune_of("DEFG ABcd | DEFG ABcd | DEFA GBdc | d2 c2 B2 A2 | D3E F2GA | DEFG AAcd | G8 | G8"))
    assert len(LIKENESS) == len(CONTEXTS)
    for context, keys in zip(CONTEXTS, digests(found), strict=True):
        assert 1 < len(np.unique(keys)) < len(keys), context.name


def test_a_tune_without_places_is_read():
    for text in ("z8", "A8", "A4 z4"):
        assert len(places(tune_of(text))) == 0
        assert digests(places(tune_of(text))).shape == (len(CONTEXTS), 0)
