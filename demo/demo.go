// Package demo holds an invented site on which every outcome occurs. No tree,
// person or place of it exists.
package demo

import (
	_ "embed"
	"slices"
)

//go:embed survey.json
var survey []byte

// Survey returns the survey document of the demo site.
func Survey() []byte { return slices.Clone(survey) }

//go:embed register.json
var register []byte

// Register returns the register of the gear of the demo's chains.
func Register() []byte { return slices.Clone(register) }
