package exporting

import (
	"slices"

	"homeside/words"
)

// Preset is a choice by purpose.
type Preset struct {
	Name, About string
	key         string // of the output
	without     string // of the output on a machine without ffmpeg; empty for none
	size        string
	rate        int
	ground      string
}

// Presets are the purposes offered.
var Presets = []Preset{
	{words.Text("Phone feed, upright"), words.Text("MP4, 1080 x 1920"), ".mp4", ".gif", "1080x1920", 30, "paper"},
	{words.Text("Phone feed, square"), words.Text("MP4, 1080 x 1080"), ".mp4", ".gif", "1080x1080", 30, "paper"},
	{words.Text("Video, wide"), words.Text("MP4, 1920 x 1080"), ".mp4", ".avi", "1920x1080", 30, "paper"},
	{words.Text("Overlay for an edit"), words.Text("transparent, 1920 x 1080"), ".mov", ".apng", "1920x1080", 30, "clear"},
	{words.Text("Message"), words.Text("a small GIF that plays by itself"), ".gif", "", "480x854", 15, "paper"},
	{words.Text("Still for a handout"), words.Text("PDF, sharp at any size"), ".pdf", "", "1654x2339", 25, "paper"},
	{words.Text("Picture"), words.Text("PNG, 1080 x 1920"), ".png", "", "1080x1920", 25, "paper"},
	{words.Text("Captions"), words.Text("WebVTT beside a clip"), ".vtt", "", "1080x1920", 25, "paper"},
	{words.Text("Voice-over script"), words.Text("what to say, with times"), ".txt", "", "1080x1920", 25, "paper"},
}

// choice is the preset as a choice, with another output where this machine lacks
// what its own needs. What can be heard is.
func (p Preset) choice(outputs []Output) Choice {
	c := Choice{Output: find(outputs, p.output(outputs)), Beeps: true}
	c.Size = max(slices.IndexFunc(Sizes, func(s Size) bool { return sizeKey(s) == p.size }), 0)
	c.Rate = max(slices.Index(Rates, p.rate), 0)
	c.Ground = max(slices.Index(Grounds, p.ground), 0)
	return c
}

// output is the key of the preset's output, or of another where this machine lacks
// what its own needs.
func (p Preset) output(outputs []Output) string {
	if o := outputs[find(outputs, p.key)]; p.without != "" && o.Needs != nil && o.Needs() != nil {
		return p.without
	}
	return p.key
}

// about says what the preset gives on this machine.
func (p Preset) about(outputs []Output) string {
	if key := p.output(outputs); key != p.key {
		return words.T("%s: there is no ffmpeg", outputs[find(outputs, key)].Name)
	}
	return words.Said(p.About)
}

// find is the place of the output of a key.
func find(outputs []Output, key string) int {
	return max(slices.IndexFunc(outputs, func(o Output) bool { return o.Key == key }), 0)
}
