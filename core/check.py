"""Check a bowing: findings and totals, all that the side list shows."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import cached_property

from core.accents import Accents, Met
from core.bowing import Bowing
from core.checks import emphasis, marks, reach, retakes, returns, rounds, slurs, strings
from core.checks.finding import Finding, Remedy
from core.checks.view import View
from core.reach import ORDINARY, Reach, ReachSettings
from core.severity import NOTHING_QUIET, Quiet, Severity, turned_down
from core.strings import STANDARD, Tuning
from core.strokes import Strokes
from core.tune import Tune
from core.values import dataclass

__all__ = ["RULES", "Finding", "Remedy", "Report", "Rule", "Severity", "Totals", "check"]


@dataclass(frozen=True, slots=True)
class Totals:
    """Counts of one bowing.

    Strokes, retakes and accents are counted as played once through in playing order, every pass for itself; slurs as
    written.

    Attributes:
        strokes: Strokes played.
        slurs: Written strokes that hold two or more notes, tied notes counted as one.
        retakes: Strokes in the direction of the stroke before them.
        driven, up, buried, unstruck: Accented places by how they are met (``core.accents``).
        consistency: Share (0 to 1) of the notes in recurring bars that are bowed as most of their recurrences are.
        comes_round: Played again from the start, every direction is the same as the first time.
    """

    strokes: int
    slurs: int
    retakes: int
    driven: int
    up: int
    buried: int
    unstruck: int
    consistency: float
    comes_round: bool


@dataclass(frozen=True)
class Report:
    """What a check finds, each part of it worked out when it is first asked for, and then kept.

    All of it follows from what is checked, and so reports are equal where that is.

    Attributes:
        view: What is checked.
        quiet: Rules to tell as notes or not at all.
    """

    view: View
    quiet: Quiet

    @property
    def strokes(self) -> Strokes:
        """Every direction."""
        return self.view.strokes

    @property
    def accents(self) -> Accents:
        """How each accented place is met."""
        return self.view.accents

    @property
    def reach(self) -> Reach:
        """The way of the bow: longest stroke, bow used, where it stands."""
        return self.view.reach

    def worked_out(self) -> Report:
        """This report, findings and totals at hand."""
        _ = self.findings, self.totals
        return self

    @cached_property
    def findings(self) -> tuple[Finding, ...]:
        """By first bar, then in the order of ``RULES``."""
        findings = [
            finding if told_as is finding.severity else replace(finding, severity=told_as)
            for rule_id, rule in RULES.items()
            if self.quiet.get(rule_id, Severity.FAULT)
            for finding in rule.function(self.view)
            if (told_as := turned_down(finding.severity, rule_id, self.quiet))
        ]
        findings.sort(key=lambda finding: _sort_key(self.view.tune, finding))
        return tuple(findings)

    @cached_property
    def totals(self) -> Totals:
        """Counts, of which nothing is turned down."""
        strokes, accents = self.strokes, self.accents
        return Totals(
            strokes=sum([sum(of_bar.starts) for of_bar in strokes.visits]),
            slurs=slurs.count(self.view),
            retakes=sum([sum(of_bar.retakes) for of_bar in strokes.visits]),
            driven=accents.count(Met.DRIVEN),
            up=accents.count(Met.UP),
            buried=accents.count(Met.BURIED),
            unstruck=accents.count(Met.UNSTRUCK),
            consistency=returns.consistency(self.view),
            comes_round=strokes.comes_round,
        )


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule.

    Attributes:
        function: Yields the findings; each carries the rule's id.
        title: A few words for a heading.
        why: In plain words why a teacher would want to know, and what that rests on. Bow rules have no numbers here:
            only developers know those.
    """

    function: Callable[[View], Iterable[Finding]]
    title: str
    why: str


