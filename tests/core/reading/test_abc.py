"""The ABC reader beyond single fragments: books, headers, bar numbers, what is told, limits, and hostile text."""

from __future__ import annotations

import time
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.bowing import Articulation, Bow, Join, Mark
from core.errors import Problem, UnreadableFileError
from core.reading import Reading, abc, abc_music, read_file
from core.reading.abc import decode, read_abc
from core.tune import Credit, Jump, Key, Meter, Tempo, Tune, note_value

HEADER = "X:1\nT:Probe\nM:4/4\nL:1/8\nK:D\n"
TUNE = HEADER + "DEFG ABcd|efga b4|]\n"


def tune_of(text: str) -> Tune:
    return read_abc(text).lessons[0].tune


def said(text: str) -> list[str]:
    return [str(problem) for problem in read_abc(text).problems]


def numbers_and_starts(music: str, meter: str = "4/4") -> list[tuple[int, Fraction]]:
    tune = tune_of(f"X:1\nT:Probe\nM:{meter}\nL:1/8\nK:D\n{music}")
    return [(bar.number, bar.start * 2) for bar in tune.bars]


class TestDecode:
    def test_utf_8_is_the_default_and_a_byte_order_mark_is_dropped(self) -> None:
        assert decode("\ufeffX:1\nT:Früh".encode()) == "X:1\nT:Früh"

    def test_what_is_not_utf_8_is_latin_1(self) -> None:
        assert decode("T:Früh".encode("latin-1")) == "T:Früh"

    def test_utf_16_with_its_mark_is_read(self) -> None:
        assert decode("X:1\nT:Früh".encode("utf-16")) == "X:1\nT:Früh"

    def test_every_line_ending_becomes_a_newline(self) -> None:
        assert decode(b"X:1\r\nT:A\rK:D\n") == "X:1\nT:A\nK:D\n"


class TestBooks:
    def test_each_tune_is_a_lesson_with_its_number_and_place(self) -> None:
        book = "X:7\nT:One\nK:D\nabc|\n\nX:\nT:Two\nK:G\ndef|\n\nfree text\n\nX:9\nT:Three\nK:A\nefg|\n"
        assert [(lesson.tune.number, lesson.tune.title) for lesson in read_abc(book).lessons] == [
            (7, "One"), (2, "Two"), (9, "Three"),
        ]  # fmt: skip

    def test_a_file_header_holds_for_every_tune(self) -> None:
        book = "M:6/8\nL:1/4\nO:Nowhere\n\nX:1\nT:A\nK:D\nabc|\n\nX:2\nT:B\nM:3/4\nK:D\nabc|\n"
        first, second = (lesson.tune for lesson in read_abc(book).lessons)
        assert (first.bars[0].meter, second.bars[0].meter) == (Meter((6,), 8), Meter((3,), 4))
        assert first.bars[0].notes[0].length == 1
        assert first.credits == second.credits == (Credit("origin", "Nowhere"),)

    def test_a_change_in_one_tune_does_not_reach_the_next(self) -> None:
        book = "X:1\nT:A\nU:T=!turn!\nK:D\nTa|\n\nX:2\nT:B\nK:D\nTa|\n"
        signs = [lesson.bowings[0].signs_on("b0n1").ornaments[0].value for lesson in read_abc(book).lessons]
        assert signs == ["turn", "trill"]

    def test_an_empty_line_ends_a_tune(self) -> None:  # ABC 2.1, 2.2.1
        assert len(tune_of(TUNE + "\nThis is a fine tune.\n").bars) == 2

    def test_music_after_an_empty_line_is_read_on_and_told(self) -> None:
        reading = read_abc(TUNE + "\nDEFG ABcd|]\n")
        assert len(reading.lessons[0].tune.bars) == 3
        assert reading.problems[0] == Problem(8, "An empty line stands inside the tune: the tune is read on after it.")

    def test_a_tune_without_notes_is_left_out_and_told(self) -> None:
        reading = read_abc("X:1\nT:Lost\nK:D\n\n" + TUNE)
        assert [lesson.tune.title for lesson in reading.lessons] == ["Probe"]
        assert reading.problems == (Problem(1, "The tune “Lost” has no notes: it is left out."),)

    def test_free_text_between_begin_and_end_is_no_music(self) -> None:
        assert len(tune_of(HEADER + "%%begintext\nabc|def|\n%%endtext\nDEFG ABcd|\n").bars) == 1


