package app

import (
	"os"
	"path/filepath"
)

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
