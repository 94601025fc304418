# SPDX-License-Identifier: GPL-3.0-or-later
"""What must be installed before the window can be used from outside."""

import importlib.util
import os
import shutil
import sys

PROGRAMS = {"Xvfb": "xvfb", "xdotool": "xdotool", "dbus-daemon": "dbus-daemon"}
BUS = "/usr/share/dbus-1/services/org.a11y.Bus.service"


def end_where_something_is_missing():
    """Ends the test, saying what is to be installed, where anything is."""
    packages = [package for program, package in PROGRAMS.items() if not shutil.which(program)]
    if not os.path.exists(BUS):
        packages.append("at-spi2-core")
    if not _knows_the_tree():
        packages += ["python3-gi", "gir1.2-atspi-2.0"]
    if packages:
        sys.exit(f"FAILED: please install {' '.join(packages)}, as listed in resources/packages/test.txt")


def _knows_the_tree():
    if not importlib.util.find_spec("gi"):
        return False
    import gi
    try:
        gi.require_version("Atspi", "2.0")
    except ValueError:
        return False
    return True
