import { expect, it } from 'vitest'
import { renderTrack, TRACK_RATE, trackFile } from './track.js'

it('is a file of sound as long as asked for, of one byte a sample', async () => {
  const samples = renderTrack([{ inSeconds: 0.5, hertz: 1000, seconds: 0.25 }], 2)
  const bytes = new DataView(await trackFile(samples).arrayBuffer())
  const word = (at: number) => String.fromCharCode(...[0, 1, 2, 3].map((i) => bytes.getUint8(at + i)))
  expect([word(0), word(8), word(12), word(36)]).toEqual(['RIFF', 'WAVE', 'fmt ', 'data'])
  expect(bytes.getUint32(24, true)).toBe(TRACK_RATE)
  expect(bytes.getUint32(40, true)).toBe(2 * TRACK_RATE)
  expect(bytes.byteLength).toBe(44 + 2 * TRACK_RATE)
})

it('holds the pitch of a tone, silence around it, and no click at its ends', () => {
  const samples = [...renderTrack([{ inSeconds: 0.5, hertz: 1000, seconds: 0.25 }], 1)].map((sample) => sample - 128)
  const tone = samples.slice(0.5 * TRACK_RATE, 0.75 * TRACK_RATE)
  const rises = tone.filter((sample, i) => sample > 0 && (tone[i - 1] ?? 0) <= 0)
  expect(rises.length).toBeGreaterThanOrEqual(248)
  expect(rises.length).toBeLessThanOrEqual(250)
  expect(Math.max(...tone)).toBeGreaterThan(90)
  expect(samples.filter((sample, i) => sample !== 0 && (i < 0.5 * TRACK_RATE || i >= 0.75 * TRACK_RATE))).toEqual([])
  const steps = tone.slice(0, 8).map((sample, i) => Math.abs(sample - (tone[i - 1] ?? 0)))
  expect(Math.max(...steps)).toBeLessThan(12)
})

it('leaves out the part of a tone that is over', () => {
  const samples = renderTrack([{ inSeconds: -0.1, hertz: 1000, seconds: 0.15 }], 1)
  expect(samples.slice(0, 300).some((sample) => sample !== 128)).toBe(true)
  expect(samples.slice(0.05 * TRACK_RATE).every((sample) => sample === 128)).toBe(true)
})
