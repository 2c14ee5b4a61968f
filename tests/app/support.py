"""What every test of the command line stands on: the program, a folder of its own, and the demo studio as it is on one day."""

import contextlib
import json
import os
import pty
import select
import shutil
import sqlite3
import subprocess
import tempfile
import unittest

LEAKS_OF_OTHERS = os.path.join(os.path.dirname(os.path.abspath(__file__)), "leaks_of_others.txt")
PROGRAM = os.environ["CHALKRUNG_PROGRAM"]
DAY = "2026-11-25"  # a Wednesday


class CommandLineTest(unittest.TestCase):
    """Runs chalkrung in a folder of its own, with a home and a state folder of its own, and without a display."""

    def setUp(self):
        self.folder = tempfile.mkdtemp(prefix="chalkrung-")
        self.addCleanup(shutil.rmtree, self.folder)
        self.environment = {
            "HOME": self.path("home"),
            "XDG_DATA_HOME": self.path("data"),
            "XDG_STATE_HOME": self.path("state"),
            "XDG_CONFIG_HOME": self.path("config"),
            "PATH": os.environ.get("PATH", "/usr/bin:/bin"),
            "LC_ALL": "C.UTF-8",
            "LSAN_OPTIONS": f"suppressions={LEAKS_OF_OTHERS}:print_suppressions=0",
        }
        os.mkdir(self.path("home"))

    def path(self, name):
        return os.path.join(self.folder, name)

    def file(self, name, content):
        """Writes a file of text or bytes and answers its path."""
        data = content.encode() if isinstance(content, str) else content
        with open(self.path(name), "wb") as out:
            out.write(data)
        return self.path(name)

    def run_program(self, *arguments, **how):
        stdin = how.pop("stdin", "")
        environment = dict(self.environment, **how.pop("environment", {}))
        return subprocess.run(
            [PROGRAM, *arguments], input=stdin, capture_output=True, text=True, env=environment, cwd=self.folder, timeout=120, check=False
        )

    def on_terminal(self, answers, *arguments):
        """Runs the program on a terminal of its own, typing an answer at each question; answers its status and all that the terminal showed."""
        child, terminal = pty.fork()
        if child == 0:
            os.chdir(self.folder)
            os.execve(PROGRAM, [PROGRAM, *arguments], self.environment)
        shown = b""
        waiting = list(answers)
        with contextlib.suppress(OSError):  # it is closed at the end
            while select.select([terminal], [], [], 60)[0] and (part := os.read(terminal, 4096)):
                shown += part
                if waiting and shown.endswith(b": "):
                    os.write(terminal, waiting.pop(0).encode() + b"\n")
        os.close(terminal)
        return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), shown.decode()

    def good(self, *arguments, **how):
        """Runs what must succeed and answers what it wrote."""
        done = self.run_program(*arguments, **how)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertEqual(done.stderr, "")
        return done.stdout

    def good_json(self, *arguments, **how):
        return json.loads(self.good(*arguments, "--json", **how))

    def refused(self, *arguments, **how):
        """Runs what must be refused as wrong use, and answers the one line that says why."""
        done = self.run_program(*arguments, **how)
        self.assertEqual(done.returncode, 2, done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertRegex(done.stderr, r"\Achalkrung[^\n]*: [^\n]+\n\Z")
        return done.stderr


class StudioTest(CommandLineTest):
    """With the demo studio in a file of its own, made once and copied."""

    @classmethod
    def setUpClass(cls):
        cls.original_folder = tempfile.mkdtemp(prefix="chalkrung-demo-")
        cls.addClassCleanup(shutil.rmtree, cls.original_folder)
        cls.original = os.path.join(cls.original_folder, "demo.chalkrung")
        environment = dict(os.environ, XDG_STATE_HOME=cls.original_folder)
        subprocess.run([PROGRAM, "demo", "--studio", cls.original, "--on", DAY], check=True, capture_output=True, env=environment)

    def setUp(self):
        super().setUp()
        self.studio = self.path("demo.chalkrung")
        shutil.copyfile(self.original, self.studio)

    def on_studio(self, command, *arguments):
        return (command, *arguments, "--studio", self.studio, "--on", DAY)

    def withdraw_clearance(self, client):
        """Makes a client wait for clearance, in the file itself: its lifts and their history stay."""
        with sqlite3.connect(self.studio) as database:
            changed = database.execute(
                "UPDATE clearance SET state = (SELECT state FROM clearance WHERE client_id = (SELECT id FROM client WHERE name = 'Osric Bell')),"
                " granted_day = NULL, valid_until_day = NULL WHERE client_id = (SELECT id FROM client WHERE name = ?)",
                (client,),
            )
            self.assertEqual(changed.rowcount, 1)
        database.close()

    def lift(self, client, exercise_or_pattern):
        """One lift of a client as `client --json` shows it."""
        board = self.good_json(*self.on_studio("client", client))
        found = [one for one in board["lifts"] if exercise_or_pattern in (one["exercise"], one["pattern"])]
        self.assertEqual(len(found), 1)
        return found[0]
