import subprocess
import sys
from pathlib import Path

import pytest
import soundfile
from mido import MidiFile

from app.cli import main
from app.player_programme import Passage, Programme, Step, recipe_of
from app.player_take import make_take
from core.reading import read_file
from core.sound.performance import Manner, perform
from core.tune import Tempo

TOP = Path(__file__).parents[2]
SAMPLES = TOP / "sample_tunes"
FERRY = str(SAMPLES / "tuesday_ferry.musicxml")
BOOK = str(SAMPLES / "tuesday_class_book.abc")
LESSON = read_file(Path(FERRY).read_bytes()).lessons[0]


def told(capsys: pytest.CaptureFixture[str]) -> str:
    printed = capsys.readouterr()
    assert not printed.out  # stdout stays clean
    return printed.err.replace(str(TOP), "").strip()


def seconds(path: Path) -> float:
    return MidiFile(path).length


@pytest.mark.parametrize("suffix", [".wav", ".flac", ".ogg", ".mp3"])
def test_audio_is_as_long_as_the_playing_and_its_tail(tmp_path, suffix):
    out = tmp_path / f"out{suffix}"
    assert main(["sound", FERRY, "--out", str(out), "--bars", "1-2", "--count-in", "0", "--tempo", "120"]) == 0
    with soundfile.SoundFile(out) as file:
        assert (file.samplerate, file.channels) == (44_100, 1)
        assert file.frames == 2 * 44_100 + 35_280  # two bars of two half notes, and the tail
        assert file.title == LESSON.tune.title


def test_midi_lasts_as_long_as_the_tune_at_its_tempo(tmp_path):
    out = tmp_path / "out.mid"
    assert main(["sound", FERRY, "--out", str(out), "--bowing", "Backbeat", "--tempo", "100"]) == 0
    played = perform(LESSON.tune, LESSON.named("Backbeat"), manner=Manner(Tempo(2, 100), count_in=1))
    assert seconds(out) == pytest.approx(float(played.end), abs=0.01)


def test_two_bowings_give_two_files(tmp_path):
    outs = [tmp_path / "a.mid", tmp_path / "b.mid"]
    for out, name in zip(outs, ("Separate bows", "Backbeat"), strict=True):
        assert main(["sound", FERRY, "--out", str(out), "--bowing", name]) == 0
    assert outs[0].read_bytes() != outs[1].read_bytes()


def test_a_ladder_stands_in_one_file_or_in_one_for_each_rung(tmp_path):
    call = ["sound", FERRY, "--bars", "1-4", "--ladder", "50-100/25x2", "--out"]
    assert main([*call, str(tmp_path / "all.mid")]) == 0
    assert main([*call, str(tmp_path / "one.mid"), "--apart"]) == 0
    rungs = [tmp_path / f"one-{percent}.mid" for percent in ("050", "075", "100")]
    assert sorted(tmp_path.iterdir()) == sorted([tmp_path / "all.mid", *rungs])
    lengths = [seconds(rung) for rung in rungs]
    assert lengths[0] == pytest.approx(2 * lengths[2], abs=0.01)
    assert seconds(tmp_path / "all.mid") == pytest.approx(sum(lengths), abs=0.01)


def test_bars_are_played_so_many_times(tmp_path):
    call = ["sound", FERRY, "--bars", "5-6", "--count-in", "0", "--out"]
    for times in (1, 4):
        assert main([*call, str(tmp_path / f"{times}.mid"), "--times", str(times)]) == 0
    assert seconds(tmp_path / "4.mid") == pytest.approx(4 * seconds(tmp_path / "1.mid"), abs=0.03)


def test_without_backing_the_file_is_quieter_between_the_notes(tmp_path):
    levels = []
    for word in ("--backing", "--no-backing"):
        out = tmp_path / "out.wav"
        assert main(["sound", FERRY, "--out", str(out), "--bars", "1-4", word]) == 0
        levels.append(float((soundfile.read(out)[0] ** 2).mean()))
    assert levels[0] > levels[1]


def test_a_book_says_which_tune_was_taken(tmp_path, capsys):
    assert main(["sound", BOOK, "--out", str(tmp_path / "out.mid")]) == 0
    assert "--tune chooses another" in told(capsys)


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["--out", "out.txt"], "out.txt: expected a name that ends in .wav, .flac, .ogg, .mp3, .mid, .midi"),
        (["--out", "out.mid", "--bowing", "Nobody's"], "no bowing named “Nobody's”; there is “Separate bows”"),
        (["--out", "out.mid", "--tune", "9"], "there is no tune number 9"),
        (["--out", "out.mid", "--bars", "90-91"], "bars 90-91 are not among 0-18"),
        (["--out", "out.mid", "--bars", "6-5"], "“6-5” names no bars: expected FROM-TO, such as 5-8"),
        (["--out", "out.mid", "--ladder", "slow"], "“slow” is no ladder: expected percents such as 60-100"),
        (["--out", "out.mid", "--ladder", "100-60"], "A ladder leads up"),
        (["--out", "out.mid", "--apart"], "--apart needs --ladder"),
        (["--out", "out.mid", "--count-in", "9"], "“9” is not a number from 0 to 8"),
        (["--out", "out.mid", "--times", "0"], "“0” is not a number from 1 to 100"),
        (["--out", "/no/such/folder/out.mid"], "/no/such/folder/out.mid cannot be written: its folder is not there."),
    ],
)
def test_a_wrong_call_is_refused_in_a_sentence(tmp_path, monkeypatch, capsys, words, sentence):
    monkeypatch.chdir(tmp_path)
    assert main(["sound", FERRY, *words]) == 2
    assert sentence in told(capsys)
    assert not list(tmp_path.iterdir())


