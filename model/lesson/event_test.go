package lesson

import "testing"

func TestEventNames(t *testing.T) {
	for _, c := range []struct {
		e    Event
		want string
	}{
		{Event{}, "serve.contact"}, {Event{1, Net}, "return.net"}, {Event{2, Bounce}, "third.bounce"},
		{Event{4, Contact}, "fifth.contact"}, {Event{5, Contact}, "shot6.contact"}, {Event{59, Net}, "shot60.net"}, {TheEnd, "end"},
	} {
		if got := c.e.String(); got != c.want {
			t.Errorf("%#v.String() = %q, want %q", c.e, got, c.want)
		}
		if got, err := ParseEvent(c.want); err != nil || got != c.e {
			t.Errorf("ParseEvent(%q) = %v, %v, want %v", c.want, got, err, c.e)
		}
	}
}

func TestParseEventRefuses(t *testing.T) {
	for _, s := range []string{"", "serve", "serve.end", "Serve.contact", "shot5.contact", "shot06.net", "shot61.net", "shot.net", "third.", ".net", "end.net"} {
		if got, err := ParseEvent(s); err == nil {
			t.Errorf("ParseEvent(%q) = %v, want an error", s, got)
		}
	}
}

// Every member of every closed set goes to its name and back.
func TestNamesThereAndBack(t *testing.T) {
	both(t, shotKindNames[:], ShotKind.String, ParseShotKind)
	both(t, handNames[:], Hand.String, ParseHand)
	both(t, wantNames[:], Want.String, ParseWant)
	both(t, arcNames[:], Arc.String, ParseArc)
	both(t, meetNames[:], MeetHow.String, ParseMeet)
	both(t, cueNames[:], CueKind.String, ParseCue)
	both(t, meaningNames[:], Meaning.String, ParseMeaning)
	both(t, markNames[:], MarkKind.String, ParseMark)
	both(t, formationNames[:], Formation.String, ParseFormation)
	both(t, returnNames[:], ReturnTo.String, ParseReturnTo)
}

func both[T ~uint8](t *testing.T, names []string, name func(T) string, parse func(string) (T, error)) {
	t.Helper()
	for i, n := range names {
		if got := name(T(i)); got != n {
			t.Errorf("%T(%d).String() = %q, want %q", T(0), i, got, n)
		}
		if got, err := parse(n); err != nil || got != T(i) {
			t.Errorf("parse(%q) = %v, %v, want %d", n, got, err, i)
		}
	}
	if got, err := parse("nobody's word"); err == nil {
		t.Errorf("parse of an unknown %T = %v, want an error", T(0), got)
	}
}
