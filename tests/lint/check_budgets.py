#!/usr/bin/env python3
"""Budgets: a file or a function that is longer than its budget has two jobs."""

import re
import sys

from tree import blanked, report, root_from

FUNCTION_AIM, FUNCTION_MOST = 40, 60
SOURCE_AIM, SOURCE_MOST = 250, 500
HEADER_AIM, HEADER_MOST = 120, 250
WINDOW_MOST, WINDOW_CONSTRUCTOR_MOST = 400, 60

NO_FUNCTION = re.compile(r"\b(namespace|class|struct|enum|union|extern)\b[^()]*$")
CONTROL = ("if", "for", "while", "switch", "catch")
# What may stand between a function's parameters and its body.
FUNCTION_HEAD = re.compile(r"\)\s*(?:(?:const|noexcept|override|final|mutable|&&?|try)\s*)*(?:->\s*[\w:<>,&*\s]+)?"
                           r"(?::[^;]*[)}]\s*)?$", re.DOTALL)
NAME = re.compile(r"([\w:~]+|operator\s*\S+?)\s*\($")
EXPRESSION_BEFORE = re.compile(r"(?:[>=,(]|\breturn|(?<!\))\b(?!else\b|try\b|do\b|const\b|override\b|noexcept\b|final\b)\w+)\s*$")


def head_before(text, brace, opened_by):
    """What stands before an opening brace, from the end of the statement or the block before it. A closed brace that belongs to
    an expression (`m_x{1}`, `= {}`) is part of the head."""
    start = brace
    while True:
        start = max(text.rfind(mark, 0, start) for mark in ";{}") + 1
        opening = opened_by.get(start - 1)
        rest = text[start:brace].strip()
        if opening is None or not (rest == "" or rest[0] in ",)") or not EXPRESSION_BEFORE.search(text[:opening][-80:]):
            return text[start:brace]
        start = opening


def function_name(head):
    """The name in a function's head; nothing where the head is none."""
    head = re.sub(r"(?m)^\s*#.*$", "", head)
    head = re.sub(r"^\s*(public|private|protected|Q_SIGNALS|public Q_SLOTS|private Q_SLOTS)\s*:", "", head)
    if "(" not in head or NO_FUNCTION.search(head) or not FUNCTION_HEAD.search(head):
        return None
    depth = 0
    for place, letter in enumerate(head):
        if letter == "(" and depth == 0:
            name = NAME.search(head[:place + 1])
            return name.group(1) if name and name.group(1) not in CONTROL else None
        depth += {"(": 1, ")": -1}.get(letter, 0)
    return None


def functions(text):
    """Every function with a body: (name, first line, lines). What is inside a function is part of it."""
    text = blanked(text)
    found, stack, opened_by, inside = [], [], {}, None
    for place in (match.start() for match in re.finditer(r"[{}]", text)):
        if text[place] == "{":
            head = head_before(text, place, opened_by) if inside is None else ""
            name = function_name(head)
            if name:
                inside = len(stack)
                start = place - len(head.lstrip())
                found.append([name, text.count("\n", 0, start) + 1, None])
            stack.append(place)
        elif stack:
            opened_by[place] = stack.pop()
            if inside == len(stack):
                found[-1][2] = text.count("\n", 0, place) + 2 - found[-1][1]
                inside = None
    return [tuple(entry) for entry in found if entry[2] is not None]


def budget_of(path):
    if path.endswith("/main_window.cpp"):
        return WINDOW_MOST, WINDOW_MOST
    return (HEADER_AIM, HEADER_MOST) if path.endswith(".h") else (SOURCE_AIM, SOURCE_MOST)


def measure(tree):
    """Faults, and notes on what is over its aim but under its limit."""
    faults, notes = [], []
    for path in tree.code():
        text = tree.read(path)
        aim, most = budget_of(path)
        lines = text.count("\n")
        if lines > aim:
            (faults if lines > most else notes).append(f"{path}: {lines} lines, the budget is {aim}, at most {most}")
        for name, line, length in functions(text):
            if length > FUNCTION_AIM:
                (faults if length > FUNCTION_MOST else notes).append(
                    f"{path}:{line}: {name} has {length} lines, the budget is {FUNCTION_AIM}, at most {FUNCTION_MOST}")
    return faults, notes


if __name__ == "__main__":
    over, near = measure(root_from(sys.argv))
    for note in near:
        print(f"note: {note}")
    sys.exit(report(over, "budgets"))
