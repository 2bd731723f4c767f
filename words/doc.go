// Package words is what Homeside says of a play, for the window, the exports and
// the command line, in the language and the measures chosen for the process. It
// promises that every text it is given by T, Text or Name, and every kind of
// finding, has its Spanish with the same figures: tests read the sources.
package words
