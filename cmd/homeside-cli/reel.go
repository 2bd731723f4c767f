package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homeside/canvas/film"
	"homeside/export/formats"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
	"homeside/words"
)

const reelHelp = `

--reel writes a reel that is kept with the lesson, by its name or number; in a
batch --reel all writes every one, and {reel} in --out is its number. --fit
makes a reel of a play that lasts so many seconds, within a frame; what there is
no time for is left out and told of. Takes have their own cameras: a clip of
16:9, 9:16, 1:1 or 4:5 only needs its --size. --from, --to and --at count from
the start of the clip then.`

// reelFlags ask for a reel instead of a play.
type reelFlags struct {
	reel, recipe, camera, player string
	fit                          float64
	beside                       int
}

// fitOnly mean something for a reel that is made only.
var fitOnly = []string{"recipe", "camera", "on", "beside"}

// reelForeign mean nothing for a reel, whose takes have cameras.
var reelForeign = []string{"view", "end", "behind"}

func (f *reelFlags) add(fl *pflag.FlagSet) {
	fl.StringVar(&f.reel, "reel", "", "name or number of a reel of the lesson, or all")
	fl.Float64Var(&f.fit, "fit", 0, "make a reel of the play that lasts so many seconds")
	fl.StringVar(&f.recipe, "recipe", reel.Teach.String(), "with --fit: "+listed(reel.Recipes[:]))
	fl.StringVar(&f.camera, "camera", lesson.WholeCourt.String(), "with --fit: "+listed(lesson.Cameras[:])+" (half is the half of the --on player)")
	fl.StringVar(&f.player, "on", game.Near1.String(), "with --fit: the player that --camera follow, push-in or half is about")
	fl.IntVar(&f.beside, "beside", 0, "with --fit: number of a play to show beside it")
}

// listed are the names of a closed set.
func listed[T fmt.Stringer](members []T) string {
	names := make([]string, len(members))
	for i, m := range members {
		names[i] = m.String()
	}
	return strings.Join(names, ", ")
}

// asked says whether a reel is wanted, and which flags mean nothing then.
func (f reelFlags) asked(c *cobra.Command) (bool, error) {
	given := c.Flags().Changed
	if given("reel") && given("fit") {
		return true, errors.New("--reel writes a reel that is there, --fit makes one: give one or the other")
	}
	if given("reel") && given("play") {
		return true, errors.New("--play: a reel says itself which plays it shows; with --fit one is made of a play")
	}
	for _, name := range fitOnly {
		if given(name) && !given("fit") {
			return false, fmt.Errorf("--%s is for a reel that is made: give --fit as well", name)
		}
	}
	if !given("reel") && !given("fit") {
		return false, nil
	}
	for _, name := range reelForeign {
		if given(name) {
			return true, fmt.Errorf("--%s: the takes of a reel have their own cameras", name)
		}
	}
	return true, nil
}

// options are those of a reel that is made.
func (f reelFlags) options(l lesson.Lesson) (reel.FitOptions, error) {
	o := reel.FitOptions{Beside: f.beside, Say: func(r *rally.Rally, shot int) string { return words.FreezeAt(l, r, shot) }}
	var err error
	if o.Recipe, err = reel.ParseRecipe(f.recipe); err != nil {
		return o, fmt.Errorf("--%w", err)
	}
	if o.Camera.Kind, err = lesson.ParseCamera(f.camera); err != nil {
		return o, fmt.Errorf("--%w", err)
	}
	if o.Camera.Player, err = game.ParsePlayer(f.player); err != nil {
		return o, fmt.Errorf("--on: %w", err)
	}
	if f.beside != 0 && (f.beside < 1 || f.beside > len(l.Plays)) {
		return o, fmt.Errorf("--beside %d: the lesson has %s", f.beside, words.Plays(len(l.Plays)))
	}
	o.Camera.End = o.Camera.Player.Team()
	return o, nil
}

// made is a reel of play i that lasts as long as --fit says.
func (f reelFlags) made(l lesson.Lesson, i int) (staged, error) {
	o, err := f.options(l)
	if err != nil {
		return staged{}, err
	}
	fitted, err := reel.Fit(l, i, units.Seconds(f.fit), o)
	if err != nil {
		return staged{}, fmt.Errorf("--fit: play %d: %w", i+1, err)
	}
	s, err := shown(l, fitted.Reel)
	if len(fitted.Left) > 0 {
		s.note = words.FitLeft(fitted.Left)
	}
	return s, err
}

// shown is a reel of the lesson as pictures and in words.
func shown(l lesson.Lesson, of lesson.Reel) (staged, error) {
	r := reel.Solve(l, of)
	if r.Empty() {
		return staged{}, fmt.Errorf("reel %q: there is nothing to show", of.Name)
	}
	s := staged{pictures: film.Of(l, r), told: formats.TellReel(l, r)}
	if len(r.Left) > 0 {
		s.note = words.TakesLeft(r.Left)
	}
	return s, nil
}

// find is the number of the reel that --reel asks for, from 0: by its number or else
// its name.
func (f reelFlags) find(path string, l lesson.Lesson) (int, error) {
	if n, err := strconv.Atoi(f.reel); err == nil && n >= 1 && n <= len(l.Reels) {
		return n - 1, nil
	}
	for i, r := range l.Reels {
		if strings.EqualFold(r.Name, f.reel) {
			return i, nil
		}
	}
	names := make([]string, len(l.Reels))
	for i, r := range l.Reels {
		names[i] = fmt.Sprintf("%d %q", i+1, r.Name)
	}
	if len(names) == 0 {
		return 0, fmt.Errorf("%s: --reel %q: the lesson has no reels", path, f.reel)
	}
	return 0, fmt.Errorf("%s: --reel %q: the lesson has %s", path, f.reel, strings.Join(names, ", "))
}

// wanted are the reels that --reel asks for, from 0.
func (f reelFlags) wanted(path string, l lesson.Lesson) ([]int, error) {
	if f.reel != "all" {
		i, err := f.find(path, l)
		return []int{i}, err
	}
	if len(l.Reels) == 0 {
		return nil, fmt.Errorf("%s: --reel all: the lesson has no reels", path)
	}
	all := make([]int, len(l.Reels))
	for i := range all {
		all[i] = i
	}
	return all, nil
}
