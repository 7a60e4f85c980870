"""What an installed Bowbench is to other programs: one package, ``bowbench``, with all of ours inside it.

In the repository ``app``, ``core``, ``resources`` and ``sample_tunes`` stand side by side and are imported by these
names. Installed so, they would lie open among other people's packages and overwrite any of the same name. The wheel
therefore puts them into ``bowbench`` (``pyproject.toml`` has the table), and only a process that *is* Bowbench finds
them: the command puts the folder that holds them before all others and goes on as ever.
"""

from __future__ import annotations

import sys
from importlib.util import find_spec
from pathlib import Path


def home() -> Path:
    """The folder that holds ``app``, ``core`` and what belongs to them: the installed package, or the repository.

    Raises:
        RuntimeError: the installation is not whole.
    """
    spec = find_spec("bowbench.app")
    if spec is None or spec.origin is None:
        raise RuntimeError("Bowbench is not installed as a whole: its folder “app” is missing. Install it again.")
    return Path(spec.origin).resolve().parent.parent


def main() -> int:
    """Run the command line with the arguments of this process.

    Returns:
        Exit status, as ``app.cli.main`` has it.
    """
    folder = str(home())
    if folder not in sys.path[:1]:
        sys.path.insert(0, folder)
    from app.cli import main as run

    return run()
