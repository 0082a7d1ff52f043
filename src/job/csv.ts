/** Tables as text for spreadsheets: RFC 4180, and read back whatever the separator. */

/** Excel takes a file for UTF-8 by this mark alone. */
export const byteOrderMark = '\ufeff';

const number = /^[+\-\u2212]?(\d+([.,]\d*)?|[.,]\d+)$/;

/**
 * Rows as a CSV text with a mark and CRLF. A cell that a spreadsheet would take for a formula gets an apostrophe in front;
 * a number below zero is a number and stays as it is, with the plain hyphen that spreadsheets read.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(text: string): string {
  const plain = number.test(text) ? text.replace('\u2212', '-') : /^'*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replace(/"/g, '""')}"` : plain;
}

/** The rows of a CSV text, parted by tabs, semicolons or commas, whichever its first line has; an apostrophe put in by `csvText` is taken out. */
export function csvRows(text: string): string[][] {
  const body = text.startsWith(byteOrderMark) ? text.slice(1) : text;
  const [head = ''] = body.split(/\r\n|\r|\n/, 1);
  const outside = head.replace(/"[^"]*"/g, '');
  const mark = ['\t', ';', ','].find((one) => outside.includes(one)) ?? ',';
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  const endCell = () => {
    row.push(cell.replace(/^'(?='*[=+\-@\t\r])/, ''));
    cell = '';
  };
  const endRow = () => {
    endCell();
    if (row.some((one) => one.trim() !== '')) rows.push(row);
    row = [];
  };
  for (let at = 0; at < body.length; at++) {
    const char = body[at]!;
    if (quoted) {
      if (char !== '"') cell += char;
      else if (body[at + 1] === '"') cell += body[at++];
      else quoted = false;
    } else if (char === '"' && cell === '') quoted = true;
    else if (char === mark) endCell();
    else if (char === '\n' || char === '\r') {
      if (char === '\r' && body[at + 1] === '\n') at++;
      endRow();
    } else cell += char;
  }
  endRow();
  return rows;
}
