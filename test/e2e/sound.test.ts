import { fileURLToPath } from 'node:url'
import { build, type Rolldown } from 'vite'
import { expect, it } from 'vitest'
import { cuesOfAnHour, HOUR_S, NOON } from '../../src/web/sections/runs/engine/hour.test-support.js'
import { bench } from './support/browser.js'

type SoundPage = typeof import('./support/sound-page.js')

const { open } = bench()

/** What the page schedules tones with, as a script for a page of its own. */
async function script(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL('support/sound-page.ts', import.meta.url)),
        formats: ['iife'],
        name: 'sound',
      },
    },
  })
  const [{ output }] = built as [Rolldown.RolldownOutput]
  return output[0].code
}

it('has every tone of an hour within 50 ms of its instant in what the browser renders at 8 kHz', async () => {
  const tones = cuesOfAnHour()
    .flatMap(({ tone, at }) => (tone === null ? [] : [{ ...tone, inSeconds: (at - NOON) / 1000 }]))
    .sort((a, b) => a.inSeconds - b.inSeconds)
  const page = await open('/pair')
  // Its own pages run no scripts but their own.
  await page.goto('about:blank')
  await page.addScriptTag({ content: await script() })
  const onsets = await page.evaluate(
    ([all, seconds]) => (globalThis as unknown as { sound: SoundPage }).sound.heardAt(all, seconds),
    [tones, HOUR_S] as const,
  )
  expect(onsets).toHaveLength(tones.length)
  expect(tones.length).toBeGreaterThan(150)
  const off = onsets.map((onset, i) => Math.abs(onset - (tones[i]?.inSeconds ?? 0)))
  expect(Math.max(...off)).toBeLessThan(0.05)
})
