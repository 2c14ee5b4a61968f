"""The source tree as the checks see it: files, folders, includes, and C++ without its comments and texts."""

import os
import re
import sys

CODE_FOLDERS = ("app", "core", "ui", "tests")
TEXT_FOLDERS = CODE_FOLDERS + ("resources", "demo_clients", ".ci")
CODE_SUFFIXES = (".cpp", ".h")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.MULTILINE)


class Tree:
    """All paths are relative to the root, with slashes."""

    def __init__(self, root):
        self.root = root

    def files(self, folders=TEXT_FOLDERS):
        for folder in folders:
            for place, names, files in os.walk(os.path.join(self.root, folder)):
                names[:] = sorted(name for name in names if name != "__pycache__")
                for name in sorted(files):
                    yield os.path.relpath(os.path.join(place, name), self.root).replace(os.sep, "/")

    def top_files(self):
        for name in sorted(os.listdir(self.root)):
            if os.path.isfile(os.path.join(self.root, name)):
                yield name

    def code(self, folders=CODE_FOLDERS):
        return (path for path in self.files(folders) if path.endswith(CODE_SUFFIXES))

    def has(self, path):
        return os.path.exists(os.path.join(self.root, path))

    def read(self, path):
        with open(os.path.join(self.root, path), encoding="utf-8", errors="replace") as file:
            return file.read()

    def includes(self, path):
        """What a file includes: (line, is it ours, name)."""
        text = self.read(path)
        for match in INCLUDE.finditer(text):
            yield text.count("\n", 0, match.start(2)) + 1, match.group(1) == '"', match.group(2)


def blanked(text):
    """C++ with comments and the insides of texts made blank; lines stay where they are."""
    pattern = re.compile(
        r'R"(?P<mark>[^()\\ ]{0,16})\(.*?\)(?P=mark)"'
        r'|//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|(?<![0-9a-fA-F])\'(?:\\.|[^\'\\\n])+\'',
        re.DOTALL)

    def blank(match):
        found = match.group(0)
        kept = '""' if found[0] in 'R"' else ""
        return kept + "".join("\n" if letter == "\n" else " " for letter in found[len(kept):])

    return pattern.sub(blank, text)


def report(faults, what):
    """Prints the faults and answers the exit status of a check."""
    for fault in faults:
        print(fault)
    print(f"{what}: {len(faults)} faults" if faults else f"{what}: clean")
    return 1 if faults else 0


def root_from(arguments):
    if len(arguments) != 2:
        sys.exit(f"usage: {arguments[0]} ROOT")
    return Tree(arguments[1])
