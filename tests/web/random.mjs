// Random whole numbers for tests.

/**
 * Draws from 0 to below `most`, the same for the same seed on every machine. Source: mulberry32,
 * from memory.
 */
export function randomOf(seed) {
  let state = seed >>> 0;
  return (most) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % most;
  };
}
