import type { ComponentChildren } from "preact";

interface StackedTableProps {
  /** The id of the heading that names it. */
  readonly label: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly ComponentChildren[])[];
}

/**
 * A table whose rows become blocks on a narrow page, each cell under its heading. The roles are written out because a
 * table that is laid out as blocks would else be none to some screen readers. The first cell of a row names it.
 */
export function StackedTable({ label, headings, rows }: StackedTableProps) {
  return (
    <table class="stacked" role="table" aria-labelledby={label}>
      <thead role="rowgroup">
        <tr role="row">
          {headings.map((heading) => (
            <th role="columnheader" scope="col">
              {heading}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map(([first, ...others]) => (
          <tr role="row">
            <th role="rowheader" scope="row">
              {first}
            </th>
            {others.map((cell, at) => (
              <td role="cell" data-heading={headings[at + 1]} class={cell === "" ? "empty" : undefined}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
