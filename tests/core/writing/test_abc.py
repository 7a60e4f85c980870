"""ABC as a careful typist writes it, construct by construct (ABC 2.1, December 2011; the section beside each row)."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from immutabledict import immutabledict

from core.bowing import Articulation, Bow, Bowing, Join, Mark, Ornament, Signs
from core.engraving.bow_signs import MarkDensity
from core.lesson import AS_WRITTEN, Lesson
from core.reading.abc import read_abc
from core.strokes import work_out
from core.tune import Bar, BarLine, Credit, Key, Meter, Note, Pitch, Tempo, Tune, Words
from core.writing.abc import write_abc
from tests.core.builders import bowed

HEADER = "X:1\nT:Probe\nM:4/4\nL:1/8\n"


def written(text: str, density: MarkDensity | None = None) -> str:
    """What is written of an ABC text once it is read, without the first line and what the header above says."""
    return body(write_abc(read_abc(text).lessons, density))


def body(text: str) -> str:
    """The music: all lines behind the first ``K:``."""
    return text[text.index("\nK:") :].split("\n", 2)[2].rstrip("\n")


# Each is read and must be written again letter by letter.
MUSIC = [
    ("4.1 octaves", "C,8|C8|c8|c'8|\nC,,8|c''8|]"),
    ("4.2 accidentals", "^C2 _D2 ^^F2 __G2|]"),
    ("4.2, 11.3 an accidental holds for all octaves to the end of the bar", "^F2 F2 f2 =F2|F8|]"),
    ("4.2 an accidental that nobody needs", "=F2 F2 =F2 F2|]"),
    ("4.3 lengths", "A2 A4 A2|A3B A6|ABcd efga|A/B/c/d/ e/4f/4g/4a/4b c4|ABcd efga|]"),
    ("4.4 broken rhythm within the beat", "A>B c<d A>>B c<<d|A>B cd A3B|]"),
    ("4.4 broken rhythm under slurs and with marks", "(uA>B) (c<d) A>(B c2)|(ve>f) g2 z4|]"),
    ("4.4 no broken rhythm across the beat", "AB3/2 c/d e4|ABcd efga|]"),
    ("4.5 rests, printed and hidden", "z4 x4|zA z2 A4|]"),
    ("4.7 beams by the metre", "ABcd efga|A2 Bc d2 ef|A3B c2 dB|A/B/c/d/ ef g4|]"),
    ("4.8 bar lines", "A8|B8||\nc8|]"),
    ("4.8 repeats", "|:A8|B8:|\n|:c8|d8:|"),
    ("4.8 played three times", "|::A8|B8::|"),
    ("4.9 endings", "|:A8|B8|1 c8:|2 d8|]"),
    ("4.10 endings of several passes", "|:A8|1,3 B8:|2 c8:|4 d8|]"),
    ("4.10 endings of passes in a row", "|:A8|1-3 B8:|4 c8|]"),
    ("4.9 an ending after a double bar line", "|:A8|1 B8:|2 c8||\nd8|e8|]"),
    ("4.11 ties", "A4 A4-|A4 [Ac]4-|[Ac]8|]"),
    ("4.11 a tie keeps its accidental over the bar line", "^F8-|F4 F4|]"),
    ("4.11 slurs", "(ABcd) e(fga)|A(Bc|d)efg a4|(AB-|B2) c2 d4|]"),
    ("4.11 slurs side by side", "(A2 B2) (c2 d2)|(A>B) (c>d) e4|]"),
    ("4.12 grace notes", "{g}A2 {/g}A2 {gdG}A2 {[eg]}A2|({g}AB) {c2}A2 {/a}{b}c4|]"),
    ("4.13 tuplets", "(3ABc d2 (3(ABc) d2|(3:2:2A2B c6|(5:4ABcde f4|]"),
    ("4.14 ornaments", "~A2 TA2 MA2 PA2|!turn!A2 !invertedturn!A2 !slide!A2 !cut!A2|]"),
    ("4.14 articulation", ".A2 LA2 HA2 !tenuto!A2|!wedge!A2 !snap!A2 !open!A2 !breath!A2|]"),
    ("4.14 more signs", "!marcato!A2 !spiccato!A2 !harmonic!A4|!stress!A4 !unstress!A4|Hz8|]"),
    ("4.14 fingers and bows", "!4!uA2 v~A2 !0!.A4|]"),
    ("4.14 jumps", "!segno!A8 !dacoda!|B8 !D.S.!|\n!coda!c8|]"),
    ("4.14 more jumps", "A8 !fine!|B8 !D.C.alfine!|]"),
    ("4.17 double stops", "[Ac]2 [DF]2 (u[Ac]2 [DF]2)|[D^F]4 F4|]"),
    ("4.18 chord symbols", '"Am7"A2 B2 "G/B"c4|"G(Em)"(3ABc "D"(AB c2) d2|]'),
    ("4.19 words", '"^slowly"A4 "_fast"B4|"^2"A4 "^the &quot;turn&quot;"A4|]'.replace('"^2"', '"^\\u0032"')),
    ("4.14, 4.11 hooked notes", "(.A.B.c.d) (e.f.g)a|(.A2 .B2) (c2 d2)|]"),
    ("3.1.9 parts", "P:A\n|:A8|B8:|\nP:Trio\n|:c8|d8:|"),
    ("3.1.14 a key inside", "A8|B8||\nK:Gm\nA8|B8|[K:D =c]c8|]"),
    ("3.1.6 a metre inside", "A8|B8||\nM:6/8\nA2B c2d|[M:C|]A4 B4|[M:none]A16|]"),
]  # fmt: skip


@pytest.mark.parametrize("music", [row[1] for row in MUSIC], ids=[row[0] for row in MUSIC])
def test_music_in_good_style_is_written_again_letter_by_letter(music: str) -> None:
    assert written(f"{HEADER}K:C\n{music}\n") == music


RESTYLED = [
    ("a repeat inside a line", "A2|B6:|B2|c8|]", "A2|B6:|\nB2|c8|]"),
    ("a pick-up before a repeat", "A|:B8|c8|d8|e7:|", "A|:B8|c8|d8|e7:|"),
    ("a part after its pick-up", "A2|\nP:A\n|:B8|c8:|", "A2|:[P:A]B8|c8:|"),
    ("no more than four bars a line", "A8|B8|c8|d8|e8|f8|g8|a8|]", "A8|B8|c8|d8|\ne8|f8|g8|a8|]"),
    ("spaces by the beat", "A B c d e f g a|]", "ABcd efga|]"),
    ("dotted notes by the beat", "A>Bc>d e>fg>a|]", "A>B c>d e>f g>a|]"),
    ("a bow mark on a rest stands on its note", "uzA z6|]", "zuA z6|]"),
    ("rests of several bars", "Z2|]", "z8|z8|]"),
    ("an accidental said twice in one bar", "^F ^F z6|]", "^F^F z6|]"),
]  # fmt: skip


@pytest.mark.parametrize(("music", "good"), [row[1:] for row in RESTYLED], ids=[row[0] for row in RESTYLED])
def test_other_music_is_written_in_that_style(music: str, good: str) -> None:
    assert written(f"{HEADER}K:C\n{music}\n") == good


@pytest.mark.parametrize(
    ("meter", "music"),
    [
        ("3/4", "A2 B2 c2|A3B c2|AB cd ef|A6|]"),
        ("6/8", "ABc def|A2B c2d|A3 B3|A>Bc d3|]"),
        ("9/8", "ABc def gab|A2B c2d e3|]"),
        ("2/4", "ABcd|A2 Bc|A4|]"),
        ("C|", "ABcd efga|d2BA G2FG|]"),
        ("(2+3+2)/8", "AB cde fg|A2 B3 c2|]"),
    ],
)  # fmt: skip
def test_notes_stand_together_by_the_metre(meter: str, music: str) -> None:
    assert written(f"X:1\nT:Probe\nM:{meter}\nL:1/8\nK:C\n{music}\n") == music


# ----------------------------------------------------------------------------------------------------- header

FULL_HEADER = """\
%abc-2.1
X:7
T:The Kettle Frost
T:Long Lane Home
R:reel
C:Merrin Quell
O:Quillandale
S:from the hill farm
B:The Red Book
Z:Jory Pellmar
N:Lightly
H:Played at the thaw.
M:C|
L:1/8
Q:"Not too fast" 1/2=96
P:AAB
K:Amix
"""


def test_a_header_is_written_again_letter_by_letter() -> None:
    text = FULL_HEADER + "P:A\nA8|B8||\nP:B\nc8|d8|]\n"
    assert write_abc(read_abc(text).lessons) == text


@pytest.mark.parametrize(
    ("key", "text"),
    [
        (Key(0), "C"), (Key(-2, "minor"), "Gm"), (Key(2, "dorian"), "Edor"), (Key(-7, "lydian"), "Fblyd"),
        (Key(7, "locrian"), "B#loc"), (Key(0, "ionian"), "Cion"), (Key(0, "aeolian"), "Aaeo"),
        (Key(-2, "phrygian", (("F", 1),)), "Dphr ^f"), (Key(0, "none"), "none"), (Key(2, "none"), "D exp ^f ^c"),
        (Key(-1, "none", (("F", 1),)), "F exp _b ^f"), (Key(1, "none", (("F", 0),)), "none"),
    ],
)  # fmt: skip
def test_keys_are_written_as_3_1_14_says(key: Key, text: str) -> None:
    tune, bowing = bowed("A8|]")
    shown = write_abc([Lesson(replace(tune, bars=(replace(tune.bars[0], key=key),)), (bowing,))])
    assert f"\nK:{text}\n" in shown
    assert read_abc(shown).lessons[0].tune.bars[0].key.alters() == key.alters()


@pytest.mark.parametrize(
    ("tempo", "text"),
    [
        (Tempo(Fraction(3, 2), Fraction(110)), "3/8=110"),
        (Tempo(Fraction(5, 2), Fraction(90)), "1/2 1/8=90"),  # 3.1.8: no note value shows the beat
        (Tempo(Fraction(1), Fraction(225, 2), 'Say "ah"'), '"Say &quot;ah&quot;" 1/4=112.5'),
    ],
)
def test_tempos_are_written_as_3_1_8_says(tempo: Tempo, text: str) -> None:
    tune, bowing = bowed("A8|]")
    shown = write_abc([Lesson(replace(tune, tempo=tempo), (bowing,))])
    assert f"\nQ:{text}\n" in shown
    assert read_abc(shown).lessons[0].tune.tempo == tempo


@pytest.mark.parametrize(
    ("title", "line"),
    [
        ("100 % slurred", "T:100 \\% slurred"),  # 8.2
        ("Frost & Sluice", "T:Frost & Sluice"),
        ("&eacute; as typed", "T:\\&eacute; as typed"),
        ("back\\slash", "T:back\\\\slash"),
        ("two\nlines", "T:two lines"),
        ("E=20 and E=3D", "T:E\\u003d20 and E\\u003d3D"),
        ("Nørre 🎻", "T:Nørre 🎻"),
        ("", "T:"),
    ],
)
def test_texts_are_escaped_so_that_they_come_back(title: str, line: str) -> None:
    tune, bowing = bowed("A8|]")
    shown = write_abc([Lesson(replace(tune, title=title), (bowing,))])
    assert line in shown.split("\n")
    assert read_abc(shown).lessons[0].tune.title == title.replace("\n", " ")


def test_a_credit_that_begins_like_a_bar_line_is_still_a_credit() -> None:
    tune, bowing = bowed("A8|]")
    credit = Credit("composer", "|: and :|")
    assert read_abc(write_abc([Lesson(replace(tune, credits=(credit,)), (bowing,))])).lessons[0].tune.credits == (
        credit,
    )


def test_a_credit_without_a_letter_of_its_own_is_a_note() -> None:
    tune, bowing = bowed("A8|]")
    lesson = Lesson(replace(tune, credits=(Credit("arranger", "Orla Fenn"),)), (bowing,))
    assert "\nN:Arranger: Orla Fenn\n" in write_abc([lesson])


@pytest.mark.parametrize(
    ("music", "unit"),
    [
        ("A2B2c2d2|]", "1/8"), ("A/B/c/d/ A/B/c/d/ A/B/c/d/ e2|]", "1/16"), ("A8-|A4 B4|]", "1/8"),
        ("A>B c>d e2 a2|]", "1/8"),
    ],
)  # fmt: skip
def test_the_unit_note_length_saves_figures(music: str, unit: str) -> None:
    assert f"\nL:{unit}\n" in write_abc(read_abc(f"{HEADER}K:C\n{music}\n").lessons)


# ---------------------------------------------------------------------------------------------------- bowings


def shown(tune: Tune, bowing: Bowing, density: MarkDensity | None = None) -> str:
    return body(write_abc([Lesson(tune, (bowing,))], density))


def test_each_bowing_is_a_tune_with_the_bowing_named() -> None:
    tune, bowing = bowed("A4 (Bc)d2|]")
    lesson = Lesson(tune, (replace(bowing, name=AS_WRITTEN), replace(bowing, name="Long slurs")))
    text = write_abc([lesson, lesson])
    assert [line for line in text.split("\n") if line[:2] in ("X:", "N:")] == [
        "X:1", "X:2", "N:Bowing: Long slurs", "X:3", "X:4", "N:Bowing: Long slurs",
    ]  # fmt: skip
    again = read_abc(text)
    assert [found.bowings[0].name for found in again.lessons] == [AS_WRITTEN, "Long slurs"] * 2
    assert all(found.tune.credits == () for found in again.lessons)


def test_a_note_about_bowing_that_is_no_name_stays_a_note() -> None:
    tune, bowing = bowed("A8|]")
    lesson = Lesson(replace(tune, credits=(Credit("notes", "Bowing: his own"),)), (replace(bowing, name=AS_WRITTEN),))
    again = read_abc(write_abc([lesson])).lessons[0]
    assert (again.tune.credits, again.bowings[0].name) == (lesson.tune.credits, AS_WRITTEN)


def test_fixed_bows_alone_are_marked() -> None:
    assert shown(*bowed("vA2 B2 uc2 d2|e8|]")) == "vA2 B2 uc2 d2|e8|]"


@pytest.mark.parametrize(
    ("density", "music"),
    [
        (MarkDensity.EVERY, "vA2 (uBc) ve4|uc4 vd4|]"),
        (MarkDensity.BARS, "vA2 (Bc) e4|uc4 d4|]"),
        (MarkDensity.NEEDED, "vA2 (Bc) e4|c4 d4|]"),
    ],
)
def test_for_other_programs_strokes_are_marked_as_on_a_sheet(density: MarkDensity, music: str) -> None:
    assert shown(*bowed("A2 (Bc) e4|c4 d4|]"), density) == music


def test_a_stroke_that_turns_with_the_passes_has_no_mark_for_other_programs() -> None:
    tune, bowing = bowed("|:A2 B2 c4:|")
    assert shown(tune, bowing, MarkDensity.EVERY) == "|:A2 B2 c4:|"


def test_a_retake_is_written_as_the_bow_that_it_takes() -> None:
    assert shown(*bowed("A4 B4|rc4 d4|]")) == "A4 B4|uc4 d4|]"


def test_a_retake_in_the_opening_turns_no_stroke_round() -> None:
    tune, bowing = bowed("A2 rB2|c4 d4|e8|]")
    again = read_abc(write_abc([Lesson(tune, (bowing,))])).lessons[0]
    assert work_out(again.tune, again.bowings[0]).bows == work_out(tune, bowing).bows


def test_runs_of_hooks_that_a_slur_joins_have_dots_and_lines_in_turn() -> None:
    tune, bowing = bowed("(A2=B2c2=d2)|]")
    assert shown(tune, bowing) == "(.A2 .B2 !tenuto!c2 !tenuto!d2)|]"
    assert read_abc(write_abc([Lesson(tune, (bowing,))])).lessons[0].bowings[0].joins == bowing.joins


def test_a_hooked_note_keeps_a_dot_of_its_own() -> None:
    tune, bowing = bowed("A4=B4|]")
    signs = immutabledict({"b0n2": Signs(articulations=(Articulation.STACCATO,))})
    bowing = replace(bowing, signs=signs)
    again = read_abc(write_abc([Lesson(tune, (bowing,))])).lessons[0].bowings[0]
    assert (again.joins, again.signs) == (immutabledict({"b0n2": Join.HOOK}), signs)


def test_a_mark_for_one_pass_and_a_bowed_triplet_are_left_out() -> None:
    tune, bowing = bowed("|:A4 B4:|")
    bowing = replace(
        bowing,
        marks=immutabledict({"b0n2": Mark(Bow.UP, 2)}),
        signs=immutabledict({"b0n1": Signs(ornaments=(Ornament.BOWED_TRIPLET,))}),
    )
    assert shown(tune, bowing) == "|:A4 B4:|"


# ------------------------------------------------------------------------------------------- what is hard to say


def test_an_ending_that_stops_at_a_plain_bar_line_stops_at_a_double_one() -> None:  # 4.9
    tune, bowing = bowed("|:A8|[1B8:|[2c8|d8|]")
    bars = (*tune.bars[:2], tune.bars[2], replace(tune.bars[3], ending=()))
    tune = replace(tune, bars=bars)
    assert shown(tune, bowing) == "|:A8|1 B8:|2 c8||\nd8|]"


def test_an_empty_bar_is_a_hidden_rest() -> None:
    tune, bowing = bowed("A8|B8|]")
    tune = replace(tune, bars=(tune.bars[0], replace(tune.bars[1], notes=())))
    assert shown(tune, bowing) == "A8|x8|]"


def test_words_that_would_be_read_as_a_sign_are_left_out() -> None:
    tune, bowing = bowed("A8|]")
    words = (Words(Fraction(0), "Fine"), Words(Fraction(0), "D.C."), Words(Fraction(0), "gently"))
    assert shown(replace(tune, bars=(replace(tune.bars[0], words=words),)), bowing) == '"^gently"A8|]'


def test_a_tied_double_stop_with_one_letter_twice_keeps_both_pitches() -> None:
    pitches = (Pitch(4, "F"), Pitch(4, "F", 1))
    notes = (
        Note("b0n1", Fraction(0), Fraction(2), pitches),
        Note("b0n2", Fraction(2), Fraction(2), pitches, held=True),
    )
    tune = Tune("Probe", (Bar(1, notes, Meter(), Key(), line=BarLine.FINAL),))
    assert read_abc(write_abc([Lesson(tune, (Bowing(AS_WRITTEN),))])).lessons[0].tune.bars[0].notes == notes
