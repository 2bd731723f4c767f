package app

import (
	"testing"
	"time"

	"homeside/words"
)

func TestWhen(t *testing.T) {
	zone := time.FixedZone("here", 2*3600)
	now := time.Date(2026, 11, 25, 0, 30, 0, 0, zone)
	for _, c := range []struct {
		at     time.Time
		en, es string
	}{
		{now, "today at 00:30", "hoy a las 00:30"},
		{time.Date(2026, 11, 24, 21, 59, 0, 0, time.UTC), "yesterday at 23:59", "ayer a las 23:59"},
		{time.Date(2026, 11, 24, 22, 0, 0, 0, time.UTC), "today at 00:00", "hoy a las 00:00"},
		{time.Date(2026, 11, 23, 9, 5, 0, 0, zone), "on 23 November at 09:05", "el 23 de noviembre a las 09:05"},
		{time.Date(2025, 1, 2, 9, 5, 0, 0, zone), "on 2 January 2025 at 09:05", "el 2 de enero de 2025 a las 09:05"},
	} {
		if got := when(c.at, now); got != c.en {
			t.Errorf("when(%v) = %q, want %q", c.at, got, c.en)
		}
		words.Speak(words.Spanish)
		if got := when(c.at, now); got != c.es {
			t.Errorf("when(%v) = %q, want %q", c.at, got, c.es)
		}
		words.Speak(words.English)
	}
}
