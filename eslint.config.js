import tseslint from 'typescript-eslint';

// Pure rooms know no clock, no chance, no place and no disk: same input, same bytes.
const PURE = [
  'units',
  'mechanics',
  'drawing',
  'dosing',
  'scheduling',
  'content',
  'wording',
  'decisions',
  'review',
  'messages',
  'programme',
  'catalogue',
  'lint',
  'outputs',
  'post',
  'drafting',
  'desk/form',
  'desk/consult',
  'desk/log',
];
const PURE_FILES = PURE.map((room) => `src/${room}/**/*.ts`);
const cure = 'Take it as an argument; only src/shell has a clock or a disk.';

export default tseslint.config(
  { ignores: ['dist/', '.mutants/', '_site/', 'node_modules/', 'tests/cases/'] },
  ...tseslint.configs.strict,
  {
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  {
    files: PURE_FILES,
    rules: {
      'no-restricted-globals': [
        'error',
        ...['process', 'fetch', 'setTimeout', 'setInterval', 'Intl', 'performance'].map((name) => ({
          name,
          message: cure,
        })),
      ],
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: '^(node:)?(fs|os|path|child_process|http|https|net|dns|worker_threads)(/|$)',
              message: cure,
            },
          ],
        },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: "MemberExpression[object.name='Date'][property.name='now']",
          message: `Date.now: ${cure}`,
        },
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: `new Date(): ${cure}` },
        {
          selector: "MemberExpression[object.name='Math'][property.name='random']",
          message: `Math.random: ${cure}`,
        },
        {
          selector: 'CallExpression[callee.property.name=/^(toLocale.*|localeCompare)$/]',
          message: 'Locale differs from machine to machine: compare code units, format by hand.',
        },
      ],
    },
  },
  { files: ['scripts/**', 'bench/**', 'fuzz/**', 'src/shell/**'], rules: { 'no-console': 'off' } },
  { files: ['tests/**'], rules: { '@typescript-eslint/no-non-null-assertion': 'off' } },
);
