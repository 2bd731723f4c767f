package words

// spanishExport has what is said about exported pictures and clips.
var spanishExport = catalogue{
	"No font here has %s: pictures show empty boxes instead.":                   "Ninguna fuente disponible tiene %s: las imágenes muestran recuadros vacíos en su lugar.",
	"An export is under way. Closing cancels it, and nothing of it is written.": "Hay una exportación en marcha. Al cerrar se cancela y no se escribe nada de ella.",
	"Cancel the export and close":                                               "Cancelar la exportación y cerrar",
	"Go on exporting":                                                           "Seguir exportando",
}
