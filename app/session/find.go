package session

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"homeside/model/lesson"
)

// FindPlays are the numbers, from 0, of a lesson's plays that have every word
// of a query in their title, notes, tags or score, whatever the case and the
// accents; all plays for an empty query.
func FindPlays(l lesson.Lesson, query string) []int {
	words := strings.Fields(plain(query))
	all := []int{} // none is another answer than nobody has asked
	for i, p := range l.Plays {
		if hasAll(p, words) {
			all = append(all, i)
		}
	}
	return all
}

func hasAll(p lesson.Play, words []string) bool {
	if len(words) == 0 {
		return true
	}
	text := plain(strings.Join([]string{p.Title, p.Notes, strings.Join(p.Tags, "\n"), p.Situation.Call.String()}, "\n"))
	for _, w := range words {
		if !strings.Contains(text, w) {
			return false
		}
	}
	return true
}

// plain is a text in small letters without accents.
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return unicode.ToLower(r)
	}, norm.NFD.String(s))
}

// TagsOf are the tags of a lesson's plays, each once, in the order of the plays.
func TagsOf(l lesson.Lesson) (all []string) {
	seen := map[string]bool{}
	for _, p := range l.Plays {
		for _, t := range p.Tags {
			if !seen[t] {
				seen[t] = true
				all = append(all, t)
			}
		}
	}
	return all
}

// SplitTags are the tags of a text that has commas between them, as a lesson
// takes them: without blanks around, none twice, no more and no longer than the
// bounds.
func SplitTags(text string) (tags []string) {
	seen := map[string]bool{}
	for _, t := range strings.Split(text, ",") {
		r := []rune(strings.TrimSpace(t))
		t = strings.TrimSpace(string(r[:min(len(r), lesson.MaxTag)]))
		if t == "" || seen[t] || len(tags) == lesson.MaxTags {
			continue
		}
		seen[t] = true
		tags = append(tags, t)
	}
	return tags
}
