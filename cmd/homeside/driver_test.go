//go:build window

package main

import (
	"bufio"
	"fmt"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// editorBinary is built by make editor.
const editorBinary = "../../bin/homeside"

// screenshots is where the window's pictures are left to look at.
const screenshots = "../../out"

// patience is how long the window may take for one step before the test gives
// up: a software renderer on a busy machine starts slowly.
const patience = 60 * time.Second

// window is the editor under test on a display of its own.
type window struct {
	t       testing.TB
	display string
	home    string // of the person
	editor  *exec.Cmd
	id      string
	lines   chan string
	at      map[string]image.Point // where the players were last painted
	control map[string]image.Point // where the panels' controls are
}

// openWindow starts a display, a window manager and the editor on a lesson, and
// waits until the court is painted.
func openWindow(t testing.TB, lesson string) *window {
	t.Helper()
	if _, err := os.Stat(editorBinary); err != nil {
		t.Fatalf("no editor to test: run make editor first (%v)", err)
	}
	w := openDisplay(t)
	w.open(lesson)
	w.waitFor("painted")
	w.activate()
	return w
}

// openDisplay starts a display and a window manager, with a home of its own.
func openDisplay(t testing.TB) *window {
	t.Helper()
	w := &window{t: t, home: t.TempDir()}
	w.display = startDisplay(t)
	w.start(exec.Command("openbox"))
	w.waitForManager()
	return w
}

// waitForManager asks until the manager of windows says on the root window that it
// is there: a program that starts before takes the screen without one.
func (w *window) waitForManager() {
	w.t.Helper()
	for late := time.Now().Add(patience); time.Now().Before(late); {
		c := exec.Command("xprop", "-root", "_NET_SUPPORTING_WM_CHECK")
		c.Env = w.env()
		if out, err := c.Output(); err == nil && strings.Contains(string(out), "window id") {
			return
		}
	}
	w.t.Fatal("xprop (Debian package x11-utils) sees no manager of windows")
}

// open starts the editor on some files.
func (w *window) open(files ...string) {
	w.t.Helper()
	w.lines, w.at, w.control = make(chan string, 1000), map[string]image.Point{}, map[string]image.Point{}
	trace, toEditor, err := os.Pipe()
	if err != nil {
		w.t.Fatal(err)
	}
	w.editor = exec.Command(editorBinary, files...)
	w.editor.ExtraFiles = []*os.File{toEditor} // its file number 3
	w.editor.Env = []string{traceVariable + "=/dev/fd/3"}
	w.start(w.editor)
	toEditor.Close()
	go read(trace, w.lines)
}

// activate finds the editor's window and gives it the keys.
func (w *window) activate() {
	w.t.Helper()
	w.id = strings.Fields(w.do("search", "--sync", "--onlyvisible", "--name", "Homeside"))[0]
	w.do("windowactivate", "--sync", w.id)
}

// kill ends the editor as a crash does (SIGKILL), and waits until it has gone.
func (w *window) kill() {
	w.t.Helper()
	if err := w.editor.Process.Kill(); err != nil {
		w.t.Fatal(err)
	}
	_ = w.editor.Wait() // it was killed
}

// startDisplay starts a virtual screen; it says its number itself when it is up.
// It does not begin anew when its last client leaves, as xprop may be that.
func startDisplay(t testing.TB) string {
	t.Helper()
	number, toServer, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	server := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "1400x900x24", "-nolisten", "tcp", "-noreset")
	server.ExtraFiles = []*os.File{toServer}
	startProcess(t, server)
	toServer.Close()
	line, err := bufio.NewReader(number).ReadString('\n')
	if err != nil {
		t.Fatalf("Xvfb (Debian package xvfb) did not say its display: %v", err)
	}
	return ":" + strings.TrimSpace(line)
}

func (w *window) start(c *exec.Cmd) {
	w.t.Helper()
	c.Env = append(w.env(), c.Env...)
	startProcess(w.t, c)
}

