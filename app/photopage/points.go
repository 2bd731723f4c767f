package photopage

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/homography"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// points is the list of a photo's points: which point of the court each is and how
// far it is off.
type points struct {
	box     *fyne.Container
	session *session.Session
	chosen  func() int
	hint    func(string)
	rows    []*row
	list    *fyne.Container
	add     *heard.Button
	names   []words.Landmark
	quiet   bool
}

// row is one point.
type row struct {
	box    *fyne.Container
	number *widget.Label
	name   *panel.Dropdown
	off    *widget.Label
	drop   *heard.Button
}

// newPoints is the list of a session's photo. hint shows a button's tip.
func newPoints(s *session.Session, chosen func() int, hint func(string)) *points {
	p := &points{session: s, chosen: chosen, hint: hint, list: container.NewVBox(), names: words.Landmarks()}
	p.add = heard.NewButtonWithIcon(words.T("Add a point"), theme.ContentAddIcon(), func() { s.AddPhotoPoint(p.free()) }).Tell(hint)
	p.box = container.NewVBox(p.list, p.add)
	return p
}

// free is the first landmark that is no point yet and that the photo shows as far
// as is known; otherwise the first that is no point.
func (p *points) free() court.Point {
	first, found := p.names[0].At, false
	m, err := p.session.PhotoMap()
	at := p.session.Photo()
	for _, n := range p.names {
		if p.indexOf(n.At) >= 0 {
			continue
		}
		if px, ok := m.ToPx(n.At); err == nil && ok && px.X >= 0 && px.Y >= 0 && px.X <= float64(at.Width) && px.Y <= float64(at.Height) {
			return n.At
		}
		if !found {
			first, found = n.At, true
		}
	}
	return first
}

// indexOf is the photo's point at a place of the court; -1 if there is none.
func (p *points) indexOf(at court.Point) int {
	for i, q := range p.session.Photo().Points {
		if q.Court.Distance(at) < sameLandmark {
			return i
		}
	}
	return -1
}

// sameLandmark is how near a place is to a landmark that is that landmark: a
// quarter of a line's width.
const sameLandmark = court.LineWidth / 4

func (p *points) refresh() {
	all, placed := p.session.Photo().Points, len(p.session.Photo().Placed())
	for len(p.rows) < len(all) {
		p.rows = append(p.rows, p.newRow(len(p.rows)))
		p.list.Add(p.rows[len(p.rows)-1].box)
	}
	few, many := "", ""
	if placed <= homography.Least {
		few = words.T("A photo needs at least %d points.", homography.Least)
	}
	if len(all) >= lesson.MaxPhotoPoints {
		many = words.T("A photo has at most %d points.", lesson.MaxPhotoPoints)
	}
	m, err := p.session.PhotoMap()
	p.quiet = true
	for i, r := range p.rows {
		if i >= len(all) {
			r.box.Hide()
			continue
		}
		r.box.Show()
		r.number.TextStyle.Bold = i == p.chosen()
		r.number.Refresh()
		r.name.SetSelectedIndex(p.landmark(all[i].Court))
		r.off.SetText("")
		off, ok := m.Residual(all[i].Pair())
		switch {
		case all[i].Unplaced:
			r.off.SetText(words.T("not placed yet"))
			r.drop.Unless("")
			continue
		case err == nil && ok && placed > homography.Least:
			r.off.SetText(words.SmallLength(off))
		}
		r.drop.Unless(few)
	}
	p.quiet = false
	p.add.Unless(many)
}

// landmark is the number of the landmark at a place; -1 if it is none.
func (p *points) landmark(at court.Point) int {
	for i, n := range p.names {
		if n.At.Distance(at) < sameLandmark {
			return i
		}
	}
	return -1
}

func (p *points) newRow(i int) *row {
	r := &row{number: widget.NewLabel(strconv.Itoa(i + 1)), off: widget.NewLabel("")}
	options := make([]string, len(p.names))
	for k, n := range p.names {
		options[k] = n.Name
	}
	r.name = panel.NewDropdown(options, func(string) {
		if k := r.name.SelectedIndex(); !p.quiet && k >= 0 {
			p.session.NamePhotoPoint(i, p.names[k].At)
		}
	})
	r.drop = heard.NewButtonWithIcon("", theme.ContentRemoveIcon(), func() { p.session.DropPhotoPoint(i) }).Says(func() string { return words.T("Takes this point away") }).Tell(p.hint)
	r.drop.Importance = widget.LowImportance
	r.box = container.NewBorder(nil, nil, r.number, container.NewHBox(r.off, r.drop), r.name)
	return r
}

// worst is the largest residual of the points.
func (p *points) worst(m homography.Map) (worst units.Feet) {
	for _, q := range p.session.Photo().Pairs() {
		if off, ok := m.Residual(q); ok {
			worst = max(worst, off)
		}
	}
	return worst
}
