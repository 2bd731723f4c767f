package app

import (
	"sync"

	"homeside/assets"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// builtIn are the built-in lessons, the first one first.
var builtIn = sync.OnceValue(func() (all []lesson.Lesson) {
	for _, name := range assets.LessonNames {
		f, err := assets.Lessons.Open(name)
		if err != nil {
			continue // a test opens them all
		}
		if l, err := lessonfile.Read(f); err == nil {
			all = append(all, l)
		}
		f.Close()
	}
	return all
})
