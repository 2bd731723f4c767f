// Package film turns a solved reel into scenes: the takes as their cameras see
// them, what is written over them, cards, the logo. It promises that cameras move
// without a jump within a take, that words and logo stay in the safe part of the
// picture, and that captions can be read on a phone.
package film
