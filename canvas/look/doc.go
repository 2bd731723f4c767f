// Package look is the one table of colours, line weights, sizes and fonts that
// every picture is drawn with. It promises that marks differ by outline and
// pattern as well as by colour and stay readable in a greyscale print.
// Marks take their colours from the palette of Okabe and Ito (2008).
package look
