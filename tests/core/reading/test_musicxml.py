import time
from fractions import Fraction

import pytest

from core.bowing import Articulation, Bow, Bowing, Grace, Join, Mark, Ornament, Signs
from core.errors import UnreadableFileError
from core.lesson import Lesson
from core.reading import Reading, measure_reader
from core.reading.musicxml import read_musicxml
from core.tune import (
    Bar,
    BarLine,
    ChordSymbol,
    Credit,
    Jump,
    Key,
    Meter,
    Note,
    Pitch,
    Tempo,
    Tune,
    Tuplet,
    Words,
    note_value,
)
from tests.core.reading.scores import HEAD, grace, note, part, score, scores, slur


def read(text: str) -> Reading:
    return read_musicxml(text.encode())


def lesson(*measures: str, header: str = "") -> Lesson:
    reading = read(score(*measures, header=header))
    assert len(reading.lessons) == 1
    return reading.lessons[0]


def tune(*measures: str, header: str = "") -> Tune:
    return lesson(*measures, header=header).tune


def bowing(*measures: str) -> Bowing:
    return lesson(*measures).bowings[0]


def said(*measures: str) -> list[str]:
    return [problem.text for problem in read(score(*measures)).problems]


def sounding(of: Tune) -> list[str]:
    """``A4:1/2`` for each note, ``z:1`` for a rest, ``-`` before a held note."""
    return [
        ("-" if note.held else "") + ("+".join(map(str, note.pitches)) or "z") + f":{note.length}"
        for note in of.sequence
    ]


def notations(inner: str) -> str:
    return f"<notations>{inner}</notations>"


def technical(inner: str) -> str:
    return notations(f"<technical>{inner}</technical>")


def articulations(inner: str) -> str:
    return notations(f"<articulations>{inner}</articulations>")


def barline(inner: str, location: str = "right") -> str:
    return f'<barline location="{location}">{inner}</barline>'


def direction(inner: str, sound: str = "", placement: str = "above") -> str:
    return (
        f'<direction placement="{placement}"><direction-type>{inner}</direction-type>'
        f"{f'<sound {sound}/>' if sound else ''}</direction>"
    )


def attributes(inner: str) -> str:
    return f"<attributes><divisions>24</divisions>{inner}</attributes>"


WHOLE = note("A4", 4)


class TestDocuments:
    def test_what_is_no_score_is_refused_with_its_name_and_line(self) -> None:
        with pytest.raises(UnreadableFileError, match="line 2: The document is a “opus”, not a MusicXML score"):
            read('<?xml version="1.0"?>\n<opus/>')

    def test_broken_xml_is_refused_with_its_line(self) -> None:
        with pytest.raises(UnreadableFileError, match=r"line 3: The file is no complete XML document \(.*tag mismatch"):
            read("<score-partwise>\n<part-list>\n</part></score-partwise>")

    def test_a_score_without_measures_is_refused(self) -> None:
        with pytest.raises(UnreadableFileError, match="The score has no part with measures in it"):
            read(score())

    @pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "iso-8859-1"])
    def test_encodings(self, encoding: str) -> None:
        text = score(WHOLE, header="<work><work-title>Nørre gård</work-title></work>")
        declared = {"utf-8-sig": "utf-8"}.get(encoding, encoding)
        data = text.replace('encoding="UTF-8"', f'encoding="{declared}"').encode(encoding)
        assert read_musicxml(data).lessons[0].tune.title == "Nørre gård"

    def test_a_line_before_the_xml_declaration_does_not_matter(self) -> None:
        assert read("\n\n" + score(WHOLE)).lessons

    def test_timewise_scores_are_read_like_partwise_ones(self) -> None:
        first, second = note("A4", 4), note("E4", 4)
        partwise = scores(part(first, first), part(second, second, part_id="P2"), names=("One", "Two"))
        measures = "".join(
            f'<measure number="{n}"><part id="P1">{HEAD if n == 1 else ""}{first}</part>'
            f'<part id="P2">{HEAD if n == 1 else ""}{second}</part></measure>'
            for n in (1, 2)
        )
        names = partwise[partwise.index("<part-list>") : partwise.index("</part-list>")]
        timewise = f'<score-timewise version="3.1">{names}</part-list>{measures}</score-timewise>'
        assert read(timewise).lessons == read(partwise).lessons

    def test_problems_come_in_file_order_with_lines_and_are_counted(self) -> None:
        lyric = "<lyric><text>la</text></lyric>"
        text = score(note("A4", 2, lyric) + "\n" + note("z", 1, technical("<up-bow/>")) + note("A4", 1, lyric))
        assert list(map(str, read(text).problems)) == [
            "line 2: Left out, since lessons have no place for it: lyrics (2 times, first here).",
            "line 3: A bow mark on a rest was left out.",
        ]


