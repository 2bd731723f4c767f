package game

import (
	"fmt"
	"strconv"
	"strings"
)

// MaxScore is the highest score that is read or played: far past any game, and
// small enough that no sum of scores overflows.
const MaxScore = 999

// Call is the score as the server calls it, the serving team's points first.
// In side-out scoring the server number follows (4-7-2); in rally scoring the
// call has two numbers and Server is 0.
type Call struct{ Serving, Receiving, Server int }

// StartCall is the call of a game's first serve: 0-0-2 in side-out scoring
// (USA Pickleball Official Rulebook 2026, 6.B.2), 0-0 in rally scoring.
func StartCall(f Format) Call {
	if f.Rally() {
		return Call{}
	}
	return Call{Server: 2}
}

// String is "4-7-2", or "4-7" without a server number.
func (c Call) String() string {
	s := strconv.Itoa(c.Serving) + "-" + strconv.Itoa(c.Receiving)
	if c.Server != 0 {
		s += "-" + strconv.Itoa(c.Server)
	}
	return s
}

// ParseCall reads a call of two or three numbers as String writes it. Whether
// the call can come up in a game is for Call.Check to say.
func ParseCall(s string) (Call, error) {
	parts := strings.Split(s, "-")
	if len(parts) != 2 && len(parts) != 3 {
		return Call{}, fmt.Errorf("call %q: want two scores and in side-out scoring the server, like 4-7-2", s)
	}
	var n [3]int
	for i, p := range parts {
		v, err := parseNumber(p)
		if err != nil {
			return Call{}, fmt.Errorf("call %q: %w", s, err)
		}
		n[i] = v
	}
	if len(parts) == 3 && n[2] != 1 && n[2] != 2 {
		return Call{}, fmt.Errorf("call %q: the server is 1 or 2, not %d", s, n[2])
	}
	return Call{Serving: n[0], Receiving: n[1], Server: n[2]}, nil
}

// parseNumber reads a score of plain digits, without a sign.
func parseNumber(s string) (int, error) {
	if len(s) == 0 || strings.Trim(s, "0123456789") != "" {
		return 0, fmt.Errorf("%q is not a score: want digits, like 4-7-2", s)
	}
	v, err := strconv.Atoi(s)
	if err != nil || v > MaxScore {
		return 0, fmt.Errorf("no score is higher than %d", MaxScore)
	}
	return v, nil
}
