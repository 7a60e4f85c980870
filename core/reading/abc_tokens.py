"""The tokens of ABC music code (ABC 2.1, section 4) and what the plain ones among them say.

No pattern looks further than its own token or backtracks over more than that, so cutting a line takes time in
proportion to its length.
"""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

from core.reading.limits import MAX_PASSES
from core.tune import BarLine

_LENGTH = r"[0-9]*/*[0-9]*"
_NOTE = rf"(?P<note>(\^\^?|__?|=)?([A-Ga-g])([,']*)({_LENGTH})(\.?-)?)"  # groups 1 to 6, see NOTE_GROUPS
NOTE_GROUPS = (2, 3, 4, 5, 6)  # accidental, letter, octave marks, length, tie

TOKEN = re.compile(
    rf"""
      {_NOTE}
    | (?P<space>[ \t`]+ | y{_LENGTH})
    | (?P<bar>(?P<line>\.?(?:\[\||\||:[|:\]])(?:[|:\]]|\[(?=\|))*)(?P<passes>\[?[0-9]+(?:[,-][0-9]+)*)?)
    | (?P<field>\[(?P<letter>[A-Za-z]):(?P<value>[^\[\]]*)\])
    | (?P<ending>\[[0-9]+(?:[,-][0-9]+)*)
    | (?P<chord>\[(?P<inside>(?:"[^"]*"|[^\]\[":|])*)\](?P<times>{_LENGTH})(?P<tied>\.?-)?)
    | (?P<tuplet>\((?P<actual>[0-9]+)(?::(?P<normal>[0-9]*))?(?::(?P<count>[0-9]*))?)
    | (?P<overlay>\(?&\)?)
    | (?P<open>\.?\()
    | (?P<close>\.?\))
    | (?P<grace>\{{(?P<slash>/?)(?P<graces>[^{{}}|]*)\}})
    | (?P<quote>"(?P<quoted>[^"]*)")
    | (?P<broken><+|>+)
    | (?P<rest>(?P<shown>[zx])(?P<long>{_LENGTH}))
    | (?P<bars>(?P<all>[ZX])(?P<number>[0-9]*))
    | (?P<decoration>!(?P<name>[^!\s|\[\]"]{{1,30}})!)
    | (?P<plus>\+(?P<old>[^+\s|\[\]"]{{1,30}})\+)
    | (?P<sign>[.~H-Wh-w])
    | (?P<tie>-)
    | (?P<skipped>[$*;?@#\\!])
    | (?P<digits>[0-9]+)
    | (?P<stray>.)
    """,
    re.VERBOSE | re.DOTALL,
)
INSIDE = re.compile(  # what may stand within a chord or the braces of grace notes
    rf"""
      {_NOTE}
    | (?P<chord>\[(?P<inside>[^\[\]]*)\](?P<times>{_LENGTH}))
    | (?P<quote>"(?P<quoted>[^"]*)")
    | (?P<decoration>!(?P<name>[^!\s|\[\]"]{{1,30}})!)
    | (?P<sign>[.~H-Wh-w])
    | (?P<other>.)
    """,
    re.VERBOSE | re.DOTALL,
)


@lru_cache(maxsize=1024)
def multiplier(text: str) -> Fraction | None:
    """What a length such as ``3/2``, ``/`` or ``//`` multiplies by; None where it is zero or beyond reason (4.3).

    >>> multiplier("3//")
    Fraction(3, 4)
    """
    top, slash, rest = text.partition("/")
    bottom = rest.lstrip("/")
    slashes = len(slash) + len(rest) - len(bottom)
    if len(top) > 4 or len(bottom) > 4 or slashes > 9:
        return None
    below = int(bottom) * 2 ** (slashes - 1) if bottom else 2**slashes
    return Fraction(int(top or 1), below) or None if below else None


@lru_cache(maxsize=256)
def bar_line(text: str) -> tuple[int, int, BarLine]:
    """What a bar line says: times that a repeat ends, times that one opens, and how it looks (4.8).

    Read liberally, as the standard asks: colons before a stroke end a repeat, those after the last stroke open one.

    >>> bar_line("::")
    (1, 1, <BarLine.PLAIN: 'plain'>)
    """
    strokes = text.lstrip(".").replace("[|]", "|")  # an invisible bar line divides like a plain one
    bare = strokes.strip(":")
    if not bare:
        return len(strokes) // 2, len(strokes) // 2, BarLine.PLAIN
    opens = len(strokes) - len(strokes.rstrip(":"))
    ends = max(map(len, re.findall(":+", strokes[: len(strokes) - opens])), default=0)
    if "]" in bare:
        look = BarLine.FINAL
    elif ("[" in bare or bare.count("|") > 1) and not ends:
        look = BarLine.DOUBLE
    else:
        look = BarLine.PLAIN
    return ends, opens, look


def passes(text: str) -> tuple[int, ...]:
    """Passes that an ending such as ``1``, ``1,3`` or ``1-3`` is for, ascending; empty where it makes no sense (4.10).

    >>> passes("1,3,5-7")
    (1, 3, 5, 6, 7)
    """
    found: set[int] = set()
    for part in text.lstrip("[").split(","):
        first, _, last = part.partition("-")
        if not first or len(first) > 2 or len(last) > 2:
            return ()
        low, high = int(first), int(last or first)
        if not 1 <= low <= high <= MAX_PASSES:
            return ()
        found.update(range(low, high + 1))
    return tuple(sorted(found))
