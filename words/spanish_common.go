package words

// spanishCommon has what many parts of the window say.
var spanishCommon = catalogue{
	"Cancel": "Cancelar",
}
