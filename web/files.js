// Files in and out, by the means the device has.

/**
 * More than 96 MB is refused by the program, and it needs no more than a byte over to say so; a
 * file that is locked is a third larger than what is in it.
 */
const most_bytes = 129 * 1024 * 1024;

/** @param {File} file @param {(name: string, bytes: Uint8Array) => void} chosen */
async function take(file, chosen) {
  const bytes = new Uint8Array(await file.slice(0, most_bytes + 1).arrayBuffer());
  chosen(file.name, bytes);
}

/**
 * Lets the person choose a file. No list of types: some phones grey out what they do not know.
 * @param {HTMLInputElement} input
 * @param {(name: string, bytes: Uint8Array) => void} chosen
 */
export function listenToFiles(input, chosen) {
  input.addEventListener('change', async () => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      await take(file, chosen);
    } finally {
      input.value = ''; // the same file can be chosen again
    }
  });
}

/**
 * A file that was opened with the installed page, where the system offers that.
 * @param {(name: string, bytes: Uint8Array) => void} chosen
 */
export function openedWith(chosen) {
  const queue = /** @type {any} */ (window).launchQueue;
  queue?.setConsumer(async (/** @type {{ files: FileSystemFileHandle[] }} */ { files }) => {
    const file = await files[0]?.getFile();
    if (file !== undefined) await take(file, chosen);
  });
}

/** @param {string} name @param {BlobPart} bytes */
export function download(name, bytes) {
  const link = document.createElement('a');
  link.download = name;
  link.href = URL.createObjectURL(new Blob([bytes], { type: 'application/octet-stream' }));
  link.click();
  // The browser has taken its own hold of the data by the next task at the latest.
  requestAnimationFrame(() => URL.revokeObjectURL(link.href));
}

/** Kinds of file that share sheets take as they are; others go as text. */
const shared_types = /** @type {Record<string, string>} */ ({
  html: 'text/html',
  csv: 'text/csv',
  txt: 'text/plain',
});

/**
 * A file for a share sheet; nothing for days of a calendar, which a device opens when it has loaded
 * them.
 * @param {string} name
 * @param {BlobPart} part
 */
export function toShare(name, part) {
  const ending = name.slice(name.lastIndexOf('.') + 1);
  if (ending === 'ics') return undefined;
  const type = shared_types[ending];
  return new File([part], type === undefined ? `${name}.txt` : name, {
    type: type ?? 'text/plain',
  });
}

/**
 * Hands a file to the person: the share sheet on a touch device that shares files, else a download.
 * @param {string} name
 * @param {Uint8Array} bytes
 */
export async function handOver(name, bytes) {
  const part = /** @type {BlobPart} */ (/** @type {unknown} */ (bytes));
  const touch = matchMedia('(pointer: coarse)').matches;
  if (touch && navigator.canShare !== undefined) {
    const file = toShare(name, part);
    if (file !== undefined && navigator.canShare({ files: [file] })) {
      try {
        await navigator.share({ files: [file] });
        return;
      } catch (error) {
        // Put away by the person: that is an answer. Anything else: hand it over the other way.
        if (error instanceof DOMException && error.name === 'AbortError') return;
      }
    }
  }
  download(name, part);
}

/** @param {string} address @param {(name: string, bytes: Uint8Array) => void} chosen */
export async function fetchFile(address, chosen) {
  const answer = await fetch(address);
  if (!answer.ok) return;
  // The part that names the content is no business of a person's.
  const name = address.replace(/\.[0-9a-f]{12}\./, '.');
  chosen(name, new Uint8Array(await answer.arrayBuffer()));
}
