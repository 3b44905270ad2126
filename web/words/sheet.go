package words

// Sheets on paper.
const (
	Sheets      = "Sheets on paper"
	SheetA4     = "PDF, A4"
	SheetLetter = "PDF, Letter"
	SheetPage   = "As a page"
)
