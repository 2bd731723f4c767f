package app

import (
	"time"

	"homeside/words"
)

// when is when something was, seen from now: "today at 17:45", "yesterday at
// 9:05", "on 3 November at 17:45", with the year if it is another. Both are
// taken in the zone of now.
func when(t, now time.Time) string {
	t = t.In(now.Location())
	clock := t.Format("15:04")
	day := func(t time.Time) time.Time { return time.Date(t.Year(), t.Month(), t.Day(), 12, 0, 0, 0, time.UTC) }
	switch days := int(day(now).Sub(day(t)).Hours() / 24); {
	case days == 0:
		return words.T("today at %s", clock)
	case days == 1:
		return words.T("yesterday at %s", clock)
	case t.Year() == now.Year():
		return words.T("on %d %s at %s", t.Day(), months()[t.Month()-1], clock)
	}
	return words.T("on %d %s %d at %s", t.Day(), months()[t.Month()-1], t.Year(), clock)
}

func months() [12]string {
	return [...]string{words.T("January"), words.T("February"), words.T("March"), words.T("April"), words.T("May"), words.T("June"), words.T("July"), words.T("August"), words.T("September"), words.T("October"),
		words.T("November"), words.T("December")}
}
