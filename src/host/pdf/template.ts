/** How papers look: paper and ink, in the typesetter's own language. All words come as data. */
export const TEMPLATE = `
#let data = json("/paper.json")
#let paper = data.paper
#let scale = paper.at("scale", default: 1)
#let ink = rgb("#141617")
#let second = rgb("#55595c")
#let third = rgb("#8b9093")
#let line-ink = rgb("#cfd2d1")
#let cyan = rgb("#006a8f")
#let magenta = rgb("#c4006a")
#let marker = rgb("#ffe97a")
#let fallback = data.fonts.filter(f => f.starts-with("Noto"))
#let serif = data.fonts.filter(f => f.starts-with("Newsreader")) + fallback
#let sans = data.fonts.filter(f => f.starts-with("Archivo")) + fallback

#set document(
  title: paper.title,
  date: if paper.asOf == none { none } else {
    let (y, m, d) = paper.asOf.split("-").map(int)
    datetime(year: y, month: m, day: d)
  },
)

#let register-mark = {
  let stroke = 0.4pt + second
  box(width: 14pt, height: 14pt, {
    place(center + horizon, circle(radius: 3.6pt, stroke: stroke))
    place(center + horizon, line(length: 14pt, stroke: stroke))
    place(center + horizon, line(length: 14pt, angle: 90deg, stroke: stroke))
  })
}
#let inks = stack(dir: ltr, spacing: 1.5pt, ..("#0086b3", "#c4006a", "#ffd400", "#141617").map(c => rect(width: 9pt, height: 9pt, fill: rgb(c))))

#set page(
  paper: if paper.size == "a4" { "a4" } else { "us-letter" },
  margin: (top: 19mm, bottom: 20mm, x: 20mm),
  background: {
    place(top + left, dx: 7mm, dy: 7mm, register-mark)
    place(top + right, dx: -7mm, dy: 7mm, register-mark)
    place(bottom + left, dx: 7mm, dy: -7mm, register-mark)
    place(bottom + right, dx: -7mm, dy: -7mm, register-mark)
  },
  footer: context {
    set text(font: sans, size: 7.5pt, fill: second)
    grid(
      columns: (auto, 1fr, auto), column-gutter: 8pt, align: (left + horizon, left + horizon, right + horizon),
      inks, paper.foot, counter(page).display("1 / 1", both: true),
    )
  },
)
#set text(font: sans, size: 9.4pt * scale, fill: ink, lang: paper.language.split("-").first(), fallback: true, number-width: "tabular", hyphenate: false)
#set par(leading: 0.58em, spacing: 0.85em)
#set strong(delta: 200)
#show title: set text(font: serif, weight: 400, size: 25pt * calc.min(1, scale + 0.1))
#show title: set par(leading: 0.35em)
#show heading: set text(font: serif, weight: 400)
#show heading.where(level: 1): set text(size: 18pt * scale)
#show heading.where(level: 2): set text(size: 13.5pt * scale)
#show heading.where(level: 3): set text(size: 11pt * scale)
#show heading.where(level: 1): set block(above: 1.5em, below: 0.7em, sticky: true)
#show heading.where(level: 2): set block(above: 2.2em, below: 0.65em, sticky: true)
#show heading.where(level: 3): set block(above: 1.3em, below: 0.55em, sticky: true)
#show link: set text(fill: cyan)
#show table: it => { show link: set text(fill: ink); it }
// A probability stays with its sign; Korean breaks between words, not within them.
#show regex("[<>] [0-9.,]+"): box
#show: body => if paper.language.starts-with("ko") {
  show regex("[\\p{L}\\p{N}]*\\p{Hangul}[\\p{L}\\p{N}\\p{P}]*"): box
  body
} else { body }
#show figure.caption: it => block(width: 100%, align(left, text(size: 0.84em, fill: second, it.body)))
#set figure(numbering: none, supplement: none, gap: 0.6em)

// At the far end of the line, dots leading there, or of the next line where it finds no room.
#let aside(body) = [#h(4pt, weak: true)#box(width: 1fr, text(fill: third, repeat(gap: 2.5pt)[.]))#h(4pt)#box(width: 0.001fr)#sym.wj#box(body)]
#let run(r) = {
  let style = r.at("style", default: none)
  let body = if style == "strong" { strong(r.text) } else if style == "emphasis" { emph(r.text) } else if style == "code" { text(size: 0.88em, fill: second, r.text) } else if style == "marked" { highlight(fill: marker, extent: 1pt, r.text) } else if style == "slip" { text(fill: magenta, r.text) } else if style == "evidence" { text(fill: cyan, r.text) } else [#r.text]
  let to = r.at("to", default: none)
  if "key" in r [#metadata(none) #label(r.key)]
  let linked = if to == none { body } else if to.starts-with("#") { link(label(to.slice(1)), body) } else { link(to, body) }
  if style == "aside" { aside(linked) } else { linked }
}
#let words(runs) = runs.map(run).join()

#let tick = box(width: 0.78em, height: 0.78em, baseline: 0.06em, stroke: 0.7pt + ink)

#let as-table(b) = table(
  columns: b.columns.map(c => if c.share == none { auto } else { c.share * 1fr }),
  align: (x, y) => if b.columns.at(x).at("align", default: "left") == "right" { right } else { left },
  stroke: (x, y) => (bottom: if y == 0 { 0.7pt + ink } else { 0.35pt + line-ink }),
  inset: (x, y) => (left: if x == 0 { 0pt } else { 4pt }, right: if x == b.columns.len() - 1 { 0pt } else { 4pt }, y: 3.2pt),
  table.header(..b.columns.map(c => text(size: 0.84em, fill: second, c.head))),
  ..b.rows.map(row => if row.len() == 1 and b.columns.len() > 1 {
    (table.cell(colspan: b.columns.len(), text(fill: second, words(row.first()))),)
  } else { row.map(words) }).flatten(),
)

// All lanes share one axis; its parts are named in the head, which stands on every page.
#let as-lanes(b) = {
  let parts = grid(columns: (1fr,) * b.parts.len(), ..b.parts.map(p => box(inset: (left: 2pt), p)))
  let head(body) = text(size: 0.9em, fill: second, body)
  set text(size: 0.94em)
  table(
    columns: (11fr, 11fr, 7fr, auto),
    align: (x, y) => horizon + if x < 2 { left } else { right },
    stroke: (x, y) => (bottom: if y == 0 { 0.7pt + ink } else { 0.35pt + line-ink }),
    inset: (x, y) => (left: if x == 0 { 0pt } else { 4pt }, right: if x == 3 { 0pt } else { 4pt }, y: if x == 1 and y > 0 { 0pt } else { 3pt }),
    table.header(head(b.heads.first()), head(parts), ..b.heads.slice(1).map(head)),
    ..b.lanes.map(l => (
      words(l.name),
      pdf.artifact(image(bytes(l.svg), format: "svg", width: 100%)),
      words(l.when),
      words(l.doubt),
    )).flatten(),
  )
}

#let in-its-language(b, body) = if "language" in b { text(lang: b.language.split("-").first(), body) } else { body }

#let as-words(b) = in-its-language(b, {
  let kind = b.at("as", default: none)
  if kind == "lead" {
    block(sticky: true, text(font: serif, size: 1.28em, words(b.words)))
  } else if kind == "small" {
    block(text(size: 0.84em, fill: second, words(b.words)))
  } else if kind == "quote" {
    block(inset: (left: 10pt), stroke: (left: 1.2pt + third), text(font: serif, size: 1.12em, words(b.words)))
  } else if kind == "caution" {
    block(width: 100%, inset: (left: 9pt, y: 5pt, right: 6pt), stroke: (left: 3pt + rgb("#ffd400")), words(b.words))
  } else if kind == "story" {
    block(width: 84%, spacing: 1.1em, text(font: serif, size: 1.16em, words(b.words)))
  } else if kind == "detail" {
    block(above: 0.4em, sticky: true, text(size: 0.88em, fill: second, words(b.words)))
  } else if kind == "head" {
    block(above: 1.3em, below: 0.7em, sticky: true, strong(words(b.words)))
  } else { par(words(b.words)) }
})

#let as-list(b) = {
  let boxed = b.at("boxes", default: false)
  in-its-language(b, list(marker: if boxed { tick } else { [–] }, body-indent: 0.6em, spacing: if boxed { 0.85em } else { 0.62em }, ..b.items.map(words)))
}

#let as-pictures(b) = grid(
  columns: (1fr,) * b.across, column-gutter: 10pt, row-gutter: 10pt, align: left + top,
  ..b.pictures.map(p => figure(
    box(stroke: 0.4pt + line-ink, image("/" + p.file, alt: p.alternative, width: 100%, height: if "height" in b { b.height * 1mm } else { auto }, fit: "contain")),
    caption: words(p.caption),
  )),
)

#let as-block(b) = {
  if b.is == "heading" {
    if b.at("breaks", default: false) { pagebreak(weak: true) }
    let head = heading(level: b.level, b.text)
    if "key" in b [#head #label(b.key)] else { head }
  } else if b.is == "words" { as-words(b) } else if b.is == "list" { as-list(b) } else if b.is == "table" { as-table(b) } else if b.is == "lanes" { as-lanes(b) } else if b.is == "columns" {
    columns(b.count, gutter: 16pt, b.blocks.map(as-block).join())
  } else if b.is == "drawing" {
    figure(image(bytes(b.svg), format: "svg", alt: b.alternative, width: if "width" in b { b.width * 1mm } else { 100% }), caption: if b.caption.len() > 0 { words(b.caption) })
  } else if b.is == "pictures" { as-pictures(b) } else if b.is == "break" { pagebreak(weak: true) }
}

#if paper.contents != none {
  v(24mm)
  title()
  v(3mm)
  text(font: serif, size: 13pt, fill: second, paper.subtitle)
  v(4mm)
  for line in paper.at("front", default: ()) { block(spacing: 0.7em, line) }
  v(14mm)
  show outline.entry.where(level: 1): set block(above: 0.8em)
  outline(title: paper.contents, depth: 2, indent: 1.2em)
  pagebreak(weak: true)
} else {
  title()
  if paper.subtitle != "" { block(above: 0.8em, below: 1.2em, text(font: serif, size: 11.5pt * scale, fill: second, paper.subtitle)) }
}
#for b in paper.blocks { as-block(b) }
`;
