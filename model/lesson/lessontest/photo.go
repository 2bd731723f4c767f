package lessontest

import (
	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
)

// SamplePhoto is a photo from behind the near baseline with four of its points.
// It keeps the smallest of pictures.
func SamplePhoto() lesson.Photo {
	return lesson.Photo{
		File: "court 3.jpg", Width: 1920, Height: 1080, Kept: samplePNG,
		Points: []lesson.PhotoPoint{
			{Court: court.Pt(-10, -7), X: 402, Y: 688}, {Court: court.Pt(10, -7), X: 1518, Y: 700},
			{Court: court.Pt(10, 7), X: 1303, Y: 497}, {Court: court.Pt(-10, 7), X: 600, Y: 492},
		},
	}
}

func photo(t *rapid.T) lesson.Photo {
	return lesson.Photo{
		File: "photo" + text(t, "file", 20), Width: rapid.IntRange(1, lesson.MaxPhotoSide).Draw(t, "width"), Height: rapid.IntRange(1, lesson.MaxPhotoSide).Draw(t, "height"),
		Kept: rapid.SampledFrom([]string{"", samplePNG}).Draw(t, "kept"),
		Points: some(t, 0, 6, func(t *rapid.T) lesson.PhotoPoint {
			return lesson.PhotoPoint{
				Court: court.Pt(units.Feet(between(t, "x", -lesson.MaxCoordinate, lesson.MaxCoordinate)), units.Feet(between(t, "y", -lesson.MaxCoordinate, lesson.MaxCoordinate))),
				X:     between(t, "u", 0, 5000.0), Y: between(t, "v", 0, 5000.0), Unplaced: rapid.Bool().Draw(t, "unplaced"),
			}
		}),
	}
}
