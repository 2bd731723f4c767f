// Package advice says what a play asks of the legs: who is late and what it
// would take, who crosses in front of whom, and what return buys the time to run.
// It promises findings and charts as plain data, in the words of package words;
// times are estimates, not instructions to sprint. That runs stay on the playing
// surface is package rules' check.
package advice
