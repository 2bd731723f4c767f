#!/usr/bin/python3
"""drop.py WINDOW FILE...: drops files onto a window as a file manager does, by
the XDND protocol, version 5 (freedesktop.org, "Drag-and-Drop Protocol for the X
Window System"). Ends with 0 when the window says that it has taken them.
Needs the Debian package python3-xlib."""

import pathlib
import select
import sys

from Xlib import X, Xatom, display
from Xlib.protocol import event

PATIENCE = 30  # seconds for an answer of the window

d = display.Display()
target = d.create_resource_object("window", int(sys.argv[1]))
uris = "".join(pathlib.Path(p).absolute().as_uri() + "\r\n" for p in sys.argv[2:]).encode()
source = d.screen().root.create_window(0, 0, 1, 1, 0, X.CopyFromParent)


def atom(name):
    return d.intern_atom(name)


def send(kind, data):
    target.send_event(event.ClientMessage(window=target, client_type=atom(kind), data=(32, data)))


def serve(e):
    """Hands the list of files over to who asks for it."""
    ok = e.target == atom("text/uri-list")
    if ok:
        e.requestor.change_property(e.property, e.target, 8, uris)
    e.requestor.send_event(event.SelectionNotify(time=e.time, requestor=e.requestor, selection=e.selection, target=e.target,
                                                 property=e.property if ok else X.NONE))


def wait_for(kind):
    """Waits for a message of the window and answers its requests meanwhile."""
    while True:
        while d.pending_events():
            e = d.next_event()
            if e.type == X.SelectionRequest:
                serve(e)
                d.flush()
            elif e.type == X.ClientMessage and e.client_type == atom(kind):
                return e.data[1]
        if not select.select([d], [], [], PATIENCE)[0]:
            sys.exit("no %s within %d s" % (kind, PATIENCE))


source.set_selection_owner(atom("XdndSelection"), X.CurrentTime)
geometry = target.get_geometry()
middle = target.translate_coords(d.screen().root, 0, 0)
x, y = -middle.x + geometry.width // 2, -middle.y + geometry.height // 2
send("XdndEnter", [source.id, 5 << 24, atom("text/uri-list"), 0, 0])
send("XdndPosition", [source.id, 0, x << 16 | y, X.CurrentTime, atom("XdndActionCopy")])
d.flush()
if not wait_for("XdndStatus")[1] & 1:
    sys.exit("the window does not take what is over it")
send("XdndDrop", [source.id, 0, X.CurrentTime, 0, 0])
d.flush()
if not wait_for("XdndFinished")[1]:  # some toolkits set other bits than the first
    sys.exit("the window did not take what was dropped")
