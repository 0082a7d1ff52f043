/** How a record of an earlier version becomes one of the next: pure steps, one a version. A step that was shipped is never changed. */

export type JobRecordOf = Readonly<Record<string, unknown>>;
export type UpgradeStep = (record: JobRecordOf) => JobRecordOf;

/** Each step under the version that it starts from. Version 1 is the first there was. */
export const upgradeSteps: Readonly<Record<number, UpgradeStep>> = {};

/** The record as one of version `to`, or `null` when no way leads there. */
export function upgraded(
  record: JobRecordOf,
  to: number,
  steps: Readonly<Record<number, UpgradeStep>> = upgradeSteps,
): JobRecordOf | null {
  let now = record;
  for (let from = record['version']; from !== to; from = now['version']) {
    const step = typeof from === 'number' && Object.hasOwn(steps, from) ? steps[from] : undefined;
    const next = step?.(now);
    // A step leads to the very next version, so that there is an end.
    if (!next || typeof from !== 'number' || next['version'] !== from + 1) return null;
    now = next;
  }
  return now;
}
