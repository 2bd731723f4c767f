//go:build unix

package formats

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// savePath names the file that this program is to save when a test starts it as
// a process of its own.
const savePath = "HOMESIDE_TEST_SAVE"

func TestMain(m *testing.M) {
	if path := os.Getenv(savePath); path != "" {
		if err := Save(context.Background(), path, play, &export.Options{Width: 180, Height: 320, FPS: 10}); err != nil {
			fmt.Println(err)
			os.Exit(1)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// saveApart saves in a process of its own, which a shell prepares.
func saveApart(t *testing.T, path, prepare string, as *syscall.Credential) (said string, err error) {
	t.Helper()
	program := copyOfThis(t)
	c := exec.Command("sh", "-c", prepare+` exec "$0"`, program)
	c.Env = append(os.Environ(), savePath+"="+path)
	c.SysProcAttr = &syscall.SysProcAttr{Credential: as}
	out, err := c.CombinedOutput()
	return strings.TrimSpace(string(out)), err
}

// copyOfThis is this program where every user may start it.
func copyOfThis(t *testing.T) string {
	t.Helper()
	folder := t.TempDir()
	openUp(t, folder)
	path := filepath.Join(folder, "save")
	from, err := os.Open(os.Args[0])
	if err != nil {
		t.Fatal(err)
	}
	defer from.Close()
	to, err := os.OpenFile(path, os.O_CREATE|os.O_WRONLY, 0o755)
	if err != nil {
		t.Fatal(err)
	}
	_, err = io.Copy(to, from)
	if closing := to.Close(); err != nil || closing != nil {
		t.Fatal(err, closing)
	}
	return path
}

// openUp lets every user into a test's folder.
func openUp(t *testing.T, folder string) {
	t.Helper()
	for _, f := range []string{folder, filepath.Dir(folder)} {
		if err := os.Chmod(f, 0o755); err != nil {
			t.Fatal(err)
		}
	}
}

// With no room for the file, or for what is made on the way to it, one line says
// so and nothing is left. The room is that of a process's own limit for files of
// 1024 bytes, beyond which writing fails as it does on a full disk, and ends ffmpeg.
func TestNoSpace(t *testing.T) {
	full := regexp.MustCompile(`(?i)file too large|file size limit exceeded`)
	for _, f := range All {
		folder := t.TempDir()
		path := filepath.Join(folder, "x"+f.Ext)
		said, err := saveApart(t, path, `trap "" XFSZ; ulimit -f 2;`, nil)
		if err == nil || strings.Contains(said, "\n") || !strings.Contains(said, path) || !full.MatchString(said) {
			t.Errorf("%s without room: %v, said %q", f.Ext, err, said)
		}
		if left := exporttest.Files(t, folder); len(left) != 0 {
			t.Errorf("%s without room: %v is left", f.Ext, left)
		}
	}
}

// Without permission to write, one line says so and nothing is left.
func TestNoPermission(t *testing.T) {
	folder := t.TempDir()
	openUp(t, folder)
	if err := os.Chmod(folder, 0o555); err != nil {
		t.Fatal(err)
	}
	var as *syscall.Credential
	if os.Getuid() == 0 { // who may write everywhere
		as = &syscall.Credential{Uid: 65534, Gid: 65534}
	}
	for _, f := range All {
		path := filepath.Join(folder, "x"+f.Ext)
		said, err := saveApart(t, path, "", as)
		if err == nil || strings.Contains(said, "\n") || !strings.Contains(said, path) || !strings.Contains(said, "permission denied") {
			t.Errorf("%s without permission: %v, said %q", f.Ext, err, said)
		}
		if left := exporttest.Files(t, folder); len(left) != 0 {
			t.Errorf("%s without permission: %v is left", f.Ext, left)
		}
	}
}
