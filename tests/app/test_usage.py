"""Wrong use ends with status 2 and one clear line; help names everything."""

import re

from support import CommandLineTest, StudioTest

COMMANDS = ["cards", "client", "demo", "record", "roster", "rotate", "trace"]


class Help(CommandLineTest):
    def test_names_every_command(self):
        text = self.good("--help")
        listed = re.findall(r"^  ([a-z]+) {2,}\S", text.split("Commands:")[1].split("Options:")[0], re.MULTILINE)
        for command in COMMANDS:
            self.assertIn(command, listed)

    def test_every_command_has_its_own(self):
        for command in COMMANDS:
            with self.subTest(command=command):
                text = self.good(command, "--help")
                self.assertTrue(text.startswith(f"Usage: chalkrung {command}"))
                for option in ("--studio FILE", "--on DATE", "--json", "--help"):
                    self.assertIn(option, text)

    def test_fits_a_terminal(self):
        for command in COMMANDS:
            for line in self.good(command, "--help").splitlines():
                self.assertLessEqual(len(line), 132, f"{command}: {line}")

    def test_version(self):
        self.assertRegex(self.good("--version"), r"\Achalkrung \d+\.\d+\.\d+\n\Z")


class WrongUse(CommandLineTest):
    def test_unknown_command(self):
        self.assertIn("unknown command squat", self.refused("squat"))

    def test_unknown_option_of_every_command(self):
        for command in COMMANDS:
            with self.subTest(command=command):
                self.assertIn("unknown option --sideways", self.refused(command, "--sideways"))

    def test_unknown_option_of_the_window(self):
        self.assertIn("unknown option --sideways", self.refused("--sideways"))

    def test_option_without_its_value(self):
        self.assertIn("option --on needs DATE", self.refused("roster", "--on"))

    def test_option_given_twice(self):
        self.assertIn("--json is given twice", self.refused("roster", "--json", "--json"))

    def test_flag_with_a_value(self):
        self.assertIn("--json takes no value", self.refused("roster", "--json=yes"))

    def test_no_day(self):
        for day in ("2026-02-30", "2026-13-01", "25.11.2026", "20261125", "0000-00-00", ""):
            with self.subTest(day=day):
                self.assertIn("is no day", self.refused("roster", "--on", day))

    def test_missing_operand(self):
        self.assertIn("FILE is missing", self.refused("trace"))
        self.assertIn("FILE is missing", self.refused("record"))
        self.assertIn("FILE is missing", self.refused("rotate"))

    def test_operand_too_many(self):
        self.assertIn("spare is one argument too many", self.refused("roster", "spare"))

    def test_empty_studio_name(self):
        self.assertIn("the name of the file is empty", self.refused("roster", "--studio", ""))

    def test_missing_file(self):
        self.assertIn("nowhere.json", self.refused("trace", "nowhere.json"))

    def test_numbers_out_of_range(self):
        for option, value in (("--clients", "0"), ("--clients", "-3"), ("--clients", "many"), ("--years", "1000"), ("--seed", "x")):
            with self.subTest(option=option, value=value):
                message = self.refused("demo", "--studio", "big.chalkrung", "--clients", "5", option, value) if option != "--clients" \
                    else self.refused("demo", "--studio", "big.chalkrung", option, value)
                self.assertIn(option, message)


class WithoutDisplay(StudioTest):
    def test_the_window_says_so(self):
        done = self.run_program("--studio", self.studio)
        self.assertEqual(done.returncode, 1)
        self.assertRegex(done.stderr, r"\Achalkrung: there is no display [^\n]+\n\Z")
