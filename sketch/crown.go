package sketch

func crown() map[string]Sketch {
	return map[string]Sketch{
		"crown-01": join(trunk(), ring(Plain, 50, 46, 32, 22, 9, -20, 200), twig(Bold, 40, 34, 30, 6), twig(Bold, 52, 32, 54, 3), twig(Bold, 62, 34, 74, 10)),
		"crown-02": join(trunk(), line(Plain, 50, 62, 50, 30), line(Plain, 50, 50, 28, 30), line(Plain, 50, 46, 74, 28), line(Plain, 50, 36, 38, 14), line(Plain, 50, 34, 62, 12),
			leaves(Plain, 9, -90, 28, 30, 74, 28, 38, 14, 62, 12, 50, 28), arc(Bold, 50, 34, 44, 32, 150, 180), arc(Bold, 50, 34, 44, 32, 200, 225), arc(Bold, 50, 34, 44, 32, 250, 290), arc(Bold, 50, 34, 44, 32, 315, 340), arc(Bold, 50, 34, 44, 32, 0, 30)),
		"crown-03": join(leaf(Plain, 8, 78, 62, -50), leaf(Bold, 62, 84, 24, -60), leaf(Bold, 78, 88, 20, -70), line(Thin, 6, 92, 94, 92)),
		"crown-04": join(line(Plain, 4, 60, 96, 52), leaves(Plain, 16, -60, 12, 59, 24, 58), leaves(Plain, 16, 60, 16, 60, 30, 58),
			twig(Bold, 52, 56, 66, 24), twig(Bold, 68, 55, 90, 30), twig(Bold, 60, 57, 78, 86)),
		"crown-05": join(line(Plain, 50, 98, 50, 40), line(Plain, 50, 56, 22, 34), line(Plain, 50, 52, 78, 30),
			curve(Bold, 22, 34, 14, 40, 12, 56), curve(Bold, 22, 34, 24, 46, 22, 58), curve(Bold, 78, 30, 86, 38, 88, 54), leaves(Plain, 14, -90, 46, 38, 54, 38, 50, 34),
			box(Bold, 50, 66, 55, 76, 50, 88, 45, 76)),
		"crown-06": join(tree(), line(Bold, 52, 60, 70, 40, 88, 30), line(Bold, 70, 40, 72, 26), line(Bold, 79, 35, 92, 38)),
		"crown-07": join(limb(), line(Bold, 42, 6, 76, 92), line(Bold, 50, 27, 36, 34), line(Bold, 66, 67, 82, 64), leaves(Plain, 10, 80, 76, 91, 82, 64, 71, 84)),
		"crown-08": join(line(Plain, 8, 98, 8, 2), line(Plain, 26, 98, 26, 58), line(Plain, 26, 36, 26, 2), curve(Plain, 26, 36, 40, 34, 62, 36), curve(Plain, 26, 58, 42, 56, 62, 56),
			line(Bold, 62, 36, 78, 34, 66, 40, 88, 44, 68, 47, 80, 54, 62, 56)),
		"crown-09": join(trunk(), ring(Plain, 50, 50, 32, 20, 9, -12, 192), line(Bold, 20, 45, 28, 38, 34, 44, 40, 36, 46, 43, 54, 36, 60, 44, 68, 37, 80, 45), line(Plain, 50, 38, 50, 20), leaves(Plain, 8, -90, 50, 20)),
		"crown-10": join(trunk(), line(Plain, 50, 62, 50, 20), line(Bold, 50, 56, 20, 46), line(Bold, 50, 50, 80, 40), line(Bold, 50, 40, 26, 24),
			ring(Plain, 13, 44, 9, 8, 6, 0, 360), ring(Plain, 87, 38, 9, 8, 6, 0, 360), ring(Plain, 20, 20, 8, 8, 6, 0, 360), ring(Plain, 52, 12, 9, 8, 6, 0, 360)),
		"crown-11": join(curve(Plain, 36, 98, 38, 60, 34, 50), curve(Plain, 64, 98, 62, 60, 66, 50), ring(Bold, 50, 46, 18, 10, 5, 0, 360),
			line(Plain, 38, 38, 22, 6), line(Plain, 44, 36, 38, 2), line(Plain, 50, 36, 51, 2), line(Plain, 56, 36, 64, 3), line(Plain, 62, 38, 80, 8)),
		"crown-12": join(curve(Plain, 34, 92, 38, 84, 38, 14), curve(Plain, 50, 92, 46, 84, 44, 14), line(Thin, 14, 92, 86, 92), ring(Bold, 46, 38, 40, 30, 11, -84, 84)),
		"crown-13": join(stem(), curve(Bold, 36, 98, 56, 76, 40, 54, 60, 30, 46, 4), leaves(Bold, 14, -30, 52, 78, 42, 56, 58, 32, 46, 16), leaves(Bold, 14, 200, 48, 68, 52, 44, 54, 20, 40, 90)),
		"crown-14": join(limb(), ring(Bold, 64, 18, 17, 16, 8, 0, 360), line(Plain, 64, 36, 56, 12), line(Plain, 64, 36, 64, 8), line(Plain, 64, 36, 73, 12), curve(Bold, 48, 35, 64, 30, 80, 38)),
		"crown-15": join(tree(), shelf(Bold, 54, 68, 18, 10), shelf(Bold, 54, 79, 13, 8), line(Thin, 60, 74, 60, 77), line(Thin, 65, 75, 65, 78), line(Plain, 50, 62, 50, 30), line(Plain, 50, 44, 34, 30), shelf(Bold, 50, 40, 14, 9)),
		"crown-16": join(line(Plain, 4, 78, 54, 52), line(Plain, 54, 52, 96, 20), line(Plain, 54, 52, 94, 60), shelf(Bold, 70, 38, 12, 9), shelf(Bold, 84, 27, 11, 8), curve(Bold, 66, 56, 71, 66, 78, 58)),
		"crown-17": join(curve(Plain, 40, 92, 45, 86, 45, 66), curve(Plain, 60, 92, 55, 86, 53, 66), line(Thin, 14, 92, 86, 92), ring(Plain, 48, 42, 26, 24, 9, 0, 360), ring(Thin, 56, 40, 26, 24, 9, -70, 60), sway(Bold, 26, 9, 78, 9)),
	}
}
