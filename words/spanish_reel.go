package words

// spanishReel is what reels and the export page say.
var spanishReel = catalogue{
	"No time for: %s.":         "No hay tiempo para: %s.",
	"the title":                "el título",
	"the signal from near":     "la seña de cerca",
	"a slow pass":              "una pasada lenta",
	"some freezes":             "algunas pausas",
	"it ends before it begins": "termina antes de empezar",
	"its play is not there":    "falta su jugada",
	"take %d: %s":              "toma %d: %s",
	"Left out: %s.":            "Se omite: %s.",
}
