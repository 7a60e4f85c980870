"""Laws of findings and remedies, on tunes of any kind."""

import random
from dataclasses import replace
from typing import TypeVar

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.bowing import Bowing
from core.check import RULES, Report, Severity, check
from core.checks.finding import Finding
from core.remedies import AT_MOST, TURNING, remedies
from core.severity import turned_down
from core.tune import Tune
from tests.core.test_check import bowed_tunes
from tests.property.strategies import lessons

V = TypeVar("V")
ACCENTS = {"accent-up", "accent-buried"}
slow = settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def cases(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """Tunes that turn round often, and tunes of every kind."""
    if draw(st.booleans()):
        return draw(bowed_tunes())
    lesson = draw(lessons())
    return lesson.tune, draw(st.sampled_from(lesson.bowings))


def is_still_told(finding: Finding, report: Report) -> bool:
    notes = set(finding.notes)
    return any(other.rule == finding.rule and notes & set(other.notes) for other in report.findings)


def warned(report: Report) -> set[tuple[str, str]]:
    loud = [finding for finding in report.findings if finding.severity is not Severity.NOTE]
    return {(finding.rule, note) for finding in loud if finding.rule not in ACCENTS for note in finding.notes}


def missed(report: Report) -> int:
    return report.totals.up + report.totals.buried


@given(cases())
@slow
def test_a_remedy_takes_its_finding_away_and_brings_nothing_worse(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case
    before = check(tune, bowing)
    for finding in before.findings:
        if finding.rule not in TURNING:
            continue
        for remedy in remedies(tune, bowing, finding):
            after = check(tune, remedy.edit(tune, bowing))
            assert not is_still_told(finding, after), remedy.label
            assert warned(after) <= warned(before), remedy.label
            if remedy not in finding.remedies:
                assert missed(after) <= missed(before), remedy.label


@given(cases())
@slow
def test_remedies_are_few_and_their_labels_tell_them_apart(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case
    for finding in check(tune, bowing).findings:
        offered = remedies(tune, bowing, finding)
        assert len(offered) <= AT_MOST
        assert len({remedy.label for remedy in offered}) == len(offered)
        assert offered == remedies(replace(tune), replace(bowing), finding)


@given(cases())
@slow
def test_a_remedy_says_how_many_slurs_it_costs(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case
    before = check(tune, bowing)
    for finding in before.findings:
        for remedy in remedies(tune, bowing, finding):
            after = check(tune, remedy.edit(tune, bowing))
            assert after.totals.slurs - before.totals.slurs == remedy.slurs, remedy.label


@given(cases(), st.randoms(use_true_random=False))
@slow
def test_findings_do_not_depend_on_the_order_in_which_signs_were_set(
    case: tuple[Tune, Bowing], chance: random.Random
) -> None:
    tune, bowing = case

    def shuffled(signs: immutabledict[str, V]) -> immutabledict[str, V]:
        items = list(signs.items())
        chance.shuffle(items)
        return immutabledict(items)

    other = replace(bowing, joins=shuffled(bowing.joins), marks=shuffled(bowing.marks), signs=shuffled(bowing.signs))
    assert check(tune, other).findings == check(tune, bowing).findings


@given(cases(), st.dictionaries(st.sampled_from(tuple(RULES)), st.sampled_from((Severity.NOTE, None))))
@slow
def test_turning_rules_down_changes_severities_and_nothing_else(
    case: tuple[Tune, Bowing], rules: dict[str, Severity | None]
) -> None:
    tune, bowing = case
    quiet = immutabledict(rules)
    loud, turned = check(tune, bowing), check(tune, bowing, quiet)
    assert turned.totals == loud.totals
    kept = [finding for finding in loud.findings if turned_down(finding.severity, finding.rule, quiet)]
    assert [replace(finding, severity=Severity.NOTE) for finding in turned.findings] == [
        replace(finding, severity=Severity.NOTE) for finding in kept
    ]
    for finding in turned.findings:
        assert finding.severity is Severity.NOTE or finding.rule not in rules
