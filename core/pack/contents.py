"""The contents page of a pack: one HTML file that needs nothing else, on screen or on paper."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from urllib.parse import quote

from core.accent_plan import plan_name
from core.pack.facts import Facts
from core.pack.manifest import FileRecord, LessonRecord
from core.sheet_plan import CAUTION
from core.shelf.folding import sort_key
from core.translation import plural, tr, translatable
from core.values import dataclass

SUFFIX_WORDS = translatable({
    ".pdf": "Sheet", ".musicxml": "MusicXML", ".abc": "ABC", ".mid": "MIDI", ".mp3": "Sound",
})  # fmt: skip
HEADINGS = translatable(("Tune", "Dance", "Key", "Bowings", "Files"))
_STYLE = """
:root { color-scheme: light dark; }
body { font: 16px/1.45 "Liberation Serif", Georgia, serif; max-width: 72em; margin: 2em auto; padding: 0 1.5em; }
h1 { font-size: 1.9em; font-weight: normal; margin: 0 0 .2em; }
h2 { font-size: 1.25em; margin: 2em 0 .4em; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: .55em 1em .55em 0; }
th { border-bottom: 2px solid; font-weight: bold; }
td { border-bottom: 1px solid #999; }
th[scope=row] { border-bottom: 1px solid #999; }
.quiet { opacity: .75; }
.files a { white-space: nowrap; margin-right: .8em; }
ul { margin: 0; padding-left: 1.1em; }
.wrong { border-left: 3px solid #b3541e; padding: .1em 0 .1em .7em; margin: .3em 0 0; list-style: none; }
@media print { body { margin: 0; max-width: none; font-size: 10pt; } tr { break-inside: avoid; } a { color: inherit; } }
@media (max-width: 45em) {
  thead { position: absolute; left: -99in; }
  tr, th[scope=row], td { display: block; border: 0; padding: .1em 0; }
  tr { border-bottom: 1px solid #999; padding: .6em 0; }
}
"""


@dataclass(frozen=True, slots=True)
class Row:
    """A lesson on the contents page.

    Attributes:
        facts: What there is to say of it.
        record: Its files, and what was found wrong with it.
        remarks: What was repaired or left out when its file was read.
    """

    facts: Facts
    record: LessonRecord
    remarks: tuple[str, ...] = ()


def contents_page(title: str, rows: Sequence[Row], problems: Sequence[str] = (), left_out: Sequence[str] = ()) -> str:
    """The page as HTML; the same for the same pack.

    Args:
        title: Of the pack.
        rows: The lessons; they are put in the order of their titles.
        problems: What could not be packed, and what was said of files with several tunes.
        left_out: Kinds of files that were asked for and that this version cannot make.
    """
    count = plural("1 lesson, made by Bowbench.", "{n} lessons, made by Bowbench.", len(rows))
    body = [f"<h1>{escape(title)}</h1>", f'<p class="quiet">{escape(count)}</p>']
    for kind in left_out:
        text = tr("Left out, since this version cannot make it: {kind}.", kind=kind)
        body.append(f"<p>{escape(text)}</p>")
    body += [
        "<table>",
        "<thead><tr>" + "".join(f'<th scope="col">{escape(tr(word))}</th>' for word in HEADINGS) + "</tr></thead>",
        "<tbody>",
    ]
    for row in sorted(rows, key=lambda row: (sort_key(row.facts.title), row.record.name)):
        body += _lines(row)
    body += ["</tbody>", "</table>"]
    if problems:
        body += [f"<h2>{escape(tr('What could not be packed, or was repaired'))}</h2>", "<ul>"]
        body += [f"<li>{escape(text)}</li>" for text in problems]
        body.append("</ul>")
    body.append(f'<p class="quiet">{escape(tr(CAUTION))}</p>')
    return "\n".join(
        [
            "<!DOCTYPE html>",
            f'<html lang="{tr("en", "code of the language of this page")}">',
            "<head>",
            '<meta charset="utf-8">',
            '<meta name="viewport" content="width=device-width, initial-scale=1">',
            f"<title>{escape(title)}</title>",
            f"<style>{_STYLE}</style>",
            "</head>",
            "<body>",
            *body,
            "</body>",
            "</html>",
            "",
        ]
    )


def _lines(row: Row) -> Iterator[str]:
    facts = row.facts
    title = escape(facts.title or tr("Untitled"))
    if facts.other_titles:
        title += f'<br><span class="quiet">{escape(", ".join(facts.other_titles))}</span>'
    dance = ", ".join(filter(None, (facts.dance, facts.meter)))
    bowings = "".join(
        f'<li>{escape(name)} <span class="quiet">({escape(tr("accents {plan}", plan=plan_name(accents)))})</span></li>'
        for name, accents in facts.bowings
    )
    wrong = [*row.record.remarks, *row.remarks]
    yield f'<tr><th scope="row">{title}</th><td>{escape(dance)}</td><td>{escape(facts.key)}</td>'
    yield f'<td><ul>{bowings}</ul></td><td class="files">'
    yield from (_link(row.record.name, file) for file in row.record.files)
    if wrong:
        yield '<ul class="wrong">' + "".join(f"<li>{escape(text)}</li>" for text in wrong) + "</ul>"
    yield "</td></tr>"


def _link(name: str, file: FileRecord) -> str:
    """A link that says what the file is: its kind, and which sheet or bowing where there are several."""
    stem, dot, ending = file.path.rpartition("/")[2].rpartition(".")
    which = stem.removeprefix(name).removeprefix(", ")
    suffix = dot + ending
    words = tr(SUFFIX_WORDS[suffix]) if suffix in SUFFIX_WORDS else ending
    if which:
        words = tr("{kind} ({which})", kind=words, which=which)
    return f'<a href="{quote(file.path)}">{escape(words)}</a>'
