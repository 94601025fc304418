# SPDX-License-Identifier: GPL-3.0-or-later
"""What the program says to a screen reader: its accessibility tree, read over the session bus as a screen reader reads it."""

import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402  only after the version is said

PATIENCE = 20  # seconds for anything to come about
PAUSE = 0.03
WITHIN_A_FIELD = 0.4  # so long without word of the focus, and it stayed in its field

FOCUSED = Atspi.StateType.FOCUSED
CHECKED = Atspi.StateType.CHECKED


class NotThere(AssertionError):
    """Something awaited did not come about."""


class Program:
    """The accessibility tree of one running program, and where its focus is."""

    def __init__(self, process):
        self._process = process
        self._focus_moved = False
        Atspi.init()
        self._listener = Atspi.EventListener.new(self._hear_focus)
        self._listener.register("object:state-changed:focused")
        self._top = self.wait_for("the program in the accessibility tree", self._registered)

    # ---- waiting

    def wait_for(self, what, ask, patience=PATIENCE):
        """Asks again and again until the answer is something, and gives that. What goes away while it is asked is asked again."""
        until = time.monotonic() + patience
        while True:
            try:
                answer = ask()
            except GLib.Error:
                answer = None
            if answer:
                return answer
            if self._process.poll() is not None:
                raise NotThere(f"the program ended with status {self._process.returncode}, before {what} was there")
            if time.monotonic() > until:
                raise NotThere(f"waited {patience} s in vain for {what}")
            _let_arrive()
            time.sleep(PAUSE)

    # ---- finding

    def find(self, role, name):
        """The shown control of that role that is called so: its name or its description begins with `name`."""
        return self.wait_for(f"the {role} {name!r}", lambda: self.look_for(role, name))

    def look_for(self, role, name):
        for node, _ in self._shown():
            if node.get_role_name() == role and (node.get_name().startswith(name) or node.get_description().startswith(name)):
                return node
        return None

    def words(self, description):
        """What the label says whose description that is; nothing where none is shown."""
        for node, _ in self._shown():
            if node.get_role_name() == "label" and node.get_description().startswith(description):
                return node.get_name()
        return ""

    def dump(self):
        """The tree in words, for a person to read."""
        lines = []
        for node, depth in self._shown():
            states = " ".join(state.value_nick for state in node.get_state_set().get_states())
            lines.append(f"{'  ' * depth}{node.get_role_name()} {node.get_name()!r} {node.get_description()!r} [{states}]")
        return "\n".join(lines) + "\n"

    def _registered(self):
        for program in children(Atspi.get_desktop(0)):
            if program.get_process_id() == self._process.pid:
                program.set_cache_mask(Atspi.Cache.NONE)  # always as it is now
                return program
        return None

    def _shown(self, top=None, depth=0):
        """All that is shown, from the top down, each with its depth."""
        for child in children(top or self._top):
            if depth == 0 or is_(child, Atspi.StateType.SHOWING):
                yield child, depth
                yield from self._shown(child, depth + 1)

    # ---- the focus

    def await_focus(self, move):
        """Makes a move that takes the focus elsewhere, and waits until it is there. Within a date it stays where it was."""
        _let_arrive()
        self._focus_moved = False
        move()
        try:
            self.wait_for("the focus to move", lambda: self._focus_moved, WITHIN_A_FIELD)
        except NotThere:
            pass

    def _hear_focus(self, event):
        self._focus_moved = self._focus_moved or bool(event.detail1)


def _let_arrive():
    while GLib.MainContext.default().iteration(False):
        pass


def children(node):
    for at in range(node.get_child_count()):
        child = node.get_child_at_index(at)
        if child:
            yield child


def is_(node, state):
    return node.get_state_set().contains(state)


def box_of(node):
    """Left, top, width and height on the screen."""
    place = node.get_extents(Atspi.CoordType.SCREEN)
    return place.x, place.y, place.width, place.height
