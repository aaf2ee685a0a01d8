import type { TapAnswer } from '../application/ports/tap-answer';

const TONE_HZ = 660;
const TONE_S = 0.07;
const LOUDNESS = 0.4;
const BUZZ_MS = 40;

let audio: AudioContext | null = null;

/** One short soft tone, unlike any alarm of a plant, and one short buzz. */
export const tapAnswer: TapAnswer = {
  async sound() {
    try {
      audio ??= new AudioContext();
      // Not only suspended: a call or a lock of the screen leaves it interrupted, and it stays so until it is asked.
      if (audio.state !== 'running') await audio.resume();
      const tone = audio.createOscillator();
      const loudness = audio.createGain();
      const at = audio.currentTime;
      tone.frequency.value = TONE_HZ;
      loudness.gain.setValueAtTime(LOUDNESS, at);
      loudness.gain.linearRampToValueAtTime(0, at + TONE_S);
      tone.connect(loudness).connect(audio.destination);
      tone.start(at);
      tone.stop(at + TONE_S);
    } catch {
      // A browser without sound: what is seen says it all.
    }
  },
  vibrate() {
    navigator.vibrate?.(BUZZ_MS);
  },
};
