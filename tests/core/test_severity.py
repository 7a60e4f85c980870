import pytest
from immutabledict import immutabledict

from core.accent_plan import parse_plan
from core.check import Severity, check
from core.severity import NOTHING_QUIET, set_loud, set_quiet, turned_down
from tests.core.builders import bowed

TURNED = bowed("|:A4B2c2|d4e4:|", accents=parse_plan("none"))


def test_a_rule_is_told_as_it_is_where_nothing_is_said() -> None:
    assert turned_down(Severity.WARNING, "retake", NOTHING_QUIET) is Severity.WARNING


def test_turning_down_and_up_again() -> None:
    quiet = set_quiet(set_quiet(NOTHING_QUIET, "retake", None), "accent-up", Severity.NOTE)
    assert quiet == {"retake": None, "accent-up": Severity.NOTE}
    assert set_loud(set_loud(quiet, "retake"), "accent-up") == NOTHING_QUIET


@pytest.mark.parametrize("severity", [Severity.WARNING, Severity.FAULT])
def test_no_rule_is_turned_up(severity: Severity) -> None:
    with pytest.raises(ValueError, match="can be turned down"):
        set_quiet(NOTHING_QUIET, "retake", severity)


def test_the_check_tells_a_quiet_rule_as_a_note_or_not_at_all() -> None:
    rule = "part-on-other-bow"
    (as_it_is,) = check(*TURNED).findings
    (as_note,) = check(*TURNED, immutabledict({rule: Severity.NOTE})).findings
    assert (as_it_is.severity, as_note.severity) == (Severity.WARNING, Severity.NOTE)
    assert as_note.text == as_it_is.text
    assert check(*TURNED, immutabledict({rule: None})).findings == ()
