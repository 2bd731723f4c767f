package fixedseed

import (
	"flag"
	"fmt"

	_ "pgregory.net/rapid" // registers the flag
)

var _ = fix("1")

// fix sets the seed before the command line is read. It panics where the flag
// is gone: the tests would silently differ from run to run.
func fix(seed string) error {
	if err := flag.Set("rapid.seed", seed); err != nil {
		panic(fmt.Sprintf("fix the seed of the property tests: %v", err))
	}
	return nil
}
