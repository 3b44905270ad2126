// Package register is the register of the gear of one person or group: every
// item with its marks, dates and examinations, and every day on which it was
// used. It works out how long an item has been in use, what is due on a day,
// and what stands against an item going into a chain on a day. It computes no
// strength; package assess does that for the parts of a chain.
//
// The JSON form is versioned (field "register"), strict and writable by hand;
// schema.json is its JSON Schema. Read checks a document against it and against
// the rules that a schema cannot say, and returns every problem it finds.
//
// Every change returns a new register and leaves the old one alone.
package register
