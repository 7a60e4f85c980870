import xml.etree.ElementTree as ET
from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict

from core.bowing import Articulation, Bowing, Grace, Ornament, Signs, fix_bow
from core.engraving.glyphs import glyph_box
from core.engraving.kinds import Kind
from core.engraving.lines import Line
from core.engraving.mei import Document, write_line
from core.engraving.note_marks import ARTICULATIONS, CONTROL_SIGNS, ORNAMENTS
from core.engraving.printed_words import chord_text, clean_text, ending_text
from core.tune import ChordSymbol, Jump, Key, Meter, Pitch, Tempo, Tune, Tuplet, Words
from tests.core.builders import bowed

NS = {"m": "http://www.music-encoding.org/ns/mei"}
ID = "{http://www.w3.org/XML/1998/namespace}id"
NO_SLOTS: Mapping[str, int] = {}


def document(
    tune: Tune, bowing: Bowing | None = None, line: Line | None = None, slots: Mapping[str, int] = NO_SLOTS
) -> Document:
    return write_line(tune, bowing or Bowing("plain"), line or Line(0, len(tune.bars)), slots)


def tree(
    tune: Tune, bowing: Bowing | None = None, line: Line | None = None, slots: Mapping[str, int] = NO_SLOTS
) -> ET.Element:
    return ET.fromstring(document(tune, bowing, line, slots).text)


def accidentals(tune: Tune, line: Line | None = None) -> str:
    """``s f n`` for what stands before each note, ``.`` for nothing, ``(s)`` in parentheses."""
    signs = []
    for note in tree(tune, line=line).iterfind(".//m:layer//m:note", NS):
        accid = note.find("m:accid", NS)
        sign = "." if accid is None else accid.get("accid", "")
        signs.append(f"({sign})" if accid is not None and accid.get("enclose") else sign)
    return " ".join(signs)


def pitched(text: str, *pitches: str, key: Key | None = None) -> Tune:
    """The typed rhythm with other pitches: ``F#4``; ``~`` before it: held on."""
    tune, _ = bowed(text)
    left = iter(pitches)
    bars = []
    for bar in tune.bars:
        notes = []
        for note in bar.notes:
            name = next(left)
            pitch = Pitch(int(name[-1]), name.strip("~")[0], name.count("#") - name.count("b"))
            notes.append(replace(note, pitches=(pitch,), held="~" in name))
        bars.append(replace(bar, notes=tuple(notes), key=key or Key()))
    return replace(tune, bars=tuple(bars))


class TestAccidentals:
    def test_what_the_key_says_is_not_repeated(self) -> None:
        assert accidentals(pitched("A2A2A2A2", "F#4", "C#5", "F4", "G4", key=Key(2))) == ". . n ."

    def test_what_the_bar_says_is_not_repeated_and_the_bar_line_ends_it(self) -> None:
        assert accidentals(pitched("A2A2A4|A8", "F#4", "F#4", "F4", "F#4")) == "s . n s"

    def test_an_accidental_holds_for_its_own_octave_only(self) -> None:
        assert accidentals(pitched("A4A4", "F#4", "F#5")) == "s s"

    def test_a_tie_carries_it_over_the_bar_line_and_no_further(self) -> None:
        assert accidentals(pitched("A8|A4A4", "F#4", "~F#4", "F#4")) == "s . s"

    def test_a_held_note_repeats_it_in_parentheses_where_a_line_begins(self) -> None:
        tune = pitched("A8|A4A4", "F#4", "~F#4", "G4")
        assert accidentals(tune, Line(1, 2)) == "s (s) ."  # the bar before stands in the document, not on the line

    def test_a_courtesy_of_the_source_is_kept(self) -> None:
        tune = pitched("A8", "F#4", key=Key(1))
        note = replace(tune.bars[0].notes[0], courtesy=True)
        assert accidentals(replace(tune, bars=(replace(tune.bars[0], notes=(note,)),))) == "s"

    def test_a_bar_broken_by_a_repeat_warns_of_what_its_first_part_altered(self) -> None:
        tune = pitched("A2|A6:|A2|A8|", "G4", "F#4", "F4", "F4")
        assert [bar.number for bar in tune.bars] == [0, 1, 1, 2]
        assert accidentals(tune) == ". s n ."

    def test_double_accidentals_and_their_end(self) -> None:
        assert accidentals(pitched("A2A2A2A2", "F##4", "F#4", "Bbb4", "B4")) == "x s ff n"


