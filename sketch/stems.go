package sketch

func stems() map[string]Sketch {
	return map[string]Sketch{
		"stem-01": join(stem(), bark(), line(Bold, 50, 8, 46, 26, 52, 46, 47, 68, 51, 92), line(Bold, 50, 8, 54, 28, 56, 48, 53, 70, 51, 92)),
		"stem-02": join(stem(), bark(), curve(Bold, 44, 4, 42, 50, 44, 96), curve(Bold, 56, 4, 58, 50, 56, 96), curve(Thin, 50, 8, 50, 92)),
		"stem-03": join(line(Plain, 20, 2, 20, 98), line(Plain, 60, 2, 60, 18), line(Plain, 60, 82, 60, 98), line(Bold, 60, 18, 88, 50, 60, 82), line(Bold, 60, 30, 74, 50, 60, 70), line(Thin, 66, 50, 70, 50)),
		"stem-04": join(stem(), curve(Bold, 30, 92, 52, 80, 70, 64), curve(Bold, 30, 58, 52, 46, 70, 30), curve(Bold, 30, 24, 46, 16, 58, 4), curve(Thin, 70, 64, 60, 60, 30, 58)),
		"stem-05": join(line(Plain, 30, 2, 30, 38), line(Plain, 30, 62, 30, 98), line(Plain, 70, 2, 70, 38), line(Plain, 70, 62, 70, 98), curve(Bold, 30, 38, 22, 50, 30, 62), curve(Bold, 70, 38, 78, 50, 70, 62), curve(Bold, 26, 50, 38, 54, 50, 49, 62, 54, 74, 50), curve(Thin, 30, 44, 50, 42, 70, 44), curve(Thin, 30, 58, 50, 60, 70, 58)),
		"stem-06": join(curve(Bold, 38, 2, 38, 28, 18, 62, 22, 90), curve(Bold, 62, 2, 62, 28, 82, 62, 78, 90), line(Thin, 4, 90, 96, 90)),
		"stem-07": join(ring(Plain, 50, 50, 40, 40, 0, 60, 300), line(Bold, 70, 16, 70, 84), ring(Thin, 48, 50, 25, 27, 0, 50, 310), ring(Thin, 47, 50, 12, 14, 0, 0, 360), arrow(Plain, 98, 50, 78, 50)),
		"stem-08": join(stem(), bark(), loop(Bold, 50, 26, 62, 38, 62, 60, 50, 74, 39, 60, 39, 38), loop(Plain, 50, 36, 56, 44, 55, 58, 50, 64, 45, 58, 45, 44)),
		"stem-09": join(stem(), bark(), solid(50, 34, 59, 44, 59, 60, 50, 70, 42, 60, 42, 44), loop(Plain, 50, 28, 63, 42, 63, 62, 50, 76, 37, 62, 37, 42)),
		"stem-10": join(stem(), bark(), loop(Plain, 50, 14, 66, 50, 50, 86, 34, 50), curve(Bold, 50, 22, 42, 50, 50, 78), curve(Bold, 50, 22, 58, 50, 50, 78), curve(Thin, 44, 28, 37, 50, 44, 72), curve(Thin, 56, 28, 63, 50, 56, 72), line(Thin, 50, 38, 50, 62)),
		"stem-11": join(stem(), bark(), shelf(Bold, 70, 34, 24, 16), shelf(Bold, 70, 58, 20, 13), shelf(Bold, 70, 78, 14, 10)),
		"stem-12": join(stem(), box(Bold, 40, 20, 62, 18, 60, 44, 38, 46), line(Bold, 62, 18, 80, 10, 78, 38, 60, 44), line(Thin, 44, 40, 50, 28), line(Thin, 50, 28, 56, 24), line(Thin, 50, 28, 46, 22), line(Thin, 50, 36, 56, 32), line(Plain, 44, 60, 44, 76), line(Plain, 57, 56, 57, 70)),
		"stem-13": join(stem(), bark(), loop(Bold, 42, 28, 50, 24, 58, 30, 54, 38, 46, 37), line(Bold, 46, 38, 46, 62), line(Bold, 51, 39, 51, 78), line(Bold, 56, 38, 56, 54), disc(46, 66, 2.4), disc(51, 83, 2.4), disc(56, 58, 2.4)),
		"stem-14": join(stem(), discs(2.6, 42, 22, 56, 30, 46, 44), arc(Bold, 57, 52, 4, 4, -90, 90), line(Bold, 57, 48, 57, 56), discs(1, 44, 54, 47, 62, 52, 66, 45, 70, 55, 74, 50, 78), curve(Bold, 34, 96, 50, 84, 66, 96)),
		"stem-15": join(stem(), line(Bold, 56, 2, 46, 24, 56, 30, 44, 58, 54, 64, 44, 98), line(Plain, 64, 2, 55, 22, 64, 28, 54, 54, 63, 60, 54, 98)),
		"stem-16": join(foot(), solid(50, 58, 56, 70, 60, 88, 40, 88, 44, 70), curve(Plain, 38, 40, 42, 50, 38, 58), curve(Plain, 50, 34, 54, 44, 50, 52), curve(Plain, 61, 40, 64, 50, 60, 58), line(Thin, 32, 76, 38, 70), line(Thin, 64, 72, 70, 78)),
		"stem-17": join(stem(), ring(Bold, 50, 28, 11, 11, 0, 0, 360), disc(50, 28, 3.5), line(Plain, 70, 56, 84, 52), line(Plain, 70, 72, 84, 70), arc(Bold, 84, 61, 4, 9, 0, 360), ring(Plain, 44, 78, 6, 6, 0, 0, 360)),
		"stem-18": join(stem(), bark(), line(Bold, 70, 26, 90, 26), line(Bold, 90, 20, 90, 32), line(Bold, 70, 66, 90, 66), line(Bold, 90, 60, 90, 72), line(Plain, 50, 48, 58, 40), ring(Plain, 60, 38, 3, 3, 0, 0, 360), line(Thin, 72, 70, 72, 86), line(Thin, 75, 69, 75, 80)),
		"stem-19": join(stem(), line(Bold, 70, 30, 92, 12), line(Bold, 70, 40, 96, 30), line(Bold, 70, 52, 96, 50), line(Bold, 70, 64, 94, 70), line(Bold, 30, 34, 8, 14), line(Bold, 30, 46, 4, 36), line(Bold, 30, 58, 5, 58), leaves(Plain, 9, -30, 90, 12, 90, 50, 88, 70), leaves(Plain, 9, 210, 10, 14, 8, 36, 10, 58)),
		"stem-20": join(curve(Bold, 18, 88, 34, 60, 48, 30, 50, 2), curve(Bold, 40, 88, 52, 62, 62, 32, 64, 2), line(Thin, 2, 88, 98, 88), curve(Plain, 18, 88, 10, 84, 4, 88), line(Thin, 82, 8, 82, 76), disc(82, 80, 3.4)),
		"stem-21": join(line(Bold, 22, 84, 62, 4), line(Bold, 42, 88, 80, 8), line(Thin, 2, 88, 14, 88), line(Thin, 46, 88, 98, 88), line(Bold, 10, 88, 16, 96, 22, 88), line(Bold, 2, 92, 6, 88), arrow(Plain, 80, 30, 94, 46)),
		"stem-22": join(foot(), sway(Bold, 8, 40, 30, 40), sway(Bold, 70, 40, 92, 40), line(Thin, 40, 30, 40, 84), line(Thin, 60, 30, 60, 84)),
	}
}
