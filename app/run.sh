#!/bin/sh
# sh app/run.sh [FILE]: set up what is missing and open Bowbench. Without a display it makes the lesson pack of the
# sample lesson in place of the window.
from=$(pwd)
cd "$(dirname "$0")/.." || exit 1
. app/setup.sh
set_up "" $PACKAGES
top=$(pwd)

if [ "$(uname)" = Linux ] && [ -z "$DISPLAY$WAYLAND_DISPLAY$QT_QPA_PLATFORM" ]; then
    pack="${XDG_DATA_HOME:-$HOME/.local/share}/bowbench/sample-pack"
    say "There is no display, so the window cannot open. Making the lesson pack of the sample lesson instead:"
    QT_QPA_PLATFORM=offscreen exec .venv/bin/python -m app.sample_pack "$pack"
fi
cd "$from" || exit 1
PYTHONPATH="$top${PYTHONPATH:+:$PYTHONPATH}" exec "$top/.venv/bin/python" -m app "$@"
