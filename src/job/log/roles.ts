import { logColumns } from '../../calc/confidence/logColumns.ts';

/** What a column of a record may be. */
export const logRoles = ['none', 'time', ...logColumns] as const;
export type LogRole = (typeof logRoles)[number];
