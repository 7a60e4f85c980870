from dataclasses import replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict
from lxml import etree

from core.accent_plan import AccentPlan, PlanKind
from core.bowing import Articulation, Bow, Bowing, Grace, Join, Mark, Ornament, Signs
from core.lesson import Lesson
from core.reading import Reading
from core.reading.musicxml import read_musicxml
from core.tune import BarLine, ChordSymbol, Credit, Key, Meter, Pitch, Tempo, Tune, Words
from core.writing.musicxml import write_musicxml
from tests.core.builders import bowed


def typed(text: str, meter: str = "4/4") -> Lesson:
    tune, bowing = bowed(text, meter)
    return Lesson(tune, (bowing,))


def with_first_bar(lesson: Lesson, **fields: object) -> Lesson:
    first, *rest = lesson.tune.bars
    return replace(lesson, tune=replace(lesson.tune, bars=(replace(first, **fields), *rest)))  # type: ignore[arg-type]


def tree(lesson: Lesson) -> etree._Element:
    return etree.fromstring(write_musicxml(lesson).encode())


def xml(lesson: Lesson, path: str) -> list[str]:
    """Each element at a path, on one line, without indentation."""
    return [
        "".join(line.strip() for line in etree.tostring(element, encoding="unicode", with_tail=False).splitlines())
        for element in tree(lesson).iterfind(path)
    ]


class TestDocument:
    def test_it_begins_as_musicxml_files_do(self) -> None:
        lines = write_musicxml(typed("A8")).splitlines()
        assert lines[0] == '<?xml version="1.0" encoding="UTF-8"?>'
        assert lines[1].startswith('<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN"')
        assert lines[2] == '<score-partwise version="4.0">'

    def test_a_part_for_each_bowing_with_ids_of_its_own(self) -> None:
        lesson = typed("A4 B4")
        lesson = replace(lesson, bowings=(lesson.bowings[0], replace(lesson.bowings[0], name="Backbeat")))
        assert [name.text for name in tree(lesson).iterfind("part-list/score-part/part-name")] == ["Typed", "Backbeat"]
        assert [note.get("id") for note in tree(lesson).iter("note")] == [
            "v1.b0n1", "v1.b0n2", "v2.b0n1", "v2.b0n2",
        ]  # fmt: skip

    def test_what_belongs_to_the_tune_stands_in_the_first_part_only(self) -> None:
        lesson = with_first_bar(
            typed("!segno!A8!D.C.!"),
            part="A",
            chords=(ChordSymbol(Fraction(0), "G"),),
            words=(Words(Fraction(0), "x"),),
        )
        lesson = replace(lesson, tune=replace(lesson.tune, tempo=Tempo(Fraction(1), Fraction(90))))
        lesson = replace(lesson, bowings=(lesson.bowings[0], replace(lesson.bowings[0], name="Backbeat")))
        first, second = tree(lesson).iterfind("part")
        assert len(list(first.iter("direction"))) == 5
        assert len(list(first.iter("harmony"))) == 1
        assert not list(second.iter("direction", "harmony"))

    def test_credits(self) -> None:
        lesson = typed("A8")
        credits = (
            Credit("origin", "Quillandale"),
            Credit("composer", "Ida Brook"),
            Credit("source", "Grey book"),
            Credit("source", "Green book"),
            Credit("rights", "Free to all"),
        )
        lesson = replace(lesson, tune=replace(lesson.tune, title="Otter", credits=credits))
        assert xml(lesson, "work/work-title") == ["<work-title>Otter</work-title>"]
        assert xml(lesson, "identification/creator") == ['<creator type="composer">Ida Brook</creator>']
        assert xml(lesson, "identification/rights") == ["<rights>Free to all</rights>"]
        assert xml(lesson, "identification/source") == ["<source>Grey book</source>"]
        fields = {field.get("name"): field.text for field in tree(lesson).iterfind("identification/miscellaneous/*")}
        assert fields["bowbench:credit.origin"] == "Quillandale"
        assert fields["bowbench:credit.source"] == "Green book"

    def test_characters_that_xml_cannot_hold_are_left_out(self) -> None:
        lesson = typed("A8")
        lesson = replace(lesson, tune=replace(lesson.tune, title="Ot\0t\x1ber \ud800&"))
        assert tree(lesson).findtext("work/work-title") == "Otter &"


