package words

// spanishExport has what is said about exported pictures and clips.
var spanishExport = catalogue{
	"No font here has %s: pictures show empty boxes instead.":                   "Ninguna fuente disponible tiene %s: las imágenes muestran recuadros vacíos en su lugar.",
	"An export is under way. Closing cancels it, and nothing of it is written.": "Hay una exportación en marcha. Al cerrar se cancela y no se escribe nada de ella.",
	"Cancel the export and close":                                               "Cancelar la exportación y cerrar",
	"Go on exporting":                                                           "Seguir exportando",
	"An export is under way; it can be cancelled.":                              "Hay una exportación en marcha; se puede cancelar.",
	"There is nothing to export: choose what on the left.":                      "No hay nada que exportar: elegir qué a la izquierda.",
}