def test_a_file_that_cannot_be_read_is_status_3(tmp_path, capsys):
    assert main(["sound", str(tmp_path / "none.abc"), "--out", str(tmp_path / "out.mid")]) == 3
    assert "none.abc" in told(capsys)


def test_chords_that_cannot_be_read_are_told_and_passed_over(tmp_path, capsys):
    source = tmp_path / "tune.abc"
    source.write_text('X:1\nT:Odd chords\nM:4/4\nL:1/8\nK:D\n"D"A4 "H7"B4|"Zz"c4 "A7/C#"d4|]\n', encoding="utf-8")
    assert main(["sound", str(source), "--out", str(tmp_path / "out.wav")]) == 0
    assert "“H7” is no chord symbol" in told(capsys)  # the reader says so


def test_without_libsndfile_one_sentence_says_what_is_missing(tmp_path, monkeypatch, capsys):
    monkeypatch.setitem(sys.modules, "soundfile", None)
    out = tmp_path / "out.wav"
    assert main(["sound", FERRY, "--out", str(out), "--bars", "1"]) == 2
    assert told(capsys).startswith("Sound files cannot be written because libsndfile is missing")
    assert not out.exists()
    assert main(["sound", FERRY, "--out", str(tmp_path / "out.mid")]) == 0


def test_other_commands_load_nothing_of_sound():
    code = (
        "import sys, app.cli\n"
        f"app.cli.main(['check', {FERRY!r}])\n"
        "sys.exit(any(name in sys.modules for name in ('soundfile', 'mido', 'core.sound.mix', 'core.sound.fiddle')))"
    )
    assert subprocess.run([sys.executable, "-c", code], cwd=TOP, timeout=60, capture_output=True).returncode == 0


class TestSet:
    def test_a_set_is_one_file_as_the_player_plays_it(self, tmp_path):
        out = tmp_path / "set.mid"
        assert main(["sound", "--set", f"{BOOK}#1x2", f"{BOOK}#2", "--out", str(out), "--count-in", "0"]) == 0
        lessons = read_file(Path(BOOK).read_bytes()).lessons
        once, other = (Passage(one.tune, one.bowings[0], reach=one.reach) for one in lessons[:2])
        programme, step, after, played = Programme((once, once, other)), Step(), None, []
        while step is not None:
            take = make_take(recipe_of(programme, step, after), {})
            after, step = take.last_bow, programme.step_after(step)
            played += take.performance.attacks
        length = 2 * perform(lessons[0].tune, lessons[0].bowings[0]).end + take.performance.end
        assert seconds(out) == pytest.approx(float(length), abs=0.01)
        struck = [message for message in MidiFile(out).tracks[1] if message.type == "note_on"]
        assert len(struck) == sum(len(attack.tones) for attack in played)

    def test_audio_has_no_gap_between_the_tunes(self, tmp_path):
        out, midi = tmp_path / "set.wav", tmp_path / "set.mid"
        for path in (out, midi):
            assert main(["sound", "--set", f"{BOOK}#1x2", f"{BOOK}#2", "--out", str(path)]) == 0
        with soundfile.SoundFile(out) as file:
            assert file.frames == pytest.approx(seconds(midi) * 44_100 + 35_280, abs=500)
            assert file.title == "The Spare Rosin / Mind the Wet Step"

    @pytest.mark.parametrize(
        ("words", "sentence"),
        [
            (["--set", f"{BOOK}#1", "--ladder", "60-100"], "--ladder is for one tune, not for a set"),
            (["--set", f"{BOOK}#1", "--times", "2"], "--times is for one tune, not for a set"),
            (["--set", f"{BOOK}#1", "--tune", "1"], "--tune is for one tune, not for a set"),
            (["--set", f"{BOOK}#1", "--apart"], "--apart is for one tune, not for a set"),
            (["--set", f"{BOOK}#99"], "no tune 99"),
            (["--set", *[f"{BOOK}#1"] * 25], "A set holds at most 24 tunes; there are 25."),
            ([BOOK, FERRY], "One FILE is expected; with --set several are played one after the other"),
        ],
    )
    def test_a_wrong_call_is_refused_in_a_sentence(self, tmp_path, capsys, words, sentence):
        assert main(["sound", *words, "--out", str(tmp_path / "out.mid")]) == 2
        assert sentence in told(capsys)
        assert list(tmp_path.iterdir()) == []

    def test_a_tune_that_cannot_be_read_leaves_no_file(self, tmp_path, capsys):
        assert main(["sound", "--set", f"{BOOK}#1", str(tmp_path / "none.abc"), "--out", str(tmp_path / "o.mid")]) == 3
        assert "there is no such file" in told(capsys)
        assert list(tmp_path.iterdir()) == []
