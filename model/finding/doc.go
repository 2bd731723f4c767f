// Package finding is what a check has found in a rally: which rule or advice,
// whom, where and when, and the figures to say it with, but no wording.
// It promises plain data and a closed list of IDs; package words says them.
package finding
