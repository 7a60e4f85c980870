"""Key and metre as MEI: where a line begins, where they change, and at the end of a line as a warning.

Where the next line begins in another key or metre, the line before it ends with the new one, behind the last bar line
(common practice: Gould, Behind Bars, 2011, from memory).
"""

from __future__ import annotations

from itertools import pairwise

from core.engraving.lines import Line
from core.engraving.skeleton import ACCIDENTALS
from core.tune import SHARP_ORDER, Bar, Key, Meter, Tune

_UNSEEN = ' visible="false"'
_NO_MUSIC = '<measure right="invis" metcon="false"><staff n="1"><layer n="1"/></staff></measure>'


def key_signature(key: Key) -> str:
    """The signature of a key; one with no accidentals shows nothing, or takes those before it back."""
    if not key.altered:
        return f'<keySig sig="{abs(key.fifths) or ""}{"s" if key.fifths > 0 else "f" if key.fifths else "0"}"/>'
    alters = key.alters()
    order = [*SHARP_ORDER] if key.fifths >= 0 else [*reversed(SHARP_ORDER)]
    signs = "".join(
        f'<keyAccid pname="{step.lower()}" accid="{ACCIDENTALS[alters[step]]}"/>' for step in order if alters[step]
    )
    return f"<keySig>{signs}</keySig>" if signs else '<keySig sig="0"/>'


def meter_signature(meter: Meter, shown: bool) -> str:
    """The signature of a metre; free metre never shows one."""
    count = "+".join(map(str, meter.groups)) or "4"
    unit = meter.unit if meter.groups else 4
    sign = f' sym="{meter.sign}"' if meter.sign else ""
    return f'<meterSig count="{count}" unit="{unit}"{sign}{"" if shown and meter.groups else _UNSEEN}/>'


def changes(before: Bar, bar: Bar) -> str:
    """Key and metre of a bar, where they are not those of the bar before it; else ""."""
    key = key_signature(bar.key) if bar.key != before.key else ""
    if key == key_signature(before.key):
        key = ""  # another mode
    meter = meter_signature(bar.meter, shown=True) if bar.meter != before.meter else ""
    return f"<scoreDef>{key}{meter}</scoreDef>" if key or meter else ""


def warning(tune: Tune, line: Line) -> str:
    """What stands behind a line's last bar line: a bar of no music in the new key or metre; "" where none comes."""
    if line.stop == len(tune.bars):
        return ""
    found = changes(*tune.bars[line.stop - 1 : line.stop + 1])
    return found + _NO_MUSIC if found.replace(_TO_FREE, "") else ""


def has_changes(tune: Tune, line: Line) -> bool:
    """A new key or metre stands behind one of the line's bar lines."""
    return any(changes(before, bar) for before, bar in pairwise(tune.bars[line.first : line.stop + 1]))


_TO_FREE = f"<scoreDef>{meter_signature(Meter(()), shown=True)}</scoreDef>"  # shows nothing