class TestHeader:
    def test_titles_credits_and_dance_are_kept(self) -> None:
        tune = tune_of(
            "X:1\nT:First\nT:Second\nC:Ann Other\nO:Here\nS:Her\nB:Book\nZ:Me\nN:Note\nH:Old\nD:Record\nG:Set\n"
            "A:There\nF:file\nR:Slip  Jig\nK:D\nabc|\nW:words\n"
        )
        assert (tune.title, tune.other_titles, tune.dance) == ("First", ("Second",), "slip jig")
        assert [credit.kind for credit in tune.credits] == [
            "composer", "origin", "source", "book", "transcriber", "notes", "history", "discography", "group", "area",
            "file", "lyrics",
        ]  # fmt: skip

    def test_mnemonics_for_letters_are_resolved(self) -> None:  # ABC 2.1, 8.2
        text = r"X:1" + "\n" + r"T:Sm\`oke na\"ive \'E \cc \aa \/o \ss &eacute; \u00e9 100\%" + "\nK:D\nabc|\n"
        assert tune_of(text).title == "Smòke naïve É ç å ø ß é é 100%"

    def test_a_field_goes_on_after_a_plus(self) -> None:  # ABC 2.1, 3.3
        text = "X:1\nT:A\nH:one\n% a comment\n+:two % and another\n+:three\nK:D\nabc|\n"
        assert tune_of(text).credits == (Credit("history", "one two three"),)

    def test_an_old_history_runs_on_without_a_letter(self) -> None:
        text = "X:1\nT:A\nH:This tune, they say,\nis very old indeed.\nC:Someone\nK:D\nabc|\n"
        assert tune_of(text).credits == (
            Credit("history", "This tune, they say, is very old indeed."), Credit("composer", "Someone"),
        )  # fmt: skip
        assert said(text) == []

    def test_the_tempo_is_the_headers(self) -> None:
        assert tune_of("X:1\nT:A\nQ:1/2=100\nK:D\nabc|").tempo == Tempo(Fraction(2), Fraction(100))
        assert tune_of("X:1\nT:A\nL:1/8\nQ:120\nK:D\nabc|").tempo == Tempo(Fraction(1, 2), Fraction(120))

    def test_escapes_in_the_words_of_a_tempo_are_undone(self) -> None:  # 8.2
        tune = tune_of('X:1\nT:A\nQ:"&quot;Moder&eacute;&quot; 90 \\%" 1/4=100\nK:D\nabc|')
        assert tune.tempo == Tempo(Fraction(1), Fraction(100), '"Moderé" 90 %')

    def test_a_note_that_names_the_bowing_is_its_name_and_no_note(self) -> None:
        lesson = read_abc("X:1\nT:A\nN:Bowing: of the hill farm\nN:Bowing: Long slurs\nN:slow\nK:D\nabc|").lessons[0]
        assert lesson.bowings[0].name == "Long slurs"
        assert lesson.tune.credits == (Credit("notes", "Bowing: of the hill farm"), Credit("notes", "slow"))
        assert tune_of('X:1\nT:A\nQ:"Slowly"\nK:D\nabc|').bars[0].words[0].text == "Slowly"

    def test_a_part_order_needs_its_parts(self) -> None:
        marked = "X:1\nT:A\nP:AAB\nK:D\nP:A\nabc|\nP:B\ndef|\n"
        assert tune_of(marked).part_order == ("A", "A", "B")
        assert [bar.part for bar in tune_of(marked).bars] == ["A", "B"]
        assert tune_of(marked.replace("P:B\n", "")).part_order == ()
        assert said(marked.replace("P:B\n", "")) == [
            "line 3: The part order names B, which no P: in the tune begins: the order is left out."
        ]

    def test_a_missing_key_is_told(self) -> None:
        reading = read_abc("X:1\nT:A\nM:4/4\nabcd abcd|\n")
        assert reading.lessons[0].tune.bars[0].key == Key(0, "none")
        assert reading.problems == (
            Problem(1, "The tune has no K: line: it is read without sharps and flats."),
        )  # fmt: skip

    def test_a_line_that_is_no_field_is_told(self) -> None:
        text = "X:1\nT:A\n3/8=120\nK:D\nabc|"
        assert said(text) == ["line 3: “3/8=120” is not a field such as T:, M: or K:: the line is ignored."]

    def test_a_clef_alone_leaves_the_key(self) -> None:
        assert [bar.key for bar in tune_of(HEADER + "F8|[K:clef=treble]F8|[K:G]F8|").bars] == [Key(2), Key(2), Key(1)]


