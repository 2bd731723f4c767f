package app

import (
	"path"
	"sync"

	"homeside/assets"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/words"
)

// builtIn are the built-in lessons in the language spoken, in the order to show
// them in.
func builtIn() []lesson.Lesson {
	if words.Spoken() == words.Spanish {
		return inSpanish()
	}
	return inEnglish()
}

var (
	inEnglish = sync.OnceValue(func() []lesson.Lesson {
		return readBuiltIn(func(name string) string { return name })
	})
	inSpanish = sync.OnceValue(func() []lesson.Lesson {
		return readBuiltIn(func(name string) string { return path.Join(assets.SpanishLessons, path.Base(name)) })
	})
)

func readBuiltIn(at func(name string) string) (all []lesson.Lesson) {
	for _, name := range assets.LessonNames {
		f, err := assets.Lessons.Open(at(name))
		if err != nil {
			continue // a test opens them all
		}
		if l, err := lessonfile.Read(f); err == nil {
			all = append(all, l)
		}
		f.Close()
	}
	return all
}
