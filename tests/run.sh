#!/bin/sh
# sh tests/run.sh [PYTEST ARGUMENTS]: set up what is missing, then check style and types and run the tests.
cd "$(dirname "$0")/.." || exit 1
. app/setup.sh
set_up "[test]" $PACKAGES poppler-utils
if [ $# -eq 0 ]; then
    .venv/bin/ruff check app core tests || exit 1
    .venv/bin/ruff format --check -q app core tests || exit 1
    .venv/bin/mypy || exit 1
    set -- -n auto --dist loadfile
fi
exec .venv/bin/python -m pytest -q "$@"
