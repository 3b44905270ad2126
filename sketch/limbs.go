package sketch

func limbs() map[string]Sketch {
	return map[string]Sketch{
		"limb-01": join(limbWithout(false, false), line(Bold, 30, 30, 94, 41), line(Bold, 30, 70, 94, 58), line(Bold, 60, 35, 70, 10), line(Bold, 78, 61, 92, 86), line(Thin, 40, 46, 52, 46), line(Thin, 60, 48, 74, 48), line(Thin, 44, 56, 58, 56)),
		"limb-02": join(limb(), line(Bold, 34, 52, 46, 46, 56, 54, 68, 47, 84, 51), line(Thin, 38, 58, 80, 56)),
		"limb-03": join(curve(Plain, 2, 78, 40, 80, 66, 62, 78, 8), curve(Plain, 2, 96, 48, 98, 82, 74, 92, 12), curve(Bold, 22, 89, 50, 86, 70, 70, 80, 42), curve(Bold, 22, 89, 54, 92, 76, 74, 80, 42)),
		"limb-04": join(limb(), line(Bold, 54, 35, 60, 43, 53, 51, 60, 58, 55, 64), line(Thin, 46, 34, 48, 42), line(Thin, 66, 37, 66, 44), line(Thin, 47, 66, 49, 59)),
		"limb-05": join(limbWithout(true, false), curve(Bold, 30, 70, 34, 63, 38, 71, 42, 62, 46, 70, 50, 61, 54, 67, 58, 61), curve(Plain, 58, 63, 76, 62, 96, 60), curve(Bold, 35, 57, 40, 53, 45, 57), curve(Bold, 48, 56, 52, 52, 56, 56)),
		"limb-06": join(limb(), line(Bold, 40, 40, 50, 40), line(Bold, 46, 47, 60, 46), line(Bold, 56, 41, 68, 43), line(Bold, 66, 49, 78, 48), line(Bold, 50, 28, 58, 30), line(Bold, 62, 27, 70, 31)),
		"limb-07": join(line(Plain, 4, 2, 4, 98), line(Plain, 12, 2, 12, 38), line(Plain, 12, 50, 12, 98), curve(Bold, 12, 38, 50, 42, 76, 48), curve(Bold, 12, 50, 50, 48, 76, 52), ring(Plain, 80, 50, 17, 15, 8, 0, 360)),
		"limb-08": join(line(Plain, 4, 2, 4, 98), line(Plain, 20, 2, 20, 54), line(Plain, 20, 78, 20, 98), line(Bold, 20, 56, 60, 60, 64, 6), line(Bold, 20, 76, 76, 80, 80, 8), line(Thin, 62, 70, 72, 70)),
		"limb-09": join(limb(), solid(50, 50, 56, 44, 66, 45, 70, 51, 64, 57, 54, 56), loop(Plain, 44, 50, 53, 40, 68, 41, 76, 51, 66, 61, 52, 60), line(Thin, 58, 68, 60, 84), line(Thin, 66, 68, 66, 78)),
		"limb-10": join(limb(), curve(Bold, 42, 67, 42, 80, 58, 84, 66, 78, 66, 64), curve(Bold, 72, 63, 73, 74, 84, 75, 88, 61), curve(Thin, 47, 72, 54, 76, 61, 72), curve(Thin, 76, 67, 80, 69, 84, 66)),
		"limb-11": join(limb(), curve(Bold, 30, 40, 56, 45, 92, 47), line(Bold, 44, 33, 45, 42), line(Bold, 58, 36, 59, 44), line(Bold, 72, 38, 73, 46), ring(Plain, 80, 12, 8, 8, 0, 0, 360), line(Thin, 72, 20, 64, 28), line(Thin, 80, 23, 79, 32), line(Thin, 69, 13, 58, 17)),
		"limb-12": join(limb(), loop(Bold, 42, 50, 52, 39, 68, 40, 78, 51, 68, 60, 52, 61), loop(Plain, 51, 50, 58, 45, 67, 46, 70, 51, 62, 56)),
		"limb-13": join(curve(Plain, 2, 76, 50, 52, 98, 14), curve(Plain, 2, 90, 52, 64, 98, 28), curve(Plain, 2, 18, 40, 48), curve(Plain, 2, 32, 34, 58), curve(Plain, 62, 54, 98, 76), curve(Plain, 52, 64, 98, 92), loop(Bold, 40, 56, 48, 48, 58, 50, 54, 62, 46, 66)),
		"limb-14": join(limb(), line(Bold, 46, 36, 54, 50, 48, 52, 58, 64), sound(68, 20, 1), wind(30, 6)),
		"limb-15": join(line(Plain, 22, 2, 22, 98), line(Plain, 62, 2, 62, 28), line(Plain, 62, 76, 62, 98), line(Bold, 62, 28, 74, 34, 58, 40, 72, 48, 54, 56, 66, 64, 62, 76), line(Thin, 50, 44, 50, 70), line(Thin, 44, 50, 44, 66)),
		"limb-16": join(limb(), curve(Bold, 56, 35, 48, 50, 56, 65), curve(Bold, 66, 36, 58, 50, 66, 64), curve(Plain, 61, 66, 66, 80, 58, 96), curve(Plain, 50, 34, 54, 29, 58, 35), curve(Plain, 64, 36, 69, 30, 74, 37)),
		"limb-17": join(limb(), line(Bold, 52, 36, 52, 64), line(Bold, 60, 37, 60, 63), line(Bold, 68, 38, 68, 62), line(Thin, 60, 2, 60, 26), arrow(Thin, 60, 74, 60, 96)),
		"limb-18": join(limb(), discs(4, 44, 50, 58, 50, 72, 50), discs(1.4, 44, 76, 50, 80, 58, 78, 62, 86, 72, 76, 68, 84, 52, 90)),
		"limb-19": join(limbWithout(false, true), curve(Plain, 30, 30, 36, 33, 42, 34), curve(Bold, 42, 34, 48, 18, 64, 16, 74, 24, 78, 39), curve(Plain, 78, 39, 86, 39, 96, 40), arc(Thin, 60, 36, 8, 8, 190, 350)),
		"limb-20": join(limb(), line(Bold, 32, 50, 92, 50), line(Plain, 36, 43, 46, 50, 36, 57), line(Plain, 54, 44, 64, 50, 54, 56), line(Plain, 72, 45, 82, 50, 72, 55)),
		"limb-21": join(limbWithout(true, true), line(Bold, 34, 50, 50, 45, 64, 53, 88, 48), line(Plain, 86, 98, 86, 80), line(Plain, 98, 98, 98, 80), arc(Plain, 92, 80, 6, 2.5, 0, 360), arrow(Thin, 98, 12, 78, 28), arrow(Thin, 82, 4, 62, 20)),
	}
}

