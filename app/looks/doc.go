// Package looks is how the window looks: the toolkit's theme and the look of the
// pictures in it, both of one table of colours. It promises that all text and
// every mark of the keys stands out as WCAG asks, in the light and the dark look.
package looks
