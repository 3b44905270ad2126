// Package treelist takes in lists of trees that others made, as CSV in any of
// its ways: their columns are matched with what a survey holds, shown before
// anything happens, and remembered as a mapping. Each row becomes a tree or is
// refused with the reason; no cell is lost without a word.
package treelist
