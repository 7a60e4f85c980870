"""What tells two bowings apart, note by note."""

from __future__ import annotations

from dataclasses import replace

from core.bowing import Bow, Bowing, Join, Ornament, Signs, fix_bow, join, set_signs
from core.differences import Difference, differences
from core.strokes import work_out
from core.tune import Tune
from tests.core.builders import bowed

D, U = Bow.DOWN, Bow.UP


def told(tune: Tune, one: Bowing, other: Bowing) -> dict[str, Difference]:
    return dict(differences(tune, one, work_out(tune, one), other, work_out(tune, other)))


def test_one_slur_more_turns_every_later_stroke_round():
    tune, plain = bowed("ABcd | efga", "2/4")
    assert told(tune, join(tune, plain, "b0n2", Join.SLUR), plain) == {
        "b0n2": Difference((Join.SLUR, None), ((D,), (U,))),
        "b0n3": Difference(bows=((U,), (D,))),
        "b0n4": Difference(bows=((D,), (U,))),
        "b1n1": Difference(bows=((U,), (D,))),
        "b1n2": Difference(bows=((D,), (U,))),
        "b1n3": Difference(bows=((U,), (D,))),
        "b1n4": Difference(bows=((D,), (U,))),
    }


def test_a_hook_in_the_place_of_a_slur_differs_in_nothing_but_that():
    tune, slurred = bowed("A(Bc)d", "2/4")
    hooked = replace(slurred, joins=slurred.joins.set("b0n3", Join.HOOK))
    assert told(tune, hooked, slurred) == {"b0n3": Difference((Join.HOOK, Join.SLUR))}


def test_where_only_a_later_pass_differs_all_passes_are_told():
    tune, plain = bowed("|: A2Bc d2 z2 :|")
    turned = fix_bow(tune, plain, "b0n4", Bow.DOWN, 2)
    assert told(tune, turned, plain)["b0n4"] == Difference(bows=((U, D), (U, U)))


def test_a_mark_that_says_what_follows_anyway_is_no_difference():
    tune, plain = bowed("ABcd", "2/4")
    assert told(tune, fix_bow(tune, plain, "b0n2", Bow.UP), plain) == {}


def test_an_ornament_is_a_difference_of_signs_alone():
    tune, plain = bowed("ABcd", "2/4")
    rolled = set_signs(plain, "b0n3", Signs(ornaments=(Ornament.ROLL,)))
    assert told(tune, rolled, plain) == {"b0n3": Difference(signs=(Signs(ornaments=(Ornament.ROLL,)), Signs()))}


def test_a_held_note_is_not_told_again():
    tune, plain = bowed("A B4- | B4 cd")
    other = fix_bow(tune, plain, "b0n2", plain_bow(tune, plain, "b0n2").turned)
    assert "b0n2" in told(tune, other, plain)
    assert "b1n1" not in told(tune, other, plain)


def plain_bow(tune: Tune, bowing: Bowing, note: str) -> Bow:
    return work_out(tune, bowing).bows[note][0]
