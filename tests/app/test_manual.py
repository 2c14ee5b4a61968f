"""The manual page names every command and every option, and nothing that is not there."""

import os
import re
import shutil
import subprocess
import unittest

from support import CommandLineTest

PAGE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "resources", "man", "chalkrung.1")


def options_in(text):
    return set(re.findall(r"(?<![\w-])--[a-z]+", text))


class Manual(CommandLineTest):
    def setUp(self):
        super().setUp()
        with open(PAGE, encoding="utf-8") as file:
            self.page = file.read().replace("\\-", "-")

    def commands(self):
        return re.findall(r"^  ([a-z-]+) {2,}\S", self.good("--help").split("Commands:")[1].split("Options:")[0], re.MULTILINE)

    def test_every_command(self):
        self.assertEqual(sorted(re.findall(r"^\.SS ([a-z-]+)", self.page, re.MULTILINE)), sorted(self.commands()))

    def test_every_option_and_no_other(self):
        helps = self.good("--help") + "".join(self.good(command, "--help") for command in self.commands())
        self.assertEqual(options_in(self.page), options_in(helps))

    @unittest.skipUnless(shutil.which("man"), "man is not installed")
    def test_reads_without_a_warning(self):
        done = subprocess.run(["man", "--warnings", "-l", PAGE], capture_output=True, text=True, env=dict(os.environ, MANPAGER="cat", LC_ALL="C.UTF-8"), check=False)
        self.assertEqual(done.returncode, 0)
        self.assertEqual(done.stderr, "")