class TestOpening:
    def test_key_and_clef_on_every_line_and_the_metre_on_the_first(self) -> None:
        tune = pitched("A8|B8", "A4", "B4", key=Key(-3))
        for line, is_seen in ((Line(0, 1), True), (Line(1, 2), False)):
            staff = tree(tune, line=line).find(".//m:staffDef", NS)
            assert staff is not None
            assert [child.tag.split("}")[1] for child in staff] == ["clef", "keySig", "meterSig"]
            assert staff[1].get("sig") == "3f"
            assert (staff[2].get("visible") is None) is is_seen

    def test_a_new_metre_or_key_stands_where_it_begins(self) -> None:
        tune, _ = bowed("A8|B8|c8")
        bars = (tune.bars[0], replace(tune.bars[1], meter=Meter((3,), 2)), replace(tune.bars[2], key=Key(2)))
        tune = replace(tune, bars=bars)
        inside = tree(tune).findall(".//m:section/m:scoreDef", NS)
        assert [(d.find("m:meterSig", NS) is not None, d.find("m:keySig", NS) is not None) for d in inside] == [
            (True, False), (True, True),
        ]  # fmt: skip
        start = tree(tune, line=Line(1, 2)).find(".//m:staffDef/m:meterSig", NS)
        assert start is not None
        assert (start.get("count"), start.get("unit"), start.get("visible")) == ("3", "2", None)

    def test_a_line_ends_with_the_key_and_metre_in_which_the_next_one_begins(self) -> None:
        """Common practice: Gould, Behind Bars (2011), from memory."""
        tune, _ = bowed("A8|B8|c8")
        bars = (tune.bars[0], replace(tune.bars[1], meter=Meter((3,), 2), key=Key(2)), tune.bars[2])
        section = tree(replace(tune, bars=bars), line=Line(0, 1)).find(".//m:section", NS)
        assert section is not None
        assert [child.tag.split("}")[1] for child in section] == ["pb", "measure", "scoreDef", "measure"]
        assert [child.tag.split("}")[1] for child in section[2]] == ["keySig", "meterSig"]
        assert section[3].get("right") == "invis"
        assert section[3].findall(".//m:layer/*", NS) == []

    def test_another_mode_or_a_metre_that_shows_nothing_is_no_change_to_warn_of(self) -> None:
        tune, _ = bowed("A8|B8")
        bars = (
            replace(tune.bars[0], key=Key(0, "major")),
            replace(tune.bars[1], key=Key(0, "dorian"), meter=Meter(())),
        )
        text = document(replace(tune, bars=bars), line=Line(0, 1)).text
        assert text.count("<measure") == 1
        assert text.count("<scoreDef>") == 1

    def test_a_signature_of_its_own_lists_its_accidentals(self) -> None:
        tune = pitched("A8", "A4", key=Key(2, altered=(("C", 0), ("B", -1))))
        signs = tree(tune).findall(".//m:staffDef/m:keySig/m:keyAccid", NS)
        assert [(sign.get("pname"), sign.get("accid")) for sign in signs] == [("f", "s"), ("b", "f")]

    def test_free_metre_shows_none(self) -> None:
        tune, _ = bowed("A8")
        meter = tree(replace(tune, bars=(replace(tune.bars[0], meter=Meter(())),))).find(".//m:meterSig", NS)
        assert meter is not None
        assert meter.get("visible") == "false"

    def test_later_lines_begin_with_the_number_of_their_first_full_bar(self) -> None:
        tune, _ = bowed("D2|A8|A8|A8|A6:|E2|B8|B8|B8|B6:|")
        assert document(tune, line=Line(0, 5)).number is None
        assert document(tune, line=Line(5, 10)).number == 5
        assert [mark.text for mark in tree(tune, line=Line(5, 10)).iterfind(".//m:mNum", NS)] == ["5"]


