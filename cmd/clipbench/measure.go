package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"homeside/assets"
)

// bench is what all measurements share.
type bench struct {
	ctx           context.Context
	cli, baseline string // programs
	self          string
	only          endings
	folder        string // for all that is written
	lesson        string
}

// endings are kinds of clips; none means all.
type endings []string

func (e endings) has(ext string) bool { return len(e) == 0 || slices.Contains(e, ext) }

// measure prints all tables, of some kinds of clips if some are given.
func measure(ctx context.Context, cli, baseline string, only endings) error {
	folder, err := os.MkdirTemp("", "clipbench-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	self, err := os.Executable()
	if err != nil {
		return err
	}
	b := bench{ctx, cli, baseline, self, only, folder, filepath.Join(folder, "lesson.json")}
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err == nil {
		err = os.WriteFile(b.lesson, data, 0o600)
	}
	if err != nil {
		return err
	}
	if err := b.speeds(); err != nil {
		return err
	}
	return b.memory()
}

// speeds prints a row for every kind, camera and rate.
func (b bench) speeds() error {
	fmt.Println("10 s at 1920 x 1080, the first play of the built-in lesson; whole processes, medians, time to a file")
	fmt.Println("| clip | cairo and ffmpeg | ffmpeg from ready frames | homeside | times faster | times less work | size | PSNR, theirs and ours |")
	fmt.Println("| --- | --- | --- | --- | --- | --- | --- | --- |")
	for _, scene := range []string{still, moving} {
		for _, p := range packings {
			for _, fps := range []int{30, p.fps} {
				if scene == moving && fps != 30 || !b.only.has(p.ext) {
					continue
				}
				j, err := jobOf(scene, 10, fps)
				if err == nil {
					err = b.row(j, p)
				}
				if err != nil {
					return fmt.Errorf("%s at %d frames a second: %w", p.ext, fps, err)
				}
			}
		}
	}
	return nil
}

func (b bench) row(j job, p packing) error {
	draw, err := drawer(b.baseline, b.folder, j)
	if err != nil {
		return err
	}
	theirs, ours := filepath.Join(b.folder, "theirs"+p.ext), filepath.Join(b.folder, "ours"+p.ext)
	piped := p.passes(raw(j, "pipe:0"), b.folder, theirs)
	base, err := median(func() (cost, error) { return b.passes(piped, draw) })
	if err != nil {
		return err
	}
	mine, err := median(func() (cost, error) { return run(b.ctx, b.ours(j, ours)) })
	if err != nil {
		return err
	}
	floor, err := b.floor(j, p, draw)
	if err != nil {
		return err
	}
	their, our, err := b.likenesses(j, draw, theirs, ours)
	if err != nil {
		return err
	}
	camera := ""
	if j.scene == moving {
		camera = ", camera moving"
	}
	fmt.Printf("| %s, %d fps%s | %s, %s | %s | %s, %s | %.1f | %.1f | %.2f | %.1f, %.1f dB |\n", strings.ToUpper(p.ext[1:]), j.fps, camera,
		seconds(base.time), megabytes(theirs), floor, seconds(mine.time), megabytes(ours),
		base.time.Seconds()/mine.time.Seconds(), base.work.Seconds()/mine.work.Seconds(), float64(sizeOf(ours))/float64(sizeOf(theirs)), their, our)
	return nil
}

// passes runs commands one after another, each fed by feeder if there is one.
func (b bench) passes(commands [][]string, feeder []string) (cost, error) {
	var all cost
	for _, c := range commands {
		line := [][]string{c}
		if feeder != nil {
			line = [][]string{feeder, c}
		}
		one, err := run(b.ctx, line...)
		if err != nil {
			return cost{}, err
		}
		all.time += one.time
		all.work += one.work
		all.memory = max(all.memory, one.memory)
	}
	return all, nil
}

// ours is the command that exports a job.
func (b bench) ours(j job, path string) []string {
	if j.scene != still {
		return []string{b.self, "write", j.scene, fmt.Sprint(j.seconds), fmt.Sprint(j.fps), path}
	}
	line := []string{b.cli, "export", b.lesson, "--play", "1", "--view", "lying", "--size", fmt.Sprintf("%dx%d", j.width, j.height),
		"--fps", fmt.Sprint(j.fps), "--speed", fmt.Sprint(j.speed()), "--out", path}
	if filepath.Ext(path) == ".mp4" { // as silent as the baseline's
		line = append(line, "--sound", "none")
	}
	return line
}

// floor is the time that ffmpeg takes for the frames if they are there already,
// measured at 30 frames a second only: they take 2.5 GB.
func (b bench) floor(j job, p packing, draw []string) (string, error) {
	if j.fps != 30 {
		return "", nil
	}
	path := filepath.Join(b.folder, "ready-"+j.scene)
	if _, err := os.Stat(path); err != nil {
		if _, err := run(b.ctx, draw, []string{"dd", "status=none", "bs=1M", "iflag=fullblock", "of=" + path}); err != nil {
			return "", err
		}
	}
	passes := p.passes(raw(j, path), b.folder, filepath.Join(b.folder, "floor"+p.ext))
	c, err := median(func() (cost, error) { return b.passes(passes, nil) })
	return seconds(c.time), err
}

// likenesses are the PSNRs of both files, each beside its own frames.
func (b bench) likenesses(j job, draw []string, theirs, ours string) (their, our float64, err error) {
	from, ended, err := printed(b.ctx, j, true, draw...)
	if err != nil {
		return 0, 0, err
	}
	if their, err = likeness(b.ctx, j, theirs, from); err != nil {
		return 0, 0, err
	}
	if err := ended(); err != nil {
		return 0, 0, err
	}
	our, err = likeness(b.ctx, j, ours, drawn(j))
	return their, our, err
}

// memory prints the peaks of a short and a long clip.
func (b bench) memory() error {
	fmt.Println("\npeak memory, 640 x 360, 30 fps; of MP4 ffmpeg's is not counted")
	fmt.Println("| clip | 10 s | 10 minutes | ratio |")
	fmt.Println("| --- | --- | --- | --- |")
	for _, p := range packings {
		if !b.only.has(p.ext) {
			continue
		}
		var peak [2]int64
		for i, seconds := range []float64{10, 600} {
			j, err := jobOf(again, seconds, 30)
			if err != nil {
				return err
			}
			c, err := run(b.ctx, b.ours(j, filepath.Join(b.folder, "long"+p.ext)))
			if err != nil {
				return err
			}
			peak[i] = c.memory
		}
		fmt.Printf("| %s | %d MB | %d MB | %.2f |\n", strings.ToUpper(p.ext[1:]), peak[0]>>20, peak[1]>>20, float64(peak[1])/float64(peak[0]))
	}
	return nil
}

func sizeOf(path string) int64 {
	info, err := os.Stat(path)
	if err != nil {
		return 0
	}
	return info.Size()
}

func seconds(d time.Duration) string { return fmt.Sprintf("%.2f s", d.Seconds()) }

func megabytes(path string) string { return fmt.Sprintf("%.1f MB", float64(sizeOf(path))/1e6) }
