#!/usr/bin/env python3
"""The checks themselves: each finds what it is for in a small tree, and lets a sound one pass."""

import os
import tempfile
import unittest

import check_budgets
import check_layers
import check_mirror
import check_style
from tree import Tree, blanked


class OnATree(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.tree = Tree(self.folder.name)

    def write(self, path, text=""):
        full = os.path.join(self.folder.name, path)
        os.makedirs(os.path.dirname(full), exist_ok=True)
        with open(full, "w", encoding="utf-8") as file:
            file.write(text)

    def assertFault(self, faults, *words):
        faults = list(faults)
        self.assertEqual(len(faults), 1, faults)
        for word in words:
            self.assertIn(word, faults[0])


class Layers(OnATree):
    def setUp(self):
        super().setUp()
        for path in ("core/base/load.h", "core/lifts/pattern.h", "core/progression/rule.h", "core/store/database.h", "ui/common/theme.h",
                     "ui/board/board.h", "app/system_clock.h"):
            self.write(path, "#pragma once\n")

    def test_arrows_that_point_down_pass(self):
        self.write("ui/board/board.cpp", '#include "core/progression/rule.h"\n#include "ui/common/theme.h"\n#include <QWidget>\n')
        self.write("core/progression/rule.cpp", '#include "core/base/load.h"\n#include "core/lifts/pattern.h"\n#include <vector>\n')
        self.write("core/store/database.cpp", '#include "core/progression/rule.h"\n#include <QSqlQuery>\n')
        self.assertEqual(check_layers.layer_faults(self.tree) + check_layers.cycle_faults(self.tree), [])

    def test_no_arrow_points_up(self):
        for source, target in (("core/lifts/pattern.cpp", "core/progression/rule.h"), ("core/base/load.cpp", "core/lifts/pattern.h"),
                               ("core/progression/rule.cpp", "core/store/database.h"), ("core/store/database.cpp", "ui/common/theme.h"),
                               ("ui/common/theme.cpp", "ui/board/board.h"), ("ui/board/board.cpp", "app/system_clock.h")):
            with self.subTest(source=source):
                self.write(source, f'#include "{target}"\n')
                self.assertFault(check_layers.layer_faults(self.tree), source + ":1", "may not know")
                self.write(source, "")

    def test_no_qt_in_the_domain_and_no_gui_in_core(self):
        self.write("core/lifts/pattern.cpp", "\n#include <QString>\n")
        self.assertFault(check_layers.layer_faults(self.tree), "core/lifts/pattern.cpp:2", "no Qt")
        self.write("core/lifts/pattern.cpp", "")
        self.write("core/store/database.cpp", "#include <QPainter>\n")
        self.assertFault(check_layers.layer_faults(self.tree), "no GUI")

    def test_an_include_of_nothing_is_found(self):
        self.write("core/lifts/pattern.cpp", '#include "pattern.h"\n')
        self.assertFault(check_layers.layer_faults(self.tree), "is no file")

    def test_a_cycle_is_found_with_its_places(self):
        self.write("ui/board/board.cpp", '#include "ui/floor/floor.h"\n')
        self.write("ui/floor/floor.h", '#include "ui/board/board.h"\n')
        self.assertFault(check_layers.cycle_faults(self.tree), "ui/board -> ui/floor -> ui/board", "ui/board/board.cpp:1")


class Budgets(OnATree):
    def test_functions_are_found_and_counted(self):
        text = ("namespace a {\nclass X {\n    X() : m_a{1}, m_b(2)\n    {\n        if (a) {\n        }\n    }\n    int one() const { return 1; }\n"
                "    int m_a{3};\n};\nX::X(std::vector<int> v = {})\n    : m_a{1}\n{\n    for (;;) {\n    }\n}\n"
                "const L& all()\n{\n    static const L l{f(1), [](int a) { return a; }};\n    return l; // }\n}\n}\n")
        self.assertEqual(check_budgets.functions(text), [("X", 3, 5), ("one", 8, 1), ("X::X", 11, 6), ("all", 17, 5)])

    def test_a_long_function_is_a_fault_and_a_longish_one_a_note(self):
        self.write("core/a/a.cpp", "void f()\n{\n" + "    g();\n" * 57 + "}\n")
        self.assertEqual(check_budgets.measure(self.tree)[0], [])
        self.assertEqual(len(check_budgets.measure(self.tree)[1]), 1)
        self.write("core/a/a.cpp", "void f()\n{\n" + "    g();\n" * 58 + "}\n")
        self.assertFault(check_budgets.measure(self.tree)[0], "core/a/a.cpp:1", "f has 61 lines")

    def test_long_files_are_faults(self):
        for path, lines in (("core/a/a.cpp", 501), ("core/a/a.h", 251), ("ui/shell/main_window.cpp", 401)):
            with self.subTest(path=path):
                self.write(path, "\n" * (lines - 1))
                self.assertEqual(check_budgets.measure(self.tree)[0], [])
                self.write(path, "\n" * lines)
                self.assertFault(check_budgets.measure(self.tree)[0], path, f"{lines} lines")
                self.write(path, "")


class Mirror(OnATree):
    def test_a_source_without_a_test_is_a_hole(self):
        self.write("core/lifts/pattern.cpp")
        self.assertFault(check_mirror.mirror_faults(self.tree), "tests/core/lifts/test_pattern.cpp")
        self.write("tests/core/lifts/test_pattern.cpp")
        self.assertEqual(check_mirror.mirror_faults(self.tree), [])

    def test_an_exception_must_be_true_and_needed(self):
        self.write("core/lifts/pattern.cpp")
        self.write("tests/core/lifts/test_lifts.cpp")
        self.write(check_mirror.EXCEPTIONS, "core/lifts/pattern.cpp tests/core/lifts/test_lifts.cpp\n")
        self.assertEqual(check_mirror.mirror_faults(self.tree), [])
        self.write("tests/core/lifts/test_pattern.cpp")
        self.assertFault(check_mirror.mirror_faults(self.tree), "has its own test now")

    def test_a_test_of_no_folder_is_a_stray(self):
        self.write("tests/core/moon/test_crater.cpp")
        self.assertFault(check_mirror.mirror_faults(self.tree), "no folder core/moon")


class Style(OnATree):
    def faults_of(self, path, text):
        self.write(path, text)
        self.write(os.path.dirname(path) + "/CMakeLists.txt", os.path.basename(path))
        return check_style.style_faults(self.tree)

    def test_a_sound_file_passes(self):
        text = '#pragma once\n#include <QString>\nnamespace chalk::ui::common {\nclass Look;\n}\nnamespace chalk::ui::board {\nclass Board {\n};\n}\n'
        self.assertEqual(self.faults_of("ui/board/board.h", text), [])

    def test_what_the_style_forbids_is_found(self):
        for path, text, word in (
                ("ui/board/board.h", "#pragma once\n#include <QtWidgets>\n", "umbrella"),
                ("ui/board/board.h", "#include <QWidget>\n", "#pragma once"),
                ("ui/board/board.h", "#pragma once\nclass BoardManager {\n};\n", "BoardManager"),
                ("ui/board/board.h", "#pragma once\nstruct board {\n};\n", "UpperCamel"),
                ("ui/board/board.cpp", "namespace chalk::ui::floor {\nint a;\n}\n", "chalk::ui::board"),
                ("ui/board/board.cpp", "using namespace std;\n", "using namespace"),
                ("ui/board/board.cpp", "#include <format>\n", "format"),
                ("ui/board/board.cpp", "// TO" "DO: later\n", "work left open"),
                ("ui/board/board.cpp", 'auto a = "/ho' 'me/me/a";\n', "one machine")):
            with self.subTest(word=word):
                self.assertFault(self.faults_of(path, text), word)
                os.remove(os.path.join(self.folder.name, path))

    def test_a_file_name_in_camel_case_is_found(self):
        self.assertFault(self.faults_of("ui/board/StageBoard.cpp", ""), "snake_case")

    def test_a_source_in_no_list_is_found(self):
        self.write("core/lifts/pattern.cpp")
        self.write("core/lifts/CMakeLists.txt", "target_sources(a PRIVATE old_pattern.cpp)")
        self.assertFault(check_style.source_list_faults(self.tree), "no source list")
        self.write("core/lifts/CMakeLists.txt", "target_sources(a PRIVATE pattern.cpp)")
        self.assertEqual(list(check_style.source_list_faults(self.tree)), [])


class Blanking(unittest.TestCase):
    def test_comments_and_texts_go_and_lines_stay(self):
        text = 'a; // {\nb = "}";\n/* {\n */ c = \'{\'; n = 1\'000;\nd = R"x(")}\n)x";\n'
        clean = blanked(text)
        self.assertNotIn("{", clean)
        self.assertNotIn("}", clean)
        self.assertEqual(clean.count("\n"), text.count("\n"))
        for kept in ("a;", "b =", "c =", "n = 1'000;", "d ="):
            self.assertIn(kept, clean)


if __name__ == "__main__":
    unittest.main()
