package panel

import (
	"fmt"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/roster"
	"homeside/words"
)

// PairEvents are what the roster asks of the window, which keeps its file.
type PairEvents struct {
	Open   func()
	Keep   func(court.End) // a team of the lesson in the roster
	Remove func(pair int)
}

// pairs shows a roster: the pairs, what is known of the chosen one, and the ways
// into and out of the lesson.
type pairs struct {
	box     fyne.CanvasObject
	session *session.Session
	roster  roster.Roster
	chosen  int // -1 for none
	list    *heard.List
	rows    map[int]fyne.CanvasObject // of the list, as shown
	file    *widget.Label
	about   *widget.Label
	put     [2]*heard.Button
	keep    [2]*heard.Button
	remove  *heard.Button
	open    *heard.Button
	say     func(string)
	changed func() // what is shown
}

// newPairs shows a roster. say shows a line, hint a tip in its place.
func newPairs(s *session.Session, events PairEvents, say, hint func(string), changed func()) *pairs {
	p := &pairs{session: s, chosen: -1, file: widget.NewLabel(""), about: wrapped(), say: say, changed: changed, rows: map[int]fyne.CanvasObject{}}
	p.file.Truncation = fyne.TextTruncateEllipsis
	p.list = heard.NewList(func() int { return len(p.roster.Pairs) }, newState, func(i widget.ListItemID, o fyne.CanvasObject) {
		o.(*widget.Label).SetText(words.Pair(p.roster.Pairs[i]))
		p.rows[i] = o
	})
	p.list.OnSelected = p.choose
	ways := p.ways(events, hint)
	left := container.NewBorder(container.NewBorder(nil, nil, p.open, nil, p.file), nil, nil, nil, p.list)
	p.box = container.NewGridWithColumns(2, left, container.NewVScroll(container.NewVBox(p.about, container.NewHBox(ways))))
	return p
}

// ways are the buttons into and out of the lesson.
func (p *pairs) ways(events PairEvents, hint func(string)) fyne.CanvasObject {
	p.open = heard.NewButton(words.T("Open a roster…"), func() { call(events.Open) })
	p.remove = heard.NewButton(words.T("Remove from the roster…"), func() {
		if events.Remove != nil {
			events.Remove(p.chosen)
		}
	}).Tell(hint)
	ways := container.NewVBox()
	for _, e := range court.Ends {
		p.put[e] = heard.NewButton(words.T("Put in as %s", words.End(e)), func() { p.putIn(e) }).Tell(hint)
		ways.Add(p.put[e])
	}
	for _, e := range court.Ends {
		p.keep[e] = heard.NewButton(words.T("Keep %s in the roster", words.End(e)), func() {
			if events.Keep != nil {
				events.Keep(e)
			}
		})
		ways.Add(p.keep[e])
	}
	ways.Add(p.remove)
	return ways
}

func call(f func()) {
	if f != nil {
		f()
	}
}

// show shows a roster and the file that it is kept in, empty for none.
func (p *pairs) show(r roster.Roster, path string) {
	p.roster = r
	if path == "" {
		p.file.SetText(words.T("No roster is open."))
	} else {
		p.file.SetText(filepath.Base(path))
	}
	if p.chosen >= len(r.Pairs) {
		p.chosen = -1
		p.list.UnselectAll()
	}
	p.list.Refresh()
	p.refresh()
	p.changed()
}

func (p *pairs) choose(i widget.ListItemID) {
	p.chosen = i
	p.refresh()
	p.changed()
}

// refresh says what is known of the chosen pair.
func (p *pairs) refresh() {
	chosen := p.chosen >= 0
	text := words.T("A roster keeps pairs in a file of its own, with their names, hands, paces and wished sides. Choose a pair to put it into the lesson.")
	if chosen {
		pair := p.roster.Pairs[p.chosen]
		text = words.Pair(pair) + "\n" + words.PairPlayer(pair.Players[0]) + "\n" + words.PairPlayer(pair.Players[1])
		if pair.Notes != "" {
			text += "\n" + pair.Notes
		}
	}
	p.about.SetText(text)
	none := ""
	if !chosen {
		none = words.T("Choose a pair of the roster first.")
	}
	p.remove.Unless(none)
	for _, e := range court.Ends {
		p.put[e].Unless(none)
	}
}

func (p *pairs) putIn(e court.End) {
	pair := p.roster.Pairs[p.chosen]
	p.session.PutPair(pair, e)
	p.say(words.PairPut(pair, e))
}

func (p *pairs) name(named map[string]fyne.CanvasObject) {
	named["pairs-open"], named["pairs-remove"] = p.open, p.remove
	for i := range p.roster.Pairs {
		if o, ok := p.rows[i]; ok {
			named[fmt.Sprintf("pairs-row-%d", i)] = o
		}
	}
	for _, e := range court.Ends {
		named["pairs-put-"+e.String()], named["pairs-keep-"+e.String()] = p.put[e], p.keep[e]
	}
}
