import { soundOn, type Tone } from '../../../src/web/shared/platform/tones.js'
import { locateOnsets } from '../../support/onsets.js'

const RATE = 8000
const LOUD = 0.05

/** For a page of the test: plays tones into an audio clock that runs ahead of time, and says where they set in. */
export async function heardAt(tones: readonly Tone[], seconds: number): Promise<number[]> {
  const audio = new OfflineAudioContext(1, seconds * RATE, RATE)
  soundOn(audio, tones, 0)
  const sound = await audio.startRendering()
  return locateOnsets(sound.getChannelData(0), RATE, 0, LOUD)
}
