"""What is kept of a tune, and the mark by which it is known again."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings

from core.reading import read_file
from core.reading.abc import read_abc
from core.shelf.facts import content_hash, facts_of
from core.tune import Credit, Tempo
from core.writing.musicxml import write_musicxml
from tests.core.builders import tune_of
from tests.core.shelf.conftest import abc
from tests.property.strategies import lessons


def facts(text):
    return facts_of(read_abc(text).lessons[0])


def test_facts_of_a_tune():
    found = facts("X:7\nT:Over the Sill\nT:The Low Gate\nC:Ada Quern\nR:Polka\nM:2/4\nL:1/8\nK:Ador\n"
                  "e|AB ce|A2 A:|\n|:e2 dB|A2 G:|\n")  # fmt: skip
    assert (found.number, found.title, found.other_titles) == (7, "Over the Sill", ("The Low Gate",))
    assert (found.dance, found.key, found.tonic, found.mode, found.meter) == ("polka", "A dorian", "A", "dorian", "2/4")
    assert (found.parts, found.bars) == (2, 4)
    assert found.credits == ("Ada Quern",)
    assert [(one.name, one.accents) for one in found.bowings] == [("As written", "on-beat")]


@pytest.mark.parametrize(
    ("notes", "parts"),
    [("A8|B8|", 1), ("A8:|B8:|", 2), ("AB|:A8:||:B8:|", 2), ("|:A8|1 B8:|2 c8||d8|", 2)],
)
def test_a_pick_up_before_the_repeat_is_no_part(notes, parts):
    assert facts(abc("Sill", notes)).parts == parts


@pytest.mark.parametrize(
    "change",
    [
        lambda tune: replace(tune, title="Another"),
        lambda tune: replace(tune, number=9, dance="jig"),
        lambda tune: replace(tune, credits=(Credit("composer", "Ada Quern"),)),
        lambda tune: replace(tune, tempo=Tempo(Fraction(1), Fraction(90))),
    ],
)
def test_the_mark_of_a_tune_does_not_depend_on_what_is_said_about_it(change):
    tune = tune_of("A2B2 c2d2|e8|]")
    assert content_hash(change(tune)) == content_hash(tune)


@pytest.mark.parametrize(
    "other",
    ["A2B2 c2d2|e8||", "A2B2 c2d2|e4 e4|]", "A2B2 c2d2|e4-e4|]", "A2B2 c2d2|E8|]", "A2B2 c2z2|e8|]", "|:A2B2 c2d2|e8:|",
     "A2B2 c2d2|[1e8|]", "A2B2 c2d2|{B}e8|]", "A2B2 c2d2|!fine!e8|]"],
)  # fmt: skip
def test_what_is_played_otherwise_has_another_mark(other):
    assert content_hash(tune_of(other)) != content_hash(tune_of("A2B2 c2d2|e8|]"))


def test_the_mark_stays_the_same_for_ever():
    """Catalogues hold it: whoever changes this must raise FACTS_VERSION and CONTENT_VERSION, and knows why."""
    tune = tune_of("A2B2 c2d2|e8|]")
    assert content_hash(tune) == content_hash(tune_of("A2B2 c2d2|e8|]"))
    assert len(content_hash(tune)) == 16


@settings(suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large], max_examples=10, deadline=None)
@given(lessons())
def test_a_lesson_keeps_the_mark_of_its_tune_through_its_file(lesson):
    (again,) = read_file(write_musicxml(lesson).encode()).lessons
    assert content_hash(again.tune) == content_hash(lesson.tune)
