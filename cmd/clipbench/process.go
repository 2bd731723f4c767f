package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"syscall"
	"time"
)

// cost is what programs that run side by side have taken.
type cost struct {
	time   time.Duration
	work   time.Duration // of all processors, which a busy machine does not stretch
	memory int64         // bytes: the sum of their peaks
}

// run runs programs, each fed by the one before it, and waits for all. The disk has
// settled before: who sees a file onto the disk, as homeside does, would else pay for
// what ran before.
func run(ctx context.Context, commands ...[]string) (cost, error) {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	syscall.Sync()
	began := time.Now()
	var running []*exec.Cmd
	var said bytes.Buffer
	var from *os.File
	for i, c := range commands {
		cmd := exec.CommandContext(ctx, c[0], c[1:]...)
		if from != nil {
			cmd.Stdin = from
		}
		if i == len(commands)-1 {
			cmd.Stderr = &said
		}
		var to *os.File
		if i < len(commands)-1 {
			r, w, err := os.Pipe()
			if err != nil {
				return cost{}, err
			}
			cmd.Stdout, to = w, w
			defer r.Close()
			from = r
		}
		if err := cmd.Start(); err != nil {
			return cost{}, fmt.Errorf("start %s: %w", c[0], err)
		}
		if to != nil {
			to.Close()
		}
		running = append(running, cmd)
	}
	var all cost
	for i, cmd := range slices.Backward(running) {
		if err := cmd.Wait(); err != nil {
			return cost{}, fmt.Errorf("%v: %w: %s", commands[i], err, said.Bytes())
		}
		all.work += cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()
		all.memory += cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss * 1024 // Linux counts in KiB
	}
	all.time = time.Since(began)
	return all, nil
}

// enough is after how much time in all no further run is made.
const enough = 12 * time.Second

// mostRuns is how often something is run that takes no time.
const mostRuns = 9

// median runs something nine times, or less often if it takes long, and gives the
// middle time with the largest memory.
func median(do func() (cost, error)) (cost, error) {
	var all []cost
	var sum time.Duration
	for len(all) < mostRuns && (len(all) == 0 || sum < enough) {
		c, err := do()
		if err != nil {
			return cost{}, err
		}
		all = append(all, c)
		sum += c.time
	}
	slices.SortFunc(all, func(a, b cost) int { return int(a.time - b.time) })
	middle := all[(len(all)-1)/2]
	for _, c := range all {
		middle.memory = max(middle.memory, c.memory)
	}
	return middle, nil
}
