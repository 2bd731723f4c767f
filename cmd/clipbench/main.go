package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"strconv"

	"homeside/export/formats"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	var err error
	switch {
	case len(os.Args) == 6 && os.Args[1] == "write":
		err = write(ctx, os.Args[2], os.Args[3], os.Args[4], os.Args[5])
	case len(os.Args) >= 3:
		err = measure(ctx, os.Args[1], os.Args[2], os.Args[3:])
	default:
		err = fmt.Errorf("want the built homeside-cli, the built baseline and kinds such as .gif, or: write SCENE SECONDS FPS FILE")
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "clipbench:", err)
		os.Exit(1)
	}
}

// write is a process to be measured: it exports a scene that homeside-cli does
// not have by itself.
func write(ctx context.Context, scene, seconds, fps, path string) error {
	s, err := strconv.ParseFloat(seconds, 64)
	if err != nil {
		return fmt.Errorf("seconds: %w", err)
	}
	rate, err := strconv.Atoi(fps)
	if err != nil {
		return fmt.Errorf("fps: %w", err)
	}
	j, err := jobOf(scene, s, rate)
	if err != nil {
		return err
	}
	return formats.Save(ctx, path, j.source, j.options())
}