// startProcess runs a program until the test ends.
func startProcess(t testing.TB, c *exec.Cmd) {
	t.Helper()
	c.Stderr = os.Stderr
	if err := c.Start(); err != nil {
		t.Fatalf("start %s: %v", c.Path, err)
	}
	t.Cleanup(func() {
		_ = c.Process.Kill() // it may have ended by itself
		_ = c.Wait()
	})
}

func (w *window) env() []string {
	return append(os.Environ(), "DISPLAY="+w.display, "LANG=en_US.UTF-8", "LC_ALL=C.UTF-8", "FYNE_SCALE=1", "LIBGL_ALWAYS_SOFTWARE=1",
		"HOME="+w.home, "XDG_CONFIG_HOME="+filepath.Join(w.home, "config"), "XDG_STATE_HOME="+filepath.Join(w.home, "state"))
}

func read(trace *os.File, lines chan<- string) {
	in := bufio.NewScanner(trace)
	for in.Scan() {
		lines <- in.Text()
	}
	close(lines)
}

// waitFor waits for a line of the trace that holds text.
func (w *window) waitFor(text string) {
	w.t.Helper()
	late := time.After(patience)
	for {
		select {
		case line, open := <-w.lines:
			if !open {
				w.t.Fatalf("the editor ended while the test waited for %q", text)
			}
			w.note(line)
			if strings.Contains(line, text) {
				return
			}
			if strings.HasPrefix(line, "failed") {
				w.t.Fatalf("while waiting for %q: %s", text, line)
			}
		case <-late:
			w.screenshot("stuck.png")
			w.t.Fatalf("no %q within %v", text, patience)
		}
	}
}

// note keeps where players are painted and where controls are.
func (w *window) note(line string) {
	f := strings.Fields(line)
	if len(f) != 4 {
		return
	}
	x, errX := strconv.Atoi(f[2])
	y, errY := strconv.Atoi(f[3])
	if errX != nil || errY != nil {
		return
	}
	switch f[0] {
	case "at":
		w.at[f[1]] = image.Pt(x, y)
	case "control":
		w.control[f[1]] = image.Pt(x, y)
	}
}

// do runs one xdotool command.
func (w *window) do(args ...string) string {
	w.t.Helper()
	c := exec.Command("xdotool", args...)
	c.Env = w.env()
	out, err := c.CombinedOutput()
	if err != nil {
		w.t.Fatalf("xdotool %v: %v: %s", args, err, out)
	}
	return string(out)
}

func (w *window) keys(k ...string) { w.do(append([]string{"key"}, k...)...) }

func (w *window) typeText(s string) { w.do("type", "--delay", "2", s) }

// click presses a control of a panel.
func (w *window) click(control string) {
	w.t.Helper()
	at, ok := w.control[control]
	if !ok {
		w.t.Fatalf("the control %s was never shown", control)
	}
	w.move(at)
	w.do("click", "1")
}

// press takes hold of a player and moves the pointer by dx, dy pixels.
func (w *window) press(player string, dx, dy int) {
	w.t.Helper()
	at, ok := w.at[player]
	if !ok {
		w.t.Fatalf("%s was never painted", player)
	}
	w.move(at)
	w.do("mousedown", "1")
	for i := 1; i <= 10; i++ {
		w.move(at.Add(image.Pt(dx*i/10, dy*i/10)))
	}
}

func (w *window) drag(player string, dx, dy int) {
	w.t.Helper()
	w.press(player, dx, dy)
	w.do("mouseup", "1")
}

func (w *window) move(p image.Point) {
	w.do("mousemove", "--sync", "--window", w.id, fmt.Sprint(p.X), fmt.Sprint(p.Y))
}

// screenshot keeps a picture of the screen to look at.
func (w *window) screenshot(name string) {
	w.t.Helper()
	if err := os.MkdirAll(screenshots, 0o755); err != nil {
		w.t.Fatal(err)
	}
	c := exec.Command("ffmpeg", "-y", "-loglevel", "error", "-f", "x11grab", "-video_size", "1400x900", "-i", w.display, "-frames:v", "1", filepath.Join(screenshots, name))
	c.Env = w.env()
	if out, err := c.CombinedOutput(); err != nil {
		w.t.Errorf("screenshot: %v: %s", err, out)
	}
}
