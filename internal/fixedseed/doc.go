// Package fixedseed makes property tests draw the same values on every run. A
// test package imports it for that alone; -rapid.seed on the command line still
// chooses another seed.
package fixedseed
