#!/usr/bin/env bash
# usage: never_include_notices.sh SCRIPT
# A check that never fails is no check: each forbidden include, by itself, must make it fail.
set -uo pipefail
status=0
while read -r file include; do
    house=$(mktemp -d)
    mkdir -p "$house"/{model/load,app/view,qml}
    echo '#include <vector>' | tee "$house/model/load/a.hpp" >"$house/app/view/a.cpp"
    "$1" "$house" || { echo "refuses a house that is in order"; status=1; }
    echo "#include $include" >>"$house/$file"
    if "$1" "$house" >/dev/null; then
        echo "$file may include $include unnoticed"
        status=1
    fi
    rm -r "$house"
done <<'END'
model/load/a.hpp <QString>
model/load/a.hpp <QtCore/QString>
model/load/a.hpp "app/format/units.hpp"
model/load/a.hpp <fstream>
model/load/a.hpp <iostream>
model/load/a.hpp <filesystem>
app/view/a.cpp "qml/window.hpp"
app/view/a.cpp <boost/geometry.hpp>
END
exit $status
