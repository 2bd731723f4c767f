package lessonfile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"reflect"
	"strings"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// explain tells an error of the JSON library in words, with its place.
func explain(data []byte, err error) *Error {
	var syntax *jsontext.SyntacticError
	if errors.As(err, &syntax) {
		return &Error{lineAt(data, int(syntax.ByteOffset)), pathOf(syntax.JSONPointer), explainSyntax(data, syntax)}
	}
	var meaning *json.SemanticError
	if errors.As(err, &meaning) {
		return &Error{lineOf(data, meaning.JSONPointer), pathOf(meaning.JSONPointer), explainMeaning(meaning)}
	}
	return &Error{lineAt(data, 0), "", err}
}

// errEnds is a file that stops in the middle.
var errEnds = fmt.Errorf("the file ends too early: %w", io.ErrUnexpectedEOF)

func explainSyntax(data []byte, e *jsontext.SyntacticError) error {
	name := fmt.Sprintf("%q", shorten(e.JSONPointer.LastToken()))
	switch rest := data[min(int(e.ByteOffset), len(data)):]; {
	case errors.Is(e.Err, io.ErrUnexpectedEOF):
		return errEnds
	case errors.Is(e.Err, jsontext.ErrDuplicateName):
		return fmt.Errorf("%s stands here twice", name)
	case notANumber(rest):
		return errors.New("want an ordinary number (NaN and Infinity are none)")
	case strayComma(rest):
		return errors.New("a comma too many: no comma before a closing bracket")
	}
	return fmt.Errorf("not JSON: %w", e.Err)
}

func notANumber(rest []byte) bool {
	word := strings.ToLower(string(rest[:min(len(rest), len("infinity"))]))
	return strings.HasPrefix(word, "nan") || strings.HasPrefix(word, "inf")
}

func strayComma(rest []byte) bool {
	after, ok := bytes.CutPrefix(rest, []byte(","))
	after = bytes.TrimLeft(after, " \t\r\n")
	return ok && len(after) > 0 && (after[0] == '}' || after[0] == ']')
}

func explainMeaning(e *json.SemanticError) error {
	switch {
	case errors.Is(e.Err, json.ErrUnknownName):
		return unknownName(e.JSONPointer.LastToken(), namesOf(e.GoType))
	case e.Err != nil && e.JSONKind == jsontext.KindInvalid: // our own list bounds
		return e.Err
	case e.GoType == nil:
		return errors.New("unexpected " + kindWord(e.JSONKind))
	case e.JSONKind == '0' && e.JSONValue != nil:
		return fmt.Errorf("%s: want %s of ordinary size", shorten(string(e.JSONValue)), goWord(e.GoType))
	}
	return fmt.Errorf("found %s, want %s", kindWord(e.JSONKind), goWord(e.GoType))
}

// unknownName refuses a name and says the right one where only its case is wrong.
func unknownName(name string, known []string) error {
	for _, k := range known {
		if strings.EqualFold(k, name) {
			return fmt.Errorf("names are lower-case: write %q", k)
		}
	}
	return fmt.Errorf("no such name here: want one of %s", strings.Join(known, ", "))
}

// namesOf lists the names that an object of the file may have.
func namesOf(t reflect.Type) (names []string) {
	if t == nil || t.Kind() != reflect.Struct {
		return nil
	}
	for f := range t.Fields() {
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if f.Anonymous {
			names = append(names, namesOf(f.Type)...)
			continue
		}
		names = append(names, name)
	}
	return names
}

func kindWord(k jsontext.Kind) string {
	switch k {
	case '0':
		return "a number"
	case '"':
		return "a text"
	case '{':
		return "an object in { }"
	case '[':
		return "a list in [ ]"
	case 't', 'f':
		return "true or false"
	}
	return "nothing (null)"
}

func goWord(t reflect.Type) string {
	switch t.Kind() {
	case reflect.Float64:
		return "a number"
	case reflect.Int:
		return "a whole number"
	case reflect.String:
		return `a text in " "`
	case reflect.Bool:
		return "true or false"
	case reflect.Slice:
		return "a list in [ ]"
	case reflect.Pointer:
		return goWord(t.Elem())
	}
	return "an object in { }"
}
