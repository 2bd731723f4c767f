package look

import (
	"slices"

	"homeside/canvas"
)

// Lacking are the letters of some texts that no font has, each once: pictures
// show them as empty boxes.
func Lacking(texts ...string) []rune {
	var all []rune
	for _, text := range texts {
		all = join(all, Set(text, false).Lacks)
	}
	return all
}

func join(all, more []rune) []rune {
	for _, r := range more {
		if !slices.Contains(all, r) {
			all = append(all, r)
		}
	}
	return all
}

// LackingIn are the letters of a scene that no font has, each once.
func LackingIn(s *canvas.Scene) []rune {
	var all []rune
	for _, p := range s.Panels {
		for _, shape := range p.Shapes {
			if t := shape.Text; t != nil {
				all = join(all, Set(t.Text, t.Bold).Lacks) // set as it is drawn, which is kept
			}
		}
	}
	return all
}
