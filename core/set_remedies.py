"""What single change mends a finding about a set: found by trying, told best first.

A seam can be mended at the end of the tune before it, by one slur more or one parted slur in its last phrase; at the
beginning of the tune after it, by the same in its pick-up; or by a retake there. What such a change costs, and what
it must not do to the tune itself, is as in ``core.remedies``; no other seam of the set may get worse either.
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Iterator
from functools import cache, partial
from itertools import islice

from core.bowing import Bow, Bowing, fix_bow, stroke_start
from core.check import Report, check
from core.checks import words
from core.checks.finding import Remedy
from core.order import playing_order
from core.remedies import AT_MOST, COSTS, Change, changes_in, gain, misses_more, warns_of_more
from core.set_check import SET_RULES, SetFinding, SetReport, SetRule, check_set
from core.severity import Severity
from core.strokes import Strokes
from core.translation import tr
from core.tune import Tune
from core.tune_set import StrokesOf, TuneSet, set_bowing, strokes_in
from core.values import dataclass

LAST_BARS = 4  # a phrase, common practice, no source


@dataclass(frozen=True, slots=True)
class SetRemedy:
    """A change to one tune of a set.

    Attributes:
        entry: Index of the tune in the set.
        remedy: What to do to its bowing. Where the set has the same tune so bowed elsewhere, that changes too.
    """

    entry: int
    remedy: Remedy


def set_remedies(
    tune_set: TuneSet,
    finding: SetFinding,
    judge: Callable[[int, Bowing], Report] | None = None,
    at_most: int = AT_MOST,
) -> tuple[SetRemedy, ...]:
    """Find what single changes mend a finding about a set.

    Args:
        tune_set: The set.
        finding: What its check found.
        judge: The check of one tune (index) by itself in another bowing, with the settings that are in force for it;
            that with the usual settings where None.
        at_most: How many to offer.
    Returns:
        The best changes, cheapest first: the finding is gone, nothing as grave is told that was not before (a tune
        turned round is graver than a retake, and the set itself is graver than its way back to the start), and the
        changed tune by itself has no new warning and misses no more accents.
    """
    known = strokes_in(tune_set)
    before = check_set(tune_set, known)
    graver = _graver(SET_RULES[finding.rule])
    entries = tune_set.entries
    judged = judge or (lambda entry, bowing: check(entries[entry].tune, bowing))
    as_it_is = cache(lambda entry: judged(entry, entries[entry].bowing))

    def weigh(entry: int, change: Change) -> int | None:
        """The cost of a change; None where it mends nothing or does harm."""
        mended = mend(tune_set, SetRemedy(entry, change.remedy))
        after = check_set(mended, _strokes_beside(known, tune_set, mended))
        if _key(finding) in _told(after) or not _told(after, graver) <= _told(before, graver):
            return None
        old, new = as_it_is(entry), judged(entry, change.remedy.edit(entries[entry].tune, entries[entry].bowing))
        if warns_of_more(old, new) or misses_more(old, new):
            return None
        return change.cost + gain(old, new) + COSTS.told * (len(after.findings) - len(before.findings))

    def weighed(changes: Iterable[tuple[int, Change]]) -> Iterator[tuple[int, SetRemedy]]:
        for entry, change in changes:
            cost = weigh(entry, change)
            if cost is not None:
                yield cost, SetRemedy(entry, change.remedy)

    found = [*islice(weighed(_retakes(tune_set, finding)), 1), *weighed(_slurs(tune_set, finding))]
    found.sort(key=lambda item: item[0])
    return tuple(remedy for _, remedy in found[:at_most])


def mend(tune_set: TuneSet, remedy: SetRemedy) -> TuneSet:
    """The set after a remedy: the changed bowing stands wherever the set has the same tune so bowed."""
    changed = tune_set.entries[remedy.entry]
    bowing = remedy.remedy.edit(changed.tune, changed.bowing)
    for place, entry in enumerate(tune_set.entries):
        if entry.tune == changed.tune and entry.bowing == changed.bowing:
            tune_set = set_bowing(tune_set, place, bowing)
    return tune_set


def _strokes_beside(known: StrokesOf, tune_set: TuneSet, changed: TuneSet) -> StrokesOf:
    """The strokes of a changed set, with those that are known of the set before wherever its tunes are the same."""
    fresh = strokes_in(changed)

    def strokes_of(entry: int, after: Bow | None) -> Strokes:
        same = changed.entries[entry] is tune_set.entries[entry]
        return known(entry, after) if same else fresh(entry, after)

    return strokes_of


Key = tuple[str, int]


def _key(finding: SetFinding) -> Key:
    return finding.rule, finding.entry


def _graver(rule: SetRule) -> set[str]:
    """The rules that are as grave as one."""
    return {
        rule_id
        for rule_id, other in SET_RULES.items()
        if other.turned >= rule.turned and (other.severity is rule.severity or rule.severity is Severity.NOTE)
    }


def _told(report: SetReport, rules: Container[str] = SET_RULES) -> set[Key]:
    """What is told by some rules."""
    return {_key(finding) for finding in report.findings if finding.rule in rules}


def _slurs(tune_set: TuneSet, finding: SetFinding) -> Iterator[tuple[int, Change]]:
    """Every slur, made or parted, that could mend a finding, with the tune (index) that it is made in."""
    seam = finding.seams[0]
    before, after = tune_set.entries[seam.before.entry], tune_set.entries[seam.after.entry]
    last = sorted({visit.bar for visit in playing_order(before.tune)[-LAST_BARS:]})
    for change in changes_in(before.tune, before.bowing, last):
        yield seam.before.entry, change
    for change in changes_in(after.tune, after.bowing, _opening(after.tune)):
        yield seam.after.entry, change


def _retakes(tune_set: TuneSet, finding: SetFinding) -> Iterator[tuple[int, Change]]:
    """Fix the tune's own beginning, best on every pass, if a stroke begins there whatever is played before."""
    seam = finding.seams[0]
    entry = tune_set.entries[seam.after.entry]
    first = stroke_start(entry.tune, entry.bowing, seam.first_note)
    if not SET_RULES[finding.rule].turned or first.id != seam.first_note:
        return
    cost = COSTS.retake_over_rest if seam.over_rest else COSTS.retake
    values = {"note": words.note_of_bar(entry.tune, seam.first_note), "direction": words.direction(seam.alone)}
    for only_pass, label in (
        (None, tr("Take {note} {direction} every time", **values)),
        (1, tr("Take {note} {direction} the first time", **values)),
    ):
        edit = partial(fix_bow, note_id=seam.first_note, bow=seam.alone, only_pass=only_pass)
        yield seam.after.entry, Change(cost, Remedy(label, edit))


def _opening(tune: Tune) -> list[int]:
    """The bars (indexes) played before the first full bar: the pick-up, if there is one."""
    first = playing_order(tune)[0].bar
    return [first] if tune.bars[first].is_pickup else []
