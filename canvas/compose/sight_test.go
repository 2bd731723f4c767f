package compose

import (
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/pick"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// allSights are all ways of seeing.
func allSights() []Sight {
	var out []Sight
	for _, end := range court.Ends {
		for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
			for half := BothHalves; half <= FarHalf; half++ {
				out = append(out, Sight{Turn: turn, End: end, Half: half})
			}
		}
	}
	for b := TheReceiver; b <= BehindPlayer(game.Far2); b++ {
		out = append(out, Sight{Behind: b})
	}
	return out
}

func seen(t testing.TB, s Sight) Picture {
	return pictureOf(t, invented(), 0, canvas.Upright).Seen(s)
}

// The names on the command line are read back, and nothing else is.
func TestParseSight(t *testing.T) {
	for _, s := range Sights {
		if got, err := ParseSight(s.Name); err != nil || got != s.Sight {
			t.Errorf("ParseSight(%q) = %+v, %v, want %+v", s.Name, got, err, s.Sight)
		}
	}
	if _, err := ParseSight("sideways"); err == nil || !strings.Contains(err.Error(), "behind") {
		t.Errorf("ParseSight(sideways) = %v, want an error that lists what there is", err)
	}
	for text, want := range map[string]Behind{"receiver": TheReceiver, "servers": TheServers, "near1": BehindPlayer(game.Near1), "far2": BehindPlayer(game.Far2)} {
		if got, err := ParseBehind(text); err != nil || got != want {
			t.Errorf("ParseBehind(%q) = %v, %v, want %v", text, got, err, want)
		}
	}
	if _, err := ParseBehind("far3"); err == nil {
		t.Error("ParseBehind(far3) is read")
	}
}

// From the far end a picture is turned by half a turn, and the height strip stays
// on its side of the court with up to the right or up the page.
func TestFromTheFarEnd(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		near, far := seen(t, Sight{Turn: turn}).ForWindow(900, 700, 12, 1), seen(t, Sight{Turn: turn, End: court.Far}).ForWindow(900, 700, 12, 1)
		at := court.Pt(4, -22)
		if got, want := far.Court.ToPx(at.Mirror()), near.Court.ToPx(at); math.Hypot(got.X-want.X, got.Y-want.Y) > 1e-6 {
			t.Errorf("%v: from the far end %v is at %v, want %v", turn, at.Mirror(), got, want)
		}
		for _, l := range []Layout{near, far} {
			ground, up := l.Rise.ToPx(court.Pt(0, 0)), l.Rise.ToPx(court.Pt(8*l.up(), 0))
			if turn == canvas.Upright && up.X <= ground.X || turn == canvas.Lying && up.Y >= ground.Y {
				t.Errorf("%v: the strip's ground is at %v and 8 ft at %v", turn, ground, up)
			}
			if got := l.HeightAt(up); math.Abs(float64(got-8)) > 1e-9 {
				t.Errorf("%v: HeightAt(%v) = %v, want 8", turn, up, got)
			}
		}
	}
}

// Of half a court nothing is drawn outside its part of the picture, and that
// half is larger than in a picture of both.
func TestHalfACourt(t *testing.T) {
	for _, s := range allSights() {
		if s.Half == BothHalves {
			continue
		}
		p := seen(t, s)
		whole := seen(t, Sight{Turn: s.Turn, End: s.End}).ForExport(720, 1280)
		l := p.ForExport(720, 1280)
		if s.Turn == canvas.Lying && l.Court.PxPerFoot <= whole.Court.PxPerFoot {
			t.Errorf("%+v: %v px a foot, of both halves %v", s, l.Court.PxPerFoot, whole.Court.PxPerFoot)
		}
		clip := box{l.Clip.Min.X, l.Clip.Min.Y, l.Clip.Max.X, l.Clip.Max.Y}
		for id, b := range extentsOf(p.StaticIn(l)) {
			const slack = 1e-6
			if on := strings.HasPrefix(id, "court/"); on && (b.left < clip.left-slack || b.top < clip.top-slack || b.right > clip.right+slack || b.bottom > clip.bottom+slack) {
				t.Errorf("%+v: %s is at %+v, want inside %+v", s, id, b, clip)
			}
		}
		end := map[Half]court.End{NearHalf: court.Near, FarHalf: court.Far}[s.Half]
		if at := l.Court.ToPx(court.OwnPoint(end, 0, 24)); !(box{at.X, at.Y, at.X, at.Y}).overlaps(clip) {
			t.Errorf("%+v: the %v baseline is at %v, want inside %+v", s, end, at, clip)
		}
	}
}

