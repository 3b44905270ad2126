package figure

import (
	"cmp"
	"slices"

	"boughline/draw"
)

// stack is labels of one line whose places lie so close together that they
// stand one above the other: fewer leaders cross.
type stack []label

const (
	closeBy   = 6.0 // mm between places of one stack
	mostHigh  = 4   // labels in a stack
	fewLabels = 6   // up to which every label has room of its own
)

// stacked gathers labels whose places lie close together, from left to right.
// Labels of a drawing with few of them stand alone.
func stacked(labels []label) []stack {
	reach := closeBy
	if len(labels) <= fewLabels {
		reach = 0
	}
	labels = slices.Clone(labels)
	slices.SortStableFunc(labels, func(a, b label) int { return cmp.Compare(a.at.X, b.at.X) })
	var list []stack
	for _, l := range labels {
		if n := len(list); n > 0 && len(list[n-1]) < mostHigh && draw.Distance(list[n-1][0].at, l.at) < reach {
			list[n-1] = append(list[n-1], l)
			continue
		}
		list = append(list, stack{l})
	}
	return list
}

// placeStack draws a stack near the middle of its places with a leader to
// each; false where there is no room.
func (p *page) placeStack(s stack) bool {
	width, middle := 0.0, draw.Point{}
	for _, l := range s {
		width = max(width, markSize+0.4+draw.TextWidth(l.words, draw.LabelSize, l.strong))
		middle = middle.Add(l.at.X/float64(len(s)), l.at.Y/float64(len(s)))
	}
	box, ok := p.placer.Place(middle, width, markSize*float64(len(s)))
	if !ok {
		return false
	}
	for i, l := range s {
		group, top := l.group, box.Min.Add(0, markSize*float64(i))
		group.Touch = draw.BoxAt(top, width, markSize)
		if leader := draw.Leader(l.at, box); leader != nil {
			group.Items = append(group.Items, leader)
		}
		group.Items = append(group.Items, l.mark(top.Add(markSize/2, markSize/2))...)
		group.Items = append(group.Items, &draw.Text{At: top.Add(markSize+0.4, baseline+0.1), Words: l.words, Size: draw.LabelSize, Strong: l.strong})
		p.addGroup(&group)
	}
	return true
}
