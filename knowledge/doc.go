// Package knowledge holds the reference figures and texts of the tool, each
// with its source: green wood, bark, species, signs, fungi, riders, gear,
// surfaces, wind, ways of measuring and every number of the model.
//
// The tables are CSV files under data, embedded in the program. Every row
// names a source that resolves in sources.csv, the governing one first; Load
// refuses a table that does not. Numbers stand in the tables in the units of
// their sources and leave the package in SI units: a Fact in MPa comes out in
// Pa, one in degrees in radians, one in per cent as a proportion.
package knowledge
