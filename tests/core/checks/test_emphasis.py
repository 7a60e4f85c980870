import pytest

from core.accent_plan import parse_plan
from core.check import Finding, Severity, check
from tests.core.builders import bowed


def findings(text: str, plan: str = "on-beat", meter: str = "4/4") -> list[Finding]:
    found = check(*bowed(text, meter, parse_plan(plan))).findings
    return [f for f in found if f.rule.startswith("accent") or f.rule == "phrase-plans"]


def told(text: str, plan: str = "on-beat", meter: str = "4/4") -> list[str]:
    return [finding.text for finding in findings(text, plan, meter)]


@pytest.mark.parametrize(
    ("text", "rule", "severity", "said"),
    [
        ("A4(B2c2)|", "accent-up", Severity.WARNING, "falls on an up-bow"),
        ("(A2B2c2)d2|", "accent-buried", Severity.WARNING, "is buried inside a slur"),
        ("A4z4|", "accent-unstruck", Severity.NOTE, "is not struck: a rest stands there"),
        ("A4-A4|", "accent-unstruck", Severity.NOTE, "is not struck: a held note stands there"),
        ("A6B2|", "accent-unstruck", Severity.NOTE, "is not struck: a note sounds on there"),
    ],
)
def test_one_accent(text: str, rule: str, severity: Severity, said: str) -> None:
    (finding,) = findings(text)
    assert (finding.rule, finding.severity) == (rule, severity)
    assert finding.text == f"In bar 1, the accent on beat 3 {said}."


def test_driven_accents_are_not_told() -> None:
    assert findings("A2B2(c2d2)|") == []
    assert findings("A4 =B4|") == []


def test_neighbouring_bars_are_told_together() -> None:
    (finding,) = findings("uA2B2c2d2|A2B2c2d2|vA2B2c2d2|")
    assert finding.text == "In bars 1–2, 4 accents fall on up-bows."
    assert (finding.bars, finding.notes) == ((1, 2), ("b0n1", "b0n3", "b1n1", "b1n3"))


def test_bars_of_one_section_are_told_together() -> None:
    assert told("uA2B2c2d2|vA2B2c2d2|uA2B2c2d2|") == ["In bars 1 and 3, 4 accents fall on up-bows."]


def test_bars_apart_in_two_sections_are_not() -> None:
    assert told("uA2B2c2d2|vA2B2c2d2||vA2B2c2d2|uA2B2c2d2|") == [
        "In bar 1, 2 accents fall on up-bows.",
        "In bar 4, 2 accents fall on up-bows.",
    ]


def test_the_same_beat_of_several_bars_is_named() -> None:
    assert told("vA4B2c2|vA4B2c2|", "2")[0] == "In bars 1–2, the accent on beat 3 falls on an up-bow."
    assert told("(A4B4)|(A4B4)|")[0] == "In bars 1–2, the accent on beat 3 is buried inside a slur."
    assert told("A6B2|A4z4|") == ["In bars 1–2, the accent on beat 3 is not struck (1 note that sounds on and 1 rest)."]


def test_a_pickup_between_does_not_part_bars() -> None:
    assert told("A|uB2c2d2e2|f4g3||A|B4c4|d4e3|]")[0] == "In bars 1–4, 5 accents fall on up-bows."


def test_the_long_note_or_rest_that_closes_a_phrase_is_not_told() -> None:
    assert "accent-unstruck" not in [f.rule for f in findings("A4B4|A4B4|A4B4|A8|A4B4|A4B4|A4B4|A4z4|")]
    (finding,) = (f for f in findings("A4B4|A8|A4B4|A8|") if f.rule == "accent-unstruck")
    assert finding.text == "In bar 2, the accent on beat 3 is not struck: a note sounds on there."


def test_the_long_note_that_closes_a_phrase_may_begin_in_the_bar_before_the_last() -> None:
    begun = "A2B2c2d2|A2B2c2d2|"
    assert told(f"{begun}A8-|A8|") == []
    assert told(f"{begun}A8|vA8|") == ["In bar 3, the accent on beat 3 is not struck: a note sounds on there."]
    assert told(f"{begun}z4vA4-|A8|") == ["In bar 3, the accent on beat 1 is not struck: a rest stands there."]


def test_the_rest_that_opens_a_pickup_is_not_told() -> None:
    assert told("zABc|vd2e2f2g2|") == []
    assert told("AzAB|ud2ef2ga2|", "5/2") == [
        "In the pick-up, the accent on the second half of beat 3 is not struck: a rest stands there.",
    ]


def test_a_pickup_may_be_taken_up() -> None:
    """Schroeder, Handbook of Violin Playing (about 1889): a pick-up of one note or one slur is up."""
    assert told("A4|d2e2f2g2|") == []
    assert told("(AB)(cd)|ue2f2g2a2|")[-1] == "In bar 1, 2 accents fall on up-bows."
    assert told("LA4|d2e2f2g2|", "none") == ["In the pick-up, the accent on beat 3 falls on an up-bow."]


def test_reasons_are_counted() -> None:
    assert told("A2z6|z2A6|") == ["In bars 1–2, 3 accents are not struck (2 rests and 1 note that sounds on)."]


def test_a_later_pass_is_told_where_it_differs_and_its_bar_is_not_turned() -> None:
    # the slur into bar 2 does not reach it from the end of the tune: buried the first time, struck the second
    assert told("A4B2(c2||vd4)e4:|", "0") == ["In bar 2 the first time, the accent on beat 1 is buried inside a slur."]


@pytest.mark.parametrize(
    ("plan", "meter", "text", "said"),
    [
        ("1/2", "4/4", "AuBc2d4|", "the second half of beat 1"),
        ("1/4", "4/4", "A/uB/Bc2d4|", "the place after beat 1"),
        ("3/2", "6/8", "ABcuded|", "beat 2"),
        ("1", "2/2", "A2uB2c2d2|", "the second half of beat 1"),
    ],
)
def test_places_are_named_by_beats(plan: str, meter: str, text: str, said: str) -> None:
    assert told(text, plan, meter) == [f"In bar 1, the accent on {said} falls on an up-bow."]


def test_written_accents_are_told_too() -> None:
    assert told("A2LB2c2d2|", "none") == ["In bar 1, the accent on beat 2 falls on an up-bow."]


def test_a_plan_by_phrase_says_what_it_took() -> None:
    (finding, *_) = findings("A2B2c2d2|" * 4 + "A2uB2uc2d2|" + "uA2B2c2d2|" * 3, "by-phrase")
    assert (finding.rule, finding.severity) == ("phrase-plans", Severity.NOTE)
    assert finding.text == (
        "Phrase by phrase, the accents lie on the beat in bars 1–4 and on the backbeat in bars 5–8."
    )