RULES = {
    "mark-against-slur": Rule(
        marks.against_slur,
        "Mark against a slur",
        "All notes under one slur go one way (Gehrkens, Essentials in Conducting, 1919, on bowing): the "
        "slur or the mark must give way.",
    ),
    "redundant-mark": Rule(
        marks.redundant,
        "Mark that says nothing new",
        "The slur says the direction already, and a mark in the middle of it reads like a new stroke. "
        "Common practice, no source.",
    ),
    "tune-on-other-bow": Rule(
        rounds.tune,
        "Tune comes round on the other bow",
        "Dance tunes are played over and over: what was down the first time is up the second, and every accent with "
        "it. Common practice, no source.",
    ),
    "round-retake": Rule(
        rounds.retake,
        "Tune comes round by a retake",
        "It comes round as it began, because the bow is lifted: know that before you start again. "
        "Common practice, no source.",
    ),
    "part-on-other-bow": Rule(
        rounds.part,
        "Part comes round on the other bow",
        "Strokes alternate on through the repeat, and an odd number of them turns the part round: one slur more or "
        "less puts it right. Common practice, no source.",
    ),
    "ending-on-other-bow": Rule(
        rounds.ending,
        "Ending begins on the other bow",
        "The endings stand in one place of the tune, and the hand expects one bow there. Common practice, no source.",
    ),
    "phrase-on-other-bow": Rule(
        returns.other_bow,
        "Phrase comes again on the other bow",
        "The same notes are learned once where the bow does the same each time. Common practice, no source.",
    ),
    "phrase-slurred-differently": Rule(
        returns.other_slurs,
        "Phrase comes again slurred differently",
        "The same notes have other slurs here: a variation, or an oversight? Common practice, no source.",
    ),
    "like-on-other-bow": Rule(
        returns.like_on_other_bow,
        "Like phrase on the other bow",
        "What is built alike is easier to learn bowed alike; no more than a suggestion. Common practice, no source.",
    ),
    "like-slurred-differently": Rule(
        returns.like_other_slurs,
        "Like phrase slurred differently",
        "What is built alike is easier to learn slurred alike; no more than a suggestion. Common practice, no source.",
    ),
    "accent-up": Rule(
        emphasis.up,
        "Accent on an up-bow",
        "The strong beats (L. Mozart, Violinschule, 1756, XII §9) are taken down (the same, IV §3, from memory; "
        "Schroeder, Handbook of Violin Playing, about 1889). Backbeat: common practice, no source.",
    ),
    "accent-buried": Rule(
        emphasis.buried,
        "Accent inside a slur",
        "Of notes under one slur the first is louder and the rest fade (L. Mozart, Violinschule, 1756, XII §10): an "
        "accent inside is not heard as one.",
    ),
    "accent-unstruck": Rule(
        emphasis.unstruck,
        "Accent where nothing is struck",
        "The plan accents a place where the bow strikes nothing: the tune rests there or holds a note. "
        "Common practice, no source.",
    ),
    "phrase-plans": Rule(
        emphasis.phrase_plans,
        "Accents phrase by phrase",
        "Each phrase of four bars counts as accented on the beat or on the backbeat, whichever more down-bows meet. "
        "Common practice, no source.",
    ),
    "retake-on-some-passes": Rule(
        retakes.on_some_passes,
        "Retake on some passes only",
        "Inside a phrase the bow has to be lifted one time through and not another, which is hard to remember in a "
        "dance. Common practice, no source.",
    ),
    "retake": Rule(
        retakes.planned,
        "Retake",
        "The bow is lifted to go the same way again: told, never forbidden. Two down-bows in a row "
        "by retaking: Muffat, Florilegium Secundum (1698), preface.",
    ),
    "equal-notes-slurred": Rule(
        slurs.equal_pitches,
        "Slur over two equal notes",
        "Under a slur no bow parts two equal notes, and they sound as one long note. A hook parts "
        "them, and so does a cut: common practice, no source.",
    ),
    "long-stroke": Rule(
        slurs.long_strokes,
        "Long stroke",
        "More than eight notes, or a bar and a half, on one bow leave little bow for each. Common practice, no source.",
    ),
    "stroke-beyond-bow": Rule(
        reach.beyond_bow,
        "Stroke too long for the bow",
        "About 65 cm of hair (instrument handbooks, from memory) at about 5 cm/s, the slowest bow speed of ordinary "
        "playing (Askenfelt, JASA 80, 1986, 1007, from memory).",
    ),
    "bow-runs-out": Rule(
        reach.runs_out_anyhow,
        "Bow runs out",
        "Down-bows go from nut to point, up-bows from point to nut (Gehrkens, Essentials in Conducting, 1919, on "
        "bowing); bow speeds roughly 5 to 100 cm/s (Askenfelt, JASA 80, 1986, 1007, from memory).",
    ),
    "bow-drift": Rule(
        reach.drift,
        "Bow drifts to one end",
        "Saunders, Self-Instructing School for the Violin (1847), pp. 16–17: a single note needs as much bow as the "
        "three slurred before it, else the bow runs out. Told beyond that.",
    ),
    "slur-leaps-string": Rule(
        strings.slur_leaps,
        "Slur leaps over a string",
        "The bow touches neighbouring strings only without being lifted; common practice, no source.",
    ),
}
"""All rules by id, in the order in which findings of one bar are told."""

_RANK = {rule: rank for rank, rule in enumerate(RULES)}


def check(
    tune: Tune,
    bowing: Bowing,
    quiet: Quiet = NOTHING_QUIET,
    reach_settings: ReachSettings = ORDINARY,
    tuning: Tuning = STANDARD,
) -> Report:
    """Check a bowing by every rule, as far as the report is asked for.

    Args:
        tune: The tune.
        bowing: A bowing of it.
        quiet: Rules to tell as notes or not at all; totals do not depend on it.
        reach_settings: What is assumed of bow and tempo.
        tuning: How the fiddle is tuned.
    """
    return Report(View(tune, bowing, reach_settings, tuning), quiet)


def _sort_key(tune: Tune, finding: Finding) -> tuple[int, int, int, int]:
    first = tune.places[finding.notes[0]] if finding.notes else -1
    bar = tune.bar_of[finding.notes[0]] if finding.notes else -1
    return bar, _RANK[finding.rule], first, finding.pass_number or 0