class TestHeader:
    def test_titles(self) -> None:
        header = "<work><work-title> The\n Otter </work-title></work><movement-title>In the Reeds</movement-title>"
        found = tune(WHOLE, header=header)
        assert (found.title, found.other_titles) == ("The Otter", ("In the Reeds",))

    def test_one_title_given_twice_is_one(self) -> None:
        header = "<work><work-title>Otter</work-title></work><movement-title>Otter</movement-title>"
        assert tune(WHOLE, header=header).other_titles == ()

    def test_a_title_that_is_only_printed(self) -> None:
        credit = "<credit><credit-type>title</credit-type><credit-words>Otter</credit-words></credit>"
        assert tune(WHOLE, header=credit).title == "Otter"

    def test_credits(self) -> None:
        header = (
            '<identification><creator type="composer">Ida Brook</creator><creator>Someone</creator>'
            "<rights>Free to all</rights><source>Grey book</source></identification>"
        )
        assert tune(WHOLE, header=header).credits == (
            Credit("composer", "Ida Brook"),
            Credit("creator", "Someone"),
            Credit("rights", "Free to all"),
            Credit("source", "Grey book"),
        )

    def test_fields_of_others_are_kept(self) -> None:
        header = (
            "<identification><miscellaneous>"
            '<miscellaneous-field name="mood">wet</miscellaneous-field>'
            "</miscellaneous></identification>"
        )
        assert lesson(WHOLE, header=header).fields == {"mood": "wet"}

    def test_a_single_part_gives_the_bowing_as_written(self) -> None:
        assert [bowing.name for bowing in lesson(WHOLE).bowings] == ["As written"]


class TestParts:
    def test_parts_with_equal_notes_are_bowings_of_one_tune(self) -> None:
        first = part(note("A4", 2, technical("<up-bow/>")) + note("B4", 2))
        second = part(note("A4", 2, slur("start")) + note("B4", 2, slur("stop")), part_id="P2")
        (found,) = read(scores(first, second, names=("Plain", "Plain"))).lessons
        assert [bowing.name for bowing in found.bowings] == ["Plain", "Plain 2"]
        assert found.bowings[0].marks == {"b0n1": Mark(Bow.UP)}
        assert found.bowings[1].joins == {"b0n2": Join.SLUR}

    def test_parts_that_differ_are_further_lessons(self) -> None:
        header = "<work><work-title>Otter</work-title></work>"
        two = scores(part(note("A4", 4)), part(note("E4", 4), part_id="P2"), names=("High", "Low"), header=header)
        found = read(two).lessons
        assert [(one.tune.number, one.tune.title) for one in found] == [(1, "Otter, High"), (2, "Otter, Low")]

    def test_parts_without_notes_are_left_out(self) -> None:
        reading = read(scores(part(note("z", 4)), part(note("E4", 4), part_id="P2"), names=("Rest", "Low")))
        assert [sounding(one.tune) for one in reading.lessons] == [["E4:4"]]
        assert [problem.text for problem in reading.problems] == ["Part “Rest” has no pitched notes: it was left out."]

    def test_a_score_of_rests_is_read(self) -> None:
        assert sounding(tune(note("z", 4))) == ["z:4"]

    def test_percussion_is_left_out(self) -> None:
        drum = note("A4", 4).replace("<pitch><step>A</step>", "<unpitched><display-step>A</display-step>")
        drum = drum.replace("<octave>4</octave></pitch>", "<display-octave>4</display-octave></unpitched>")
        reading = read(scores(part(drum), part(WHOLE, part_id="P2"), names=("Drum", "Fiddle")))
        assert len(reading.lessons) == 1
        assert "Part “Drum” has no pitched notes: it was left out." in [problem.text for problem in reading.problems]

    def test_what_is_printed_over_the_top_part_holds_for_all(self) -> None:
        chord = "<harmony><root><root-step>D</root-step></root><kind>minor</kind></harmony>"
        top = part(direction("<segno/>", 'segno="s"') + chord + note("A4", 4), note("A4", 4) + direction(
            "<words>D.S.</words>", 'dalsegno="s"'))  # fmt: skip
        low = part(note("E4", 4), note("E4", 4), part_id="P2")
        for found in read(scores(top, low, names=("Top", "Low"))).lessons:
            assert found.tune.bars[0].segno
            assert found.tune.bars[0].chords == (ChordSymbol(Fraction(0), "Dm"),)
            assert found.tune.bars[1].jump is Jump.DAL_SEGNO

    def test_a_part_that_the_list_does_not_name_is_read(self) -> None:
        assert read(score(WHOLE).replace('score-part id="P1"', 'score-part id="P9"')).lessons

    def test_transposing_parts_keep_their_written_notes(self) -> None:
        head = attributes("<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>")
        assert sounding(tune(head + WHOLE)) == ["A4:4"]
        assert said(head + WHOLE) == ["A transposing part: its notes are kept as written, not as they sound."]


