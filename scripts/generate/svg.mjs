// A drawing of src/score/picture as an SVG file: the same marks that screen and paper paint, in colours that stand on
// a light page and on a dark one.
const COLOUR = {
  ink: '#3a3a38',
  quiet: '#6f6f6a',
  rule: '#d9d8d2',
  edge: '#b9b8b0',
  accent: '#a3341f',
  wash: '#efe3d3',
  sheet: '#faf9f5',
  ground: '#faf9f5',
}
const number = (value) => String(Number(value.toFixed(2)))
const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')
const joined = (points) => points.map(([x, y]) => `${number(x)},${number(y)}`).join(' ')
const stroke = ({ tone, weight, dash }) =>
  `stroke="${COLOUR[tone]}" stroke-width="${weight}"${dash ? ` stroke-dasharray="${dash.join(' ')}"` : ''}`

const PAINT = {
  line: (mark) => `<polyline points="${joined([mark.from, mark.to])}" ${stroke(mark)}/>`,
  path: (mark) => `<polyline points="${joined(mark.points)}" fill="none" stroke-linejoin="round" ${stroke(mark)}/>`,
  area: (mark) => `<polygon points="${joined(mark.points)}" fill="${COLOUR[mark.tone]}"/>`,
  circle: ({ at: [x, y], radius, fill, ...mark }) =>
    `<circle cx="${number(x)}" cy="${number(y)}" r="${radius}" fill="${COLOUR[fill]}" ${stroke(mark)}/>`,
  diamond: ({ at: [x, y], radius: r, tone }) =>
    `<polygon points="${joined([
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ])}" fill="${COLOUR[tone]}"/>`,
  text: ({ at: [x, y], text, tone, size, anchor, strong }) =>
    `<text x="${number(x)}" y="${number(y)}" fill="${COLOUR[tone]}" font-size="${size}" text-anchor="${anchor}"${strong ? ' font-weight="600"' : ''}>${escaped(text)}</text>`,
}

export function svgOf({ width, height, title, description, marks }) {
  const paper = `<rect width="${width}" height="${height}" fill="${COLOUR.sheet}"/>`
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="sans-serif" role="img">
<title>${escaped(title)}</title>
<desc>${escaped(description)}</desc>
${[paper, ...marks.map((mark) => PAINT[mark.kind](mark))].join('\n')}
</svg>
`
}
