from dataclasses import replace

import pytest

from core.accent_plan import parse_plan
from core.bowing import Articulation, Grace, Signs, set_signs
from core.check import Finding, Severity, check
from core.ornamenting import upper_neighbour
from core.tune import Key, Meter, Pitch, Tune
from tests.core.builders import bowed


def findings(text: str, rule: str, meter: str = "4/4") -> list[Finding]:
    return [f for f in check(*bowed(text, meter, parse_plan("none"))).findings if f.rule == rule]


class TestEqualNotes:
    def test_a_slur_over_two_equal_notes_hides_the_second(self) -> None:
        (finding,) = findings("A2(B2B2)c2|", "equal-notes-slurred")
        assert finding.text == "In bar 1, the third note is slurred to the same note before it (B4) and is not heard."
        assert (finding.severity, finding.notes) == (Severity.NOTE, ("b0n3",))

    @pytest.mark.parametrize("text", ["A2(B2b2)c2|", "A2B2B2c2|", "A2B2=B2c2|", "A2B2-B2c2|", "A2(B2~B2)c2|"])
    def test_nothing_is_hidden(self, text: str) -> None:
        assert findings(text, "equal-notes-slurred") == []

    def test_a_dot_under_the_slur_parts_the_notes(self) -> None:
        tune, bowing = bowed("A2(B2B2)c2|")
        dotted = set_signs(bowing, "b0n3", Signs(articulations=(Articulation.STACCATO,)))
        assert "equal-notes-slurred" not in {finding.rule for finding in check(tune, dotted).findings}

    def test_neighbouring_bars_are_told_together(self) -> None:
        (finding,) = findings("(AAA)B c4|(d2d2)e4|", "equal-notes-slurred")
        assert finding.text == "In bars 1–2, 3 notes are slurred to the same note before them and are not heard."

    def test_the_remedy_is_a_cut_that_leaves_every_direction(self) -> None:
        tune, bowing = bowed("(AAA)B c4|")
        (finding,) = (f for f in check(tune, bowing).findings if f.rule == "equal-notes-slurred")
        assert finding.remedy is not None
        assert finding.remedy.label == "Put cuts on the 2 notes"
        mended = finding.remedy.edit(tune, bowing)
        assert check(tune, mended).strokes == check(tune, bowing).strokes
        cut = Signs(graces=(Grace((Pitch(4, "B"),), slashed=True),))
        assert mended.signs == {"b0n2": cut, "b0n3": cut}
        assert "equal-notes-slurred" not in {finding.rule for finding in check(tune, mended).findings}

    @pytest.mark.parametrize(
        ("text", "label"),
        [
            ("A2(B2B2)c2|", "Put a cut on the third note of bar 1 (C5, the next note up)"),
            ("A2(G2G2)c2|", "Put a cut on the third note of bar 1 (A4, the open string above)"),
            ("A2(d2d2)c2|", "Put a cut on the third note of bar 1 (E5, the open string above)"),
        ],
    )
    def test_it_says_what_the_cut_is(self, text: str, label: str) -> None:
        (finding,) = findings(text, "equal-notes-slurred")
        assert finding.remedy is not None
        assert finding.remedy.label == label


class TestCuts:
    def test_the_key_signature_alters_a_cut(self) -> None:
        tune, _ = bowed("(BB)|")
        in_d = replace(tune, bars=tuple(replace(bar, key=Key(2)) for bar in tune.bars))
        assert upper_neighbour(in_d, "b0n2") == Pitch(5, "C", 1)

    def test_an_accidental_before_it_in_the_bar_holds(self) -> None:
        tune, _ = bowed("cB(BB)|c(BB)|")
        first = tune.bars[0]
        sharp = replace(first, notes=(replace(first.notes[0], pitches=(Pitch(5, "C", 1),)), *first.notes[1:]))
        altered = replace(tune, bars=(sharp, *tune.bars[1:]))
        assert upper_neighbour(altered, "b0n4") == Pitch(5, "C", 1)
        assert upper_neighbour(altered, "b1n3") == Pitch(5, "C")


class TestLongStrokes:
    @pytest.mark.parametrize(
        ("text", "said"),
        [
            ("(ABcdefga|b)cdefgab|", "takes 9 notes"),
            ("(A8|B8)|", "lasts longer than a bar and a half"),
            ("A8-|A8|", "lasts longer than a bar and a half"),
            ("(ABcdefga|b8)|", "takes 9 notes and lasts longer than a bar and a half"),
        ],
    )
    def test_too_much_for_a_bow(self, text: str, said: str) -> None:
        (finding,) = findings(text, "long-stroke")
        assert finding.text == f"The stroke that begins with the first note of bar 1 {said}."
        assert finding.severity is Severity.NOTE

    @pytest.mark.parametrize("text", ["(ABcdefga)|", "(A8|B4)c4|", "A8-|A4c4|", "(ABcdefga)|b8|"])
    def test_just_enough(self, text: str) -> None:
        assert findings(text, "long-stroke") == []

    def test_free_metre_sets_no_length(self) -> None:
        tune, bowing = bowed("(A8|B8)|")
        free = Tune("", tuple(replace(bar, meter=Meter(())) for bar in tune.bars))
        assert "long-stroke" not in {finding.rule for finding in check(free, bowing).findings}
