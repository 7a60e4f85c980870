"""``bowbench desktop``: puts the program into the menus of a Linux desktop, or takes it out again."""

from __future__ import annotations

import argparse
import sys

from core.file_faults import why
from core.translation import tr

INSTALL, REMOVE = "install", "remove"


def add_desktop_parser(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the parser."""
    parser = commands.add_parser("desktop", help=tr("put the program into the menus of your desktop, or take it out"))
    parser.add_argument("what", choices=(INSTALL, REMOVE), help=tr("entry, icon and kinds of file, for you alone"))


def run_desktop(options: argparse.Namespace) -> int:
    """Do what was asked and name the files on stdout.

    Returns:
        0 done, 2 not on this system or no command to enter, 3 a file could not be written or removed.
    """
    from app.desktop_entry import install, own_command, remove, user_data  # needs Qt, for the icons

    if sys.platform in ("win32", "darwin"):
        print(tr("Desktop entries are for Linux; README.md says how it is done on Windows and macOS."), file=sys.stderr)
        return 2
    command = own_command()
    if options.what == INSTALL and command is None:
        print(
            tr("There is no command “bowbench” that the menu could start: install the program first."), file=sys.stderr
        )
        return 2
    try:
        touched = remove(user_data()) if command is None or options.what == REMOVE else install(command, user_data())
    except OSError as fault:
        path = fault.filename or user_data()
        print(tr("{path} cannot be written: {reason}.", path=path, reason=why(fault, writing=True)), file=sys.stderr)
        return 3
    for path in touched:
        print(path)
    if options.what == REMOVE and not touched:
        print(tr("There was no entry."), file=sys.stderr)
    return 0
