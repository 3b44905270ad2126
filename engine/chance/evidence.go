package chance

import "math"

// breaksCarrying returns P(S < X < S + Q). Given the ratio Q/S that is an interval
// of ln X - ln S, which is normal then; one integral over the ratio is left.
func (m limbModel) breaksCarrying() float64 {
	x, s, q := m.resistance, m.self, m.ride
	ratio := Lognormal{q.Mu - s.Mu, math.Hypot(q.Sigma, s.Sigma)}
	shift := 0.0 // of ln X - ln S for a unit of the ratio's deviate
	if ratio.Sigma > 0 {
		shift = s.Sigma * s.Sigma / ratio.Sigma
	}
	spread := math.Sqrt(x.Sigma*x.Sigma + s.Sigma*s.Sigma - shift*shift)
	return expectation(fine, ratio.Sigma/spread, 0, func(z float64) float64 {
		centre := x.Mu - s.Mu + shift*z
		return between(-centre/spread, (math.Log1p(ratio.At(z))-centre)/spread)
	})
}

// tested is a limb that has passed its load test, with what the integrals over
// the own moment have in common.
type tested struct {
	limbModel
	slope float64 // of the deviate of K in that of X
	piece float64 // widest piece of an integral over the deviate of X
	light float64 // ride below which Q surely is heavier
	rides []rideNode
}

// rideNode is a node of the integral over the moment of the ride: the moment
// and the weight of the density of ln X there, P(Q > moment) included.
type rideNode struct{ moment, weight float64 }

func (m limbModel) tested() tested {
	t := tested{limbModel: m, slope: m.resistance.Sigma / m.lasting.Sigma}
	t.piece = pieceWidth / math.Hypot(1, t.slope)
	t.light = m.ride.At(lightest)
	t.rides = m.rideNodes()
	return t
}

// From lightest to heaviest reach the deviates of the ride that matter: all are
// heavier, none is.
const lightest, heaviest = -5.0, 8.0

// rideNodes lays Gauss-Legendre pieces over the deviates of the ride, narrower the
// more steeply the chances that X is too low and K high enough change with it.
func (m limbModel) rideNodes() []rideNode {
	if m.ride.Sigma == 0 {
		return nil
	}
	heavy := m.ride.At(3)
	share := heavy / (heavy + m.self.At(m.likeliest()-2))
	steepness := share * m.ride.Sigma * math.Hypot(1/m.resistance.Sigma, 1/m.lasting.Sigma)
	pieces := int(math.Ceil((heaviest - lightest) * math.Hypot(1, steepness) / pieceWidth))
	half := (heaviest - lightest) / float64(2*pieces)
	nodes := make([]rideNode, 0, pieces*points)
	for i := range pieces {
		for j, x := range gauss.x {
			v := lightest + half*(float64(2*i+1)+x)
			nodes = append(nodes, rideNode{m.ride.At(v), half * gauss.weight[j] * cdf(-v) * m.ride.Sigma / m.resistance.Sigma})
		}
	}
	return nodes
}

// passes returns P(X > S, X K > S + T).
func (t tested) passes() float64 {
	xk := Product(t.resistance, t.lasting)
	return t.overSelf(0, func(z float64) float64 {
		s := t.self.At(z)
		loaded := math.Log(s + t.test)
		all := cdf((xk.Mu - loaded) / xk.Sigma)
		return all - t.below(t.deviate(s), math.Inf(-1), loaded, all)
	})
}

// breaks returns P(S < X < S + Q, X K > S + T), for a given S by the integral
// over X of the density times P(K > (S + T)/X) P(Q > X - S): over X - S as a moment of the
// ride where P(Q > X - S) changes, and below that, where it is 1, over the deviate of X.
func (t tested) breaks() float64 {
	return t.overSelf(t.likeliest(), func(z float64) float64 {
		s := t.self.At(z)
		loaded := math.Log(s + t.test)
		offset := t.offset(loaded)
		sum := 0.0
		for _, ride := range t.rides {
			y := t.deviate(s + ride.moment)
			term := ride.weight * ride.moment / (s + ride.moment) * phi(y)
			if term > negligible*sum { // else it adds nothing, even if K surely suffices
				sum += term * cdf(offset+t.slope*y)
			}
		}
		return sum + t.below(t.deviate(s+t.light), t.deviate(s), loaded, sum)
	})
}

// deviate is that of X at a moment.
func (t tested) deviate(moment float64) float64 {
	return (math.Log(moment) - t.resistance.Mu) / t.resistance.Sigma
}

// offset is the deviate down to which K suffices where that of X is 0.
func (t tested) offset(loaded float64) float64 {
	return (t.resistance.Mu + t.lasting.Mu - loaded) / t.lasting.Sigma
}

// overSelf returns the mean of f over the deviate of the own moment.
func (t tested) overSelf(centre float64, f func(z float64) float64) float64 {
	if t.self.Sigma == 0 {
		return f(0)
	}
	test, ride := math.Sqrt(t.test), math.Sqrt(t.ride.At(0))
	pull := math.Abs(test-ride) / (test + ride) // greatest slope of ln((S + T)/(S + Q)) in ln S
	return expectation(fast, t.self.Sigma*math.Hypot(1/t.resistance.Sigma, pull/t.lasting.Sigma), centre, f)
}

// below returns the probability that the deviate of X is between low and high
// and K more than exp(loaded)/X, in pieces downwards until what is left is negligible
// beside the sum and already, what it is to be added to.
func (t tested) below(high, low, loaded, already float64) float64 {
	const nothingAbove = 8.5
	high = math.Min(high, nothingAbove)
	offset := t.offset(loaded)
	sum := 0.0
	for high > low && cdf(high)*cdf(offset+t.slope*high) > negligible*(already+sum) {
		from := math.Max(low, high-t.piece)
		middle, half := (from+high)/2, (high-from)/2
		for j, x := range gauss.x {
			y := middle + half*x
			sum += half * gauss.weight[j] * phi(y) * cdf(offset+t.slope*y)
		}
		high = from
	}
	return sum
}

// likeliest is the deviate of the own moment at which the limb most likely
// fails, by the linear approximation of its limit state.
func (m limbModel) likeliest() float64 {
	self, ride := m.self.At(0), m.ride.At(0)
	own := self / (self + ride) * m.self.Sigma
	rest := ride / (self + ride) * m.ride.Sigma
	spread := math.Hypot(m.resistance.Sigma, math.Hypot(own, rest))
	beta := (m.resistance.Mu - math.Log(self+ride)) / spread
	return math.Max(0, beta) * own / spread
}
