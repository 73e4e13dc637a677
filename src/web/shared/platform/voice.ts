/** A voice for announcements. */
export interface Voice {
  /** Whether this device has one. Some load theirs late, so it is asked each time. */
  readonly here: () => boolean
  /** Says some words aloud, in place of what was still being said. Without a voice nothing happens. */
  readonly say: (words: string) => void
}

const canSpeak = () => 'speechSynthesis' in window

export const deviceVoice: Voice = {
  here: () => canSpeak() && window.speechSynthesis.getVoices().length > 0,
  say: (words) => {
    if (!canSpeak()) return
    window.speechSynthesis.cancel()
    const saying = new SpeechSynthesisUtterance(words)
    saying.lang = 'en'
    window.speechSynthesis.speak(saying)
  },
}
