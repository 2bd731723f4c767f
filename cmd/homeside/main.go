package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	fyneapp "fyne.io/fyne/v2/app"
	"github.com/go-gl/glfw/v3.3/glfw"

	"homeside/app"
	"homeside/internal/large"
	"homeside/words"
)

// appID names the program's preferences.
const appID = "homeside.editor"

// traceVariable names the environment variable with the file that the window
// tells what it does; for tests.
const traceVariable = "HOMESIDE_TRACE"

// framesVariable names the environment variable that, set to anything, has every
// frame told to the trace; for measuring.
const framesVariable = "HOMESIDE_TRACE_FRAMES"

// startHeap is what the program allocates until it shows its window, and a little more.
const startHeap = 40 << 20

func main() {
	if err := run(os.Args[1:]); err != nil {
		fmt.Fprintln(os.Stderr, "homeside: "+err.Error())
		os.Exit(2)
	}
}

func run(args []string) error {
	args, asked, err := parse(args)
	if err != nil {
		return err
	}
	if os.Getenv("DISPLAY") == "" && os.Getenv("WAYLAND_DISPLAY") == "" && needsDisplay {
		return errors.New("there is no display: log in to a desktop, or export with homeside-cli")
	}
	o := app.Options{Files: args, State: app.StateFolder(), Frames: os.Getenv(framesVariable) != "", Look: glfw.PollEvents}
	if o.Trace, err = openTrace(os.Getenv(traceVariable)); err != nil {
		return err
	}
	large.Heap(startHeap)
	keepFreed()
	lightUnlessSaid()
	a := fyneapp.NewWithID(appID)
	o.Settings = app.OpenSettings(a, asked)
	fonts := readFonts()
	wantNoDepth()
	<-fonts
	e := app.New(a, o)
	e.Show()
	a.Run() // until the window is closed, or a signal ends it
	e.End()
	return nil
}

// parse reads the command line: homeside [--lang en|es] [LESSON ...].
func parse(args []string) (files []string, asked *words.Language, err error) {
	flags := flag.NewFlagSet("homeside", flag.ContinueOnError)
	flags.SetOutput(io.Discard) // main says what is wrong, in one line
	flags.Func("lang", "language of this run, en or es", func(tag string) error {
		l, ok := words.LanguageOf(tag)
		if !ok {
			return errors.New("want en or es")
		}
		asked = &l
		return nil
	})
	if err := flags.Parse(args); err != nil {
		return nil, nil, err
	}
	return flags.Args(), asked, nil
}

func openTrace(path string) (io.Writer, error) {
	if path == "" {
		return nil, nil
	}
	f, err := os.Create(path)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", traceVariable, err)
	}
	return f, nil
}