// From behind a player everybody is in the picture from the lead to the end, the
// nearer the larger, and the player it is from behind of is the nearest.
func TestBehindShowsEverybody(t *testing.T) {
	for _, size := range sizes {
		for _, s := range allSights() {
			if s.Behind == Nobody {
				continue
			}
			p := seen(t, s)
			l := p.ForExport(size[0], size[1])
			for at := p.Rally.From; at <= p.Rally.To; at += 0.5 {
				drawn := extentsOf(p.MovingIn(l, at))
				for _, id := range game.Players {
					b, ok := drawn["court/"+PlayerShape(id)]
					if !ok || !b.within(size[0], size[1]) {
						t.Errorf("%dx%d %+v at %v s: %v is at %+v, want inside", size[0], size[1], s, at, id, b)
					}
				}
			}
			drawn := extentsOf(p.MovingIn(l, 0))
			who := p.behindWhom()
			for _, id := range game.Players {
				if a, b := drawn["court/"+PlayerShape(who)], drawn["court/"+PlayerShape(id)]; id.Team() != who.Team() && a.height() <= b.height() {
					t.Errorf("%dx%d %+v: %v is %v px high and %v, across the net, %v", size[0], size[1], s, who, a.height(), id, b.height())
				}
			}
		}
	}
}

// Whom a view is from behind of.
func TestBehindWhom(t *testing.T) {
	for b, want := range map[Behind]game.Player{TheReceiver: game.Far1, TheServers: game.Near1, BehindPlayer(game.Far2): game.Far2} {
		if got := seen(t, Sight{Behind: b}).behindWhom(); got != want {
			t.Errorf("behind %v is behind %v, want %v", b, got, want)
		}
	}
	serve := invented()
	serve.Plays[0].Shots = serve.Plays[0].Shots[:1]
	if got := pictureOf(t, serve, 0, canvas.Upright).Seen(Sight{Behind: TheReceiver}).behindWhom(); got != game.Far1 {
		t.Errorf("of a play without a return: behind %v, want far1, who stands farthest back", got)
	}
}

// order is the places of shapes in a panel's list.
func order(s *canvas.Scene) map[string]int {
	at := map[string]int{}
	for i, shape := range s.Panels[0].Shapes {
		at[shape.ID] = i
	}
	return at
}

// The net hides who is beyond it, and whoever is on this side hides the net. Seen
// from the other end it is the other way about.
func TestNearerHidesFarther(t *testing.T) {
	for b, own := range map[Behind]court.End{TheReceiver: court.Far, TheServers: court.Near} {
		p := seen(t, Sight{Behind: b})
		at := order(p.Moving(720, 720, 0))
		for _, id := range game.Players {
			if over := at[PlayerShape(id)] > at["net"]; over != (id.Team() == own) {
				t.Errorf("behind %v: %v is drawn over the net: %v", b, id, over)
			}
		}
	}
}

// A signal behind the back is seen by the partner at the baseline, hand and word,
// and is hidden from the opponents by the body.
func TestSignalBehindTheBack(t *testing.T) {
	own := seen(t, Sight{Behind: TheReceiver}).Moving(1280, 720, -0.5)
	at := order(own)
	if at["signal.1"] < at["player.far2"] || at["signal.1"] == 0 {
		t.Errorf("the signal is number %d in the list and its giver %d, want it over the giver", at["signal.1"], at["player.far2"])
	}
	if _, ok := at["signal.1.meaning"]; !ok {
		t.Error("the signal's meaning is not said")
	}
	if _, ok := at["signal.1.fingers"]; !ok {
		t.Error("the hand for a switch is not open")
	}
	at = order(seen(t, Sight{Behind: TheServers}).Moving(1280, 720, -0.5))
	if at["signal.1"] > at["player.far2"] {
		t.Error("the opponents see the signal")
	}
	if _, ok := at["signal.1.meaning"]; ok {
		t.Error("the opponents read the signal's meaning")
	}
}

// A closed fist is stay (common practice of the trade).
func TestClosedFist(t *testing.T) {
	l := invented()
	l.Plays[0].Cues[1].Meaning = lesson.Stay
	at := order(pictureOf(t, l, 0, canvas.Upright).Seen(Sight{Behind: TheReceiver}).Moving(1280, 720, -0.5))
	if _, ok := at["signal.1.fingers"]; ok || at["signal.1"] == 0 {
		t.Errorf("stay is drawn with fingers: %v, at %d", ok, at["signal.1"])
	}
}

