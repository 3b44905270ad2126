package view

import (
	"fmt"
	"strconv"

	"boughline/web/words"

	"github.com/a-h/templ"
)

// described ties a field to its help and its fault for those who cannot see
// that they stand below it.
func described(f Field) templ.Attributes {
	a := templ.Attributes{}
	ids := ""
	if f.Help != "" {
		ids = f.Name + "-help"
	}
	if f.Fault != "" {
		ids += " " + f.Name + "-fault"
		a["aria-invalid"] = "true"
	}
	if ids != "" {
		a["aria-describedby"] = ids
	}
	if len(f.Suggest) > 0 {
		a["list"] = f.Name + "-list"
	}
	return a
}

func pressed(yes bool) string {
	if yes {
		return "true"
	}
	return "false"
}

// sizeOf is how wide a field for a number is: enough for what stands in it.
func sizeOf(value string) string { return strconv.Itoa(max(5, len([]rune(value)))) }

func sampleHelp(samples int) string { return fmt.Sprintf(words.ChanceSampleHow, samples) }
