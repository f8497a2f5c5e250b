import { useEffect, useSyncExternalStore } from 'react'

/** Voices of this computer that speak without the web; none where it has none. */
export function useLocalVoices(): readonly SpeechSynthesisVoice[] {
  return useSyncExternalStore(listen, read)
}

type Said = Readonly<{ isOn: boolean; voice: string; rate: number }>

/** Speaks a text whenever it changes, in place of what was still being said. */
export function useSpeech(text: string, { isOn, voice, rate }: Said): void {
  const voices = useLocalVoices()
  useEffect(() => {
    const chosen = voices.find(({ voiceURI }) => voiceURI === voice) ?? voices[0]
    if (!isOn || chosen === undefined || text === '') return
    const said = new SpeechSynthesisUtterance(text)
    said.voice = chosen
    said.lang = chosen.lang
    said.rate = rate
    speechSynthesis.speak(said)
    return () => speechSynthesis.cancel()
  }, [text, isOn, voice, rate, voices])
}

let known: readonly SpeechSynthesisVoice[] = []

function read(): readonly SpeechSynthesisVoice[] {
  const now = speechSynthesis.getVoices().filter(({ localService }) => localService)
  const isSame =
    now.length === known.length && now.every(({ voiceURI }, at) => voiceURI === known[at]?.voiceURI)
  if (!isSame) known = now
  return known
}

function listen(onChange: () => void): () => void {
  speechSynthesis.addEventListener('voiceschanged', onChange)
  return () => speechSynthesis.removeEventListener('voiceschanged', onChange)
}
