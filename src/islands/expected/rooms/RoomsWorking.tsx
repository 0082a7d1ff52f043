import { WorkingLines } from '../../WorkingLines.tsx';
import { workingOfDucts } from './model.ts';

/** The working behind what the rooms get. */
export const RoomsWorking = () => (
  <div class="working-steps">
    <WorkingLines steps={workingOfDucts()} />
  </div>
);
