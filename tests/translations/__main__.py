"""Bring the translation files up to date with the sources, and compile them.

python -m tests.translations          keep all translations; tell what is left to translate
python -m tests.translations --drop   forget the translations of texts that the sources do not have any more
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import PySide6

from app.language import ENGLISH, LANGUAGES
from tests.translations import ts_file
from tests.translations.messages import ROOT, messages

FOLDER = ROOT / "resources" / "translations"
PLURAL_FORMS = {"de": 2}  # as Qt numbers them (Qt Linguist Manual, "Translation Rules for Plurals")


def ts_path(language: str) -> Path:
    """The file that people translate."""
    return FOLDER / f"bowbench_{language}.ts"


def compiled(path: Path, out: Path) -> bytes:
    """A translation file as Qt's own ``lrelease`` compiles it; also written to ``out``."""
    program = Path(PySide6.__file__).parent / "lrelease"
    subprocess.run([program, "-silent", path, "-qm", out], check=True)
    return out.read_bytes()


def main() -> None:
    """Do what the module says."""
    found = messages()
    for language in LANGUAGES:
        if language == ENGLISH:
            continue
        path = ts_path(language)
        entries = ts_file.updated(ts_file.read(path) if path.exists() else {}, found, PLURAL_FORMS[language])
        if "--drop" in sys.argv[1:]:
            entries = {key: entry for key, entry in entries.items() if entry.state != "vanished"}
        path.write_text(ts_file.written(language, entries, found), "utf-8")
        compiled(path, path.with_suffix(".qm"))
        left = [entry for entry in entries.values() if entry.state == "unfinished"]
        print(f"{path.name}: {len(entries)} texts, {len(left)} left to translate")
        for entry in left:
            print("  " + repr(entry.source) + (f" ({entry.comment})" if entry.comment else ""))


if __name__ == "__main__":
    main()
