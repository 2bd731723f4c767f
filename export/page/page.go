package page

import (
	"errors"
	"fmt"
	"io"

	"homeside/model/lesson"
	"homeside/model/rally"
)

// ErrNoPlays says that there is nothing to show.
var ErrNoPlays = errors.New("the page needs at least one play")

// MostPlays bounds a page: more than a session on court has room for.
const MostPlays = 60

// Page is a lesson's plays, solved. It is an immutable snapshot.
type Page struct {
	lesson  lesson.Lesson
	rallies []*rally.Rally
}

// Of is a page of some plays of a sound lesson, counted from 0, in this order;
// none named means all. The error names the play that cannot be shown.
func Of(l lesson.Lesson, plays ...int) (Page, error) {
	if len(plays) == 0 {
		for i := range l.Plays {
			plays = append(plays, i)
		}
	}
	if len(plays) == 0 {
		return Page{}, ErrNoPlays
	}
	if len(plays) > MostPlays {
		return Page{}, fmt.Errorf("a page of %d plays: at most %d fit a phone", len(plays), MostPlays)
	}
	p := Page{lesson: l}
	for _, i := range plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			return Page{}, err
		}
		p.rallies = append(p.rallies, r)
	}
	return p, nil
}

// Write writes the page as HTML in the language spoken, and gives the letters on
// its courts that no font has: they are empty boxes.
func (p Page) Write(w io.Writer) (lacks []rune, err error) {
	d, err := p.document()
	if err != nil {
		return nil, fmt.Errorf("make the page: %w", err)
	}
	html, err := d.html()
	if err != nil {
		return nil, fmt.Errorf("make the page: %w", err)
	}
	_, err = w.Write(html)
	return d.lacks, err
}
