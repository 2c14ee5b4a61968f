"""check-in: whom to look at this week and why, and one client's page."""

from support import DAY, StudioTest

KINDS = ["pain", "clearance", "plateau", "direction", "attendance", "rescreen", "on_course"]
CHOICES = {"lighter_week", "hold", "move_on", "swap", "by_hand", "rescreen", "direction"}


class CheckIn(StudioTest):
    def check_in(self, *options):
        return self.good(*self.on_studio("check-in", *options))

    def queue(self):
        return self.good_json(*self.on_studio("check-in"))

    def page(self, name, *options):
        return self.good_json(*self.on_studio("check-in", "--client", name, *options))

    def test_the_queue_stands_in_order_with_a_line_for_each_client(self):
        queue = self.queue()
        self.assertEqual([KINDS.index(one["finding"]["kind"]) for one in queue], sorted(KINDS.index(one["finding"]["kind"]) for one in queue))
        lines = self.check_in().splitlines()
        self.assertEqual(len(lines), len(queue))
        for line, one in zip(lines, queue):
            self.assertTrue(line.startswith(one["name"]), line)
            self.assertNotEqual(line[len(one["name"]) :].strip(), "")

    def test_every_page_finds_what_the_queue_finds(self):
        for one in self.queue():
            page = self.page(str(one["id"]))
            self.assertEqual(page["finding"], one["finding"], one["name"])
            self.assertEqual(page["name"], one["name"])

    def test_every_lift_has_one_suggestion_and_it_stands_first(self):
        for one in self.queue():
            for lift in self.page(str(one["id"]))["lifts"]:
                self.assertLessEqual({choice["kind"] for choice in lift["choices"]}, CHOICES)
                self.assertEqual([choice["suggested"] for choice in lift["choices"]], [True] + [False] * (len(lift["choices"]) - 1))
                self.assertIsNotNone(lift["choices"][0]["why"])

    def test_a_plateau_has_its_flat_stretch_and_says_its_numbers(self):
        stalled = next(one for one in self.queue() if one["finding"]["kind"] == "plateau")
        page = self.page(str(stalled["id"]))
        lift = next(lift for lift in page["lifts"] if lift["id"] == stalled["finding"]["lift"])
        self.assertEqual(lift["exercise"], stalled["exercise"])
        self.assertIsNotNone(lift["flat"])
        self.assertEqual(lift["flat"]["to"], DAY)
        text = self.check_in("--client", str(stalled["id"]))
        self.assertIn("Plateau", text)
        self.assertIn("Suggested.", text)

    def test_pain_sends_to_a_physician_and_no_choice_ends_the_hold(self):
        held = self.queue()[0]
        self.assertEqual(held["finding"]["kind"], "pain")
        lift = next(lift for lift in self.page(str(held["id"]))["lifts"] if lift["id"] == held["finding"]["lift"])
        for choice in lift["choices"]:
            if choice["next"] is not None:
                self.assertEqual(choice["next"]["kind"], "hold")

    def test_a_forecast_is_added_or_what_is_missing(self):
        kinds = set()
        for one in self.queue():
            for lift in self.page(str(one["id"]), "--forecast")["lifts"]:
                forecast = lift["forecast"]
                kinds.add("lack" in forecast)
                if "lack" not in forecast:
                    self.assertEqual(len(forecast["weeks"]), 12)
                    for week in forecast["weeks"]:
                        self.assertLessEqual(week["slow"]["single"], week["fast"]["single"])
        self.assertEqual(kinds, {True, False})
        self.assertNotIn("forecast", self.page(str(self.queue()[0]["id"]))["lifts"][0])

    def test_a_summary_is_a_message_and_nothing_else(self):
        one = self.queue()[0]
        text = self.check_in("--client", str(one["id"]), "--summary")
        self.assertIn(one["name"].split()[0], text)
        self.assertNotIn("Suggested", text)

    def test_wrong_use_is_refused(self):
        self.assertIn("--client", self.refused(*self.on_studio("check-in", "--forecast")))
        self.assertIn("--client", self.refused(*self.on_studio("check-in", "--summary")))
        self.assertIn("--summary", self.refused(*self.on_studio("check-in", "--client", "1", "--summary", "--json")))
        self.refused(*self.on_studio("check-in", "--client", "nobody of that name"))
