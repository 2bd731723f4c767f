package app

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/courtview"
	"homeside/app/looks"
	"homeside/app/panel"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/model/cover"
	"homeside/words"
)

// holdCover keeps the cover at the shot in play to compare another with: of
// another moment, or of another play.
func (e *Editor) holdCover() {
	s, ok := e.court.Snapshot()
	if !ok {
		e.say(words.T("There is no cover to hold here."))
		return
	}
	e.held = s
	e.say(words.OfShot(words.Text("Held the cover at %s. Go to another moment or play and compare."), s.Shot))
}

// compareCover shows the held and the present cover side by side, with what
// changes between them.
func (e *Editor) compareCover() {
	now, ok := e.court.Snapshot()
	switch {
	case e.held.Cover.Len() == 0:
		e.say(words.T("Hold a cover first, then go to another moment or play."))
	case !ok:
		e.say(words.T("There is no cover here to compare with."))
	case now.Cover.Team() != e.held.Cover.Team():
		e.say(words.T("The held cover is the other team's: go to a shot that is hit at the same team."))
	default:
		e.showCompared(e.held, now)
		e.trace.say("compared")
	}
}

// Pixels of a compared court, and how sharply it is drawn.
const (
	comparedWidth  = 270
	comparedHeight = 500
	comparedSharp  = 2
	aroundCompared = 190 // of the window beside a court, in ordinary letters
)

func (e *Editor) showCompared(held, now courtview.Snapshot) {
	window := e.win.Canvas().Size()
	room := fyne.NewSize(window.Width/3-besideContent, max(window.Height-aroundCompared*looks.Letters(), leastContent))
	box := container.NewGridWithColumns(3,
		compared(words.T("Held: %s", covered(held)), pictured(held, func(p compose.Picture, s *canvas.Scene) { p.Cover(s, held.Cover) }), room),
		compared(words.T("Now: %s", covered(now)), pictured(now, func(p compose.Picture, s *canvas.Scene) { p.Cover(s, now.Cover) }), room),
		compared(words.T("What changes"), pictured(now, func(p compose.Picture, s *canvas.Scene) {
			p.CoverDifference(s, cover.Difference{Before: held.Cover, After: now.Cover})
		}), room),
	)
	e.askWith(words.T("Court covered, compared"), box, answer{label: words.T("Close")})
}

// compared is a court with what it shows, no larger than its room.
func compared(title string, img image.Image, room fyne.Size) fyne.CanvasObject {
	picture := fynecanvas.NewImageFromImage(img)
	picture.FillMode = fynecanvas.ImageFillContain
	picture.SetMinSize(fyne.NewSize(comparedWidth, comparedHeight).Min(room))
	said := widget.NewLabel(title)
	said.Wrapping = fyne.TextWrapWord
	return container.New(panel.Headed{}, said, picture)
}

// covered is the shot and the share of the court that is covered.
func covered(s courtview.Snapshot) string {
	return words.T("%s, %.0f %% in time", words.Shot(s.Shot), 100*s.Cover.Share())
}

// pictured draws a snapshot at its contact with an overlay.
func pictured(s courtview.Snapshot, overlay func(compose.Picture, *canvas.Scene)) image.Image {
	l := compose.Bare(comparedWidth*comparedSharp, comparedHeight*comparedSharp, s.Picture.Turn, s.Picture.Surface, comparedSharp)
	static := s.Picture.StaticIn(l)
	overlay(s.Picture, static)
	return raster.NewFrames(static).Draw(s.Picture.MovingIn(l, s.Picture.Rally.Strokes[s.Shot].At))
}
