import type { PlanDocument, PointDocument } from './document';

const COLUMNS = ['n', 'piece', 'edge', 'opening', 'used', 'column', 'row', 'xMm', 'yMm', 'alongMm', 'section'] as const;

/**
 * The openings of a plan as a table for a spreadsheet: one row per opening in working order, under the columns pickup,
 * n, piece, edge, opening, used, column, row, xMm, yMm, alongMm and section. Numbers in full precision with a point; n
 * is empty for a skipped opening. Written by RFC 4180 (https://www.rfc-editor.org/rfc/rfc4180): lines end in CRLF, and
 * a field with a comma, a quote or a line break stands in double quotes, its own quotes doubled.
 */
export function planCsv(document: PlanDocument): string {
  const rows = document.pickups.flatMap(({ id, points }) => points.map((point) => [id, ...fieldsOf(point)]));
  return [['pickup', ...COLUMNS], ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function fieldsOf(point: PointDocument): string[] {
  return COLUMNS.map((column) => String(point[column] ?? ''));
}

function field(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
