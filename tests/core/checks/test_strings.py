import pytest

from core.check import Finding, Severity, check
from core.strings import STANDARD, Tuning
from tests.core.builders import bowed


def findings(text: str, tuning: Tuning = STANDARD) -> list[Finding]:
    return [f for f in check(*bowed(text), tuning=tuning).findings if f.rule == "slur-leaps-string"]


def test_a_slurred_octave_leaps_over_a_string() -> None:
    (finding,) = findings("(G4g4)|")
    assert finding.text == "In bar 1, the slur to the second note leaps from the D string to the E string."
    assert (finding.severity, finding.notes, finding.bars) == (Severity.WARNING, ("b0n2",), (1,))


@pytest.mark.parametrize("text", ["G4g4|", "G4=g4|", "(A4a4)|", "(E4e4)|", "(G4B2g2)|"])
def test_nothing_is_leapt_over(text: str) -> None:
    assert findings(text) == []


def test_a_run_of_bars_is_one_finding() -> None:
    one, other = findings("(Gg)(Gg) A4|(gG)A2 A4|A8|(Gg)A2 A4|")
    assert one.text == "In bars 1–2, 3 slurs leap over a string (the first, from the D string to the E string)."
    assert (one.notes, other.bars) == (("b0n2", "b0n4", "b1n2"), (4,))


def test_the_remedy_stops_the_bow_and_leaves_every_direction() -> None:
    tune, bowing = bowed("(Gg)(Gg) A4|B8|")
    (finding,) = (f for f in check(tune, bowing).findings if f.rule == "slur-leaps-string")
    assert finding.remedy is not None
    assert finding.remedy.label == "Hook the 2 notes: the bow stops before each"
    mended = finding.remedy.edit(tune, bowing)
    assert mended == bowed("G=gG=g A4|B8|")[1]
    assert check(tune, mended).strokes.bows == check(tune, bowing).strokes.bows


def test_a_tuning_names_its_strings() -> None:
    (finding,) = findings("(D4a4)|", Tuning(("A3", "D4", "A4", "E5")))
    assert finding.text.endswith("from the D string to the E string.")
    assert findings("(G4g4)|", Tuning(("G3", "D4", "G4", "D5"))) == []
