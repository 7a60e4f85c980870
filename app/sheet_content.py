"""What stands on a sheet, in order and in words, before anything has a size or a place."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import TypeAlias

from app.bow_words import reach_sentences, tuning_words
from app.severity_signs import WORDS
from app.totals_view import totals_sentence
from core.accent_plan import plan_name
from core.bowing import Bowing
from core.check import Report
from core.engraving.bow_signs import MarkDensity
from core.exercise import pose_exercise
from core.lesson import AS_WRITTEN, Lesson
from core.lesson_check import check_lesson
from core.set_check import seam_text, times_text
from core.sheet_plan import CAUTION, SheetKind, SheetPlan, TextBlock
from core.translation import plural, tr, translatable
from core.tune import Credit, Tune
from core.tune_set import Entry, Seam, TuneSet, Way, seams
from core.values import dataclass

# Credits at the head of a tune, right, and at its end, small; {text} is the text as written.
HEAD_CREDITS = translatable({"composer": "{text}", "lyricist": "Words: {text}", "arranger": "arr. {text}"}, "credit")
END_CREDITS = translatable({
    "origin": "Origin: {text}", "area": "Area: {text}", "source": "Source: {text}", "book": "Book: {text}",
    "transcriber": "Transcribed by {text}", "rights": "{text}",
}, "credit")  # fmt: skip
BETWEEN_CREDITS = "  ·  "
NOTHING_FOUND = translatable("The check finds nothing to tell.")


@dataclass(frozen=True, slots=True)
class Opening:
    """Head of a tune.

    Attributes:
        title: Large, or of the size of a heading where it is ``small``.
        others: Further titles.
        left, right: Beside each other under the title.
    """

    title: str
    others: tuple[str, ...] = ()
    left: str = ""
    right: tuple[str, ...] = ()
    small: bool = False


@dataclass(frozen=True, slots=True)
class Prose:
    """Text.

    Attributes:
        heading: One line, or "".
        paragraphs: An empty one is a gap.
        quiet: Smaller than text of the teacher's own.
        italic: Slanted.
        closes: It ends what stands before it, and is never parted from the last line of that.
        bowing: Name of the bowing that it is about, or "".
    """

    heading: str
    paragraphs: tuple[str, ...]
    quiet: bool = False
    italic: bool = False
    closes: bool = False
    bowing: str = ""


@dataclass(frozen=True, slots=True)
class Music:
    """A tune as one bowing has it.

    Attributes:
        name: Its heading, or "".
        note: A sentence under the heading, or "".
        tune, bowing: What is engraved.
        answer: What directions and accents come from.
        marks: Which strokes carry a bow sign.
        strip: How accents are met stands under each line.
        shown: Ids of the notes whose signs are shown; None for all.
    """

    name: str
    note: str
    tune: Tune
    bowing: Bowing
    answer: Bowing
    marks: MarkDensity
    strip: bool = False
    shown: frozenset[str] | None = None


@dataclass(frozen=True, slots=True)
class Joint:
    """How the bow comes from one playing to the next, in words."""

    seam: Seam
    text: str


Item: TypeAlias = Opening | Prose | Music | Joint


@dataclass(frozen=True, slots=True)
class Chapter:
    """What belongs to one tune.

    Attributes:
        title: For the outline and the head of later pages.
        items: In order.
        begins_page: It stands at the head of a page.
        together: Its opening and its music stand on one page, where one has room for them.
        level: In the outline.
    """

    title: str
    items: tuple[Item, ...]
    begins_page: bool = True
    together: bool = False
    level: int = 0


Printed: TypeAlias = Sequence[Lesson] | TuneSet
"""What can be printed."""


@dataclass(frozen=True, slots=True)
class Content:
    """All that stands on a sheet.

    Attributes:
        chapters: At least one, in order.
        title: Title of the sheet, for its file.
        author: Composers and arrangers, or "".
    """

    chapters: tuple[Chapter, ...]
    title: str
    author: str


def content_of(given: Printed, plan: SheetPlan, go_on: Callable[[], None] = lambda: None) -> Content:
    """Say what stands on a sheet. Touches nothing of Qt, so that it can be done in a thread.

    Args:
        given: Lessons, at least one, or a set.
        plan: What goes on the sheet; a set that is not asked for as one is printed as lessons.
        go_on: Called now and then; an error that it raises ends the work and is passed on.
    Raises:
        ValueError: nothing is given.
        RefusedEditError: a drill has no place in a tune.
    """
    return Content(_chapters(given, plan, go_on), _title(given, plan), _author(given))


def _chapters(given: Printed, plan: SheetPlan, go_on: Callable[[], None]) -> tuple[Chapter, ...]:
    if plan.kind is SheetKind.SET:
        tune_set = given if isinstance(given, TuneSet) else _as_set(given, plan)
        if not tune_set.entries:
            raise ValueError("a sheet needs at least one tune")
        return tuple(_set_chapters(tune_set, plan))
    lessons = (
        [Lesson(entry.tune, (entry.bowing,)) for entry in given.entries] if isinstance(given, TuneSet) else list(given)
    )
    if not lessons:
        raise ValueError("a sheet needs at least one lesson")
    return tuple(_lesson_chapters(lessons, plan, go_on))


def _title(given: Printed, plan: SheetPlan) -> str:
    tunes = _tunes(given)
    if plan.kind is SheetKind.SET:
        return _set_title(tunes)
    title = _named(tunes[0])
    if len(tunes) == 1:
        return title
    return plural("{title} and 1 more", "{title} and {n} more", len(tunes) - 1, title=title)


def _named(tune: Tune) -> str:
    """The title of a tune, or that it has none."""
    return tune.title or tr("Untitled")


def _author(given: Printed) -> str:
    authors = [
        credit.text for tune in _tunes(given) for credit in tune.credits if credit.kind in ("composer", "arranger")
    ]
    return "; ".join(dict.fromkeys(authors))


def _tunes(given: Printed) -> list[Tune]:
    return [one.tune for one in (given.entries if isinstance(given, TuneSet) else given)]


# ---- lessons


def _lesson_chapters(lessons: Sequence[Lesson], plan: SheetPlan, go_on: Callable[[], None]) -> Iterator[Chapter]:
    keys: list[Chapter] = []
    for number, lesson in enumerate(lessons):
        tune = lesson.tune
        body: list[Item] = [_opening(tune, plan)]
        if number == 0:
            body += _block(plan.before)
        if plan.kind is SheetKind.EXERCISE:
            music, key = _exercises(lesson, plan, go_on)
        else:
            music, key = _bowings(lesson, plan, go_on), ()
        body += music
        if number == len(lessons) - 1:
            body += _block(plan.after)
        body += _end(tune, plan)
        yield Chapter(_named(tune), tuple(body))
        if key:
            title = tr("Key: {title}", "of an exercise", title=_named(tune))
            keys.append(Chapter(title, (Opening(title), *key)))
    yield from keys


def _bowings(lesson: Lesson, plan: SheetPlan, go_on: Callable[[], None]) -> Iterator[Item]:
    for bowing in plan.chosen(lesson.bowings):
        go_on()
        name = _heading(bowing, lesson.bowings)
        yield _music(name, lesson.tune, bowing, plan)
        if plan.totals or plan.findings:
            report = check_lesson(lesson, bowing)
            if plan.totals:
                totals = tuple(_totals(lesson, report))
                yield Prose(tr("Totals"), totals, quiet=True, closes=True, bowing=name)
            if plan.findings:
                told, is_short = _findings(report), not report.findings
                yield Prose(tr("What the check tells"), told, quiet=True, closes=is_short, bowing=name)


def _exercises(lesson: Lesson, plan: SheetPlan, go_on: Callable[[], None]) -> tuple[tuple[Item, ...], tuple[Item, ...]]:
    """What is asked, and the key."""
    bowings = plan.chosen(lesson.bowings)
    asked, key = [], []
    for bowing in bowings[:1] if plan.drill else bowings:
        posed = pose_exercise(lesson.tune, bowing, plan.from_bar, plan.drill, go_on)
        music = _music(_heading(posed.answer, lesson.bowings), lesson.tune, posed.answer, plan)
        asked.append(replace(music, note=posed.task, bowing=posed.asked, shown=posed.shown))
        key.append(music)
    return tuple(asked), tuple(key) if plan.key else ()


def _music(name: str, tune: Tune, bowing: Bowing, plan: SheetPlan, note: str = "") -> Music:
    return Music(name, note, tune, bowing, bowing, plan.marks, plan.strip)


def _heading(bowing: Bowing, others: Sequence[Bowing] = ()) -> str:
    """The name of a bowing; "" for the one that every tune book has, where there is no other to tell it from."""
    return "" if bowing.name == AS_WRITTEN and len(others) < 2 else bowing.name


def _totals(lesson: Lesson, report: Report) -> Iterator[str]:
    yield tr(
        "Accents aimed at: {plan}. {totals}",
        plan=plan_name(report.view.bowing.accents), totals=totals_sentence(report.totals, report.reach),
    )  # fmt: skip
    yield tr(
        "{reach} Strings: {strings}. Played once through, with all repeats.",
        reach=reach_sentences(lesson.tune, report.strokes, report.reach), strings=tuning_words(lesson.tuning),
    )  # fmt: skip


def _findings(report: Report) -> tuple[str, ...]:
    told = [
        tr("{severity}: {sentence}", severity=tr(WORDS[finding.severity], "severity"), sentence=finding.text)
        for finding in report.findings
    ]
    return tuple(told or [tr(NOTHING_FOUND)])


# ---- a set


def _as_set(lessons: Iterable[Lesson], plan: SheetPlan) -> TuneSet:
    return TuneSet(tuple(Entry(lesson.tune, plan.chosen(lesson.bowings)[0]) for lesson in lessons))


def _set_title(tunes: Sequence[Tune]) -> str:
    return " / ".join(_named(tune) for tune in tunes)


def _set_chapters(tune_set: TuneSet, plan: SheetPlan) -> Iterator[Chapter]:
    entries = tune_set.entries
    joints: dict[tuple[Way, int], list[Item]] = {}
    for seam in seams(tune_set):
        at = 0 if seam.way is Way.ROUND else seam.after.entry
        joints.setdefault((seam.way, at), []).append(Joint(seam, seam_text(tune_set, seam)))
    alone = len(entries) == 1  # the set's title is its tune's
    if not alone:
        title = _set_title([entry.tune for entry in entries])
        yield Chapter(title, (Opening(title), *_block(plan.before)))
    for number, entry in enumerate(entries):
        head: list[Item] = [replace(_opening(entry.tune, plan), small=not alone)]
        if alone:
            head += _block(plan.before)
        note = "" if entry.times == 1 else tr("Played {times}.", times=times_text(entry.times))
        body: list[Item] = [
            *joints.get((Way.NEXT, number), ()),
            *head,
            _music(_heading(entry.bowing), entry.tune, entry.bowing, plan, note),
            *joints.get((Way.AGAIN, number), ()),
        ]
        if number == len(entries) - 1:
            body += joints.get((Way.ROUND, 0), [])
            body += _block(plan.after)
        body += _end(entry.tune, plan, caution=plan.caution and number == len(entries) - 1)
        yield Chapter(_named(entry.tune), tuple(body), begins_page=alone, together=True, level=int(not alone))


# ---- parts of both


def _opening(tune: Tune, plan: SheetPlan) -> Opening:
    right = _credits(tune.credits, HEAD_CREDITS) if plan.credits else ()
    return Opening(_named(tune), tune.other_titles, tune.dance[:1].upper() + tune.dance[1:], right)


def _end(tune: Tune, plan: SheetPlan, caution: bool | None = None) -> Iterator[Item]:
    if plan.caution if caution is None else caution:
        yield Prose("", (tr(CAUTION),), quiet=True, italic=True, closes=True)
    lines = _credits(tune.credits, END_CREDITS) if plan.credits else ()
    if lines:
        yield Prose("", (BETWEEN_CREDITS.join(lines),), quiet=True, closes=True)


def _block(block: TextBlock) -> Iterator[Item]:
    if block:
        yield Prose(block.heading.strip(), block.paragraphs)


def _credits(credits: Sequence[Credit], forms: dict[str, str]) -> tuple[str, ...]:
    return tuple(tr(forms[credit.kind], "credit", text=credit.text) for credit in credits if credit.kind in forms)
