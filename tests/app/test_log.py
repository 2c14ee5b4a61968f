"""The log says what was run, and never whom it was about."""

import os

from support import DAY, StudioTest


class Log(StudioTest):
    def log(self):
        with open(self.path("state/chalkrung/chalkrung.log"), encoding="utf-8") as file:
            return file.read()

    def test_names_commands_and_no_people(self):
        names = [one["name"] for one in self.good_json(*self.on_studio("roster"))]
        self.good(*self.on_studio("client", "Joaquin Ferro"))
        self.refused(*self.on_studio("client", "Nobody Atall"))
        self.good("record", "-", "--studio", self.studio, "--on", DAY, stdin="client: Joaquin Ferro\nsquat: 7 7 p3\n")
        self.good(*self.on_studio("cards", "--out", "day.pdf"))
        text = self.log()
        for command in ("roster", "client", "record", "cards"):
            self.assertIn(command, text)
        for name in names + ["Nobody"]:
            for part in name.split():
                self.assertNotIn(part, text)

    def test_rotates(self):
        folder = self.path("state/chalkrung")
        os.makedirs(folder)
        with open(os.path.join(folder, "chalkrung.log"), "w", encoding="utf-8") as file:
            file.write("x" * (256 * 1024))
        self.good("--version")
        self.good(*self.on_studio("roster"))
        self.assertEqual(sorted(os.listdir(folder)), ["chalkrung.1.log", "chalkrung.log"])
        self.assertLess(len(self.log()), 10_000)

    def test_a_folder_that_cannot_be_made_stops_nobody(self):
        self.file("wall", "")
        self.good(*self.on_studio("roster"), environment={"XDG_STATE_HOME": self.path("wall")})
