package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"homeside/export"
	"homeside/export/formats"
)

const soundHelp = `

What is heard of .mp4 and .webm are the beeps of the cue track, at the times of
the clip; --sound none makes them silent. What is laid over footage is silent:
.mov always, .webm with --background clear.`

// What a clip is heard by.
const (
	soundBeeps = "beeps"
	soundNone  = "none"
)

// checkSound says what is wrong with --sound.
func (f exportFlags) checkSound(c *cobra.Command, g export.Ground) error {
	if f.sound != soundBeeps && f.sound != soundNone {
		return fmt.Errorf("--sound %q: want %s or %s", f.sound, soundBeeps, soundNone)
	}
	if c.Flags().Changed("sound") && f.sound == soundBeeps && g.Clear {
		return errors.New("--sound beeps: a clip on a clear ground is silent, for the footage under it has its own sound; .wav has the beeps")
	}
	return nil
}

// hear gives the options of a clip its beeps, unless it is to be silent.
func (f exportFlags) hear(o *export.Options, told formats.Told) {
	if f.sound == soundBeeps {
		o.Track = told.Beeps.WriteTrack
	}
}
