package main

import (
	"bytes"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/export"
	"homeside/export/photo"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

func photoCommand() *cobra.Command {
	var out string
	var play int
	var at float64
	c := &cobra.Command{
		Use:   "photo LESSON --out FILE.png",
		Short: "Draw a play over its photo, in the photo's own perspective",
		Long: `Draw the moment --at of a play over the photo that the lesson has of it, as a PNG
picture. The photo is looked for as the lesson calls it and beside the lesson.
Show it only with the consent of those in it.`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			l, r, err := openPlay(args[0], play)
			if err != nil {
				return err
			}
			at := units.Seconds(at)
			if !(at >= r.From && at <= r.To) {
				return fmt.Errorf("--at %v: outside the %v to %v s of the play", float64(at), float64(r.From), float64(r.To))
			}
			p := compose.Of(r, l.Venue.Surface(), canvas.Upright)
			return exportPhoto(c, args[0], out, p, at)
		},
	}
	c.Flags().StringVar(&out, "out", "", "PNG file to write")
	c.Flags().IntVar(&play, "play", 1, "number of the play, counted from 1")
	c.Flags().Float64Var(&at, "at", 0, "moment in seconds after the serve")
	if err := c.MarkFlagRequired("out"); err != nil {
		panic(err) // the flag is defined above
	}
	return c
}

func exportPhoto(c *cobra.Command, path, out string, p compose.Picture, at units.Seconds) error {
	own := p.Rally.Play.Photo
	if own == nil {
		return fmt.Errorf("%s: this play has no photo", path)
	}
	m, err := own.Map()
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	picture, err := openPhoto(path, *own)
	if err != nil {
		return err
	}
	var middle court.Point
	for _, q := range own.Points {
		middle = middle.Add(q.Court.Times(1 / float64(len(own.Points))))
	}
	l, ok := compose.PhotoAlone(picture.Size()).Over(m, own.Width, own.Height, middle)
	if !ok {
		return fmt.Errorf("%s: the photo does not show the court", path)
	}
	scene := p.OnPhoto(l, at)
	err = export.Save(c.Context(), out, func(w io.Writer) error { return picture.WritePNG(w, scene) })
	if lacks := look.LackingIn(scene); err == nil && len(lacks) > 0 {
		fmt.Fprintf(c.ErrOrStderr(), "%s: %s\n", out, words.Lacks(lacks))
	}
	return err
}

// openPhoto reads a lesson's photo from its file or, where that is not there, the
// one that the lesson keeps.
func openPhoto(path string, own lesson.Photo) (photo.Picture, error) {
	if file, ok := photo.Find(path, own.File); ok {
		return photo.Open(file)
	}
	if own.Kept == "" {
		return photo.Picture{}, fmt.Errorf("%s: the photo %s is not there", path, own.File)
	}
	return photo.Read(bytes.NewReader([]byte(own.Kept)))
}
