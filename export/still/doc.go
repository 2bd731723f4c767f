// Package still writes one moment of a play as a picture. It sees scenes only.
// It promises the same bytes for the same scene, pixels that are those of the
// screen, and an end as soon as the context is cancelled.
package still
