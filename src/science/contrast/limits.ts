/** Ranges and defaults as data; those without a source are assumptions of ours. */
export const CONTRAST_LIMITS = {
  time: { low: 1, high: 21_600 },
  contrast: { low: 0.02, high: 6 },
  points: { fewest: 2, most: 24 },
  standardError: { low: 0, high: 0.5 },
  /** Standard deviation from strip to strip until it is measured: common practice. */
  scatter: 0.02,
  scatters: { low: 0.001, high: 0.5 },
  /** Two times closer than this part of each other say nothing about the law. */
  closest: 0.02,
  /** One N is one stop of the subject, 0.30, at the usual density range of 1.20: so much in 1/G. */
  oneN: 0.25,
  /** A most contrast so many times the greatest strip's is no finding: the strips show no slowing down. */
  mostOverStrips: 20,
} as const
