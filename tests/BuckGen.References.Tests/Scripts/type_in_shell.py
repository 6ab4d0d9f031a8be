"""Types into a real shell on a terminal of its own and prints all that the shell showed.

    type_in_shell.py KEYS DONE SHELL [ARGUMENT ...]

KEYS is typed when the shell has shown "ready> " and waits; the shell is ended when DONE has come on the screen, or after 30 s.
"""
import os
import pty
import select
import sys
import time

LIMIT = 30


def main(keys: str, done: str, shell: list[str]) -> int:
    child, terminal = pty.fork()
    if child == 0:
        os.execvp(shell[0], shell)
    screen, typed, end = b"", False, time.monotonic() + LIMIT
    while time.monotonic() < end and done.encode() not in screen:
        if not select.select([terminal], [], [], 0.3)[0]:
            # A shell may throw away what is typed while it still sets up its line, so it is typed in the first quiet moment.
            if not typed and b"ready> " in screen:
                typed = True
                os.write(terminal, keys.encode())
            continue
        try:
            screen += os.read(terminal, 4096)
        except OSError:  # The shell has ended.
            break
    os.kill(child, 9)
    os.waitpid(child, 0)
    sys.stdout.write(screen.decode(errors="replace"))
    return 0 if done.encode() in screen else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], sys.argv[3:]))
