package session

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
)

// ErrPercent says that a text is no chance.
var ErrPercent = errors.New("want a number from 0 to 100, in percent")

// ParsePercent reads a chance that is typed in percent, with or without its
// sign; it is in [0, 1].
func ParsePercent(text string) (float64, error) {
	typed := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "%"))
	v, err := strconv.ParseFloat(strings.ReplaceAll(typed, ",", "."), 64)
	if err != nil || !(v >= 0 && v <= 100) { // also false for NaN
		return 0, fmt.Errorf("%q: %w", shortText(text), ErrPercent)
	}
	return v / 100, nil
}

// shortText keeps an error to one line whatever was typed.
func shortText(s string) string {
	const most = 20
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "..."
	}
	return s
}
