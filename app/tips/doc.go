// Package tips has buttons that say what they do, and why they cannot where they
// are off: in a tip beside the pointer, and in the status line for pointer and
// keys alike.
package tips
