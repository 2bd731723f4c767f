package words

// spanishLessons has what is said of lessons and their files.
var spanishLessons = catalogue{
	"Untitled lesson":    "Lección sin título",
	"New lesson":         "Lección nueva",
	"Player %s":          "Jugador %s",
	"Close this lesson?": "¿Cerrar esta lección?",
	"Close Homeside?":    "¿Cerrar Homeside?",
	"These lessons have changes that are in no file yet:": "Estas lecciones tienen cambios que aún no están en ningún archivo:",
	"Save":            "Guardar",
	"Do not save":     "No guardar",
	"Open a lesson":   "Abrir una lección",
	"Open":            "Abrir",
	"Save the lesson": "Guardar la lección",
	"Saved %s":        "Guardado: %s",
	"The lessons you had open are still here, unchanged.":                              "Las lecciones abiertas siguen aquí, sin cambios.",
	"Your lesson is still open here; save it under another name or in another folder.": "La lección sigue abierta aquí; puede guardarse con otro nombre o en otra carpeta.",
	"Close this lesson": "Cerrar esta lección",
	"Next lesson":       "Lección siguiente",
	"Previous lesson":   "Lección anterior",
}
