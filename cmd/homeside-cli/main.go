package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
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
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM) // queues end a job with SIGTERM
	code := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(code)
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
