package words

// spanishExport has what is said about exported pictures and clips.
var spanishExport = catalogue{
	"No font here has %s: pictures show empty boxes instead.": "Ninguna fuente disponible tiene %s: las imágenes muestran recuadros vacíos en su lugar.",
}
