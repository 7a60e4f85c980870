"""Why a file cannot be read or written, in the user's words: what the system's error numbers mean.

Numbers and meanings: POSIX.1-2017, ``errno.h``; Windows: System Error Codes (0-499), Microsoft Learn.
"""

from __future__ import annotations

import errno

from core.translation import inside, tr, translatable

DISK_FULL = translatable("the disk is full")
FAR = translatable("its folder cannot be reached")
NAME_REFUSED = translatable("the system takes no file of that name")
IN_USE = translatable("another program has it in use")
FORBIDDEN = translatable("you have no permission there")

BY_NAME = translatable({
    "ENOSPC": DISK_FULL,
    "EDQUOT": "your share of the disk is used up",
    "EFBIG": "it is larger than a file may be there",
    "EACCES": FORBIDDEN,
    "EPERM": FORBIDDEN,
    "EROFS": "the disk can only be read",
    "ENAMETOOLONG": "its name is too long",
    "EINVAL": NAME_REFUSED,
    "EILSEQ": NAME_REFUSED,
    "EEXIST": "something else has that name",
    "EISDIR": "a folder has that name",
    "ENOTDIR": "what should be its folder is a file",
    "EBUSY": IN_USE,
    "ETXTBSY": IN_USE,
    "ELOOP": "its links lead round in a circle",
    "EIO": "the disk reports a fault",
    "ENXIO": FAR,
    "ENODEV": FAR,
    "ESTALE": FAR,
    "ETIMEDOUT": FAR,
    "ENOTCONN": FAR,
    "EHOSTDOWN": FAR,
    "EHOSTUNREACH": FAR,
    "ENETDOWN": FAR,
    "ENETUNREACH": FAR,
    "ECONNREFUSED": FAR,
    "ECONNRESET": FAR,
})  # fmt: skip
WORDS = {getattr(errno, name): words for name, words in BY_NAME.items() if hasattr(errno, name)}  # not all everywhere
WINDOWS_WORDS = translatable({
    19: "the disk can only be read",  # ERROR_WRITE_PROTECT
    21: FAR,  # ERROR_NOT_READY
    32: IN_USE,  # ERROR_SHARING_VIOLATION
    33: IN_USE,  # ERROR_LOCK_VIOLATION
    39: DISK_FULL,  # ERROR_HANDLE_DISK_FULL
    53: FAR,  # ERROR_BAD_NETPATH
    64: FAR,  # ERROR_NETNAME_DELETED
    67: FAR,  # ERROR_BAD_NET_NAME
    112: DISK_FULL,  # ERROR_DISK_FULL
    123: NAME_REFUSED,  # ERROR_INVALID_NAME
})  # fmt: skip


def why(fault: OSError | ValueError, *, writing: bool = False) -> str:
    """A fault in a few words that end a sentence, without a full stop.

    Args:
        fault: What was raised; a ValueError is a name that no system call takes (a NUL in it, say).
        writing: A file was to be written, so that what is not there is its folder.
    """
    if not isinstance(fault, OSError):
        return tr(NAME_REFUSED)
    windows = WINDOWS_WORDS.get(getattr(fault, "winerror", None) or 0)
    if windows is not None:
        return tr(windows)
    if fault.errno == errno.ENOENT:
        return tr("its folder is not there") if writing else tr("there is no such file")
    if fault.errno in WORDS:
        return tr(WORDS[fault.errno])
    return inside(fault.strerror or str(fault) or tr("the system does not say why"))
