import { find } from "../../src/functions";

const CAPITALS = /([A-Z][A-Z0-9_]{2,})/;

/** Text of an entry; a function named in it is a link to its page. */
export function Words({ text, on }: { text: string; on: string }) {
  return (
    <>
      {text.split(CAPITALS).map((part) => {
        const isOther = part !== on && find(part) !== undefined;
        return isOther ? <a href={`${part}.html`}>{part}</a> : part;
      })}
    </>
  );
}
