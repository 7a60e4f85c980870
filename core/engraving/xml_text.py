"""Text and attributes of our MEI, with XML's own signs written as references.

``xml.sax.saxutils`` would do the same, but brings network code with it that the start of the program would wait for.
"""

from __future__ import annotations

from html import escape as _escape


def escape(text: str) -> str:
    """Text between tags.

    >>> escape("Reels & <jigs>")
    'Reels &amp; &lt;jigs&gt;'
    """
    return _escape(text, quote=False)


def quoteattr(text: str) -> str:
    """The value of an attribute with its quotes.

    >>> quoteattr('the "old" way')
    '"the &quot;old&quot; way"'
    """
    return f'"{_escape(text)}"'
