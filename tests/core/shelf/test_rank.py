import pytest

import core.shelf.rank as ranking
from core.accent_plan import parse_plan
from core.shelf.query import Query
from core.shelf.rank import rank
from tests.core.shelf.conftest import abc

EVEN = "G2B2 d2B2|G2B2 d2B2|"  # drives every beat with separate bows
ODD = "G2Bc d2B2|G2B2 dcB2|"  # needs a slur in each bar
HELD = "G4-G4|G2B2 d4|"  # beat 3 of the first bar is held; the second bar has three strokes


@pytest.fixture
def three(shelf):
    shelf.write("book.abc", abc("Odd", ODD, 1), abc("Even", EVEN, 2), abc("Held", HELD, 3))
    shelf.scan()
    return shelf


def titles(found):
    return [one.entry.title for one in found.tunes]


def test_tunes_stand_in_the_order_of_what_they_miss_break_and_cost(three):
    found = rank(three.catalogue, parse_plan("on-beat"))
    assert titles(found).index("Even") < titles(found).index("Odd")
    assert [one.key for one in found.tunes] == sorted(one.key for one in found.tunes)
    even = found.tunes[titles(found).index("Even")].figures
    assert (even.missed, even.broken, even.cost, even.slurs, even.playings) == (0, 0, 0, 0, 2)


def test_a_tune_is_planned_once_for_each_plan(three, monkeypatch):
    first = rank(three.catalogue, parse_plan("on-beat"))
    monkeypatch.setattr(ranking, "plan_figures", lambda lesson, plan: pytest.fail("planned again"))
    assert rank(three.catalogue, parse_plan("on-beat")) == first


def test_what_was_found_before_a_stop_is_kept(three, monkeypatch):
    def stop(progress):
        if progress.done == 2:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        rank(three.catalogue, parse_plan("backbeat"), watch=stop)
    planned = []
    plan_figures = ranking.plan_figures
    monkeypatch.setattr(ranking, "plan_figures", lambda *a: planned.append(a[0].tune.title) or plan_figures(*a))
    assert len(rank(three.catalogue, parse_plan("backbeat")).tunes) == 3
    assert len(planned) == 1


def test_only_what_the_query_finds_is_ranked(three):
    assert titles(rank(three.catalogue, parse_plan("on-beat"), Query(words="odd"))) == ["Odd"]


def test_a_file_that_went_and_a_tune_that_changed_cost_one_line_each(three):
    gone = three.write("gone.abc", abc("Gone", EVEN + EVEN))
    changed = three.write("changed.abc", abc("Changed", ODD + EVEN))
    three.scan()
    gone.unlink()
    changed.write_text(abc("Another", HELD + EVEN + EVEN, 7))
    found = rank(three.catalogue, parse_plan("on-beat"))
    assert sorted(titles(found)) == ["Even", "Held", "Odd"]
    assert sorted(problem.path.name for problem in found.problems) == ["changed.abc", "gone.abc"]
