package sketch

import "math"

// ring is an ellipse with bumps, from one angle to another, deg clockwise from
// the right.
func ring(w Weight, cx, cy, rx, ry, bumps, from, to float64) Sketch {
	steps := int(math.Max(12, bumps*4))
	k := Stroke{Weight: w, Smooth: true, Closed: to-from >= 360}
	for i := range steps + 1 {
		if k.Closed && i == steps {
			break
		}
		a := (from + (to-from)*float64(i)/float64(steps)) * math.Pi / 180
		r := 1.0
		if bumps > 0 {
			r += 0.07 * math.Cos(bumps*a)
		}
		k.Points = append(k.Points, Point{cx + rx*r*math.Cos(a), cy + ry*r*math.Sin(a)})
	}
	return Sketch{k}
}

// arc is part of an ellipse.
func arc(w Weight, cx, cy, rx, ry, from, to float64) Sketch {
	return ring(w, cx, cy, rx, ry, 0, from, to)
}

// disc is a filled circle.
func disc(cx, cy, r float64) Sketch {
	k := ring(Plain, cx, cy, r, r, 0, 0, 360)
	k[0].Filled = true
	return k
}

// discs are filled circles of one size.
func discs(r float64, xy ...float64) Sketch {
	var all Sketch
	for _, p := range points(xy) {
		all = append(all, disc(p.X, p.Y, r)...)
	}
	return all
}

// leaf is a pointed oval with its midrib.
func leaf(w Weight, x, y, length, degrees float64) Sketch {
	dx, dy := length*math.Cos(degrees*math.Pi/180), length*math.Sin(degrees*math.Pi/180)
	nx, ny := -dy*0.28, dx*0.28
	return join(loop(w, x, y, x+dx*0.5+nx, y+dy*0.5+ny, x+dx, y+dy, x+dx*0.5-nx, y+dy*0.5-ny), line(Thin, x, y, x+dx, y+dy))
}

// leaves are leaves of one size in one direction.
func leaves(w Weight, length, degrees float64, xy ...float64) Sketch {
	var all Sketch
	for i, p := range points(xy) {
		all = append(all, leaf(w, p.X, p.Y, length, degrees+float64(i%3-1)*25)...)
	}
	return all
}

// twig is a bare branch with two side twigs.
func twig(w Weight, x0, y0, x1, y1 float64) Sketch {
	dx, dy := x1-x0, y1-y0
	at := func(t, side float64) (float64, float64) { return x0 + dx*t - dy*side, y0 + dy*t + dx*side }
	ax, ay := at(0.45, 0)
	bx, by := at(0.8, 0.22)
	cx, cy := at(0.65, 0)
	ex, ey := at(0.95, -0.2)
	return join(line(w, x0, y0, x1, y1), line(w, ax, ay, bx, by), line(w, cx, cy, ex, ey))
}

// shelf is a bracket on an edge at (x, y), growing to the side by width.
func shelf(w Weight, x, y, width, thick float64) Sketch {
	return join(curve(w, x, y-thick/2, x+width*0.6, y-thick*0.45, x+width, y+thick*0.1, x+width*0.7, y+thick*0.45, x, y+thick*0.5),
		curve(Thin, x, y-thick*0.1, x+width*0.5, y-thick*0.05, x+width*0.8, y+thick*0.2))
}

// toadstool is a cap on a stalk with its foot at (x, y).
func toadstool(w Weight, x, y, size float64) Sketch {
	return join(arc(w, x, y-size, size*0.7, size*0.55, 180, 360), line(w, x-size*0.7, y-size, x+size*0.7, y-size),
		line(Plain, x-size*0.12, y-size, x-size*0.12, y), line(Plain, x+size*0.12, y-size, x+size*0.12, y))
}

// sound are arcs that spread from a place to one side, 1 right and -1 left.
func sound(x, y, side float64) Sketch {
	from := 0.0
	if side < 0 {
		from = 180
	}
	return join(arc(Thin, x, y, 5, 7, from-50, from+50), arc(Thin, x, y, 10, 13, from-50, from+50), arc(Thin, x, y, 15, 19, from-50, from+50))
}

// arrow has its head at the end.
func arrow(w Weight, x0, y0, x1, y1 float64) Sketch {
	l := math.Hypot(x1-x0, y1-y0)
	ux, uy := (x1-x0)/l*6, (y1-y0)/l*6
	return join(line(w, x0, y0, x1, y1), line(w, x1-ux-uy*0.7, y1-uy+ux*0.7, x1, y1, x1-ux+uy*0.7, y1-uy-ux*0.7))
}

// sway is an arrow at both ends.
func sway(w Weight, x0, y0, x1, y1 float64) Sketch {
	mx, my := (x0+x1)/2, (y0+y1)/2
	return join(arrow(w, mx, my, x0, y0), arrow(w, mx, my, x1, y1))
}

// grass are short blades on the ground.
func grass(y float64, xs ...float64) Sketch {
	var all Sketch
	for _, x := range xs {
		all = append(all, line(Thin, x-2, y-5, x, y)...)
		all = append(all, line(Thin, x+2, y-5, x, y)...)
	}
	return all
}

// wind are three streaks that blow to the right.
func wind(x, y float64) Sketch {
	return join(curve(Thin, x, y, x+8, y-2, x+16, y), curve(Thin, x+3, y+6, x+12, y+4, x+21, y+6), curve(Thin, x, y+12, x+7, y+10, x+14, y+12))
}
