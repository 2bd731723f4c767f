package drilling

// turns are the questions asked so far, the last of them the present one, and
// which of them is looked at.
type turns[T any] struct {
	all []T
	at  int
}

// add asks a question.
func (t *turns[T]) add(q T) {
	t.all = append(t.all, q)
	t.at = len(t.all) - 1
}

// now is the question looked at.
func (t *turns[T]) now() *T { return &t.all[t.at] }

// last says whether the present question is looked at.
func (t *turns[T]) last() bool { return t.at == len(t.all)-1 }

// first says whether there is no question before.
func (t *turns[T]) first() bool { return t.at == 0 }

// back looks at the question before; false at the first.
func (t *turns[T]) back() bool {
	if t.first() {
		return false
	}
	t.at--
	return true
}

// forward looks at the question after; false at the last.
func (t *turns[T]) forward() bool {
	if t.last() {
		return false
	}
	t.at++
	return true
}

// outcome is what has come of a question.
type outcome uint8

// The outcomes.
const (
	asked outcome = iota
	shown         // the answer is shown, and nobody has said whether it was known
	right
	wrong
)

// judged says whether it counts.
func (o outcome) judged() bool { return o >= right }

func outcomeOf(yes bool) outcome {
	if yes {
		return right
	}
	return wrong
}
