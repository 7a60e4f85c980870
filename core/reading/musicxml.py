"""MusicXML 3.x and 4.0, plain and packed, as lessons.

Parts with equal pitches and rhythm are bowings of one tune; parts that differ become further lessons. A file that
``core.writing.musicxml`` wrote gives an equal lesson back, whatever other programs left of its fields. What lessons
have no place for is left out and said, one sentence for each kind.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from lxml import etree

from core.bowing import Bowing
from core.errors import UnreadableFileError
from core.lesson import AS_WRITTEN, Lesson, free_name
from core.lesson_fields import Fields, from_fields
from core.reading import Reading
from core.reading.limits import MAX_PARTS
from core.reading.measure_reader import Budget, MeasureReader
from core.reading.musicxml_bars import PartBars, build_bars
from core.reading.musicxml_bowing import read_bowing
from core.reading.musicxml_draft import Complaints, DraftMeasure, DraftPart
from core.reading.mxl import unpack_mxl
from core.reading.xml_tree import parse_xml
from core.translation import tr
from core.tune import Bar, Credit, Tempo, Tune
from core.values import dataclass

MAX_TEXT = 5000  # characters of a title or credit in the files of others


def read_mxl(data: bytes) -> Reading:
    """Read packed MusicXML.

    Raises:
        UnreadableFileError: it cannot be unpacked, or what is inside cannot be read.
    """
    return read_musicxml(unpack_mxl(data))


def read_musicxml(data: bytes) -> Reading:
    """Read a MusicXML document.

    Raises:
        UnreadableFileError: no XML, no MusicXML, too large, or no part with notes.
    """
    root = parse_xml(data)
    if root.tag not in ("score-partwise", "score-timewise"):
        raise UnreadableFileError(
            tr(
                "The document is a “{name}”, not a MusicXML score (score-partwise or score-timewise).",
                name=str(root.tag)[:40],
            ),
            root.sourceline,
        )
    complaints = Complaints()
    header = _read_header(root)
    for text in header.fields.problems:
        complaints.say(0, text)
    if header.fields.is_newer:
        complaints.say(0, tr("The file was written by a later version of this program: what is new there is left out."))
    parts = [part for part in _read_parts(root, header, complaints) if part.measures]
    if not parts:
        raise UnreadableFileError(tr("The score has no part with measures in it."), root.sourceline)
    parts = _with_notes(parts, complaints)
    _share_signs(parts)
    lessons = _lessons(parts, header, complaints)
    return Reading(
        lessons=lessons,
        problems=complaints.sorted_problems(),
        is_lesson_file=header.fields.is_ours and not header.fields.is_newer and len(lessons) == 1,
    )


# ---- header


@dataclass(frozen=True, slots=True)
class _Header:
    """What stands before the parts."""

    title: str
    other_titles: tuple[str, ...]
    credits: tuple[Credit, ...]
    fields: Fields
    part_names: dict[str, str]


def _read_header(root: etree._Element) -> _Header:
    fields = from_fields(
        ((element.get("name") or "").strip(), element.text or "")
        for element in root.iterfind("identification/miscellaneous/miscellaneous-field")
    )

    def text(element: etree._Element | None) -> str:
        found = (element.text or "") if element is not None else ""
        return found if fields.is_ours else " ".join(found.split())[:MAX_TEXT]

    credits = [
        Credit((element.get("type") or "creator").strip(), text(element))
        for element in root.iterfind("identification/creator")
    ]
    credits += [Credit("rights", text(element)) for element in root.iterfind("identification/rights")]
    credits += [Credit("source", text(element)) for element in root.iterfind("identification/source")]
    credits += [Credit(kind, words) for kind, words in fields.credits]
    order = fields.tune.credit_order
    if sorted(order) == list(range(len(credits))):
        credits = [credits[place] for place in order]
    titles = [text(root.find(path)) for path in ("work/work-title", "movement-title")]
    titles = list(dict.fromkeys(filter(None, titles))) or [_page_title(root)]
    return _Header(
        title=titles[0],
        other_titles=fields.tune.other_titles if fields.is_ours else tuple(titles[1:]),
        credits=tuple(credit for credit in credits if credit.text or fields.is_ours),
        fields=fields,
        part_names={
            element.get("id") or "": text(element.find("part-name"))
            for element in root.iterfind("part-list/score-part")
        },
    )


def _page_title(root: etree._Element) -> str:
    """A title that is only printed on the first page."""
    for credit in root.iterfind("credit"):
        kinds = [(kind.text or "").strip() for kind in credit.iterfind("credit-type")]
        if "title" in kinds:
            return " ".join(" ".join(words.text or "" for words in credit.iterfind("credit-words")).split())
    return ""


# ---- parts


def _read_parts(root: etree._Element, header: _Header, complaints: Complaints) -> list[DraftPart]:
    """All parts, whether the file goes part by part or measure by measure."""
    readers: dict[str, MeasureReader] = {}
    budget = Budget()

    def reader(element: etree._Element) -> MeasureReader | None:
        part_id, line = (element.get("id") or "").strip(), element.sourceline or 0
        if part_id not in readers:
            if len(readers) >= MAX_PARTS:
                complaints.once(line, tr("The score has more than {most} parts: some were left out.", most=MAX_PARTS))
                return None
            if part_id not in header.part_names:
                complaints.once(line, tr("A part that the part list does not name was read without a name."))
            part = DraftPart(part_id, header.part_names.get(part_id, ""), line)
            readers[part_id] = MeasureReader(part, complaints, header.fields.tune, header.fields.is_ours, budget)
        return readers[part_id]

    for element in root:
        if element.tag == "part" and (read := reader(element)):
            for measure in element.iterfind("measure"):
                read.read(measure, measure)
        elif element.tag == "measure":
            for part in element.iterfind("part"):
                if read := reader(part):
                    read.read(element, part)
    for read in readers.values():
        read.finish()
    for part_id in header.part_names.keys() - readers.keys():
        complaints.say(
            0, tr("The part list names a part “{name}” that is not in the file.", name=header.part_names[part_id][:40])
        )
    return [read.part for read in readers.values()]


def _with_notes(parts: list[DraftPart], complaints: Complaints) -> list[DraftPart]:
    """The parts that have notes; all of them where none has."""

    def has_notes(part: DraftPart) -> bool:
        return any(not note.is_rest for m in part.measures for notes in m.voices.values() for note in notes)

    sounding = [part for part in parts if has_notes(part)]
    if not sounding:
        return parts
    for part in parts:
        if part not in sounding:
            complaints.say(part.line, tr("Part “{name}” has no pitched notes: it was left out.", name=part.name[:40]))
    return sounding


def _share_signs(parts: Sequence[DraftPart]) -> None:
    """Give what a score prints once, over its first part, to the parts that have none of it."""
    tempo = next((part.tempo for part in parts if part.tempo), None)
    for part in parts:
        part.tempo = part.tempo or tempo
    for belongs in _SHARED:
        source = next((part for part in parts if any(belongs(measure) for measure in part.measures)), None)
        for part in parts:
            if source is None or part is source or len(part.measures) != len(source.measures):
                continue
            if any(belongs(measure) for measure in part.measures):
                continue
            for measure, shown in zip(part.measures, source.measures, strict=True):
                belongs.copy(shown, measure)


class _Shared:
    """Something of a measure that stands in one part and holds for all: the names of the draft's attributes."""

    def __init__(self, *names: str) -> None:
        self._names = names

    def __call__(self, measure: DraftMeasure) -> bool:
        return any(getattr(measure, name) for name in self._names)

    def copy(self, source: DraftMeasure, target: DraftMeasure) -> None:
        for name in self._names:
            value = getattr(source, name)
            setattr(target, name, list(value) if isinstance(value, list) else value)


