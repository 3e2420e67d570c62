import { fileURLToPath } from 'node:url';
import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from '../svelte.config.js';
import { rule as importTable } from './import-table.js';

const top = fileURLToPath(new URL('../', import.meta.url));

/** Rules that see an imported component as `any`, and so cry wolf in components and in the tests that mount them. */
const untyped = {
  '@typescript-eslint/no-unsafe-argument': 'off',
  '@typescript-eslint/no-unsafe-assignment': 'off',
  '@typescript-eslint/no-unsafe-call': 'off',
  '@typescript-eslint/no-unsafe-member-access': 'off',
  '@typescript-eslint/no-unsafe-return': 'off',
};

export default defineConfig(
  { ignores: ['dist/**', '.cache/**', 'static/**', 'node_modules/**'] },
  // A rule that is wrong is changed here, for all; no comment in a file may switch one off.
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  ts.configs.strictTypeChecked,
  ts.configs.stylisticTypeChecked,
  svelte.configs.recommended,
  svelte.configs.prettier,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: top, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      eqeqeq: 'error',
      '@typescript-eslint/ban-ts-comment': [
        'error',
        { 'ts-expect-error': 'allow-with-description', 'ts-ignore': true, 'ts-nocheck': true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/no-import-type-side-effects': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // It takes a number that carries its unit in the type for no number.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
      // Every place in an array may be missing to the type checker; the mark is how the code says that it cannot be.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Both spellings are plain; which one reads better depends on the length of the type.
      '@typescript-eslint/array-type': 'off',
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: {
      globals: globals.browser,
      parserOptions: { parser: ts.parser, svelteConfig },
    },
  },
  {
    files: ['**/*.svelte'],
    rules: {
      ...untyped,
      // Blind to what changes between one run of the markup and the next.
      '@typescript-eslint/no-unnecessary-condition': 'off',
      // For another framework's router.
      'svelte/no-navigation-without-resolve': 'off',
      // `let { a = $bindable() } = $props()` can't be const for one name and not for another.
      'prefer-const': 'off',
      'svelte/prefer-const': ['error', { destructuring: 'all' }],
    },
  },
  {
    files: ['src/**'],
    plugins: { edgewise: { rules: { 'import-table': importTable } } },
    rules: { 'edgewise/import-table': 'error', 'no-console': 'error' },
  },
  {
    files: ['test/**'],
    rules: {
      ...untyped,
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/no-empty-function': 'off',
    },
  },
  {
    files: ['**/*.js', '**/*.mjs'],
    extends: [ts.configs.disableTypeChecked],
    languageOptions: { globals: globals.node },
  },
);
