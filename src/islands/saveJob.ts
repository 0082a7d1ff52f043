/** The job of the page as a file, whatever the store of the device does. */
import { jobsPage } from '~/words/en/jobs.ts';
import { job } from './jobStore.ts';
import { textFile } from './saveFile.ts';

export async function saveThisJob(): Promise<void> {
  const { writeJobFile } = await import('~/job/jobFile.ts');
  textFile(writeJobFile([job.value]), jobsPage.fileName, 'json');
}
