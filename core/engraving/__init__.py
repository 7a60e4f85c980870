"""Engraving: a tune and a bowing in, a picture (display list) out, one line of bars at a time."""
