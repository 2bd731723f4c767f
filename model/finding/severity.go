package finding

// Severity is how much a finding matters. The worst is the least.
type Severity uint8

// The severities.
const (
	Fault   Severity = iota // against the rules
	Late                    // a player who is not there in time
	Caution                 // something that may hurt or cannot be done as drawn
	Advice                  // worth knowing
)

// Severities lists them, the worst first.
var Severities = [4]Severity{Fault, Late, Caution, Advice}

var severityNames = [4]string{"fault", "late", "caution", "advice"}

// String is "fault", "late", "caution" or "advice".
func (s Severity) String() string { return severityNames[s&3] }
