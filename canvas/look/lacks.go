package look

import "slices"

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
