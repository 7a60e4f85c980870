import pytest
from music21 import harmony
from musicxml.generate_classes import utils as schema

from core.chords import ACCIDENTAL_TEXT, COMPOUNDS, KINDS, Chord, Degree, DegreeType, chord_text, kind_text, parse_chord
from core.tune import STEP_SEMITONES

# Semitones over the root, from the names of the intervals; a ninth is a second, an 11th a fourth, a 13th a sixth.
TONES = {
    "major": {0, 4, 7}, "minor": {0, 3, 7}, "augmented": {0, 4, 8}, "diminished": {0, 3, 6},
    "dominant": {0, 4, 7, 10}, "major-seventh": {0, 4, 7, 11}, "minor-seventh": {0, 3, 7, 10},
    "diminished-seventh": {0, 3, 6, 9}, "augmented-seventh": {0, 4, 8, 10}, "half-diminished": {0, 3, 6, 10},
    "major-minor": {0, 3, 7, 11}, "major-sixth": {0, 4, 7, 9}, "minor-sixth": {0, 3, 7, 9},
    "dominant-ninth": {0, 2, 4, 7, 10}, "major-ninth": {0, 2, 4, 7, 11}, "minor-ninth": {0, 2, 3, 7, 10},
    "dominant-11th": {0, 2, 4, 5, 7, 10}, "major-11th": {0, 2, 4, 5, 7, 11}, "minor-11th": {0, 2, 3, 5, 7, 10},
    "dominant-13th": {0, 2, 4, 5, 7, 9, 10}, "major-13th": {0, 2, 4, 5, 7, 9, 11},
    "minor-13th": {0, 2, 3, 5, 7, 9, 10}, "suspended-second": {0, 2, 7}, "suspended-fourth": {0, 5, 7},
    "power": {0, 7},
}  # fmt: skip
SCALE = {2: 2, 3: 4, 4: 5, 5: 7, 6: 9, 7: 10, 9: 2, 11: 5, 13: 9}
ROOTS = ["C", "C#", "Db", "D", "Eb", "E", "F", "F#", "Gb", "G", "Ab", "A", "Bb", "B", "Cb"]

# Kinds that music21 spells but no lead sheet prints over a staff: functions, not chord symbols.
FUNCTIONS = {"Neapolitan", "Italian", "French", "German", "pedal", "Tristan"}


def tones(chord: Chord) -> set[int]:
    """Pitch classes of a chord, the bass among them."""
    over_root = set(TONES[chord.kind])
    for degree in chord.degrees:
        plain = SCALE[degree.value]
        match degree.type:
            case DegreeType.ADD:
                over_root.add((plain + degree.alter) % 12)
            case DegreeType.ALTER:
                over_root = (over_root - {plain}) | {plain + degree.alter}
            case DegreeType.SUBTRACT:
                over_root -= {plain, plain - 1} if degree.value == 3 else {plain}
    root = STEP_SEMITONES[chord.root] + chord.root_alter
    bass = {(STEP_SEMITONES[chord.bass[0]] + chord.bass[1]) % 12} if chord.bass else set()
    return {(root + tone) % 12 for tone in over_root} | bass


SPELLINGS = [
    (kind, spelling) for kind, (_, spellings) in harmony.CHORD_TYPES.items() if kind not in FUNCTIONS
    for spelling in spellings
]  # fmt: skip


@pytest.mark.parametrize("spelling", [spelling for _, spelling in SPELLINGS], ids=[f"C{row[1]}" for row in SPELLINGS])
def test_every_spelling_that_music21_reads_gives_the_notes_that_music21_gives(spelling: str) -> None:
    for root in ROOTS:
        theirs = harmony.ChordSymbol(root.replace("b", "-") + spelling)
        ours = parse_chord(root + spelling)
        assert ours is not None
        if spelling == "dimb9":  # music21 leaves out the seventh, and keeps it in its other spelling, ob9
            theirs = harmony.ChordSymbol(root.replace("b", "-") + "ob9")
        assert tones(ours) == {pitch.pitchClass for pitch in theirs.pitches}, root


@pytest.mark.parametrize(("bass", "theirs"), [("E", "E"), ("g", "G"), ("Bb", "B-"), ("f#", "F#")])
def test_the_bass_is_the_one_that_music21_reads(bass: str, theirs: str) -> None:
    for figure, their_figure in (("C", "C"), ("Am", "Am"), ("D7", "D7"), ("Eb", "E-")):
        chord, symbol = parse_chord(f"{figure}/{bass}"), harmony.ChordSymbol(f"{their_figure}/{theirs}")
        assert chord is not None
        assert chord.bass == (symbol.bass().step, int(symbol.bass().alter))
        assert tones(chord) == {pitch.pitchClass for pitch in symbol.pitches}


