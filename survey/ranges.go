package survey

import "boughline/quantity"

// span is the range of sizes that can be meant. Outside it a value is a slip
// of the pen, a wrong unit or a wrong field. The bounds are house values, wide
// enough for the greatest trees on record; they judge nothing.
type span[Q quantity.Kind] struct{ low, high Q }

func (s span[Q]) contains(q Q) bool { return q >= s.low && q <= s.high }

// deg is a variable so that 90*deg is rounded just as "90 deg" is when read.
var deg = quantity.Degree

// The longest things a tree has, and the bounds for limbs, which are narrower
// than those for any member.
var (
	anyDiameter  = span[quantity.Length]{0.005, 15}
	limbDiameter = span[quantity.Length]{0.005, 4}
	limbGirth    = span[quantity.Length]{0.015, 12.6}
	anyLength    = span[quantity.Length]{0.05, 130}
	limbLength   = span[quantity.Length]{0.05, 60}
	turn         = span[quantity.Angle]{-360 * deg, 720 * deg}
	stemIncline  = span[quantity.Angle]{45 * deg, 90 * deg}
)

// lengths holds the range of every length of the document, in m.
var lengths = map[string]span[quantity.Length]{
	"Tree.east":           {-5000, 5000},
	"Tree.north":          {-5000, 5000},
	"Tree.height":         {1, 130},
	"Crown.base_height":   {0, 130},
	"Crown.width":         {0.1, 80},
	"Member.rises_at":     {0, 130},
	"Member.length":       anyLength,
	"Member.tip":          {0.001, 15},
	"Member.bark":         {0, 0.75},
	"Point.east":          {-130, 130},
	"Point.north":         {-130, 130},
	"Point.up":            {-130, 130},
	"Station.at":          {0, 130},
	"Station.girth":       {0.015, 48},
	"Station.diameter":    anyDiameter,
	"Station.upright":     anyDiameter,
	"Station.across":      anyDiameter,
	"Union.parent":        anyDiameter,
	"Finding.at":          {0, 130},
	"Finding.extent":      {0, 130},
	"Finding.height":      {0, 130},
	"Finding.distance":    {0, 100},
	"Hazard.distance":     {0, 500},
	"Hazard.east":         {-5000, 5000},
	"Hazard.north":        {-5000, 5000},
	"Hang.at":             {0, 60},
	"Hang.line":           {0.3, 40},
	"Hang.height":         {0.3, 130},
	"Hang.slack":          {0, 5},
	"Line.span":           {0.5, 100},
	"Line.rise":           {-30, 30},
	"Line.sag":            {0.01, 20},
	"Line.body":           {0.5, 6},
	"LineEnd.at":          {0, 60},
	"LineEnd.height":      {0, 60},
	"Redirect.at":         {0, 60},
	"LoadTest.set":        {0, 3},
	"LoadStep.sag":        {0, 5},
	"Ground.depth_loose":  {0, 2},
	"Lie.depth_loose":     {0, 2},
	"SpotHeight.distance": {0, 200},
	"SpotHeight.height":   {-60, 60},
	"GroundPoint.at":      {-60, 60},
	"GroundPoint.height":  {-60, 60},
	"Spot.distance":       {0, 200},
	"Obstacle.distance":   {0, 200},
	"Obstacle.radius":     {0, 50},
	"Part.bend_over":      {0.001, 15},
	"Part.thickness":      {0.0005, 0.3},
	"Part.width":          {0.001, 1},
	"Part.length":         {0.01, 200},
}

// angles holds the range of every angle.
var angles = map[string]span[quantity.Angle]{
	"Member.azimuth":     turn,
	"Member.inclination": {-90 * deg, 90 * deg},
	"Finding.side":       turn,
	"Hazard.side":        turn,
	"Hang.swing_azimuth": turn,
	"Hang.amplitude":     {0, 180 * deg},
	"Spot.azimuth":       turn,
	"Obstacle.azimuth":   turn,
	"SpotHeight.azimuth": turn,
	"Part.choke_angle":   {0, 180 * deg},
	"Part.leg_angle":     {0, 90 * deg},
	"Line.azimuth":       turn,
	"Redirect.angle":     {0, 180 * deg},
}

// masses holds the range of every mass, in kg.
var masses = map[string]span[quantity.Mass]{
	"Riders.each":   {3, 250},
	"Riders.seat":   {0, 250},
	"LoadStep.mass": {1, 10000},
}

// speeds holds the range of every speed, in m/s.
var speeds = map[string]span[quantity.Speed]{
	"Gust.speed": {1, 100},
}

// forces holds the range of every force, in N.
var forces = map[string]span[quantity.Force]{
	"Line.pretension":      {10, 5e4},
	"LoadStep.pull":        {10, 1e5},
	"Mark.strength":        {100, 1e6},
	"Part.axial_stiffness": {100, 1e9},
}