_SHARED = (
    _Shared("part"),
    _Shared("segno", "coda", "to_coda", "fine", "jump", "coda_signs"),
    _Shared("chords"),
)


# ---- lessons


def _lessons(parts: Sequence[DraftPart], header: _Header, complaints: Complaints) -> tuple[Lesson, ...]:
    """One lesson for each tune: the first part that has it gives the tune, all that have it give a bowing."""
    is_ours = header.fields.is_ours
    groups: list[list[tuple[DraftPart, PartBars]]] = []
    by_signature: dict[object, list[tuple[DraftPart, PartBars]]] = {}
    for part in parts:
        built = build_bars(part, complaints, is_ours)
        signature = tuple(map(_signature, built.bars))
        if signature not in by_signature:
            by_signature[signature] = []
            groups.append(by_signature[signature])
        by_signature[signature].append((part, built))
    lessons = []
    for index, group in enumerate(groups):
        leader, built = group[0]
        tune = _tune(header, leader.tempo, built.bars)
        if len(groups) > 1:
            tune = replace(tune, number=index + 1, title=", ".join(filter(None, (tune.title, leader.name))))
        of_tune = header.fields.tune
        lesson = Lesson(tune, (), header.fields.others, of_tune.quiet, of_tune.reach, of_tune.tuning, of_tune.sheet)
        for part, of_part in group:
            drafts = [(draft, note_id) for (draft, _), (_, note_id) in zip(of_part.drafts, built.drafts, strict=True)]
            name = part.name if is_ours or len(group) > 1 else AS_WRITTEN
            fields = header.fields.bowing(part.id) if is_ours else None
            bowing = read_bowing(tune, free_name(lesson, name or AS_WRITTEN), drafts, complaints, fields)
            lesson = _with(lesson, bowing)
        lessons.append(lesson)
    return tuple(lessons)


def _with(lesson: Lesson, bowing: Bowing) -> Lesson:
    return replace(lesson, bowings=(*lesson.bowings, bowing))


def _signature(bar: Bar) -> object:
    """What two parts must share to be one tune: pitches and rhythm."""
    return tuple((note.at, note.length, note.pitches, note.held) for note in bar.notes)


def _tune(header: _Header, tempo: Tempo | None, bars: tuple[Bar, ...]) -> Tune:
    fields = header.fields.tune
    return Tune(
        title=header.title,
        bars=bars,
        other_titles=header.other_titles,
        dance=fields.dance,
        tempo=tempo,
        credits=header.credits,
        part_order=fields.part_order,
        number=fields.number,
    )
