package notebook

import (
	"context"

	"boughline/survey"
)

// Copy is a whole site as it leaves a notebook or comes into one: the survey,
// the answers of looks and the photos. Their bytes are read one at a time.
type Copy struct {
	ID      string // of the site; empty where the file had none
	Survey  *survey.Survey
	Answers Answers
	Photos  []Photo
	// PhotoBytes reads a picture.
	PhotoBytes func(context.Context, Photo) ([]byte, error)
	// Damaged are records of trees that cannot be read and are not in Survey.
	Damaged []*Damaged
}

// Answers are those of looks by tree, zone and sign.
type Answers map[string]map[string]map[string]Answer

// Copy gathers a whole site.
func (n *Notebook) Copy(ctx context.Context, site string) (*Copy, error) {
	s, err := n.Site(ctx, site)
	if err != nil {
		return nil, err
	}
	c := &Copy{ID: site, Survey: s.Survey(), Answers: Answers{}, Damaged: s.Damaged}
	c.PhotoBytes = func(ctx context.Context, p Photo) ([]byte, error) { return n.PhotoBytes(ctx, site, p.ID) }
	for i := range s.Trees {
		t := &s.Trees[i]
		if len(t.Answers) > 0 {
			c.Answers[t.ID] = t.Answers
		}
		photos, err := n.Photos(ctx, site, t.ID)
		if err != nil {
			return nil, err
		}
		c.Photos = append(c.Photos, photos...)
	}
	return c, nil
}
