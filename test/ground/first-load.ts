import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';

/** The text of a built file, by its path from the top of the built page. */
export type ReadFile = (path: string) => string;

/**
 * The scripts that a browser fetches before the page can start: those that index.html names, preloads included, and
 * all that they import outright. What is imported on demand is left out.
 */
export function firstLoad(read: ReadFile): string[] {
  const html = read('index.html');
  const named = [...html.matchAll(/<(script|link)\b[^>]*>/g)].flatMap(([tag, name]) => {
    if (name === 'link' && !/rel="?modulepreload"?/.test(tag)) return [];
    const address = /(?:src|href)="([^"]+)"/.exec(tag)?.[1];
    return address === undefined ? [] : [posix.normalize(address)];
  });
  const found = new Set<string>();
  const follow = (path: string): void => {
    if (found.has(path)) return;
    found.add(path);
    for (const specifier of outright(read(path))) follow(posix.join(posix.dirname(path), specifier));
  };
  named.forEach(follow);
  return [...found];
}

/** What a script imports by a declaration, not by `import()`. */
function outright(text: string): string[] {
  const { statements } = ts.createSourceFile('x.js', text, ts.ScriptTarget.Latest);
  return statements.flatMap((statement) => {
    const from =
      ts.isImportDeclaration(statement) || ts.isExportDeclaration(statement) ? statement.moduleSpecifier : null;
    return from && ts.isStringLiteralLike(from) ? [from.text] : [];
  });
}

export const readBuilt =
  (folder: URL): ReadFile =>
  (path) =>
    readFileSync(new URL(path, folder), 'utf8');
