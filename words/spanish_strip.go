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

	"shot %d": "el golpe %d",
	"the end": "el final",

	"the net crossing of %s": "el paso por la red de %s",
	"the bounce of %s":       "el bote de %s",
	"at %s":                  "en %s",
	"%s before %s":           "%s antes de %s",
	"%s after %s":            "%s después de %s",

	"%s comes down at %s":     "%s bota en %s",
	"%s starts %s (%s)":       "%s arranca %s (%s)",
	"%s's run starts %s (%s)": "El desplazamiento de %s empieza %s (%s)",
	"%s begins %s (%s)":       "%s empieza %s (%s)",
	"%s ends %s (%s)":         "%s termina %s (%s)",
	"%s arrives %s (%s)":      "%s llega %s (%s)",

	"change the time of %s":           "cambiar el tiempo de %s",
	"change when %s starts":           "cambiar cuándo arranca %s",
	"move the run of %s in time":      "mover en el tiempo el desplazamiento de %s",
	"change how long a text is shown": "cambiar cuánto se muestra un texto",
	"move a text in time":             "mover un texto en el tiempo",
	"change when %s arrives":          "cambiar cuándo llega %s",

	"The caption":      "El rótulo",
	"The signal of %s": "La señal de %s",
	"“%s”":             "«%s»",

	"%s is there to hit %s, so the ball says when. Drag the player on the court first to give a place of its own.": "%s está ahí para golpear %s, así que el momento lo marca la pelota. Arrastrar primero al jugador en la pista para darle un lugar propio.",
	"%s is not said by its time in the air. In the menu Play, choose “Say this shot by its time”.":                 "%s no se define por su tiempo en el aire. En el menú Jugada, elegir «Definir este golpe por su tiempo».",
}
