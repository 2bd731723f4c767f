package photopage

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/canvas"
	"homeside/export/photo"
	"homeside/model/game"
	"homeside/words"
)

// Events are what the page asks of the window.
type Events struct {
	Close   func()
	Choose  func()          // a picture
	Keep    func(keep bool) // the picture in the lesson
	Export  func()
	Painted func()
	Key     func(*fyne.KeyEvent) // on the photo
	Rune    func(rune)
}

// Page is the page; it takes the court's place while it is open.
type Page struct {
	*panel.Page
	tall    *panel.Tall
	session *session.Session
	events  Events
	view    *view
	help    *widget.Label
	choose  *heard.Button
	points  *points
	fit     *widget.Label
	who     *panel.Dropdown
	moment  *widget.Label // when they stand there
	keep    *heard.Check
	export  *heard.Button
	remove  *heard.Button
	back    *heard.Button
	all     *fyne.Container // what needs a photo
	missing string          // the file that is not there
	quiet   bool            // controls are being set, nobody changes anything
}

// columnWidth is the width of what stands beside the photo.
const columnWidth = 380

// leastPhoto is the height of the photo where it stands alone in its row.
const leastPhoto = 300

// New is the page of a session, hidden until Open.
func New(s *session.Session, e Events) *Page {
	p := &Page{session: s, events: e}
	p.view = newView(s, viewEvents{placed: p.place, chosen: p.Refresh, painted: e.Painted, key: e.Key, rune: e.Rune})
	p.help = widget.NewLabel("")
	p.help.Wrapping = fyne.TextWrapWord
	p.choose = heard.NewButtonWithIcon(words.T("Choose a picture…"), theme.FolderOpenIcon(), e.Choose)
	p.points = newPoints(s, func() int { return p.view.chosen }, p.hint)
	p.fit = widget.NewLabel("")
	p.fit.Wrapping = fyne.TextWrapWord
	p.who = panel.NewDropdown(nil, func(string) {
		if p.view.feet != nil && !p.quiet && p.view.feet.player != p.who.SelectedIndex() {
			p.seek(p.who.SelectedIndex())
		}
	})
	p.moment = widget.NewLabel("")
	p.moment.Wrapping = fyne.TextWrapWord
	p.keep = heard.NewCheck(words.T("Keep the picture in the lesson"), func(on bool) {
		if !p.quiet {
			e.Keep(on)
		}
	})
	p.export = heard.NewButtonWithIcon(words.T("Export as a picture…"), theme.DocumentSaveIcon(), e.Export).Tell(p.hint)
	p.remove = heard.NewButtonWithIcon(words.T("Take the photo away"), theme.DeleteIcon(), s.RemovePhoto)
	p.back = heard.NewButtonWithIcon(words.T("Back to the court"), theme.NavigateBackIcon(), p.Close)
	columns := panel.NewColumns(panel.Column{Content: p.view, Least: leastPhoto}, panel.Column{Content: p.column(), Width: columnWidth})
	p.tall = panel.NewTall(columns.Box)
	p.Page = panel.NewPage(p.tall.Box)
	return p
}

// column lays out what stands beside the photo.
func (p *Page) column() fyne.CanvasObject {
	title := widget.NewLabelWithStyle(words.T("A photo under the court"), fyne.TextAlignLeading, fyne.TextStyle{Bold: true})
	consent := widget.NewLabel(words.T("Show or send it only with the consent of everyone in it. Otherwise the lesson keeps the points alone, and the picture stays a file of its own."))
	consent.Wrapping = fyne.TextWrapWord
	consent.SizeName = theme.SizeNameCaptionText
	who := widget.NewLabel(words.T("A click on the ground is where the feet are of"))
	who.Wrapping = fyne.TextWrapWord
	p.all = container.NewVBox(p.points.box, p.fit, widget.NewSeparator(), who, p.who, p.moment, widget.NewSeparator(), p.keep, consent, p.export, p.remove)
	return container.NewVBox(p.back, title, p.help, p.choose, p.all)
}