def test_flats_are_flats() -> None:  # music21 reads "Bb7" as B7
    assert parse_chord("Bb") == Chord("B", -1)
    assert parse_chord("Bb7") == Chord("B", -1, "dominant", "7")
    assert parse_chord("B♭m") == Chord("B", -1, "minor", "m")
    assert parse_chord("Ebm/Bb") == Chord("E", -1, "minor", "m", bass=("B", -1))


def test_no_chord_and_degree_signs_are_read() -> None:  # music21 raises on both
    assert parse_chord("N.C.") == Chord("", kind="none", kind_text="N.C.")
    assert parse_chord("G°7") == Chord("G", 0, "diminished-seventh", "°7")
    assert parse_chord("Bø") == Chord("B", 0, "half-diminished", "ø")
    assert parse_chord("FΔ7") == Chord("F", 0, "major-seventh", "Δ7")


def test_degrees_are_told_apart_from_the_kind() -> None:
    assert parse_chord("E7#9") == Chord("E", 0, "dominant", "7#9", (Degree(9, 1, DegreeType.ADD),))
    assert parse_chord("E7(b5)") == Chord("E", 0, "dominant", "7(b5)", (Degree(5, -1, DegreeType.ALTER),))
    assert parse_chord("Gadd9") == Chord("G", 0, "major", "add9", (Degree(9, 0, DegreeType.ADD),))
    assert parse_chord("A(no3)") == Chord("A", 0, "major", "(no3)", (Degree(3, 0, DegreeType.SUBTRACT),))
    assert parse_chord("C6/9") == Chord("C", 0, "major-sixth", "6/9", (Degree(9, 0, DegreeType.ADD),))


def test_a_second_choice_stands_in_brackets() -> None:  # ABC 2.1, 4.18
    assert parse_chord("G(Em)") == Chord("G", second="Em")
    assert parse_chord("D7(Am7)") == Chord("D", 0, "dominant", "7", second="Am7")
    assert parse_chord("Cm(maj7)") == Chord("C", 0, "major-minor", "m(maj7)")


@pytest.mark.parametrize(
    "text",
    ["", " ", "Fine", "D.C.", "Coda", "Slow", "Gaily", "BOB", "H7", "m7", "7", "C/", "C/H", "C//E", "G(", "G)", "G(x)",
     "A tempo", "Dance", "CEG", "Am7b", "C" * 50, "G((((((", "Segue", "tr", "4", "?", "C7\x00"],
)  # fmt: skip
def test_what_is_no_chord_is_refused(text: str) -> None:
    assert parse_chord(text) is None


def test_what_is_read_is_written_back_the_same() -> None:
    for spelling in [*(name for names in KINDS.values() for name in names), *COMPOUNDS, "7#9", "add9", "7sus4"]:
        for root in ROOTS:
            for tail in ("", "/G", "/Bb", "(Em)"):
                text = root + spelling + tail
                chord = parse_chord(text)
                assert chord is not None, text
                assert chord_text(chord) == text or (chord.bass is None and tail == "/" + root)
                assert parse_chord(chord_text(chord)) == chord


def test_a_kind_without_a_text_of_its_own_gets_one_that_reads_back() -> None:
    for kind in KINDS:
        assert (parsed := parse_chord("A" + kind_text(kind))) is not None
        assert parsed.kind == kind
    flat_nine = (Degree(9, -1, DegreeType.ADD),)
    assert (parsed := parse_chord("A" + kind_text("dominant", flat_nine))) is not None
    assert parsed.degrees == flat_nine


def test_kinds_are_those_of_musicxml_4() -> None:
    xsd = schema.musicxml_xsd_et_root
    names = {
        value.get("value")
        for simple in xsd if simple.get("name") == "kind-value"
        for value in simple.iter() if value.tag.endswith("enumeration")
    }  # fmt: skip
    assert len(names) == 33
    assert set(KINDS) | {"none"} <= names
    assert {kind for kind, _ in COMPOUNDS.values()} <= names


def test_accidentals_have_one_text_each() -> None:
    assert sorted(ACCIDENTAL_TEXT) == [-2, -1, 0, 1, 2]
