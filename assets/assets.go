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

// Letters that Noto Sans lacks, of Noto Sans Hebrew and Noto Sans Arabic as Debian
// has them (fonts-noto-core 20201225), cut down to Hebrew, Arabic, Persian and
// Urdu with fontTools.subset; fonts/README.txt says how.
//
//go:embed fonts/NotoSansHebrew-Regular.ttf
var HebrewRegular []byte

//go:embed fonts/NotoSansHebrew-Bold.ttf
var HebrewBold []byte

//go:embed fonts/NotoSansArabic-Regular.ttf
var ArabicRegular []byte

//go:embed fonts/NotoSansArabic-Bold.ttf
var ArabicBold []byte

// Lessons are the built-in lessons, named *.json; those in SpanishLessons are the
// same with Spanish words.
//
//go:embed lessons
var Lessons embed.FS

// SpanishLessons is the folder of the lessons in Spanish.
const SpanishLessons = "lessons/es"

// LessonNames are the built-in lessons in the order to show them in.
var LessonNames = [...]string{
	"lessons/full-stack-on-serve.json",
	"lessons/stack-on-return.json",
	"lessons/signals-stay-or-switch.json",
	"lessons/half-stack.json",
	"lessons/poach.json",
	"lessons/left-hand-middle.json",
	"lessons/two-left-handers.json",
}

// FirstLesson is the name of the lesson that is shown where nothing else is asked for.
const FirstLesson = "lessons/left-hand-middle.json"