// Reveal scrolls so that a control of the page can be seen.
func (p *Page) Reveal(o fyne.CanvasObject) { p.tall.Reveal(o) }

// Open shows the page with the play's picture; missing is the file of one that is
// not there.
func (p *Page) Open() {
	p.Page.Show()
	p.Refresh()
}

// Close goes back to the court.
func (p *Page) Close() {
	if !p.Shown() {
		return
	}
	p.view.cancel()
	p.view.feet, p.view.close = nil, false
	p.Hide()
	p.events.Close()
}

// Cancel drops a drag under way, or the keys' search for a player's place, and says
// whether there was one.
func (p *Page) Cancel() bool {
	if p.view.feet != nil {
		p.view.feet = nil
		p.Refresh()
		return true
	}
	return p.view.cancel()
}

// Picture is the picture shown; its Image is nil if there is none.
func (p *Page) Picture() photo.Picture { return p.view.photo }

// Show shows a picture; the zero Picture with a file's name says that the file is
// not there.
func (p *Page) Show(picture photo.Picture, missing string) {
	p.missing = missing
	p.view.show(picture)
	p.Refresh()
}

// Refresh shows the session as it is.
func (p *Page) Refresh() {
	if !p.Shown() {
		return
	}
	at := p.session.Photo()
	p.quiet = true
	p.who.Options = p.names()
	if p.who.SelectedIndex() < 0 || p.who.Selected != p.who.Options[p.who.SelectedIndex()] {
		p.who.SetSelectedIndex(max(p.who.SelectedIndex(), 0))
	}
	p.keep.SetChecked(at != nil && at.Kept != "")
	p.quiet = false
	p.help.SetText(p.helps())
	if at == nil {
		p.all.Hide()
	} else {
		p.all.Show()
		p.points.refresh()
		p.fit.SetText(p.fits())
		p.moment.SetText(p.when())
		p.export.Unless(p.hindered())
		if p.view.photo.Image != nil || at.Kept != "" {
			p.keep.Enable()
		} else {
			p.keep.Disable() // the line on top says that the picture is not there
		}
	}
	p.view.Refresh()
}

func (p *Page) names() []string {
	l := p.session.Lesson()
	names := make([]string, len(game.Players))
	for i, id := range game.Players {
		names[i] = l.NameOf(id)
	}
	return names
}

// place puts the player at a click and goes on to the next.
func (p *Page) place(x, y float64) {
	i := max(p.who.SelectedIndex(), 0)
	if !p.session.PlaceOnPhoto(game.Players[i], x, y) {
		return
	}
	p.who.SetSelectedIndex((i + 1) % len(game.Players))
}

// Named are the controls by name, for tests of the window.
func (p *Page) Named() map[string]fyne.CanvasObject {
	out := map[string]fyne.CanvasObject{}
	if !p.Shown() {
		return out
	}
	out["photo.choose"], out["photo.back"] = p.choose, p.back
	if p.session.Photo() != nil {
		out["photo.who"], out["photo.keep"], out["photo.export"], out["photo.add"] = p.who, p.keep, p.export, p.points.add
	}
	return out
}

// OnScreen is where the photo's corners and its points are in the window, in
// device pixels: "photo.topleft", "photo.bottomright", "photo.point1" and so on.
func (p *Page) OnScreen() map[string]canvas.Px {
	out := map[string]canvas.Px{}
	at := p.session.Photo()
	if !p.Shown() || at == nil || p.view.photo.Image == nil {
		return out
	}
	corner, k := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.view), p.view.scale()
	put := func(name string, x, y float64) {
		px := p.view.toView(x, y)
		out["photo."+name] = canvas.Px{X: px.X + float64(corner.X)*k, Y: px.Y + float64(corner.Y)*k}
	}
	if px, ok := p.onFeet(); ok {
		out["photo.feet"] = px
	}
	put("topleft", 0, 0)
	put("bottomright", float64(p.view.photo.Width), float64(p.view.photo.Height))
	for i, q := range at.Points {
		put("point"+string(rune('1'+i)), q.X, q.Y)
	}
	return out
}
