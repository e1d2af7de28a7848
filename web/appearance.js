// What the system asks for, live: size of the page, pixel ratio, keyboard, dark, contrast, motion.

/** @typedef {import('./bridge').App} App */

/** @param {string} name */
function safe(name) {
  return parseFloat(getComputedStyle(document.documentElement).getPropertyValue(name)) || 0;
}

/** @param {HTMLCanvasElement} canvas @param {App} app */
function fit(canvas, app) {
  const view = visualViewport;
  // While a person looks closer with two fingers, the page stays as it is.
  const zoomed = view !== null && Math.abs(view.scale - 1) > 0.01;
  const width = zoomed || view === null ? innerWidth : view.width;
  const height = zoomed || view === null ? innerHeight : view.height;
  const ratio = devicePixelRatio;
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  canvas.style.top = `${zoomed ? 0 : (view?.offsetTop ?? 0)}px`;
  const across = Math.round(width * ratio);
  const down = Math.round(height * ratio);
  // Setting the same size again would still wipe the picture.
  if (canvas.width !== across) canvas.width = across;
  if (canvas.height !== down) canvas.height = down;
  app.resize({
    width,
    height,
    ratio,
    safe_top: safe('--safe-top'),
    safe_bottom: safe('--safe-bottom'),
  });
}

/** @param {() => void} changed */
function watchRatio(changed) {
  matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener(
    'change',
    () => {
      changed();
      watchRatio(changed);
    },
    { once: true },
  );
}

/**
 * @param {HTMLCanvasElement} canvas
 * @param {App} app
 */
export function followAppearance(canvas, app) {
  const refit = () => fit(canvas, app);
  refit();
  window.addEventListener('resize', refit);
  visualViewport?.addEventListener('resize', refit);
  watchRatio(refit);

  const dark = matchMedia('(prefers-color-scheme: dark)');
  const contrast = matchMedia('(prefers-contrast: more)');
  const motion = matchMedia('(prefers-reduced-motion: reduce)');
  const forced = matchMedia('(forced-colors: active)');
  const tell = () => {
    // The browser cannot force its colours on a canvas: the strongest look of that scheme it is.
    const more_contrast = contrast.matches || (forced.matches && !dark.matches);
    app.appearance(dark.matches, more_contrast, motion.matches);
  };
  tell();
  for (const query of [dark, contrast, motion, forced]) query.addEventListener('change', tell);
}
