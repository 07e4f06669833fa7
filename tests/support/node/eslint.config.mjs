// The linter's rules for the phone's modules. Layout is the formatter's business, types are the type checker's.
import js from '@eslint/js';
import globals from 'globals';
import hooks from 'eslint-plugin-react-hooks';

export default [
  { ignores: ['pwa/vendor/**'] },
  js.configs.recommended,
  {
    files: ['pwa/**/*.js'],
    languageOptions: { globals: { ...globals.browser, ...globals.serviceworker } },
    plugins: { hooks },
    rules: {
      curly: ['error', 'multi-line'],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'hooks/rules-of-hooks': 'error',
      'no-console': 'error',
      'no-restricted-syntax': [
        'error',
        { selector: 'CallExpression[callee.name="fetch"][arguments.0.value=/^https?:/]', message: 'No third parties.' },
        {
          selector: 'UnaryExpression[operator="void"] > LogicalExpression',
          message: 'What makes modules smaller leaves the call out: write `here ?? void show()`.',
        },
      ],
      'no-shadow': 'error',
      'no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-var': 'error',
      'object-shorthand': 'error',
      'prefer-const': 'error',
    },
  },
];
