// The few sentences the page says without the canvas, each once. All others come from the engine's
// catalogue.
export const words = {
  no_webgl_title: 'This browser cannot draw the page',
  no_webgl: 'Two Clocks needs WebGL 2. Update the browser or switch hardware acceleration on.',
  start_failed_title: 'The program did not arrive whole',
  start_failed: 'Check the signal and load the page again. Your records are untouched.',
  lost_picture_title: 'The picture was lost',
  lost_picture:
    'The device took the drawing memory away. Load the page again: what was saved is here.',
  storage_title: 'This browser does not answer when saving',
  storage: 'The last entry is not kept. Export everything else before you leave this page.',
  unread_title: 'Your records cannot be read just now',
  unread:
    'The browser’s storage does not answer. Nothing was changed. Close other windows of this ' +
    'page and load it again; if that does not help, save the records to a file.',
  no_store_title: 'Nothing can be stored here',
  no_store: 'This browser refuses storage, as a private window does. Nothing will be kept: export.',
  rescue_found: 'Records found:',
  reload: 'Load again',
  rescue: 'Save the records to a file',
  export_now: 'Export now',
  go_on: 'Go on without saving',
  dismiss: 'Close',
};
