package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"homeside/canvas/look"
	"homeside/export"
	"homeside/export/formats"
	"homeside/model/units"
	"homeside/words"
)

// exportFlags are the flags of the export command as they are typed.
type exportFlags struct {
	out, size    string
	view         viewFlags
	look         lookFlags
	ground       string
	full         bool
	sound        string
	play         playChoice
	fps          int
	at, from, to float64
	speed        float64
	batch        batchFlags
	handout      handoutFlags
	reels        reelFlags
}

func exportCommand() *cobra.Command {
	f := exportFlags{play: playChoice{number: 1}}
	c := &cobra.Command{
		Use:   "export LESSON --out FILE",
		Short: "Write a play as a still, a clip or captions; the file's ending says the format",
		Long:  exportHelp + soundHelp + reelHelp + textHelp + handoutHelp + pageHelp,
		Args:  cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if err := f.look.check(); err != nil {
				return err
			}
			if c.Flags().Changed("sheet") {
				return exportHandout(c, args[0], f)
			}
			if t, ok := formats.TextByPath(f.out); ok && !f.isBatch(c) {
				return exportText(c, args[0], f, t)
			}
			if isPage(f.out) {
				return exportPage(c, args[0], f)
			}
			if f.isBatch(c) {
				return exportBatch(c, args[0], f)
			}
			return exportPlay(c, args[0], f)
		},
	}
	fl := c.Flags()
	fl.StringVar(&f.out, "out", "", "file to write: "+endings()+"; in words: "+textEndings()+"; for phones: "+pageEnding)
	fl.Var(&f.play, "play", "number of the play, counted from 1, or all")
	fl.Float64Var(&f.at, "at", 0, "moment of a still in seconds after the serve")
	fl.Float64Var(&f.from, "from", 0, "start of a clip in seconds after the serve (the play's own start if not given)")
	fl.Float64Var(&f.to, "to", 0, "end of a clip (the play's own end if not given)")
	fl.StringVar(&f.size, "size", "", "width x height in pixels, such as 1080x1920")
	fl.IntVar(&f.fps, "fps", 0, "frames a second of a clip (25 if not given)")
	fl.Float64Var(&f.speed, "speed", 1, "speed of a clip, 0.5 for half speed")
	f.view.add(fl)
	f.look.add(fl)
	fl.StringVar(&f.ground, "background", "paper", "paper, clear (transparent), green, blue, magenta or a colour such as #00B140")
	fl.BoolVar(&f.full, "full-colour", false, "a colour sample for every pixel of an AVI, not for every four")
	fl.StringVar(&f.sound, "sound", soundBeeps, "what is heard of .mp4 and .webm: beeps or none")
	f.batch.add(fl)
	f.handout.add(fl)
	f.reels.add(fl)
	if err := c.MarkFlagRequired("out"); err != nil {
		panic(err) // the flag is defined above
	}
	return c
}

func endings() string {
	all := make([]string, len(formats.All))
	for i, f := range formats.All {
		all[i] = f.Ext
	}
	return strings.Join(all, ", ")
}

func exportPlay(c *cobra.Command, path string, f exportFlags) error {
	go look.Read()
	if err := f.alone(c); err != nil {
		return err
	}
	o, err := f.options(c)
	if err != nil {
		return err
	}
	if err := f.fit(c); err != nil {
		return err
	}
	s, err := f.stage(c, path)
	if err != nil {
		return err
	}
	f.hear(o, s.told)
	o.Lacks = func(letters []rune) { fmt.Fprintf(c.ErrOrStderr(), "%s: %s\n", f.out, words.Lacks(letters)) }
	return formats.Save(c.Context(), f.out, f.look.dress(s.pictures), o)
}

// alone says which flags a single export does not have.
func (f exportFlags) alone(c *cobra.Command) error {
	given := c.Flags().Changed
	for _, name := range handoutOnly {
		if given(name) {
			return fmt.Errorf("--%s is for a handout: give --sheet as well", name)
		}
	}
	for _, name := range batchOnly {
		if given(name) {
			return fmt.Errorf("--%s is for several files at once: give --play all or --format as well", name)
		}
	}
	if given("at") && (given("from") || given("to")) {
		return fmt.Errorf("--at is for a still, --from and --to are for a clip: give one or the other")
	}
	return nil
}

// Flags that mean something for stills only, and for clips only.
var (
	stillFlags = []string{"at"}
	timeFlags  = []string{"from", "to", "speed"}
	clipFlags  = append([]string{"fps"}, timeFlags...)
)

// fit says which flag means nothing for the format that is asked for.
func (f exportFlags) fit(c *cobra.Command) error {
	format, err := formats.ByPath(f.out)
	if err != nil {
		return fmt.Errorf("%w; in words: %s", err, textEndings())
	}
	kind, foreign := "a still", clipFlags
	if format.Clip {
		kind, foreign = "a clip", stillFlags
	}
	for _, name := range foreign {
		if c.Flags().Changed(name) {
			return fmt.Errorf("--%s: %s is %s, which has no such thing", name, f.out, kind)
		}
	}
	if f.full && !format.Full {
		return fmt.Errorf("--full-colour: %s has no such choice", f.out)
	}
	if c.Flags().Changed("sound") && !format.Heard {
		return fmt.Errorf("--sound: %s has no such choice", f.out)
	}
	return nil
}

func (f exportFlags) options(c *cobra.Command) (*export.Options, error) {
	given := c.Flags().Changed
	if given("fps") && f.fps < 1 {
		return nil, fmt.Errorf("--fps %d: want at least 1", f.fps)
	}
	o := &export.Options{FPS: f.fps, Speed: f.speed, FullColour: f.full}
	if given("speed") && f.speed <= 0 {
		return nil, fmt.Errorf("--speed %v: want more than 0", f.speed)
	}
	for name, at := range map[string]**units.Seconds{"at": &o.At, "from": &o.From, "to": &o.To} {
		if given(name) {
			v := units.Seconds(map[string]float64{"at": f.at, "from": f.from, "to": f.to}[name])
			*at = &v
		}
	}
	var err error
	if o.Ground, err = export.ParseGround(f.ground); err != nil {
		return o, err
	}
	if err := f.checkSound(c, o.Ground); err != nil || !given("size") {
		return o, err
	}
	o.Width, o.Height, err = parseSize(f.size)
	return o, err
}

// parseSize reads "1080x1920".
func parseSize(s string) (w, h int, err error) {
	ws, hs, ok := strings.Cut(s, "x")
	if ok {
		w, err = strconv.Atoi(ws)
		if err == nil {
			h, err = strconv.Atoi(hs)
		}
	}
	if !ok || err != nil || w < 1 || h < 1 {
		return 0, 0, fmt.Errorf("--size %q: want width x height in pixels, such as 1080x1920", s)
	}
	return w, h, nil
}
