"""rotate: the lifts of a group in, an order of them with the least waiting out."""

import json
import re

from support import CommandLineTest


def lift(name, pattern, seconds, station=None, **other):
    """One set of so many seconds, the rest included."""
    fields = {"name": name, "pattern": pattern, "sets": 1, "work_seconds": 60, "rest_seconds": seconds - 60, **other}
    return dict(fields, station=station) if station else fields


def squat(seconds, **other):
    return lift("Back squat", "squat", seconds, "rack", **other)


def group(units=1, **lifts):
    return {"stations": [{"key": "rack", "units": units}], "clients": [{"name": name, "lifts": own} for name, own in lifts.items()]}


# Each does two lifts of ten minutes. One begins at the rack, the other with the row, and then they change: nobody waits, the end is 20:00.
PAIR = group(Ada=[squat(600), lift("Row", "horizontal_pull", 600)], Ben=[squat(600), lift("Row", "horizontal_pull", 600)])

# One rack, three squats of 4:00, 6:00 and 10:00 and nothing else to do meanwhile: two must wait. The shortest first, then the next: 4:00 is
# waited by Ben, 4:00 + 6:00 by Ada, 14:00 in all; every other order has more (a longer one goes before a shorter). The rack is never
# idle, so the end is 4:00 + 6:00 + 10:00.
QUEUE = group(Ada=[squat(600)], Ben=[squat(360)], Cy=[squat(240)])


