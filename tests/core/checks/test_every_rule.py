"""Every rule has a tune that trips it and a near miss, one small thing away, that does not.

A rule that joins ``core.check.RULES`` fails here until it has a row. What its own module tests is more; this is the
least. ``tests/outside/test_rules_against_1883.py`` holds each against print.
"""

from __future__ import annotations

import re
from typing import NamedTuple

import pytest

from core.accent_plan import parse_plan
from core.check import RULES, check
from tests.core.builders import bowed

EIGHT_BARS = "A2B2c2d2|" * 8
LONG_AND_SHORT = "A8-|A8-|A8-|A8-|A7B|"


class Row(NamedTuple):
    """Bars as ``tests.core.builders`` reads them; the plan accents nothing unless accents are the matter."""

    trips: str
    spares: str
    differs: str
    plan: str = "none"
    meter: str = "4/4"


ROWS = {
    "mark-against-slur": Row("(AuB)c2d4|", "(AvB)c2d4|", "the mark agrees"),
    "redundant-mark": Row("(AvB)c2d4|", "(vAB)c2d4|", "the mark stands where the slur begins"),
    "tune-on-other-bow": Row("A4B2c2|]", "A4(B2c2)|]", "an even number of strokes"),
    "round-retake": Row("vA4B2c2|]", "vA4(B2c2)|]", "an even number of strokes"),
    "part-on-other-bow": Row("|:A4B2c2|d4e4:|", "|:A4B2c2|d4e2f2:|", "an even number of strokes"),
    "ending-on-other-bow": Row("|:A4B4|[1c4d4:|[2uc4d4|]", "|:A4B4|[1c4d4:|[2vc4d4|]", "the mark of the second"),
    "phrase-on-other-bow": Row("A4B2c2|A4B2c2|", "A4(B2c2)|A4(B2c2)|", "the first bar has an even number of strokes"),
    "phrase-slurred-differently": Row("A4B2c2|A4(B2c2)|", "A4B2c2|g4(f2e2)|", "other notes have other slurs"),
    "like-on-other-bow": Row("A2B2c2dB|uA2B2c2dA|", "A2B2c2dB|uA2B2e2fA|", "more than one note is another"),
    "like-slurred-differently": Row("A2B2c2BA|B2c2d2(cB)|", "A2B2c2BA|B2c2e2(cB)|", "not quite transposed"),
    "accent-up": Row("A4(B2c2)|", "A2B2(c2d2)|", "the third beat is a third stroke", "on-beat"),
    "accent-buried": Row("(A2B2c2)d2|", "(A2B2=c2)d2|", "a hook is struck anew", "0,2"),
    "accent-unstruck": Row("A4z4|", "A4z2B2|", "nothing rests on the accent", "0,3"),
    "phrase-plans": Row(EIGHT_BARS, EIGHT_BARS, "each place is fixed", "by-phrase"),
    "retake-on-some-passes": Row("|:A4B2c2|vd8:|", "|:A4B2c2|vd4e4:|", "it comes round, and the mark needs no lift"),
    "retake": Row("A2vB2c2d2|", "A2uB2c2d2|", "alternation reaches the mark"),
    "equal-notes-slurred": Row("A2(B2B2)c2|", "A2(B2~B2)c2|", "a cut parts them"),
    "long-stroke": Row("(ABcdefga|b)cdefgab|", "(ABcdefga)|bcdefgab|", "eight notes, not nine"),
    "stroke-beyond-bow": Row("A8-|" * 10 + "A8|", "A8-|" * 9 + "A8|", "12 s, not 13.2"),
    "bow-runs-out": Row(LONG_AND_SHORT * 4, LONG_AND_SHORT * 3, "three times there is room"),
    "bow-drift": Row("(ABcdefg)a|" * 6, "(ABcdefg)z|" * 6, "the bow comes back in a rest"),
    "slur-leaps-string": Row("(G4g4)|", "(G4d4)|", "the next string"),
}
SPARED_BY_PLAN = {"phrase-plans": "on-beat"}  # where the near miss is another plan


def told(rule: str, text: str, plan: str, meter: str) -> bool:
    return rule in {finding.rule for finding in check(*bowed(text, meter, parse_plan(plan))).findings}


def test_every_rule_has_its_row() -> None:
    assert list(ROWS) == list(RULES)


@pytest.mark.parametrize("rule", RULES)
def test_it_is_told_of_what_trips_it_and_not_of_a_near_miss(rule: str) -> None:
    row = ROWS[rule]
    assert told(rule, row.trips, row.plan, row.meter)
    assert not told(rule, row.spares, SPARED_BY_PLAN.get(rule, row.plan), row.meter), row.differs


@pytest.mark.parametrize("rule", RULES)
def test_its_reason_names_a_source_or_says_that_there_is_none(rule: str) -> None:
    why = RULES[rule].why
    assert "no source" in why or re.search(r"\b1[6-9]\d\d\b", why), why
