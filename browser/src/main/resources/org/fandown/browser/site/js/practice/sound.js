// @ts-check
/** What is heard in the cab: buzzer, purge, and the air that escapes where one stands. */

export class Sound {
  constructor() {
    /** @type {AudioContext | undefined} */
    this.audio = undefined;
    /** @type {Map<string, GainNode>} */
    this.gains = new Map();
  }

  get on() {
    return this.audio !== undefined;
  }

  /** Turns it on or off; browsers allow it only when somebody presses something. */
  toggle() {
    if (this.audio) {
      this.close();
      return;
    }
    const audio = new AudioContext();
    this.audio = audio;
    const buzzer = new OscillatorNode(audio, { type: 'square', frequency: 620 });
    const noise = new AudioBufferSourceNode(audio, { buffer: hiss(audio), loop: true });
    const purge = new BiquadFilterNode(audio, { type: 'lowpass', frequency: 2500 });
    const leak = new BiquadFilterNode(audio, { type: 'highpass', frequency: 5000 });
    noise.connect(purge);
    noise.connect(leak);
    this.add('buzzer', buzzer);
    this.add('purge', purge);
    this.add('leak', leak);
    buzzer.start();
    noise.start();
  }

  /** @param {string} name @param {AudioNode} from */
  add(name, from) {
    const audio = /** @type {AudioContext} */ (this.audio);
    const gain = new GainNode(audio, { gain: 0 });
    from.connect(gain).connect(audio.destination);
    this.gains.set(name, gain);
  }

  /** Sounds as the truck does now. @param {import('./session.js').Session} s */
  follow(s) {
    this.set('buzzer', s.on('low-air buzzer') && s.station === 'cab' ? 0.05 : 0);
    this.set('purge', s.on('purge') ? 0.4 : 0);
    this.set('leak', s.running ? Math.min(0.3, 0.03 * s.hiss) : 0);
  }

  /** @param {string} name @param {number} gain */
  set(name, gain) {
    this.gains.get(name)?.gain.setTargetAtTime(gain, /** @type {AudioContext} */ (this.audio).currentTime, 0.05);
  }

  close() {
    this.audio?.close();
    this.audio = undefined;
    this.gains.clear();
  }
}

/** Two seconds of noise. @param {AudioContext} audio */
function hiss(audio) {
  const buffer = audio.createBuffer(1, 2 * audio.sampleRate, audio.sampleRate);
  const samples = buffer.getChannelData(0);
  for (let i = 0; i < samples.length; i++) samples[i] = 2 * Math.random() - 1;
  return buffer;
}
