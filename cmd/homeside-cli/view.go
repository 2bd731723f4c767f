package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homeside/canvas/compose"
	"homeside/model/court"
)

// viewFlags are how the court is seen, as they are typed.
type viewFlags struct{ view, from, behind string }

func (f *viewFlags) add(fl *pflag.FlagSet) {
	names := make([]string, len(compose.Sights))
	for i, s := range compose.Sights {
		names[i] = s.Name
	}
	fl.StringVar(&f.view, "view", names[0], strings.Join(names, ", "))
	fl.StringVar(&f.from, "end", "near", "the team at the bottom of an upright court, at the left of a lying one: near or far")
	fl.StringVar(&f.behind, "behind", "receiver", "whom --view behind is from behind of: receiver, servers, near1, near2, far1 or far2")
}

// sight is what the flags mean together.
func (f viewFlags) sight(c *cobra.Command) (compose.Sight, error) {
	s, err := compose.ParseSight(f.view)
	if err != nil {
		return s, fmt.Errorf("--view %w", err)
	}
	switch f.from {
	case court.Near.String():
	case court.Far.String():
		s.End = court.Far
	default:
		return s, fmt.Errorf("--end %q: want near or far", f.from)
	}
	if s.Behind == compose.Nobody {
		if c.Flags().Changed("behind") {
			return s, fmt.Errorf("--behind is for --view behind")
		}
		return s, nil
	}
	if c.Flags().Changed("end") {
		return s, fmt.Errorf("--end: --view behind has its end from whom it is behind of")
	}
	if s.Behind, err = compose.ParseBehind(f.behind); err != nil {
		return s, fmt.Errorf("--behind %w", err)
	}
	return s, nil
}
