package notebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"time"

	"boughline/store"
	"boughline/survey"
)

// Answer is what a look says of one sign.
type Answer string

// The answers.
const (
	Seen        Answer = "seen"
	NotSeen     Answer = "not seen"
	CouldNotSee Answer = "could not see"
)

// Tree is the record of one tree.
type Tree struct {
	Revision int       // of the record
	At       time.Time // of the revision
	What     string    // what the revision changed
	Order    int       // its place on the site
	survey.Tree
	// Answers holds what the looks say sign by sign, by zone. A zone counts
	// as looked at when every sign of it has an answer.
	Answers map[string]map[string]Answer
}

// treeRecord is the JSON form of a tree.
type treeRecord struct {
	Version int                          `json:"boughline"`
	Order   int                          `json:"order"`
	Tree    survey.Tree                  `json:"tree"`
	Answers map[string]map[string]Answer `json:"answers,omitempty"`
}

func encodeTree(t *Tree) ([]byte, error) {
	return json.Marshal(treeRecord{Version: survey.Version, Order: t.Order, Tree: t.Tree, Answers: t.Answers})
}

func decodeTree(o store.Object) (Tree, error) {
	var r treeRecord
	if err := json.Unmarshal(o.Data, &r); err != nil {
		return Tree{}, fmt.Errorf("the record cannot be read: %w", err)
	}
	if r.Version > survey.Version {
		return Tree{}, fmt.Errorf("the record has version %d and was written by a later program; expected at most %d: open it with that program", r.Version, survey.Version)
	}
	if r.Tree.ID == "" || len(r.Tree.Members) == 0 {
		return Tree{}, fmt.Errorf("the record holds no tree")
	}
	return Tree{Revision: o.Revision, At: o.At, What: o.What, Order: r.Order, Tree: r.Tree, Answers: r.Answers}, nil
}

// clone copies a tree so that a change to the copy leaves the tree alone.
func (t *Tree) clone() (Tree, error) {
	data, err := encodeTree(t)
	if err != nil {
		return Tree{}, err
	}
	copied, err := decodeTree(store.Object{Data: data, Revision: t.Revision, At: t.At, What: t.What})
	return copied, err
}

func encodeHead(head *survey.Survey) ([]byte, error) {
	alone := *head
	alone.Trees = nil
	var b bytes.Buffer
	err := survey.Write(&b, &alone)
	return b.Bytes(), err
}

func decodeHead(data []byte) (*survey.Survey, error) {
	head, problems, err := survey.Read(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	if len(problems) > 0 {
		return nil, &Invalid{problems}
	}
	return head, nil
}