class TestNotes:
    def test_pitches_and_lengths(self) -> None:
        measure = note("C#5", 0.5) + note("Bb3", 1.5) + note("F##4", 1) + note("Ebb4", 1)
        assert sounding(tune(measure)) == ["C#5:1/2", "Bb3:3/2", "F##4:1", "Ebb4:1"]

    def test_divisions_may_change(self) -> None:
        measure = HEAD + note("A4", 1) + "<attributes><divisions>2</divisions></attributes>"
        measure += "<note><pitch><step>B</step><octave>4</octave></pitch><duration>3</duration></note>"
        assert sounding(tune(measure)) == ["A4:1", "B4:3/2"]

    def test_places_and_ids(self) -> None:
        found = tune(note("A4", 1) + note("B4", 3), WHOLE)
        assert [(one.id, one.at) for one in found.sequence] == [("b0n1", 0), ("b0n2", 1), ("b1n1", 0)]

    def test_double_stops_are_low_to_high(self) -> None:
        measure = note("A4", 4) + note("D4", 4, before="<chord/>")
        assert sounding(tune(measure)) == ["D4+A4:4"]

    def test_a_chord_goes_on_over_elements_between(self) -> None:
        measure = note("A4", 4) + direction("<dynamics><f/></dynamics>") + note("D4", 4, before="<chord/>")
        assert sounding(tune(measure)) == ["D4+A4:4"]

    def test_quarter_tones_move_to_the_nearest_semitone(self) -> None:
        measure = note("C#4", 4).replace("<alter>1</alter>", "<alter>1.5</alter>")
        assert sounding(tune(measure)) == ["C##4:4"]
        assert said(measure)[0].startswith("A pitch between the semitones")

    def test_a_length_without_a_note_value_becomes_tied_notes(self) -> None:
        assert sounding(tune(note("A4", 2.5))) == ["A4:2", "-A4:1/2"]
        assert said(note("A4", 2.5)) == ["A length that no single note value can show was written as tied notes."]

    def test_a_rest_of_a_whole_bar_in_nine_eight_becomes_two(self) -> None:
        head = attributes("<time><beats>9</beats><beat-type>8</beat-type></time>")
        assert sounding(tune(head + note("z", 4.5))) == ["z:4", "z:1/2"]

    def test_a_missing_duration_is_taken_from_the_note_value(self) -> None:
        measure = "<note><pitch><step>A</step><octave>4</octave></pitch><type>half</type><dot/></note>"
        assert sounding(tune(measure)) == ["A4:3", "z:1"] or sounding(tune(measure)) == ["A4:3"]
        assert said(measure) == ["A note without a duration: its note value was taken."]

    def test_rests_that_are_not_printed_are_hidden(self) -> None:
        found = tune(note("z", 2, attributes='print-object="no"') + note("z", 2))
        assert [one.hidden for one in found.sequence] == [True, False]

    def test_a_gap_is_filled_with_a_hidden_rest(self) -> None:
        found = tune(note("A4", 1) + "<forward><duration>24</duration></forward>" + note("B4", 2))
        assert sounding(found) == ["A4:1", "z:1", "B4:2"]
        assert found.sequence[1].hidden

    def test_an_empty_measure_is_a_bar_of_rest(self) -> None:
        assert sounding(tune(WHOLE, "")) == ["A4:4", "z:4"]
        assert said(WHOLE, "") == ["An empty measure: a rest was put in."]

    def test_the_first_voice_of_the_first_staff_is_kept(self) -> None:
        voices = note("A4", 4, "<voice>1</voice><staff>1</staff>") + "<backup><duration>96</duration></backup>"
        voices += note("E4", 2, "<voice>2</voice>") * 2 + "<backup><duration>96</duration></backup>"
        voices += note("C3", 4, "<voice>5</voice><staff>2</staff>")
        assert sounding(tune(voices)) == ["A4:4"]
        assert said(voices) == ["2 other voices were left out of part “Fiddle”: a lesson has one melody line."]

    def test_a_voice_may_cross_the_staves(self) -> None:
        voice = note("A4", 2, "<voice>1</voice><staff>1</staff>") + note("C3", 2, "<voice>1</voice><staff>2</staff>")
        assert sounding(tune(voice)) == ["A4:2", "C3:2"]

    def test_courtesy_accidentals(self) -> None:
        sharp = "<accidental>sharp</accidental>"
        measure = note("C#5", 1, sharp) + note("C#5", 1, sharp) + note("C5", 1, "<accidental>natural</accidental>")
        found = tune(measure + note("D5", 1, '<accidental cautionary="yes">natural</accidental>'))
        assert [one.courtesy for one in found.sequence] == [False, True, False, True]

    def test_cue_notes_are_rests(self) -> None:
        assert sounding(tune(note("A4", 2, before="<cue/>") + note("B4", 2))) == ["z:2", "B4:2"]