class TestNotes:
    def test_a_note_in_the_order_that_the_standard_asks_for(self) -> None:
        lesson = typed("A2-|A2 B4 c2|]", "2/4")
        bowing = replace(
            lesson.bowings[0],
            signs=immutabledict({"b0n1": Signs((), (Ornament.ROLL,), (Articulation.FERMATA,), ("2",))}),
        )
        assert xml(replace(lesson, bowings=(bowing,)), "part/measure[1]/note") == [
            '<note id="v1.b0n1"><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration>'
            '<tie type="start"/><voice>1</voice><type>quarter</type><notations><tied type="start"/>'
            "<ornaments><other-ornament>roll</other-ornament></ornaments>"
            "<technical><down-bow/><fingering>2</fingering></technical><fermata/></notations></note>"
        ]

    def test_grace_notes_stand_before_their_note_and_have_no_duration(self) -> None:
        lesson = typed("A8")
        graces = Grace((Pitch(5, "C", 1),), slashed=True), Grace((Pitch(4, "G"), Pitch(4, "B")), Fraction(1, 4))
        bowing = replace(lesson.bowings[0], signs=immutabledict({"b0n1": Signs(graces)}))
        notes = xml(replace(lesson, bowings=(bowing,)), "part/measure/note")
        assert len(notes) == 4
        assert notes[0] == (
            '<note><grace slash="yes"/><pitch><step>C</step><alter>1</alter><octave>5</octave></pitch>'
            '<voice>1</voice><type>eighth</type><accidental>sharp</accidental><beam number="1">begin</beam></note>'
        )
        assert notes[2].startswith('<note><grace slash="no"/><chord/><pitch>')
        assert "<duration>" not in "".join(notes[:3])

    def test_accidentals_are_those_that_the_reader_needs(self) -> None:
        lesson = typed("f2 f2|f2 f2|]")
        sharp = Pitch(5, "F", 1)
        bars = tuple(
            replace(bar, notes=tuple(replace(note, pitches=(sharp,)) for note in bar.notes)) for bar in lesson.tune.bars
        )
        lesson = replace(lesson, tune=replace(lesson.tune, bars=bars))
        assert [note.findtext("accidental") for note in tree(lesson).iter("note")] == ["sharp", None, "sharp", None]
        in_g = tuple(replace(bar, key=Key(1)) for bar in bars)
        lesson = replace(lesson, tune=replace(lesson.tune, bars=in_g))
        assert [note.findtext("accidental") for note in tree(lesson).iter("note")] == [None] * 4

    def test_beams(self) -> None:
        lesson = typed("A3/2B/ c d z e A2|]")
        beams = [
            [(beam.get("number"), beam.text) for beam in note.iterfind("beam")] for note in tree(lesson).iter("note")
        ]
        assert beams == [
            [("1", "begin")],
            [("1", "end"), ("2", "backward hook")],
            [("1", "begin")],
            [("1", "end")],
            [],
            [],
            [],
        ]

    def test_double_stops_carry_signs_once_and_ties_on_each_pitch(self) -> None:
        lesson = typed("A4-A4|]")
        pair = Pitch(4, "A"), Pitch(5, "E")
        notes = tuple(replace(note, pitches=pair) for note in lesson.tune.bars[0].notes)
        lesson = with_first_bar(lesson, notes=notes)
        root = tree(lesson)
        assert [tie.get("type") for tie in root.iter("tied")] == ["start", "start", "stop", "stop"]
        assert len(list(root.iter("down-bow"))) == 1
        assert [note.get("id") for note in root.iter("note")] == ["v1.b0n1", None, "v1.b0n2", None]


