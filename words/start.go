package words

import (
	"strings"

	"homeside/model/lesson"
)

// PairLesson is the title of a pair's own lesson: "Ana and Luis".
func PairLesson(p [2]lesson.Player) string {
	if p[0].Name == "" || p[1].Name == "" {
		return T("Our pair")
	}
	return T("%s and %s", p[0].Name, p[1].Name)
}

// Opponent is a player of whom nothing is known, the first or the second.
func Opponent(i int) lesson.Player {
	letter := string(rune('C' + i))
	return lesson.Player{Name: T("Player %s", letter), Initials: letter}
}

// Partner is a player of the own pair who has no name yet, the first or the second.
func Partner(i int) lesson.Player {
	letter := string(rune('A' + i))
	return lesson.Player{Name: T("Player %s", letter), Initials: letter}
}

// Initials are a name's first letters: of two words each, of one the first two.
func Initials(name string) string {
	var letters []rune
	f := strings.Fields(name)
	for _, w := range f {
		letters = append(letters, []rune(strings.ToUpper(w))[0])
	}
	if r := []rune(name); len(f) == 1 && len(r) > 1 {
		letters = append(letters, r[1])
	}
	return string(letters[:min(len(letters), lesson.MaxInitials)])
}
