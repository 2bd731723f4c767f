package main

import (
	"fmt"
	"sync"

	"github.com/spf13/cobra"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/export/formats"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
)

// staged is a play or a reel as pictures and in words.
type staged struct {
	pictures export.Source
	told     formats.Told
	note     string // what was left out, for people; empty for nothing
}

// playStaged is play i of a lesson.
func playStaged(l lesson.Lesson, i int, sight compose.Sight) (staged, error) {
	r, err := rally.Solve(l, i)
	if err != nil {
		return staged{}, err
	}
	return staged{pictures: compose.Of(r, l.Venue.Surface(), canvas.Upright).Seen(sight), told: formats.Tell(l, r)}, nil
}

// stage is what one export shows, and tells on standard error what it leaves out.
func (f exportFlags) stage(c *cobra.Command, path string) (staged, error) {
	isReel, err := f.reels.asked(c)
	if err != nil {
		return staged{}, err
	}
	sight, err := f.view.sight(c)
	if err != nil {
		return staged{}, err
	}
	if !isReel || c.Flags().Changed("fit") {
		l, _, err := openPlay(path, f.play.number)
		if err != nil {
			return staged{}, err
		}
		if isReel {
			return noted(c, path)(f.reels.made(l, f.play.number-1))
		}
		return playStaged(l, f.play.number-1, sight)
	}
	l, err := lessonfile.Open(path)
	if err != nil {
		return staged{}, err
	}
	i, err := f.reels.find(path, l)
	if err != nil {
		return staged{}, err
	}
	return noted(c, path)(shown(l, l.Reels[i]))
}

// noted names the lesson in an error, and tells of what was left out.
func noted(c *cobra.Command, path string) func(staged, error) (staged, error) {
	return func(s staged, err error) (staged, error) {
		if err != nil {
			return s, fmt.Errorf("%s: %w", path, err)
		}
		if s.note != "" {
			fmt.Fprintln(c.ErrOrStderr(), s.note)
		}
		return s, nil
	}
}

// item is a play or a reel of a batch.
type item struct {
	what  string // "play" or "reel"
	title string
	stage func() (staged, error) // solved once
}

// items are all that a batch can be of: the lesson's plays, or its reels.
func (f exportFlags) items(c *cobra.Command, l lesson.Lesson, sight compose.Sight) []item {
	var all []item
	if c.Flags().Changed("reel") {
		for _, r := range l.Reels {
			all = append(all, item{"reel", r.Name, sync.OnceValues(f.dressed(func() (staged, error) { return shown(l, r) }))})
		}
		return all
	}
	for i, p := range l.Plays {
		stage := func() (staged, error) { return playStaged(l, i, sight) }
		if c.Flags().Changed("fit") {
			stage = func() (staged, error) { return f.reels.made(l, i) }
		}
		all = append(all, item{"play", p.Title, sync.OnceValues(f.dressed(stage))})
	}
	return all
}

// dressed is a stage in the look that is asked for.
func (f exportFlags) dressed(stage func() (staged, error)) func() (staged, error) {
	return func() (staged, error) {
		s, err := stage()
		s.pictures = f.look.dress(s.pictures)
		return s, err
	}
}

// wanted are the numbers from 0 of the items of a batch.
func (f exportFlags) wanted(c *cobra.Command, path string, l lesson.Lesson) ([]int, error) {
	if c.Flags().Changed("reel") {
		return f.reels.wanted(path, l)
	}
	return f.play.of(path, l)
}
