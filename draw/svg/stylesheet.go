package svg

// Stylesheet dresses drawings inside a page. Ink is the page's colour of text;
// the paper and the accent are its --drawing-paper and --drawing-accent, with
// values of our own where the page sets none.
const Stylesheet = `.drawing{display:block;width:100%;height:auto;max-width:42rem}
.drawing .sheet,.drawing .paper{fill:var(--drawing-paper,#fffdf6)}
.drawing .label{stroke:var(--drawing-paper,#fffdf6)}
.drawing .accent{stroke:var(--drawing-accent,#1c4f86)}
.drawing a{color:inherit;cursor:pointer}
.drawing a:hover .label{text-decoration:underline}
.drawing a:focus-visible{outline:none}
.drawing a:focus-visible .touch{stroke:var(--drawing-accent,#1c4f86);stroke-width:1}
.drawing a:focus-visible path:not(.hatch),.drawing a:focus-visible circle{stroke:var(--drawing-accent,#1c4f86);stroke-width:1.4}
.drawing a:focus-visible .label{fill:var(--drawing-accent,#1c4f86);text-decoration:underline}
@media (prefers-color-scheme:dark){
.drawing .sheet,.drawing .paper{fill:var(--drawing-paper,#1b1a17)}
.drawing .label{stroke:var(--drawing-paper,#1b1a17)}
.drawing .accent{stroke:var(--drawing-accent,#9cc4f0)}
}
@media (prefers-contrast:more){.drawing .hair{stroke-width:0.35}.drawing .fine,.drawing .dashed{stroke-width:0.6}}
@media (forced-colors:active){
.drawing .sheet,.drawing .paper{fill:Canvas}
.drawing .label{stroke:Canvas}
.drawing .accent{stroke:LinkText}
}
@media print{
.drawing{color:#000;max-width:none;width:100%;max-height:240mm;break-inside:avoid}
.drawing .sheet,.drawing .paper{fill:#fff}
.drawing .label{stroke:#fff}
.drawing .accent{stroke:#000}
}
`
