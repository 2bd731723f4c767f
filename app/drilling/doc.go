// Package drilling is two pages on which partners practise what they have to know without thinking: signals, given and
// read, and who serves and stands where at a score. It promises that questions and answers are those of model/drill, that
// a page can be worked by keys and by a clicker alone, and that what was asked before can be looked at again.
package drilling
