package web

import (
	"cmp"

	"boughline/assess/hangsearch"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/web/words"
)

// bandFigure draws the map along a limb; a row stands for the stretch halfway
// to its neighbours.
func bandFigure(p *hangsearch.Place) *draw.Scene {
	in := figure.BandInput{Key: p.Limb, Title: words.BandOf + " " + p.Limb, Limb: p.Band.Length, Longest: longestLine(p)}
	rows := p.Band.Rows
	half := rows[0].Along / 2
	for _, row := range rows {
		in.Runs = append(in.Runs, runsOf(row, row.Along-half, row.Along+half, in.Longest)...)
	}
	if p.Best != nil {
		in.At, in.Line, in.Marked = p.Best.Hang.At.Value, p.Best.Hang.Line.Value, true
	}
	return figure.Band(in)
}

func longestLine(p *hangsearch.Place) quantity.Length {
	longest := quantity.Length(2)
	for _, row := range p.Band.Rows {
		for _, l := range row.Lines {
			longest = max(longest, l.To)
		}
	}
	return longest + 1
}

func runsOf(row hangsearch.Row, from, to, longest quantity.Length) []figure.BandRun {
	run := func(low, high quantity.Length, b *hangsearch.Bind) figure.BandRun {
		r := figure.BandRun{From: from, To: to, Shortest: low, Longer: high}
		if b != nil {
			r.Binding, r.Words = string(b.Code)+b.Part, cmp.Or(wording.CheckTitle(b.Code, b.Part), string(b.Code))
		}
		return r
	}
	if len(row.Lines) == 0 {
		if row.Bind == nil {
			return nil
		}
		return []figure.BandRun{run(0, longest, row.Bind)}
	}
	var runs []figure.BandRun
	var below quantity.Length
	for _, l := range row.Lines {
		if l.Shorter != nil && l.From > below {
			runs = append(runs, run(below, l.From, l.Shorter))
		}
		runs, below = append(runs, run(l.From, l.To, nil)), l.To
	}
	if last := row.Lines[len(row.Lines)-1]; last.Longer != nil && below < longest {
		runs = append(runs, run(below, longest, last.Longer))
	}
	return runs
}
