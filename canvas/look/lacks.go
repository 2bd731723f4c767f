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
		for _, r := range Set(text, false).Lacks {
			if !slices.Contains(all, r) {
				all = append(all, r)
			}
		}
	}
	return all
}

// LackingIn are the letters of a scene that no font has, each once.
func LackingIn(s *canvas.Scene) []rune {
	var texts []string
	for _, p := range s.Panels {
		for _, shape := range p.Shapes {
			if shape.Text != nil {
				texts = append(texts, shape.Text.Text)
			}
		}
	}
	return Lacking(texts...)
}
