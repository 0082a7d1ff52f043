/** What a method makes of a job. */
import type { AirflowFound } from '../../calc/airflow/found.ts';
import type { Outcome } from '../../calc/types.ts';

/** The airflow, or the fields that it waits for, or the `Problem` in its way, under the name of a field or a cell. */
export type Found<Answer extends AirflowFound = AirflowFound> = Outcome<Answer>;

/** Names a quantity of the calculation as the field in which it was typed; a cell of a grid keeps its numbers. */
export function fieldsOf(names: Readonly<Record<string, string>>): (quantity: string) => string {
  return (quantity) => {
    const [head = quantity, ...rest] = quantity.split('.');
    const whole = names[quantity];
    if (whole !== undefined) return whole;
    const name = names[head];
    return name === undefined ? quantity : [name, ...rest].join('.');
  };
}
