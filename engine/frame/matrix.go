package frame

import "boughline/quantity"

// matrix3 is a 3 by 3 matrix by rows.
type matrix3 [3][3]float64

// addOuter adds k a bt.
func (m *matrix3) addOuter(k float64, a, b quantity.Vec3) {
	p := [3]float64{k * a.X, k * a.Y, k * a.Z}
	q := [3]float64{b.X, b.Y, b.Z}
	for i := range p {
		for j := range q {
			m[i][j] += p[i] * q[j]
		}
	}
}

// addIdentity adds k times the identity.
func (m *matrix3) addIdentity(k float64) {
	for i := range m {
		m[i][i] += k
	}
}

// crossMatrix returns the matrix whose product with v is a cross v.
func crossMatrix(a quantity.Vec3) matrix3 {
	return matrix3{{0, -a.Z, a.Y}, {a.Z, 0, -a.X}, {-a.Y, a.X, 0}}
}

func (m *matrix3) scaled(k float64) matrix3 {
	r := *m
	for i := range r {
		for j := range r[i] {
			r[i][j] *= k
		}
	}
	return r
}

func (m *matrix3) plus(n *matrix3) matrix3 {
	r := *m
	for i := range r {
		for j := range r[i] {
			r[i][j] += n[i][j]
		}
	}
	return r
}

func (m *matrix3) transposed() matrix3 {
	r := matrix3{}
	for i := range m {
		for j := range m[i] {
			r[j][i] = m[i][j]
		}
	}
	return r
}

func (m *matrix3) times(n *matrix3) matrix3 {
	r := matrix3{}
	for i := range m {
		for j := range r[i] {
			r[i][j] = m[i][0]*n[0][j] + m[i][1]*n[1][j] + m[i][2]*n[2][j]
		}
	}
	return r
}

func (m *matrix3) apply(v quantity.Vec3) quantity.Vec3 {
	return quantity.Vec3{
		X: m[0][0]*v.X + m[0][1]*v.Y + m[0][2]*v.Z,
		Y: m[1][0]*v.X + m[1][1]*v.Y + m[1][2]*v.Z,
		Z: m[2][0]*v.X + m[2][1]*v.Y + m[2][2]*v.Z,
	}
}

// inverse returns the inverse by cofactors, and false for a singular matrix.
func (m *matrix3) inverse() (matrix3, bool) {
	c := matrix3{}
	for i := range m {
		for j := range m {
			i1, i2, j1, j2 := (i+1)%3, (i+2)%3, (j+1)%3, (j+2)%3
			c[j][i] = m[i1][j1]*m[i2][j2] - m[i1][j2]*m[i2][j1]
		}
	}
	det := m[0][0]*c[0][0] + m[0][1]*c[1][0] + m[0][2]*c[2][0]
	if det == 0 {
		return matrix3{}, false
	}
	return c.scaled(1 / det), true
}
