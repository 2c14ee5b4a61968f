#!/usr/bin/env python3
"""Runs the tests of the command line: run_tests.py PROGRAM REPORT PART PARTS. REPORT is written in the form that GoogleTest writes.

PART counts from 1: the files are dealt out to PARTS runs, which may go on beside each other."""

import os
import sys
import unittest
import xml.etree.ElementTree as xml


class Report(unittest.TextTestResult):
    """Keeps what became of each test."""

    def __init__(self, *arguments):
        super().__init__(*arguments)
        self.fates = {}

    def startTest(self, test):
        super().startTest(test)
        self.fates[test.id()] = "passed"

    def addFailure(self, test, err):
        super().addFailure(test, err)
        self.fates[test.id()] = "failed"

    def addError(self, test, err):
        super().addError(test, err)
        self.fates[test.id()] = "failed"

    def addSubTest(self, test, subtest, err):
        super().addSubTest(test, subtest, err)
        if err is not None:
            self.fates[test.id()] = "failed"

    def addSkip(self, test, reason):
        super().addSkip(test, reason)
        self.fates[test.id()] = "skipped"

    def write(self, path):
        root = xml.Element("testsuites")
        suite = xml.SubElement(root, "testsuite", name="app")
        for identity, fate in self.fates.items():
            group, name = identity.rsplit(".", 1)
            case = xml.SubElement(suite, "testcase", name=name, classname=group, status="run")
            if fate != "passed":
                xml.SubElement(case, {"failed": "failure", "skipped": "skipped"}[fate])
        os.makedirs(os.path.dirname(path), exist_ok=True)
        xml.ElementTree(root).write(path)


def main(program, report, part, parts):
    os.environ["CHALKRUNG_PROGRAM"] = os.path.abspath(program)
    folder = os.path.dirname(os.path.abspath(__file__))
    sys.path.insert(0, folder)
    files = sorted(name for name in os.listdir(folder) if name.startswith("test_") and name.endswith(".py"))
    # What needs a server has a run of its own, beside one.
    of_server = ["test_server.py"]
    files = of_server if os.environ.get("CHALKRUNG_TEST_SERVER") else [name for name in files if name not in of_server]
    tests = unittest.defaultTestLoader.loadTestsFromNames([name[:-len(".py")] for name in files[int(part) - 1::int(parts)]])
    result = unittest.TextTestRunner(resultclass=Report).run(tests)
    result.write(report)
    return 0 if result.wasSuccessful() and result.testsRun > 0 else 1


if __name__ == "__main__":
    if len(sys.argv) != 5:
        sys.exit(f"usage: {sys.argv[0]} PROGRAM REPORT PART PARTS")
    sys.exit(main(*sys.argv[1:]))
