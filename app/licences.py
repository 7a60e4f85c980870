"""What the program is made of, by whom it may be used, and where that is written.

Two sources: ``BUNDLED`` lists what no package describes by itself (our own work, the fiddle's recordings, fonts and
libraries inside other packages); the rest is read from the installed packages, beginning with what ours requires.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable, Iterator
from functools import partial
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from importlib.resources import files
from pathlib import PurePosixPath

from core.translation import translatable
from core.values import dataclass

PROGRAM = "bowbench"
UNKNOWN = "not stated"
TOLD_AT_ONCE = ("PySide6", "verovio", "music21", "numpy")  # packages whose version a report of a fault should give
LONGEST_NAME = 90  # characters of a licence's name; a longer field holds its text
_NOTICE_NAME = re.compile(r"(LICEN[CS]E|COPYING|NOTICE|AUTHORS|license_notes)[\w.-]*", re.ASCII)
_REQUIRED_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]*")


@dataclass(frozen=True)
class Part:
    """Something that the program is made of.

    Attributes:
        name: As its authors write it.
        use: What it does here, in English, or "" where another part brought it.
        version: "" where it has none.
        licence: Name of the licence, an SPDX expression where its authors give one.
        home: Where it and its source are, or "".
        notice: Reads the licence texts that came with it, "" where none did.
    """

    name: str
    use: str
    version: str
    licence: str
    home: str = ""
    notice: Callable[[], str] = str


def _resource(*path: str) -> str:
    return files("resources").joinpath(*path).read_text("utf-8")


def _text_in(package: str, name: str) -> str:
    """A licence text that an installed package carries, "" where it does not."""
    try:
        found = distribution(package).files or ()
    except PackageNotFoundError:
        return ""
    return next((path.read_text("utf-8") for path in found if path.name == name), "")


LGPL_3 = partial(_text_in, "verovio", "COPYING.LESSER")
LGPL_2_1 = partial(_text_in, "soundfile", "COPYING")
USES = translatable({
    "PySide6": "the window, printing, sound output",
    "PySide6_Essentials": "the window, printing",
    "PySide6_Addons": "sound output",
    "shiboken6": "Qt for Python",
    "verovio": "engraving of the page",
    "music21": "a second reader of music, in the tests",
    "numpy": "samples of the sound",
    "immutabledict": "values that never change",
    "lxml": "reading and writing MusicXML",
    "lightgbm": "learning how somebody slurs",
    "pypdf": "outline of printed sheets",
    "soundfile": "sound files",
    "mido": "MIDI files",
})  # fmt: skip
BUNDLED = (
    Part("Fiddle recordings", "the voice of the player; from the sound font Fluid R3", "", "MIT",
         notice=partial(_resource, "sound", "fiddle_bank.NOTICE.txt")),
    Part("Qt", "the window, printing, sound output; inside PySide6", "", "LGPL-3.0-only", "https://www.qt.io",
         LGPL_3),
    Part("FFmpeg", "loaded by Qt for sound; inside PySide6_Addons", "", "LGPL-2.1-or-later", "https://ffmpeg.org",
         LGPL_2_1),
    Part("Leipzig", "music signs, after the SMuFL standard; inside verovio", "1.0", "OFL-1.1",
         "https://www.verovio.org"),
    Part("Liberation Serif", "texts on the page and in print; inside verovio", "1.04",
         "GPL-2.0-only with font exception (what is printed or exported with it is not bound by it)",
         "https://github.com/liberationfonts"),
    Part("libsndfile", "sound files, with the libraries named in its notes; inside soundfile", "", "LGPL-2.1-or-later",
         "https://libsndfile.github.io/libsndfile", LGPL_2_1),
)  # fmt: skip
"""Licences of fonts and libraries inside other packages are from memory, after what their authors publish; of
Liberation Serif also after the name table of the font, which tells its version: those before 2.0 are not under OFL."""


def program_version() -> str:
    """Version of the program, or that it was never installed."""
    try:
        return distribution(PROGRAM).version
    except PackageNotFoundError:  # run from a tree that was never installed
        return "(not installed)"


def version_lines() -> tuple[str, ...]:
    """The program and what it stands on, a line each: what a report of a fault should give."""
    lines = [f"{PROGRAM} {program_version()}", f"Python {sys.version.split()[0]} on {sys.platform}"]
    for name in TOLD_AT_ONCE:
        try:
            lines.append(f"{name} {distribution(name).version}")
        except PackageNotFoundError:
            lines.append(f"{name} is missing")
    return tuple(lines)


def all_parts() -> tuple[Part, ...]:
    """Our own work, what lies inside other packages, Python, and every package that is needed, by name."""
    own = Part("Bowbench", "this program, its icons and its sample tunes (those are CC0)", program_version(), "MIT",
               notice=partial(_resource, "licences", "bowbench.txt"))  # fmt: skip
    python = Part("Python", "the language", sys.version.split()[0], "PSF-2.0", "https://www.python.org")
    packages = sorted(_packages(), key=lambda part: (not part.use, part.name.lower()))
    return (own, *BUNDLED, python, *packages)


def _packages() -> Iterator[Part]:
    """The packages that ours requires, and that these require, as far as they are installed."""
    waiting, seen = [PROGRAM], set()
    while waiting:
        try:
            found = distribution(waiting.pop())
        except PackageNotFoundError:
            continue  # wanted on other systems only
        if found.name.lower() in seen:
            continue
        seen.add(found.name.lower())
        if found.name != PROGRAM:
            yield Part(found.name, USES.get(found.name, ""), found.version, licence_of(found), _home_of(found),
                       partial(_notices_of, found))  # fmt: skip
        for requirement in found.requires or ():
            named = _REQUIRED_NAME.match(requirement)
            if named is not None and "extra ==" not in requirement:
                waiting.append(named[0])


def licence_of(package: Distribution) -> str:
    """The licence as a package states it: its expression, else its short name, else its classifiers."""
    told = package.metadata
    for field in ("License-Expression", "License"):
        text = " ".join(told.get_all(field) or ()).strip()
        if text and len(text) <= LONGEST_NAME and "\n" not in text:
            return text
    kinds = [line for line in told.get_all("Classifier") or () if line.startswith("License ::")]
    return ", ".join(line.rsplit(" :: ", 1)[-1] for line in kinds) or UNKNOWN


def _home_of(package: Distribution) -> str:
    links = dict(link.split(", ", 1) for link in package.metadata.get_all("Project-URL") or () if ", " in link)
    named = {label.lower(): address for label, address in links.items()}
    wanted = (named.get(label) for label in ("homepage", "source", "source code", "repository"))
    own = package.metadata.get_all("Home-page") or ()
    return next(filter(None, (*own, *wanted)), "")


def _notices_of(package: Distribution) -> str:
    texts = []
    for path in package.files or ():
        place = PurePosixPath(path)
        ours = ".dist-info" in place.parts[0] or len(place.parts) == 2
        if ours and _NOTICE_NAME.fullmatch(place.name) and place.suffix not in (".py", ".pyc"):
            texts.append(f"{place.name}\n\n{path.read_text('utf-8').strip()}")
    return "\n\n\n".join(texts)
