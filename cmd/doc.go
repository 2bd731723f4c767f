// Package cmd only holds the programs below it and the test that keeps the
// arrows between the packages as DEVELOPERS.md draws them.
package cmd
