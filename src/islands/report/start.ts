/** What the page of the report does once it stands. */
import { follow, open } from '../opening.ts';
import { askExpectedHalf } from '../store.ts';

/** Opens the job that the address asks for, the expectation with it. Returns what is to be undone when the page goes. */
export function startReport(): () => void {
  askExpectedHalf();
  void open(new URLSearchParams(location.search));
  return follow();
}