class TestFragments:
    def test_bare_music_is_a_tune_and_what_was_missing_is_told(self) -> None:
        reading = read_abc("DEFG ABcd|efga b4|]")
        assert [len(bar.notes) for bar in reading.lessons[0].tune.bars] == [8, 5]
        assert reading.problems == (
            Problem(1, "The tune has no X: line: it is read as tune 1."),
            Problem(1, "The tune has no K: line: it is read without sharps and flats."),
        )

    def test_a_tune_that_lacks_only_its_number_is_read(self) -> None:
        reading = read_abc("T:Found\nM:6/8\nK:G\nGAB d2B|")
        assert (reading.lessons[0].tune.title, reading.lessons[0].tune.bars[0].key) == ("Found", Key(1))
        assert [problem.line for problem in reading.problems] == [1]

    def test_a_tune_pasted_with_an_indent_is_read(self) -> None:
        assert tune_of("\n".join("  > " + line for line in TUNE.split("\n"))).title == "Probe"

    @pytest.mark.parametrize("text", ["Hello world", "Dear teacher,\nhere is nothing.", "12345", "{}", "X:1\nT:A\n"])
    def test_what_holds_no_tune_is_refused_with_a_line_and_what_was_expected(self, text: str) -> None:
        with pytest.raises(UnreadableFileError) as error:
            read_abc(text)
        assert error.value.line == 1

    def test_an_empty_text_is_refused(self) -> None:
        with pytest.raises(UnreadableFileError, match=r"^line 1: The text is empty: expected a tune in ABC"):
            read_abc(" \n\n")

    def test_bytes_of_abc_go_to_the_abc_reader(self) -> None:
        assert read_file(b"\xef\xbb\xbf" + TUNE.encode()).lessons[0].tune.title == "Probe"


class TestBarNumbers:
    def test_without_a_pickup_bars_count_from_one(self) -> None:
        assert numbers_and_starts("A8|B8|c8|") == [(1, 0), (2, 0), (3, 0)]

    def test_an_opening_pickup_is_bar_0_and_begins_late_in_its_bar(self) -> None:
        assert numbers_and_starts("AB|c8|d8|") == [(0, 6), (1, 0), (2, 0)]

    def test_a_pickup_after_a_repeat_completes_the_short_bar_before(self) -> None:
        assert numbers_and_starts("AB|c8|d6:|AB|c8|d6:|") == [(0, 6), (1, 0), (2, 0), (2, 6), (3, 0), (4, 0)]

    def test_a_double_bar_inside_a_bar_does_the_same(self) -> None:
        assert numbers_and_starts("A8|B4||c4|d8|") == [(1, 0), (2, 0), (2, 4), (3, 0)]

    def test_a_pickup_after_a_full_bar_has_a_number_of_its_own(self) -> None:
        assert numbers_and_starts("A8|B8:|AB|c8|d8:|") == [(1, 0), (2, 0), (3, 6), (4, 0), (5, 0)]

    def test_endings_count_on(self) -> None:
        assert numbers_and_starts("|:A8|1B8:|2c8|d8|]") == [(1, 0), (2, 0), (3, 0), (4, 0)]

    def test_a_second_ending_is_no_completion_of_the_first(self) -> None:
        assert numbers_and_starts("A4|:B8|1c4:|2d4|:e4|f8|") == [(0, 4), (1, 0), (2, 0), (3, 0), (3, 4), (4, 0)]

    def test_endings_inside_a_bar_continue_it(self) -> None:
        assert numbers_and_starts("|:A8|B4[1c4:|[2d4|e8|]") == [(1, 0), (2, 0), (2, 4), (2, 4), (3, 0)]
        assert numbers_and_starts("A2|:A8|B4[1c2:|[2d2|]") == [(0, 6), (1, 0), (2, 0), (2, 4), (2, 4)]

    def test_in_free_metre_every_bar_is_full(self) -> None:
        assert numbers_and_starts("A|B8|c3:|d|", "none") == [(1, 0), (2, 0), (3, 0), (4, 0)]

    def test_a_single_short_bar_is_no_pickup(self) -> None:
        assert numbers_and_starts("A4|") == [(1, 0)]

    def test_a_change_of_metre_is_followed(self) -> None:
        tune = tune_of(HEADER + "A8|[M:3/4]B6|c6|")
        assert [str(bar.meter) for bar in tune.bars] == ["4/4", "3/4", "3/4"]
        assert said(HEADER + "A8|[M:3/4]B6|c6|") == []


