package film

import (
	"strings"
	"testing"
)

// An upright picture has room for a caption of three short lines with what a freeze
// says below it; where lines are longer, three hold both.
func TestCaptionsLeaveRoomForAFreeze(t *testing.T) {
	texts := []string{"Only Tobin changes halves. Both stay behind the baseline until the return has bounced.", "Return by Marlo."}
	for size, want := range map[[2]int]int{{1080, 1920}: 4, {1080, 1350}: 4, {1920, 1080}: 3, {640, 480}: 3} {
		lines := captionLines(texts, Safe(size[0], size[1]), CaptionEm(size[0], size[1]))
		if said := strings.Join(lines, " "); said != strings.Join(texts, " ") || len(lines) > want {
			t.Errorf("%v: %d lines %q, want %d at most with all words", size, len(lines), lines, want)
		}
	}
}
