"""What is made, what stands, what goes."""

from dataclasses import replace

from core.pack.facts import facts_of
from core.pack.kinds import Kind
from core.pack.manifest import FileRecord, LessonRecord, Manifest
from core.pack.planning import plan_pack
from core.reading.abc import read_abc

BOOK = "X:1\nT:Reel\nK:G\nG4|\n\nX:2\nT:Jig\nK:D\nA4|\n\nX:3\nT:Reel\nK:G\nB4|\n"
FACTS = facts_of(read_abc(BOOK).lessons, frozenset({Kind.ABC}), "1")


NOTHING = Manifest()


def planned(facts, manifest=NOTHING, stands=lambda file: True):
    return plan_pack([("book", facts)], manifest, stands)


def made(facts):
    """The manifest after all of it was made."""
    return Manifest(
        tuple(
            LessonRecord(
                one.identity, one.name, one.facts.fingerprint, (FileRecord(f"{one.name}/{one.name}.abc", 1, "x"),)
            )
            for one in planned(facts).wanted
        )
    )


def test_at_first_all_is_missing():
    assert [(one.place, one.name) for one in planned(FACTS).missing] == [(0, "Reel"), (1, "Jig"), (2, "Reel 2")]


def test_afterwards_nothing_is():
    plan = planned(FACTS, made(FACTS))
    assert not list(plan.missing)
    assert not plan.outdated
    assert len(plan.standing) == 3


def test_what_changed_is_made_again_under_its_name():
    changed = (FACTS[0], replace(FACTS[1], fingerprint="other"), FACTS[2])
    plan = planned(changed, made(FACTS))
    assert [one.name for one in plan.missing] == ["Jig"]
    assert [record.name for record in plan.outdated] == ["Jig"]


def test_a_lesson_with_a_file_that_is_gone_is_made_again():
    plan = planned(FACTS, made(FACTS), lambda file: not file.path.startswith("Jig/"))
    assert [one.name for one in plan.missing] == ["Jig"]


def test_what_is_wanted_no_more_goes():
    plan = planned(FACTS[:2], made(FACTS))
    assert [record.name for record in plan.outdated] == ["Reel 2"]
    assert not list(plan.missing)


def test_what_could_not_be_read_stays_and_keeps_its_names():
    before = made(FACTS)
    plan = plan_pack([("book", ()), ("other", FACTS[:1])], before, lambda file: True, lambda source: source != "book")
    assert (plan.outdated, plan.unknown) == ((), before.lessons)
    assert [one.name for one in plan.missing] == ["Reel 3"]  # "Reel" and "Reel 2" are in use


def test_a_tune_put_in_front_of_a_book_makes_no_other_anew():
    moved = facts_of(read_abc("X:9\nT:Air\nK:G\nd4|\n\n" + BOOK).lessons, frozenset({Kind.ABC}), "1")
    assert [one.name for one in planned(moved, made(FACTS)).missing] == ["Air"]


def test_another_version_makes_all_anew():
    later = facts_of(read_abc(BOOK).lessons, frozenset({Kind.ABC}), "2")
    assert len(list(planned(later, made(FACTS)).missing)) == 3
