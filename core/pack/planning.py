"""What is to be made in a pack, what stands, and what goes."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from core.pack.facts import Facts
from core.pack.manifest import FileRecord, LessonRecord, Manifest
from core.pack.names import Identity, name_lessons
from core.values import dataclass


@dataclass(frozen=True, slots=True)
class Wanted:
    """A lesson that belongs in the pack.

    Attributes:
        source: Place of its file among the sources.
        place: Its place in the file, from 0.
        identity: By what it is known again.
        name: Of its folder and files.
        facts: What there is to say of it.
    """

    source: int
    place: int
    identity: Identity
    name: str
    facts: Facts


@dataclass(frozen=True, slots=True)
class PackPlan:
    """What a packing has to do.

    Attributes:
        wanted: All lessons of the pack, in order.
        standing: Records of those that are up to date.
        outdated: Records of what stands there now and has to go: lessons that changed, or are wanted no more.
        unknown: Records of what stays although it is not known whether it is wanted.
    """

    wanted: tuple[Wanted, ...]
    standing: dict[Identity, LessonRecord]
    outdated: tuple[LessonRecord, ...]
    unknown: tuple[LessonRecord, ...] = ()

    @property
    def missing(self) -> Iterator[Wanted]:
        """Lessons to be made, in order."""
        return (wanted for wanted in self.wanted if wanted.identity not in self.standing)


def plan_pack(
    sources: Sequence[tuple[str, Sequence[Facts]]],
    manifest: Manifest,
    stands: Callable[[FileRecord], bool],
    may_go: Callable[[str], bool] = lambda source: True,
) -> PackPlan:
    """Compare what is wanted with what was made.

    Args:
        sources: For each file what stands for it, and the facts of its lessons.
        manifest: What was made before.
        stands: Whether a file is there as it was made.
        may_go: Whether lessons of a file that are not among those wanted may go; not where it could not be read.
    """
    found = [
        (source, place, facts.identity(key), facts)
        for source, (key, lessons) in enumerate(sources)
        for place, facts in enumerate(lessons)
    ]
    before = {record.identity: record for record in manifest.lessons}
    known = [row[2] for row in found]
    unlisted = before.keys() - set(known)
    unknown = tuple(r for r in manifest.lessons if r.identity in unlisted and not may_go(r.identity.source))
    names = name_lessons(
        known, {identity: record.name for identity, record in before.items()}, [record.name for record in unknown]
    )
    wanted = tuple(Wanted(source, place, one, names[one], facts) for source, place, one, facts in found)
    standing = {
        one.identity: record
        for one in wanted
        if (record := before.get(one.identity)) is not None
        and (record.name, record.fingerprint) == (one.name, one.facts.fingerprint)
        and all(stands(file) for file in record.files)
    }
    stay = {*standing, *(record.identity for record in unknown)}
    outdated = tuple(record for record in manifest.lessons if record.identity not in stay)
    return PackPlan(wanted, standing, outdated, unknown)
