"""client --paper: the papers of onboarding as PDF."""

import json
import os
import subprocess

from support import StudioTest
from test_client_add import calm_intake, newcomer

CONSENT = {"consent": "2026-11-25"}


class ClientPaper(StudioTest):
    def take_in(self, **other):
        self.good(*self.on_studio("client", "add", self.file("new.json", json.dumps(newcomer(**other)))))

    def calm(self, **answers):
        intake = calm_intake(self.good("clearance", "--help"))
        intake["answers"].update(answers)
        return intake

    def paper(self, *arguments, client="Tove Aldane"):
        return self.on_studio("client", client, "--paper", *arguments)

    def not_now(self, *arguments):
        """Runs what cannot be made yet and answers the one line that says why."""
        done = self.run_program(*self.paper(*arguments))
        self.assertEqual((done.returncode, done.stdout), (1, ""))
        self.assertRegex(done.stderr, r"\Achalkrung client: [^\n]+\n\Z")
        self.assertEqual([name for name in os.listdir(self.folder) if name.endswith(".pdf")], [])
        return done.stderr

    def words(self, file):
        text = subprocess.run(["pdftotext", "-layout", self.path(file), "-"], capture_output=True, text=True, check=True).stdout
        return " ".join(text.split())

    def page_size(self, file):
        text = subprocess.run(["pdfinfo", self.path(file)], capture_output=True, text=True, check=True).stdout
        return [line for line in text.splitlines() if line.startswith("Page size")][0]

    def test_consent_comes_before_everything(self):
        self.take_in()
        text = self.good(*self.paper("consent"))
        self.assertEqual(text, "Consent, Tove Aldane: in consent-tove-aldane-2026-11-25.pdf\n")
        words = self.words("consent-tove-aldane-2026-11-25.pdf")
        self.assertIn("I agree that my health data is kept", words)
        self.assertIn("Coach: Ines", words)
        self.assertNotIn("Guardian", words)

    def test_a_minor_signs_with_a_guardian(self):
        self.take_in(born="2011-02-01")
        self.good(*self.paper("consent", "--out", "page.pdf"))
        self.assertIn("Guardian", self.words("page.pdf"))

    def test_an_intake_is_made_once_it_is_whole(self):
        self.take_in()
        self.assertIn("Tove Aldane has not agreed yet", self.not_now("intake"))
        self.take_in(name="Ulla Brant", profile=CONSENT)
        self.assertIn("has not been asked", self.run_program(*self.paper("intake", client="Ulla Brant")).stderr)
        half = self.calm()
        del half["answers"]["smoking"]
        self.take_in(name="Per Hald", profile=CONSENT, intake=half)
        done = self.run_program(*self.paper("intake", client="Per Hald"))
        self.assertEqual(done.returncode, 1)
        self.assertIn("is not finished. Still open: 11", done.stderr)
        self.take_in(name="Ada Holm", profile=CONSENT, intake=self.calm(joint_bone_back={"yes": True, "marks": ["knee"], "detail": "on stairs"}))
        made = self.good_json(*self.paper("intake", client="Ada Holm"))
        self.assertEqual(made, {"file": "health-intake-ada-holm-2026-11-25.pdf", "paper": "intake", "pages": 1})
        words = self.words(made["file"])
        self.assertIn("Knee. on stairs", words)
        self.assertIn("no diagnosis", words)

    def test_a_letter_is_made_where_a_doctor_is_asked(self):
        self.take_in(profile=CONSENT, intake=self.calm())
        self.assertIn("no letter is needed", self.not_now("letter"))
        self.take_in(name="Ulla Brant", profile=CONSENT, intake=self.calm(chest_pain={"yes": True, "marks": ["chest_pain_on_effort"], "detail": "uphill"}))
        self.good(*self.paper("letter", client="Ulla Brant"))
        words = self.words("before-strength-training-ulla-brant-2026-11-25.pdf")
        self.assertIn("Chest pain on effort. uphill", words)
        self.assertIn("Doctor, stamp", words)

    def test_a_letter_of_the_demo_studio_says_why(self):
        self.good(*self.paper("letter", "--out", "letter.pdf", client="Osric Bell"))
        self.assertRegex(self.words("letter.pdf"), r"What made us ask \w")

    def test_it_only_reads(self):
        self.take_in(profile=CONSENT, intake=self.calm(chest_pain=True))
        with open(self.studio, "rb") as file:
            before = file.read()
        for paper in ("consent", "intake", "letter"):
            self.good(*self.paper(paper, "--out", "paper.pdf"))
        with open(self.studio, "rb") as file:
            self.assertEqual(file.read(), before)

    def test_sizes_and_the_same_bytes(self):
        self.take_in()
        for name, options in (("one", ()), ("two", ("--size", "a4")), ("three", ("--size", "letter"))):
            self.good(*self.paper("consent", "--out", name + ".pdf", *options))
        self.assertRegex(self.page_size("one.pdf"), r"59[56][.\d]* x 84[12][.\d]* pts")
        self.assertIn("612 x 792", self.page_size("three.pdf"))
        with open(self.path("one.pdf"), "rb") as one, open(self.path("two.pdf"), "rb") as two:
            self.assertEqual(one.read(), two.read())

    def test_a_name_that_parts_folders(self):
        self.take_in(name="Tove A/S \\ ../Aldane")
        made = self.good_json(*self.paper("consent", client="Tove A/S \\ ../Aldane"))
        self.assertNotIn("/", made["file"])
        self.assertTrue(os.path.isfile(self.path(made["file"])))

    def test_wrong_use(self):
        self.take_in()
        self.assertIn("--paper must be", self.refused(*self.paper("diploma")))
        self.assertIn("--size must be", self.refused(*self.paper("consent", "--size", "a5")))
        self.assertIn("there is no client", self.refused(*self.paper("consent", client="Nobody")))
        for arguments in (("--all", "--paper", "consent"), ("--paper", "consent"), ("Tove", "--size", "a4"), ("Tove", "--out", "x.pdf"), ("add", "new.json", "--paper", "consent")):
            with self.subTest(arguments=arguments):
                self.assertIn("goes with", self.refused(*self.on_studio("client", *arguments)))
        done = self.run_program(*self.paper("consent", "--out", self.path("no/such/folder.pdf")))
        self.assertEqual(done.returncode, 1)
        self.assertIn("folder.pdf", done.stderr)
