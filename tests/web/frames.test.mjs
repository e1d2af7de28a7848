import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Frames } from '../../web/frames.js';

/** Frames whose browser is a list of callbacks. */
function onDemand(draw) {
  const asked = [];
  globalThis.requestAnimationFrame = (then) => asked.push(then);
  const frames = new Frames(draw);
  let drawn = 0;
  frames.draw = (time_ms) => {
    drawn += 1;
    return draw(drawn, time_ms);
  };
  const run = () => {
    let guard = 0;
    while (asked.length > 0 && guard < 100) {
      asked.shift()(guard);
      guard += 1;
    }
    return drawn;
  };
  return { frames, run, asked };
}

test('nothing is asked for before the start, though wishes are kept', () => {
  const { frames, asked } = onDemand(() => false);
  frames.wake(3);
  assert.equal(asked.length, 0);
});

test('so many frames as were wished for are drawn, then none', () => {
  const { frames, run } = onDemand(() => false);
  frames.wake(5);
  frames.resume();
  assert.equal(run(), 5);
  frames.wake(1);
  frames.wake(1);
  assert.equal(run(), 6);
});

test('frames go on while the program wants them', () => {
  const { frames, run } = onDemand((drawn) => drawn < 10);
  frames.resume();
  assert.equal(run(), 10);
});

test('a lost picture stops the frames, a restored one draws again', () => {
  const { frames, run } = onDemand(() => true);
  frames.resume();
  frames.stop();
  assert.equal(run(), 0);
  frames.draw = () => false;
  frames.resume();
  assert.equal(run(), 0);
});
