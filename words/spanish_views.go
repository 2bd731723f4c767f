package words

// spanishViews has the ways of seeing the court.
var spanishViews = catalogue{
	"Upright court":                 "Cancha de pie",
	"Lying court":                   "Cancha acostada",
	"Near half":                     "Mitad cercana",
	"Far half":                      "Mitad lejana",
	"From behind the receiver":      "Desde detrás de quien recibe",
	"From behind the servers":       "Desde detrás de quien saca",
	"From behind the chosen player": "Desde detrás del jugador elegido",
	"Far team at the bottom":        "Equipo lejano abajo",

	"Present, full screen":      "Presentar al grupo",
	"There is no play to show.": "No hay ninguna jugada que mostrar.",
	"Homeside: presenting":      "Homeside: presentación",
	"Arrows: event · Space: run · 1 2 3: detail · C: two plays · V: view · draw, E: erase · H: hide this · Esc: leave": "Flechas: momento · Espacio: reproducir · 1 2 3: detalle · C: dos jugadas · V: vista · dibujar, E: borrar · H: ocultar esto · Esc: salir",
}
