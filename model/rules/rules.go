package rules

import (
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// check is one thing to look at. Its number stays when others come or go.
type check struct {
	number int
	about  string
	find   func(*sheet) []finding.Finding
}

// checks are all checks, in the order of the play.
var checks = [...]check{
	{1, "the score is said", callSaid},
	{2, "the score can come up", callPossible},
	{3, "the right player serves from the right court", serverRight},
	{4, "the right player returns", receiverRight},
	{5, "the server's feet", serverFeet},
	{6, "the serve goes over the net and lands in the diagonal court", serveLands},
	{7, "the ball hits nobody", nobodyHit},
	{8, "serve and return bounce", bothBounce},
	{9, "the ball is struck before its second bounce", oneBounce},
	{10, "nobody volleys in the kitchen", volleyOutside},
	{11, "no momentum carries a volley into the kitchen", noMomentum},
	{12, "everybody stays on the own side of the net", ownSide},
	{13, "later shots go over the net and land in", shotsLand},
	{14, "every shot can be done as drawn", shotsPossible},
	{15, "everybody stays on the playing surface", onSurface},
	{16, "the serving side stays back until the return has bounced", serversBack},
	{17, "stacked partners", stacked},
}

// Check judges a rally of lesson l by all checks, the worst finding first and
// then the earliest. It reads of the lesson the scoring, who started and the venue.
func Check(r *rally.Rally, l lesson.Lesson) []finding.Finding {
	if r == nil || len(r.Strokes) == 0 {
		return nil
	}
	s := sheetOf(r, l)
	var all []finding.Finding
	for _, c := range checks {
		all = append(all, c.find(s)...)
	}
	finding.Sort(all)
	return all
}
