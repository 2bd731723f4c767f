package words

import "strings"

// DroppedWaits says of files that were dropped under a dialog when they are taken.
func DroppedWaits(names []string) string {
	return T("Dropped: %s. Taken when the dialog is closed.", strings.Join(names, ", "))
}
