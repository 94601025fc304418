# SPDX-License-Identifier: GPL-3.0-or-later
"""What a test with the program itself runs on: a desk of its own, a keeper before it, a limit of time, and what a failure leaves."""

import argparse
import os
import shutil
import signal
import sys
import traceback

from keeper import Keeper
from own_desk import OwnDesk
from picture import save_screen


def run(options, day, limit, act):
    """`act(keeper)` on that day within so many seconds; the status to end with."""
    shutil.rmtree(options.traces, ignore_errors=True)
    os.makedirs(options.traces)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit("ended from outside"))
    signal.signal(signal.SIGALRM, lambda *_: _out_of_time(limit))
    signal.alarm(limit)
    with OwnDesk() as desk:
        os.environ["WINTERLARDER_TODAY"] = day  # whatever the clock says
        keeper = Keeper(desk, [options.program, "--day", day], os.path.join(options.traces, "program.log"))
        try:
            act(keeper)
            return 0
        except Exception as fault:
            signal.alarm(0)
            traceback.print_exc()
            print(f"\nFAILED: {fault}\nThe screen, the accessibility tree and the book of that moment: {options.traces}", file=sys.stderr)
            _leave_traces(desk, keeper, options.traces)
            return 1


def options_of(description):
    """A parser that knows the programs and the folder of traces."""
    parser = argparse.ArgumentParser(description=description)
    parser.add_argument("--program", required=True, help="the window's executable")
    parser.add_argument("--cli", required=True, help="winterlarder-cli")
    parser.add_argument("--traces", required=True, help="folder for what a failure leaves; it is emptied")
    return parser


def _leave_traces(desk, keeper, folder):
    """For whoever looks for the fault: the screen, the accessibility tree and the book."""
    save_screen(os.path.join(desk.framebuffer, "Xvfb_screen0"), os.path.join(folder, "screen.png"))
    if keeper.program and keeper.process.poll() is None:
        with open(os.path.join(folder, "tree.txt"), "w", encoding="utf-8") as file:
            file.write(keeper.program.dump())
    documents = os.path.join(desk.folder, "Documents")
    if os.path.isdir(documents):
        shutil.copytree(documents, os.path.join(folder, "Documents"))


def _out_of_time(limit):
    raise TimeoutError(f"it was not done within {limit} s")
