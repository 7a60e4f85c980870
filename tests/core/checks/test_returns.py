from dataclasses import replace
from fractions import Fraction

import pytest

from core.accent_plan import parse_plan
from core.check import Finding, Severity, check
from core.tune import Words
from tests.core.builders import bowed


def findings(text: str, rule: str = "phrase") -> list[Finding]:
    return [f for f in check(*bowed(text, accents=parse_plan("none"))).findings if f.rule.startswith(rule)]


def told(text: str) -> list[str]:
    return [finding.text for finding in findings(text)]


FOUR = "A4B2c2|d4e4|f4g4|a4g4|"  # nine strokes


def test_a_phrase_on_the_other_bow_is_one_finding() -> None:
    (finding,) = findings(FOUR + FOUR)
    assert finding.text == "Bars 5–8 bring bars 1–4 again on the other bow (bar 1 began down, bar 5 begins up)."
    assert (finding.severity, finding.bars) == (Severity.WARNING, (5, 6, 7, 8))
    assert (finding.notes[0], finding.notes[-1], len(finding.notes)) == ("b4n1", "b7n2", 9)


def test_a_phrase_on_the_same_bow_is_none() -> None:
    assert findings(FOUR + "z8|v" + FOUR) == []
    assert findings("A4B4|d4e4|" * 2) == []


def test_bars_that_come_back_as_they_were_are_left_out() -> None:
    text = "A4B4|c4d4|e4f4|g4a4|" + "A4B4|c4d4|ue4f4|g4a4|"
    assert told(text) == ["Bars 7–8 bring bars 3–4 again on the other bow (bar 3 began down, bar 7 begins up)."]


def test_a_phrase_that_turns_inside_a_bar_says_where() -> None:
    assert told("A2B2c2d2|e4f4|A2B2uc2d2|e4f4|") == [
        "Bars 3–4 bring bars 1–2 again on the other bow, from the third note on (there down in bar 1, up in bar 3)."
    ]


def test_other_slurs_are_told_apart_from_other_bows() -> None:
    (finding,) = findings("A4B2c2|A4(B2c2)|")
    assert finding.text == "Bar 2 brings bar 1 again slurred differently (bar 1 began down, bar 2 begins up)."
    assert finding.severity is Severity.NOTE


def test_a_hook_is_not_a_slur() -> None:
    assert told("A4(B2c2)|A4B2=c2|") == ["Bar 2 brings bar 1 again slurred differently."]


def test_the_slur_into_a_phrase_does_not_belong_to_it() -> None:
    assert findings("A4B4|g2a2(b4|A4)B4|") == []


def test_a_slur_over_a_bar_line_inside_a_phrase_does() -> None:
    assert told("A4(B4|c4)d4|z8|A4B4|c4d4|") == [
        "Bar 4 brings bar 1 again on the other bow (bar 1 began down, bar 4 begins up).",
        "Bar 5 brings bar 2 again slurred differently.",
    ]


def test_the_first_pass_is_compared() -> None:
    assert told("|:A4B2c2:|A4B2c2|") == []  # down, up; then down again


def test_a_phrase_with_its_pickup() -> None:
    assert told("A|B2c2d2e2|f4g3||A|B2c2d2e2|f4g3|]") == [
        "The pick-up and bars 3–4 bring the pick-up and bars 1–2 again on the other bow "
        "(the pick-up began up, the pick-up to bar 3 begins down)."
    ]


@pytest.mark.parametrize("text", [FOUR + FOUR, "A2B2c2d2|e4f4|A2B2uc2d2|e4f4|"])
def test_the_remedy_brings_it_back_as_it_was(text: str) -> None:
    tune, bowing = bowed(text, accents=parse_plan("none"))
    (finding,) = (f for f in check(tune, bowing).findings if f.rule == "phrase-on-other-bow")
    assert finding.remedy is not None
    mended = check(tune, finding.remedy.edit(tune, bowing))
    assert "phrase-on-other-bow" not in {f.rule for f in mended.findings}
    assert mended.totals.consistency == 1.0


def test_no_remedy_where_no_stroke_begins() -> None:
    (finding,) = findings("A4B4|g4(a4|A4)B4|", "phrase-on")
    assert finding.remedy is None


