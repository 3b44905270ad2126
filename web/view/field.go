package view

import (
	"context"
	"io"
)

// Render draws the field with its label. The compiler would copy the code of a
// view to every place that calls it, and this one is large: it stands once.
//
//go:noinline
func (f Field) Render(ctx context.Context, w io.Writer) error { return field(f).Render(ctx, w) }

// The parts of the workbench stand once for the same reason.

//go:noinline
func (a Answered) Render(ctx context.Context, w io.Writer) error {
	return AnsweredPart(a).Render(ctx, w)
}

//go:noinline
func (f Figure) Render(ctx context.Context, w io.Writer) error { return figureOf(f).Render(ctx, w) }
