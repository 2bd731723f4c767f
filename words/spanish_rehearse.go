package words

// spanishRehearse has the window for partners on court.
var spanishRehearse = catalogue{
	"Rehearse on court, full screen": "Ensayar a toda pantalla",
	"Homeside: rehearsing":           "Homeside: ensayo",
	"Walk the play":                  "Caminar la jugada",

	"We have read this (Enter, Page Down)":                                               "Lo hemos leído (Intro, Av Pág)",
	"Paths cross here: %s and %s, %s apart, neither in front. Agree who goes in front!":  "Aquí se cruzan los caminos: %s y %s, a %s, nadie por delante. ¡Hay que acordar quién va por delante!",
	"Paths cross here: %s in front of %s, %s apart. Agree who goes in front!":            "Aquí se cruzan los caminos: %s por delante de %s, a %s. ¡Hay que acordar quién va por delante!",
	"Paths cross at %s: %s and %s, %s apart, neither in front. Agree who goes in front!": "Los caminos se cruzan a los %s: %s y %s, a %s, nadie por delante. ¡Hay que acordar quién va por delante!",
	"Paths cross at %s: %s in front of %s, %s apart. Agree who goes in front!":           "Los caminos se cruzan a los %s: %s por delante de %s, a %s. ¡Hay que acordar quién va por delante!",

	"Go on":                              "Seguir",
	"No count-in":                        "Sin cuenta previa",
	"Count in to %d":                     "Contar hasta %d",
	"Without end":                        "Sin fin",
	"Once":                               "Una vez",
	"%d rounds":                          "%d rondas",
	"No rest":                            "Sin descanso",
	"Rest %d s":                          "Descanso de %d s",
	"From behind the pair":               "Desde detrás de la pareja",
	"The whole court from above":         "Toda la cancha desde arriba",
	"The pair's half from above":         "La mitad de la pareja desde arriba",
	"Everybody in place?":                "¿Todos en su sitio?",
	"Space or Page Down: start":          "Espacio o Av Pág: empezar",
	"Starts in %d s. Page Down: at once": "Empieza en %d s. Av Pág: ya",
	"Rest":                               "Descanso",
	"Page Down: on at once":              "Av Pág: seguir ya",
	"All rounds are done.":               "Todas las rondas están hechas.",
	"Space or Page Down: once more":      "Espacio o Av Pág: otra vez",
	"Round %d of %d":                     "Ronda %d de %d",
	"paused":                             "en pausa",
	"No beeps: install pw-play, paplay or aplay (on Debian the package alsa-utils) to hear them. All else works.":                                                             "Sin pitidos: para oírlos, instalar pw-play, paplay o aplay (en Debian, el paquete alsa-utils). Todo lo demás funciona.",
	"No beeps are heard here; all else works. (%s)":                                                                                                                           "Aquí no se oyen pitidos; todo lo demás funciona. (%s)",
	"Space: start, pause · arrows or a clicker's Page Up, Page Down: event by event · Home: from the start · V: view · S: speed · M: beeps · Tab: the row above · Esc: leave": "Espacio: empezar, pausa · flechas o Re Pág y Av Pág de un mando: momento a momento · Inicio: desde el principio · V: vista · S: velocidad · M: pitidos · Tab: la fila de arriba · Esc: salir",
}
