package words

// spanishViews has the ways of seeing the court.
var spanishViews = catalogue{
	"Upright court":                 "Pista de pie",
	"Lying court":                   "Pista acostada",
	"Near half":                     "Mitad cercana",
	"Far half":                      "Mitad lejana",
	"From behind the receiver":      "Desde detrás de quien recibe",
	"From behind the servers":       "Desde detrás de la pareja que saca",
	"From behind the chosen player": "Desde detrás del jugador elegido",
	"Far team at the bottom":        "Equipo lejano abajo",
}
