"""Make a pack: find the lessons, make what is missing in worker processes, then the contents page and the zip.

It may be killed at any moment: what the manifest names is whole, and the next packing makes the rest.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import ExitStack
from dataclasses import field
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import TypeVar

from app.language import ENGLISH, spoken_language
from app.pack_folder import PackFolder
from app.pack_making import Looked, Made, Order, Refused, Settings, look, make
from app.pack_sources import Source, Sources
from app.pack_workers import Lost, Workers, usual_jobs
from core.pack.contents import Row, contents_page
from core.pack.kinds import WORDS, Kind, in_order, ready
from core.pack.manifest import LessonRecord
from core.pack.planning import PackPlan, Wanted, plan_pack
from core.shelf.paths import to_text
from core.translation import plural, tr
from core.values import dataclass

T = TypeVar("T")
R = TypeVar("R")

MOST_REMARKS = 20  # told of one file


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a packing is.

    Attributes:
        stage: What is done, such as "Reading", in the language of the reader.
        done, total: Of this stage.
        name: What was done last, or "".
    """

    stage: str
    done: int
    total: int
    name: str = ""

    @property
    def text(self) -> str:
        """In one line, such as "Packing 3 of 12 The Warm Stove"."""
        count = tr("{done} of {total}", done=self.done, total=self.total) if self.total else "…"
        return " ".join(filter(None, (self.stage, count, self.name)))


def repaired_text(count: int) -> str:
    """That things were repaired or left out on reading."""
    return plural(
        "1 thing repaired or left out on reading; the contents page tells.",
        "{n} things repaired or left out on reading; the contents page tells.",
        count,
    )


@dataclass(frozen=True, slots=True)
class PackProblem:
    """A file or a lesson that is not in the pack; ``str()`` is one line.

    Attributes:
        source: The file.
        text: The rest of the line: which lesson, and why.
    """

    source: Source
    text: str

    def __str__(self) -> str:
        return self.source.shown + self.text

    @property
    def brief(self) -> str:
        """The line without the folder, which is nobody's business who gets the pack."""
        return to_text(Path(self.source.path.name)) + self.text


@dataclass
class PackReport:
    """What came of a packing.

    Attributes:
        made, kept: Numbers of lessons made, and of those that were up to date.
        problems: The files and lessons that are not in the pack.
        notices: What else there is to tell, a line each.
        remarks: Number of things repaired or left out on reading.
        stopped: It was stopped before its end.
        contents, archive: The contents page and the zip; None where it was stopped before.
    """

    made: int = 0
    kept: int = 0
    problems: list[PackProblem] = field(default_factory=list)
    notices: list[str] = field(default_factory=list)
    remarks: int = 0
    stopped: bool = False
    contents: Path | None = None
    archive: Path | None = None


def make_pack(
    found: Sources,
    out: Path,
    kinds: Iterable[Kind] | None = None,
    jobs: int | None = None,
    watch: Callable[[Progress], None] = lambda _: None,
    stopped: Callable[[], bool] = lambda: False,
) -> PackReport:
    """Make a pack, or what is missing in it.

    Args:
        found: Files; each of their lessons is packed. Lessons packed before that are not among them go, unless some
            place could not be looked into.
        out: Folder of the pack: a new or empty one, or one that holds a pack.
        kinds: What is made of each lesson; all that can be made where None.
        jobs: Number of processes; as many as there are processors where None.
        watch: Told of the progress.
        stopped: Asked several times a second whether to stop.
    Raises:
        PackFolderError: the folder cannot be used.
        OSError: the folder cannot be written any more.
    """
    can = ready()
    asked = can if kinds is None else frozenset(kinds)
    settings = Settings(asked & can, _program(), spoken_language())
    with ExitStack() as stack:
        folder = stack.enter_context(PackFolder(out))
        workers = stack.enter_context(Workers(jobs or usual_jobs()))
        packing = _Packing(found, folder, settings, workers, watch, stopped)
        packing.run([tr(WORDS[kind]) for kind in in_order(asked - can)])
        return packing.report


