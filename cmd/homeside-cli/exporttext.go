package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homeside/export/formats"
	"homeside/words"
)

const textHelp = `

In words a play is captions (.vtt for WebVTT, .srt), chapters of a clip
(.chapters.vtt) or a script for a voice-over (.txt); as sound it is a cue track
with a beep for every contact, bounce and arrival (.wav).
Their times are those of a clip of the same --from, --to and --speed.`

// pictureFlags mean nothing for a play in words or beeps.
var pictureFlags = append([]string{"at", "fps", "full-colour", "sound"}, placeFlags...)

// placeFlags mean something for pictures only.
var placeFlags = []string{"size", "view", "end", "behind", "background"}

func textEndings() string {
	all := make([]string, len(formats.Texts))
	for i, t := range formats.Texts {
		all[i] = t.Ext
	}
	return strings.Join(all, ", ")
}

// exportText writes a play in words, with the times of the clip that the same
// flags make.
func exportText(c *cobra.Command, path string, f exportFlags, t formats.Text) error {
	if err := f.alone(c); err != nil {
		return err
	}
	for _, name := range pictureFlags {
		if c.Flags().Changed(name) {
			return fmt.Errorf("--%s: %s holds words or beeps, which have no such thing", name, f.out)
		}
	}
	o, err := f.options(c)
	if err != nil {
		return err
	}
	s, err := f.stage(c, path)
	if err != nil {
		return err
	}
	if err := formats.SaveText(c.Context(), f.out, t, s.told, o); err != nil {
		return err
	}
	if t.Cues && len(s.told.Words.Cues) == 0 {
		fmt.Fprintln(c.ErrOrStderr(), words.T("%s: there are no captions in it, for the play has none", f.out))
	}
	return nil
}
