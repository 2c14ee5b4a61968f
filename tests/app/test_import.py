"""import and merge: people and their past from lists, and two records that become one."""

import os

from support import DAY, StudioTest

PEOPLE = "Name;Geburtsdatum;Telefon;E-Mail\nJörg Sand;25.3.1980;01632 960001;jo@example.org\nDee Oaks;1.2.1990;;\n"
SESSIONS = ("Client,Date,Exercise,Weight (kg),Reps,Sets\nJörg Sand,2026-03-02,Back squat,60,8,3\nJörg Sand,2026-03-05,Back squat,62.5,8,3\n"
            "Jörg Sand,2026-03-05,Bench press,40,8 8 7,\n")
CARDS = "BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Mona Reed\r\nTEL;VALUE=uri:tel:+44-1632-960002\r\nEND:VCARD\r\n"


class Import(StudioTest):
    def write(self, name, text, encoding="utf-8"):
        path = os.path.join(os.path.dirname(self.studio), name)
        with open(path, "w", encoding=encoding, newline="") as file:
            file.write(text)
        return path

    def run_import(self, *arguments):
        return self.run_program("import", *arguments, "--studio", self.studio, "--on", DAY)

    def import_json(self, *arguments):
        return self.good_json("import", *arguments, "--studio", self.studio, "--on", DAY)

    def test_lists_and_cards_are_taken_in_together(self):
        files = [self.write("people.csv", PEOPLE, "cp1252"), self.write("sessions.csv", SESSIONS), self.write("cards.vcf", CARDS)]
        preview = self.import_json(*files, "--preview")
        self.assertIsNone(preview["act"])
        self.assertEqual((preview["new_clients"], preview["sessions"], preview["faults"]), (3, 2, []))
        self.assertNotIn("Mona Reed", self.good("roster", "--studio", self.studio, "--on", DAY))
        done = self.import_json(*files)
        self.assertEqual((done["new_clients"], done["sessions"], done["lifts_begun"], done["lifts_done"]), (3, 2, 2, 3))
        self.assertIn("Jörg Sand", self.good("roster", "--studio", self.studio, "--on", DAY))
        self.good("verify", "--studio", self.studio, "--on", DAY)
        again = self.import_json(*files, "--rest")
        self.assertEqual((again["new_clients"], again["sessions"], again["sessions_there"]), (0, 0, 2))

    def test_the_preview_says_how_the_file_is_read(self):
        run = self.run_import("--preview", self.write("people.csv", PEOPLE, "cp1252"))
        self.assertEqual(run.returncode, 0, run.stderr)
        self.assertIn("2 rows, Western European, columns separated by semicolon, day.month.year, decimal comma", run.stdout)
        self.assertIn("Geburtsdatum: Birth date", run.stdout)

    def test_an_order_of_days_that_is_a_guess_says_so(self):
        file = self.write("people.csv", "Name,Born\nPia Lowell,03/04/1990\n")
        self.assertIn("day.month.year (a guess: no day is above 12)", self.run_import("--preview", file).stdout)
        self.assertIn("month/day/year,", self.run_import("--preview", "--dates", "mdy", file).stdout)

    def test_a_body_mass_waits_for_consent(self):
        file = self.write("people.csv", "Name;Körpergewicht (kg)\nPia Lowell;82,5\nUma Field;\n")
        self.assertIn("Left out: 1 body mass without consent to keep health data", self.run_import("--preview", file).stdout)
        done = self.import_json(file)
        self.assertEqual((done["new_clients"], done["body_masses_left_out"]), (2, 1))

    def test_a_weight_without_sessions_is_the_body_mass_and_nothing_is_dropped_silently(self):
        file = self.write("people.csv", "Name;Gewicht (kg);Spind\nPia Lowell;82,5;12\n")
        said = self.run_import("--preview", file).stdout
        self.assertIn("Gewicht (kg): Body mass", said)
        self.assertIn("Left out: 1 body mass without consent", said)
        self.assertIn("Not taken: Spind.", said)
        loads = self.write("loads.csv", "Name;Body mass;Weight (kg)\nPia Lowell;82,5;60\n")
        self.assertIn("Not taken: Weight (kg).", self.run_import("--preview", loads).stdout)

    def test_a_note_that_does_not_fit_is_told_and_its_sets_go_in(self):
        rows = "".join(f"Pia Lowell,2026-03-02,Back squat,{load},8,{note}\n" for load, note in ((60, "a" * 3000), (65, "b" * 3000)))
        file = self.write("sets.csv", "Name,Date,Exercise,Kilos,Reps,Note\n" + rows)
        run = self.run_import(file)
        self.assertEqual(run.returncode, 2)
        self.assertIn("line 3, Note (column 6): the notes of this day are longer than 4000 letters together", run.stderr)
        said = self.import_json(file, "--rest")
        self.assertEqual([(fault["column"], fault["heading"]) for fault in said["faults"]], [(6, "Note")])
        self.assertEqual((said["sessions"], said["lifts_done"]), (1, 1))

    def test_faulty_rows_are_named_and_the_rest_goes_in(self):
        file = self.write("people.csv", "Name,Born\nPia Lowell,1990-13-04\nUma Field,1990-12-04\n")
        run = self.run_import(file)
        self.assertEqual(run.returncode, 2)
        self.assertIn("line 2, Born (column 2): there is no such day as 1990-13-04: it must be a day such as 2026-11-25", run.stderr)
        self.assertNotIn("Uma Field", self.good("roster", "--studio", self.studio, "--on", DAY))
        run = self.run_import(file, "--rest")
        self.assertEqual(run.returncode, 0, run.stderr)
        roster = self.good("roster", "--studio", self.studio, "--on", DAY)
        self.assertIn("Uma Field", roster)
        self.assertNotIn("Pia Lowell", roster)

    def test_what_is_open_is_asked_and_answered(self):
        file = self.write("sessions.csv", "Who,Date,Exercise,Load,Reps\nJoaquim Ferro,2024-03-02,Squats with a bar,60,8\n")
        run = self.run_import(file, "--map", "name=Who")
        self.assertEqual(run.returncode, 2)
        self.assertIn("Joaquim Ferro may be client 1, Joaquin Ferro", run.stderr)
        self.assertIn("Squats with a bar is no exercise of the catalogue", run.stderr)
        done = self.import_json(file, "--map", "name=Who", "--person", "Joaquim Ferro=Joaquin Ferro", "--exercise", "squats with a bar=back_squat")
        self.assertEqual((done["known_clients"], done["sessions"]), (1, 1))

    def test_wrong_use_is_said(self):
        file = self.write("people.csv", "Name,Born\nPia Lowell,1990-12-04\n")
        for arguments, words in ((("--dates", "ydm"), "--dates is ymd, dmy or mdy"), (("--map", "shoes=Name"), "there is no field shoes"),
                                 (("--unit", "stone"), "--unit is kg or lb"), (("--separator", "x"), "--separator is one of"),
                                 (("--encoding", "x"), "--encoding is"), (("--coach", "Nobody"), "there is no coach Nobody"),
                                 (("--exercise", "x=y"), "there is no exercise y"), (("--person", "Zed=new"), "no row names Zed")):
            run = self.run_import(file, *arguments)
            self.assertEqual(run.returncode, 2, arguments)
            self.assertIn(words, run.stderr)
        self.assertIn("No column says who it is", self.run_import(self.write("x.csv", "Colour,Shape\nred,round\n")).stderr)

    def test_two_clients_become_one(self):
        file = self.write("sessions.csv", "Client,Date,Exercise,Load,Reps\nJoaquim Ferro,2024-03-02,Back squat,60,8\n")
        self.import_json(file, "--person", "Joaquim Ferro=new")
        likely = self.good_json("merge", "--studio", self.studio, "--on", DAY)["pairs"]
        self.assertIn(("near_name"), [pair["ground"] for pair in likely])
        preview = self.good_json("merge", "Joaquin Ferro", "Joaquim Ferro", "--preview", "--studio", self.studio, "--on", DAY)
        self.assertEqual((preview["act"], preview["sessions"]), (None, 1))
        merged = self.good_json("merge", "Joaquin Ferro", "Joaquim Ferro", "--studio", self.studio, "--on", DAY)
        self.assertIsNotNone(merged["act"])
        self.assertNotIn("Joaquim Ferro", self.good("roster", "--studio", self.studio, "--on", DAY))
        self.good("verify", "--studio", self.studio, "--on", DAY)
        self.assertEqual(self.run_program("merge", "Joaquin Ferro", "--studio", self.studio, "--on", DAY).returncode, 2)
