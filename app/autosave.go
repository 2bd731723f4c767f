package app

import (
	"encoding/hex"
	"errors"
	"time"

	"homeside/app/journal"
	"homeside/app/session"
	"homeside/model/edit"
	"homeside/words"
)

// keepWithin is how long a change waits until it is kept where a crash cannot
// take it: changes that come together are written once.
const keepWithin = time.Second

// autosave keeps the lessons that are in no file yet in a journal.
type autosave struct {
	journal *journal.Journal
	within  time.Duration
	kept    map[int]edit.State // by the lessons' ids; only its goroutine looks at them
	news    chan []keptPaper   // holds the latest only
	after   chan func()        // what is done when all that is told is kept
	ended   chan bool
	failed  func(error) // called on its goroutine, once for each failure in a row
	wrote   func(n int) // so many lessons are kept now; called on its goroutine; nil for nobody
	failing bool
}

// keptPaper is a lesson with what its file was when it was read.
type keptPaper struct {
	session.Paper
	sum string
}

// newAutosave starts keeping lessons in a folder, changes within a time. Without a journal nothing is kept.
func newAutosave(folder string, within time.Duration, failed func(error), wrote func(int)) *autosave {
	a := &autosave{within: within, wrote: wrote, kept: map[int]edit.State{}, news: make(chan []keptPaper, 1), after: make(chan func(), 1), ended: make(chan bool), failed: failed}
	var err error
	if a.journal, err = journal.Open(folder); err != nil {
		go failed(err)
		close(a.ended)
		return a
	}
	go a.run()
	return a
}

// note tells how the lessons are now. It never waits.
func (a *autosave) note(papers []keptPaper) {
	if a.journal == nil {
		return
	}
	select { // what was told before is old now
	case <-a.news:
	default:
	}
	a.news <- papers
}

// keeps says whether there is a journal. A nil autosave has none.
func (a *autosave) keeps() bool { return a != nil && a.journal != nil }

// then does something once what has been told is kept; nothing if that fails.
func (a *autosave) then(do func()) {
	if a.keeps() {
		a.after <- do
	}
}

// run writes what it is told until close.
func (a *autosave) run() {
	defer close(a.ended)
	for papers := range a.news {
		papers, open := a.latest(papers)
		if !open {
			return
		}
		a.keep(papers, time.Now())
		select {
		case do := <-a.after:
			if !a.failing {
				do()
			}
		default:
		}
	}
}

// latest waits a little and is what was told last; false after close.
func (a *autosave) latest(papers []keptPaper) ([]keptPaper, bool) {
	late := time.After(a.within)
	for {
		select {
		case later, open := <-a.news:
			if papers = later; !open {
				return nil, false
			}
		case <-late:
			return papers, true
		}
	}
}

// keep brings the journal up to date.
func (a *autosave) keep(papers []keptPaper, now time.Time) {
	var problems []error
	open := map[int]bool{}
	for _, p := range papers {
		if p.Modified {
			open[p.ID] = true
			problems = append(problems, a.keepOne(p, now))
		}
	}
	for id := range a.kept {
		if !open[id] {
			delete(a.kept, id)
			problems = append(problems, a.journal.Drop(id))
		}
	}
	err := errors.Join(problems...)
	if err != nil && !a.failing {
		a.failed(err)
	}
	if a.failing = err != nil; !a.failing && a.wrote != nil {
		a.wrote(len(a.kept))
	}
}

func (a *autosave) keepOne(p keptPaper, now time.Time) error {
	if a.kept[p.ID] == p.State {
		return nil
	}
	e := journal.Entry{Lesson: p.Lesson, About: journal.About{When: now, Path: p.Path, Step: p.Step, Sum: p.sum}}
	err := a.journal.Keep(p.ID, e)
	if err == nil {
		a.kept[p.ID] = p.State
	}
	return err
}

// close ends it and removes the journal.
func (a *autosave) close() {
	if a.journal == nil {
		return
	}
	close(a.news)
	<-a.ended
	_ = a.journal.Close() // what stays behind is empty or of lessons that were let go
	a.journal = nil       // nothing is kept any more
}

// noteUnsaved tells the journal how the lessons are now.
func (e *Editor) noteUnsaved() {
	if e.autosave == nil {
		return
	}
	var papers []keptPaper
	for _, p := range e.desk.Papers() {
		papers = append(papers, keptPaper{p, e.stamps[p.ID].text()})
	}
	e.autosave.note(papers)
}

// unkept says once that the journal cannot be written.
func (e *Editor) unkept(err error) {
	e.inWindow(func() {
		e.trace.say("not kept: %v", err)
		e.say(words.T("Unsaved changes cannot be kept for a crash: save often. %s", reason(err)))
	})
}

// keptUnsaved tells how many lessons are kept.
func (e *Editor) keptUnsaved(n int) { e.inWindow(func() { e.trace.say("kept %d", n) }) }

// text is a stamp's sum as text, empty for none.
func (s stamp) text() string {
	if (s == stamp{}) {
		return ""
	}
	return hex.EncodeToString(s.sum[:])
}

// stampOfText is a stamp that knows only the sum; of another text the zero one.
func stampOfText(text string) (s stamp) {
	sum, err := hex.DecodeString(text)
	if err != nil || len(sum) != len(s.sum) {
		return stamp{}
	}
	copy(s.sum[:], sum)
	return s
}
