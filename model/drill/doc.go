// Package drill asks what partners have to know without thinking: what a signal means, which sign to give, who serves at a
// score and who stands where. It promises that the same seed asks the same questions, that every score it asks can be
// reached in a game, and that answers are judged by model/game.
package drill
