package words

// cautions stand where runs are shown: one line in the window while nothing else
// is said, all of them in its Play menu. They start from the advice of the trade
// and from published injury figures: falls make up 63 % of emergency visits of
// players over 60 (Weiss 2021), most eye injuries are in players over 50 (JAMA
// Ophthalmology 2025); turning to run instead of backpedalling is common practice.
var cautions = []string{
	Text("Times are estimates, not instructions to sprint."),
	Text("Walk a play first, then speed it up."),
	Text("Where paths cross, agree who goes in front."),
	Text("Turn and run for a lob, never backpedal."),
	Text("Check the run-off for fences, benches and the next court; a ball rolling on court means stop."),
	Text("Wear eye protection made for racket sports."),
	Text("Your coach, your doctor and the venue's own rules come first."),
}

// Cautions are all cautions, a sentence each.
func Cautions() []string { return all(cautions...) }

// Caution is the one line that stands where there is room for one.
func Caution() string {
	return T("Times are estimates: walk it first. Your coach, doctor and venue decide.")
}
