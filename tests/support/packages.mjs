// The npm packages of web/, for tests that live elsewhere.
import { createRequire } from 'node:module';

export const need = createRequire(new URL('../../web/package.json', import.meta.url));
