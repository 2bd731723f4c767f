package main

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"runtime/debug"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// pickOnly are the flags of a batch that say which files it writes, not what is in them.
var pickOnly = append([]string{"out", "play", "reel", "format"}, batchOnly...)

// settings are what all files of a batch depend on, one line each: the program, the
// lesson as it lies in its file, and the flags that were given.
func settings(c *cobra.Command, lesson string) string {
	data, err := os.ReadFile(lesson)
	if err != nil {
		data = nil // opening it says so
	}
	all := []string{program(), hash(string(data))}
	c.Flags().Visit(func(f *pflag.Flag) {
		if !slices.Contains(pickOnly, f.Name) {
			all = append(all, f.Name+"="+f.Value.String())
		}
	})
	return strings.Join(all, "\n")
}

// made says how a file of the batch is made, in 32 digits.
func (b batch) made(o output) string {
	return hash(fmt.Sprintln(b.set, b.items[o.item].what, o.item, o.format.Ext))[:32]
}

func hash(s string) string {
	sum := sha256.Sum256([]byte(s))
	return hex.EncodeToString(sum[:])
}

// program tells this program from others: by the revision of its sources or, where
// that is unknown or they were changed since, by its own file.
func program() string {
	revision, clean := "", false
	if info, ok := debug.ReadBuildInfo(); ok {
		for _, s := range info.Settings {
			switch s.Key {
			case "vcs.revision":
				revision = s.Value
			case "vcs.modified":
				clean = s.Value == "false"
			}
		}
	}
	if revision != "" && clean {
		return revision
	}
	path, err := os.Executable()
	if err != nil {
		return revision
	}
	return fmt.Sprint(revision, " ", changeOf(path).UnixNano())
}
