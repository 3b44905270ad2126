package chance

import "math"

// stream is a sequence of random numbers of its own for a seed and a block, the
// same on every machine.
// Source: SplitMix64, Steele, Lea & Flood, 2014, Fast splittable pseudorandom
// number generators (from memory).
type stream struct{ state uint64 }

const golden = 0x9e3779b97f4a7c15 // 2^64 over the golden ratio, odd

func streamOf(seed uint64, block int) stream {
	return stream{mix(mix(seed+golden) + golden*uint64(block+1))}
}

func mix(z uint64) uint64 {
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

func (s *stream) next() uint64 {
	s.state += golden
	return mix(s.state)
}

// uniform returns a number between 0 and 1, never either.
func (s *stream) uniform() float64 { return (float64(s.next()>>12) + 0.5) / (1 << 52) }

// normals fills z with independent standard normal variables by the ziggurat,
// two for each number: half layer and place within it come from different bits. A place
// is one of 2^23, which moves a probability by a millionth of itself at most.
// Source: Marsaglia & Tsang, 2000, Journal of Statistical Software 5(8), 256 layers;
// Doornik, 2005, on the bits (both from memory).
func (s *stream) normals(z []float64) {
	state := s.state
	for len(z) >= 2 {
		state += golden
		bits := mix(state)
		first, second := uint32(bits), uint32(bits>>32)
		one, two := &ziggurat[first%halves], &ziggurat[second%halves]
		z[0] = float64(int32(first/halves)) * one.scale
		z[1] = float64(int32(second/halves)) * two.scale
		if first/halves >= one.inside {
			s.state = state
			z[0] = s.settle(first)
			state = s.state
		}
		if second/halves >= two.inside {
			s.state = state
			z[1] = s.settle(second)
			state = s.state
		}
		z = z[2:]
	}
	s.state = state
	if len(z) == 1 {
		z[0] = s.settle(uint32(s.next()))
	}
}

// settle returns the normal variable of bits whose place may lie outside the
// density; if it does, others are drawn.
func (s *stream) settle(bits uint32) float64 {
	for ; ; bits = uint32(s.next()) {
		half, place := &ziggurat[bits%halves], bits/halves
		x := float64(place) * half.scale
		switch {
		case place < half.inside:
			return x
		case bits%halves < 2: // the lowest layer, right or left
			return math.Copysign(s.tail(), half.scale)
		}
		low, high := edgeDensity[bits%halves/2], edgeDensity[bits%halves/2+1]
		if low+s.uniform()*(high-low) < density(x) {
			return x
		}
	}
}

// tail returns a normal variable given that it is beyond the lowest layer.
// Source: Marsaglia, 1964, Technometrics 6:101 (from memory).
func (s *stream) tail() float64 {
	for {
		x, y := -math.Log(s.uniform())/lowestEdge, -math.Log(s.uniform())
		if 2*y > x*x {
			return lowestEdge + x
		}
	}
}

// Layers of equal area under exp(-x^2/2), each in a right and a left half; the
// lowest holds the tail as well.
const (
	layers     = 256
	halves     = 2 * layers
	lowestEdge = 3.6541528853610088
	layerArea  = 0.00492867323399
)

const numbers = 1 << 32 / halves // of places in a half layer

func density(x float64) float64 { return math.Exp(-x * x / 2) }

type halfLayer struct {
	scale  float64 // from number to place, with the sign of the half
	inside uint32  // numbers below it are surely under the density
}

// ziggurat holds the halves from the lowest layer up, edgeDensity the density
// at the edge of each layer and, last, at the peak.
var ziggurat, edgeDensity = zigguratTables()

func zigguratTables() (table [halves]halfLayer, densities [layers + 1]float64) {
	edge := layerArea / density(lowestEdge) // of a box with the area of the lowest layer
	next := lowestEdge
	for i := range layers {
		inside := uint32(next / edge * numbers)
		table[2*i] = halfLayer{scale: edge / numbers, inside: inside}
		table[2*i+1] = halfLayer{scale: -edge / numbers, inside: inside}
		edge = next
		densities[i+1] = density(edge)
		next = math.Sqrt(math.Max(0, -2*math.Log(layerArea/edge+density(edge))))
	}
	return table, densities
}
