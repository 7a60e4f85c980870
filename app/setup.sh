# Sourced by app/run.sh and tests/run.sh, from the top of the repository: makes .venv hold what the program needs.
# Usage: set up EXTRAS SYSTEM_PACKAGES ... ; EXTRAS is "" or "[test]".
# Everything is skipped when pyproject.toml and the interpreter are those of the last set-up.

say() { printf '%s\n' "$*" >&2; }

find_python() {
    for name in python3.13 python3.12 python3.11 python3; do
        if command -v "$name" >/dev/null 2>&1 &&
            "$name" -c 'import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
            command -v "$name"
            return 0
        fi
    done
    return 1
}

# Debian packages that are asked for and not installed; since Debian 13 some names end in t64
missing_packages() {
    command -v dpkg-query >/dev/null 2>&1 || return 0
    for package in "$@"; do
        dpkg-query -W -f='${Status} ' "$package" "${package}t64" 2>/dev/null | grep -q 'ok installed' ||
            printf '%s ' "$package"
    done
}

set_up() {
    extras=$1
    shift
    missing=$(missing_packages "$@")
    if [ -n "$missing" ]; then
        if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
            say "Installing system packages: $missing"
            # shellcheck disable=SC2086  # a list of package names
            { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing; } \
                >/dev/null 2>&1 || say "Could not install them all; going on."
        else
            say "These Debian packages are missing and may be needed: $missing"
        fi
    fi
    python=$(find_python) || python=
    if [ -z "$python" ] && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
        { apt-get update -qq && apt-get install -y -qq python3 python3-venv; } >/dev/null 2>&1
        python=$(find_python) || python=
    fi
    if [ -z "$python" ]; then
        say "Bowbench needs Python 3.11 or newer with its venv module (Debian: python3 python3-venv)."
        exit 1
    fi
    stamp=.venv/set-up$(printf '%s' "$extras" | tr -d '[]')
    wanted=$("$python" -c 'import sys; print(sys.version)'; cksum pyproject.toml; pwd)
    if [ ! -x .venv/bin/python ] || [ "$(cat "$stamp" 2>/dev/null)" != "$wanted" ]; then
        say "Setting up .venv (once; a few minutes where nothing is downloaded yet)."
        log=$(mktemp)
        {
            "$python" -m venv .venv &&
                .venv/bin/python -m pip install --quiet --disable-pip-version-check --upgrade pip &&
                .venv/bin/python -m pip install --quiet --disable-pip-version-check --editable ".$extras"
        } >"$log" 2>&1 || {
            cat "$log" >&2
            say "Setting up .venv failed; the lines above say why."
            exit 1
        }
        rm -f "$log"
        printf '%s\n' "$wanted" >"$stamp"
    fi
}

PACKAGES="libpulse0 libegl1 libgl1 libxkbcommon0 libxkbcommon-x11-0 libxcb-cursor0 libxcb-icccm4 libxcb-keysyms1
    libxcb-shape0 libxcb-image0 libxcb-render-util0 libxcb-randr0 libdbus-1-3 libfontconfig1 libglib2.0-0 libgomp1"
