/** Tones, vibration and a voice, each to be switched off; and the screen kept awake where that can be. */

export const signals = { sound: true, vibration: true, voice: false };

export const CAN = {
  sound: 'AudioContext' in globalThis,
  vibration: 'vibrate' in navigator,
  voice: 'speechSynthesis' in globalThis,
};

let audio: AudioContext | null = null;

/** To be called from a press: only then may a page make sounds. */
export function readySignals(): void {
  if (CAN.sound && signals.sound) audio ??= new AudioContext();
  void audio?.resume().catch(() => undefined);
}

/** One short sign; `high` for a beginning, low for an end. Spoken words replace those before them. */
export function signal(high: boolean, words: string): void {
  if (signals.sound) tone(high ? 880 : 440);
  if (signals.vibration && CAN.vibration) navigator.vibrate(high ? 80 : 40);
  if (!signals.voice || !CAN.voice || words === '') return;
  speechSynthesis.cancel();
  speechSynthesis.speak(new SpeechSynthesisUtterance(words));
}

/** One beat in so many seconds from now: set by the clock of the sound, which is steadier than the page's. */
export function beatIn(seconds: number): void {
  if (signals.sound) tone(660, seconds);
  if (signals.vibration && CAN.vibration) setTimeout(() => navigator.vibrate(20), 1000 * seconds);
}

function tone(hertz: number, inSeconds = 0): void {
  if (audio === null) return;
  const at = audio.currentTime + inSeconds;
  const [sound, loudness] = [audio.createOscillator(), audio.createGain()];
  sound.frequency.value = hertz;
  loudness.gain.setValueAtTime(0.3, at);
  loudness.gain.exponentialRampToValueAtTime(0.001, at + 0.15);
  sound.connect(loudness).connect(audio.destination);
  sound.start(at);
  sound.stop(at + 0.16);
}

interface Lock {
  release(): Promise<void>;
}

let lock: Lock | null = null;
let wanted = false;

/** Asks for a screen that stays on, or lets it go. A page that was hidden asks again. */
export function keepAwake(on: boolean): void {
  wanted = on;
  if (!on) {
    void lock?.release().catch(() => undefined);
    lock = null;
    return;
  }
  const { wakeLock } = navigator as { wakeLock?: { request(kind: 'screen'): Promise<Lock> } };
  void wakeLock?.request('screen').then(
    (got) => (wanted ? (lock = got) : void got.release()),
    () => undefined,
  );
}

document.addEventListener('visibilitychange', () => {
  if (wanted && document.visibilityState === 'visible') keepAwake(true);
});
