package lesson

// Clip is what was copied out of a play, to be pasted into another: whole plays,
// or keyframes and marks of one. Anchors stand as they stood there.
type Clip struct {
	Plays  []Play
	Tracks [4][]Keyframe // by game.Player
	Marks  []Mark
}

// Empty says whether there is nothing in it.
func (c Clip) Empty() bool {
	n := len(c.Plays) + len(c.Marks)
	for _, t := range c.Tracks {
		n += len(t)
	}
	return n == 0
}
