package frame

import (
	"math"
	"slices"
)

// mesh cuts the frame into elements no longer than size and numbers their tip
// nodes from the tips inwards, the longest branch of a fork first: then the
// profile of the stiffness matrix is that of a chain, but for the column of
// each fork, which reaches back over the shorter branches only.
func (f *Frame) mesh(size float64) (elements []element, byMember [][]int) {
	byMember = make([][]int, len(f.members))
	var raw []element // numbered from the root outwards
	ends := make([]map[int]int, len(f.members))
	for i := range f.members {
		m := &f.members[i]
		node := clamped
		if i > 0 {
			node = ends[m.parent.Member][f.breakAt(m.parent)]
		}
		ends[i] = map[int]int{0: node}
		for k := range m.pieces {
			p := &m.pieces[k]
			n := max(1, int(math.Ceil((p.to-p.from)/size-joint)))
			for j := range n {
				e := element{member: i, piece: p, root: node, tip: len(raw)}
				e.from = p.from + (p.to-p.from)*float64(j)/float64(n)
				e.to = p.from + (p.to-p.from)*float64(j+1)/float64(n)
				e.d = p.axes.X.Scale(e.to - e.from)
				e.wood = through(p.area(e.to), p.area((e.from+e.to)/2), p.area(e.from), e.to-e.from)
				node = e.tip
				raw = append(raw, e)
			}
			ends[i][k+1] = node
		}
	}
	number := inwards(raw)
	elements = make([]element, len(raw))
	for _, e := range raw {
		e.tip = number[e.tip]
		if e.root != clamped {
			e.root = number[e.root]
		}
		elements[e.tip] = e
		byMember[e.member] = append(byMember[e.member], e.tip)
	}
	return elements, byMember
}

// breakAt returns which break of its member a place is, counted from 0.
func (f *Frame) breakAt(at Place) int {
	pieces := f.members[at.Member].pieces
	for k := range pieces {
		if math.Abs(float64(at.Along)-pieces[k].from) < joint {
			return k
		}
	}
	return len(pieces)
}

// inwards numbers the tip nodes so that each follows all nodes beyond it.
func inwards(raw []element) []int {
	children := make([][]int, len(raw))
	var trunk []int // elements that start at the clamp
	size := make([]int, len(raw))
	for i := len(raw) - 1; i >= 0; i-- {
		size[i]++
		if root := raw[i].root; root != clamped {
			children[root] = append(children[root], i)
			size[root] += size[i]
		} else {
			trunk = append(trunk, i)
		}
	}
	number := make([]int, len(raw))
	next := 0
	var visit func(nodes []int)
	visit = func(nodes []int) {
		slices.SortStableFunc(nodes, func(a, b int) int { return size[b] - size[a] })
		for _, n := range nodes {
			visit(children[n])
			number[n] = next
			next++
		}
	}
	visit(trunk)
	return number
}
