//go:build window

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// A window that is closed during an export asks first; closed or ended by a signal,
// it leaves nothing of the export.
func TestEndDuringAnExport(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	folder := t.TempDir()
	begin := func() {
		w.keys("ctrl+e")
		w.waitFor("painted exports")
		w.click("export-preset-2") // a wide video, the slowest of the presets
		w.waitFor("preset Video, wide")
		w.waitFor("painted exports")
		w.exportTo(filepath.Join(folder, "clip.mp4"))
		w.waitFor("export runs")
	}
	begin()
	w.keys("alt+F4")
	w.waitFor("asking")
	w.screenshot("close-during-export.png")
	w.keys("Left")
	w.keys("Return") // cancel and close
	w.waitFor("closed")
	checkEnded(t, w.editor, folder)

	w.open(path)
	w.waitFor("painted")
	w.activate()
	begin()
	if err := w.editor.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	checkEnded(t, w.editor, folder)
}

// checkEnded waits for the end of the editor; nothing may be left in the folder
// that it exported to, nor an ffmpeg that writes into it.
func checkEnded(t *testing.T, editor *exec.Cmd, folder string) {
	t.Helper()
	if err := editor.Wait(); err != nil {
		t.Errorf("the editor ended with %v", err)
	}
	if left, err := os.ReadDir(folder); err != nil || len(left) > 0 {
		t.Errorf("an export that was under way leaves %v, %v; want nothing", left, err)
	}
	if lines, err := filepath.Glob("/proc/[0-9]*/cmdline"); err == nil {
		for _, line := range lines {
			if text, err := os.ReadFile(line); err == nil && strings.Contains(string(text), folder) {
				t.Errorf("a process is left: %q", text)
			}
		}
	}
}
