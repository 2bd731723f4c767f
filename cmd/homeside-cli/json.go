package main

import (
	"encoding/json"
	"fmt"
	"io"
)

// printJSON writes v as one line of JSON with numbers in Go's shortest form.
func printJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		return fmt.Errorf("write the answer: %w", err)
	}
	return nil
}
