// Package pdf draws scenes on the pages of a PDF document, several on a page if need be, in points from its upper left corner.
// It promises paths, text that can be searched in embedded fonts of the letters used, and the same bytes for the same scenes;
// letters that the fonts lack are boxes, and it tells which.
package pdf