class TestCurves:
    def test_a_stroke_of_several_notes_has_one_slur(self) -> None:
        tune, bowing = bowed("A(Bc)d (efga)")
        found = document(tune, bowing)
        slurs = ET.fromstring(found.text).findall(".//m:slur", NS)
        assert [(s.get("startid"), s.get("endid")) for s in slurs] == [("#b0n2", "#b0n3"), ("#b0n5", "#b0n8")]
        assert [(n.note, n.end) for n in found.names.values() if n.kind is Kind.SLUR] == [
            ("b0n2", "b0n3"), ("b0n5", "b0n8"),
        ]  # fmt: skip

    def test_a_held_note_is_tied_and_a_slur_reaches_to_its_end(self) -> None:
        tune, bowing = bowed("(AB4-B2)c")
        root = tree(tune, bowing)
        assert [(s.get("startid"), s.get("endid")) for s in root.iterfind(".//m:slur", NS)] == [("#b0n1", "#b0n3")]
        assert [(s.get("startid"), s.get("endid")) for s in root.iterfind(".//m:tie", NS)] == [("#b0n2", "#b0n3")]

    def test_a_held_note_alone_has_no_slur(self) -> None:
        assert tree(*bowed("A4-A4")).find(".//m:slur", NS) is None

    def test_hooked_notes_have_a_slur_and_dots(self) -> None:
        root = tree(*bowed("A3=B c2d2"))
        assert len(root.findall(".//m:slur", NS)) == 1
        dotted = [
            n.get(ID) for n in root.iterfind(".//m:note", NS) if n.find("m:artic[@artic='stacc']", NS) is not None
        ]
        assert dotted == ["b0n1", "b0n2"]

    def test_a_slur_over_the_end_of_the_line_brings_the_next_bar_with_it(self) -> None:
        tune, bowing = bowed("A8|A7(B|c)A7|A8")
        assert document(tune, bowing, Line(0, 2)).page == 1
        assert document(tune, bowing, Line(2, 4)).page == 2
        assert document(tune, bowing, Line(3, 4)).page == 1
        for line in (Line(0, 2), Line(2, 4)):
            slur = tree(tune, bowing, line).find(".//m:slur", NS)
            assert slur is not None
            assert (slur.get("startid"), slur.get("endid")) == ("#b1n2", "#b2n1")

    def test_a_stroke_longer_than_the_neighbouring_bar_keeps_the_name_of_its_ends(self) -> None:
        tune, bowing = bowed("(A8|B8|c8|d8)|e8")
        found = document(tune, bowing, Line(2, 3))
        slur = ET.fromstring(found.text).find(".//m:slur", NS)
        assert slur is not None
        assert (slur.get("startid"), slur.get("endid")) == ("#b1n1", "#b3n1")
        assert [(n.note, n.end) for n in found.names.values() if n.kind is Kind.SLUR] == [("b0n1", "b3n1")]