class TestTies:
    START, STOP = '<tie type="start"/>', '<tie type="stop"/>'

    def test_a_tied_note_is_held(self) -> None:
        assert sounding(tune(note("A4", 4, self.START), note("A4", 4, self.STOP))) == ["A4:4", "-A4:4"]

    def test_a_printed_tie_will_do(self) -> None:
        first, second = (notations(f'<tied type="{kind}"/>') for kind in ("start", "stop"))
        assert sounding(tune(note("A4", 2, first) + note("A4", 2, second))) == ["A4:2", "-A4:2"]

    def test_a_tie_to_another_note_is_left_out(self) -> None:
        measure = note("A4", 2, self.START) + note("B4", 2, self.STOP)
        assert sounding(tune(measure)) == ["A4:2", "B4:2"]
        assert said(measure) == ["A tie without the same note on its other side was left out."]

    def test_a_tie_with_one_end_holds_the_same_note(self) -> None:
        measure = note("A4", 2, self.START) + note("A4", 2)
        assert sounding(tune(measure)) == ["A4:2", "-A4:2"]
        assert said(measure) == ["A tie that lacks one end was read as a tie, since the same note follows."]

    def test_a_tie_of_half_a_double_stop_is_left_out(self) -> None:
        measure = note("A4", 2, self.START) + note("E5", 2, before="<chord/>") + note("A4", 2, self.STOP)
        assert sounding(tune(measure)) == ["A4+E5:2", "A4:2"]
        assert said(measure) == ["A tie that holds one note of a double stop only was left out."]


class TestTuplets:
    @staticmethod
    def triplet(name: str, quarters: Fraction, inner: str = "") -> str:
        ratio = "<actual-notes>3</actual-notes><normal-notes>2</normal-notes>"
        return note(name, quarters, f"<time-modification>{ratio}</time-modification>{inner}")

    def test_marked_triplets(self) -> None:
        start, stop = notations('<tuplet type="start"/>'), notations('<tuplet type="stop"/>')
        third = Fraction(1, 3)
        group = self.triplet("A4", third, start) + self.triplet("B4", third) + self.triplet("C5", third, stop)
        found = tune(group + group + note("A4", 2))
        assert [one.tuplet.starts for one in found.sequence if one.tuplet] == [True, False, False] * 2
        assert found.sequence[1].tuplet == Tuplet(3, 2)

    def test_triplets_without_marks_start_when_the_one_before_is_full(self) -> None:
        two_thirds, third = Fraction(2, 3), Fraction(1, 3)
        measure = "".join(self.triplet("A4", length) for length in (two_thirds, third, third, third, third))
        found = tune(measure + note("A4", 2))
        assert [one.tuplet.starts for one in found.sequence if one.tuplet] == [True, False, True, False, False]

    def test_thirds_that_nobody_calls_a_triplet(self) -> None:
        found = tune(note("A4", Fraction(1, 3)) * 3 + note("A4", 3))
        assert all(note_value(one.length, one.tuplet) for one in found.sequence)
        assert [one.length for one in found.sequence] == [Fraction(1, 3)] * 3 + [3]


class TestAttributes:
    @pytest.mark.parametrize(
        ("xml", "expected"),
        [
            ("<fifths>2</fifths><mode>mixolydian</mode>", Key(2, "mixolydian")),
            ("<fifths>-3</fifths>", Key(-3, "none")),
            ("<fifths>1</fifths><mode>sideways</mode>", Key(1, "none")),
            ("<cancel>2</cancel><fifths>0</fifths><mode>major</mode>", Key(0, "major")),
            ("<fifths>9</fifths>", Key(7, "none", (("F", 2), ("C", 2)))),
            ("<fifths>-8</fifths>", Key(-7, "none", (("B", -2),))),
            (
                "<key-step>F</key-step><key-alter>1</key-alter><key-step>B</key-step><key-alter>-1</key-alter>",
                Key(0, "none", (("F", 1), ("B", -1))),
            ),
            (
                "<key-step>F</key-step><key-alter>1</key-alter><key-step>F</key-step><key-alter>0.6</key-alter>",
                Key(0, "none", (("F", 1),)),
            ),
            ("<fifths>many</fifths>", Key(0, "none")),
        ],
    )
    def test_keys(self, xml: str, expected: Key) -> None:
        assert tune(attributes(f"<key>{xml}</key>") + WHOLE).bars[0].key == expected

    @pytest.mark.parametrize(
        ("xml", "expected"),
        [
            ("<time><beats>6</beats><beat-type>8</beat-type></time>", Meter((6,), 8)),
            ('<time symbol="cut"><beats>2</beats><beat-type>2</beat-type></time>', Meter((2,), 2, "cut")),
            ('<time symbol="common"><beats>4</beats><beat-type>4</beat-type></time>', Meter((4,), 4, "common")),
            ("<time><beats>2+3+2</beats><beat-type>8</beat-type></time>", Meter((2, 3, 2), 8)),
            (
                "<time><beats>3</beats><beat-type>8</beat-type><beats>1</beats><beat-type>4</beat-type></time>",
                Meter((3, 2), 8),
            ),
            ("<time><senza-misura/></time>", Meter(())),
            ("", Meter(())),
            ("<time><beats>4</beats><beat-type>5</beat-type></time>", Meter(())),
            ("<time><beats>0</beats><beat-type>4</beat-type></time>", Meter(())),
        ],
    )
    def test_metres(self, xml: str, expected: Meter) -> None:
        assert tune(attributes(xml) + WHOLE).bars[0].meter == expected

    def test_changes_hold_from_their_bar_on(self) -> None:
        change = attributes("<key><fifths>1</fifths><mode>major</mode></key>")
        assert [bar.key.fifths for bar in tune(WHOLE, change + WHOLE, WHOLE).bars] == [0, 1, 1]

    def test_a_change_inside_a_bar_waits_for_the_next(self) -> None:
        change = attributes("<key><fifths>1</fifths><mode>major</mode></key>")
        measures = HEAD + note("A4", 2) + change + note("A4", 2), WHOLE
        assert [bar.key.fifths for bar in tune(*measures).bars] == [0, 1]
        assert said(*measures) == ["The key changes inside a bar: the new signature is shown from the next bar on."]

    def test_what_concerns_another_staff_is_passed_over(self) -> None:
        other = attributes('<key number="2"><fifths>5</fifths></key>')
        assert tune(HEAD + other + WHOLE).bars[0].key.fifths == 0


