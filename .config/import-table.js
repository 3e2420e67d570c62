/**
 * Who may import whom in src/, as a function and as a lint rule. The table is folders.json: for each folder, the
 * folders it may import, those of which it may import types only, and the packages it may use ("node" stands for
 * Node's own modules).
 */
import { readFileSync } from 'node:fs';
import { posix } from 'node:path';

/** @typedef {{ folders: string[], types: string[], packages: string[] }} Allowed */
/** @typedef {Record<string, Allowed>} Table */
/** @typedef {'value' | 'type' | 'dynamic'} ImportKind */

/** @type {Table} */
export const table = JSON.parse(readFileSync(new URL('./folders.json', import.meta.url), 'utf8'));

const WHY = 'The layout shows the way the work flows: a document is measured, planned, then drawn and worded.';

/** @param {string} path a path from the top of src, with slashes */
const folderOf = (path) => (path.includes('/') ? path.slice(0, path.indexOf('/')) : '');

/** @param {string} specifier */
const packageOf = (specifier) => {
  if (specifier.startsWith('node:')) return 'node';
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : parts[0];
};

/**
 * What is wrong with one import, in a sentence; null when it is allowed.
 * @param {string} from the importing file, from the top of src, with slashes
 * @param {string} specifier what is written in the import
 * @param {ImportKind} kind `import type`, `import()`, or any other
 * @param {Table} [rules]
 * @returns {string | null}
 */
export function forbidden(from, specifier, kind, rules = table) {
  const folder = folderOf(from);
  const allowed = rules[folder];
  if (!allowed) return `src/${from} is in no folder of the import table (.config/folders.json).`;
  if (!specifier.startsWith('.')) {
    const name = packageOf(specifier);
    return allowed.packages.includes(name) ? null : `${folder} may not use the package ${name}. ${WHY}`;
  }
  const to = posix.join(posix.dirname(from), specifier);
  if (to.startsWith('..')) return `${specifier} lies outside src, which must stand by itself.`;
  const target = folderOf(to) || to;
  if (target === folder) {
    const barrel = to === folder || to === `${folder}/index`;
    return barrel ? `Inside ${folder}, import the file itself: its index is for other folders.` : null;
  }
  if (allowed.types.includes(target)) {
    if (kind !== 'type') return `${folder} may import only types from ${target} ("import type"). ${WHY}`;
  } else if (!allowed.folders.includes(target)) {
    return `${folder} may not import ${target}. ${WHY}`;
  }
  // A barrel can hold no style sheet, and would defeat a part that is loaded only when asked for.
  const direct = kind === 'dynamic' || /\.(css|json|svg)(\?\w+)?$/.test(to);
  return to === target || direct ? null : `Import from the index of ${target}, not from a file inside it.`;
}

/** @type {import('eslint').Rule.RuleModule} */
export const rule = {
  meta: { type: 'problem', docs: { description: 'Hold the import table of src/' }, schema: [] },
  create(context) {
    const path = posix.relative(context.cwd.replaceAll('\\', '/'), context.filename.replaceAll('\\', '/'));
    if (!path.startsWith('src/')) return {};
    const from = path.slice('src/'.length);
    /** @param {any} node @param {any} source @param {ImportKind} kind */
    const look = (node, source, kind) => {
      if (typeof source?.value !== 'string') return;
      const message = forbidden(from, source.value, kind);
      if (message) context.report({ node, message });
    };
    return {
      ImportDeclaration: (node) => look(node, node.source, node.importKind === 'type' ? 'type' : 'value'),
      ExportNamedDeclaration: (node) => look(node, node.source, node.exportKind === 'type' ? 'type' : 'value'),
      ExportAllDeclaration: (node) => look(node, node.source, node.exportKind === 'type' ? 'type' : 'value'),
      ImportExpression: (node) => look(node, node.source, 'dynamic'),
      TSImportType: (node) => look(node, node.source ?? node.argument?.literal, 'type'),
    };
  },
};
