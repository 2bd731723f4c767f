package app

import (
	"bytes"
	"context"
	"errors"
	"io"
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"

	"homeside/app/photopage"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/export"
	"homeside/export/photo"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/words"
)

// photos is the page of a photo under the court, and which picture it shows.
type photos struct {
	page  *photopage.Page
	shown photoKey
}

// photoKey is what a picture is read from.
type photoKey struct{ file, kept string }

func keyOf(p *lesson.Photo) photoKey {
	if p == nil {
		return photoKey{}
	}
	return photoKey{p.File, p.Kept}
}

// photoExts are the pictures that are read.
var photoExts = []string{".jpg", ".jpeg", ".png"}

// newPhotos is the photo's page; it takes the court's place while it is open.
func (e *Editor) newPhotos() photos {
	e.onPicture = func(path string) {
		e.openPhoto()
		switch {
		case e.working: // the picture that the play has is being read
			e.waiting = slices.Insert(e.waiting, 0, []string{path})
		case e.photos.page.Shown():
			e.putPhoto(path)
		}
	}
	return photos{page: photopage.New(e.session, photopage.Events{
		Close: e.closePhoto, Choose: e.askPhoto, Keep: e.keepPhoto, Export: e.askExportPhoto,
		Key:     func(k *fyne.KeyEvent) { e.press(onPhoto, k) },
		Rune:    func(r rune) { e.typed(onPhoto, r) },
		Painted: func() { e.tracePhoto() },
	})}
}

func (e *Editor) openPhoto() {
	if e.photos.page.Shown() {
		return
	}
	if _, ok := e.session.Play(); !ok {
		e.say(words.T("There is no play to lay a photo under."))
		return
	}
	e.leavePages()
	e.cancelDrags()
	e.session.Pause()
	e.leaveCourt()
	e.photos.page.Open()
	e.photos.page.TakeKeys()
	e.followPhoto()
	e.trace.say("photo open")
}

func (e *Editor) closePhoto() {
	e.showCourt()
	e.trace.say("photo closed")
}

// followPhoto has the page show the picture of the play that is shown.
func (e *Editor) followPhoto() {
	at := e.session.Photo()
	if !e.photos.page.Shown() {
		return
	}
	if k := keyOf(at); k != e.photos.shown || at != nil && e.photos.page.Picture().Image == nil {
		e.photos.shown = k
		e.readPhoto(at)
		return
	}
	e.photos.page.Refresh()
}

// readPhoto shows a photo's picture: from its file or, if that is not there, the
// one that the lesson keeps.
func (e *Editor) readPhoto(at *lesson.Photo) {
	if at == nil {
		e.photos.page.Show(photo.Picture{}, "")
		return
	}
	path, there := photo.Find(e.session.Path(), at.File)
	if !there && at.Kept == "" {
		e.photos.page.Show(photo.Picture{}, at.File)
		e.trace.say("photo missing %s", at.File)
		return
	}
	p, want := photo.Picture{}, keyOf(at)
	e.background(words.T("Opening…"), func() (err error) {
		if there {
			p, err = photo.Open(path)
		} else {
			p, err = photo.Read(bytes.NewReader([]byte(at.Kept)))
		}
		return err
	}, func(err error) {
		switch {
		case err != nil:
			e.photos.page.Show(photo.Picture{}, at.File)
			e.fail(err, words.T("The photo's points are kept, and the lesson is unchanged."))
		case want == e.photos.shown:
			p.Width, p.Height = at.Width, at.Height // the points are in these pixels
			e.photos.page.Show(p, "")
			e.trace.say("photo shown")
		}
	})
}

func (e *Editor) askPhoto() {
	folder := documents()
	if p := e.session.Path(); p != "" {
		folder = filepath.Dir(p)
	}
	e.askOne(words.T("Choose a picture"), words.T("Choose"), folder+string(filepath.Separator), photoExts, e.putPhoto)
}

