from dataclasses import replace
from fractions import Fraction

import pytest

from core.bowing import Grace
from core.engraving.skeleton import Span, accidentals, attributes, nest, spans, value
from core.tune import Key, Pitch, Tuplet
from tests.core.builders import bowed, tune_of

SHARP, NATURAL = '<accid accid="s"/>', '<accid accid="n"/>'


@pytest.mark.parametrize(
    ("length", "written"),
    [(Fraction(8), 'dur="breve"'), (Fraction(3, 2), 'dur="4" dots="1"'), (Fraction(1, 4), 'dur="16"')],
)
def test_note_values_as_mei_writes_them(length: Fraction, written: str) -> None:
    assert value(length) == written


def test_a_length_that_no_note_shows_is_refused() -> None:
    with pytest.raises(ValueError, match="5/4 quarter notes"):
        value(Fraction(5, 4))


def test_each_note_and_rest_has_its_attributes() -> None:
    assert attributes(tune_of("A2z6|")) == {
        "b0n1": 'xml:id="b0n1" dur="4"',
        "b0n2": 'xml:id="b0n2" dur="2" dots="1"',
    }


def test_what_a_bowing_cannot_change_is_worked_out_once() -> None:
    tune = tune_of("ABcd efga|")
    assert attributes(tune) is attributes(tune)
    assert spans(tune, 0) is spans(tune, 0)
    assert accidentals(tune, 0) is accidentals(tune, 0)


def test_a_tuplet_inside_a_beam_stands_inside_its_element() -> None:
    tune = tune_of("ABc d6|")
    third = Fraction(1, 3)
    notes = [
        replace(note, at=third * i, length=third, tuplet=Tuplet(3, 2, i == 0))
        for i, note in enumerate(tune.bars[0].notes[:3])
    ]
    tune = replace(tune, bars=(replace(tune.bars[0], notes=(*notes, *tune.bars[0].notes[3:])),))
    assert [(span.start, span.stop, span.closing) for span in spans(tune, 0)] == [
        (0, 3, "</beam>"), (0, 3, "</tuplet>"),
    ]  # fmt: skip


def test_graces_of_the_first_note_stand_before_its_beam() -> None:
    beam = Span(0, 2, "<beam>", "</beam>")
    assert "".join(nest((beam,), [("g", "a"), ("h", "b"), ("", "c")])) == "g<beam>ahb</beam>c"


class TestAccidentals:
    TUNE, _ = bowed("AAAA A4|")

    def in_key(self, *alters: int) -> list[str]:
        """The accidentals printed before A4s altered like this, in G major."""
        bar = self.TUNE.bars[0]
        notes = tuple(
            replace(note, pitches=(Pitch(4, "A", alter),)) for note, alter in zip(bar.notes, alters, strict=False)
        )
        tune = replace(self.TUNE, bars=(replace(bar, notes=notes, key=Key(1)),))
        return [printed.heads[0] for printed in accidentals(tune, 0)]

    def test_are_printed_once_and_taken_back(self) -> None:
        assert self.in_key(0, 1, 1, 0) == ["", SHARP, "", NATURAL]

    def test_of_a_grace_hold_for_the_note_after_it(self) -> None:
        graces = (("b0n2", (Grace((Pitch(4, "A", 1),)),)),)
        printed = accidentals(self.TUNE, 0, graces)
        assert printed[1].graces == ((SHARP,),)
        assert [note.heads[0] for note in printed[:3]] == ["", NATURAL, ""]
