"""Our files, and single elements, against the MusicXML 4.0 schema (W3C, 2021)."""

import pytest
from hypothesis import HealthCheck, given, settings

from core.bowing import Articulation, Bow, Grace, Mark, Ornament
from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading import Reading
from core.reading.musicxml import read_musicxml
from core.tune import Jump, Pitch
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed
from tests.core.reading.scores import note, score
from tests.outside.schema import faults
from tests.property.strategies import AWKWARD, lessons

NOTES = "<notations>{}</notations>"

# Rows that the schema accepts, beside what our reader makes of them.
VALID = {
    "the reference's down-bow": NOTES.format(
        '<technical><down-bow placement="above" default-x="-1" default-y="5"/></technical>'
    ),
    "an up-bow": NOTES.format("<technical><up-bow/></technical>"),
    "both bows on one note": NOTES.format("<technical><up-bow/><down-bow/></technical>"),
    "a slur that never stops": NOTES.format('<slur type="start"/>'),
    "slur number 16": NOTES.format('<slur type="start" number="16"/><slur type="stop" number="16"/>'),
    "detached legato": NOTES.format("<articulations><detached-legato/></articulations>"),
    "string marks": NOTES.format(
        "<technical><open-string/><fingering>0</fingering><string>4</string><snap-pizzicato/></technical>"
    ),
    "a mordent and its accidental": NOTES.format(
        "<ornaments><mordent/><accidental-mark>sharp</accidental-mark></ornaments>"
    ),
}
# Rows that must be invalid. Where the second value is None our reader reads the score all the same.
INVALID = {
    "down-bow among the articulations": NOTES.format("<articulations><down-bow/></articulations>"),
    "down_bow with an underscore": NOTES.format("<technical><down_bow/></technical>"),
    "a bow mark with text": NOTES.format("<technical><up-bow>up</up-bow></technical>"),
    "a slur without a type": NOTES.format("<slur/>"),
    "slur number 17": NOTES.format('<slur type="start" number="17"/>'),
    "a slur that lets ring": NOTES.format('<slur type="let-ring"/>'),
    "placement in the middle": NOTES.format('<technical><up-bow placement="middle"/></technical>'),
    "tremolo 9": NOTES.format("<ornaments><tremolo>9</tremolo></ornaments>"),
    "string 0": NOTES.format("<technical><string>0</string></technical>"),
}
# Elements beside the notes: (xml, valid).
MEASURES = {
    "ending before repeat": (
        '<barline location="right"><bar-style>light-heavy</bar-style><ending number="1, 2" type="stop"/>'
        '<repeat direction="backward"/></barline>',
        True,
    ),
    "repeat before ending": (
        '<barline location="right"><repeat direction="backward"/><ending number="1" type="stop"/></barline>', False,
    ),
    "ending number A": ('<barline location="right"><ending number="A" type="stop"/></barline>', False),
    "the reference's appoggiatura": (
        '<note><grace slash="no" steal-time-following="33"/><pitch><step>D</step><octave>5</octave></pitch></note>',
        True,
    ),
    "a grace note with a duration": (
        "<note><grace/><pitch><step>D</step><octave>5</octave></pitch><duration>1</duration></note>", False,
    ),
    "more than all of the time stolen": (
        '<note><grace steal-time-previous="101"/><pitch><step>D</step><octave>5</octave></pitch></note>', False,
    ),
    "swing 2 to 1": (
        "<sound><swing><first>2</first><second>1</second><swing-type>eighth</swing-type></swing></sound>", True,
    ),
    "swing of quarters": (
        "<sound><swing><first>2</first><second>1</second><swing-type>quarter</swing-type></swing></sound>", False,
    ),
    "swing 0": ("<sound><swing><first>0</first><second>1</second></swing></sound>", False),
    "tempo below nothing": ('<sound tempo="-1"/>', False),
    "a chord symbol": ("<harmony><root><root-step>A</root-step></root><kind>minor-seventh</kind></harmony>", True),
    "a kind of chord that is not listed": (
        "<harmony><root><root-step>A</root-step></root><kind>min</kind></harmony>", False,
    ),
}  # fmt: skip


@pytest.mark.parametrize("inner", VALID.values(), ids=VALID)
def test_the_schema_and_the_reader_take_this(inner: str) -> None:
    text = score(note("A4", 4, inner))
    assert faults(text) == []
    assert len(read_musicxml(text.encode()).lessons[0].tune.sequence) == 1


