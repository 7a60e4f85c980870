"""Check a set of tunes: what there is to say about the bow between one playing and the next."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from core.checks import words
from core.severity import Severity
from core.translation import ordinal, plural, sentence, tr, translatable
from core.tune import Tune
from core.tune_set import Seam, StrokesOf, TuneSet, Way, seams
from core.tune_set import comes_round as set_comes_round
from core.values import dataclass

TIMES = translatable({
    1: "once", 2: "twice", 3: "three times", 4: "four times", 5: "five times", 6: "six times",
})  # fmt: skip

SEAMS = translatable({
    Way.AGAIN: "{before} ends {last} and begins {first} the {ordinal} time: {how}",
    Way.ROUND: "back to the start: {before} ends {last}, {after} begins {first}: {how}",
    Way.NEXT: "{before} ends {last}, {after} begins {first}: {how}",
})  # fmt: skip


@dataclass(frozen=True, slots=True)
class SetRule:
    """One rule about the seams of a set.

    Attributes:
        way: The seams that it is about.
        turned: It tells of tunes turned round; else of retakes.
        severity: How much it matters.
        title: A few words for a heading.
        why: In plain words why a teacher would want to know, and what that rests on.
    """

    way: Way
    turned: bool
    severity: Severity
    title: str
    why: str

    def tells_of(self, seam: Seam) -> bool:
        """Whether a seam is one to tell."""
        return seam.way is self.way and (seam.is_turned if self.turned else seam.is_retake)


SET_RULES = {
    "next-tune-on-other-bow": SetRule(
        Way.NEXT, True, Severity.WARNING,
        "Next tune begins on the other bow",
        "Strokes alternate on into the next tune, and it is turned round against how it was learned alone, every "
        "accent with it. Common practice, no source.",
    ),
    "next-tune-retake": SetRule(
        Way.NEXT, False, Severity.NOTE,
        "Next tune begins with a retake",
        "The bow is lifted between two tunes, just where the fiddle leads the others: know that before. "
        "Common practice, no source.",
    ),
    "next-time-on-other-bow": SetRule(
        Way.AGAIN, True, Severity.WARNING,
        "Tune comes round on the other bow",
        "Played again, the tune is turned round, and every accent with it. Common practice, no source.",
    ),
    "next-time-retake": SetRule(
        Way.AGAIN, False, Severity.NOTE,
        "Tune comes round by a retake",
        "The tune comes round because the bow is lifted: know that before you start again. "
        "Common practice, no source.",
    ),
    "set-on-other-bow": SetRule(
        Way.ROUND, True, Severity.NOTE,
        "Set comes round on the other bow",
        "Played again from its first tune the set begins turned round; most sets end instead. Common "
        "practice, no source.",
    ),
    "set-round-retake": SetRule(
        Way.ROUND, False, Severity.NOTE,
        "Set comes round by a retake",
        "Played again from its first tune the set begins with a lifted bow; most sets end instead. "
        "Common practice, no source.",
    ),
}  # fmt: skip
"""All rules by id, in the order in which findings about one seam are told."""


@dataclass(frozen=True, slots=True)
class SetFinding:
    """One thing to say about a set.

    Attributes:
        rule: Key in ``SET_RULES``.
        severity: How much it matters.
        seams: Where it happens: one seam, or those into one tune that is played several times.
        bars: Printed number of the bar in which the tune begins that comes after.
        notes: Id of the note that it begins with.
        text: One sentence.
    """

    rule: str
    severity: Severity
    seams: tuple[Seam, ...]
    bars: tuple[int, ...]
    notes: tuple[str, ...]
    text: str

    @property
    def entry(self) -> int:
        """The tune (index in the set) that comes after."""
        return self.seams[0].after.entry


@dataclass(frozen=True)
class SetReport:
    """What a check of a set found.

    Attributes:
        seams: In the order played, the way back to the start last.
        findings: In the order of the seams.
        comes_round: Played again from the start, every direction is the same as the first time.
    """

    seams: tuple[Seam, ...]
    findings: tuple[SetFinding, ...]
    comes_round: bool


def check_set(tune_set: TuneSet, strokes_of: StrokesOf | None = None) -> SetReport:
    """Check how the tunes of a set follow each other; ``strokes_of`` as for ``core.tune_set.seams``."""
    found = seams(tune_set, strokes_of)
    return SetReport(found, tuple(_findings(tune_set, found)), set_comes_round(found))


def _findings(tune_set: TuneSet, found: Iterable[Seam]) -> Iterator[SetFinding]:
    for _, group in groupby(found, lambda seam: (seam.way is Way.ROUND, seam.after.entry)):
        for rule_id, told in _told(tuple(group)).items():
            rule, tune = SET_RULES[rule_id], tune_set.entries[told[0].after.entry].tune
            number = tune.bars[tune.bar_of[told[0].first_note]].number
            text = (_TURNED if rule.turned else _RETAKEN)[rule.way](tune_set, told)
            yield SetFinding(rule_id, rule.severity, told, (number,), (told[0].first_note,), sentence(text))


def _told(seams_into: tuple[Seam, ...]) -> dict[str, tuple[Seam, ...]]:
    """What is told of the seams into one tune, by rule.

    Where it is turned round from the tune before it, what follows from that between its times is told with it.
    """
    told = {
        rule_id: there
        for rule_id, rule in SET_RULES.items()
        if (there := tuple(seam for seam in seams_into if rule.tells_of(seam)))
    }
    if "next-tune-on-other-bow" in told:
        told["next-tune-on-other-bow"] += told.pop("next-time-on-other-bow", ())
    return told


# ---- words


def name(tune_set: TuneSet, entry: int) -> str:
    """Name a tune of a set by its title, with its place where another has the same.

    Returns:
        Such as "“The Warm Stove”" or "tune 2", where it has none.
    """
    titles = [other.tune.title for other in tune_set.entries]
    if not titles[entry]:
        return tr("tune {number}", number=entry + 1)
    if titles.count(titles[entry]) > 1:
        return tr("“{title}” (tune {number})", title=titles[entry], number=entry + 1)
    return tr("“{title}”", title=titles[entry])


def times_text(times: int) -> str:
    """How often, such as "twice"."""
    return tr(TIMES[times]) if times in TIMES else plural("once", "{n} times", times)


def seam_text(tune_set: TuneSet, seam: Seam) -> str:
    """A seam in one sentence: the bow before, the bow after, and what that is for the player."""
    return sentence(tr(SEAMS[seam.way], **_values(tune_set, seam)))


def _how(tune_set: TuneSet, seam: Seam) -> str:
    """What a seam is for the player."""
    if seam.alternates:
        return tr("the bow goes on by itself")
    parts = []
    if seam.is_retake:
        parts.append(tr("by a retake over a rest") if seam.over_rest else tr("by a retake"))
    if seam.is_turned:
        parts.append(tr("turned round {how_far} (alone it begins {alone})", **_turn(tune_set, seam)))
        if seam.over_rest and not seam.is_retake:
            parts.append(tr("a rest leaves room for a retake"))
    return tr(", ", "between parts of a sentence").join(parts)


def _values(tune_set: TuneSet, seam: Seam) -> dict[str, str]:
    """What the texts on seams are filled with."""
    return {
        "before": name(tune_set, seam.before.entry),
        "after": name(tune_set, seam.after.entry),
        "last": words.direction(seam.last),
        "first": words.direction(seam.first),
        "ordinal": ordinal(seam.after.time),
        "how": _how(tune_set, seam),
    }


def _turn(tune_set: TuneSet, seam: Seam) -> dict[str, str]:
    """What the texts on tunes turned round are filled with."""
    return {
        "before": name(tune_set, seam.before.entry),
        "tune": name(tune_set, seam.after.entry),
        "first": words.direction(seam.first),
        "how_far": _how_far(tune_set, seam),
        "alone": words.direction(seam.alone),
    }


def _tune_after(tune_set: TuneSet, seam: Seam) -> Tune:
    return tune_set.entries[seam.after.entry].tune


def _how_far(tune_set: TuneSet, seam: Seam) -> str:
    if seam.right_from is None:
        return tr("to its end", "how far a tune is turned round")
    return tr(
        "up to {note}",
        "how far a tune is turned round",
        note=words.note_of_bar(_tune_after(tune_set, seam), seam.right_from),
    )


def _next_turned(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    seam = told[0]
    values, times = _turn(tune_set, seam), tune_set.entries[seam.after.entry].times
    if times == 1:
        return tr(
            "{tune} begins {first} after {before}, and is turned round {how_far} (alone it begins {alone})", **values
        )
    if len(told) == times:
        return tr(
            "{tune} begins {first} after {before}, every time, and is turned round {how_far} (alone it begins {alone})",
            **values,
        )
    return tr(
        "{tune} begins {first} after {before}, {times}, and is turned round {how_far} (alone it begins {alone})",
        times=_when(told), **values,
    )  # fmt: skip


def _next_retaken(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    (seam,) = told
    return tr(
        "{tune} begins with a retake over a rest: {before} ends on {bow} and it begins with another"
        if seam.over_rest
        else "{tune} begins with a retake: {before} ends on {bow} and it begins with another",
        bow=words.a_bow(seam.last), **_turn(tune_set, seam),
    )  # fmt: skip


def _again_turned(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    return tr(
        "{tune} begins {first} {times}, and is turned round {how_far} (alone it begins {alone})",
        times=_when(told), **_turn(tune_set, told[0]),
    )  # fmt: skip


def _again_retaken(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    seam = told[0]
    return tr(
        "{tune} takes a retake over a rest to begin {times}: it ends on {bow} and begins with another"
        if seam.over_rest
        else "{tune} takes a retake to begin {times}: it ends on {bow} and begins with another",
        tune=name(tune_set, seam.after.entry), times=_when(told), bow=words.a_bow(seam.last),
    )  # fmt: skip


def _round_turned(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    (seam,) = told
    return tr(
        "played again from the start, the set begins {direction} (the first time {other})",
        direction=words.direction(seam.first), other=words.direction(seam.alone),
    )  # fmt: skip


def _round_retaken(tune_set: TuneSet, told: tuple[Seam, ...]) -> str:
    (seam,) = told
    return tr(
        "played again from the start, the set takes a retake over a rest: it ends on {bow} and begins with another"
        if seam.over_rest
        else "played again from the start, the set takes a retake: it ends on {bow} and begins with another",
        bow=words.a_bow(seam.last),
    )


def _when(told: tuple[Seam, ...]) -> str:
    return words.times([seam.after.time for seam in told])


_TURNED = {Way.NEXT: _next_turned, Way.AGAIN: _again_turned, Way.ROUND: _round_turned}
_RETAKEN = {Way.NEXT: _next_retaken, Way.AGAIN: _again_retaken, Way.ROUND: _round_retaken}
