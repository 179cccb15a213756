#!/usr/bin/env bash
# usage: never_include.sh ROOT
# Arrows go one way, qml -> app -> model: fails and names each include that goes against them.
set -uo pipefail
cd "$1" || exit 2
status=0

# never NAME FOLDER PATTERN: no source file in FOLDER includes what PATTERN matches.
# main.cpp is the one file that sees every part.
never() {
    local found
    found=$(grep -rnE --include='*.hpp' --include='*.cpp' --include='*.h' --exclude=main.cpp \
        "^[[:space:]]*#[[:space:]]*include[[:space:]]*[<\"]$3" "$2")
    if [[ -n $found ]]; then
        printf '%s:\n%s\n' "$1" "$found"
        status=1
    fi
}

[[ -n $(find model -name '*.hpp' -print -quit) ]] || { echo "no headers in $1/model"; exit 2; }
never "model/ includes Qt" model '(Q[A-Z]|Qt)'
never "model/ includes app/ or qml/" model '(\.\./)*(app|qml)/'
never "model/ does input or output" model \
    '(fstream|iostream|istream|ostream|filesystem|cstdio|stdio\.h|syncstream|unistd\.h)>'
never "app/ includes qml/" app/ '(\.\./)*qml/'
never "app/ includes Boost.Geometry, which belongs to model/geometry" app 'boost/geometry'

exit $status
