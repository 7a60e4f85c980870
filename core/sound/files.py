"""Playings as files: WAV, FLAC, Ogg Vorbis and MP3 by libsndfile, MIDI by ``core.sound.midi``.

Bytes are written to a stream that the caller has opened. Audio goes out in blocks of ``mix.BLOCK`` samples: a single
write of some millions of samples to a Vorbis stream can end the process inside the encoder, and nobody has to hold
more than a block.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from io import BytesIO
from typing import BinaryIO, TypeAlias

from core.errors import BowbenchError
from core.sound.backing import back
from core.sound.id3 import id3_tag
from core.sound.midi import midi_file
from core.sound.mix import Mix, in_a_row, mix
from core.sound.part import USUAL, Levels
from core.sound.performance import Performance
from core.sound.tags import Tags
from core.sound.track import SAMPLES_A_SECOND
from core.translation import tr

MIDI_SUFFIXES = (".mid", ".midi")
FORMATS = {".wav": ("WAV", "PCM_16"), ".flac": ("FLAC", "PCM_16"), ".ogg": ("OGG", "VORBIS"), ".mp3": ("MP3", None)}
"""Format and encoding of libsndfile by suffix."""
SUFFIXES = (*FORMATS, *MIDI_SUFFIXES)


Progress: TypeAlias = Callable[[float], None]
"""Is told which share of the work is done, from 0 to 1."""


class SoundFileError(BowbenchError):
    """A sound file cannot be written here; ``str()`` is one sentence that says why."""


def no_progress(share: float) -> None:
    """Tell nobody."""


def write_sound(
    out: BinaryIO,
    suffix: str,
    playings: Sequence[Performance],
    tags: Tags,
    levels: Levels = USUAL,
    progress: Progress = no_progress,
) -> None:
    """Write playings one after another; where one is over the next begins, and the first rings on under it.

    Args:
        out: Open for binary writing; for audio it must seek as well.
        suffix: One of ``SUFFIXES``.
        playings: At least one.
        tags: What the file says of itself.
        levels: How loud each part is; a MIDI file holds the fiddle alone.
        progress: Is told after each block which share of the file is written; what it raises ends the writing.
    Raises:
        SoundFileError: there is no libsndfile, or it cannot write this format.
        ValueError: no such suffix, or nothing to play.
    """
    if not playings:
        raise ValueError(tr("There is nothing to play."))
    if suffix in MIDI_SUFFIXES:
        out.write(midi_file(playings, tags))
    elif suffix in FORMATS:
        write_audio(out, suffix, [mix(playing, back(playing), levels) for playing in playings], tags, progress)
    else:
        raise ValueError(
            tr("“{suffix}” is no kind of sound file: expected {formats}", suffix=suffix, formats=", ".join(SUFFIXES))
        )


def write_audio(out: BinaryIO, suffix: str, mixes: Sequence[Mix], tags: Tags, progress: Progress = no_progress) -> None:
    """Write mixes in a row; arguments and errors as for ``write_sound``."""
    try:
        import soundfile
    except (ImportError, OSError) as fault:  # OSError: the package is there, the library it calls is not
        raise SoundFileError(
            tr(
                "Sound files cannot be written because libsndfile is missing: install the Python package soundfile, or "
                "write MIDI (.mid)."
            )
        ) from fault
    kind, encoding = FORMATS[suffix]
    stream = BytesIO() if kind == "MP3" else out  # an MP3 file has our own tag before it
    try:
        with soundfile.SoundFile(stream, "w", SAMPLES_A_SECOND, channels=1, format=kind, subtype=encoding) as file:
            for name, text in _texts(tags).items() if stream is out else ():
                setattr(file, name, text)
            row, written = in_a_row(mixes), 0
            for block in row.blocks():
                file.write(block)
                written += len(block)
                progress(written / row.length)
    except soundfile.LibsndfileError as fault:
        raise SoundFileError(
            tr("libsndfile could not write {kind}: {reason}.", kind=kind, reason=fault.error_string.strip(". "))
        ) from fault
    if isinstance(stream, BytesIO) and stream is not out:
        out.write(id3_tag(tags))
        out.write(stream.getbuffer())


def _texts(tags: Tags) -> dict[str, str]:
    """Texts by the names that libsndfile has for them, the empty ones left out."""
    texts = {"title": tags.title, "artist": tags.composer, "comment": tags.comment, "software": "Bowbench"}
    return {name: text for name, text in texts.items() if text}