class TestNotes:
    def test_room_for_bow_signs_is_no_articulation_of_the_note(self) -> None:
        tune, bowing = bowed("LAB c2d2e2")
        root = tree(tune, bowing, slots={"b0n1": 1})
        assert [artic.get("artic") for artic in root.iterfind(".//m:artic", NS)] == ["acc"]
        assert [room.get("startid") for room in root.iterfind(".//m:fermata", NS)] == ["#b0n1"]

    def test_two_rows_of_signs_have_a_taller_room(self) -> None:
        tune, bowing = bowed("AB c2d2e2")
        rooms = tree(tune, bowing, slots={"b0n1": 2, "b0n2": 1}).findall(".//m:fermata", NS)
        codes = [str(room.get("glyph.num")).removeprefix("U+") for room in rooms]
        taller, lower = (glyph_box(code) for code in codes)
        assert taller[3] - taller[1] > 2 * (lower[3] - lower[1])

    def test_directions_are_not_in_the_document(self) -> None:
        tune, bowing = bowed("AB c2d2e2")
        turned = fix_bow(tune, bowing, "b0n1", next(iter(bowed("uA")[1].marks.values())).bow)
        assert document(tune, bowing).text == document(tune, turned).text

    def test_graces_stand_before_the_beam_and_are_slashed_as_told(self) -> None:
        tune, bowing = bowed("ABcd efga")
        graces = (Grace((Pitch(5, "C", 1),), slashed=True),)
        bowing = replace(bowing, signs=immutabledict({"b0n1": Signs(graces=graces)}))
        layer = tree(tune, bowing).find(".//m:layer", NS)
        assert layer is not None
        assert [(e.tag.split("}")[1], e.get("grace"), e.get("stem.mod")) for e in layer] == [
            ("note", "unacc", "1slash"), ("beam", None, None), ("beam", None, None),
        ]  # fmt: skip

    def test_every_sign_of_a_bowing_can_be_written(self) -> None:
        assert {*ARTICULATIONS, *CONTROL_SIGNS} == set(Articulation)
        assert set(ORNAMENTS) == set(Ornament)
        tune, bowing = bowed("A8")
        signs = Signs(ornaments=tuple(Ornament), articulations=tuple(Articulation), fingerings=("0", "4"))
        found = document(tune, replace(bowing, signs=immutabledict({"b0n1": signs})))
        assert len(ET.fromstring(found.text).findall(".//m:fing", NS)) == 3  # two fingers and a bowed triplet's figure

    def test_tuplets_carry_their_numbers_inside_the_beam(self) -> None:
        tune, _ = bowed("ABc d6")
        third = Fraction(1, 3)
        notes = [
            replace(n, at=third * i, length=third, tuplet=Tuplet(3, 2, i == 0))
            for i, n in enumerate(tune.bars[0].notes[:3])
        ]
        tune = replace(tune, bars=(replace(tune.bars[0], notes=tuple(notes)),))
        tuplet = tree(tune).find(".//m:beam/m:tuplet", NS)
        assert tuplet is not None
        assert (tuplet.get("num"), tuplet.get("numbase"), len(tuplet)) == ("3", "2", 3)

    def test_a_double_stop_is_a_chord_whose_heads_belong_to_it(self) -> None:
        tune, _ = bowed("A4B4")
        note = replace(tune.bars[0].notes[0], pitches=(Pitch(4, "D"), Pitch(4, "A")))
        found = document(replace(tune, bars=(replace(tune.bars[0], notes=(note, tune.bars[0].notes[1])),)))
        chord = ET.fromstring(found.text).find(".//m:chord", NS)
        assert chord is not None
        assert [found.names[head.get(ID, "")].note for head in chord] == ["b0n1", "b0n1"]

    def test_a_rest_that_is_not_printed_takes_its_room(self) -> None:
        tune, _ = bowed("A4z4")
        hidden = replace(tune.bars[0].notes[1], hidden=True)
        root = tree(replace(tune, bars=(replace(tune.bars[0], notes=(tune.bars[0].notes[0], hidden)),)))
        assert root.find(".//m:space", NS) is not None
        assert root.find(".//m:rest", NS) is None

    def test_a_length_that_no_note_value_shows_is_a_mistake(self) -> None:
        tune, _ = bowed("A4B4")
        odd = replace(tune.bars[0].notes[0], length=Fraction(5, 7))
        with pytest.raises(ValueError, match="5/7"):
            document(replace(tune, bars=(replace(tune.bars[0], notes=(odd,)),)))


