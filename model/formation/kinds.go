package formation

import "homeside/model/lesson"

// lookalike is the play that a kind is compared with for its tell.
var lookalike = map[Kind]Kind{
	lesson.Stacked:  lesson.Ordinary,
	lesson.Switched: lesson.Stayed,
	lesson.Stayed:   lesson.Switched,
	lesson.Poached:  lesson.Ordinary,
}
