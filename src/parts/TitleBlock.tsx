export interface TitleBlockProps {
  /** A class for a block of another shape. */
  readonly kind?: string;
  readonly rows: readonly { readonly name: string; readonly value: string; readonly strong?: boolean }[];
}

/** Who, what, where and when, in the corner of the sheet as on every drawing. */
export function TitleBlock({ kind, rows }: TitleBlockProps) {
  return (
    <dl class={kind ? `title-block ${kind}` : 'title-block'}>
      {rows.map(({ name, value, strong }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{strong ? <b>{value}</b> : value}</dd>
        </div>
      ))}
    </dl>
  );
}
