/** The job's own process. What works it out is the whole assessment of the sheet, so it comes after the chart. */
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { ChartProcess } from '~/charts/moistAir/process.ts';
import { pressureFits } from './points.ts';

const worker = signal<ReadonlySignal<ChartProcess | null> | null>(null);

export const ownProcess = computed(() => (pressureFits.value ? (worker.value?.value ?? null) : null));

/** Fetches it. Without it the chart has its points all the same. */
export async function fetchOwn(): Promise<void> {
  const { jobProcess } = await import('../jobProcess.ts');
  worker.value = jobProcess;
}
