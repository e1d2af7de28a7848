// What the tests run inside the page, the same in every engine. Each function is sent as its own
// text, so it uses nothing from outside itself.

/**
 * Counts animation frames, asked for and drawn, and timers, keeps how long each frame's script took
 * and notes when the page was first seen. Does nothing the second time.
 */
export function countWork() {
  if (window.work_counts !== undefined) return;
  const counts = { asked: 0, frames: 0, timers: 0 };
  window.frame_costs_ms = [];
  const frame = window.requestAnimationFrame;
  window.requestAnimationFrame = (then) => {
    counts.asked += 1;
    return frame.call(window, (time_ms) => {
      counts.frames += 1;
      const start_ms = performance.now();
      then(time_ms);
      window.frame_costs_ms.push(performance.now() - start_ms);
    });
  };
  for (const name of ['setTimeout', 'setInterval']) {
    const original = window[name];
    window[name] = (...rest) => {
      counts.timers += 1;
      return original.apply(window, rest);
    };
  }
  counts.painted = !PerformanceObserver.supportedEntryTypes.includes('paint');
  if (!counts.painted) {
    const seen = new PerformanceObserver(() => {
      counts.painted = true;
    });
    seen.observe({ type: 'paint', buffered: true });
  }
  Object.defineProperty(window, 'work_counts', { value: counts });
}

/** Gives the page `window.reader`, which finds what a screen reader would say. */
export function bringReader() {
  const roles = { BUTTON: 'button', P: 'paragraph', LI: 'listitem', UL: 'list' };
  for (const tag of ['H1', 'H2', 'H3', 'H4', 'H5', 'H6']) roles[tag] = 'heading';
  for (const tag of ['INPUT', 'TEXTAREA']) roles[tag] = 'textbox';
  const role_of = (element) => element.getAttribute('role') ?? roles[element.tagName];
  const said_by = (element) => element.getAttribute('aria-label') ?? element.textContent.trim();
  // Some engines put commas of a language's own between the words of a list; spaces are the same.
  const plain = (text) => text.replaceAll('\u00a0', ' ');
  const fits = (element, { role, name, text }) => {
    if (role_of(element) !== role || element.closest('[hidden], [inert]') !== null) return false;
    const matches = (wanted, found) =>
      wanted.pattern === undefined
        ? wanted.part
          ? found.includes(wanted.is)
          : found === wanted.is
        : new RegExp(wanted.pattern, wanted.flags).test(found);
    if (name !== undefined && !matches(name, plain(said_by(element)))) return false;
    return text === undefined || matches(text, plain(element.textContent.trim()));
  };
  const all = (query) =>
    [...document.querySelectorAll('#mirror *, #spoken, #field *, #trouble *')].filter((element) =>
      fits(element, query),
    );
  const tell = (element) => ({
    said: said_by(element),
    text: element.textContent.trim(),
    ...window.sight(element),
  });
  window.reader = {
    all: (query) => all(query).map(tell),
    first: (query) => {
      const [found] = all(query);
      return found === undefined ? null : tell(found);
    },
  };
}

/**
 * Gives the page `window.sight`: the box of an element, the part of it that can be seen and tapped,
 * and the part of the page that a finger drags to bring it into sight.
 *
 * The mirror says of an element what is seen of it in `data-seen`, or nothing. Then the part is
 * worked out from what lies over the page and does not move with it: the title above, and whatever
 * can be tapped and comes later.
 */
export function bringSight() {
  const box_of = (element) => {
    const { left, top, right, bottom } = element.getBoundingClientRect();
    return { left, top, right, bottom };
  };
  const overlap = (one, two) =>
    one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom;
  /** Keeps the higher one of the parts above and below. */
  const cut = (box, over) => {
    if (!overlap(box, over)) return box;
    const above = over.top - box.top;
    const below = box.bottom - over.bottom;
    return above >= below ? { ...box, bottom: over.top } : { ...box, top: over.bottom };
  };
  const seenPart = (element, whole, view) => {
    const seen = element.dataset.seen?.split(' ').map(Number);
    if (seen !== undefined) {
      return { left: seen[0], top: seen[1], right: seen[0] + seen[2], bottom: seen[1] + seen[3] };
    }
    let part = {
      left: Math.max(whole.left, view.left),
      top: Math.max(whole.top, view.top),
      right: Math.min(whole.right, view.right),
      bottom: Math.min(whole.bottom, view.bottom),
    };
    const title = document.querySelector('#mirror h1');
    if (title !== null && title !== element && element.closest('[role=dialog]') === null) {
      part = cut(part, { ...box_of(title), top: view.top - 1 });
    }
    const others = [...document.querySelectorAll('#mirror [data-id]:not([data-out])')];
    for (const other of others.slice(others.indexOf(element) + 1)) {
      if (other.closest('[inert]') === null && !element.contains(other))
        part = cut(part, box_of(other));
    }
    return part;
  };
  window.sight = (element) => {
    const view = { left: 0, top: 0, right: innerWidth, bottom: innerHeight };
    const sheet = element.closest('[role=dialog]');
    const box = box_of(element);
    const out = element.dataset.out !== undefined;
    const part = out ? { ...box, bottom: box.top } : seenPart(element, box, view);
    return {
      out,
      box,
      part,
      area: sheet === null ? view : { ...box_of(sheet), bottom: innerHeight },
    };
  };
}
