# SPDX-License-Identifier: GPL-3.0-or-later
"""A keeper's hands: real keys and a real mouse, through xdotool."""

import subprocess


def keys(*names):
    """Presses these keys one after the other, named as X names them: Tab, alt+b, 8."""
    _xdotool("key", "--delay", "8", *names)


def write(text):
    _xdotool("type", "--delay", "8", text)


def click(place, times=1):
    _xdotool("mousemove", *_numbers(place), *["click", "1"] * times)


def drag(start, end):
    """Presses the button at one place and lets it go at the other, by way of the middle."""
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    _xdotool("mousemove", *_numbers(start), "mousedown", "1", "mousemove", *_numbers(middle), "mousemove", *_numbers(end), "mouseup", "1")


def take_hold(window):
    """Without a window manager nobody gives a new window the keys."""
    _xdotool("windowfocus", "--sync", str(window))


def windows_named(name):
    found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", name], capture_output=True, text=True, check=False)
    return [int(number) for number in found.stdout.split()]


def _numbers(place):
    return [str(round(number)) for number in place]


def _xdotool(*words):
    subprocess.run(["xdotool", *words], check=True, timeout=20, capture_output=True)
