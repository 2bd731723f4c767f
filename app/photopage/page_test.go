package photopage

import (
	"bytes"
	"image"
	"image/color"
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/assets"
	"homeside/canvas"
	"homeside/export/photo"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/words"
)

// opened is the page of the built-in lesson, whose first play has the sample's
// photo, 960 x 540 units large, with a grey picture at a quarter of its size.
func opened(t *testing.T) (*Page, *session.Session) {
	t.Helper()
	test.NewTempApp(t)
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	l.Plays[0].Photo = new(lessontest.SamplePhoto())
	l.Plays[0].Photo.Kept = ""
	var p *Page
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = New(s, Events{Close: func() {}, Choose: func() {}, Keep: func(bool) {}, Export: func() {}, Painted: func() {}, Key: func(*fyne.KeyEvent) {}, Rune: func(rune) {}})
	p.Open()
	p.view.Resize(fyne.NewSize(960, 540))
	grey := image.NewRGBA(image.Rect(0, 0, 480, 270))
	for i := range grey.Pix {
		grey.Pix[i] = 0x80
	}
	p.Show(photo.Picture{Image: grey, Width: 1920, Height: 1080}, "")
	p.view.paint(960, 540)
	return p, s
}

func (v *view) press(at canvas.Px) {
	v.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(float32(at.X), float32(at.Y))}, Button: desktop.MouseButtonPrimary})
}

func (v *view) pull(to canvas.Px) {
	v.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(float32(to.X), float32(to.Y))}})
}

// A mark is dragged in the photo's own pixels, two for one of the view, as a step;
// Escape's cancel puts it back.
func TestDragAMark(t *testing.T) {
	p, s := opened(t)
	was := s.Photo().Points[1]
	at := p.view.toView(was.X, was.Y)
	p.view.press(canvas.Px{X: at.X + 3, Y: at.Y}) // held beside its middle
	p.view.pull(canvas.Px{X: at.X + 13, Y: at.Y - 20})
	if got := s.Photo().Points[1]; math.Abs(got.X-was.X-20) > 0.01 || math.Abs(got.Y-was.Y+40) > 0.01 {
		t.Errorf("dragged by 10, -20 the mark is at %v, %v, want %v, %v", got.X, got.Y, was.X+20, was.Y-40)
	}
	p.view.paint(960, 540) // with the photo magnified
	if !p.Cancel() || s.Photo().Points[1] != was || p.Cancel() {
		t.Errorf("cancelled, the mark is at %v, want %v", s.Photo().Points[1], was)
	}
	p.view.press(at)
	p.view.pull(canvas.Px{X: at.X + 5, Y: at.Y})
	p.view.DragEnd()
	p.view.MouseUp(nil)
	if step, _ := s.CanUndo(); step != "move point 2 of the photo" {
		t.Errorf("the step is %q", step)
	}
}

// Keys choose a mark by its number and move it by pixels, as one step.
func TestKeysMoveAMark(t *testing.T) {
	p, s := opened(t)
	p.Point(2)
	p.Point(9) // there is none
	was := s.Photo().Points[2]
	p.Move(0, -1)
	p.Move(10, 0)
	if got := s.Photo().Points[2]; got.Y != was.Y-1 || got.X != was.X+10 {
		t.Errorf("moved up and right the mark is at %v, want 10 and a pixel from %v", got, was)
	}
	if p.points.rows[2].number.TextStyle.Bold != true || p.points.rows[0].number.TextStyle.Bold {
		t.Error("the chosen mark is not the bold one")
	}
	if _, _, ok := p.view.closeUp(); !ok {
		t.Error("the photo round the mark is not shown larger")
	}
	s.Undo()
	if got := s.Photo().Points[2]; got != was {
		t.Errorf("one undo leaves the mark at %v, want %v", got, was)
	}
}

// Keys go from the marks to the players and round again; a player is put where the
// arrows have led, by one step each, and the next one's turn comes.
func TestKeysPlacePlayers(t *testing.T) {
	p, s := opened(t)
	for range len(s.Photo().Points) {
		p.Next(1)
	}
	if p.view.feet == nil || p.view.feet.player != 0 || !strings.Contains(p.help.Text, s.Lesson().NameOf(game.Players[0])) {
		t.Fatalf("behind the marks comes %+v, and the page says %q", p.view.feet, p.help.Text)
	}
	from := *p.view.feet
	for range 3 {
		p.Move(10, 0)
	}
	p.Move(0, -1)
	if got := *p.view.feet; got.x != from.x+30 || got.y != from.y-1 {
		t.Errorf("moved, the mark is at %v, %v, want 30 right and 1 above %v, %v", got.x, got.y, from.x, from.y)
	}
	p.view.paint(960, 540)
	want, _ := homography.Map(mustMap(t, s)).ToCourt(homography.Px{X: from.x + 30, Y: from.y - 1})
	p.Put()
	if got := s.Current().At(s.Now()).Players[game.Players[0]].Drawn.Place; got.Distance(want) > 0.05 {
		t.Errorf("put there the player stands at %v, want %v", got, want)
	}
	if p.view.feet == nil || p.view.feet.player != 1 || p.who.SelectedIndex() != 1 {
		t.Errorf("then comes %+v and the click is for player %d, want the next of both", p.view.feet, p.who.SelectedIndex())
	}
	p.Next(-1)
	if p.view.feet.player != 0 {
		t.Errorf("back is player %d", p.view.feet.player)
	}
	if !p.Cancel() || p.view.feet != nil || p.Cancel() {
		t.Error("Escape's cancel does not go back to the marks, once")
	}
	before, _ := s.CanUndo()
	p.Put() // nobody
	if step, _ := s.CanUndo(); step != before {
		t.Errorf("with no player chosen Enter does %q", step)
	}
}

