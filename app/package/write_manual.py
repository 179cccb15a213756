"""Writes the manual page and the shell completion from what the program itself says to --help.

    write_manual.py PROGRAM VERSION FOLDER

makes FOLDER/underbough.1 and FOLDER/underbough.bash. So neither can fall behind the program.
"""

import pathlib
import re
import subprocess
import sys

OPTION = re.compile(r"^  (-\S+)(.*?)(?:  +(\S.*))?$")
VERB = re.compile(r"^  ([a-z]+)  +(\S.*)$")


def help_of(program, *verb):
    return subprocess.run([program, *verb, "--help"], check=True, capture_output=True,
                          text=True, env={"LC_ALL": "C.UTF-8"}).stdout


def parts(text):
    """The help's titled paragraphs; what stands before the first and after the last is untitled."""
    found = [("", [])]
    for line in text.splitlines():
        if re.fullmatch(r"[A-Z][a-z]+:", line):
            found.append((line[:-1], []))
        elif not line:
            found.append(("", []))
        else:
            found[-1][1].append(line)
    return [(title, lines) for title, lines in found if lines]


def verbs(text):
    lines = next(lines for title, lines in parts(text) if title == "Commands")
    return [VERB.match(line).groups() for line in lines]


def options(text):
    """(names and value, what it does) of each option, in the help's order."""
    found = []
    for title, lines in parts(text):
        if title not in ("Options", "Garden"):
            continue
        for line in lines:
            if re.match(r"^  \S", line):
                head, _, rest = line.strip().partition("  ")
                found.append([head, rest.strip()])
            else:
                found[-1][1] = (found[-1][1] + " " + line.strip()).strip()
    return found


def roff(text):
    text = text.replace("\\", "\\e").replace("-", "\\-")
    return "\\&" + text if text.startswith((".", "'")) else text


def definition(head, body):
    return [".TP", f".B {roff(head)}", roff(body)]


def section(title, lines):
    return [f".SH {title}", *lines]


def manual(program, version):
    whole = help_of(program)
    about = whole.splitlines()
    page = [f'.TH UNDERBOUGH 1 "" "Underbough {version}" "User Commands"']
    page += section("NAME", ["underbough \\- " + roff(about[0].partition(": ")[2])])
    page += section("SYNOPSIS", [".B underbough", "[OPTIONS] [GARDEN]", ".br", ".B underbough",
                                 "COMMAND [OPTIONS] [GARDEN]"])
    page += section("DESCRIPTION", [roff(about[1])])
    page += section("OPTIONS", [line for head, body in options(whole)
                                for line in definition(head, body)])
    page += section("COMMANDS", [])
    for verb, what in verbs(whole):
        page += [f".SS {verb}", roff(what) + "."]
        told = help_of(program, verb)
        for head, body in options(told):
            page += definition(head, body)
        for title, lines in parts(told)[1:]:
            if title == "":
                page += [".PP", *map(roff, lines)]
    for title, lines in parts(whole):
        if title == "Examples":
            page += section("EXAMPLES", [".nf", *map(roff, lines), ".fi"])
    loose = [lines for title, lines in parts(whole)[1:] if title == ""]
    page += section("CAUTION AND EXIT STATUS", [line for lines in loose
                                                for line in [".PP", *map(roff, lines)]])
    return "\n".join(page) + "\n"


def words(program, *verb):
    heads = [head.split()[0] for head, _ in options(help_of(program, *verb))]
    return [name for head in heads for name in head.split(",") if name.startswith("--")]


def completion(program):
    names = [verb for verb, _ in verbs(help_of(program))]
    lines = ["# Completion of underbough's commands and options in bash.", "_underbough() {",
             "    local word=${COMP_WORDS[COMP_CWORD]} offered",
             "    case ${COMP_WORDS[1]} in"]
    for name in names:
        lines += [f"    {name}) offered='{' '.join(words(program, name))}' ;;"]
    lines += [f"    *) offered='{' '.join(names + words(program))}' ;;", "    esac",
              '    if [[ $COMP_CWORD == 1 || $word == -* ]]; then',
              '        mapfile -t COMPREPLY < <(compgen -W "$offered" -- "$word")', "    fi",
              '    [[ $word == -* ]] || mapfile -O "${#COMPREPLY[@]}" -t COMPREPLY < <(compgen -f -- "$word")',
              "}", "complete -o filenames -F _underbough underbough"]
    return "\n".join(lines) + "\n"


def main():
    program, version, folder = sys.argv[1:]
    folder = pathlib.Path(folder)
    (folder / "underbough.1").write_text(manual(program, version), encoding="utf-8")
    (folder / "underbough.bash").write_text(completion(program), encoding="utf-8")


if __name__ == "__main__":
    main()
