package page

import (
	"homeside/model/drill"
	"homeside/model/lesson"
	"homeside/words"
)

// texts are what the page's script says, by name.
type texts map[string]string

func said() texts {
	return texts{
		"play":     words.T("Play"),
		"pause":    words.T("Pause"),
		"back":     words.T("Event before"),
		"next":     words.T("Next event"),
		"moment":   words.T("Moment of the rally"),
		"speed":    words.T("Speed"),
		"walk":     words.T("Walk"),
		"half":     words.T("Half"),
		"match":    words.T("Match"),
		"follow":   words.T("Follow"),
		"all":      words.T("Whole court"),
		"turn":     words.T("See it from the other end"),
		"count":    words.T("Count in"),
		"beeps":    words.T("Beeps"),
		"repeat":   words.T("Repeat"),
		"plays":    words.T("Plays"),
		"captions": words.T("Captions and events"),
		"seconds":  words.T("s"),
		"drill":    words.T("Signal drill"),
		"drillHow": words.T("A sign is shown just before the serve. Answer at once: stay or switch. Unsure means stay."),
		"start":    words.T("Start"),
		"stop":     words.T("Stop"),
		"ready":    words.T("Ready …"),
		"stay":     words.MeaningName(lesson.Stay),
		"switch":   words.MeaningName(lesson.Switch),
		"fake":     words.MeaningName(lesson.Fake),
		"right":    words.T("Right."),
		"wrong":    words.T("It meant:"),
		"streak":   words.T("In a row"),
		"best":     words.T("Best"),
		"meaning":  words.T("What your signs mean"),
		"fist":     words.SignName(drill.Fist),
		"open":     words.SignName(drill.OpenHand),
		"two":      words.SignName(drill.TwoFingers),
		"unclear":  words.SignName(drill.Unclear),
		"cautions": words.T("Before you run it"),
		"print":    words.T("Print a storyboard"),
		"noscript": words.T("This page needs its own script to move. The drawing shows the moment before the serve."),
		"caution":  words.Caution(),
	}
}
