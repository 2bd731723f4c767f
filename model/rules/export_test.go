package rules

import "homeside/model/lesson"

// CaseLessons are the lessons of the cases, for tests outside the package: words
// know the packages that are built on this one.
func CaseLessons() (all []lesson.Lesson) {
	for _, c := range cases {
		all = append(all, with(c.has))
	}
	return all
}
