/**
 * Seconds at which tones set in: the first sample louder than `loud` after at least 50 ms that were not.
 * Self-contained, so that a browser can be given it too.
 */
export function locateOnsets(samples: ArrayLike<number>, rate: number, silence: number, loud: number): number[] {
  const gap = 0.05 * rate
  const onsets: number[] = []
  let lastLoud = Number.NEGATIVE_INFINITY
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs((samples[i] as number) - silence) <= loud) continue
    if (i - lastLoud > gap) onsets.push(i / rate)
    lastLoud = i
  }
  return onsets
}