func unions() map[string]Sketch {
	return map[string]Sketch{
		"union-01": join(forkOutside(), curve(Plain, 34, 2, 44, 28, 49, 40), curve(Plain, 66, 2, 56, 28, 51, 40), line(Bold, 50, 40, 50, 82), curve(Bold, 30, 52, 22, 62, 32, 72), curve(Bold, 70, 52, 78, 62, 68, 72)),
		"union-02": join(fork(), curve(Bold, 36, 58, 42, 48, 50, 42, 58, 48, 64, 58), line(Thin, 42, 54, 44, 50), line(Thin, 50, 50, 50, 46), line(Thin, 58, 54, 56, 50)),
		"union-03": join(curve(Plain, 24, 2, 30, 44, 34, 98), curve(Plain, 76, 2, 70, 44, 66, 98), line(Bold, 42, 2, 50, 62, 58, 2)),
		"union-04": join(fork(), line(Bold, 24, 30, 42, 26), line(Bold, 58, 26, 76, 30), line(Bold, 22, 26, 26, 34), line(Bold, 40, 22, 44, 30), line(Bold, 56, 30, 60, 22), line(Bold, 74, 34, 78, 26)),
		"union-05": join(line(Plain, 26, 2, 26, 98), line(Plain, 66, 2, 66, 34), line(Plain, 66, 62, 66, 98), curve(Bold, 66, 34, 72, 42, 96, 30), curve(Bold, 66, 62, 76, 50, 96, 40), line(Thin, 26, 80, 66, 80), line(Thin, 84, 34, 88, 44)),
		"union-06": join(fork(), line(Bold, 50, 42, 53, 56, 47, 68, 52, 80, 49, 96), line(Thin, 55, 62, 57, 84)),
		"union-07": join(fork(), curve(Bold, 40, 30, 50, 26, 60, 30), shelf(Bold, 68, 64, 22, 16), line(Plain, 46, 27, 43, 12), line(Plain, 50, 26, 51, 10), line(Plain, 54, 27, 59, 14), discs(1.6, 48, 34, 52, 33, 50, 38)),
		"union-08": join(fork(), line(Bold, 28, 22, 72, 22), ring(Plain, 28, 22, 4, 4, 0, 0, 360), ring(Plain, 72, 22, 4, 4, 0, 0, 360), line(Plain, 30, 66, 70, 66), box(Plain, 24, 62, 30, 62, 30, 70, 24, 70), box(Plain, 70, 62, 76, 62, 76, 70, 70, 70)),
		"union-09": join(forkOutside(), curve(Plain, 34, 2, 36, 10), curve(Plain, 66, 2, 64, 10), curve(Bold, 36, 10, 50, 15, 64, 10), curve(Bold, 38, 24, 50, 20, 62, 24), curve(Plain, 38, 24, 44, 40, 50, 46, 56, 40, 62, 24)),
	}
}
