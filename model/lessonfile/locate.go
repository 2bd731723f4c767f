package lessonfile

import (
	"bytes"
	"strconv"

	"github.com/go-json-experiment/json/jsontext"
)

// lineAt is the line of a byte of the file, counted from 1.
func lineAt(data []byte, offset int) int {
	offset = min(max(offset, 0), len(data))
	return 1 + bytes.Count(data[:offset], []byte("\n"))
}

// lineOf is the line of the member that a pointer names, or of the innermost
// one around it that the file has.
func lineOf(data []byte, at jsontext.Pointer) int {
	d := jsontext.NewDecoder(bytes.NewBuffer(data), jsontext.AllowDuplicateNames(true))
	found := next(data, d)
	for token := range at.Tokens() {
		start, ok := enter(data, d, token)
		if !ok {
			break
		}
		found = start
	}
	return lineAt(data, found)
}

// enter opens the list or object that comes next and stops before the value of
// the member called name. It returns where that member starts in the file.
func enter(data []byte, d *jsontext.Decoder, name string) (start int, ok bool) {
	open, err := d.ReadToken()
	if err != nil || (open.Kind() != '{' && open.Kind() != '[') {
		return 0, false
	}
	for i := 0; ; i++ {
		if k := d.PeekKind(); k == ']' || k == '}' {
			return 0, false
		}
		start = next(data, d)
		this := strconv.Itoa(i)
		if open.Kind() == '{' {
			if this, err = readName(d); err != nil {
				return 0, false
			}
		}
		if this == name {
			return start, true
		}
		if d.SkipValue() != nil {
			return 0, false
		}
	}
}

func readName(d *jsontext.Decoder) (string, error) {
	t, err := d.ReadToken()
	if err != nil {
		return "", err
	}
	return t.String(), nil
}

// next is where the decoder's next token starts in the file.
func next(data []byte, d *jsontext.Decoder) int {
	at := int(d.InputOffset())
	return len(data) - len(bytes.TrimLeft(data[at:], " \t\r\n,:"))
}
