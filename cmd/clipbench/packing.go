package main

import (
	"fmt"
	"os"
	"path/filepath"

	"homeside/canvas/look"
)

// packings are how ffmpeg packs frames into each kind of file, as an engineer
// would ask it to. The MP4 has our own settings.
var packings = []packing{
	{ext: ".avi", fps: 60, args: []string{"-c:v", "mjpeg", "-q:v", "2", "-pix_fmt", "yuvj420p"}},
	{ext: ".gif", fps: 50, palette: true},
	{ext: ".apng", fps: 60, args: []string{"-c:v", "apng", "-plays", "0", "-f", "apng"}},
	{ext: ".mp4", fps: 60, args: []string{"-c:v", "libx264", "-preset", "veryfast", "-crf", "18", "-pix_fmt", "yuv420p", "-movflags", "+faststart"}},
}

type packing struct {
	ext     string
	fps     int // of the fast clip
	palette bool
	args    []string
}

// passes are the commands, one after another, that pack frames from input into a
// file; a palette needs a pass of its own.
func (p packing) passes(input []string, folder, path string) [][]string {
	begin := append([]string{"ffmpeg", "-v", "error", "-y"}, input...)
	with := func(more ...string) []string { return append(append([]string{}, begin...), more...) }
	if !p.palette {
		return [][]string{append(with(p.args...), path)}
	}
	palette := filepath.Join(folder, "palette.png")
	return [][]string{
		with("-vf", "palettegen", palette),
		with("-i", palette, "-lavfi", "paletteuse", path),
	}
}

// raw are ffmpeg's arguments for frames without a format.
func raw(j job, from string) []string {
	return []string{"-f", "rawvideo", "-pix_fmt", "bgr0", "-video_size", fmt.Sprintf("%dx%d", j.width, j.height), "-framerate", fmt.Sprint(j.fps), "-i", from}
}

// drawer is the baseline program with what it is given.
func drawer(program, folder string, j job) ([]string, error) {
	path := filepath.Join(folder, fmt.Sprintf("%s-%d.list", j.scene, j.fps))
	f, err := os.Create(path)
	if err != nil {
		return nil, err
	}
	if err := list(f, j); err != nil {
		f.Close()
		return nil, err
	}
	if err := f.Close(); err != nil {
		return nil, err
	}
	command := []string{program, path}
	for font := look.Latin; font <= look.ArabicBold; font++ {
		ttf := filepath.Join(folder, fmt.Sprintf("%d.ttf", font))
		if err := os.WriteFile(ttf, font.TTF(), 0o600); err != nil {
			return nil, err
		}
		command = append(command, ttf)
	}
	return command, nil
}
