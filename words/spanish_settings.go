package words

// spanishSettings has what the window's settings say.
var spanishSettings = catalogue{
	"Settings":        "Ajustes",
	"Settings…":       "Ajustes…",
	"Use":             "Usar",
	"Language":        "Idioma",
	"Look":            "Aspecto",
	"As the desktop":  "Como el escritorio",
	"Light":           "Claro",
	"Dark":            "Oscuro",
	"Measures":        "Medidas",
	"Feet and inches": "Pies y pulgadas",
	"Metres":          "Metros",
	"Large text, in the window and on the court":                       "Letra grande, en la ventana y en la cancha",
	"Reduced motion: a play goes from event to event, nothing flashes": "Menos movimiento: la jugada pasa de un momento al siguiente, nada parpadea",
	"From the next start on.":                                          "Desde el próximo inicio.",
}
