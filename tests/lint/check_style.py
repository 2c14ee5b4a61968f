#!/usr/bin/env python3
"""What a compiler does not say: includes, names of files and types, namespaces, left-over words, complete source lists."""

import os
import re
import sys

from tree import CODE_FOLDERS, blanked, report, root_from

UMBRELLAS = ("QtCore", "QtGui", "QtWidgets", "QtCharts", "QtSql", "QtSvg", "QtTest", "QtPrintSupport", "QtConcurrent", "bits/stdc++.h")
OPEN_WORDS = re.compile(r"\b(TODO|FIXME|XXX|HACK)\b")
MACHINE_PATHS = re.compile(r"(?<![\w.])/(work|home|Users)/\w")
VAGUE_TYPES = re.compile(r"\b(?:class|struct)\s+(\w*(?:Manager|Helper|Utils|Util|Impl|Data|Info))\b(?!\s*;)")
ALL_TYPES = re.compile(r"\b(?:class|struct|enum class|enum)\s+([A-Za-z_]\w*)\s*(?:final\s*)?[:{]")
USING_NAMESPACE = re.compile(r"\busing\s+namespace\s+(?!\w*literals)")
NO_CPP20_OF_OURS = re.compile(r"#include <(format|expected|source_location|ranges)>|std::views::")
ONLY_NAMES = re.compile(r"^\s*(?:(?:class|struct) \w+;\s*)*$")
SNAKE = re.compile(r"^[a-z0-9]+(_[a-z0-9]+)*\.(cpp|h)$")
BINARY = (".otf", ".ttf", ".png", ".pdf", ".ico", ".chalkrung")
CHECKER = "tests/lint/"
NOT_OURS = ("LICENSE", ".git")


def line_of(text, match):
    return text.count("\n", 0, match.start()) + 1


def include_faults(tree, path):
    for line, is_ours, name in tree.includes(path):
        if not is_ours and name.split("/")[0] in UMBRELLAS and ("/" not in name or name.count("/") and name.split("/")[1] in UMBRELLAS):
            yield f"{path}:{line}: <{name}> is an umbrella: include what is used"


def name_faults(tree, path):
    text = blanked(tree.read(path))
    name = os.path.basename(path)
    if not SNAKE.match(name):
        yield f"{path}: files are named in snake_case"
    if path.endswith(".h") and not tree.read(path).startswith("#pragma once\n"):
        yield f"{path}:1: a header starts with #pragma once"
    for match in VAGUE_TYPES.finditer(text):
        yield f"{path}:{line_of(text, match)}: {match.group(1)} says nothing: what does it do?"
    for match in ALL_TYPES.finditer(text):
        if not match.group(1)[0].isupper():
            yield f"{path}:{line_of(text, match)}: type {match.group(1)} is not UpperCamel"
    for match in USING_NAMESPACE.finditer(text):
        yield f"{path}:{line_of(text, match)}: no `using namespace`: files are compiled together"
    for match in NO_CPP20_OF_OURS.finditer(tree.read(path)):
        yield f"{path}:{line_of(tree.read(path), match)}: {match.group(0)} does not compile everywhere"


def namespace_of(path):
    parts = path.split("/")
    if parts[0] == "app":
        return "chalk::app"
    return "chalk::" + ("::".join(["ui", parts[1]]) if parts[0] == "ui" else parts[1])


def namespace_faults(tree, path):
    """One folder, one namespace."""
    wanted = namespace_of(path)
    for match in re.finditer(r"^namespace (chalk[\w:]*) \{([^}]*)", blanked(tree.read(path)), re.MULTILINE):
        if match.group(1) != wanted and not ONLY_NAMES.match(match.group(2)):
            yield f"{path}: namespace {match.group(1)}, the folder's is {wanted}"


def word_faults(tree, path):
    if path.endswith(BINARY) or path.startswith(CHECKER):
        return
    text = tree.read(path)
    for pattern, why in ((OPEN_WORDS, "is work left open"), (MACHINE_PATHS, "is a path of one machine")):
        for match in pattern.finditer(text):
            yield f"{path}:{line_of(text, match)}: {match.group(0)} {why}"


def source_list_faults(tree):
    """Every .cpp of the program and its tests stands in a list of some CMakeLists.txt at or above it."""
    lists = {os.path.dirname(path): tree.read(path) for path in tree.files(CODE_FOLDERS) if path.endswith("/CMakeLists.txt")}
    for path in tree.code():
        if not path.endswith(".cpp") or path.startswith(("tests/compile_fail/", "tests/fuzz/")):
            continue
        folder, names = os.path.dirname(path), []
        while folder:
            names.append((folder, path[len(folder) + 1:]))
            folder = os.path.dirname(folder)
        if not any(re.search(rf"(?<![\w/]){re.escape(name)}(?!\w)", lists.get(place, "")) for place, name in names):
            yield f"{path}: is in no source list"


def style_faults(tree):
    faults = list(source_list_faults(tree))
    for path in tree.code():
        faults += list(include_faults(tree, path)) + list(name_faults(tree, path))
    for path in tree.code(("app", "core", "ui")):
        faults += namespace_faults(tree, path)
    for path in list(tree.files()) + [path for path in tree.top_files() if path not in NOT_OURS]:
        faults += word_faults(tree, path)
    return faults


if __name__ == "__main__":
    sys.exit(report(style_faults(root_from(sys.argv)), "style"))