class TestWhatIsTold:
    def test_pickups_and_their_counterparts_are_not_told(self) -> None:
        assert said(HEADER + "AB|c8|d6:|AB|c8|d6:|") == []
        assert said(HEADER + "AB|c8|1d6:|2e6||AB|c8|d6|]") == []

    def test_short_and_long_bars_are_told_with_line_and_number(self) -> None:
        assert said(HEADER + "A8|\nB7|c8|\nd9|e8|") == [
            "line 7: Bar 2 is shorter than 4/4: it holds 7/8 of a whole note, not 1; kept as it stands.",
            "line 8: Bar 4 is longer than 4/4: it holds 9/8 of a whole note, not 1; kept as it stands.",
        ]

    def test_a_short_last_bar_without_a_pickup_is_told(self) -> None:
        assert said(HEADER + "A8|B6:|") == [
            "line 6: Bar 2 is shorter than 4/4: it holds 3/4 of a whole note, not 1; kept as it stands."
        ]

    def test_many_such_bars_are_told_in_one_sentence(self) -> None:
        assert said(HEADER + "A6|" * 12 + "A8|") == [
            "line 6: 11 of 13 bars do not fill the metre 4/4, bar 1 the first: kept."
        ]

    @pytest.mark.parametrize(
        ("music", "sentence"),
        [
            ("(AB cdef gabc'|", "A slur begins here and never ends: it is left out."),
            ("ABcd efga)|", "A slur ends here that never began: it is left out."),
            ("(ABz2) efga|", "A slur runs over a rest: it is read as ending before the rest."),
            ("(A)Bcd efga|", "A slur holds one note only: it is left out."),
            ("(AB(c)d) efga|", "A slur ends on the note where the next begins: both are read as one stroke."),
            ("A-Bcd efga|", "A tie joins notes that are not the same: it and any like it are read as slurs."),
            ("uvABcd efga|", "An up-bow and a down-bow stand on one note: the first is kept."),
            ("A-uAcd efga|", "A bow mark on the second note of a tie is left out: nothing is struck there."),
            ("uzBcd efga|", "A bow mark on a rest is read on the note after it."),
            ("!whoops!ABcd efga|", "The decoration !whoops! is not known: it is ignored."),
            ("!p!ABcd !f!efga|", "Dynamics such as !p! are left out."),
            ("WABcd efga|", "The letter W stands for nothing here: it is ignored."),
            ('"Slow"ABcd efga|', "“Slow” is no chord symbol: it is read as words above the staff."),
            ("ABcd & efga|", "A second voice laid over a bar with & is left out."),
            ("A0Bcd efga|", "“0” is no length of a note: read as the unit note length."),
            ("A99999Bcd efga|", "“99999” is no length of a note: read as the unit note length."),
            ("C,,,,,,Bcd efga|", "A note beyond all instruments is moved to the nearest octave that can be shown."),
            ("A{g}Bcd efga|{g}", "Grace notes after the last note belong to none: they are left out."),
            ('ABcd efga"|', "A quotation mark has no partner on its line: it is ignored."),
            ("[ABcd efga|", "“[” has no partner here: it is ignored."),
            ('">"ABcd efga|', "“>” in quotation marks is read as an accent."),
            ('"tr"ABcd efga|', "“tr” in quotation marks is read as the sign."),
            ("{g}zBcd efga|", "Grace notes before a rest are left out."),
            ("TzBcd efga|", "A mark on a rest is left out."),
            ("ABcd efgaH|", "A fermata on a bar line is left out."),
            (
                "ABcd efga|[Q:1/4=90]B8|[Q:1/4=80]c8|",
                "The tempo changes inside the tune: the one at the start is kept.",
            ),
            ("ABcd [m:n=a]efga|", "Macros (m:) are left out."),
            ("ABcd efg[M:3/4]a|", "The metre changes inside a bar: it is read as changing at the next bar line."),
            ("ABcd efg[K:G]a|", "The key changes inside a bar: the new signature is shown from the next bar line on."),
            ("[0ABcd efga|", "“0” is no list of passes for an ending: it is ignored."),
            ("(zBcd) efga|", "A slur begins on a rest: it is read from the note after it."),
            ("()ABcd efga|", "A slur holds no notes: it is left out."),
            ("ABcd efga|(", "A slur begins after the last note: it is left out."),
            ("ABcd efga-|", "A tie leads from the last note to nothing: it is left out."),
            ("-ABcd efga|", "A tie has no note before it: it is left out."),
            (":|ABcd efga|", "A repeat ends before the first note: it is ignored."),
            ("(1ABcd efga|", "“(1” is no tuplet: it is ignored."),
            ("(3A(3Bcd ef2|", "A tuplet begins before the last one is full: the earlier one ends there."),
            ("[.]ABcd efga|", "“[.]” holds no notes: it is ignored."),
            ("[Az]Bcd efga|", "“[Az]” holds more than notes: the rest is ignored."),
            ("[" + "A" * 17 + "]Bcd efga|", "A chord of more than 16 notes is cut to its first ones."),
            (
                "{" + "a" * 65 + "}ABcd efga|",
                "More than 64 grace notes stand before one note: the others are left out.",
            ),
            ("A2 Z2 B4|", "A rest of whole bars stands inside a bar: it is read as a short rest."),
            ("AB3cd ef7|[U:x=1]", "“U:x=1” is no user symbol such as T = !trill!: it is ignored."),
            ("A/11Bcd efga|", "No note values show a length of 1/88 of a whole note: it is rounded."),
        ],
    )
    def test_each_repair_is_told_once_with_its_line(self, music: str, sentence: str) -> None:
        assert f"line 6: {sentence}" in said(HEADER + music)
        assert said(HEADER + music).count(f"line 6: {sentence}") == 1

    @pytest.mark.parametrize(
        ("field", "sentence"),
        [
            ("X:one", "“X:one” is no tune number: the tune's place in the file is taken."),
            ("M:7", "The metre “7” is not one of 6/8, C, C|, (2+3+2)/8 or none: read as free metre."),
            ("M:0/4", "The metre “0/4” is not one of 6/8, C, C|, (2+3+2)/8 or none: read as free metre."),
            ("L:2/3", "The unit note length “2/3” is not one of 1, 1/2, 1/4 ... 1/512: the field is ignored."),
            ("Q:fast", "The tempo “fast” has no beat and number such as 1/4=120: it is left out."),
            ("Q:1/4=0", "The tempo “1/4=0” has no beat and number such as 1/4=120: it is left out."),
            ("P:A(B", "The part order “A(B” is read as AB."),
            ("P:A999", "The part order plays more than 200 parts: it is ignored."),
            ("U:T=?", "“U:T=?” is no user symbol such as T = !trill!: it is ignored."),
            ("m:n = a", "Macros (m:) are left out."),
            ("K:HP", "K:HP hides the sharps of the pipes' scale: F and C sharp are shown as the key signature."),
            ("K:G bass", "The clef “bass” is left out: the tune is shown in the treble clef."),
            ("K:G octave=1", "“octave=1” in the key field is left out: the tune is shown at the pitch written."),
            ("K:G wild", "“wild” in the key “G wild” is no mode: it is ignored."),
            ("K:Hello", "“Hello” is no key: read as no sharps and no flats."),
            ("K:G#", "A key of 8 sharps or flats cannot be shown: the doubled ones stand beside the signature."),
        ],
    )
    def test_each_field_that_cannot_be_read_is_told(self, field: str, sentence: str) -> None:
        fields = {"X": "X:1", "T": "T:Probe", "K": "K:G"}
        fields = {letter: fields.get(letter, "") for letter in ("X", "T", field[0], "K")} | {field[0]: field}
        text = "\n".join(fields.values()) + "\nP:A\nABcd|\nP:B\nABcd|"
        assert [problem.text for problem in read_abc(text).problems] == [sentence]

    def test_prose_among_the_music_is_no_music(self) -> None:
        reading = read_abc(TUNE + "this was never music, said the editor\nABcd efga|")
        assert [len(bar.notes) for bar in reading.lessons[0].tune.bars] == [8, 5, 8]
        assert reading.problems == (
            Problem(7, "“this was never music, said the editor” is not music: the line is ignored."),
        )  # fmt: skip

    def test_more_than_seven_sharps_keep_their_pitches(self) -> None:
        assert tune_of("X:1\nT:A\nK:G#\nF|").bars[0].notes[0].pitches[0].alter == 2
        assert tune_of("X:1\nT:A\nK:Fb\nB|").bars[0].notes[0].pitches[0].alter == -2

    def test_what_is_told_once_is_told_once_a_tune(self) -> None:
        assert len(said(HEADER + "A-Bcd efga|A-Bcd efga|WABcd WABcd|")) == 2

    def test_problems_come_in_the_order_of_the_tunes(self) -> None:
        lines = [problem.line for problem in read_abc(TUNE + "\n" + TUNE.replace("|]", ")|]")).problems]
        assert lines == [13]

    def test_codes_of_a_mail_program_are_undone(self) -> None:
        tune = tune_of(HEADER + "=3DF2G2 A4|=20\nB8|=\nc8|")
        assert [str(note.pitches[0]) for note in tune.sequence] == ["F4", "G4", "A4", "B4", "C#5"]


