// A screen in memory, for the engines that draw nothing without one.
import { spawn } from 'node:child_process';

/** Starts one on a number that nobody uses. Resolves to `{ display, end }`. */
export function beginScreen() {
  const size = ['-screen', '0', '1400x1100x24', '+extension', 'GLX'];
  const child = spawn('Xvfb', ['-displayfd', '3', ...size], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const end = () => child.kill();
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`the screen ended with ${code}`)));
    let said = '';
    child.stdio[3].on('data', (part) => {
      said += part;
      if (said.includes('\n')) resolve({ display: `:${said.trim()}`, end });
    });
  });
}
