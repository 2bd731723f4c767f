package app

import (
	"os"
	"path/filepath"
	"runtime"
)

// StateFolder is where the program keeps what has to outlive a crash, by the
// desktop's rules (XDG Base Directory Specification 0.8: XDG_STATE_HOME); empty
// where the person has no folder.
func StateFolder() string {
	if d := os.Getenv("XDG_STATE_HOME"); filepath.IsAbs(d) {
		return filepath.Join(d, "homeside")
	}
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		if d, err := os.UserConfigDir(); err == nil {
			return filepath.Join(d, "Homeside", "State")
		}
	}
	if home, err := os.UserHomeDir(); err == nil {
		return filepath.Join(home, ".local", "state", "homeside")
	}
	return ""
}

// documents is where new files are suggested: the user's documents or home
// folder, or the folder the program runs in.
func documents() string {
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	if d := filepath.Join(home, "Documents"); exists(d) {
		return d
	}
	return home
}

func exists(path string) bool {
	_, err := os.Stat(path)
	return err == nil
}
