/** Words of steps back. */
export const undoWords = {
  undo: 'Undo',
  was: (text: string) => `was ${text} ·`,
  putBack: 'put back',
  putBackName: (text: string, name: string) => `put back ${text}, ${name}`,
  undone: (what: string) => `Taken back: ${what}.`,
  back: (name: string, text: string) => `${name} is ${text} again`,
  emptied: (name: string) => `${name} is empty again`,
  more: (name: string, count: number) => `${name} and ${count} more`,
  slots: { entered: 'a figure', chosen: 'an answer', tables: 'a table', notes: 'a note or a tick' },
} as const;
