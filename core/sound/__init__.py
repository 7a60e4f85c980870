"""What a bowing sounds like: timed events of a playing, the voices that sound them, and the files they are written to.

    tune + bowing + strokes ──performance──▶ attacks, tones, bars, clicks ──▶ tracks ──mix──▶ samples ──▶ files
                                                                    └──────────────midi──────────────▶ files

Times are exact: ``Fraction``s of a second up to the voices, whole samples from there on. Nothing here knows of sound
devices; a player asks a mix for any stretch of samples.
"""
