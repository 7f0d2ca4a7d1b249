// The one clock of the page. Everything that shows an instant listens to it.

export function makePlayback(duration, rowTimes) {
  const listeners = [];
  const state = { time: 0, duration, playing: false, speed: 1, loop: false };
  let lastFrame = 0;

  const tell = () => { for (const listener of listeners) listener(state); };

  function frame(now) {
    if (!state.playing) return;
    // A page that slept does not leap ahead.
    const passed = Math.min((now - lastFrame) / 1000, 0.1);
    lastFrame = now;
    let time = state.time + passed * state.speed;
    if (time >= duration) {
      if (state.loop) time = 0;
      else { time = duration; state.playing = false; }
    }
    state.time = time;
    tell();
    if (state.playing) requestAnimationFrame(frame);
  }

  return {
    state,
    listen(listener) { listeners.push(listener); listener(state); },
    /// Shows an instant and stays there.
    seek(time) {
      state.playing = false;
      state.time = Math.min(Math.max(Number(time) || 0, 0), duration);
      tell();
    },
    play() {
      if (state.playing) return;
      if (state.time >= duration) state.time = 0;
      state.playing = true;
      lastFrame = performance.now();
      tell();
      requestAnimationFrame(frame);
    },
    pause() { state.playing = false; tell(); },
    toggle() { if (state.playing) this.pause(); else this.play(); },
    setSpeed(speed) { state.speed = speed; tell(); },
    setLoop(loop) { state.loop = loop; tell(); },
    /// To the next kept row of the first record (count < 0: back).
    step(count) {
      const forward = count > 0;
      let time = state.time;
      for (let k = 0; k < Math.abs(count); ++k) {
        const next = forward ? rowTimes.find((t) => t > time + 1e-7) : rowTimes.findLast((t) => t < time - 1e-7);
        if (next === undefined) break;
        time = next;
      }
      this.seek(time);
    },
  };
}
