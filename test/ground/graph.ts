import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { parse } from 'svelte/compiler';
import ts from 'typescript';

export type ImportKind = 'value' | 'type' | 'dynamic';

/** One import as it is written: `specifier` is the text between the quotes. */
export interface Import {
  readonly specifier: string;
  readonly kind: ImportKind;
}

/** Source texts by path from the top of src, with slashes. */
export type Sources = ReadonlyMap<string, string>;

/** One edge from file to file; `to` is null for a package. */
export interface Edge extends Import {
  readonly from: string;
  readonly to: string | null;
}

/** Every script and component under `folder`. */
export function readSources(folder: string): Sources {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return new Map(
    paths
      .filter((path) => /\.(ts|js|svelte)$/.test(path))
      .map((path) => [path.replaceAll('\\', '/'), readFileSync(join(folder, path), 'utf8')]),
  );
}

/** Every import of one file: import and export declarations, `import()`, and `import('...')` in a type. */
export function importsOf(path: string, text: string): Import[] {
  return path.endsWith('.svelte') ? importsOfComponent(text) : importsOfScript(path, text);
}

function importsOfScript(path: string, text: string): Import[] {
  const found: Import[] = [];
  const add = (node: ts.Node | undefined, kind: ImportKind): void => {
    if (node && ts.isStringLiteralLike(node)) found.push({ specifier: node.text, kind });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, isTypeOnly(node) ? 'type' : 'value');
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly ? 'type' : 'value');
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, 'type');
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node.arguments[0], 'dynamic');
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest));
  return found;
}

const isTypeOnly = (node: ts.ImportDeclaration): boolean =>
  node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;

/** Walks the whole of a component: both scripts, and what its markup imports. */
function importsOfComponent(text: string): Import[] {
  const found: Import[] = [];
  const add = (source: unknown, kind: ImportKind): void => {
    if (isRecord(source) && typeof source.value === 'string') found.push({ specifier: source.value, kind });
  };
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(visit);
    if (!isRecord(node)) return;
    if (node.type === 'ImportDeclaration') add(node.source, node.importKind === 'type' ? 'type' : 'value');
    else if (node.type === 'ExportNamedDeclaration' || node.type === 'ExportAllDeclaration') {
      add(node.source, node.exportKind === 'type' ? 'type' : 'value');
    } else if (node.type === 'ImportExpression') add(node.source, 'dynamic');
    else if (node.type === 'TSImportType') add(node.argument, 'type');
    Object.values(node).forEach(visit);
  };
  visit(parse(text, { modern: true }));
  return found;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The file that a relative import names; undefined when there is none. */
export function resolveImport(sources: Sources, from: string, specifier: string): string | undefined {
  const to = posix.join(posix.dirname(from), specifier);
  return ['', '.ts', '.js', '/index.ts'].map((end) => to + end).find((path) => sources.has(path));
}

/**
 * Every edge of the import graph. Style sheets, drawings and data hold no imports and are left out.
 * @throws Error for a relative import of a script that is not there
 */
export function edgesOf(sources: Sources): Edge[] {
  const edges: Edge[] = [];
  for (const [from, text] of sources) {
    for (const { specifier, kind } of importsOf(from, text)) {
      if (/\.(css|svg|json)(\?\w+)?$/.test(specifier)) continue;
      const to = specifier.startsWith('.') ? resolveImport(sources, from, specifier) : null;
      if (to === undefined) throw new Error(`src/${from} imports ${specifier}, which is not there.`);
      edges.push({ from, specifier, kind, to });
    }
  }
  return edges;
}

/** One cycle in a graph given as pairs, as the nodes on it with the first again at the end; null if there is none. */
export function findCycle(pairs: Iterable<readonly [string, string]>): string[] | null {
  const next = new Map<string, Set<string>>();
  for (const [from, to] of pairs) next.set(from, (next.get(from) ?? new Set()).add(to));
  const done = new Set<string>();
  const path: string[] = [];
  const visit = (node: string): string[] | null => {
    const at = path.indexOf(node);
    if (at >= 0) return [...path.slice(at), node];
    if (done.has(node)) return null;
    path.push(node);
    for (const child of next.get(node) ?? []) {
      const cycle = visit(child);
      if (cycle) return cycle;
    }
    path.pop();
    done.add(node);
    return null;
  };
  for (const node of next.keys()) {
    const cycle = visit(node);
    if (cycle) return cycle;
  }
  return null;
}

/**
 * A cycle of files; imports of types alone are left out, for they are gone when the program runs, and so is a component
 * that imports itself, which is how Svelte has a component nest.
 */
export function fileCycle(edges: readonly Edge[]): string[] | null {
  return findCycle(
    edges.flatMap(({ from, to, kind }) =>
      to === null || kind === 'type' || (to === from && from.endsWith('.svelte')) ? [] : [[from, to] as const],
    ),
  );
}

/** A cycle of folders, imports of types included. */
export function folderCycle(edges: readonly Edge[]): string[] | null {
  const folder = (path: string): string => posix.dirname(path).split('/')[0] ?? '';
  return findCycle(
    edges.flatMap(({ from, to }) =>
      to === null || folder(from) === folder(to) ? [] : [[folder(from), folder(to)] as const],
    ),
  );
}
