package sketch

// tree is a whole tree with its crown.
func tree() Sketch {
	return join(trunk(), ring(Plain, 50, 38, 32, 29, 11, 0, 360))
}

// trunk is the stem of a whole tree and the ground it stands on.
func trunk() Sketch {
	return join(curve(Plain, 40, 92, 45, 86, 46, 62), curve(Plain, 60, 92, 55, 86, 54, 62), line(Thin, 14, 92, 86, 92))
}

// small is a tree that stands aside, its stem at x.
func small(x float64) Sketch {
	return join(line(Plain, x-3, 88, x-3, 62), line(Plain, x+3, 88, x+3, 62), ring(Plain, x, 40, 19, 24, 9, 0, 360))
}

// limb grows from a stem at the left to the right.
func limb() Sketch {
	return join(line(Plain, 6, 2, 6, 98), curve(Plain, 22, 2, 22, 18, 30, 30, 60, 36, 96, 40), curve(Plain, 22, 98, 22, 82, 30, 70, 60, 64, 96, 60))
}

// limbWithout is a limb whose upper or lower line is drawn by the sign.
func limbWithout(upper, lower bool) Sketch {
	s := line(Plain, 6, 2, 6, 98)
	if upper {
		s = join(s, curve(Plain, 22, 2, 22, 18, 30, 30, 60, 36, 96, 40))
	} else {
		s = join(s, curve(Plain, 22, 2, 22, 18, 30, 30))
	}
	if lower {
		return join(s, curve(Plain, 22, 98, 22, 82, 30, 70, 60, 64, 96, 60))
	}
	return join(s, curve(Plain, 22, 98, 22, 82, 30, 70))
}

// fork is a union of two stems with a round crotch.
func fork() Sketch {
	return join(forkOutside(), curve(Plain, 34, 2, 42, 30, 50, 42, 58, 30, 66, 2))
}

func forkOutside() Sketch {
	return join(curve(Plain, 12, 2, 22, 34, 32, 58, 33, 98), curve(Plain, 88, 2, 78, 34, 68, 58, 67, 98))
}

// stem is a length of stem.
func stem() Sketch {
	return join(line(Plain, 30, 2, 30, 98), line(Plain, 70, 2, 70, 98))
}

// bark are short lines on a length of stem.
func bark() Sketch {
	return join(line(Thin, 37, 12, 37, 20), line(Thin, 62, 16, 62, 25), line(Thin, 38, 78, 38, 86), line(Thin, 61, 82, 61, 92))
}

// foot is the lowest stem with its buttresses.
func foot() Sketch {
	return join(footLeft(), footRight(), line(Thin, 2, 88, 12, 88), line(Thin, 88, 88, 98, 88))
}

func footLeft() Sketch { return curve(Plain, 34, 2, 34, 50, 30, 72, 12, 88) }

func footRight() Sketch { return curve(Plain, 66, 2, 66, 50, 70, 72, 88, 88) }

// buttress are the lines between the buttresses.
func buttress() Sketch {
	return join(curve(Thin, 44, 62, 43, 76, 36, 90), curve(Thin, 57, 60, 58, 76, 65, 90))
}

// plate is the foot above ground and the roots below it.
func plate() Sketch {
	return join(curve(Plain, 43, 2, 43, 34, 38, 48, 26, 54), curve(Plain, 57, 2, 57, 34, 62, 48, 74, 54), line(Thin, 2, 54, 26, 54), line(Thin, 74, 54, 98, 54), roots())
}

func roots() Sketch {
	return join(rootsLeft(), rootsRight(), curve(Plain, 50, 58, 49, 74, 52, 92))
}

func rootsLeft() Sketch {
	return join(curve(Plain, 32, 56, 20, 66, 4, 70), curve(Plain, 40, 58, 34, 76, 22, 88))
}

func rootsRight() Sketch {
	return join(curve(Plain, 68, 56, 80, 66, 96, 70), curve(Plain, 60, 58, 66, 76, 78, 88))
}
