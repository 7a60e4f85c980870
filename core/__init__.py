"""Bowbench without a window: values, rules, checks, engraving and files.

Nothing in this package imports Qt. Text and bytes come in, frozen values go out; opening files, asking the
user and painting are the business of ``app``.
"""
