import { useId } from 'react'
import type { Mark, Drawing as Picture, Point, Tone } from '../../../score/index.js'

const COLOUR: Record<Tone, string> = {
  ink: 'var(--ink)',
  quiet: 'var(--ink-2)',
  rule: 'var(--rule)',
  edge: 'var(--edge)',
  accent: 'var(--accent)',
  wash: 'var(--wash)',
  sheet: 'var(--sheet)',
  ground: 'var(--ground)',
}
const joined = (points: readonly Point[]) => points.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ')
const dashed = (dash?: readonly number[]) => (dash ? { strokeDasharray: dash.join(' ') } : {})

/** Paints a picture as SVG. Colours follow the ground; those who do not see it get it in words. */
export function Drawing({ picture }: { picture: Picture }) {
  const id = useId()
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-words`}
      width={picture.width}
      height={picture.height}
      viewBox={`0 0 ${picture.width} ${picture.height}`}
    >
      <title id={`${id}-title`}>{picture.title}</title>
      <desc id={`${id}-words`}>{picture.description}</desc>
      {picture.marks.map((mark, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no identity but their place in the painting order
        <Painted key={place} mark={mark} />
      ))}
    </svg>
  )
}

function Painted({ mark }: { mark: Mark }) {
  const colour = COLOUR[mark.tone]
  switch (mark.kind) {
    case 'line': {
      const [[x1, y1], [x2, y2]] = [mark.from, mark.to]
      return <line x1={x1} y1={y1} x2={x2} y2={y2} stroke={colour} strokeWidth={mark.weight} {...dashed(mark.dash)} />
    }
    case 'path':
      return (
        <polyline
          points={joined(mark.points)}
          fill="none"
          stroke={colour}
          strokeWidth={mark.weight}
          strokeLinejoin="round"
          {...dashed(mark.dash)}
        />
      )
    case 'area':
      return <polygon points={joined(mark.points)} fill={colour} />
    case 'circle':
      return (
        <circle
          cx={mark.at[0]}
          cy={mark.at[1]}
          r={mark.radius}
          fill={COLOUR[mark.fill]}
          stroke={colour}
          strokeWidth={mark.weight}
        />
      )
    case 'diamond': {
      const [x, y] = mark.at
      const r = mark.radius
      const corners: Point[] = [
        [x, y - r],
        [x + r, y],
        [x, y + r],
        [x - r, y],
      ]
      return <polygon points={joined(corners)} fill={colour} />
    }
    case 'text':
      return (
        <text
          x={mark.at[0]}
          y={mark.at[1]}
          fill={colour}
          fontSize={mark.size}
          fontWeight={mark.strong ? 600 : 400}
          textAnchor={mark.anchor}
          {...(mark.halo
            ? { stroke: COLOUR[mark.halo], strokeWidth: 5, strokeLinejoin: 'round', paintOrder: 'stroke' }
            : {})}
        >
          {mark.text}
        </text>
      )
  }
}
