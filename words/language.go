package words

// Language is a language that sentences come in.
type Language uint8

// The languages. A new one is a constant here and a column in each table.
const (
	English Language = iota
	languages
)
