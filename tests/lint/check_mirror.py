#!/usr/bin/env python3
"""Tests mirror the sources: core/a/b.cpp has tests/core/a/test_b.cpp. A hole in core is a fault, a hole in ui is listed.

mirror_exceptions.txt names the sources of core that another file's test covers: `SOURCE TEST`. A line that is not needed, or whose
source or test is not there, is a fault. Whether the test covers the source is for whoever writes the line to see to."""

import os
import sys

from tree import report, root_from

EXCEPTIONS = "tests/lint/mirror_exceptions.txt"


def test_of(source):
    folder, name = os.path.split(source)
    return f"tests/{folder}/test_{os.path.splitext(name)[0]}.cpp"


def sources(tree, folder):
    """Everything with code of its own: each .cpp, and each header without one that is not only declarations of another's."""
    return [path for path in tree.code((folder,)) if path.endswith(".cpp")]


def read_exceptions(tree):
    if not tree.has(EXCEPTIONS):
        return {}
    lines = (line.split("#")[0].split() for line in tree.read(EXCEPTIONS).splitlines())
    return {line[0]: line[1] for line in lines if len(line) == 2}


def exception_fault(tree, source, test):
    if not tree.has(source):
        return f"{EXCEPTIONS}: {source} is not there"
    if tree.has(test_of(source)):
        return f"{EXCEPTIONS}: {source} has its own test now"
    if not tree.has(test):
        return f"{EXCEPTIONS}: {test} is not there"
    return None


def holes(tree, folder):
    return [source for source in sources(tree, folder) if not tree.has(test_of(source))]


def strays(tree):
    """Tests of sources that are not there. A test may also be of a header, or of an idea that several files of a folder share."""
    found = []
    for path in tree.code(("tests/core", "tests/ui", "tests/app")):
        folder, name = os.path.split(path[len("tests/"):])
        if name.startswith("test_") and not tree.has(folder):
            found.append(f"{path}: there is no folder {folder}")
    return found


def mirror_faults(tree):
    exceptions = read_exceptions(tree)
    faults = [fault for source, test in sorted(exceptions.items()) if (fault := exception_fault(tree, source, test))]
    faults += [f"{source}: no {test_of(source)}" for source in holes(tree, "core") if source not in exceptions]
    return faults + strays(tree)


if __name__ == "__main__":
    source_tree = root_from(sys.argv)
    for hole in holes(source_tree, "ui"):
        print(f"note: {hole}: no {test_of(hole)}")
    sys.exit(report(mirror_faults(source_tree), "mirror"))
