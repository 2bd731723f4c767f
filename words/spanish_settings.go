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
	"Large text":      "Letra grande", "In the window and on the court.": "En la ventana y en la cancha.",
	"Reduced motion": "Menos movimiento", "A play goes from event to event, nothing flashes.": "La jugada pasa de un momento al siguiente, nada parpadea.",
	"From the next start on.": "Desde el próximo inicio.",
}
