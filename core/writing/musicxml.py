"""Lessons as MusicXML 4.0: one part for each bowing, the notes the same in all of them.

The first part carries what belongs to the tune as a whole: chords, words, tempo, part letters, signs and jumps. What
the standard has no element for stands in miscellaneous fields (``core.lesson_fields``). Reading the text back with
``core.reading.musicxml`` gives an equal lesson.

Left out, since XML cannot hold them: control characters in texts.
"""

from __future__ import annotations

from lxml import etree

from core.bowing import Articulation, Bowing, Join
from core.lesson import Lesson
from core.lesson_fields import BarFacts, BowingFields, TuneFields, to_fields
from core.measures import implied_repeats, measure_numbers
from core.musicxml_names import VERSION
from core.tune import BarLine, Credit, Tune
from core.values import dataclass
from core.writing.grid import Grid
from core.writing.measures import add_measures, hides_tonic
from core.writing.xml_tree import add
from core.written_bows import hook_sides, struck_before

_DOCTYPE = (
    '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" '
    '"http://www.musicxml.org/dtds/partwise.dtd">'
)
# Kinds of credit that name no person; all others are a creator of that type.
NOT_CREATORS = {
    "origin", "source", "book", "notes", "history", "discography", "group", "area", "file", "lyrics", "rights",
}  # fmt: skip


def write_musicxml(lesson: Lesson) -> str:
    """Write a lesson as a MusicXML 4.0 document.

    Args:
        lesson: The lesson; its invariants (see ``core.tune`` and ``core.bowing``) are taken for granted.
    Returns:
        The whole document; its first line says UTF-8, so encode it as that.
    """
    root = etree.Element("score-partwise", version=VERSION)
    part_ids = [f"P{index}" for index in range(1, len(lesson.bowings) + 1)]
    _add_header(root, lesson, part_ids)
    grid = Grid(lesson.tune)
    for index, (part_id, bowing) in enumerate(zip(part_ids, lesson.bowings, strict=True), start=1):
        part = add(root, "part", id=part_id)
        add_measures(part, lesson.tune, bowing, grid, prefix=f"v{index}.", leads=index == 1)
    etree.indent(root)
    body = etree.tostring(root, encoding="unicode")
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{_DOCTYPE}\n{body}\n'


def _add_header(root: etree._Element, lesson: Lesson, part_ids: list[str]) -> None:
    tune = lesson.tune
    if tune.title:
        add(add(root, "work"), "work-title", tune.title)
    shelves = _shelve(tune.credits)
    identification = add(root, "identification")
    for place in shelves.creators:
        add(identification, "creator", tune.credits[place].text, type=tune.credits[place].kind)
    for place in shelves.rights:
        add(identification, "rights", tune.credits[place].text)
    add(add(identification, "encoding"), "software", "Bowbench")
    for place in shelves.source:
        add(identification, "source", tune.credits[place].text)
    miscellaneous = add(identification, "miscellaneous")
    fields = to_fields(
        TuneFields(
            number=tune.number,
            dance=tune.dance,
            other_titles=tune.other_titles,
            part_order=tune.part_order,
            credit_order=shelves.order,
            quiet=lesson.quiet,
            reach=lesson.reach,
            tuning=lesson.tuning,
            sheet=lesson.sheet,
            bars=_bar_facts(tune),
        ),
        {part_id: _bowing_fields(tune, bowing) for part_id, bowing in zip(part_ids, lesson.bowings, strict=True)},
        [(tune.credits[place].kind, tune.credits[place].text) for place in shelves.fields],
        lesson.fields,
    )
    for name, text in fields:
        add(miscellaneous, "miscellaneous-field", text, name=name)
    part_list = add(root, "part-list")
    for part_id, bowing in zip(part_ids, lesson.bowings, strict=True):
        add(add(part_list, "score-part", id=part_id), "part-name", bowing.name)


@dataclass(frozen=True, slots=True)
class _Shelves:
    """Places in ``Tune.credits`` by the element that takes them; each in file order."""

    creators: tuple[int, ...]
    rights: tuple[int, ...]
    source: tuple[int, ...]  # one at most
    fields: tuple[int, ...]

    @property
    def order(self) -> tuple[int, ...]:
        """Where each credit stands among the elements; empty where they stand in file order."""
        written = self.creators + self.rights + self.source + self.fields
        return () if list(written) == sorted(written) else tuple(written.index(place) for place in range(len(written)))


def _shelve(credits: tuple[Credit, ...]) -> _Shelves:
    of_kind = {kind: [p for p, credit in enumerate(credits) if credit.kind == kind] for kind in ("rights", "source")}
    creators = tuple(place for place, credit in enumerate(credits) if credit.kind not in NOT_CREATORS)
    rights, source = tuple(of_kind["rights"]), tuple(of_kind["source"][:1])
    taken = {*creators, *rights, *source}
    return _Shelves(creators, rights, source, tuple(place for place in range(len(credits)) if place not in taken))


def _bowing_fields(tune: Tune, bowing: Bowing) -> BowingFields:
    sides = hook_sides(tune, (note_id for note_id, how in bowing.joins.items() if how is Join.HOOK))
    own_dots = frozenset(i for i, signs in bowing.signs.items() if Articulation.STACCATO in signs.articulations)
    lines = frozenset(i for i, signs in bowing.signs.items() if Articulation.TENUTO in signs.articulations)
    like_hooks = {
        note_id
        for note_id, how in bowing.joins.items()
        for marked in (own_dots | sides, lines)
        if how is Join.SLUR and note_id in marked and (before := struck_before(tune, note_id)) and before.id in marked
    }
    return BowingFields(
        accents=bowing.accents,
        accent_changes=bowing.accent_changes,
        marks=bowing.marks,
        retakes=bowing.retakes,
        slurs=frozenset(like_hooks),
        dots=own_dots & sides,
    )


def _bar_facts(tune: Tune) -> dict[str, BarFacts]:
    """Facts of the bars that have any, by measure number."""
    endings = [bar.ending for bar in tune.bars]
    facts = {}
    numbers = measure_numbers([bar.number for bar in tune.bars])
    for index, (bar, number) in enumerate(zip(tune.bars, numbers, strict=True)):
        before = tune.bars[index - 1] if index else None
        tells_times = not bar.ending or bar.repeats in (0, implied_repeats(endings, index))
        of_bar = BarFacts(
            start=bar.start or None,
            times=None if tells_times else bar.repeats,
            line=bar.line if bar.repeats and bar.line is BarLine.FINAL else None,
            key=bar.key if hides_tonic(bar.key) and (before is None or before.key != bar.key) else None,
        )
        if of_bar != BarFacts():
            facts[number.text] = of_bar
    return facts
