package rules

import "homeside/model/finding"

// bothBounce: the receiver lets the serve bounce and the serving side the return (10.A).
func bothBounce(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i, id := range [...]finding.ID{finding.ServeVolleyed, finding.ReturnVolleyed} {
		if i+1 < len(s.Strokes) && s.volleys(i+1) {
			all = append(all, s.ofStroke(id, i+1))
		}
	}
	return all
}

// oneBounce: the ball is struck before it bounces twice; a player in a wheelchair
// may wait for the second bounce (section 25, from memory).
func oneBounce(s *sheet) []finding.Finding {
	var all []finding.Finding
	for i := 1; i < len(s.Strokes) && s.live(i); i++ {
		if s.Strokes[i-1].Second != nil && !s.Player(s.Strokes[i].By).Wheelchair {
			all = append(all, s.ofStroke(finding.SecondBounce, i))
		}
	}
	return all
}

// volleys says whether shot i is a volley that is played.
func (s *sheet) volleys(i int) bool { return i > 0 && s.Strokes[i-1].Volleyed && s.live(i) }
