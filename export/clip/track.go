package clip

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"homeside/export"
)

// track writes what is heard of the clip into the folder that is removed with
// all in it, for ffmpeg to pack; the path is empty if nothing is heard.
func (f *film) track(ctx context.Context, folder string, r recipe) (string, error) {
	if f.o.Track == nil || r.sound == nil {
		return "", nil
	}
	path := filepath.Join(folder, "track.wav")
	if err := f.writeTrack(ctx, path); err != nil {
		return "", fmt.Errorf("write what is heard of the %s: %w", r.kind, err)
	}
	return path, nil
}

// addTrack packs a clip that is there with its track, if any, and is the path of
// what came of it. The pictures are taken as they are: read beside another file
// while they are made, raw frames would be handed from thread to thread and copied.
func addTrack(ctx context.Context, clip, track string, r recipe, wait patient) (string, error) {
	if track == "" {
		return clip, nil
	}
	path := filepath.Join(filepath.Dir(clip), "heard"+r.ext)
	args := append([]string{"-i", clip, "-i", track, "-map", "0:v", "-map", "1:a", "-c:v", "copy"}, r.sound...)
	p, err := startFFmpeg(ctx, wait, append(append(args, always...), path)...)
	if err != nil {
		return "", err
	}
	return path, p.finish()
}

func (f *film) writeTrack(ctx context.Context, path string) error {
	file, err := os.Create(path)
	if err != nil {
		return err
	}
	err = f.o.Track(export.Writer(ctx, file), f.times)
	if closing := file.Close(); err == nil {
		err = closing
	}
	return err
}