class TestBowing:
    def test_marks_slurs_and_hooks_are_the_bowing_as_written(self) -> None:
        (bowing,) = read_abc(HEADER + "u(AB) v.c.d (.e.f) (g-g)|").lessons[0].bowings
        assert bowing.name == "As written"
        assert bowing.marks == {"b0n1": Mark(Bow.UP), "b0n3": Mark(Bow.DOWN)}
        assert bowing.joins == {"b0n2": Join.SLUR, "b0n6": Join.HOOK}
        assert bowing.signs_on("b0n3").articulations == (Articulation.STACCATO,)
        assert not bowing.signs_on("b0n5")

    def test_a_hook_over_a_held_note_is_one(self) -> None:
        (bowing,) = read_abc(HEADER + "(.A-A.B) c5|").lessons[0].bowings
        assert bowing.joins == {"b0n3": Join.HOOK}

    def test_a_mark_before_a_bar_line_is_read_on_the_next_note(self) -> None:
        (bowing,) = read_abc(HEADER + "A8u|B8|").lessons[0].bowings
        assert bowing.marks == {"b1n1": Mark(Bow.UP)}

    def test_words_that_are_signs_are_read_as_signs(self) -> None:
        tune = tune_of(HEADER + '"Segno"A8|B8"^Fine"|c8 "D.S. al Fine"|]')
        assert (tune.bars[0].segno, tune.bars[1].fine, tune.bars[2].jump) == (True, True, Jump.DAL_SEGNO_AL_FINE)
        assert not any(bar.words for bar in tune.bars)

    def test_chords_stand_where_their_note_is(self) -> None:
        bar = tune_of(HEADER + '"D"A2 "G"B2 (3"A7"cde f2|').bars[0]
        assert [(chord.at, chord.text) for chord in bar.chords] == [(0, "D"), (1, "G"), (2, "A7")]