class TestBars:
    def test_numbers_are_those_of_the_file(self) -> None:
        text = score(note("A4", 1), WHOLE, note("A4", 3), note("A4", 1), WHOLE)
        for count, shown in enumerate(['"0" implicit="yes"', '"1"', '"2"', '"X1" implicit="yes"', '"3"'], start=1):
            text = text.replace(f'<measure number="{count}">', f"<measure number={shown}>", 1)
        assert [bar.number for bar in read(text).lessons[0].tune.bars] == [0, 1, 2, 2, 3]

    def test_a_short_first_bar_is_a_pick_up(self) -> None:
        assert [bar.start for bar in tune(note("A4", 1), WHOLE).bars] == [3, 0]

    def test_a_bar_cut_in_two_by_a_repeat(self) -> None:
        back = barline('<bar-style>light-heavy</bar-style><repeat direction="backward"/>')
        found = tune(note("A4", 1), WHOLE, note("A4", 3) + back, note("A4", 1), note("A4", 4))
        assert [bar.start for bar in found.bars] == [3, 0, 0, 3, 0]

    def test_repeats(self) -> None:
        forward = barline('<bar-style>heavy-light</bar-style><repeat direction="forward"/>', "left")
        back = barline('<bar-style>light-heavy</bar-style><repeat direction="backward" times="3"/>')
        found = tune(forward + WHOLE, WHOLE + back)
        assert [(bar.opens_repeat, bar.repeats) for bar in found.bars] == [(True, 0), (False, 3)]
        assert found.bars[1].line is BarLine.PLAIN

    def test_a_repeat_sign_inside_a_measure_cuts_it_in_two(self) -> None:
        middle = barline('<repeat direction="backward"/>', "middle")
        found = tune(WHOLE, note("A4", 2) + middle + note("B4", 2), WHOLE)
        assert [(bar.number, bar.repeats, bar.start) for bar in found.bars] == [
            (1, 0, 0),
            (2, 2, 0),
            (2, 0, 2),
            (3, 0, 0),
        ]

    def test_endings_over_several_bars(self) -> None:
        first = barline('<ending number="1, 2" type="start"/>', "left")
        back = barline('<ending number="1, 2" type="stop"/><repeat direction="backward"/>')
        second = barline('<ending number="3" type="start"/>', "left")
        stop = barline('<ending number="3" type="discontinue"/>')
        found = tune(WHOLE, first + WHOLE, WHOLE + back, second + WHOLE + stop, WHOLE)
        assert [bar.ending for bar in found.bars] == [(), (1, 2), (1, 2), (3,), ()]
        assert found.bars[2].repeats == 3

    def test_an_ending_that_is_not_closed_stops_at_the_repeat(self) -> None:
        first = barline('<ending number="1" type="start"/>', "left")
        measures = WHOLE, first + WHOLE, WHOLE + barline('<repeat direction="backward"/>'), WHOLE
        assert [bar.ending for bar in tune(*measures).bars] == [(), (1,), (1,), ()]
        assert said(*measures) == ["An ending without an end was closed at the next repeat or double bar."]

    def test_an_ending_without_a_number_follows_the_one_before(self) -> None:
        def ending(number: str) -> str:
            return barline(f'<ending number="{number}" type="start"/>', "left") + WHOLE + barline(
                f'<ending number="{number}" type="stop"/>')  # fmt: skip

        assert [bar.ending for bar in tune(ending("1"), ending(" ")).bars] == [(1,), (2,)]

    @pytest.mark.parametrize(
        ("style", "line"),
        [("light-light", BarLine.DOUBLE), ("light-heavy", BarLine.FINAL), ("dashed", BarLine.PLAIN)],
    )
    def test_bar_lines(self, style: str, line: BarLine) -> None:
        assert tune(WHOLE + barline(f"<bar-style>{style}</bar-style>")).bars[0].line is line

    def test_signs_and_jumps(self) -> None:
        found = tune(
            direction("<rehearsal>A</rehearsal>") + WHOLE,
            direction("<segno/>", 'segno="s"') + WHOLE + direction("<words>To Coda</words>", 'tocoda="c"'),
            WHOLE + direction("<words>D.S. al Coda</words>", 'dalsegno="s"'),
            direction("<coda/>", 'coda="c"') + WHOLE + direction("<words>Fine</words>", 'fine="yes"'),
        )
        assert [bar.part for bar in found.bars] == ["A", "", "", ""]
        assert [bar.segno for bar in found.bars] == [False, True, False, False]
        assert [bar.to_coda for bar in found.bars] == [False, True, False, False]
        assert [bar.jump for bar in found.bars] == [None, None, Jump.DAL_SEGNO_AL_CODA, None]
        assert [bar.coda for bar in found.bars] == [False, False, False, True]
        assert found.bars[3].fine
        assert not any(bar.words for bar in found.bars)

    def test_jumps_that_are_only_words(self) -> None:
        found = tune(WHOLE + direction("<words>Fine</words>"), WHOLE + direction("<words>D.C. al Fine</words>"))
        assert found.bars[0].fine
        assert found.bars[1].jump is Jump.DA_CAPO_AL_FINE

    def test_two_coda_signs_are_where_to_leave_and_where_to_go_on(self) -> None:
        sign = direction("<coda/>")
        found = tune(sign + WHOLE, WHOLE + direction("<words>D.C. al Coda</words>", 'dacapo="yes"'), sign + WHOLE)
        assert [bar.to_coda for bar in found.bars] == [True, False, False]
        assert [bar.coda for bar in found.bars] == [False, False, True]

    def test_a_sign_at_the_end_of_a_measure_belongs_to_the_next(self) -> None:
        found = tune(WHOLE + direction("<segno/>") + direction("<rehearsal>B</rehearsal>"), WHOLE)
        assert [(bar.segno, bar.part) for bar in found.bars] == [(False, ""), (True, "B")]

    def test_a_sign_in_the_middle_belongs_to_its_measure(self) -> None:
        assert tune(note("A4", 2) + direction("<segno/>") + note("A4", 2), WHOLE).bars[0].segno


