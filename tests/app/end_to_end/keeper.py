# SPDX-License-Identifier: GPL-3.0-or-later
"""A keeper at the desk: starts the program, finds controls by what they are called, and uses them with keys and mouse."""

import subprocess

import hands
from spoken import CHECKED, FOCUSED, NotThere, Program, box_of, children, is_

MOST_TABS = 80
ARROW = 8  # pixels from the right edge of a field of numbers to the middle of its arrows


class Keeper:
    def __init__(self, desk, command, log):
        """`command` starts the program, which prints into the file `log`."""
        self._desk = desk
        self._command = command
        self._log = log
        self.process = None
        self.program = None

    # ---- coming and going

    def sit_down(self):
        self.process = self._desk.start(self._command, self._log)
        self.program = Program(self.process)
        self.take_hold()

    def quit(self):
        hands.keys("ctrl+q")
        try:
            status = self.process.wait(20)
        except subprocess.TimeoutExpired:
            raise NotThere("the program did not end on Ctrl+Q") from None
        assert status == 0, f"the program ended with status {status}"
        self.program = None

    def take_hold(self):
        """No window manager is there to give the window the keys, neither at first nor when a form over it has closed."""
        windows = self.program.wait_for("the window on the screen", lambda: hands.windows_named("Winterlarder"))
        hands.take_hold(windows[0])

    # ---- with the keyboard

    def tab_to(self, role, name):
        wanted = self.program.find(role, name)
        for _ in range(MOST_TABS):
            if is_(wanted, FOCUSED):
                return wanted
            self.program.await_focus(lambda: hands.keys("Tab"))
        raise NotThere(f"the Tab key never came to the {role} {name!r}")

    def write_into(self, role, name, text):
        self.tab_to(role, name)
        hands.keys("ctrl+a")
        hands.write(text)

    def choose(self, name, letter, wanted):
        """Takes what begins with the letter out of the choice called `name`."""
        choice = self.tab_to("combo box", name)
        hands.keys(letter)
        self.program.wait_for(f"{wanted!r} to be chosen of {name!r}", lambda: choice.get_name().startswith(wanted))

    def check_next(self, first, wanted):
        """Goes on to `wanted` from the radio button above it."""
        self.tab_to("radio button", first)
        hands.keys("Down")
        self.program.wait_for(f"{wanted!r} to be checked", lambda: is_(self.program.find("radio button", wanted), CHECKED))

    def press(self, name):
        self.tab_to("push button", name)
        hands.keys("space")

    # ---- with the mouse

    def click(self, role, name):
        hands.click(_middle(self.program.find(role, name)))

    def type_with_mouse(self, role, name, text):
        """Clicks into the field thrice, which marks all of it, and writes instead."""
        hands.click(_middle(self.program.find(role, name)), 3)
        hands.write(text)

    def pick(self, choice, wanted):
        """Opens the choice and clicks what is wanted of it."""
        self.click("combo box", choice)
        self.click("list item", wanted)
        self.program.wait_for(f"{wanted!r} to be chosen of {choice!r}", lambda: self.program.look_for("combo box", choice).get_name() == wanted)

    def count_up(self, name, times):
        """Clicks the upper arrow of a field of numbers."""
        left, top, width, height = box_of(self.program.find("spin button", name))
        for _ in range(times):
            hands.click((left + width - ARROW, top + height / 4))

    # ---- combs

    def combs(self):
        """What is said of each comb, in their order."""
        drawing = self.program.find("list", "The combs of the hive")
        return [comb.get_description() for comb in children(drawing)]

    def await_comb(self, place, words):
        """Waits until these words are said of the comb at that place, 0 for the first."""
        self.program.wait_for(f"comb {place + 1} to be said to hold {words!r}", lambda: words in self.combs()[place])

    def await_other_comb(self, place, words):
        self.program.wait_for(f"comb {place + 1} to hold no longer {words!r}", lambda: words not in self.combs()[place])

    def drag_within_comb(self, place, start, end):
        """Drags with the mouse from one height of the comb to another; 0 is its top bar, 1 its lower edge."""
        comb = list(children(self.program.find("list", "The combs of the hive")))[place]
        left, top, width, height = box_of(comb)
        hands.drag((left + width / 2, top + start * height), (left + width / 2, top + end * height))

    # ---- the answer

    def answer(self):
        return self.program.words("Answer")

    def await_answer(self, beginning, other_than=""):
        """The answer once one is worked out that begins so and is another."""
        def worked_out():
            said = self.answer()
            return said if said.startswith(beginning) and said != other_than else None
        what = f"an answer that begins {beginning!r}" + (f" and is not {other_than!r}" if other_than else "")
        try:
            return self.program.wait_for(what, worked_out)
        except NotThere as fault:
            raise NotThere(f"{fault}; it is answered {self.answer()!r}") from None


def _middle(node):
    left, top, width, height = box_of(node)
    return left + width / 2, top + height / 2
