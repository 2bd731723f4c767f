package assets

import "embed"

// Regular is Noto Sans Regular as TrueType.
//
//go:embed fonts/NotoSans-Regular.ttf
var Regular []byte

// Bold is Noto Sans Bold as TrueType.
//
//go:embed fonts/NotoSans-Bold.ttf
var Bold []byte

// Lessons are the built-in lessons, named *.json.
//
//go:embed lessons
var Lessons embed.FS

// LessonNames are the built-in lessons in the order to show them in.
var LessonNames = [...]string{
	"lessons/left-hand-middle.json",
}

// FirstLesson is the name of the lesson that a new user sees.
const FirstLesson = "lessons/left-hand-middle.json"
