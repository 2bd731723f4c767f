package rodisk

import (
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// What is on the disk can be read, and nothing can be written.
func TestRun(t *testing.T) {
	Run(t, func(folder string) {
		if err := os.WriteFile(filepath.Join(folder, "a"), []byte("there"), 0o600); err != nil {
			t.Fatal(err)
		}
	}, func(folder string) {
		if got, err := os.ReadFile(filepath.Join(folder, "a")); string(got) != "there" {
			t.Errorf("the file has %q, %v; want what was written before", got, err)
		}
		for _, name := range []string{"a", "b"} {
			if err := os.WriteFile(filepath.Join(folder, name), nil, 0o600); !errors.Is(err, syscall.EROFS) {
				t.Errorf("writing %s gives %v, want a file system that can only be read", name, err)
			}
		}
	})
}