// A click on the ground places the player whose turn it is, and the next one's
// turn comes.
func TestClickPlacesPlayers(t *testing.T) {
	p, s := opened(t)
	m, err := s.PhotoMap()
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []court.Point{court.Pt(3, -4), court.Pt(-4, 5)} {
		px, _ := m.ToPx(want)
		p.view.press(p.view.toView(px.X, px.Y))
		p.view.MouseUp(nil)
		id := game.Players[i]
		if got := s.Current().At(s.Now()).Players[id].Drawn.Place; got.Distance(want) > 0.05 {
			t.Errorf("%v stands at %v, want %v", id, got, want)
		}
	}
	if got := p.who.SelectedIndex(); got != 2 {
		t.Errorf("the next click is for player %d, want 2", got)
	}
}

// The page says of which moment the places are, and of whom the ring cannot be where
// the click was.
func TestPageSaysWhoIsLate(t *testing.T) {
	p, s := opened(t)
	s.Seek(0)
	p.Refresh()
	if got := p.moment.Text; got != "The places are those of the moment shown, 0.00 s." {
		t.Errorf("at the serve it says %q", got)
	}
	s.Seek(0.5)
	p.Refresh()
	m, err := s.PhotoMap()
	if err != nil {
		t.Fatal(err)
	}
	px, _ := m.ToPx(court.Pt(9, 15)) // far1, across the court in half a second
	s.PlaceOnPhoto(game.Far1, px.X, px.Y)
	if got := p.moment.Text; !strings.Contains(got, "0.50 s") || !strings.Contains(got, s.Lesson().NameOf(game.Far1)+" cannot be") {
		t.Errorf("asked for too much it says %q", got)
	}
}

// What the page says follows the state of the photo.
func TestPageSays(t *testing.T) {
	p, s := opened(t)
	if got, want := p.fit.Text, words.Fits(4, 0); got != want || p.export.Disabled() {
		t.Errorf("with four points it says %q, want %q; export disabled: %v", got, want, p.export.Disabled())
	}
	s.AddPhotoPoint(court.Pt(10, 22))
	if got := p.points.rows[4].off.Text; got != "not placed yet" || p.points.rows[0].off.Text != "" || p.fit.Text != words.Fits(4, 0) {
		t.Errorf("of the added point it says %q, of the first %q, of all %q; want that it is not placed yet, and no error", got, p.points.rows[0].off.Text, p.fit.Text)
	}
	if !p.points.rows[0].drop.Disabled() || p.points.rows[4].drop.Disabled() {
		t.Error("one of the four placed points can be taken away, or the fifth cannot")
	}
	p.Point(4)
	p.Move(10, 0)
	if got, worst := p.points.rows[4].off.Text, p.points.worst(mustMap(t, s)); got == "" || got == "not placed yet" || p.fit.Text != words.Fits(5, worst) {
		t.Errorf("placed, the fifth point is off by %q, and of all it says %q", got, p.fit.Text)
	}
	s.DropPhotoPoint(4)
	if p.points.rows[4].box.Visible() || !p.points.rows[0].drop.Disabled() {
		t.Error("of four points one can be taken away, or the fifth is still there")
	}
	s.MovePhotoPoint(0, s.Photo().Points[1].X, s.Photo().Points[1].Y)
	s.Commit("one on the other")
	_, err := s.PhotoMap()
	if got, want := p.fit.Text, words.PhotoReason(err); got != want || !p.export.Disabled() {
		t.Errorf("with two marks in one place it says %q, want %q; export disabled: %v", got, want, p.export.Disabled())
	}
	p.Show(photo.Picture{}, "gone.jpg")
	if got := p.help.Text; got != words.T("The picture %s is not there. Its points are kept: put it back beside the lesson, or choose it again.", "gone.jpg") {
		t.Errorf("without the picture it says %q", got)
	}
	p.view.paint(300, 200)
	s.RemovePhoto()
	if p.all.Visible() {
		t.Error("without a photo its points are shown")
	}
	p.view.press(canvas.Px{X: 10, Y: 10}) // on nothing
	p.Close()
	if p.Shown() || len(p.Named()) != 0 || len(p.OnScreen()) != 0 {
		t.Error("closed, the page is still there")
	}
}

// A point that is added is one that the photo shows.
func TestAddedPointIsShown(t *testing.T) {
	p, s := opened(t)
	test.Tap(p.points.add)
	q := s.Photo().Points[4]
	if q.X < 0 || q.Y < 0 || q.X > 1920 || q.Y > 1080 || p.points.landmark(q.Court) < 0 {
		t.Errorf("the added point is %+v, want a landmark in the picture", q)
	}
	if worst := p.points.worst(mustMap(t, s)); worst.Inches() > 0.01 {
		t.Errorf("the added point spoils the fit by %v in", worst.Inches())
	}
}

func mustMap(t *testing.T, s *session.Session) (m [3][3]float64) {
	t.Helper()
	got, err := s.PhotoMap()
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// The picture stands in the middle of a view of another shape.
func TestPhotoIsFitted(t *testing.T) {
	p, _ := opened(t)
	p.view.Resize(fyne.NewSize(600, 600))
	img := p.view.paint(600, 600).(*image.RGBA)
	if a := p.view.area; math.Abs(a.Width()-600) > 1 || math.Abs(a.Height()-337.5) > 1 || math.Abs(a.Min.Y-131) > 1 {
		t.Errorf("the photo is at %+v, want 600 x 337 in the middle", p.view.area)
	}
	if got := img.RGBAAt(20, 140); got != (color.RGBA{0x80, 0x80, 0x80, 0x80}) && got.R != 0x80 {
		t.Errorf("the photo's pixel is %v, want grey", got)
	}
}
