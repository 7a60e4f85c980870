"""Sets made of tunes of the fiddle book of 1883 (music21's corpus, folder ryansMammoth), bowed as printed.

That these tunes go round without a retake, and that the hornpipe takes one at each return of a strain, was counted in
the printed marks before this program (a slur or a tied group is one stroke, strokes alternate from the last printed
mark). That such tunes can follow one another by alternation alone is what is tried here.
"""

from __future__ import annotations

from itertools import permutations, product

import pytest

from core.bowing import Bow
from core.set_check import check_set
from core.set_orders import orders
from core.tune_set import Entry, TuneSet, Way
from tests.outside.book_of_1883 import tune

BY_THEMSELVES = ("SoldiersJoy", "FishersHornpipe", "DevilsDreamReel")  # pick-up up, every bar down, no retake
ENDS_DOWN = "CollegeHornpipe"  # pick-up of two strokes, down and up; its last bar ends down


def set_of(*names: str, times: int = 1) -> TuneSet:
    return TuneSet(tuple(Entry(*tune(name), times) for name in names))


@pytest.mark.parametrize(("names", "times"), [*product(permutations(BY_THEMSELVES), (1, 2, 3))])
def test_tunes_that_go_round_by_themselves_follow_each_other_in_any_order(names: tuple[str, ...], times: int) -> None:
    report = check_set(set_of(*names, times=times))
    assert all(seam.alternates for seam in report.seams)
    assert (len(report.seams), report.findings, report.comes_round) == (3 * times, (), True)


def test_a_tune_that_ends_down_lets_one_with_an_upward_pick_up_follow() -> None:
    seam = check_set(set_of(ENDS_DOWN, "SoldiersJoy")).seams[0]
    assert (seam.last, seam.first, seam.alternates) == (Bow.DOWN, Bow.UP, True)


def test_a_printed_down_bow_after_a_tune_that_ends_down_is_a_retake() -> None:
    for names in (("SoldiersJoy", ENDS_DOWN), (ENDS_DOWN, ENDS_DOWN)):
        seam = next(seam for seam in check_set(set_of(*names)).seams if seam.way is Way.NEXT)
        assert (seam.last, seam.first, seam.is_retake, seam.is_turned) == (Bow.DOWN, Bow.DOWN, True, False)


def test_the_best_order_begins_with_the_tune_whose_beginning_takes_a_retake() -> None:
    best = orders(set_of("SoldiersJoy", ENDS_DOWN, "FishersHornpipe"))[0]
    assert (best.places[0], best.turned, best.retakes) == (1, 0, 0)
