import io
import sys
from fractions import Fraction

import numpy as np
import pytest
import soundfile

from core.accent_plan import AccentPlan, PlanKind
from core.sound.backing import back
from core.sound.files import FORMATS, SUFFIXES, SoundFileError, write_audio, write_sound
from core.sound.id3 import id3_tag
from core.sound.mix import BLOCK, TAIL, Mix, mix
from core.sound.performance import Manner, Performance, perform
from core.sound.tags import Tags
from core.sound.track import Track
from core.tune import Tempo
from tests.core.builders import bowed

TAGS = Tags("Nørre 🎻", "“Slåtter”", "Åse Ø.", ("Quarter notes a minute: 184",))


def played(bars: int = 2, count_in: int = 0, quarters: int = 200) -> Performance:
    tune, bowing = bowed("(AB)cd (efg)a|" * bars, accents=AccentPlan(PlanKind.NONE))
    return perform(tune, bowing, manner=Manner(Tempo(Fraction(1), Fraction(quarters)), count_in=count_in))


def read(data: bytes) -> tuple[np.ndarray, dict[str, str]]:
    """The samples and the words of a file."""
    with soundfile.SoundFile(io.BytesIO(data)) as file:
        return file.read(), file.copy_metadata()


def written(suffix: str, *playings: Performance) -> bytes:
    out = io.BytesIO()
    write_sound(out, suffix, playings, TAGS)
    return out.getvalue()


@pytest.mark.parametrize("suffix", FORMATS)
def test_a_file_holds_the_mix_to_the_sample(suffix):
    playing = played(count_in=1)
    sound, _ = read(written(suffix, playing))
    assert len(sound) == round((4 + 8) * 0.3 * 44_100) + TAIL  # a bar counted in and two bars, at 0.3 s a quarter
    expected = mix(playing, back(playing)).render(0, len(sound))
    error = np.sqrt(((sound - expected) ** 2).mean() / (expected**2).mean())
    assert error < (0.001 if suffix in (".wav", ".flac") else 0.2)


@pytest.mark.parametrize("suffix", FORMATS)
def test_playings_follow_each_other_without_a_sample_between(suffix):
    playings = [played(quarters=tempo) for tempo in (170, 190, 210)]
    sound, _ = read(written(suffix, *playings))
    assert len(sound) == sum(mix(playing).length - TAIL for playing in playings) + TAIL
    if suffix in (".wav", ".flac"):
        last = mix(playings[-1], back(playings[-1]))
        alone = sound[-last.length + TAIL :]  # what the one before rings on for is over
        assert np.abs(alone - last.render(TAIL, last.length)).max() < 2 / 32_768


@pytest.mark.parametrize("suffix", FORMATS)
def test_what_a_file_says_of_itself_is_kept_in_any_script(suffix):
    _, words = read(written(suffix, played()))
    assert (words["title"], words["artist"]) == (TAGS.title, TAGS.composer)
    assert words["comment"] == "Bowing: “Slåtter”; Quarter notes a minute: 184"


@pytest.mark.parametrize("suffix", FORMATS)
def test_a_file_without_words_is_written_too(suffix):
    out = io.BytesIO()
    write_sound(out, suffix, [played()], Tags())
    assert "title" not in read(out.getvalue())[1]


def test_millions_of_samples_go_out_in_blocks(monkeypatch):
    sizes = []
    write = soundfile.SoundFile.write
    monkeypatch.setattr(soundfile.SoundFile, "write", lambda self, data: sizes.append(len(data)) or write(self, data))
    silence = Mix(2_700_001, ((Track(()), np.float32(1)),))
    out = io.BytesIO()
    write_audio(out, ".ogg", [silence, silence], Tags())
    assert len(read(out.getvalue())[0]) == 5_400_002 - TAIL
    assert set(sizes[:-1]) == {BLOCK}
    assert sizes[-1] <= BLOCK


def test_progress_is_told_and_can_end_the_writing():
    shares = []
    write_sound(io.BytesIO(), ".wav", [played(8)], TAGS, progress=shares.append)
    assert shares == sorted(shares)
    assert 0 < shares[0] < shares[-1] == 1

    class StopError(Exception):
        pass

    def stop(share: float) -> None:
        raise StopError

    with pytest.raises(StopError):
        write_sound(io.BytesIO(), ".ogg", [played(8)], TAGS, progress=stop)


def test_a_sound_is_the_same_each_time():
    assert written(".wav", played()) == written(".wav", played())


def test_the_tag_of_an_mp3_counts_its_size_in_seven_bits():
    tag = id3_tag(Tags("x" * 200))
    assert tag[:6] == b"ID3\x04\x00\x00"
    size = tag[6:10]
    assert all(byte < 0x80 for byte in tag[6:10])
    assert (size[2] << 7) + size[3] == len(tag) - 10
    assert id3_tag(Tags()) == b""


def test_without_libsndfile_the_refusal_is_one_sentence(monkeypatch):
    monkeypatch.setitem(sys.modules, "soundfile", None)
    with pytest.raises(SoundFileError, match=r"^Sound files cannot be written because libsndfile is missing: .*\.$"):
        written(".ogg", played())
    assert written(".mid", played())


def test_an_encoder_that_refuses_is_told(monkeypatch):
    monkeypatch.setitem(FORMATS, ".ogg", ("OGG", "PCM_24"))
    with pytest.raises((SoundFileError, ValueError)):
        written(".ogg", played())


def test_what_is_no_sound_file_is_refused():
    with pytest.raises(ValueError, match=r"“\.txt” is no kind of sound file: expected \.wav"):
        written(".txt", played())
    with pytest.raises(ValueError, match="nothing to play"):
        written(SUFFIXES[0])
