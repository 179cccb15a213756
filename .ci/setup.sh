# Sourced by app/run and tests/run: sets up a Debian 12 machine once, and builds.
# shellcheck shell=bash disable=SC2154 # root is set by who sources this

say() { printf '%s\n' "$*" >&2; }
fail() { say "$*"; exit 2; }

# missing KIND...: one line "name what it is for" for each package of these kinds that is not there.
missing() {
    local kinds=" $* " kind name reason
    local -A installed=()
    while read -r name; do installed[$name]=1; done < <(
        dpkg-query --show --showformat '${db:Status-Status} ${Package}\n' 2>/dev/null |
            sed -n 's/^installed //p')
    while read -r kind name reason; do
        [[ $kind == \#* || -z $kind || $kinds != *" $kind "* ]] && continue
        [[ -n ${installed[$name]:-} ]] || printf '%s %s\n' "$name" "$reason"
    done <"$root/.ci/packages.txt"
}

# set_up KIND...: installs what is missing, having said what and why. Nothing is ever removed or
# replaced, and nothing is asked beyond the password that sudo may want.
set_up() {
    command -v dpkg-query >/dev/null ||
        fail "This needs Debian 12 (or its packages by another way: see .ci/packages.txt)."
    local wanted
    wanted=$(missing "$@")
    [[ -z $wanted ]] && return
    say "Installing these Debian packages, once:"
    local name reason names=()
    while read -r name reason; do
        say "  $(printf '%-36s' "$name")$reason"
        names+=("$name")
    done <<<"$wanted"
    local install='export DEBIAN_FRONTEND=noninteractive
        apt-get update -q || echo "The package lists could not be renewed; trying with the old ones."
        apt-get install -q -y --no-remove --no-install-recommends "$@"'
    if [[ $(id -u) == 0 ]]; then
        bash -c "$install" bash "${names[@]}" >&2 </dev/null
    elif command -v sudo >/dev/null; then
        sudo bash -c "$install" bash "${names[@]}" >&2
    else
        fail "As root, run: apt-get install --no-remove --no-install-recommends ${names[*]}"
    fi || fail "The packages could not be installed; the lines above say why. Nothing was built."
}

# Jobs at a time: one a processor, but no more than there is memory for (the largest files take
# about 1 GB to compile).
jobs_at_once() {
    local processors memory_MB
    processors=$(nproc)
    memory_MB=$(awk '/^MemAvailable:/ { print int($2 / 1024) }' /proc/meminfo)
    local fitting=$((memory_MB / 1200))
    ((fitting < 1)) && fitting=1
    echo $((fitting < processors ? fitting : processors))
}

# configure FOLDER CMAKE_ARGUMENT...: only when the folder is new or the arguments have changed.
# Neighbouring files are compiled together, which halves the time from nothing.
configure() {
    local folder=$1
    shift
    set -- "$@" -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=12
    local arguments="$*"
    if [[ -f $folder/build.ninja && $(cat "$folder/arguments.txt" 2>/dev/null) == "$arguments" ]]; then
        return
    fi
    say "Laying out the build in ${folder#"$root"/}"
    mkdir -p "$folder"
    cmake -G Ninja -B "$folder" -S "$root" "$@" >"$folder/configure.log" 2>&1 ||
        { cat "$folder/configure.log" >&2; fail "The build could not be laid out."; }
    printf '%s\n' "$arguments" >"$folder/arguments.txt"
}
