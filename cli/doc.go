// Package cli is the command line. Data goes to stdout, talk to stderr. Text
// is for people on 80 columns; --json is for programs and versioned. Exit
// codes stand in exit.go and in the README.
package cli
