package frame

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// freedoms of a node: three displacements, three rotations.
const freedoms = 6

// Options set up the finite elements. The zero value serves a limb.
type Options struct {
	// ElementLength is the greatest length of an element; 0 takes a fortieth
	// of the longest member.
	ElementLength quantity.Length
	// ShearFlexible adds the flexibility of shear (Timoshenko) to that of
	// bending (Euler-Bernoulli).
	ShearFlexible bool
}

// Analysis is a frame as finite elements: assembled, factored, and solved for
// one load case at a time. It keeps its workspace, so Assemble and Solve
// allocate nothing; it must not be shared between goroutines.
type Analysis struct {
	frame         *Frame
	young, shear  float64
	shearFlexible bool
	elements      []element
	byMember      [][]int
	matrix        *numeric.Skyline
	motions       []float64 // solution of the last load case, by node
	loads         LoadCase
}

// Analyse meshes, assembles and factors the frame. The error says what the
// elements need and do not have: a shear modulus, or an element length that
// makes fewer than ten thousand elements.
func (f *Frame) Analyse(o Options) (*Analysis, error) {
	a := &Analysis{
		frame: f, young: float64(f.material.Young), shear: float64(f.material.Shear),
		shearFlexible: o.ShearFlexible,
	}
	if a.shear <= 0 {
		return nil, fmt.Errorf("material shear: 0; expected the shear modulus of the wood")
	}
	size, err := f.elementLength(o.ElementLength)
	if err != nil {
		return nil, err
	}
	a.elements, a.byMember = f.mesh(size)
	a.matrix = numeric.NewSkyline(a.profile())
	a.motions = make([]float64, freedoms*len(a.elements))
	if err := a.Assemble(); err != nil {
		return nil, err
	}
	return a, nil
}

func (f *Frame) elementLength(asked quantity.Length) (float64, error) {
	const byDefault, most = 40, 10000
	size, longest, total := float64(asked), 0.0, 0.0
	for i := range f.members {
		longest = math.Max(longest, f.members[i].length)
		total += f.members[i].length
	}
	if asked == 0 {
		size = longest / byDefault
	}
	if !(size > 0) || total/size > most {
		return 0, fmt.Errorf("element length %v m; expected at least %.2g m", size, total/most)
	}
	return size, nil
}

// profile returns the first row of every column of the stiffness matrix.
func (a *Analysis) profile() []int {
	first := make([]int, freedoms*len(a.elements))
	for j := range first {
		first[j] = j - j%freedoms
	}
	for i := range a.elements {
		e := &a.elements[i]
		if e.root == clamped {
			continue
		}
		for j := freedoms * e.root; j < freedoms*(e.root+1); j++ {
			first[j] = min(first[j], freedoms*e.tip)
		}
	}
	return first
}

// Elements returns the number of elements.
func (a *Analysis) Elements() int { return len(a.elements) }

// Assemble builds the stiffness matrix and factors it. Analyse has done so
// already; a second call does the same work in the same workspace.
func (a *Analysis) Assemble() error {
	a.matrix.Zero()
	for i := range a.elements {
		e := &a.elements[i]
		e.k = a.stiffness(e)
		a.add(e)
	}
	if err := a.matrix.Factor(); err != nil {
		return fmt.Errorf("stiffness: %w", err)
	}
	return nil
}

// add puts an element into the matrix. With the tip moving by u_j and the root
// by u_i, the tip force is k (u_j - T u_i), T carrying the root's motion
// rigidly to the tip, and the root force is its reaction -Tt times that.
func (a *Analysis) add(e *element) {
	tip := freedoms * e.tip
	k := &e.k
	turned := k.mixed.transposed()
	a.block(tip, tip, &k.forces)
	a.block(tip, tip+3, &k.mixed)
	a.block(tip+3, tip+3, &k.moments)
	if e.root == clamped {
		return
	}
	root := freedoms * e.root
	d := crossMatrix(e.d)
	minusD := d.scaled(-1)
	// k T = [forces, mixed - forces D; mixedt, moments - mixedt D]
	f := k.forces.times(&minusD)
	f = f.plus(&k.mixed)
	m := turned.times(&minusD)
	m = m.plus(&k.moments)
	// Tt = [1, 0; D, 1], since Dt = -D
	lower := d.times(&f)
	lower = lower.plus(&m)
	a.block(root, root, &k.forces)
	a.block(root, root+3, &f)
	a.block(root+3, root+3, &lower)
	ff, mf, fm, mm := k.forces.scaled(-1), turned.scaled(-1), f.scaled(-1), m.scaled(-1)
	a.block(tip, root, &ff)
	a.block(tip+3, root, &mf)
	a.block(tip, root+3, &fm)
	a.block(tip+3, root+3, &mm)
}

// block adds a 3 by 3 block at row i and column j; of a block on the diagonal
// the upper half.
func (a *Analysis) block(i, j int, m *matrix3) {
	for r := range m {
		for c := range m[r] {
			if i != j || r <= c {
				a.matrix.Add(i+r, j+c, m[r][c])
			}
		}
	}
}
