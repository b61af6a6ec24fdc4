/** Where a line may end: in a name behind an underscore, in a formula behind an opening bracket, a comma, a semicolon. */
const IN_NAME = /(?<=_)/;
const IN_FORMULA = /(?<=[(,;])/;

/** A name or a formula too long for a narrow line. */
export function Breakable({ text }: { text: string }) {
  const isName = /^\w+$/.test(text);
  return (
    <>
      {text.split(isName ? IN_NAME : IN_FORMULA).map((part, at) => (
        <>
          {at > 0 && <wbr />}
          {part}
        </>
      ))}
    </>
  );
}