// The ball is drawn at its height over its shadow.
func TestBallFlies(t *testing.T) {
	p := seen(t, Sight{Behind: TheReceiver})
	l := p.ForExport(1280, 720)
	const at = 0.6
	f := p.Rally.At(at)
	drawn := extentsOf(p.MovingIn(l, at))
	ball, shadow := drawn["court/ball"], drawn["court/shadow"]
	want := l.Court.VecToPx(canvas.Above(f.Ball.Ground(), f.Ball.Height().Feet()))
	if x, y := (ball.left+ball.right)/2, (ball.top+ball.bottom)/2; math.Abs(x-want.X) > 0.1 || math.Abs(y-want.Y) > 0.1 {
		t.Errorf("the ball is at %v, %v, want %v", x, y, want)
	}
	if ground := l.Court.ToPx(f.Ball.Ground()); shadow.bottom < ground.Y || shadow.top > ground.Y || ball.bottom >= shadow.top {
		t.Errorf("the shadow is at %+v, want round %v and below the ball %+v", shadow, ground, ball)
	}
}

// The net stands 34 in high at its middle and 36 in at the sidelines (USA
// Pickleball Official Rulebook 2026, 3.B.6, 3.B.7).
func TestNetStands(t *testing.T) {
	p := seen(t, Sight{Behind: TheServers})
	l := p.ForExport(1280, 720)
	net := extentsOf(p.MovingIn(l, 0))["court/net"]
	k := l.Court.PxPerFootAt(canvas.Vec{})
	ground := l.Court.ToPx(court.Point{})
	if got := (ground.Y - net.top) / k; math.Abs(got-3) > 1e-6 {
		t.Errorf("the net is %v ft high at the posts, want 3", got)
	}
	if got := (net.right - net.left) / k; math.Abs(got-22) > 1e-6 {
		t.Errorf("the net is %v ft wide, want 22 from post to post", got)
	}
	for _, s := range p.MovingIn(l, 0).Panels[0].Shapes {
		if s.ID == "net.tape" {
			if mid := s.Path[netSteps/2].P[0]; mid.X != 0 || math.Abs(float64(mid.Z)-34.0/12) > 1e-9 {
				t.Errorf("the net's middle is %+v, want 34 in high", mid)
			}
		}
	}
}

// A figure is taken hold of by its body.
func TestFiguresArePicked(t *testing.T) {
	p := seen(t, Sight{Behind: TheReceiver})
	l := p.ForWindow(1000, 700, 12, 1)
	s := p.MovingIn(l, 0)
	for _, id := range game.Players {
		chest := l.Court.VecToPx(canvas.Above(p.Rally.At(0).Players[id].Run.Place, 4))
		got, ok := pick.At(s, chest, 2, func(shape string) bool { _, is := PlayerOfShape(shape); return is })
		if !ok || got != PlayerShape(id) {
			t.Errorf("at the chest of %v: %q, %v", id, got, ok)
		}
	}
}

// The legs of one who stands stay still, those of one who runs step.
func TestLegsStep(t *testing.T) {
	p := seen(t, Sight{Behind: TheServers})
	l := p.ForExport(1280, 720)
	legs := func(id game.Player, at float64) box {
		left := extentsOf(p.MovingIn(l, units.Seconds(2.25*at)))["court/"+PlayerShape(id)+".leg+1"]
		body := extentsOf(p.MovingIn(l, units.Seconds(2.25*at)))["court/"+PlayerShape(id)]
		return box{left.left - body.left, left.top - body.top, left.right - body.left, left.bottom - body.top}
	}
	if a, b := legs(game.Far2, 0.1), legs(game.Far2, 0.3); math.Abs(a.width()-b.width()) > 1e-6 {
		t.Errorf("one who stands moves the legs: %+v, %+v", a, b)
	}
	if a, b := legs(game.Near2, 0.4), legs(game.Near2, 0.46); math.Abs(a.height()-b.height()) < 0.5 {
		t.Errorf("one who runs does not step: %+v, %+v", a, b)
	}
}

// An arrow and a measure lie on the ground: from straight above over everybody, from
// behind a player under the figures that stand on them.
func TestMarksOnTheGroundLieUnderFigures(t *testing.T) {
	l := invented()
	for _, k := range []lesson.MarkKind{lesson.ArrowMark, lesson.MeasureMark} {
		l.Plays[0].Marks = []lesson.Mark{{Kind: k, Span: lesson.Always(), Place: court.Pt(-4, 2), Tip: court.Pt(4, 20)}}
		for _, c := range []struct {
			sight Sight
			over  bool
		}{{Sight{}, true}, {Sight{Behind: TheReceiver}, false}} {
			layer := shapesOf(pictureOf(t, l, 0, canvas.Upright).Seen(c.sight).Moving(1280, 720, 0))["court/mark.0"].Layer
			if over := layer > canvas.Players; over != c.over || layer == canvas.Ground {
				t.Errorf("%v seen by %+v is in layer %d, want it over the players: %v", k, c.sight, layer, c.over)
			}
		}
	}
}