class TestStrokes:
    def test_one_slur_for_each_stroke_of_more_than_one_attack(self) -> None:
        lesson = typed("(A2 B2 c2) d2-|d2 (e2 f2) g2|]")
        slurs = [
            (note.get("id"), slur.get("type"), slur.get("number"))
            for note in tree(lesson).iter("note")
            for slur in note.iterfind("notations/slur")
        ]
        assert slurs == [
            ("v1.b0n1", "start", "1"),
            ("v1.b0n3", "stop", "1"),
            ("v1.b1n2", "start", "1"),
            ("v1.b1n3", "stop", "1"),
        ]

    def test_a_hook_is_a_slur_over_two_dots(self) -> None:
        lesson = typed("A2=B2 c2 d2|]")
        notes = list(tree(lesson).iter("note"))
        assert [len(note.findall("notations/articulations/staccato")) for note in notes] == [1, 1, 0, 0]
        assert [slur.get("type") for slur in tree(lesson).iter("slur")] == ["start", "stop"]

    def test_directions_stand_where_all_passes_agree(self) -> None:
        lesson = typed("|:A2 uB2 c4:|d8|]")
        marks = [
            (note.get("id"), mark.tag)
            for note in tree(lesson).iter("note")
            for mark in note.iterfind("notations/technical/*")
        ]
        # D U D, then U U D: only what is fixed, and what follows from it, is alike on both passes
        assert marks == [("v1.b0n2", "up-bow"), ("v1.b0n3", "down-bow"), ("v1.b1n1", "up-bow")]


class TestMeasures:
    def test_pick_ups_and_cut_bars_print_no_number(self) -> None:
        lesson = typed("A2|B6:|c2|d8|]")
        shown = [(measure.get("number"), measure.get("implicit")) for measure in tree(lesson).iter("measure")]
        assert shown[0] == ("0", "yes")
        assert shown[1] == ("1", None)
        assert all(implicit == ("yes" if "X" in number or number == "0" else None) for number, implicit in shown)

    def test_bar_lines_in_the_order_that_the_standard_asks_for(self) -> None:
        lesson = typed("|:A8|[1,2B8|c8:|[3d8||e8|]")
        assert xml(lesson, "part/measure/barline") == [
            '<barline location="left"><bar-style>heavy-light</bar-style><repeat direction="forward"/></barline>',
            '<barline location="left"><ending number="1, 2" type="start"/></barline>',
            '<barline location="right"><bar-style>light-heavy</bar-style><ending number="1, 2" type="stop"/>'
            '<repeat direction="backward"/></barline>',
            '<barline location="left"><ending number="3" type="start"/></barline>',
            '<barline location="right"><bar-style>light-light</bar-style><ending number="3" type="discontinue"/>'
            "</barline>",
            '<barline location="right"><bar-style>light-heavy</bar-style></barline>',
        ]

    def test_a_section_played_more_than_twice(self) -> None:
        assert '<repeat direction="backward" times="3"/>' in xml(typed("|:A8:|3"), "part/measure/barline")[1]

    @pytest.mark.parametrize(
        ("meter", "expected"),
        [
            (Meter((4,), 4, "common"), '<time symbol="common"><beats>4</beats><beat-type>4</beat-type></time>'),
            (Meter((2, 3, 2), 8), "<time><beats>2+3+2</beats><beat-type>8</beat-type></time>"),
            (Meter(()), "<time><senza-misura/></time>"),
        ],
    )
    def test_metres(self, meter: Meter, expected: str) -> None:
        assert xml(with_first_bar(typed("A8"), meter=meter), "part/measure/attributes/time") == [expected]

    @pytest.mark.parametrize(
        ("key", "expected"),
        [
            (Key(1, "dorian"), "<key><fifths>1</fifths><mode>dorian</mode></key>"),
            (
                Key(1, "dorian", (("B", -1),)),
                "<key><key-step>F</key-step><key-alter>1</key-alter><key-step>B</key-step><key-alter>-1</key-alter></key>",
            ),
            (Key(1, "major", (("F", 0),)), "<key><key-step>F</key-step><key-alter>0</key-alter></key>"),
        ],
    )
    def test_keys(self, key: Key, expected: str) -> None:
        assert xml(with_first_bar(typed("A8"), key=key), "part/measure/attributes/key") == [expected]

    def test_tempo_as_printed_and_in_quarters(self) -> None:
        lesson = typed("A6", "6/8")
        lesson = replace(lesson, tune=replace(lesson.tune, tempo=Tempo(Fraction(3, 2), Fraction(112), "Lively")))
        assert xml(lesson, "part/measure/direction") == [
            '<direction placement="above"><direction-type><words>Lively</words></direction-type><direction-type>'
            "<metronome><beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>112</per-minute></metronome>"
            '</direction-type><sound tempo="168"/></direction>'
        ]

    def test_a_beat_that_no_single_note_shows_is_tied(self) -> None:
        lesson = typed("A8")
        lesson = replace(lesson, tune=replace(lesson.tune, tempo=Tempo(Fraction(5, 2), Fraction(200, 3))))
        assert xml(lesson, "part/measure/direction/direction-type/metronome") == [
            "<metronome><beat-unit>half</beat-unit><beat-unit-tied><beat-unit>eighth</beat-unit></beat-unit-tied>"
            "<per-minute>200/3</per-minute></metronome>"
        ]

    def test_chords_between_notes_have_offsets(self) -> None:
        lesson = with_first_bar(typed("A8"), chords=(ChordSymbol(Fraction(0), "G"), ChordSymbol(Fraction(2), "D")))
        assert [element.findtext("offset") for element in tree(lesson).iter("harmony")] == [None, "2"]


