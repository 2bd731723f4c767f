package words

// spanishStrip has what the rally strip says.
var spanishStrip = catalogue{
	"before the serve": "antes del saque",
	"ball":             "pelota",
	"captions":         "rótulos",
	"signals":          "señales",
	"switch":           "cambiar",
	"fake":             "engaño",
	"stay":             "quedarse",
}