class TestSegue:
    """In the fiddle book of 1883 the slurs of a phrase are printed once, and "SEGUE" stands for the others."""

    def told(self, text: str, said: str, bar: int) -> list[str]:
        tune, bowing = bowed(text, accents=parse_plan("none"))
        bars = list(tune.bars)
        bars[bar] = replace(bars[bar], words=(Words(Fraction(0), said),))
        return [f.rule for f in check(replace(tune, bars=tuple(bars)), bowing).findings if "slurred" in f.rule]

    @pytest.mark.parametrize("said", ["SEGUE", "segue", "Simile", "sim."])
    def test_a_bar_without_slurs_behind_it_is_not_told(self, said: str) -> None:
        assert self.told("(AB)c2d4|A4B4|ABc2d4|", said, 1) == []

    @pytest.mark.parametrize(
        ("text", "said", "bar"),
        [
            ("(AB)c2d4|A4B4|ABc2d4|", "similar", 1),  # another word
            ("(AB)c2d4|A4B4|AB(c2d4)|", "segue", 1),  # slurs of its own
            ("(AB)c2d4|A4B4||ABc2d4|", "segue", 1),  # another section
            ("(AB)c2d4|A4B4|ABc2d4|e8|", "segue", 3),  # behind it
        ],
    )
    def test_others_are(self, text: str, said: str, bar: int) -> None:
        assert self.told(text, said, bar) == ["phrase-slurred-differently"]


class TestBarsToldTogether:
    def test_bars_as_far_apart_in_one_section_are_one_finding(self) -> None:
        first, second = "A2B2c2d2|e2f2g2a2|b2a2g2f2|e2d2c2B2|", "A2B2c2d2|c4e4|b2a2g2f2|d4B4|"
        assert told(f"{first}|u{second}") == [
            "Bars 5 and 7 bring bars 1 and 3 again on the other bow (bar 1 began down, bar 5 begins up)."
        ]

    def test_a_bar_with_one_note_changed_is_told_with_its_phrase(self) -> None:
        first, second = "A2B2c2d2|e2f2g2a2|b2a2g2f2|", "A2B2c2d2|e2f2g2f2|b2a2g2f2|"
        assert told(f"{first}|u{second}") == [
            "Bars 4–6 bring bars 1–3 again, bar 5 with one note changed, on the other bow "
            "(bar 1 began down, bar 4 begins up)."
        ]

    def test_a_pickup_alone_is_not_told(self) -> None:
        assert told("AB|c2d2e2f2|g4a2||vAB|g2f2e2d2|c4B2|]") == []

    def test_endings_do_not_break_a_phrase(self) -> None:
        body = "A2B2c2d2|e2f2g2a2|"
        assert told(f"|:{body}[1b4a4:|[2A4c4||u{body}A4c4|]") == [
            "Bars 5–7 bring bars 1–2 and 4 again on the other bow (bar 1 began down, bar 5 begins up)."
        ]


class TestLikePhrases:
    def test_a_phrase_a_step_lower_is_a_note(self) -> None:
        (finding,) = findings("B2c2d2e2|f2g2a2b2|z8|z8|uA2B2c2d2|e2f2g2a2|", "like")
        assert finding.text == (
            "Bars 5–6 are like bars 1–2, a step lower, and come on the other bow (bar 1 began down, bar 5 begins up)."
        )
        assert (finding.rule, finding.severity, finding.bars) == ("like-on-other-bow", Severity.NOTE, (5, 6))

    def test_a_bar_but_for_one_note(self) -> None:
        assert [f.text for f in findings("A2B2c2dB|uA2B2c2dA|", "like")] == [
            "Bar 2 is like bar 1, but for one note, and comes on the other bow (bar 1 began down, bar 2 begins up)."
        ]

    def test_the_same_shape(self) -> None:
        first, second = "A2ce a2ec|B2df bfdB|", "G2ce g2eB|A2df afdA|"
        assert [f.text for f in findings(f"{first}z8|z8|u{second}", "like")] == [
            "Bars 5–6 are like bars 1–2, in rhythm, rises and falls, and come on the other bow "
            "(bar 1 began down, bar 5 begins up)."
        ]

    def test_the_same_rhythm_alone_says_nothing(self) -> None:
        assert findings("A2ce a2ec|B2df bfdB|z8|z8|ua2ec A2ce|b2fd BdfB|", "like") == []

    def test_other_slurs_of_a_phrase_transposed(self) -> None:
        assert [f.text for f in findings("A2B2c2BA|B2c2d2(cB)|", "like")] == [
            "Bar 2 is like bar 1, a step higher, and is slurred differently."
        ]

    @pytest.mark.parametrize(
        "text",
        [
            "B2c2d2e2|z8|z8|uA2B2c2d2|",  # three bars on, where no phrase answers
            "A2B2c2d2|uB2c2d2e2|vc2d2e2f2|ud2e2f2g2|",  # a sequence that runs on
            "B2c2d2e2|A2B2c2d2|",  # on the same bow
            "A2B2c2d2|uA2B2c2e2|",  # one of four notes, alone: a slow air is full of such bars
        ],
    )
    def test_what_is_not_worth_telling(self, text: str) -> None:
        assert findings(text, "like") == []

    def test_a_phrase_that_is_the_same_is_not_like_another_too(self) -> None:
        assert findings("A2B2c2d2|uA2B2c2d2|", "like") == []
