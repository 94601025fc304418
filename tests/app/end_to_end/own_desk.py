# SPDX-License-Identifier: GPL-3.0-or-later
"""A desk of the test's own: a screen, a session bus and a home. Nothing of the user's is read or written, and whatever was started
on the desk is ended with it."""

import ctypes
import os
import shutil
import signal
import subprocess
import tempfile
import time

SCREEN = (1600, 1000)  # pixels
KEPT = ("PATH", "LD_LIBRARY_PATH", "ASAN_OPTIONS", "LSAN_OPTIONS", "TSAN_OPTIONS", "UBSAN_OPTIONS")

PR_SET_PDEATHSIG = 1
PR_SET_CHILD_SUBREAPER = 36
_c = ctypes.CDLL(None)


def _end_with_the_test():
    _c.prctl(PR_SET_PDEATHSIG, signal.SIGTERM, 0, 0, 0)


class OwnDesk:
    """Use it in a `with`. It changes the environment of the test itself, so that all it calls works on this desk too."""

    def __enter__(self):
        # What children leave behind becomes ours, so it can be ended too.
        _c.prctl(PR_SET_CHILD_SUBREAPER, 1, 0, 0, 0)
        self.folder = tempfile.mkdtemp(prefix="winterlarder-desk-")
        try:
            self._own_home()
            self._own_screen()
            self._own_bus()
        except BaseException:
            self._clear()
            raise
        return self

    def __exit__(self, *_):
        self._clear()

    def start(self, command, output):
        """Starts a program; what it prints goes into the file `output`."""
        with open(output, "ab") as file:
            return subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=file, stderr=file, preexec_fn=_end_with_the_test)

    # ---- what the desk is made of

    def _own_home(self):
        kept = {name: os.environ[name] for name in KEPT if name in os.environ}
        os.environ.clear()
        os.environ.update(kept)
        os.environ["HOME"] = self.folder
        os.environ["LANG"] = "C.UTF-8"
        for name, folder in (("CONFIG", "config"), ("DATA", "data"), ("CACHE", "cache"), ("STATE", "state")):
            os.environ[f"XDG_{name}_HOME"] = self._made(folder)
        os.environ["XDG_RUNTIME_DIR"] = self._made("run")
        os.environ["TMPDIR"] = self._made("tmp")
        os.environ["GSETTINGS_BACKEND"] = "memory"
        os.environ["QT_QPA_PLATFORM"] = "xcb"
        os.environ["QT_LINUX_ACCESSIBILITY_ALWAYS_ON"] = "1"

    def _own_screen(self):
        size = f"{SCREEN[0]}x{SCREEN[1]}x24"
        self.framebuffer = self._made("screen")
        # Without -noreset the screen would begin anew, and turn away who comes just then, whenever the last program leaves it.
        number = self._told_by(lambda pipe: ["Xvfb", "-displayfd", str(pipe), "-screen", "0", size, "-fbdir", self.framebuffer,
                                             "-nolisten", "tcp", "-noreset"])
        os.environ["DISPLAY"] = f":{number}"

    def _own_bus(self):
        address = f"unix:path={self.folder}/run/bus"
        told = self._told_by(lambda pipe: ["dbus-daemon", "--session", "--nofork", "--nopidfile", f"--address={address}",
                                           f"--print-address={pipe}"])
        os.environ["DBUS_SESSION_BUS_ADDRESS"] = told

    def _made(self, name):
        folder = os.path.join(self.folder, name)
        os.mkdir(folder, 0o700)
        return folder

    def _told_by(self, command_with_pipe):
        """Starts a program that writes one line into a pipe once it is ready; that line."""
        reading, writing = os.pipe()
        command = command_with_pipe(writing)
        with open(os.path.join(self.folder, "servers.log"), "ab") as log:
            subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=log, stderr=log, pass_fds=[writing],
                             preexec_fn=_end_with_the_test)
        os.close(writing)
        with os.fdopen(reading) as pipe:
            line = pipe.readline().strip()
        if not line:
            with open(os.path.join(self.folder, "servers.log"), encoding="utf-8", errors="replace") as log:
                raise RuntimeError(f"{command[0]} did not start:\n{log.read()}")
        return line

    # ---- its end

    def _clear(self):
        for sign, patience in ((signal.SIGTERM, 3), (signal.SIGKILL, 3)):
            for child in _children():
                os.kill(child, sign)
            _reap(patience)
        shutil.rmtree(self.folder, ignore_errors=True)


def _children():
    with open(f"/proc/{os.getpid()}/task/{os.getpid()}/children", encoding="ascii") as file:
        return [int(number) for number in file.read().split()]


def _reap(patience):
    """Waits until no child is left, at most so many seconds."""
    until = time.monotonic() + patience
    while time.monotonic() < until:
        try:
            if os.waitpid(-1, os.WNOHANG) == (0, 0):
                time.sleep(0.02)
        except ChildProcessError:
            return
