package app

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"
	"golang.org/x/image/draw"

	"homeside/app/panel"
	"homeside/model/lesson"
	"homeside/words"
)

// onReel is a key of the page of reels.
func onReel(k fyne.KeyName, says func() string) binding {
	return binding{onReels, one(k), false, says, always(func(e *Editor) { e.reels.Press(&fyne.KeyEvent{Name: k}) })}
}

// newReels is the page of reels; it takes the court's place while it is open.
func (e *Editor) newReels() *panel.Reels {
	return panel.NewReels(e.session, panel.ReelEvents{
		Close: e.closeReels, Export: e.exportReel, Logo: e.askLogo, Plays: func(on bool) { e.trace.say("reel %s", map[bool]string{true: "plays", false: "rests"}[on]) },
		Painted: func() {
			e.traceControls()
			e.trace.say("painted reel %d", e.session.Revision())
		},
	})
}

func (e *Editor) openReels() {
	e.rest()
	e.closeStart()
	e.leaveCourt()
	e.reels.Open()
	e.traceControls()
	e.trace.say("reels open")
}

func (e *Editor) closeReels() {
	e.backToCourt()
	e.trace.say("reels closed")
}

// askLogo asks for a PNG picture to be the lesson's logo.
func (e *Editor) askLogo() {
	path := filepath.Join(filepath.Dir(e.suggestedPath()), "logo.png")
	e.askOne(words.T("Logo (a PNG picture)"), words.T("Take"), path, []string{".png"}, e.takeLogo)
	e.trace.say("asking a logo")
}

// takeLogo reads a picture, which takes a while where it must be made smaller.
func (e *Editor) takeLogo(path string) {
	var g lesson.Logo
	e.background(words.T("Opening…"), func() (err error) {
		g, err = readLogo(path)
		return err
	}, func(err error) {
		if err != nil {
			e.fail(err, words.T("The lesson's logo is as it was."))
			return
		}
		e.session.SetLogo(g)
		e.trace.say("logo %d bytes", len(g.PNG))
	})
}

// mostPicture is the size in bytes of the largest picture that is read.
const mostPicture = 32 << 20

// readLogo is a PNG picture as a logo; one that is too large is made smaller.
func readLogo(path string) (lesson.Logo, error) {
	info, err := os.Stat(path)
	if err == nil && info.Size() > mostPicture {
		err = fmt.Errorf("%d bytes, at most %d", info.Size(), mostPicture)
	}
	if err != nil {
		return lesson.Logo{}, fmt.Errorf("read the logo: %w", err)
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return lesson.Logo{}, fmt.Errorf("read the logo: %w", err)
	}
	g := lesson.Logo{PNG: string(data)}
	w, h, err := g.Size()
	if err != nil {
		return lesson.Logo{}, fmt.Errorf("the logo %w", err)
	}
	if w > mostLogoPx || h > mostLogoPx {
		return lesson.Logo{}, fmt.Errorf("the logo has %d x %d px, at most %d x %[3]d", w, h, mostLogoPx)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return lesson.Logo{}, fmt.Errorf("read the logo: %w", err)
	}
	return smaller(g, img)
}

// mostLogoPx is the side of the largest picture that is made smaller.
const mostLogoPx = 10000

// smaller halves a logo until it is within the bounds of a lesson.
func smaller(g lesson.Logo, img image.Image) (lesson.Logo, error) {
	for size := img.Bounds().Size(); len(g.PNG) > lesson.MaxLogo || size.X > lesson.MaxLogoSide || size.Y > lesson.MaxLogoSide; {
		size = image.Pt(max(size.X/2, 1), max(size.Y/2, 1))
		small := image.NewNRGBA(image.Rectangle{Max: size})
		draw.CatmullRom.Scale(small, small.Rect, img, img.Bounds(), draw.Src, nil)
		var b bytes.Buffer
		if err := png.Encode(&b, small); err != nil {
			return lesson.Logo{}, fmt.Errorf("make the logo smaller: %w", err)
		}
		g.PNG = b.String()
	}
	return g, nil
}
