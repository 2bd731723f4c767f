package lessontest

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
)

// Sample is a lesson of invented people in which every field says something
// other than its default. Each call builds a new one that tests may spoil.
func Sample() lesson.Lesson {
	return lesson.Lesson{
		Title:   "Sample: the left-hander in the middle",
		Notes:   "Invented people.\nFor tests only.",
		Scoring: lesson.Scoring{Format: game.SideOut, To: 15},
		Venue:   lesson.Venue{BehindBaseline: 9.5, BesideSideline: 6},
		Conditions: lesson.Conditions{
			Indoor: true, Altitude: 1609, Temperature: new(30.0), WindX: 1, WindY: -2, Restitution: 0.66, Friction: 0.5, Lift: 0.1,
		},
		Vocabulary: lesson.Vocabulary{lesson.Drop: {Intent: lesson.Apex(6), Arc: lesson.High, Spin: -200, Side: 50}},
		Teams: [2]lesson.Team{
			{Name: "Harbour Lane", Starter: 2, Signs: lesson.Signs{lesson.Switch, lesson.Stay, lesson.Fake}, Players: [2]lesson.Player{person("Ivo", "IV"), person("Mara", "MA")}},
			{Name: "Fernmoor", Starter: 1, Signs: lesson.Signs{lesson.Fake, lesson.Switch, lesson.Stay}, Players: [2]lesson.Player{person("Oskar", "OS"), person("Tilde", "TI")}},
		},
		Plays: []lesson.Play{SamplePlay()},
		Match: sampleMatch(),
		Logo:  SampleLogo(),
		Reels: []lesson.Reel{sampleReel()},
	}
}

func person(name, initials string) lesson.Player {
	pace := movement.DefaultPace()
	pace.TopSpeed = 5.25
	return lesson.Player{
		Name: name, Initials: initials, Hand: lesson.LeftHanded,
		Serving: lesson.WantRight, Receiving: lesson.WantLeft, Wheelchair: true, Pace: &pace,
	}
}

// SamplePlay is the play of Sample: a serve, a return and a third shot.
func SamplePlay() lesson.Play {
	bounce := lesson.Event{Shot: 1, Moment: lesson.Bounce}
	return lesson.Play{
		Title:     "Stack behind the serve",
		Notes:     "Slide after the serve.",
		Tags:      []string{"stack", "serve"},
		Situation: lesson.Situation{Call: game.Call{Serving: 4, Receiving: 7, Server: 2}, Serving: court.Far},
		Front:     new(game.Far1),
		Lead:      2.5,
		Shots: []lesson.Shot{
			{By: game.Far2, Kind: lesson.WideServe, Error: &lesson.AimError{Speed: 0.5, Angle: 1.5}, Aim: court.Pt(-4, -18), Intent: lesson.Speed(15.5), Arc: lesson.High, Spin: 300, Side: -120,
				From: &lesson.Place{Point: court.Pt(2, 23), Height: 2.6}, Airborne: true, Meet: lesson.Meet{How: lesson.Falling, Height: 2.5}},
			{By: game.Near1, Aim: court.Pt(3, 19), Intent: lesson.Apex(10)},
			{By: game.Far1, Aim: court.Pt(-2, -5), Intent: lesson.NetClear(1.25), Meet: lesson.Meet{How: lesson.OnVolley, Height: 3}},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(-5, -24), Facing: 15}, {At: lesson.At(bounce), Place: court.Pt(-5, -8), Facing: 350, Through: true}},
			{{Place: court.Pt(11, -7.5), Facing: 330}},
			{{Place: court.Pt(1, 22.5), Facing: 180}, {
				At: lesson.Anchor{Event: bounce, Offset: 0.25}, Place: court.Pt(-5, 22.5), Facing: 190,
				Via: new(court.Pt(-2, 26)), Leave: &lesson.Anchor{Event: lesson.ContactOf(1), Offset: -0.1},
			}},
			{{Place: court.Pt(8, 22.5), Facing: 180}},
		},
		Marks: []lesson.Mark{
			{Kind: lesson.ArrowMark, Span: sampleSpan(), Place: court.Pt(1, 22.5), Tip: court.Pt(-5, 22.5), Text: "slide"},
			{Span: sampleSpan(), Place: court.Pt(0, -25), Text: "forehands in the middle"},
		},
		Cues: []lesson.Cue{
			{Span: sampleSpan(), Text: "Move as soon as the ball has gone."},
			{Kind: lesson.Signal, Span: sampleSpan(), Text: "yes", Giver: game.Near2, Reader: game.Near1, Meaning: lesson.Switch},
		},
		Photo: new(SamplePhoto()),
	}
}

// sampleMatch begins in the middle of a game, at the sample's play.
func sampleMatch() lesson.Match {
	return lesson.Match{
		First: new(court.Far),
		From:  &lesson.Opening{Call: game.Call{Serving: 4, Receiving: 7, Server: 2}, Serving: court.Far, Server: game.Far2},
		Rallies: []lesson.MatchRally{
			{Winner: court.Far, Formations: [2]lesson.Formation{lesson.Switched, lesson.Stacked}, Return: lesson.ToMover, Play: 1},
			{Winner: court.Near, Formations: [2]lesson.Formation{lesson.Poached, lesson.Ordinary}, Return: lesson.Short, Play: 1},
		},
	}
}

func sampleSpan() lesson.Span {
	return lesson.Span{From: lesson.Anchor{Offset: -1}, To: lesson.Anchor{Event: lesson.ContactOf(2), Offset: 0.5}}
}

// Long is a lesson with n copies of the sample's play.
func Long(n int) lesson.Lesson {
	l := Sample()
	for len(l.Plays) < n {
		l.Plays = append(l.Plays, SamplePlay())
	}
	return l
}
