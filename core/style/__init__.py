"""Styles: learn how somebody joins notes, and carry on a bowing in the same hand."""