class Rotate(CommandLineTest):
    def rotation(self, document):
        return json.loads(self.good("rotate", "-", "--json", stdin=json.dumps(document)))

    def text(self, document):
        return self.good("rotate", "-", stdin=json.dumps(document))

    def turns(self, document, name):
        client = next(one for one in self.rotation(document)["clients"] if one["name"] == name)
        return [(turn["name"], turn["begin_seconds"], turn["end_seconds"], turn["waited_seconds"]) for turn in client["turns"]]

    def test_nobody_waits_where_an_order_avoids_it(self):
        answer = self.rotation(PAIR)
        self.assertEqual((answer["waited_seconds"], answer["end_seconds"], answer["proved"]), (0, 1200, True))
        at_rack = sorted(turn["begin_seconds"] for client in answer["clients"] for turn in client["turns"] if turn["station"] == "rack")
        self.assertEqual(at_rack, [0, 600])
        for client in answer["clients"]:
            self.assertEqual((client["waited_seconds"], client["end_seconds"], client["pattern_repeated"]), (0, 1200, False))
            self.assertEqual(sorted(turn["lift"] for turn in client["turns"]), [0, 1])
            for turn in client["turns"]:
                self.assertEqual((turn["station"], turn["unit"]), ("rack", 1) if turn["name"] == "Back squat" else (None, None))

    def test_the_text_of_a_group_without_waiting(self):
        text = self.text(PAIR)
        self.assertEqual(re.findall(r"^\S.*$", text, re.MULTILINE)[:2], ["Ada", "Ben"])
        self.assertEqual(len(re.findall(r"^ +(?:0:00  10:00|10:00  20:00)  Back squat +rack$", text, re.MULTILINE)), 2)
        self.assertEqual(len(re.findall(r"^ +(?:0:00  10:00|10:00  20:00)  Row$", text, re.MULTILINE)), 2)
        self.assertIn("\nNobody waits.\nEnd: 20:00.\nProved: ", text)
        self.assertNotIn("waits 0", text)

    def test_waiting_that_cannot_be_avoided(self):
        answer = self.rotation(QUEUE)
        self.assertEqual((answer["waited_seconds"], answer["end_seconds"], answer["proved"]), (240 + 600, 1200, True))
        self.assertEqual(self.turns(QUEUE, "Cy"), [("Back squat", 0, 240, 0)])
        self.assertEqual(self.turns(QUEUE, "Ben"), [("Back squat", 240, 600, 240)])
        self.assertEqual(self.turns(QUEUE, "Ada"), [("Back squat", 600, 1200, 600)])

    def test_the_text_says_who_waits_where_and_how_long(self):
        self.assertEqual(
            self.text(QUEUE),
            "Ada\n"
            "   0:00  10:00  waits 10:00 for rack\n"
            "  10:00  20:00  Back squat                  rack\n"
            "Ben\n"
            "   0:00   4:00  waits 4:00 for rack\n"
            "   4:00  10:00  Back squat                  rack\n"
            "Cy\n"
            "   0:00   4:00  Back squat                  rack\n"
            "\n"
            "Waiting: 14:00 in all; Ada 10:00, Ben 4:00.\n"
            "End: 20:00.\n"
            "Proved: no order waits less in all, and none that waits as little ends earlier.\n",
        )

    def test_blocks_are_kept_though_it_costs_waiting(self):
        # Both squat for ten minutes before anything else at the one rack: one of them waits those ten minutes, and ends at 30:00.
        both = [squat(600), lift("Carry", "carry_brace", 600, block=1)]
        answer = self.rotation(group(Ada=both, Ben=both))
        self.assertEqual((answer["waited_seconds"], answer["end_seconds"]), (600, 1800))

    def test_units_are_named_where_there_are_several(self):
        document = dict(QUEUE, stations=[{"key": "rack", "units": 3}])
        self.assertEqual(sorted(re.findall(r"rack \d", self.text(document))), ["rack 1", "rack 2", "rack 3"])
        self.assertIn("Nobody waits.", self.text(document))
        self.assertEqual(sorted(client["turns"][0]["unit"] for client in self.rotation(document)["clients"]), [1, 2, 3])

    def test_the_time_of_a_lift_has_sets_work_rest_and_set_up(self):
        # 3 x (40 s + 120 s) + 60 s = 540 s
        document = {"clients": [{"name": "Ada", "lifts": [
            {"name": "Deadlift", "pattern": "hinge", "sets": 3, "work_seconds": 40, "rest_seconds": 120, "set_up_seconds": 60}]}]}
        self.assertEqual(self.turns(document, "Ada"), [("Deadlift", 0, 540, 0)])

    def test_one_pattern_alone_follows_itself_and_it_says_so(self):
        document = group(Ada=[squat(300), lift("Goblet squat", "squat", 300)])
        self.assertTrue(self.rotation(document)["clients"][0]["pattern_repeated"])
        self.assertIn("One pattern follows itself", self.text(document))
        self.assertNotIn("One pattern", self.text(PAIR))

    def test_the_largest_group_is_answered_the_same_every_time(self):
        patterns = ("squat", "hinge", "horizontal_push", "horizontal_pull", "vertical_push", "vertical_pull", "single_leg", "carry_brace")
        lifts = {
            name: [lift(pattern, pattern, 300 + 60 * ((i * 3 + j) % 5), "rack" if j % 2 else None) for j, pattern in enumerate(patterns)]
            for i, name in enumerate(("Ada", "Ben", "Cy", "Dee", "Eli", "Fay"))
        }
        document = group(2, **lifts)
        answer = self.rotation(document)
        self.assertEqual(answer, self.rotation(document))
        self.assertIn("\nProved: " if answer["proved"] else "\nNot proved: ", self.text(document))
        at_rack = [turn for client in answer["clients"] for turn in client["turns"] if turn["station"] == "rack"]
        self.assertEqual(len(at_rack), 24)
        for unit in (1, 2):
            spans = sorted((turn["begin_seconds"], turn["end_seconds"]) for turn in at_rack if turn["unit"] == unit)
            for (_, end), (begin, _) in zip(spans, spans[1:]):
                self.assertLessEqual(end, begin)

    def test_a_file_and_standard_input_agree(self):
        path = self.file("group.json", json.dumps(QUEUE))
        self.assertEqual(self.good("rotate", path), self.text(QUEUE))

    def test_faults_name_file_and_place(self):
        for document, fault in (
            ({}, "clients: is required"),
            (dict(PAIR, slot=60), "slot: is not a field that is known here"),
            (dict(PAIR, clients=PAIR["clients"] * 4), "clients: must be 1 to 6"),
            (dict(PAIR, stations=[]), "clients[0].lifts[0].station: rack is not among the stations"),
            (dict(PAIR, stations=[{"key": "rack", "units": 0}]), "stations[0].units: must be 1 to 20"),
            (group(Ada=[squat(600)], Ben=[squat(600), squat(600, sets=13)]), "clients[1].lifts[1].sets: must be 1 to 12"),
            (group(Ada=[lift("Press", "press", 600)]), "clients[0].lifts[0].pattern: must be one of the eight patterns"),
            (group(Ada=[]), "clients[0].lifts: must be 1 to 8"),
        ):
            with self.subTest(fault=fault):
                path = self.file("group.json", json.dumps(document))
                self.assertEqual(self.refused("rotate", path), f"chalkrung rotate: {path}: {fault}\n")

    def test_what_is_no_json_and_no_file(self):
        self.assertIn("-: line 1, column ", self.refused("rotate", "-", stdin="{"))
        self.assertIn("-: stations: ", self.refused("rotate", "-", stdin='{"stations": [], "stations": [], "clients": []}'))
        self.assertIn("-: input: must be an object", self.refused("rotate", "-", stdin="[]"))
        self.assertIn("nowhere.json", self.refused("rotate", "nowhere.json"))

    def test_the_example_in_the_help_is_taken(self):
        text = self.good("rotate", "--help")
        example = json.loads(re.search(r'\{"stations".*\}\]\}\]\}', text, re.DOTALL).group(0))
        # Osric squats from the start, 3 x 130 s = 390 s. Tove does her push-ups first, 3 x 90 s = 270 s, waits the rest of his time, 120 s, and
        # squats 3 x 160 s + 60 s = 540 s. Were she first at the rack, he would wait those 540 s.
        answer = self.rotation(example)
        self.assertEqual([client["name"] for client in answer["clients"]], ["Tove Aldane", "Osric Bell"])
        self.assertEqual((answer["waited_seconds"], answer["end_seconds"], answer["proved"]), (120, 390 + 540, True))
