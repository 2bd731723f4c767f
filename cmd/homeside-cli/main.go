package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"strings"
	"syscall"

	"github.com/spf13/cobra"
)

// Exit codes of every command.
const (
	exitOK     = 0
	exitFaults = 1 // check found faults; some files of a batch could not be written
	exitBad    = 2 // usage error, unreadable input or an output that cannot be written
)

// errFaults is returned by a command that worked and found faults.
var errFaults = errors.New("faults found")

// commands are the commands in the order of the help text.
var commands = []func() *cobra.Command{
	exportCommand,
	photoCommand,
	infoCommand,
	checkCommand,
	coverCommand,
	runCommand,
	scoreCommand,
	whoCommand,
	formationCommand,
	flightCommand,
	shotCommand,
	planCommand,
	signalCommand,
}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), signals()...)
	ctx, cancel := context.WithCancel(ctx)
	signal.Ignore(syscall.SIGPIPE) // or what is under way would end without a trace, and with its traces left
	code := run(ctx, os.Args[1:], heard{os.Stdout, cancel}, heard{os.Stderr, cancel})
	stop()
	os.Exit(code)
}

// signals are those that cancel what is under way, so that nothing of it is left:
// Ctrl-C, the end of a job in a queue, a terminal that is closed. What whoever
// started this program wants ignored (nohup) stays so.
func signals() []os.Signal {
	return slices.DeleteFunc([]os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP}, signal.Ignored)
}

// heard is a stream that cancels what is under way when nobody reads it any more.
type heard struct {
	io.Writer
	cancel context.CancelFunc
}

// Write implements io.Writer.
func (h heard) Write(p []byte) (int, error) {
	n, err := h.Writer.Write(p)
	if errors.Is(err, syscall.EPIPE) {
		h.cancel()
	}
	return n, err
}

// run is the whole program with its surroundings as arguments.
func run(ctx context.Context, args []string, stdout, stderr io.Writer) int {
	root := &cobra.Command{
		Use:           "homeside-cli",
		Short:         "Doubles positioning in pickleball: export lessons, check them, compute",
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          cobra.NoArgs,
		RunE:          func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	root.CompletionOptions.DisableDefaultCmd = true
	said := saidFlags{}
	said.add(root)
	for _, c := range commands {
		root.AddCommand(c())
	}
	root.SetArgs(args)
	root.SetOut(stdout)
	root.SetErr(stderr)
	switch err := root.ExecuteContext(ctx); {
	case err == nil:
		return exitOK
	case errors.Is(err, errFaults), errors.Is(err, errSomeFailed):
		return exitFaults
	default:
		fmt.Fprintln(stderr, "homeside-cli: "+oneLine(err))
		return exitBad
	}
}

// oneLine is an error's text without line breaks.
func oneLine(err error) string { return strings.Join(strings.Fields(err.Error()), " ") }
