package work

import (
	_ "embed"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"sync"
)

// Question is one thing that can be worked out by itself, with what has to be
// told for it. A group answers one question or several.
type Question struct {
	ID, Group string
	Topic     string // what it is about: swing, limb, chance, wind, room, line or measuring
	Asks      string // in plain words
	Formula   string
	Source    string
	Inputs    []Input
	fixed     map[string]any // what its group wants beside the inputs
}

// Form is how an input is written.
type Form string

// The forms of an input. Rows and records hold one line each, their numbers apart
// by spaces.
const (
	Number  Form = "number"
	Whole   Form = "whole"
	Text    Form = "text"
	Words   Form = "words" // texts, apart by semicolons
	Flag    Form = "flag"  // yes or no
	Choice  Form = "choice"
	List    Form = "list" // numbers
	Rows    Form = "rows"
	Records Form = "records"
)

// Input is one thing that a question wants to know.
type Input struct {
	Path    string // in the inputs of the group, dotted
	Label   string
	Unit    string // 1 for a pure number; empty where any will do
	Form    Form
	Columns []string // of rows and records; the choices of a choice
	// Low and High bound every number of it.
	Low, High float64
	Example   string // as it is written
	Needed    bool
	Meaning   string
}

//go:embed data/questions.csv
var questionTable string

//go:embed data/inputs.csv
var inputTable string

var loadQuestions = sync.OnceValues(func() ([]Question, error) { return readQuestions(questionTable, inputTable) })

// Questions lists what can be worked out by itself, in the order in which it
// reads best.
func Questions() []Question {
	list, err := loadQuestions()
	if err != nil {
		panic(err) // the tables are part of the program and tested
	}
	return list
}

// QuestionByID finds a question.
func QuestionByID(id string) (Question, bool) {
	for _, q := range Questions() {
		if q.ID == id {
			return q, true
		}
	}
	return Question{}, false
}

func readQuestions(questions, inputs string) ([]Question, error) {
	var list []Question
	index := map[string]int{}
	err := eachRow(questions, func(cell map[string]string) error {
		q := Question{ID: cell["id"], Group: cell["group"], Topic: cell["topic"], Asks: cell["asks"], Formula: cell["formula"], Source: cell["source"]}
		index[q.ID] = len(list)
		list = append(list, q)
		return json.Unmarshal([]byte(cell["fixed"]), &list[len(list)-1].fixed)
	})
	if err != nil {
		return nil, err
	}
	return list, eachRow(inputs, func(cell map[string]string) error {
		i, ok := index[cell["question"]]
		if !ok {
			return fmt.Errorf("no question %q", cell["question"])
		}
		in := Input{
			Path: cell["path"], Label: cell["label"], Unit: cell["unit"], Form: Form(cell["kind"]), Columns: strings.Fields(cell["columns"]),
			Example: cell["example"], Needed: cell["need"] == "yes", Meaning: cell["meaning"],
		}
		list[i].Inputs = append(list[i].Inputs, in)
		return list[i].Inputs[len(list[i].Inputs)-1].bounds(cell["low"], cell["high"])
	})
}

func (in *Input) bounds(low, high string) (err error) {
	if !in.numeric() {
		return nil
	}
	if in.Low, err = strconv.ParseFloat(low, 64); err != nil {
		return err
	}
	in.High, err = strconv.ParseFloat(high, 64)
	return err
}

func (in Input) numeric() bool {
	return in.Form != Text && in.Form != Words && in.Form != Flag && in.Form != Choice
}

// eachRow hands out the rows of a table by the names in its head.
func eachRow(table string, take func(map[string]string) error) error {
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil {
		return err
	}
	for n, row := range rows[1:] {
		cell := map[string]string{}
		for i, name := range rows[0] {
			cell[name] = row[i]
		}
		if err := take(cell); err != nil {
			return fmt.Errorf("row %d: %w", n+2, err)
		}
	}
	return nil
}