class TestOverTheStaff:
    def test_tempo(self) -> None:
        metronome = "<metronome><beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>112</per-minute></metronome>"
        found = tune(direction(f"<words>Lively</words></direction-type><direction-type>{metronome}") + WHOLE)
        assert found.tempo == Tempo(Fraction(3, 2), Fraction(112), "Lively")

    def test_a_tempo_that_is_only_played_counts_in_the_beat_of_the_metre(self) -> None:
        six_eight = attributes("<time><beats>6</beats><beat-type>8</beat-type></time>")
        found = tune(six_eight + '<sound tempo="168"/>' + note("A4", 3))
        assert found.tempo == Tempo(Fraction(3, 2), Fraction(112))  # sound@tempo counts quarters

    def test_later_tempos_are_told(self) -> None:
        mark = direction("<metronome><beat-unit>half</beat-unit><per-minute>80</per-minute></metronome>")
        assert said(mark + WHOLE, WHOLE, mark + WHOLE) == [
            "The tempo changes inside the tune: only the one at the start is kept."
        ]

    def test_words_with_their_places(self) -> None:
        measure = note("A4", 2) + direction("<words>slow\n down</words>", placement="below") + note("A4", 2)
        assert tune(measure).bars[0].words == (Words(Fraction(2), "slow down", above=False),)

    def test_chords_with_offsets(self) -> None:
        def chord(step: str, offset: int) -> str:
            root = f"<root><root-step>{step}</root-step></root>"
            return f'<harmony>{root}<kind text="7">dominant</kind><offset>{offset}</offset></harmony>'

        assert tune(chord("A", 48) + chord("D", 0) + WHOLE).bars[0].chords == (
            ChordSymbol(Fraction(0), "D7"),
            ChordSymbol(Fraction(2), "A7"),
        )


