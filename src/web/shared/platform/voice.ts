/** Whether this device has a voice to speak with. Some load theirs late, so it is asked each time. */
export const hasVoice = (): boolean => 'speechSynthesis' in window && window.speechSynthesis.getVoices().length > 0

/** Says some words aloud, in place of what was still being said. Without a voice nothing happens. */
export function speak(words: string): void {
  if (!('speechSynthesis' in window)) return
  window.speechSynthesis.cancel()
  const saying = new SpeechSynthesisUtterance(words)
  saying.lang = 'en'
  window.speechSynthesis.speak(saying)
}
