// Package reel solves a lesson's reel: which moment of which play every moment of
// the clip shows, how it is filmed and what is written over it, and back from a
// play's time to the clip's. It makes reels that last as long as is wanted (Fit).
// It promises an answer for every sound lesson: what cannot be shown is listed.
package reel