// putPhoto lays a picture under the play.
func (e *Editor) putPhoto(path string) {
	var p photo.Picture
	e.background(words.T("Opening…"), func() (err error) {
		p, err = photo.Open(path)
		return err
	}, func(err error) {
		if err != nil {
			e.fail(err, words.T("The lesson is unchanged."))
			return
		}
		e.photos.shown = photoKey{file: photo.Name(e.session.Path(), path)}
		e.photos.page.Show(p, "")
		e.session.PutPhoto(e.photos.shown.file, p.Width, p.Height)
		e.trace.say("photo shown")
	})
}

// keepPhoto keeps the picture in the lesson, small enough to be sent, or only its
// points.
func (e *Editor) keepPhoto(keep bool) {
	at := e.session.Photo()
	if at == nil {
		return
	}
	if !keep {
		e.kept(at, "")
		return
	}
	if e.working {
		e.photos.page.Refresh() // it is refused: its tick goes
	}
	picture, small := e.photos.page.Picture(), []byte(nil)
	e.background(words.T("Making the picture smaller…"), func() (err error) {
		small, err = picture.Kept(lesson.MaxPhotoKept)
		return err
	}, func(err error) {
		switch now := e.session.Photo(); {
		case err != nil:
			e.photos.page.Refresh() // its tick
			e.fail(err, words.T("The lesson is unchanged."))
		case keyOf(now) == keyOf(at):
			e.kept(at, string(small))
		}
	})
}

// kept keeps a picture's bytes in the lesson, or none.
func (e *Editor) kept(at *lesson.Photo, data string) {
	if data == "" && at.File == "" {
		e.session.RemovePhoto()
		return
	}
	e.photos.shown = photoKey{at.File, data}
	e.session.KeepPhoto(data)
	e.trace.say("photo kept %d bytes", len(data))
}

// askExportPhoto asks for a file and draws the moment over the picture into it.
func (e *Editor) askExportPhoto() {
	r, at := e.session.Current(), e.session.Photo()
	m, err := e.session.PhotoMap()
	if r == nil || err != nil {
		return
	}
	picture := e.photos.page.Picture()
	p := compose.Of(r, e.session.Lesson().Venue.Surface(), canvas.Upright)
	p.Look = &look.Daylight
	l, ok := compose.PhotoAlone(picture.Size()).Over(m, at.Width, at.Height, shownOf(at))
	if !ok {
		return
	}
	scene := p.OnPhoto(l, e.session.Now())
	path := filepath.Join(filepath.Dir(e.suggestedPath()), fileName(r.Play.Title)+"-photo.png")
	e.askPath(words.T("Export the photo with the play"), words.T("Export"), path, nil, func(path string) {
		if filepath.Ext(path) == "" {
			path += ".png"
		}
		e.unlessExists(path, "", func() { e.exportPhoto(path, picture, scene) })
	})
}

// shownOf is a point of the court among those of a photo.
func shownOf(at *lesson.Photo) (mid court.Point) {
	for _, q := range at.Points {
		mid = mid.Add(q.Court.Times(1 / float64(len(at.Points))))
	}
	return mid
}

func (e *Editor) exportPhoto(path string, p photo.Picture, s *canvas.Scene) {
	e.stoppable(words.T("Exporting…"), func(ctx context.Context) error {
		return export.Save(ctx, path, func(w io.Writer) error { return p.WritePNG(w, s) })
	}, func(err error) {
		if errors.Is(err, context.Canceled) {
			e.say(words.T("Export cancelled; nothing was written."))
			return
		}
		if err != nil {
			e.fail(err, words.T("Nothing was written. Your lesson is unchanged."))
			return
		}
		e.say(words.T("Exported %s. Show it only with the consent of those in it.", path))
		e.trace.say("exported %s", path)
	})
}

// tracePhoto tells where the page's points and controls are.
func (e *Editor) tracePhoto() {
	if e.trace == nil {
		return
	}
	for name, at := range e.photos.page.OnScreen() {
		e.trace.say("at %s %.0f %.0f", name, at.X, at.Y)
	}
	e.traceNamed(e.photos.page.Named())
	e.trace.say("painted photo %d", e.session.Revision())
}

func (e *Editor) escapePhoto() {
	if !e.photos.page.Cancel() {
		e.photos.page.Close()
	}
}
