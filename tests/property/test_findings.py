"""Laws of findings, on tunes of any kind: their order, and what their own remedies leave behind."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from immutabledict import immutabledict

from core.bowing import Bowing
from core.check import RULES, Report, Severity, check
from core.checks.finding import Finding
from core.remedies import TURNING
from core.tune import Bar, Tune
from tests.core.test_check import bowed_tunes
from tests.property.strategies import bowings, tunes

RANK = {rule: rank for rank, rule in enumerate(RULES)}
MARKS = {"mark-against-slur", "redundant-mark"}
ACCENTS = {"accent-up", "accent-buried"}  # a hook strikes a note anew: what was buried is up
slow = settings(deadline=None, max_examples=50, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def cases(draw: st.DrawFn) -> tuple[Tune, Bowing]:
    """Most are short and quickly made; some are tunes of every kind."""
    if draw(st.integers(0, 3)):
        return draw(bowed_tunes())
    tune = draw(tunes())
    return tune, draw(bowings(tune))


def renamed(tune: Tune, bowing: Bowing) -> tuple[Tune, Bowing, dict[str, str]]:
    """The same with other note ids, whose alphabet runs the other way."""
    count = len(tune.sequence)
    names = {note.id: f"n{count - place:05}" for place, note in enumerate(tune.sequence)}

    def bar(written: Bar) -> Bar:
        return replace(written, notes=tuple(replace(note, id=names[note.id]) for note in written.notes))

    other = replace(
        bowing,
        joins=immutabledict({names[note_id]: how for note_id, how in bowing.joins.items()}),
        marks=immutabledict({names[note_id]: mark for note_id, mark in bowing.marks.items()}),
        retakes=frozenset(names[note_id] for note_id in bowing.retakes),
        signs=immutabledict({names[note_id]: signs for note_id, signs in bowing.signs.items()}),
    )
    return replace(tune, bars=tuple(map(bar, tune.bars))), other, names


def loud(report: Report) -> set[tuple[str, str]]:
    """Rule and note of every warning and fault, accents apart."""
    told = [finding for finding in report.findings if finding.severity is not Severity.NOTE]
    return {(finding.rule, note) for finding in told if finding.rule not in ACCENTS for note in finding.notes}


@given(cases())
@slow
def test_findings_stand_by_first_bar_and_in_one_bar_by_rule(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case

    def place(finding: Finding) -> tuple[int, int]:
        return (tune.bar_of[finding.notes[0]] if finding.notes else -1), RANK[finding.rule]

    places = [place(finding) for finding in check(tune, bowing).findings]
    assert places == sorted(places)


@given(cases())
@slow
def test_findings_do_not_depend_on_what_notes_are_called(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case
    other_tune, other, names = renamed(tune, bowing)
    told = [replace(finding, notes=tuple(names[n] for n in finding.notes)) for finding in check(tune, bowing).findings]
    assert list(check(other_tune, other).findings) == told


@given(cases())
@slow
def test_each_finding_is_told_once_with_its_notes_and_bars_in_order(case: tuple[Tune, Bowing]) -> None:
    tune, bowing = case
    findings = check(tune, bowing).findings
    assert len({(finding.rule, finding.text) for finding in findings}) == len(findings)
    for finding in findings:
        assert list(finding.notes) == sorted(set(finding.notes), key=tune.places.__getitem__)
        assert list(finding.bars) == list(dict.fromkeys(finding.bars))
        assert {tune.bars[tune.bar_of[note]].number for note in finding.notes} <= set(finding.bars)


@given(cases())
@slow
def test_a_remedy_that_needs_no_search_mends_its_finding_and_turns_nothing_round(case: tuple[Tune, Bowing]) -> None:
    """Cuts, hooks, a mark that says nothing new: no stroke changes its way for them, and no more accents are missed."""
    tune, bowing = case
    before = check(tune, bowing)
    for finding in before.findings:
        if finding.rule in TURNING | MARKS:
            continue
        for remedy in finding.remedies:
            after = check(tune, remedy.edit(tune, bowing))
            told = {(other.rule, note) for other in after.findings for note in other.notes}
            assert not told & {(finding.rule, note) for note in finding.notes}, remedy.label
            assert after.strokes.bows == before.strokes.bows, remedy.label
            assert loud(after) <= loud(before), remedy.label
            assert after.totals.up + after.totals.buried <= before.totals.up + before.totals.buried, remedy.label


@given(cases())
@slow
def test_taking_a_mark_away_mends_what_was_told_of_it(case: tuple[Tune, Bowing]) -> None:
    """Where it stood inside its stroke on every pass nothing changes; else it was needed on the others."""
    tune, bowing = case
    before = check(tune, bowing)
    for finding in before.findings:
        if finding.rule in MARKS:
            (note_id,) = finding.notes
            assert finding.remedy is not None
            mended = finding.remedy.edit(tune, bowing)
            after = check(tune, mended)
            assert mended == replace(bowing, marks=bowing.marks.discard(note_id))
            assert not any(note_id in other.notes for other in after.findings if other.rule in MARKS)
            if not any(played.starts for played in before.strokes.by_note[note_id]):
                assert after.strokes == before.strokes
