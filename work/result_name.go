package work

import (
	_ "embed"
	"strings"
	"sync"
)

// ResultName is how people call a result, and its unit: 1 for a pure number, empty
// for a text or where the inputs had any unit.
type ResultName struct {
	Label, Unit string
	Hidden      bool // of use to another program only
	Order       int  // in which results are read
}

//go:embed data/results.csv
var resultTable string

var loadNames = sync.OnceValues(func() (map[string]ResultName, error) {
	names := map[string]ResultName{}
	return names, eachRow(resultTable, func(cell map[string]string) error {
		names[cell["key"]] = ResultName{Label: cell["label"], Unit: cell["unit"], Hidden: cell["label"] == "-", Order: len(names)}
		return nil
	})
})

// NameOfResult finds the name of a key of the results.
func NameOfResult(key string) (ResultName, bool) {
	names, err := loadNames()
	if err != nil {
		panic(err) // the table is part of the program and tested
	}
	if strings.HasPrefix(key, "time_after_") && strings.HasSuffix(key, "_half_swings_s") { // with their number in it
		key = "time_after_half_swings_s"
	}
	name, ok := names[key]
	return name, ok
}