class TestSlurs:
    def test_a_slur_joins_all_notes_after_its_first(self) -> None:
        found = bowing(note("A4", 1, slur("start")) + note("B4", 1) + note("C5", 1, slur("stop")) + note("D5", 1))
        assert found.joins == {"b0n2": Join.SLUR, "b0n3": Join.SLUR}

    def test_a_slur_runs_over_the_bar_line(self) -> None:
        assert bowing(note("A4", 4, slur("start")), note("B4", 4, slur("stop"))).joins == {"b1n1": Join.SLUR}

    def test_a_held_note_is_not_joined(self) -> None:
        start = '<tie type="start"/>' + slur("start")
        found = bowing(note("A4", 1, start) + note("A4", 1, '<tie type="stop"/>') + note("B4", 2, slur("stop")))
        assert found.joins == {"b0n3": Join.SLUR}

    def test_continued_slurs(self) -> None:
        assert list(
            bowing(note("A4", 4, slur("start")), note("B4", 4, slur("continue")), note("C5", 4, slur("stop"))).joins
        ) == ["b1n1", "b2n1"]

    def test_nested_slurs_are_one_stroke(self) -> None:
        measure = note("A4", 1, slur("start", 1)) + note("B4", 1, slur("start", 2))
        measure += note("C5", 1, slur("stop", 2)) + note("D5", 1, slur("stop", 1))
        assert list(bowing(measure).joins) == ["b0n2", "b0n3", "b0n4"]

    def test_slurs_that_meet_on_a_note_are_one_stroke(self) -> None:
        both = notations('<slur type="stop" number="1"/><slur type="start" number="1"/>')
        measure = note("A4", 1, slur("start")) + note("B4", 1, both) + note("C5", 2, slur("stop"))
        assert list(bowing(measure).joins) == ["b0n2", "b0n3"]
        assert said(measure) == ["A slur begins on the note where another ends: both are read as one stroke."]

    def test_a_start_written_before_the_stop_of_the_slur_before(self) -> None:
        both = notations('<slur type="start" number="1"/><slur type="stop" number="1"/>')
        measure = note("A4", 1, slur("start")) + note("B4", 1, both) + note("C5", 2, slur("stop"))
        assert list(bowing(measure).joins) == ["b0n2", "b0n3"]

    def test_a_slur_over_a_rest_ends_before_it(self) -> None:
        measure = note("A4", 1, slur("start")) + note("B4", 1) + note("z", 1) + note("C5", 1, slur("stop"))
        assert list(bowing(measure).joins) == ["b0n2"]
        assert said(measure) == ["A slur runs over a rest: it is read as ending before the rest."]

    @pytest.mark.parametrize("kind", ["start", "stop"])
    def test_a_slur_with_one_end_is_left_out(self, kind: str) -> None:
        measure = note("A4", 2) + note("B4", 2, slur(kind))
        assert not bowing(measure).joins
        assert len(said(measure)) == 1

    def test_slurs_of_grace_notes_belong_to_the_main_note(self) -> None:
        measure = note("A4", 2, slur("start")) + grace("C5", slur("stop")) + note("B4", 2)
        assert list(bowing(measure).joins) == ["b0n2"]

    def test_a_slur_from_a_grace_note_to_its_note_joins_nothing(self) -> None:
        measure = grace("C5", slur("start")) + note("A4", 2, slur("stop")) + note("B4", 2)
        assert not bowing(measure).joins
        assert said(measure) == []

    @pytest.mark.parametrize("sign", ["staccato", "tenuto"])
    def test_dots_or_lines_under_a_slur_are_hooks(self, sign: str) -> None:
        dot, both = f"<articulations><{sign}/></articulations>", '<slur type="{}" number="1"/>'
        measure = note("A4", 1, notations(both.format("start") + dot)) + note("B4", 1, notations(dot))
        found = bowing(measure + note("C5", 2, notations(both.format("stop"))))
        assert found.joins == {"b0n2": Join.HOOK, "b0n3": Join.SLUR}
        assert not found.signs

    def test_a_dot_on_one_note_only_is_a_dot(self) -> None:
        dot = "<articulations><staccato/></articulations>"
        found = bowing(note("A4", 2, slur("start")) + note("B4", 2, notations('<slur type="stop"/>' + dot)))
        assert found.joins == {"b0n2": Join.SLUR}
        assert found.signs["b0n2"].articulations == (Articulation.STACCATO,)


