/** What is said of readings that are an hour old. */
export const readAgain = {
  sides: { entering: 'Return air', leaving: 'Supply air' },
  ask: (side: string, age: string) => `${side} read ${age}. Read again?`,
  ago: (hours: number) => `${hours}\u00a0h ago`,
  on: (day: string, time: string) => `on ${day} at ${time}`,
  again: 'Read again',
  holds: 'It still holds',
} as const;
