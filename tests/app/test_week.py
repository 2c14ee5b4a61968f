"""week: what is booked and what is missing, proposals for it, and the bookings in forms that leave the program."""

import csv
import io
import re

from support import DAY, StudioTest

AHEAD = "2026-W50"  # two weeks after the demo's day: nobody is booked yet


class Week(StudioTest):
    def week(self, *more, **how):
        return self.good_json("week", "--studio", self.studio, "--on", DAY, *more, **how)

    def proposed(self, week):
        return [one for one in week["sessions"] if one["state"] == "proposed"]

    def test_the_present_week_is_as_it_is_booked(self):
        week = self.week()
        self.assertEqual(week["week"], "2026-W48")
        self.assertIn("Joaquin Ferro", {one["client"] for one in week["sessions"]})
        self.assertEqual(self.proposed(week), [])
        self.assertLessEqual({one["state"] for one in week["sessions"]}, {"booked", "done", "missed", "cancelled"})

    def test_what_is_missing_says_why_and_what_would_help(self):
        week = self.week("--week", AHEAD)
        self.assertEqual(week["sessions"], [])
        self.assertEqual(len([one for one in week["left_over"] if one["client"] == "Joaquin Ferro"]), 2)
        for one in week["left_over"]:
            self.assertTrue(one["why"] and one["ways_out"], one)

    def test_fill_proposes_and_keeps_nothing(self):
        week = self.week("--week", AHEAD, "--fill")
        self.assertGreater(len(self.proposed(week)), 15)
        self.assertEqual(week["conflicts"], [])
        self.assertLess(len(week["left_over"]), len(self.week("--week", AHEAD)["left_over"]))
        self.assertEqual(self.week("--week", AHEAD)["sessions"], [])

    def test_who_waits_for_clearance_is_proposed_no_time(self):
        names = {one["client"] for one in self.proposed(self.week("--week", AHEAD, "--fill"))}
        self.assertNotIn("Osric Bell", names)
        self.assertNotIn("Ingrid Sollund", names)
        text = self.good("week", "--studio", self.studio, "--on", DAY, "--week", AHEAD, "--fill")
        self.assertIn("Osric Bell: waits for clearance", text)

    def test_standing_slots_are_kept_where_they_can_be(self):
        ferro = [(one["date"], one["at"], one["coach"]) for one in self.proposed(self.week("--week", AHEAD, "--fill")) if one["client"] == "Joaquin Ferro"]
        self.assertEqual(ferro, [("2026-12-08", "09:00", "Ines"), ("2026-12-10", "09:00", "Ines")])

    def test_what_is_kept_is_booked(self):
        proposed = self.proposed(self.week("--week", AHEAD, "--fill", "--keep"))
        booked = self.week("--week", AHEAD)["sessions"]
        place = lambda one: (one["client"], one["date"], one["at"], one["coach"], one["minutes"])
        self.assertEqual(sorted(map(place, proposed)), sorted(map(place, booked)))
        self.assertEqual({one["state"] for one in booked}, {"booked"})
        self.assertEqual(len({one["code"] for one in booked}), len(booked))

    def test_a_closed_week_takes_nobody(self):
        week = self.week("--week", "2026-W53", "--fill")
        open_days = {one["date"] for one in self.proposed(week)}
        self.assertLessEqual(open_days, {"2027-01-03"}, "closed from 24 December to 2 January")

    def test_calendar(self):
        text = self.good("week", "--studio", self.studio, "--on", DAY, "--ics", "--coach", "Ines")
        self.assertTrue(text.startswith("BEGIN:VCALENDAR"))
        self.assertEqual(text.count("BEGIN:VEVENT"), len([one for one in self.week()["sessions"] if one["coach"] == "Ines"]))
        uids = re.findall(r"^UID:(.+)$", text, re.MULTILINE)
        self.assertEqual(len(set(uids)), len(uids))

    def test_csv(self):
        rows = list(csv.DictReader(io.StringIO(self.good("week", "--studio", self.studio, "--on", DAY, "--csv", "--initials"))))
        self.assertEqual(len(rows), len(self.week()["sessions"]))
        self.assertIn("J. F.", {row["client"] for row in rows})
        self.assertNotIn("Ferro", str(rows))

    def test_a_message_to_send(self):
        text = self.good("week", "--studio", self.studio, "--on", DAY, "--message", "--client", "joaquin ferro")
        self.assertEqual(text, "Thu 26 Nov 09:00, 60 min with Ines\n")

    def test_what_is_wrong_is_said(self):
        on = ("--studio", self.studio, "--on", DAY)
        self.assertIn("ISO week", self.refused("week", *on, "--week", "2026-W54"))
        self.assertIn("--fill", self.refused("week", *on, "--keep"))
        self.assertIn("Nobody Atall", self.refused("week", *on, "--csv", "--client", "Nobody Atall"))
        self.assertIn("--seconds", self.refused("week", *on, "--fill", "--seconds", "0"))
