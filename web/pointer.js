// Fingers, mouse, pen and wheel, handed on as they come. Fingers come as touch events, because a
// phone raises its keyboard only when a field is focused inside `touchend`. What they mean is
// decided in C++.

/** @typedef {import('./bridge').App} App */

const phase = { down: 0, move: 1, up: 2, cancel: 3 };
const kind = { mouse: 0, touch: 1 };
const line_px = 40;

/**
 * @param {HTMLCanvasElement} canvas
 * @param {App} app
 * @param {{ before: () => void, tapped: () => void }} hooks before: a new input begins; tapped: a
 *   finger or button was lifted and the app has dealt with it
 */
export function listenToPointer(canvas, app, { before, tapped }) {
  listenToTouch(canvas, app, before, tapped);
  listenToMouse(canvas, app, before, tapped);
  canvas.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const unit = event.deltaMode === 0 ? 1 : line_px;
      app.wheel(event.clientX, event.clientY, event.deltaX * unit, event.deltaY * unit);
    },
    { passive: false },
  );
  canvas.addEventListener('contextmenu', (event) => event.preventDefault());
}

/**
 * @param {HTMLCanvasElement} canvas @param {App} app
 * @param {() => void} before @param {() => void} tapped
 */
function listenToTouch(canvas, app, before, tapped) {
  /** @param {number} which @param {TouchEvent} event */
  const send = (which, event) => {
    // Without this the browser would follow up with mouse events and move the focus away.
    if (event.cancelable) event.preventDefault();
    for (const touch of event.changedTouches) {
      const { identifier, clientX, clientY } = touch;
      app.pointer(which, identifier, clientX, clientY, event.timeStamp, kind.touch);
    }
  };
  const options = { passive: false };
  canvas.addEventListener(
    'touchstart',
    (event) => {
      before();
      send(phase.down, event);
    },
    options,
  );
  canvas.addEventListener('touchmove', (event) => send(phase.move, event), options);
  canvas.addEventListener('touchcancel', (event) => send(phase.cancel, event), options);
  canvas.addEventListener(
    'touchend',
    (event) => {
      before();
      send(phase.up, event);
      tapped();
    },
    options,
  );
}

/**
 * @param {HTMLCanvasElement} canvas @param {App} app
 * @param {() => void} before @param {() => void} tapped
 */
function listenToMouse(canvas, app, before, tapped) {
  /** @param {number} which @param {PointerEvent} event */
  const send = (which, event) => {
    if (event.pointerType === 'touch') return false;
    app.pointer(which, event.pointerId, event.clientX, event.clientY, event.timeStamp, kind.mouse);
    return true;
  };
  // The canvas never takes the focus from a field; a tap that leaves the field closes it below.
  canvas.addEventListener('mousedown', (event) => event.preventDefault());
  canvas.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || event.pointerType === 'touch') return;
    before();
    canvas.setPointerCapture(event.pointerId);
    send(phase.down, event);
  });
  canvas.addEventListener('pointermove', (event) => send(phase.move, event));
  canvas.addEventListener('pointercancel', (event) => send(phase.cancel, event));
  canvas.addEventListener('pointerup', (event) => {
    if (event.button !== 0 || event.pointerType === 'touch') return;
    before();
    send(phase.up, event);
    tapped();
  });
}
