import PDFDocument from 'pdfkit'
import type { Instant } from '../../kernel/index.js'
import { Fonts } from './fonts.js'
import type { Block, Boxes, Line, Pages, Rules, Table } from './page.js'
import { PAPER_TONES, paintDrawing } from './paint-drawing.js'

/**
 * Paints pages as a tagged PDF: headings, paragraphs, tables and figures carry their roles in reading order.
 * The same pages painted for the same instant are the same file, byte for byte. The first page names the file.
 */
export async function paintPages([first, ...others]: Pages, printedAt: Instant): Promise<Uint8Array> {
  const doc = new PDFDocument({
    size: [first.width, first.height],
    margin: 0,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    info: { Title: first.title, Creator: 'Wetside', Producer: 'Wetside', CreationDate: new Date(printedAt) },
  })
  const finished = collected(doc)
  const fonts = new Fonts(doc)
  const root = doc.struct('Document')
  doc.addStructure(root)
  for (const block of first.blocks) paintBlock(fonts, root, block)
  for (const page of others) {
    doc.addPage({ size: [page.width, page.height], margin: 0 })
    for (const block of page.blocks) paintBlock(fonts, root, block)
  }
  root.end()
  doc.end()
  return finished
}

function paintBlock(fonts: Fonts, root: PDFKit.PDFStructureElement, block: Block): void {
  const { doc } = fonts
  switch (block.kind) {
    case 'words':
      root.add(doc.struct(block.role, {}, () => setLines(fonts, block.lines)))
      return
    case 'table':
      root.add(table(fonts, block))
      return
    case 'figure': {
      const { title, description } = block.drawing
      const paint = () => paintDrawing(fonts, block.drawing, block.x, block.y)
      root.add(doc.struct('Figure', { title, alt: `${title}. ${description}` }, paint))
      return
    }
    case 'running':
      doc.markContent('Artifact', { type: 'Pagination' })
      setLines(fonts, block.lines)
      doc.endMarkedContent()
      return
    case 'boxes':
      paintBoxes(doc, block)
      return
    case 'rules':
      paintRules(doc, block)
  }
}

function table(fonts: Fonts, { head, rows }: Table): PDFKit.PDFStructureElement {
  const { doc } = fonts
  const cell = (role: 'TH' | 'TD', scope: 'Column' | 'Row' | null, line: Line) =>
    doc.struct(role, scope === null ? {} : headingOf(scope), () => setLines(fonts, [line]))
  const heading = head.map((line) => cell('TH', 'Column', line))
  const body = rows.map((row) =>
    doc.struct(
      'TR',
      {},
      row.map((line, i) => (i === 0 ? cell('TH', 'Row', line) : cell('TD', null, line))),
    ),
  )
  return doc.struct('Table', {}, [doc.struct('TR', {}, heading), ...body])
}

/** pdfkit writes the scope of a heading but leaves it out of its published options. */
const headingOf = (scope: 'Column' | 'Row') => ({ scope }) as PDFKit.Mixins.StructureElementOptions

function setLines(fonts: Fonts, lines: readonly Line[]): void {
  lines.forEach((line, i) => {
    const x = line.anchor === 'start' ? line.x : line.x - fonts.width(line.text, line.face, line.size)
    fonts.doc.fillColor(PAPER_TONES[line.ink])
    // The space where a line is broken, so that the words stay apart when the paragraph is read or copied.
    const ending = i < lines.length - 1 ? ' ' : ''
    fonts.set(line.text + ending, line.face, line.size, x, line.y)
  })
}

function paintRules(doc: PDFKit.PDFDocument, { rules }: Rules): void {
  doc.markContent('Artifact', { type: 'Layout' })
  for (const { from, to, y, dotted } of rules) {
    doc
      .moveTo(from, y)
      .lineTo(to, y)
      .lineWidth(dotted ? 0.8 : 0.6)
    if (dotted) doc.dash(0.8, { space: 3.2 })
    doc.stroke(PAPER_TONES.edge).undash()
  }
  doc.endMarkedContent()
}

function paintBoxes(doc: PDFKit.PDFDocument, { boxes }: Boxes): void {
  doc.markContent('Artifact', { type: 'Layout' })
  for (const { x, y, width, height } of boxes) {
    doc.rect(x, y, width, height).lineWidth(0.8).stroke(PAPER_TONES.edge)
  }
  doc.endMarkedContent()
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = []
    doc.on('data', (chunk: Buffer) => chunks.push(chunk))
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))))
    doc.on('error', reject)
  })
}
