package app

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// photoBench is an editor with a lesson of one play in a folder with a picture.
func photoBench(t *testing.T) (b *bench, picture string) {
	t.Helper()
	l := lessontest.Sample()
	l.Plays[0].Photo = nil
	b = newBench(t)
	path := filepath.Join(t.TempDir(), "lesson.json")
	b.openLesson(l, path)
	picture = filepath.Join(filepath.Dir(path), "court.png")
	f, err := os.Create(picture)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, image.NewGray(image.Rect(0, 0, 400, 300))); err != nil {
		t.Fatal(err)
	}
	return b, picture
}

// A picture that is dropped opens the page and lies under the play; the lesson
// calls it from its own folder and does not hold it unless asked to.
func TestADroppedPicture(t *testing.T) {
	b, picture := photoBench(t)
	b.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(picture)})
	b.wait()
	p := b.session.Photo()
	if !b.photos.page.Shown() || p == nil || p.File != "court.png" || p.Width != 400 || p.Kept != "" {
		t.Fatalf("page shown: %v, photo %+v", b.photos.page.Shown(), p)
	}
	b.keepPhoto(true)
	b.wait()
	if n := len(b.session.Photo().Kept); n == 0 || n > lesson.MaxPhotoKept {
		t.Errorf("kept, the picture has %d bytes", n)
	}
	if err := os.Remove(picture); err != nil {
		t.Fatal(err)
	}
	b.photos.page.Close()
	if !b.editing.Shown() {
		t.Error("closed, the page does not give the court back")
	}
	b.photos.shown = photoKey{}
	b.openPhoto()
	b.wait()
	if b.photos.page.Picture().Image == nil {
		t.Error("without its file the picture that is kept is not shown")
	}
	b.keepPhoto(false)
	b.wait()
	if got := b.session.Photo(); got == nil || got.Kept != "" || len(got.Points) != 4 {
		t.Errorf("kept no more, the photo is %+v, want its points alone", got)
	}
	b.escapePhoto()
	if b.photos.page.Shown() {
		t.Error("Escape does not close the page")
	}
}

// A picture that is dropped on a play that has one already takes its place, though
// the page opens with the one before and reads that first.
func TestAnotherPictureIsDropped(t *testing.T) {
	b, picture := photoBench(t)
	b.drop(picture)
	b.wait()
	b.escapePhoto()
	data, err := os.ReadFile(picture)
	other := filepath.Join(filepath.Dir(picture), "other.png")
	if err == nil {
		err = os.WriteFile(other, data, 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	b.photos.shown = photoKey{} // as after another play
	b.drop(other)
	b.wait()
	b.wait()
	if p := b.session.Photo(); p == nil || p.File != "other.png" || !b.photos.page.Shown() {
		t.Errorf("the photo is %+v, want the other picture", p)
	}
}

// A file that is no picture is said to be none, and nothing changes.
func TestABadPicture(t *testing.T) {
	b, picture := photoBench(t)
	if err := os.WriteFile(picture, []byte("no picture"), 0o600); err != nil {
		t.Fatal(err)
	}
	b.openPhoto()
	b.putPhoto(picture)
	b.wait()
	if b.asked() != "Homeside" || b.session.Photo() != nil || b.session.Modified() {
		t.Errorf("shown %q, photo %v, modified %v; want a sentence and nothing changed", b.asked(), b.session.Photo(), b.session.Modified())
	}
}

// Undo takes the picture away from the page as well, and the match plan takes the
// page's place.
func TestThePageFollows(t *testing.T) {
	b, picture := photoBench(t)
	b.openPhoto()
	b.putPhoto(picture)
	b.wait()
	b.undo()
	b.wait()
	if b.photos.page.Picture().Image != nil {
		t.Error("undone, the picture is still shown")
	}
	b.openMatchPlan()
	if b.photos.page.Shown() || !b.plan.Shown() {
		t.Errorf("photo shown: %v, match plan shown: %v; want the match plan alone", b.photos.page.Shown(), b.plan.Shown())
	}
}
