package formats

import (
	"slices"
	"sync"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/export"
	"homeside/model/units"
)

// noting is a source that notes the letters of its scenes that no font has.
type noting struct {
	export.Source
	mu    sync.Mutex // scenes are asked for by several goroutines
	lacks []rune
}

// Static implements export.Source.
func (n *noting) Static(width, height int) *canvas.Scene {
	return n.note(n.Source.Static(width, height))
}

// Moving implements export.Source.
func (n *noting) Moving(width, height int, t units.Seconds) *canvas.Scene {
	return n.note(n.Source.Moving(width, height, t))
}

func (n *noting) note(s *canvas.Scene) *canvas.Scene {
	n.add(look.LackingIn(s))
	return s
}

func (n *noting) add(letters []rune) {
	if len(letters) == 0 {
		return
	}
	n.mu.Lock()
	defer n.mu.Unlock()
	for _, r := range letters {
		if !slices.Contains(n.lacks, r) {
			n.lacks = append(n.lacks, r)
		}
	}
	slices.Sort(n.lacks)
}