class TestStructure:
    def test_repeats_endings_and_lines(self) -> None:
        root = tree(*bowed("|:A8|[1 B8:|[2 c8||d8|]"))
        measures = root.findall(".//m:measure", NS)
        assert [(m.get("left"), m.get("right")) for m in measures] == [
            ("rptstart", "single"), (None, "rptend"), (None, "dbl"), (None, "end"),
        ]  # fmt: skip
        assert [ending.get("n") for ending in root.iterfind(".//m:ending", NS)] == ["1.", "2."]

    def test_an_ending_that_began_on_the_line_before_is_not_numbered_again(self) -> None:
        tune, _ = bowed("A8|[1 B8|c8:|[2 d8||")
        assert [e.get("n") for e in tree(tune, line=Line(2, 4)).iterfind(".//m:ending", NS)] == ["", "2."]

    def test_signs_of_the_order_of_play(self) -> None:
        tune, _ = bowed("!segno!A8|!tocoda!B8|!fine!c8|!D.S. al Coda!d8|!coda!e8")
        root = tree(tune)
        assert [mark.get("func") for mark in root.iterfind(".//m:repeatMark", NS)] == ["segno", "coda"]
        assert ["".join(d.itertext()).strip() for d in root.iterfind(".//m:dir", NS)] == [
            "To \ue048",
            "Fine",
            Jump.DAL_SEGNO_AL_CODA.value,
        ]

    def test_chords_words_tempo_and_part(self) -> None:
        tune, _ = bowed("{A}A4B4")
        chords = (ChordSymbol(Fraction(0), "Bb"), ChordSymbol(Fraction(1), "C#m7b5"))
        words = (Words(Fraction(2), "slowly", above=False),)
        tune = replace(
            tune,
            bars=(replace(tune.bars[0], chords=chords, words=words),),
            tempo=Tempo(Fraction(3, 2), Fraction(225, 2), "Brisk"),
        )
        root = tree(tune)
        assert [(h.text, h.get("startid"), h.get("tstamp")) for h in root.iterfind(".//m:harm", NS)] == [
            ("B♭", "#b0n1", None), ("C♯m7♭5", None, "2"),
        ]  # fmt: skip
        slowly = root.find(".//m:dir", NS)
        assert slowly is not None
        assert (str(slowly.text).rstrip(), slowly.get("place"), slowly.get("startid")) == ("slowly", "below", "#b0n2")
        assert document(tune).tempo == "Brisk (\ue1d5\ue1e7 = 112.5)"
        assert ["".join(r.itertext()) for r in root.iterfind(".//m:reh", NS)] == ["A"]


def test_texts_of_a_file_cannot_break_the_document() -> None:
    tune, _ = bowed("{A}A8")
    nasty = "</harm><note/>&\x00\x0b\"'<"
    bar = replace(
        tune.bars[0], chords=(ChordSymbol(Fraction(0), nasty),), words=(Words(Fraction(0), nasty),), part=nasty
    )
    root = tree(replace(tune, bars=(bar,)))
    assert [harm.text for harm in root.iterfind(".//m:harm", NS)] == ["</harm><note/>& \"'<"]
    assert len(root.findall(".//m:note", NS)) == 1


def test_control_characters_become_spaces() -> None:
    assert clean_text("a\x00b\n\tc\x1bd\ufffe") == "a b c d"


@pytest.mark.parametrize(
    ("text", "shown"),
    [("Bb", "B♭"), ("F#m", "F♯m"), ("Bbm7b5", "B♭m7♭5"), ("Ab/Eb", "A♭/E♭"), ("G7#9", "G7♯9"), ("Abdim", "A♭dim"),
     ("Dsus4", "Dsus4"), ("G(Bb)", "G(B♭)"), ("N.C.", "N.C.")],
)  # fmt: skip
def test_chord_names_have_real_flats_and_sharps(text: str, shown: str) -> None:
    assert chord_text(text) == shown


def test_ending_numbers() -> None:
    assert [ending_text(p) for p in ((1,), (1, 2), (1, 2, 3), (1, 3), (2, 3, 5))] == [
        "1.", "1. 2.", "1.–3.", "1. 3.", "2. 3. 5.",
    ]  # fmt: skip