class TestLengths:
    def test_triplets_written_as_fractions_are_triplets(self) -> None:
        notes = tune_of(HEADER + "A2/3B2/3c2/3 d2/3e2/3f2/3 g4|").bars[0].notes
        assert [note.tuplet.starts for note in notes if note.tuplet] == [True, False, False, True, False, False]
        assert sum(note.length for note in notes) == 4

    def test_a_bars_rest_of_nine_eighths_is_shown_by_two(self) -> None:
        notes = tune_of("X:1\nT:A\nM:9/8\nK:D\nZ|A9|").bars[0].notes
        assert [note.length for note in notes] == [4, Fraction(1, 2)]
        assert not any(note.held for note in notes)

    @pytest.mark.parametrize("length", ["5", "7/3", "9", "11", "13/4", "2/3", "4/9", "17/8", "31", "/9", "1/999"])
    def test_every_note_has_a_value(self, length: str) -> None:
        tune = tune_of(f"X:1\nT:A\nL:1/8\nK:D\nA{length} (3B{length}cd|")
        assert all(note_value(note.length, note.tuplet) is not None for note in tune.sequence)


class TestLimits:
    def test_a_bar_of_very_many_notes_is_cut(self) -> None:
        reading = read_abc("X:1\nT:A\nK:D\n" + "A" * 300 + "|")
        assert [len(bar.notes) for bar in reading.lessons[0].tune.bars] == [256, 44]
        assert reading.problems == (Problem(4, "A bar holds more than 256 notes: it is cut there."),)

    def test_bars_beyond_the_limit_are_left_out(self) -> None:
        reading = read_abc("X:1\nT:A\nK:D\n" + "A|" * 2100)
        assert len(reading.lessons[0].tune.bars) == abc_music.MAX_BARS
        assert reading.problems == (Problem(4, "The tune has more than 2000 bars: what follows is left out."),)

    def test_a_rest_of_many_bars_stops_at_the_limit(self) -> None:
        assert len(tune_of("X:1\nT:A\nM:4/4\nK:D\nA8|Z9999|").bars) == abc_music.MAX_BARS

    def test_tunes_beyond_the_limit_are_left_out(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(abc, "MAX_TUNES", 2)
        reading = read_abc((TUNE + "\n") * 4)
        assert len(reading.lessons) == 2
        assert reading.problems[-1].text == "The file has more than 2 tunes: the rest is left out."

    def test_a_text_beyond_the_limit_is_refused(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(abc, "MAX_TEXT", 20)
        with pytest.raises(UnreadableFileError, match="is longer than"):
            read_abc(TUNE)

    def test_a_tune_tells_no_more_than_helps(self) -> None:
        assert len(said(HEADER + "A)\n" * 500)) < 70


HOSTILE = [
    "(" * 30_000, ")" * 30_000, "[" * 30_000, "]" * 30_000, "{" * 30_000, '"' * 30_001, "!" * 30_001, "+" * 30_001,
    "[K:" * 20_000, '["' * 30_000, "(3" * 30_000, "a>" * 30_000, "a-" * 30_000, "|:" * 30_000, "[1" * 30_000,
    "u|" * 30_000, "uz" * 30_000, "(a" * 15_000, "{a" * 30_000, '"C"' * 20_000, "Sa|" * 20_000, "&" * 30_000,
    "a" + "'" * 30_000, "a" + "/" * 30_000, "a" + "9" * 30_000, "Z" + "9" * 30_000, "(" + "9" * 30_000,
    "[" + "a" * 30_000 + "]", "{" + "a" * 30_000 + "}a", "\\" * 30_000, ":" * 30_000, "|" * 30_000, "^" * 30_000,
    "(a" * 10_000 + "b)" * 10_000, "\n+:x" * 20_000, "\nP:((((A9)9)9)9)9", "\nH:x" + "\ny y" * 20_000, "%" * 30_000,
    "\nM:" + "9" * 30_000 + "/8\na", "\nL:1/" + "9" * 30_000, "\nQ:1/4=" + "9" * 30_000, "\nK:" + "^f" * 30_000 + "\na",
    "a" + "\n\na|b" * 10_000, "&eacute;" * 10_000, "\x00" * 30_000, "\ud800" * 1000, "́" * 30_000, "٣" * 30_000,
]  # fmt: skip


@pytest.mark.parametrize("nasty", HOSTILE, ids=[repr(text[:8]) for text in HOSTILE])
def test_hostile_text_is_read_or_refused_in_little_time(nasty: str) -> None:
    for text in (HEADER + nasty, HEADER + "abcd " + nasty + " efga|", "X:1\nT:" + nasty + "\nK:D\nabc|", nasty):
        started = time.process_time()
        read_or_refuse(text)
        assert time.process_time() - started < 5


def read_or_refuse(text: str) -> Reading | None:
    try:
        return read_abc(text)
    except UnreadableFileError:
        return None


def assert_whole(reading: Reading) -> None:
    """What ``core.tune`` and ``core.bowing`` promise of any tune and bowing."""
    for lesson in reading.lessons:
        tune, (bowing,) = lesson.tune, lesson.bowings
        assert tune.bars
        assert len(tune.places) == len(tune.sequence)
        for bar in tune.bars:
            assert bar.notes
            assert -7 <= bar.key.fifths <= 7
            place = Fraction(0)
            for note in bar.notes:
                assert note.at == place
                assert note.length > 0
                assert note_value(note.length, note.tuplet) is not None
                place += note.length
        for note_id in bowing.joins:
            before = tune.before(note_id)
            assert before is not None
            assert not before.is_rest
            assert not tune.note(note_id).is_rest
            assert not tune.note(note_id).held
        for note_id in bowing.marks:
            assert not tune.note(note_id).is_rest
            assert not tune.note(note_id).held
        assert all(bowing.signs.values())
        for note in tune.sequence:
            if note.held:
                before = tune.before(note.id)
                assert before is not None
                assert before.pitches == note.pitches


PIECES = (
    "A", "B2", "c/", "d3/2", "^f", "_b", "=c'", "z", "x2", "Z2", "|", "||", "|:", ":|", "::", "|]", "[|", "|1", ":|2",
    "[1", "(", ")", "-", "(3", "(3:2:4", ">", "<<", "{g}", "{/ga}", "[ce]", "[c-e]-", '"Am"', '"^x"', '"4"', "u", "v",
    ".", "~", "T", "!fermata!", "!D.C.!", "!segno!", "S", "O", "y", " ", "\n", "[K:G]", "[M:3/4]", "[L:1/16]", "[V:2]",
    "\nP:A\n", "\nw:la\n", "&", "$", "\\\n", "%", "A5", "A2/3", "!", "+", "[", "]", "{", "}", '"', "\nK:Am\n", "\n\n",
)  # fmt: skip


@settings(max_examples=150, deadline=None)
@given(st.lists(st.sampled_from(PIECES), max_size=60))
def test_any_row_of_tokens_gives_a_whole_tune(pieces: list[str]) -> None:
    reading = read_or_refuse(HEADER + "".join(pieces))
    if reading is not None:
        assert_whole(reading)


@settings(max_examples=80, deadline=None)
@given(st.text(max_size=200))
def test_any_text_is_read_or_refused(text: str) -> None:
    for whole in (text, HEADER + text, f"X:1\nT:{text}\nM:{text}\nQ:{text}\nP:{text}\nK:{text}\nabc|{text}"):
        reading = read_or_refuse(whole)
        if reading is not None:
            assert_whole(reading)


@settings(max_examples=80, deadline=None)
@given(st.binary(max_size=200))
def test_any_bytes_decode(data: bytes) -> None:
    read_or_refuse(decode(data))
    read_or_refuse(decode(TUNE.encode() + data))


@settings(max_examples=80, deadline=None)
@given(st.integers(0, len(TUNE)), st.integers(0, 6), st.text(max_size=6))
def test_a_damaged_tune_is_read_or_refused(place: int, lost: int, put: str) -> None:
    reading = read_or_refuse(TUNE[:place] + put + TUNE[place + lost :])
    if reading is not None:
        assert_whole(reading)
