// Files in and out, by the means the device has.

/** More than this is refused by the program; it needs no more than one byte over to say so. */
const most_bytes = 96 * 1024 * 1024;

/**
 * Lets the person choose a file. No list of types: some phones grey out what they do not know.
 * @param {HTMLInputElement} input
 * @param {(name: string, bytes: Uint8Array) => void} chosen
 */
export function listenToFiles(input, chosen) {
  input.addEventListener('change', async () => {
    const file = input.files?.[0];
    if (file === undefined) return;
    const bytes = new Uint8Array(await file.slice(0, most_bytes + 1).arrayBuffer());
    input.value = ''; // the same file can be chosen again
    chosen(file.name, bytes);
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

/** @param {string} name */
const asText = (name) => (name.endsWith('.txt') ? name : `${name}.txt`);

/**
 * Hands a file to the person: the share sheet on a touch device that shares files, else a download.
 * @param {string} name
 * @param {Uint8Array} bytes
 */
export async function handOver(name, bytes) {
  const part = /** @type {BlobPart} */ (/** @type {unknown} */ (bytes));
  const touch = matchMedia('(pointer: coarse)').matches;
  if (touch && navigator.canShare !== undefined) {
    const file = new File([part], asText(name), { type: 'text/plain' });
    if (navigator.canShare({ files: [file] })) {
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
