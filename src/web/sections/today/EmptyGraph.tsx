import { useUnits, useWidth } from '../../shared/ui/index.js'

const DEGREES = { metric: ['18', '20', '22', '24 °C'], us: ['64', '68', '72', '76 °F'] } as const
const HEIGHT = 148

/** The axes of the graph of times, before there is a time on them. */
export function EmptyGraph() {
  const units = useUnits()
  const [frame, width] = useWidth<HTMLDivElement>()
  const [left, right, foot] = [44, width - 24, HEIGHT - 28]
  const at = (part: number) => left + part * (right - left)
  return (
    <div ref={frame} style={{ minHeight: HEIGHT }}>
      {width > 200 && (
        <svg aria-hidden="true" width={width} height={HEIGHT} fontSize={14} fill="var(--ink-2)">
          {[20, 56, 92].map((y, row) => (
            <g key={y}>
              <line x1={left} x2={right} y1={y} y2={y} stroke="var(--rule)" />
              <text x={left - 8} y={y + 5} textAnchor="end">
                {['12', '10', '8'][row]}
              </text>
            </g>
          ))}
          <line x1={left} x2={right} y1={foot} y2={foot} stroke="var(--ink-2)" />
          {DEGREES[units].map((text, place) => (
            <g key={text}>
              <line
                x1={at(0.08 + place * 0.28)}
                x2={at(0.08 + place * 0.28)}
                y1={foot}
                y2={foot + 5}
                stroke="var(--ink-2)"
              />
              <text x={at(0.08 + place * 0.28)} y={foot + 22} textAnchor="middle">
                {text}
              </text>
            </g>
          ))}
          <text x={left - 8} y={foot + 4} textAnchor="end">
            min
          </text>
          <circle cx={at(0.36)} cy={66} r={6} fill="none" stroke="var(--edge)" strokeWidth={2} strokeDasharray="3 3" />
        </svg>
      )}
    </div>
  )
}
