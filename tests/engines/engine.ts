/** What the journey asks of a browser, whatever its engine. */
export interface Engine {
  readonly name: string;
  /** Errors that its console showed, refusals of the policy among them. */
  readonly complaints: readonly string[];
  open(url: string): Promise<unknown>;
  reload(): Promise<unknown>;
  /** What an expression is worth in the page, as far as JSON holds it. */
  evaluate(expression: string): Promise<unknown>;
  close(): Promise<void>;
}
