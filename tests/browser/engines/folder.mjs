// Files in and out of an engine that knows them only as files of a folder.
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

const patience_ms = 30_000;
const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** Name and bytes of the file that an action puts into the folder. */
export async function handedOver(folder, action) {
  await action();
  let length_before = 0;
  for (let waited_ms = 0; waited_ms < patience_ms; waited_ms += 100) {
    const name = (await readdir(folder)).find((each) => /^two-clocks.*\.(jsonl|txt)$/.test(each));
    const bytes = name === undefined ? '' : await readFile(join(folder, name));
    if (bytes.length > 0 && bytes.length === length_before) {
      await rm(join(folder, name)); // the next file may bear the same name
      return { name, bytes };
    }
    length_before = bytes.length; // as long as it grows it is not whole
    await sleep(100);
  }
  throw new Error('no file was handed over');
}

/** Puts a file there to be chosen, and returns its path. */
export async function toChoose(folder, { name, bytes }) {
  const path = join(folder, `chosen-${name}`);
  await writeFile(path, bytes);
  return path;
}

/**
 * Runs in the page: the desktop's window for choosing files is out of an automation's reach, so the
 * next time the page asks for one, none opens, and the input says that it was asked.
 */
export function holdChooser() {
  const input = document.getElementById('file');
  delete input.dataset.asked;
  input.click = () => {
    delete input.click;
    input.dataset.asked = 'yes';
  };
}