# ---- files of ours that another program changed


def lesson_to_change() -> Lesson:
    tune, bowing = bowed("A2 uB2 c2 d2|e2 f2 g2 a2|]")
    bowing = replace(bowing, name="Mine", accents=AccentPlan(PlanKind.BACKBEAT))
    return Lesson(replace(tune, dance="reel", part_order=("A",)), (bowing,))


def changed(*changes: tuple[str, str]) -> Reading:
    text = write_musicxml(lesson_to_change())
    for old, new in changes:
        assert old in text
        text = text.replace(old, new, 1)
    return read_musicxml(text.encode())


def directions(bowing: Bowing) -> dict[str, str]:
    return {note_id: mark.bow.value for note_id, mark in bowing.marks.items()}


class TestChangedElsewhere:
    def test_untouched_it_is_equal(self) -> None:
        reading = changed()
        assert reading.lessons == (lesson_to_change(),)
        assert reading.problems == ()
        assert reading.is_lesson_file

    def test_all_fields_lost_it_is_a_score_with_its_bow_marks(self) -> None:
        text = write_musicxml(lesson_to_change())
        start, stop = text.index("<miscellaneous>"), text.index("</miscellaneous>") + len("</miscellaneous>")
        reading = read_musicxml((text[:start] + text[stop:]).encode())
        assert not reading.is_lesson_file
        assert reading.lessons[0].tune.bars == lesson_to_change().tune.bars
        assert len(reading.lessons[0].bowings[0].marks) == 8

    def test_the_marks_lost_they_are_found_again_as_far_as_they_matter(self) -> None:
        field = '<miscellaneous-field name="bowbench:P1.marks">b0n2=up</miscellaneous-field>'
        reading = changed((field, ""))
        assert reading.lessons == (replace(lesson_to_change(), bowings=(
            replace(lesson_to_change().bowings[0], marks=immutabledict()),)),)  # fmt: skip

    def test_a_turned_bow_mark_becomes_fixed_and_is_told(self) -> None:
        reading = changed(("<down-bow/>", "<up-bow/>"))  # on the first note: up, and up again is fixed already
        assert directions(reading.lessons[0].bowings[0]) == {"b0n1": "up", "b0n2": "up"}
        (problem,) = reading.problems
        assert problem.line is not None
        assert problem.text == (
            "“Mine”: the up-bow of note 1 in bar 1 does not follow from the strokes before it; it is taken as fixed."
        )

    def test_a_fixed_mark_that_is_gone_is_let_go(self) -> None:
        reading = changed(("<up-bow/>", ""))
        assert directions(reading.lessons[0].bowings[0]) == {}
        assert [problem.text for problem in reading.problems] == [
            "“Mine”: the fixed bow mark of note 2 in bar 1 is gone from the notes."
        ]

    def test_fixed_marks_outlive_a_program_that_knows_no_bow_marks(self) -> None:
        text = write_musicxml(lesson_to_change()).replace("<down-bow/>", "").replace("<up-bow/>", "")
        reading = read_musicxml(text.encode())
        assert reading.lessons == (lesson_to_change(),)
        assert [problem.text for problem in reading.problems] == [
            "“Mine”: its notes have lost all bow marks; those that were fixed are kept."
        ]

    def test_a_hook_drawn_elsewhere_is_a_hook(self) -> None:
        slurred = '<slur type="{}"/><articulations><staccato/></articulations><technical>'
        reading = changed(
            ("<technical>\n            <down-bow/>", slurred.format("start") + "<down-bow/>"),
            ("<technical>\n            <up-bow/>", slurred.format("stop") + "<up-bow/>"),
        )
        assert reading.lessons[0].bowings[0].joins == {"b0n2": Join.HOOK}

    def test_a_slur_drawn_elsewhere_joins_and_the_marks_inside_are_left_out(self) -> None:
        reading = changed(
            ("<technical>\n            <down-bow/>", '<slur type="start"/><technical>\n            <down-bow/>'),
            ("<up-bow/>\n          </technical>", '<up-bow/></technical><slur type="stop"/>'),
        )
        bowing = reading.lessons[0].bowings[0]
        assert bowing.joins == {"b0n2": Join.SLUR}
        assert bowing.marks["b0n2"] == Mark(Bow.UP)  # fixed inside the slur: for the check to tell

    def test_lost_ids_are_given_anew(self) -> None:
        reading = changed(*((f' id="v1.b{bar}n{note}"', "") for bar in (0, 1) for note in (1, 2, 3, 4)))
        assert reading.lessons == (lesson_to_change(),)

    def test_an_id_given_twice_is_given_once(self) -> None:
        reading = changed(('id="v1.b0n2"', 'id="v1.b0n1"'))
        ids = [note.id for note in reading.lessons[0].tune.sequence]
        assert ids[0] == "b0n1"
        assert len(set(ids)) == 8

    def test_a_note_put_in_gets_an_id_that_nobody_has(self) -> None:
        new = "<note><pitch><step>G</step><octave>4</octave></pitch><duration>1</duration><voice>1</voice></note>"
        reading = changed(('<note id="v1.b0n2">', new + '<note id="v1.b0n2">'))
        ids = [note.id for note in reading.lessons[0].tune.sequence]
        assert ids == ["b0n1", "b0n5", "b0n2", "b0n3", "b0n4", "b1n1", "b1n2", "b1n3", "b1n4"]
        assert reading.lessons[0].bowings[0].marks["b0n2"] == Mark(Bow.UP)

    def test_a_newer_file_is_read_but_not_saved_in_place(self) -> None:
        reading = changed(('name="bowbench:format">1<', 'name="bowbench:format">2<'))
        assert reading.lessons == (lesson_to_change(),)
        assert not reading.is_lesson_file
        assert len(reading.problems) == 1

    def test_fields_of_others_are_written_back(self) -> None:
        lesson = replace(lesson_to_change(), fields=immutabledict({"mood": "wet", "bowbench:weather": "fine"}))
        assert read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,)


def test_a_repeat_whose_bar_line_is_final_is_told_apart() -> None:
    lesson = typed("|:A8:|")
    lesson = with_first_bar(lesson, line=BarLine.FINAL)
    assert read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,)


def test_a_tune_of_rests_keeps_all_its_bowings() -> None:
    lesson = typed("z8")
    lesson = replace(lesson, bowings=(lesson.bowings[0], replace(lesson.bowings[0], name="Backbeat")))
    assert read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,)


def test_a_bar_without_notes_stays_one() -> None:
    lesson = typed("A8|B8|]")
    bars = lesson.tune.bars
    lesson = Lesson(Tune("Typed", (bars[0], replace(bars[1], notes=()))), (Bowing("Typed"),))
    assert read_musicxml(write_musicxml(lesson).encode()).lessons == (lesson,)
