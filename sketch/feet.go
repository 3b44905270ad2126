package sketch

func feet() map[string]Sketch {
	return map[string]Sketch{
		"base-01": join(footLeft(), line(Bold, 66, 2, 66, 88), line(Thin, 2, 88, 12, 88), line(Thin, 66, 88, 98, 88), curve(Thin, 46, 62, 44, 76, 38, 90)),
		"base-02": join(line(Bold, 36, 2, 36, 82), line(Bold, 64, 2, 64, 82), line(Thin, 2, 82, 98, 82), line(Thin, 10, 90, 24, 90), line(Thin, 40, 92, 58, 92), line(Thin, 74, 90, 90, 90)),
		"base-03": join(foot(), solid(50, 56, 59, 68, 62, 88, 38, 88, 41, 68), curve(Bold, 34, 88, 37, 66, 50, 49, 63, 66, 66, 88)),
		"base-04": join(foot(), buttress(), shelf(Bold, 73, 74, 20, 12), toadstool(Bold, 10, 90, 12), toadstool(Bold, 24, 94, 11)),
		"base-05": join(foot(), line(Bold, 96, 16, 74, 38), box(Bold, 68, 36, 78, 46, 72, 52, 62, 42), sound(56, 48, -1)),
		"base-06": join(foot(), line(Bold, 96, 56, 48, 70), line(Bold, 92, 50, 98, 62), loop(Plain, 42, 64, 50, 60, 58, 64, 56, 76, 46, 78)),
		"base-07": join(foot(), curve(Bold, 10, 80, 34, 70, 60, 68, 92, 78), curve(Bold, 8, 88, 36, 79, 60, 77, 90, 87)),
		"base-08": join(foot(), loop(Bold, 42, 54, 52, 50, 58, 62, 56, 80, 46, 82, 40, 70), line(Thin, 46, 62, 52, 60), line(Thin, 46, 70, 53, 68), ring(Plain, 88, 76, 10, 10, 0, 0, 360), disc(88, 76, 2), line(Plain, 88, 76, 98, 46)),
		"base-09": join(foot(), curve(Thin, 44, 50, 43, 66), solid(43, 62, 48, 66, 46, 72, 50, 76, 46, 82, 49, 88, 40, 88, 38, 80, 41, 74, 38, 68), solid(60, 66, 64, 72, 62, 78, 66, 86, 58, 88, 57, 78)),
		"base-10": join(foot(), box(Plain, 40, 44, 62, 42, 64, 80, 40, 82), line(Bold, 44, 80, 48, 64, 44, 50), line(Bold, 48, 64, 56, 56, 54, 46), line(Bold, 48, 72, 60, 68), line(Bold, 56, 56, 61, 60), line(Plain, 62, 42, 82, 34, 84, 70, 64, 80)),
		"base-11": join(foot(), shelf(Bold, 66, 62, 30, 22), shelf(Bold, 74, 82, 22, 14)),

		"root_plate-01": join(plate(), curve(Bold, 6, 50, 12, 56, 8, 62), curve(Bold, 16, 49, 22, 57, 18, 64), curve(Bold, 84, 49, 79, 57, 83, 64), wind(4, 14)),
		"root_plate-02": join(curve(Plain, 52, 2, 48, 34, 40, 44), curve(Plain, 66, 6, 62, 38, 66, 56), curve(Bold, 2, 60, 10, 58, 22, 38, 40, 42), line(Bold, 66, 56, 80, 63), line(Thin, 80, 60, 98, 60), curve(Plain, 58, 60, 64, 78, 76, 90), curve(Plain, 48, 52, 46, 76, 38, 92), arrow(Plain, 20, 84, 20, 56)),
		"root_plate-03": join(plate(), curve(Bold, 8, 50, 16, 44, 26, 48), curve(Bold, 92, 50, 84, 44, 74, 48), sway(Bold, 8, 26, 8, 42), sway(Bold, 92, 26, 92, 42), discs(1.5, 30, 44, 26, 40, 70, 44, 75, 40)),
		"root_plate-04": join(plate(), solid(30, 60, 40, 62, 46, 70, 36, 76, 22, 72, 20, 66), line(Bold, 2, 96, 30, 70)),
		"root_plate-05": join(curve(Plain, 43, 2, 43, 34, 38, 48, 26, 54), curve(Plain, 57, 2, 57, 34, 60, 48, 64, 54), line(Thin, 2, 54, 26, 54), rootsLeft(), line(Plain, 62, 58, 70, 64), line(Plain, 56, 60, 60, 74, 68, 80), line(Bold, 67, 68, 73, 60), line(Bold, 65, 85, 71, 75), line(Bold, 78, 54, 78, 94, 96, 94, 96, 54), line(Thin, 64, 54, 78, 54)),
		"root_plate-06": join(curve(Plain, 43, 2, 43, 34, 34, 50), curve(Plain, 57, 2, 57, 34, 66, 50), curve(Bold, 34, 50, 18, 54, 4, 66), curve(Bold, 40, 56, 24, 64, 10, 80), curve(Bold, 66, 50, 82, 54, 96, 66), curve(Bold, 60, 56, 76, 64, 90, 80), loop(Plain, 46, 66, 53, 66, 55, 76, 50, 82, 45, 76), loop(Plain, 47, 86, 53, 86, 53, 93, 47, 93), line(Thin, 16, 58, 20, 62), line(Thin, 78, 56, 80, 61)),
		"root_plate-07": join(curve(Plain, 43, 2, 43, 34, 38, 48, 26, 54), line(Plain, 57, 2, 57, 54), line(Thin, 2, 54, 26, 54), line(Thin, 57, 54, 98, 54), curve(Bold, 32, 56, 20, 66, 4, 70), curve(Bold, 38, 58, 30, 76, 14, 88), curve(Bold, 46, 58, 42, 78, 32, 94)),
		"root_plate-08": join(small(20), line(Thin, 2, 88, 98, 88), line(Plain, 56, 70, 98, 62), line(Plain, 56, 80, 98, 76), curve(Bold, 54, 44, 46, 62, 50, 88), curve(Bold, 54, 44, 60, 60, 56, 88), line(Bold, 50, 54, 40, 48), line(Bold, 48, 66, 38, 66), line(Bold, 50, 78, 42, 84)),
		"root_plate-09": join(curve(Plain, 22, 2, 22, 34, 18, 46, 6, 52), curve(Plain, 38, 2, 38, 34, 44, 46, 54, 52), line(Thin, 54, 62, 98, 82), curve(Plain, 44, 52, 66, 64, 96, 78), toadstool(Bold, 56, 58, 12), toadstool(Bold, 72, 66, 12), toadstool(Bold, 88, 75, 12), toadstool(Bold, 40, 68, 9)),
	}
}