class _Packing:
    """One run."""

    def __init__(
        self,
        found: Sources,
        folder: PackFolder,
        settings: Settings,
        workers: Workers,
        watch: Callable[[Progress], None],
        stopped: Callable[[], bool],
    ) -> None:
        self.report = PackReport()
        self._sources, self._is_all, self._folder, self._settings = found.sources, not found.problems, folder, settings
        self._workers, self._watch, self._stopped = workers, watch, stopped
        self._looked: list[Looked | None] = [None] * len(found.sources)

    def run(self, left_out: Sequence[str]) -> None:
        self._look()
        if not self.report.stopped:
            found = [
                (source.key, () if looked is None else looked.lessons)
                for source, looked in zip(self._sources, self._looked, strict=True)
            ]
            unread = {source.key for source, looked in zip(self._sources, self._looked, strict=True) if looked is None}
            plan = plan_pack(
                found, self._folder.manifest, self._folder.stands, lambda key: self._is_all and key not in unread
            )
            self.report.kept = len(plan.standing)
            if plan.unknown:
                names = ", ".join(record.name for record in plan.unknown)
                self.report.notices.append(
                    tr("Not read again, so left as packed before, off the contents page: {names}.", names=names)
                )
            missing = list(plan.missing)
            if missing or plan.outdated:
                self._folder.drop(plan.outdated)
            self._make(missing)
            if not self.report.stopped:
                self._finish(plan, left_out)
        self._folder.sweep()
        self.report.notices += self._folder.notices

    def _look(self) -> None:
        tasks = [(source, self._settings) for source in self._sources]
        places = {source.path: place for place, source in enumerate(self._sources)}
        wrong: dict[int, PackProblem] = {}
        for (source, _), outcome in self._done(tr("Reading"), look, tasks, lambda task: task[0].path.name):
            place = places[source.path]
            if isinstance(outcome, Looked):
                self._looked[place] = outcome
                self.report.remarks += len(outcome.remarks)
            else:
                wrong[place] = PackProblem(source, f": {_why(outcome)}")
        self.report.problems += [wrong[place] for place in sorted(wrong)]

    def _make(self, missing: Sequence[Wanted]) -> None:
        orders = [
            Order(self._sources[one.source], one.place, one.name, one.facts.fingerprint, self._settings,
                  self._folder.path)
            for one in missing
        ]  # fmt: skip
        by_name = {one.name: one for one in missing}
        for order, outcome in self._done(tr("Packing"), make, orders, lambda order: order.name):
            one = by_name[order.name]
            if isinstance(outcome, Made):
                self._folder.add(
                    LessonRecord(one.identity, one.name, order.fingerprint, outcome.files, outcome.remarks)
                )
                self.report.made += 1
                continue
            title = one.facts.title or tr("untitled")
            text = tr(
                ", tune {number}, “{title}”: {why}", "behind the name of a file",
                number=one.place + 1, title=title, why=_why(outcome),
            )  # fmt: skip
            self.report.problems.append(PackProblem(order.source, text))
            if isinstance(outcome, Refused) and outcome.ends_all:
                self.report.stopped = True
                return

    def _done(
        self, stage: str, work: Callable[[T], R], tasks: Sequence[T], name: Callable[[T], str]
    ) -> Iterator[tuple[T, R | Lost]]:
        """Do tasks, and tell how far they are."""
        self._watch(Progress(stage, 0, len(tasks)))
        for number, (task, outcome) in enumerate(self._workers.run(work, tasks, self._stopped), 1):
            yield task, outcome
            self._watch(Progress(stage, number, len(tasks), name(task)))
        self.report.stopped = self.report.stopped or self._stopped()

    def _finish(self, plan: PackPlan, left_out: Sequence[str]) -> None:
        """Write the contents page and the zip."""
        records = {record.identity: record for record in self._folder.manifest.lessons}
        rows = [
            Row(one.facts, records[one.identity], self._remarks(one.source))
            for one in plan.wanted
            if one.identity in records
        ]
        told = [*(problem.brief for problem in self.report.problems), *self._remarks_on_books()]
        title = self._folder.path.resolve().name or tr("Lesson pack")
        self.report.contents = self._folder.write_contents(contents_page(title, rows, told, left_out))
        files = sum(len(row.record.files) for row in rows) + 1

        def watch(done: int) -> bool:
            self._watch(Progress(tr("Zipping"), done, files))
            return self._stopped()

        self.report.archive = self._folder.write_archive([row.record for row in rows], watch)
        self.report.stopped = self.report.archive is None

    def _remarks(self, source: int) -> tuple[str, ...]:
        """What was said on reading, where the file holds one lesson only."""
        looked = self._looked[source]
        return _capped(looked.remarks) if looked is not None and len(looked.lessons) == 1 else ()

    def _remarks_on_books(self) -> Iterator[str]:
        for source, looked in zip(self._sources, self._looked, strict=True):
            if looked is not None and len(looked.lessons) != 1:
                yield from (f"{source.path.name}: {remark}" for remark in _capped(looked.remarks))


def _why(outcome: Refused | Lost) -> str:
    return outcome.text if isinstance(outcome, Refused) else outcome.why


def _capped(remarks: tuple[str, ...]) -> tuple[str, ...]:
    if len(remarks) <= MOST_REMARKS:
        return remarks
    return (*remarks[:MOST_REMARKS], plural("And 1 more.", "And {n} more.", len(remarks) - MOST_REMARKS))


def _program() -> str:
    """What else than the lesson its files come from: our version, and the language where it is not English."""
    try:
        program = version("bowbench")
    except PackageNotFoundError:  # run from a tree that was never installed
        program = ""
    return program if spoken_language() == ENGLISH else f"{program} {spoken_language()}"
