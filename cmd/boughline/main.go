// Command boughline judges a tree before a rope swing is hung from it.
package main

import (
	"os"

	"boughline/cli"
)

func main() {
	os.Exit(cli.Run(cli.Env{Args: os.Args[1:], Stdin: os.Stdin, Stdout: os.Stdout, Stderr: os.Stderr}))
}
