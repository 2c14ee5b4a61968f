"""export and open-files: a studio as open files and back; history, dossier and erase: what a client may ask for."""

import csv
import json
import os
import sqlite3
import stat
import subprocess

from support import DAY, StudioTest


def files_under(folder):
    found = {}
    for place, _, names in os.walk(folder):
        for name in names:
            with open(os.path.join(place, name), "rb") as file:
                found[os.path.relpath(os.path.join(place, name), folder)] = file.read()
    return found


class OpenFiles(StudioTest):
    def on_studio(self, *arguments):
        return [*arguments, "--studio", self.studio, "--on", DAY]

    def test_export_and_back_gives_the_same_bytes(self):
        for form in ("json", "csv"):
            first, second, fresh = self.path(form + "1"), self.path(form + "2"), self.path(form + ".chalkrung")
            self.assertEqual(self.good_json(*self.on_studio("export", "--to", first, "--form", form))["clients"], 18)
            self.assertEqual(self.good_json("open-files", first, "--studio", fresh)["clients"], 18)
            self.good("export", "--to", second, "--form", form, "--studio", fresh, "--on", DAY)
            self.assertEqual(files_under(first), files_under(second), form)

    def test_tables_are_plain_csv_with_a_readme(self):
        folder = self.path("out")
        self.good(*self.on_studio("export", "--to", folder))
        with open(os.path.join(folder, "tables", "clients.csv"), newline="", encoding="utf-8") as file:
            clients = list(csv.DictReader(file))
        self.assertEqual(len(clients), 18)
        self.assertEqual(clients[0]["name"], "Joaquin Ferro")
        self.assertEqual(stat.S_IMODE(os.stat(file.name).st_mode), 0o600)
        with open(os.path.join(folder, "tables", "README.txt"), encoding="utf-8") as file:
            readme = file.read()
        for name in clients[0]:
            self.assertIn(name, readme)
        self.assertTrue(os.path.exists(os.path.join(folder, "README.md")))

    def test_of_one_client_only(self):
        folder = self.path("out")
        self.good(*self.on_studio("export", "--to", folder, "--client", "Joaquin", "--form", "json"))
        self.assertEqual(sorted(files_under(folder)), ["README.md", os.path.join("clients", "01-joaquin-ferro.json"), "studio.json"])

    def test_a_fault_names_file_and_line(self):
        folder, fresh = self.path("out"), self.path("fresh.chalkrung")
        self.good(*self.on_studio("export", "--to", folder, "--form", "csv"))
        table = os.path.join(folder, "tables", "sessions.csv")
        with open(table, encoding="utf-8", newline="") as file:
            lines = file.read().split("\r\n")
        lines[3] = lines[3].replace("recorded", "recarded")
        with open(table, "w", encoding="utf-8", newline="") as file:
            file.write("\r\n".join(lines))
        run = self.run_program("open-files", folder, "--studio", fresh)
        self.assertEqual(run.returncode, 1)
        self.assertIn("sessions.csv, line 4, column 1: state must be", run.stderr)
        self.assertFalse(os.path.exists(fresh))

    def test_wrong_use(self):
        self.assertEqual(self.run_program(*self.on_studio("export")).returncode, 2)
        self.assertEqual(self.run_program(*self.on_studio("export", "--to", self.path("x"), "--form", "xml")).returncode, 2)
        self.assertEqual(self.run_program("open-files", self.path("nowhere"), "--studio", self.path("n.chalkrung")).returncode, 1)
        self.assertEqual(self.run_program("open-files", self.path("nowhere"), "--studio", self.studio).returncode, 2)


class Records(StudioTest):
    def on_studio(self, *arguments):
        return [*arguments, "--studio", self.studio, "--on", DAY]

    def test_the_history_tells_of_an_export(self):
        self.good(*self.on_studio("export", "--to", self.path("out")))
        history = self.good_json(*self.on_studio("history", "--last", "1"))["history"]
        self.assertEqual([entry["what"] for entry in history], ["studio_exported"])
        rows = list(csv.DictReader(self.good(*self.on_studio("history", "--csv")).splitlines()))
        self.assertEqual(rows[0]["what"], "Studio written as open files")
        self.assertIn("nobody named", self.good(*self.on_studio("history")))

    def test_a_dossier_holds_everything_in_both_forms(self):
        folder = self.path("dossier")
        made = self.good_json(*self.on_studio("dossier", "Joaquin", "--to", folder))
        self.assertIn("dossier.pdf", made["files"])
        self.assertEqual(sorted(made["files"]), sorted(files_under(folder)))
        for name in made["files"]:
            self.assertEqual(stat.S_IMODE(os.stat(os.path.join(folder, name)).st_mode), 0o600, name)
        with open(os.path.join(folder, "history.json"), encoding="utf-8") as file:
            self.assertEqual(json.load(file)["history"][0]["what"], "dossier_made")
        text = subprocess.run(["pdftotext", "-layout", os.path.join(folder, "dossier.pdf"), "-"], capture_output=True, text=True, check=True).stdout
        for words in ("What is kept of you", "Joaquin Ferro", "Lower back", "Who changed what", "Sessions"):
            self.assertIn(words, text)
        self.assertNotIn("Quill", text)

    def test_erasing_needs_the_whole_name(self):
        run = self.run_program(*self.on_studio("erase", "Joaquin", "--yes", "Joaquin"))
        self.assertEqual(run.returncode, 2)
        self.assertIn("nothing was erased", run.stderr)
        run = self.run_program(*self.on_studio("erase", "Joaquin"), stdin="Joaquin Fero\n")
        self.assertEqual(run.returncode, 2)
        self.assertIn("Joaquin Ferro", self.good("roster", "--studio", self.studio, "--on", DAY))

    def test_an_erased_client_is_gone_and_the_studio_sound(self):
        self.assertIn("Kept for the accounts", self.good(*self.on_studio("erase", "Joaquin", "--preview")))
        erased = self.good_json(*self.on_studio("erase", "Joaquin", "--yes", "Joaquin Ferro"))
        self.assertEqual(erased["erased_client"], 1)
        self.assertTrue(erased["wiped"])
        with open(self.studio, "rb") as file:
            self.assertNotIn(b"Joaquin", file.read())
        self.assertTrue(self.good_json(*self.on_studio("verify"))["sound"])
        with sqlite3.connect(self.studio) as studio:
            kept = studio.execute("SELECT count(*) FROM erased_session").fetchone()[0]
        self.assertEqual(kept, erased["kept_sessions"])
        self.assertEqual(self.good_json(*self.on_studio("history", "--last", "1"))["history"][0]["what"], "client_erased")
