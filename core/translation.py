"""Texts in the language of whoever reads them.

English stands in the sources and is what every function here gives until the application installs a translator, once,
before anything is shown. ``core`` knows no language but English and needs no file for it.

For developers:

* A text is a whole sentence, or a whole label, with named places: ``tr("{bars}: no down-bow", bars=...)``. It is a
  literal, never an f-string, since what cannot be read off the source cannot be translated. No sentence is put together
  from pieces; a place is filled with a name, a number, or a phrase that is translated by itself.
* A text with a count is ``plural("1 slur more", "{n} slurs more", count)``. Two counts in one sentence are two texts.
* Texts in tables are marked where they stand (``translatable``) and translated where they are shown
  (``tr(row.title)``): a table is read in before the language is known.
* Two meanings of one English text are told apart by ``comment``.
* Lists, ordinals, numbers and shares go through ``listed``, ``ordinal``, ``number`` and ``percent``.
* What is compared, kept in files or told as JSON stays what it is, in every language.

For translators: the texts are in ``resources/translations``, in Qt's format. ``python -m tests.translations`` brings
these files up to date with the sources and compiles them. Places keep their names and may change their order; ``{n}``
is a count, and each form of the language has a text of its own. Ordinals and names of bars stand in sentences
unchanged: choose forms that fit every case, such as figures.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TypeAlias, TypeVar

Translator: TypeAlias = Callable[[str, str, int | None], str]
"""Text, comment and count (None without one) to the translation, its places not yet filled; "" where there is none."""

Texts = TypeVar("Texts")

_translator: Translator | None = None


def install(translator: Translator | None) -> None:
    """Translate all texts from now on; None gives English again."""
    global _translator
    _translator = translator


def tr(text: str, comment: str = "", /, **values: object) -> str:
    """A text in the language of the reader.

    Args:
        text: In English, with a place such as ``{bars}`` for each value.
        comment: What tells it from another text that is the same in English, or helps to translate it.
        values: What the places are filled with; they may hold braces.

    >>> tr("{bars}: {count} strokes", bars="bar 5", count=3)
    'bar 5: 3 strokes'
    """
    translated = (_translator and _translator(text, comment, None)) or text
    return translated.format(**values) if values else translated


def plural(one: str, many: str, n: int, comment: str = "", /, **values: object) -> str:
    """A text with a count, in the form that the language has for it.

    Args:
        one: In English, for a count of one.
        many: In English, for any other; ``{n}`` is the count. Translations are kept under this text.
        n: The count.
        comment, values: As in ``tr``.

    >>> plural("{bars}: 1 slur", "{bars}: {n} slurs", 2, bars="bar 5")
    'bar 5: 2 slurs'
    """
    translated = (_translator and _translator(many, comment, n)) or (one if n == 1 else many)
    return translated.format(n=n, **values)


def translatable(texts: Texts, comment: str = "", /) -> Texts:
    """Mark a text, or all texts of a dict's values or of a tuple, that will be translated where they are shown.

    ``comment`` is that of ``tr``, which gets it as well.
    """
    return texts


_ORDINALS = translatable((
    "first", "second", "third", "fourth", "fifth", "sixth",
    "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth",
))  # fmt: skip


def listed(words: Sequence[str]) -> str:
    """Words in a row.

    >>> listed(["a", "b", "c"])
    'a, b and c'
    """
    if len(words) < 2:
        return "".join(words)
    row = words[0]
    for word in words[1:-1]:
        row = tr("{row}, {word}", "two of three or more in a row", row=row, word=word)
    return tr("{row} and {word}", "the end of a row", row=row, word=words[-1])


def ordinal(n: int) -> str:
    """A number, from 1, as an ordinal.

    >>> ordinal(3), ordinal(22), ordinal(112)
    ('third', '22nd', '112th')
    """
    if n <= len(_ORDINALS):
        return tr(_ORDINALS[n - 1])
    ending = 0 if n % 100 in (11, 12, 13) else n % 10
    return (
        tr("{n}st", n=n) if ending == 1
        else tr("{n}nd", n=n) if ending == 2
        else tr("{n}rd", n=n) if ending == 3
        else tr("{n}th", n=n)
    )  # fmt: skip


def number(value: float, form: str = "g") -> str:
    """A number with the decimal sign of the language.

    Args:
        value: The number.
        form: As ``format`` has it.

    >>> number(2.5), number(3, ".1f")
    ('2.5', '3.0')
    """
    return format(value, form).replace(".", tr(".", "decimal sign"))


def percent(share: float) -> str:
    """A share (0 to 1) in whole percent.

    >>> percent(0.254)
    '25%'
    """
    return tr("{n}%", "a share", n=round(100 * share))


def inside(text: str) -> str:
    """A text that begins with a capital, as it stands inside a sentence.

    >>> inside("Slur bar 3")
    'slur bar 3'
    """
    is_small = tr("small", "first letter of a text that is put inside a sentence: “small”, or “as it is”") == "small"
    return f"{text[:1].lower()}{text[1:]}" if is_small else text


def sentence(clause: str) -> str:
    """A clause as a sentence: a capital first, a full stop at the end.

    >>> sentence("bar 5 begins up")
    'Bar 5 begins up.'
    """
    return tr("{clause}.", "a clause becomes a sentence", clause=f"{clause[:1].upper()}{clause[1:]}")
