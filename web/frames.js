// Frames on demand: one is drawn only when somebody asked for it, so an idle page draws none.

export class Frames {
  /** @param {(time_ms: number) => boolean} draw draws one; true when another is wanted */
  constructor(draw) {
    this.draw = draw;
    this.wanted = 0;
    this.scheduled = false;
    this.stopped = true;
  }

  /** At least so many more frames. @param {number} frames */
  wake(frames) {
    this.wanted = Math.max(this.wanted, frames);
    if (this.scheduled || this.stopped || this.wanted === 0) return;
    this.scheduled = true;
    requestAnimationFrame((time_ms) => this.run(time_ms));
  }

  /** No frames until `resume`: before the start, and while the drawing context is lost. */
  stop() {
    this.stopped = true;
  }

  resume() {
    this.stopped = false;
    this.wake(2);
  }

  /** @param {number} time_ms */
  run(time_ms) {
    this.scheduled = false;
    if (this.stopped) return;
    this.wanted = Math.max(0, this.wanted - 1);
    const more = this.draw(time_ms);
    this.wake(more ? Math.max(1, this.wanted) : this.wanted);
  }
}
