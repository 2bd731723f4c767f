package words

// Plays counts plays: "no plays", "1 play", "3 plays".
func Plays(n int) string {
	switch n {
	case 0:
		return T("no plays")
	case 1:
		return T("1 play")
	}
	return T("%d plays", n)
}
