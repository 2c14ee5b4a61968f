#!/usr/bin/env python3
"""Which way the arrows go: app -> ui -> store -> domain, and base first inside the domain. Folders make no cycles."""

import sys

from tree import report, root_from

# What a folder of the domain may include besides itself. `base` is open to all.
DOMAIN = {
    "base": (),
    "clients": ("lifts",),
    "lifts": (),
    "screens": ("clients", "lifts"),
    "progression": ("clients", "lifts", "screens"),
    "plateau": ("progression",),
    "sessions": ("clients", "lifts", "screens", "progression"),
    "analysis": ("clients", "lifts", "screens", "progression", "sessions"),
    "direction": ("lifts", "progression"),
    "planning": ("clients", "lifts", "screens", "progression", "sessions", "analysis"),
    "tables": ("clients", "lifts", "progression", "planning"),
    "week": ("clients", "lifts", "sessions", "planning"),
    "checkin": ("clients", "lifts", "screens", "progression", "plateau", "sessions", "analysis", "planning"),
    "studio": ("clients", "lifts", "screens", "progression", "sessions", "planning", "week", "checkin", "direction"),
    "simulation": ("clients", "lifts", "screens", "progression", "sessions", "studio", "analysis", "planning", "week", "checkin", "direction"),
}
STORE = ("store", "exchange", "seal")
GUI = ("QtGui", "QtWidgets", "QtPrintSupport", "QtCharts", "QtSvg")
GUI_HEADERS = ("QWidget", "QPainter", "QApplication", "QGuiApplication", "QFont", "QColor", "QPixmap", "QImage", "QIcon", "QPen", "QBrush",
               "QPalette", "QPrinter", "QPdfWriter", "QChart", "QMessageBox", "QFileDialog")


def folder_of(path):
    """`core/lifts`, `ui/board`, `app`: what a path belongs to; nothing for what is not of the program."""
    parts = path.split("/")
    if parts[0] == "app":
        return "app"
    if parts[0] in ("core", "ui") and len(parts) > 2:
        return "/".join(parts[:2])
    return None


def may_include(source, target):
    if source == target or source == "app":
        return True
    source_layer, target_layer = source.split("/")[0], target.split("/")[0]
    if target_layer == "app" or (source_layer, target_layer) == ("core", "ui"):
        return False
    if source_layer == "ui":
        return target_layer == "core" or target == "ui/common" or source != "ui/common"
    source_idea, target_idea = source.split("/")[1], target.split("/")[1]
    if source_idea in STORE:
        return True
    return target_idea == "base" or target_idea in DOMAIN.get(source_idea, ())


def is_qt(name):
    return name.startswith("Q") and name[1:2].isupper() or name.startswith("Qt")


def is_gui(name):
    return name.split("/")[0] in GUI or name in GUI_HEADERS


def layer_faults(tree):
    faults = []
    for path in tree.code(("app", "core", "ui")):
        source = folder_of(path)
        if source is None:
            continue
        for line, is_ours, name in tree.includes(path):
            target = folder_of(name) if is_ours else None
            if is_ours and not tree.has(name):
                faults.append(f"{path}:{line}: \"{name}\" is no file: includes start at the root")
            elif is_ours and target is None:
                faults.append(f"{path}:{line}: \"{name}\" is not of the program")
            elif is_ours and not may_include(source, target):
                faults.append(f"{path}:{line}: {source} may not know {target}")
            elif source.startswith("core/") and is_qt(name) and source.split("/")[1] not in STORE:
                faults.append(f"{path}:{line}: no Qt in the domain ({name})")
            elif source.startswith("core/") and is_gui(name):
                faults.append(f"{path}:{line}: no GUI in core ({name})")
    return faults


def arrows(tree):
    """From each folder to those that it includes, with the first place where it does."""
    found = {}
    for path in tree.code(("app", "core", "ui")):
        source = folder_of(path)
        for line, is_ours, name in tree.includes(path):
            target = folder_of(name) if is_ours else None
            if source and target and source != target:
                found.setdefault(source, {}).setdefault(target, f"{path}:{line}")
    return found


def cycle_faults(tree):
    """Every cycle of folders once. There is no list of exceptions."""
    graph, faults, done = arrows(tree), [], set()

    def visit(folder, trail):
        if folder in trail:
            cycle = trail[trail.index(folder):]
            places = "; ".join(graph[a][b] for a, b in zip(cycle, cycle[1:] + cycle[:1]))
            faults.append(f"cycle {' -> '.join(cycle + [folder])} ({places})")
            return
        if folder in done:
            return
        for target in sorted(graph.get(folder, ())):
            visit(target, trail + [folder])
        done.add(folder)

    for folder in sorted(graph):
        visit(folder, [])
    return faults


if __name__ == "__main__":
    source_tree = root_from(sys.argv)
    sys.exit(report(layer_faults(source_tree) + cycle_faults(source_tree), "layers"))
