package drilling

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"homeside/app/looks"
	"homeside/app/settings"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Letters of large text, in both languages, with long names, leave the page as
// wide as the smallest screen: what cannot be seen cannot be answered.
func TestPagesFitTheScreen(t *testing.T) {
	defer words.Speak(words.English)
	var l lesson.Lesson
	for _, id := range game.Players {
		l = l.WithPlayer(id, lesson.Player{Name: strings.Repeat("Maximiliana ", 4)})
	}
	for e := range l.Teams {
		l.Teams[e].Name = strings.Repeat("Lower Harbour ", 4)
	}
	for _, spoken := range words.Languages() {
		words.Speak(spoken)
		o, _ := opened(t, l)
		fyne.CurrentApp().Settings().SetTheme(looks.Of(settings.Settings{LargeText: true}))
		scores, reader, giver := NewScores(o), NewSignals(o), NewSignals(o)
		giver.form.role.SetSelectedIndex(int(drill.Giver))
		for _, s := range []*sheet{scores.sheet, reader.sheet, giver.sheet} {
			checkFits(t, spoken.Tag()+" form", s)
			for range 4 {
				s.step()
				checkFits(t, spoken.Tag()+" "+s.course.name(), s)
			}
		}
	}
}

func checkFits(t *testing.T, what string, s *sheet) {
	t.Helper()
	if least := s.Content().MinSize(); least.Width > 1280 || least.Height > 700 {
		t.Errorf("%s wants %v x %v, want at most 1280 x 700", what, least.Width, least.Height)
	}
}
