package words

// spanishReel is what reels and the export page say.
var spanishReel = catalogue{}
