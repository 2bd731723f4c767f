package words

import (
	"fmt"
	"strings"
)

// Lacks says which letters pictures cannot show, with their numbers in Unicode.
func Lacks(letters []rune) string {
	named := make([]string, len(letters))
	for i, r := range letters {
		named[i] = fmt.Sprintf("%c (U+%04X)", r, r)
	}
	return T("No font here has %s: pictures show empty boxes instead.", strings.Join(named, ", "))
}
