package cli

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"boughline/engine/measure"
)

// photo works out what is marked in a picture.
func (c *measureCommand) photo(env Env, spread measure.Spread) error {
	var files []string
	for _, arg := range c.Readings {
		switch {
		case arg == "--json":
			c.JSON = true
		case strings.HasPrefix(arg, "-") && arg != "-":
			return refusal{fmt.Errorf("photo: no flag %s; expected one file of marks, or - for stdin (docs/measuring.md)", arg)}
		default:
			files = append(files, arg)
		}
	}
	if len(files) != 1 {
		return refusal{fmt.Errorf("photo: %d files; expected one file of marks, or - for stdin (docs/measuring.md)", len(files))}
	}
	data, err := readMarks(env, files[0])
	if err != nil {
		return fmt.Errorf("cannot read the marks: %w", err)
	}
	var p measure.Picture
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&p); err != nil {
		return refusal{fmt.Errorf("photo: %s is no document of marks: %w", files[0], err)}
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return refusal{fmt.Errorf("photo: %s holds something behind the document of marks", files[0])}
	}
	outcome, err := p.Work(spread)
	if err != nil {
		return refusal{fmt.Errorf("photo: %w", err)}
	}
	return c.print(env.Stdout, outcome)
}

func readMarks(env Env, name string) ([]byte, error) {
	if name == "-" {
		return io.ReadAll(env.Stdin)
	}
	return os.ReadFile(name)
}
