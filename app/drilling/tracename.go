package drilling

import (
	"fmt"

	"homeside/model/drill"
)

// traceName is a question for a trace: "3 open hand switch right run=2 right=2 of 3".
func traceName(at int, what string, o outcome, s drill.Streak) string {
	return fmt.Sprintf("%d %s %s run=%d best=%d right=%d of %d", at+1, what, outcomeNames[o], s.Run, s.Best, s.Right, s.Asked)
}
