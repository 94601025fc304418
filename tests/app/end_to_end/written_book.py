# SPDX-License-Identifier: GPL-3.0-or-later
"""The book as the command line reads it, held against what the window said."""

import json
import subprocess

POUND = 0.45359237  # kg
ZONES = (("capped", "capped"), ("open", "open nectar"), ("brood", "brood"))  # as written, as said


class WrittenBook:
    def __init__(self, cli, file, colony, day):
        self._cli, self._file, self._colony, self._day = cli, file, colony, day

    def must_say(self, answer):
        """The book is sound, and its answer is the one read in the window, a hungry colony's in pounds."""
        assert self._told("check").strip() == "sound"
        advice = json.loads(self._told("advise", "--as-of", self._day, "--json"))
        assert advice["colony"] == self._colony, f"the colony is called {advice['colony']!r}"
        told = feeding_sentence(advice)
        assert answer == told, f"the window said\n  {answer}\nbut of its book must be said\n  {told}"

    def must_hold(self, combs):
        """The combs written down are those described in the window."""
        case = json.loads(self._told("case", "--as-of", self._day, "--colony", self._colony))
        written = [", ".join(f"{said} {round(100 * comb.get(zone, 0))} %" for zone, said in ZONES) for comb in case["combs"]]
        heard = [", ".join(comb.split(": ", 1)[1].split(", ")[:len(ZONES)]) for comb in combs]
        assert heard == written, difference("the combs heard of and those written down", heard, written)

    def _told(self, verb, *options):
        ran = subprocess.run([self._cli, "book", verb, self._file, *options], capture_output=True, text=True, check=False, timeout=60)
        assert ran.returncode == 0, f"book {verb} ended with {ran.returncode}: {ran.stderr}"
        return ran.stdout


def feeding_sentence(advice):
    """What the window says of these figures, worded here once more."""
    assert advice["verdict"] == "feed", f"the advice is to {advice['verdict']}, not to feed"
    feed = advice["feed"]
    visits = [visit for visit in feed["visits"] if visit["kind"] != "check"]
    assert visits[0]["date"] == advice["as_of"] and len(visits) > 1, f"fed first on {visits[0]['date']}, in {len(visits)} visits"
    return f"Feed {feed['sugar_kg'] / POUND:.0f} lb of sugar as syrup {feed['ratio']}, the first of {len(visits)} visits today."


def difference(what, first, second):
    """Says which of two lists' members differ."""
    pairs = [f"{one!r} | {other!r}" for one, other in zip(first, second) if one != other]
    return "\n  ".join([f"{what} differ, {len(first)} and {len(second)}:"] + pairs)