class TestSigns:
    def test_bow_marks_are_fixed(self) -> None:
        measure = note("A4", 2, technical("<down-bow/>")) + note("B4", 2, technical("<up-bow/>"))
        assert bowing(measure).marks == {"b0n1": Mark(Bow.DOWN), "b0n2": Mark(Bow.UP)}

    def test_a_bow_mark_on_a_held_note_is_left_out(self) -> None:
        measure = note("A4", 2, '<tie type="start"/>') + note("A4", 2, '<tie type="stop"/>' + technical("<up-bow/>"))
        assert not bowing(measure).marks

    def test_grace_notes(self) -> None:
        measure = grace("C5", attributes='slash="yes"') + grace("D5") + note("A4", 4)
        assert bowing(measure).signs["b0n1"].graces == (
            Grace((Pitch(5, "C"),), slashed=True),
            Grace((Pitch(5, "D"),)),
        )

    def test_grace_notes_that_end_a_bar_lead_to_the_next(self) -> None:
        measures = note("A4", 4) + grace("C5"), note("B4", 4)
        assert list(bowing(*measures).signs) == ["b1n1"]
        assert said(*measures) == ["Grace notes at the end of a bar were put before the first note of the next."]

    def test_grace_notes_that_lead_nowhere_are_left_out(self) -> None:
        assert said(note("A4", 4) + grace("C5"))[0].startswith("Grace notes after the last note")

    def test_double_stopped_grace_notes(self) -> None:
        chord = "<note><grace/><chord/><pitch><step>A</step><octave>4</octave></pitch></note>"
        (found,) = bowing(grace("D5") + chord + WHOLE).signs["b0n1"].graces
        assert found.pitches == (Pitch(4, "A"), Pitch(5, "D"))

    def test_ornaments_articulations_and_fingerings(self) -> None:
        inner = notations(
            "<ornaments><trill-mark/><inverted-mordent/><other-ornament>roll</other-ornament></ornaments>"
            '<technical><fingering>0</fingering><open-string/></technical><articulations><strong-accent type="up"/>'
            "</articulations><fermata/>"
        )
        assert bowing(note("A4", 4, inner)).signs["b0n1"] == Signs(
            ornaments=(Ornament.TRILL, Ornament.UPPER_MORDENT, Ornament.ROLL),
            articulations=(Articulation.OPEN_STRING, Articulation.STRONG_ACCENT, Articulation.FERMATA),
            fingerings=("0",),
        )

    def test_what_has_no_place_is_told_once_a_kind(self) -> None:
        measure = note("A4", 2, technical("<thumb-position/><pluck>p</pluck>")) * 2
        assert said(measure) == [
            "Left out, since lessons have no place for it: thumb positions (2 times, first here).",
            "Left out, since lessons have no place for it: plucking fingers (2 times, first here).",
        ]


class TestNonsense:
    """Numbers and texts that mean nothing must not stop, slow or fool the reader."""

    @pytest.mark.parametrize("number", ["0", "-4", "1e999999999", "9" * 5000, "abc", "", "1.5.2", "½"])
    def test_divisions_and_durations(self, number: str) -> None:
        for name in ("divisions", "duration"):
            text = score(WHOLE + note("B4", 1)).replace(f"<{name}>24<", f"<{name}>{number}<")
            assert read(text).lessons

    def test_notes_beyond_all_measure(self) -> None:
        found = tune(WHOLE.replace(">96<", ">999999999<"))
        assert sum(one.length for one in found.sequence) == 64

    @pytest.mark.parametrize("name", ["step", "octave", "alter"])
    def test_pitches(self, name: str) -> None:
        text = score(note("C#4", 4).replace(f"<{name}>", f"<{name}>?"))
        assert sounding(read(text).lessons[0].tune) == ["z:4"]

    def test_repeats_without_end(self) -> None:
        back = barline('<repeat direction="backward" times="999999999"/>')
        assert tune(WHOLE + back).bars[0].repeats == 2

    def test_too_many_measures(self) -> None:
        reading = read(score(*[WHOLE] * 2003))
        assert len(reading.lessons[0].tune.bars) == 2000
        assert reading.problems[-1].text.startswith("A part has more than 2000 measures: the rest was left out")

    def test_too_many_notes_in_all(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(measure_reader.Budget.__init__, "__defaults__", (30,))
        two = scores(part(*[note("A4", 0.5) * 8] * 3), part(*[note("E4", 0.5) * 8] * 3, part_id="P2"), names=("A", "B"))
        reading = read(two)
        assert [len(one.tune.bars) for one in reading.lessons] == [3, 1]
        assert [problem.text for problem in reading.problems] == [
            "The score has more than 100000 notes: the rest was left out (2 times, first here)."
        ]

    def test_a_measure_of_thousands_of_notes(self) -> None:
        reading = read(score(note("A4", 0.5) * 3000))
        assert len(reading.lessons[0].tune.bars[0].notes) == 256
        assert any("more than" in problem.text for problem in reading.problems)


def test_a_whole_bar_is_read_as_typed() -> None:
    assert tune(note("A4", 2) + note("z", 2)).bars == (
        Bar(
            1,
            (
                Note("b0n1", Fraction(0), Fraction(2), (Pitch(4, "A"),)),
                Note("b0n2", Fraction(2), Fraction(2)),
            ),
        ),
    )


def test_a_thousand_slurs_over_everything_take_no_time() -> None:
    starts = "".join(f'<slur type="start" number="{number}"/>' for number in range(2000))
    stops = starts.replace("start", "stop")
    measures = [note("A4", 0.25) * 16] * 500
    text = score(note("A4", 4, notations(starts)), *measures, note("A4", 4, notations(stops)))
    started = time.monotonic()
    found = read(text).lessons[0].bowings[0]
    assert len(found.joins) == 8001
    assert time.monotonic() - started < 10
