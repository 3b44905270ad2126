package cli

import (
	"errors"
	"fmt"
	"net/http"
	"os"
	"strings"

	"boughline/exchange"
	"boughline/exchange/picture"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
)

// farthest is how far from a tree a photo of it may have been taken, m: the
// height of a large tree and the error of a telephone's position (house).
const farthest = 50

func isPicture(head []byte) bool { return strings.HasPrefix(http.DetectContentType(head), "image/") }

// photos adds pictures to the trees that they show. Each one that cannot be
// placed is named.
func (c importCommand) photos(env Env, k *knowledge.Base) error {
	records, err := c.intoRecords()
	if err != nil {
		return err
	}
	if !records {
		return refusal{fmt.Errorf("--into %s: a survey document holds no photos; expected the file of the app's records", c.Into)}
	}
	n, closed, err := openRecords(env, c.Into, k)
	if err != nil {
		return err
	}
	defer closed()
	id, err := siteOf(env.context(), n, c.Site)
	if err != nil {
		return err
	}
	site, err := n.Site(env.context(), id)
	if err != nil {
		return err
	}
	bar, left := progressOn(env.Stderr, "photos"), 0
	for i, name := range c.From {
		tree, err := c.photo(env, n, site, name)
		if err != nil {
			left++
			fmt.Fprintf(env.Stdout, "did not come in: %s: %v\n", name, err)
		} else {
			fmt.Fprintf(env.Stdout, "%s: of tree %s\n", name, tree)
		}
		if bar != nil {
			bar(i+1, len(c.From))
		}
	}
	if left > 0 {
		return fmt.Errorf("%d of %d %s did not come in", left, len(c.From), plural("photo", len(c.From)))
	}
	return nil
}

func (c importCommand) photo(env Env, n *notebook.Notebook, site *notebook.Site, name string) (tree string, err error) {
	info, err := os.Stat(name)
	if err != nil {
		return "", err
	}
	if info.Size() > notebook.MaxPhoto {
		return "", fmt.Errorf("it has %d MB; at most %d MB can be kept", info.Size()>>20, notebook.MaxPhoto>>20)
	}
	data, err := os.ReadFile(name)
	if err != nil {
		return "", err
	}
	written, unreadable := picture.Read(data)
	if tree = c.Tree; tree == "" {
		if tree, err = treeOf(site.Survey(), written); err != nil {
			return "", errors.Join(err, unreadable)
		}
	}
	if _, err := site.Tree(tree); err != nil {
		return "", fmt.Errorf("--tree: %w", err)
	}
	return tree, n.AddPhoto(env.context(), site.ID, notebook.Edit{What: "photo from a file"}, notebook.Photo{ID: newID(), Tree: tree, Taken: written.Taken}, data)
}

// treeOf is the tree nearest to where a photo was taken.
func treeOf(s *survey.Survey, w picture.Written) (string, error) {
	origin, placed := exchange.PositionOf(s.Place)
	switch {
	case !w.Placed:
		return "", errors.New("no position is written in it; name its tree with --tree")
	case !placed:
		return "", errors.New("the site has no place, so the tree cannot be found by position; name it with --tree")
	}
	tree, apart, ok := exchange.NearestTree(s, origin, exchange.Position{Latitude: w.Latitude, Longitude: w.Longitude})
	if !ok || apart > farthest {
		return "", fmt.Errorf("no tree stands within %d m of where it was taken; name its tree with --tree", farthest)
	}
	return tree, nil
}
