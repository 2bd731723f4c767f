package app

import (
	"io"
	"path/filepath"
	"slices"

	"homeside/app/panel"
	"homeside/model/court"
	"homeside/model/lessonfile"
	"homeside/model/roster"
	"homeside/words"
)

// keptPairs is the roster shown and its file. Every change of it is written at
// once, so that none can be lost.
type keptPairs struct {
	roster roster.Roster
	path   string // empty while no roster is open
}

func (e *Editor) pairEvents() panel.PairEvents {
	return panel.PairEvents{Open: e.askOpenRoster, Keep: e.keepPair, Remove: e.askRemovePair}
}

// showPairs shows the roster on the match plan's page.
func (e *Editor) showPairs() {
	e.openMatchPlan()
	e.plan.ShowPairs()
}

func (e *Editor) suggestedRoster() string {
	if e.pairs.path != "" {
		return e.pairs.path
	}
	return filepath.Join(filepath.Dir(e.suggestedPath()), "roster"+lessonExt)
}

func (e *Editor) askOpenRoster() {
	e.askPath(words.T("Open a roster"), words.T("Open"), e.suggestedRoster(), nil, e.openRoster)
}

// openRoster shows the roster of a file. The one shown stays if it cannot be read.
func (e *Editor) openRoster(path string) {
	var r roster.Roster
	e.background(words.T("Opening…"), func() (err error) {
		r, err = lessonfile.OpenRoster(path)
		return err
	}, func(err error) {
		if err != nil {
			e.fail(err, words.T("Your lesson is unchanged, and so is the roster you had open."))
			return
		}
		e.setRoster(r, path)
		e.trace.say("opened %s", path)
	})
}

func (e *Editor) setRoster(r roster.Roster, path string) {
	e.pairs = keptPairs{r, path}
	e.plan.SetRoster(r, path)
}

// askSaveRosterAs writes the roster to another file.
func (e *Editor) askSaveRosterAs() { e.askRosterFile(e.pairs.roster) }

func (e *Editor) askRosterFile(r roster.Roster) {
	e.askPath(words.T("Save the roster"), words.T("Save"), e.suggestedRoster(), nil, func(path string) {
		if filepath.Ext(path) == "" {
			path += lessonExt
		}
		e.unlessExists(path, e.pairs.path, func() { e.writeRoster(path, r) })
	})
}

// writeRoster writes a roster, whole or not at all, and shows it.
func (e *Editor) writeRoster(path string, r roster.Roster) {
	e.saveFile(path, words.T("The roster is as it was, in its file and here."), func(w io.Writer) error { return lessonfile.WriteRoster(w, r) },
		func() { e.setRoster(r, path) })
}

// keepPair keeps a team of the lesson in the roster; replacing another of that
// name is asked about first.
func (e *Editor) keepPair(team court.End) {
	p := roster.PairOf(e.session.Lesson(), team)
	if p.Name == "" {
		p.Name = words.PairName(p)
	}
	r := e.pairs.roster.With(p)
	write := func() {
		if e.pairs.path == "" {
			e.askRosterFile(r)
			return
		}
		e.writeRoster(e.pairs.path, r)
	}
	if !slices.ContainsFunc(e.pairs.roster.Pairs, func(have roster.Pair) bool { return have.Name == p.Name }) {
		write()
		return
	}
	e.confirm(words.T("Replace the pair?"), words.T("The roster has %s already.", p.Name), write)
}

func (e *Editor) askRemovePair(i int) {
	if i < 0 || i >= len(e.pairs.roster.Pairs) {
		return
	}
	e.confirm(words.T("Remove the pair?"), words.T("%s is taken out of the roster's file.", words.Pair(e.pairs.roster.Pairs[i])), func() {
		e.writeRoster(e.pairs.path, e.pairs.roster.Without(i))
	})
}
