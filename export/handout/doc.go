// Package handout puts a lesson on paper: storyboards, cone sheets, match cards, the return advisor's chart and lesson plans, as PDF.
// It promises exact paper sizes, words of 9 points and more, the cautions at the foot of every page, the same bytes for the same lesson,
// and that whatever had to be shortened or has no letters in the fonts is told in the Result.
package handout
