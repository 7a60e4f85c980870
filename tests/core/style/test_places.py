"""Where two notes may share a stroke."""

from core.style.contexts import CONTEXTS, LIKENESS
from core.style.places import UNIT, places
from tests.core.builders import tune_of


def ats(text: str, **more: str) -> list[tuple[int, float]]:
    return [(place.note.bar, place.note.at / UNIT) for place in places(tune_of(text, **more))]


def test_every_note_but_the_first_is_a_place():
    assert ats("A2 B2 c2 d2 | e8") == [(0, 1), (0, 2), (0, 3), (1, 0)]


def test_a_held_note_is_none_and_makes_its_note_longer():
    found = places(tune_of("A4 B4- | B2 c6"))
    assert [(place.note.bar, place.note.at / UNIT) for place in found] == [(0, 2), (1, 1)]
    assert found[0].note.length / UNIT == 3
    assert found[1].before is found[0].note


def test_nothing_is_joined_over_a_rest_or_a_repeat():
    assert ats("A4 z2 B2 | c8 :: d4 e4 :|") == [(1, 0), (2, 2)]


def test_places_know_their_bar_and_its_like():
    found = places(tune_of("A4 B4 | c8 | A4 B4 | A4 c4"))
    first, *_, again, other = [place for place in found if place.index]
    assert first.bar.kind == again.bar.kind != other.bar.kind
    assert (first.bar.alike, first.bar.again, again.bar.again) == (2, False, True)
    assert [place.bar.full_bars_behind for place in found if place.index] == [3, 1, 0]


def test_pick_ups_stand_where_they_sound():
    assert ats("A2 | B4 c4") == [(1, 0), (1, 2)]


def test_each_context_tells_some_places_apart_and_takes_some_for_alike():
    found = places(tune_of("DEFG ABcd | DEFG ABcd | DEFA GBdc | d2 c2 B2 A2 | D3E F2GA | DEFG AAcd | G8 | G8"))
    assert len(LIKENESS) == len(CONTEXTS)
    for context in CONTEXTS:
        keys = [context.key(place) for place in found]
        assert 1 < len(set(keys)) < len(keys), context.name
