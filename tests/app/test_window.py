"""The window starts on a studio, stays up, and ends in order when it is asked to."""

import shutil
import signal
import subprocess
import time
import unittest

from support import DAY, PROGRAM, StudioTest


class Window(StudioTest):
    def start(self, studio, **more):
        return subprocess.Popen(
            [PROGRAM, "--studio", studio, "--on", DAY],
            env=dict(self.environment, **more),
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )

    def log(self):
        try:
            with open(self.path("state/chalkrung/chalkrung.log"), encoding="utf-8") as file:
                return file.read()
        except OSError:
            return ""

    def runs_and_ends(self, **more):
        process = self.start(self.studio, **more)
        self.addCleanup(process.kill)
        deadline = time.monotonic() + 60
        while "window shown" not in self.log():
            self.assertIsNone(process.poll(), "the program ended by itself")
            self.assertLess(time.monotonic(), deadline, "no window came up")
            time.sleep(0.05)
        process.send_signal(signal.SIGTERM)
        _, errors = process.communicate(timeout=60)
        self.assertEqual(errors, "")
        self.assertEqual(process.returncode, 0)
        self.assertIn("window ended with 0", self.log())

    def test_without_a_screen(self):
        self.runs_and_ends(QT_QPA_PLATFORM="offscreen")

    @unittest.skipUnless(shutil.which("Xvfb"), "Xvfb is not installed")
    def test_on_a_display(self):
        server = subprocess.Popen(["Xvfb", "-displayfd", "1", "-screen", "0", "1440x900x24"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        self.addCleanup(server.wait)
        self.addCleanup(server.kill)
        self.addCleanup(server.stdout.close)
        number = server.stdout.readline().strip()
        self.runs_and_ends(DISPLAY=":" + number)

    def test_a_studio_that_is_none(self):
        process = self.start(self.file("text.chalkrung", "no studio\n"), QT_QPA_PLATFORM="offscreen")
        _, errors = process.communicate(timeout=60)
        self.assertEqual(process.returncode, 2)
        self.assertRegex(errors, r"\Achalkrung: [^\n]*text\.chalkrung[^\n]*\n\Z")