@pytest.mark.parametrize("inner", INVALID.values(), ids=INVALID)
def test_the_schema_refuses_this_and_the_reader_gets_over_it(inner: str) -> None:
    text = score(note("A4", 4, inner))
    assert faults(text)
    lesson = read_musicxml(text.encode()).lessons[0]
    assert [str(pitch) for pitch in lesson.tune.sequence[0].pitches] == ["A4"]


@pytest.mark.parametrize(("xml", "valid"), MEASURES.values(), ids=MEASURES)
def test_elements_of_a_measure(xml: str, valid: bool) -> None:
    text = score(xml + note("A4", 4)) if "<barline" not in xml else score(note("A4", 4) + xml)
    assert (faults(text) == []) is valid
    assert len(read_musicxml(text.encode()).lessons[0].tune.sequence) == 1


def test_a_schema_fault_that_leaves_nothing_to_read_is_refused() -> None:
    text = score("").replace("<measure", "<measur").replace("</measure", "</measur")
    assert faults(text)
    with pytest.raises(UnreadableFileError, match="no part with measures"):
        read_musicxml(text.encode())


def test_valid_marks_mean_what_the_standard_says() -> None:
    def read(inner: str) -> Reading:
        return read_musicxml(score(note("A4", 4, inner)).encode())

    assert read(VALID["the reference's down-bow"]).lessons[0].bowings[0].marks["b0n1"] == Mark(Bow.DOWN)
    assert read(VALID["an up-bow"]).lessons[0].bowings[0].marks["b0n1"] == Mark(Bow.UP)
    both = read(VALID["both bows on one note"])
    assert both.lessons[0].bowings[0].marks["b0n1"] == Mark(Bow.UP)
    assert [problem.text for problem in both.problems] == [
        "A note has both a down-bow and an up-bow: the first one counts."
    ]
    signs = read(VALID["string marks"]).lessons[0].bowings[0].signs["b0n1"]
    assert signs.articulations == (Articulation.OPEN_STRING, Articulation.SNAP_PIZZICATO)
    assert signs.fingerings == ("0",)
    assert read(VALID["a mordent and its accidental"]).lessons[0].bowings[0].signs["b0n1"].ornaments == (
        Ornament.MORDENT,
    )


def test_the_reference_slur_joins_three_notes_to_the_first() -> None:
    first = note("F5", 0.5, NOTES.format('<slur number="1" placement="below" type="start"/>'))
    last = note("B5", 0.5, NOTES.format('<slur number="1" type="stop"/>'))
    text = score(first + note("G5", 0.5) + note("A5", 0.5) + last)
    assert faults(text) == []
    assert list(read_musicxml(text.encode()).lessons[0].bowings[0].joins) == ["b0n2", "b0n3", "b0n4"]


def test_the_reference_appoggiatura_is_a_grace_note_without_a_slash() -> None:
    text = score(MEASURES["the reference's appoggiatura"][0] + note("C5", 4))
    signs = read_musicxml(text.encode()).lessons[0].bowings[0].signs["b0n1"]
    assert signs.graces == (Grace((Pitch(5, "D"),), slashed=False),)


@pytest.mark.parametrize("lesson", AWKWARD, ids=range(len(AWKWARD)))
def test_awkward_lessons_are_written_validly(lesson: Lesson) -> None:
    assert faults(write_musicxml(lesson)) == []


@given(lessons())
@settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_any_lesson_is_written_validly(lesson: Lesson) -> None:
    assert faults(write_musicxml(lesson)) == []


@pytest.mark.parametrize("jump", Jump)
def test_jumps_are_written_as_sounds_that_the_standard_has(jump: Jump) -> None:
    tune, bowing = bowed(f"A8|!segno!B8!tocoda!|c8!{jump.value}!|!coda!d8!fine!|]")
    text = write_musicxml(Lesson(tune, (bowing,)))
    assert faults(text) == []
    assert ('dalsegno="segno"' in text) is jump.value.startswith("D.S.")
    assert ('dacapo="yes"' in text) is jump.value.startswith("D.C.")
    for sound in ('segno="segno"', 'tocoda="coda"', 'coda="coda"', 'fine="yes"'):
        assert f"<sound {sound}/>" in text
