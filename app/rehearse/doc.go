// Package rehearse is a window that takes the whole screen, for partners on court: it shows one of its pages, chosen in a row
// at the top, and hands it the keys. Walk is the page on which a play is walked to a count. It promises that nobody walks
// before the cautions have been read, that everything is worked by keys, a phone clicker's among them, and that all but the
// beeps works without sound.
package rehearse
