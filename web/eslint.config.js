// Lints this folder and the tests that are JavaScript. tools/lint.mjs runs it from the top folder,
// and proves on a seeded error that it really looks.
import js from '@eslint/js';
import globals from 'globals';

const built_in = { ADDRESSES: 'readonly', FILES: 'readonly' };
const clock = 'only web/clock.js reads the clock or waits';

export default [
  js.configs.recommended,
  {
    files: ['**/*.js', '**/*.mjs'],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'no-var': 'error',
      'prefer-const': 'error',
      eqeqeq: 'error',
      'no-shadow': 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'] }],
      'max-len': ['error', { code: 100 }],
      'max-lines': ['error', 300],
      'max-lines-per-function': ['error', 60],
    },
  },
  {
    files: ['web/*.js'],
    languageOptions: {
      ecmaVersion: 2022,
      sourceType: 'module',
      globals: { ...globals.browser, ...built_in },
    },
    rules: {
      'no-restricted-globals': [
        'error',
        ...['Date', 'performance', 'setTimeout', 'setInterval'].map((name) => ({
          name,
          message: clock,
        })),
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'AssignmentExpression > MemberExpression[property.name=/^(inner|outer)HTML$/]',
          message: 'build elements; the content policy refuses markup from text',
        },
      ],
    },
  },
  { files: ['web/clock.js'], rules: { 'no-restricted-globals': 'off' } },
  {
    files: ['web/tools/*.mjs', 'web/eslint.config.js', 'tests/**/*.mjs', 'demo/*.mjs'],
    languageOptions: {
      ecmaVersion: 2022,
      sourceType: 'module',
      globals: { ...globals.node, ...globals.browser },
    },
  },
  // A story is told, and a fleet invented, from beginning to end.
  { files: ['tests/**/*.test.mjs', 'demo/*.mjs'], rules: { 'max-lines-per-function': 'off' } },
  { files: ['demo/*.mjs'], rules: { 'max-lines': 'off' } },
];
