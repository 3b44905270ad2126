// Command boughline judges a tree before a rope swing is hung from it.
package main

import (
	"context"
	"os"
	"os/signal"
	"syscall"

	"boughline/cli"
	"boughline/store"
	"boughline/store/sqlite"
)

func main() { os.Exit(run()) }

// run is the program up to its exit code.
func run() int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	return cli.Run(cli.Env{
		Context: ctx, Args: os.Args[1:], Stdin: os.Stdin, Stdout: os.Stdout, Stderr: os.Stderr,
		OpenStore: func(file string) (store.Backend, error) { return sqlite.Open(file) },
	})
}
