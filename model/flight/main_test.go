package flight

import (
	"flag"
	"os"
	"testing"
)

// TestMain fixes the seed of the properties, so that every run is the same run;
// -rapid.seed on the command line still chooses another.
func TestMain(m *testing.M) {
	if err := flag.Set("rapid.seed", "1"); err != nil {
		panic(err)
	}
	os.Exit(m.Run())
}
