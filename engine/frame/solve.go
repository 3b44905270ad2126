package frame

// Solve works out the motion of all nodes under a load case. The error names a
// load that is off the frame.
func (a *Analysis) Solve(c LoadCase) error {
	if err := a.frame.check(c); err != nil {
		return err
	}
	a.loads = c
	clear(a.motions)
	for i := range a.elements {
		a.load(&a.elements[i])
	}
	a.loadNodes()
	a.matrix.Solve(a.motions)
	return nil
}

// load adds the loads within an element as forces on its nodes: the held-end
// forces of the tip, and of the root what balance asks for.
func (a *Analysis) load(e *element) {
	drift := a.drift(e, e.to)
	held := e.k.push(drift)
	a.push(e.tip, held)
	if e.root == clamped {
		return
	}
	back := wrench{held.force.Scale(-1), held.moment.Scale(-1)}
	a.push(e.root, back.seen(e.d).add(a.beyond(e, e.from)))
}

// clamped stands for the node at the support.
const clamped = -1

// loadNodes adds the concentrated loads that sit on nodes.
func (a *Analysis) loadNodes() {
	for i := range a.loads.Points {
		p := &a.loads.Points[i]
		if node, ok := a.nodeAt(p.At); ok && node != clamped {
			a.push(node, wrench{force: p.Force})
		}
	}
	for i := range a.frame.masses {
		m := &a.frame.masses[i]
		if node, ok := a.nodeAt(m.At); ok && node != clamped {
			a.push(node, wrench{force: a.loads.Gravity.Scale(float64(m.Mass))})
		}
	}
}

// nodeAt returns the node at a place, and false between nodes.
func (a *Analysis) nodeAt(at Place) (node int, ok bool) {
	e := a.elementAt(at)
	switch along := float64(at.Along); {
	case along > e.to-joint:
		return e.tip, true
	case along < e.from+joint:
		return e.root, true
	}
	return 0, false
}

func (a *Analysis) push(node int, w wrench) {
	b := a.motions[freedoms*node : freedoms*(node+1)]
	b[0] += w.force.X
	b[1] += w.force.Y
	b[2] += w.force.Z
	b[3] += w.moment.X
	b[4] += w.moment.Y
	b[5] += w.moment.Z
}

// elementAt returns the element of a place; on a node the one before it.
func (a *Analysis) elementAt(at Place) *element {
	ids := a.byMember[at.Member]
	low, high := 0, len(ids)-1
	for low < high {
		middle := (low + high) / 2
		if float64(at.Along) <= a.elements[ids[middle]].to+joint {
			high = middle
		} else {
			low = middle + 1
		}
	}
	return &a.elements[ids[low]]
}
