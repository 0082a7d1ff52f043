const types = { csv: 'text/csv', json: 'application/json', svg: 'image/svg+xml' } as const;

/** Hands a text to the person as a file, its name ending in the day. */
export function textFile(text: string, name: string, ending: keyof typeof types): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${types[ending]};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = url;
  link.download = `${name}-${new Date().toISOString().slice(0, 10)}.${ending}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
