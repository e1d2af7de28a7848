// Runs ESLint over web/ and tests/ from the top folder, where a misplaced base path would quietly
// match nothing: so it first proves, on code with a fault of each kind, that faults are found.
import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';

const top = fileURLToPath(new URL('../..', import.meta.url));
const eslint = new ESLint({
  cwd: top,
  overrideConfigFile: fileURLToPath(new URL('../eslint.config.js', import.meta.url)),
});

/** Where a fault is planted, the fault, and the rule that must speak. */
const seeded = [
  ['web/shell.js', 'export const now = Date.now();\n', 'no-restricted-globals'],
  ['web/mirror.js', 'var shown = 1;\nexport { shown };\n', 'no-var'],
  ['web/store.js', 'export const open = (name) => nmae;\n', 'no-undef'],
  ['web/trouble.js', "document.body.innerHTML = '';\n", 'no-restricted-syntax'],
  ['tests/browser/driver.mjs', 'export const same = (a, b) => a == b;\n', 'eqeqeq'],
];

let faults = 0;
for (const [path, code, rule] of seeded) {
  const [result] = await eslint.lintText(code, { filePath: `${top}/${path}` });
  if (result?.messages.some((message) => message.ruleId === rule)) continue;
  console.error(`the linter is blind: ${rule} was not found in a seeded ${path}`);
  faults += 1;
}

const results = await eslint.lintFiles([
  'web/*.js',
  'web/tools/*.mjs',
  'tests/**/*.mjs',
  'demo/**/*.mjs',
]);
const formatter = await eslint.loadFormatter('stylish');
const report = await formatter.format(results);
if (report !== '') console.log(report);
faults += results.reduce((sum, each) => sum + each.errorCount + each.warningCount, 0);
console.log(`${results.length} files, ${faults} faults`);
process.exitCode = faults === 0 && results.length > 0 ? 0 : 1;
