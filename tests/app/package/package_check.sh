#!/usr/bin/env bash
# Installs the built program into a folder of its own and has each file judged by the tool that a
# desktop reads it with.
#
#   package_check.sh BUILD
set -euo pipefail
build=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

cmake --install "$build" --prefix "$folder/usr" >/dev/null
share=$folder/usr/share

"$folder/usr/bin/underbough" --version | grep -q '^underbough [0-9]'
desktop-file-validate "$share"/applications/*.desktop
appstreamcli validate --no-net "$share"/metainfo/*.xml
update-mime-database "$share/mime"
grep -q 'application/x-underbough-garden:\*.underbough' "$share/mime/globs2" ||
    { echo "the file type is not known by its ending"; exit 1; }
grep -aq 'application/x-underbough-garden' "$share/mime/magic" ||
    { echo "the file type is not known by its first bytes"; exit 1; }

told=$(LC_ALL=C.UTF-8 MANWIDTH=80 man --warnings -E UTF-8 -l "$share/man/man1/underbough.1" 2>&1 >"$folder/manual")
[[ -z $told ]] || { echo "man says of the manual: $told"; exit 1; }
tr -s ' \n' '  ' <"$folder/manual" >"$folder/words"
for said in 'never say that a tree is safe' 'assess' '\-\-explain LIMB' 'Exit status'; do
    grep -q -- "$said" "$folder/words" || { echo "the manual lacks: $said"; exit 1; }
done

# shellcheck source=/dev/null
source "$share/bash-completion/completions/underbough"
completed() {
    COMP_WORDS=(underbough "$@")
    COMP_CWORD=$#
    _underbough
    echo "${COMPREPLY[*]}"
}
[[ $(completed ass) == assess ]] || { echo "ass is completed to: $(completed ass)"; exit 1; }
[[ $(completed assess --expl) == --explain ]] || { echo "no completion of --expl"; exit 1; }

# No folder of the machine it was built on is needed any more.
if grep -aq "$(cd "$build/.." && pwd)/trees" "$folder/usr/bin/underbough"; then
    echo "the program looks into the folder it was built in"
    exit 1
fi
