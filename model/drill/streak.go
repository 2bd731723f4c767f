package drill

// Streak counts answers. Its zero value has none.
type Streak struct {
	Asked int // answered
	Right int
	Run   int // right ones in a row up to now
	Best  int // the longest run
}

// With is the streak after one more answer.
func (s Streak) With(right bool) Streak {
	s.Asked++
	if !right {
		s.Run = 0
		return s
	}
	s.Right++
	s.Run++
	s.Best = max(s.Best, s.Run)
	return s
}
