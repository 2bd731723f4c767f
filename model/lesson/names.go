package lesson

import (
	"fmt"
	"strings"
)

// parse finds s in names and gives its index as a member of a closed set.
func parse[T ~uint8](what, s string, names []string) (T, error) {
	for i, n := range names {
		if n == s {
			return T(i), nil
		}
	}
	return 0, fmt.Errorf("%s %q: want %s", what, s, orList(names))
}

// orList is "a, b or c".
func orList(names []string) string {
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " or " + names[last]
}
