"""The check and the search for remedies on printed tunes: a sample of three open collections, the same every time."""

from core.check import RULES, Severity, check
from core.reading.abc import read_abc
from core.remedies import TURNING, remedies
from tests.outside.abc_collections import FOLDERS, sources

CHECKED_EVERY, SEARCHED_EVERY = 25, 300


def test_findings_name_bars_and_notes_of_their_tune() -> None:
    for source in sources(*FOLDERS)[::CHECKED_EVERY]:
        for lesson in read_abc(source.text).lessons:
            for finding in check(lesson.tune, lesson.bowings[0]).findings:
                numbers = {bar.number for bar in lesson.tune.bars}
                assert finding.rule in RULES
                assert finding.bars, source.place
                assert set(finding.bars) <= numbers
                assert set(finding.notes) <= lesson.tune.places.keys()
                assert finding.text[0].isupper()
                assert finding.text.endswith(".")


def test_likenesses_are_told_sparingly() -> None:
    """A few at most: what is merely like another phrase is a suggestion."""
    for source in sources(*FOLDERS)[::CHECKED_EVERY]:
        for lesson in read_abc(source.text).lessons:
            findings = check(lesson.tune, lesson.bowings[0]).findings
            like = [finding for finding in findings if finding.rule.startswith("like-")]
            assert len(like) <= 4, source.place
            assert all(finding.severity is Severity.NOTE for finding in like)


def test_remedies_mend_printed_bowings() -> None:
    mended = 0
    for source in sources(*FOLDERS)[::SEARCHED_EVERY]:
        for lesson in read_abc(source.text).lessons:
            tune, bowing = lesson.tune, lesson.bowings[0]
            for finding in check(tune, bowing).findings:
                if finding.rule not in TURNING:
                    continue
                for remedy in remedies(tune, bowing, finding):
                    after = check(tune, remedy.edit(tune, bowing)).findings
                    notes = set(finding.notes)
                    assert not any(o.rule == finding.rule and notes & set(o.notes) for o in after), source.place
                    mended += 1
    assert mended > 30
