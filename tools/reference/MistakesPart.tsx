import type { MistakeFacts } from "./mistakeFacts";
import { Words } from "./Words";

export function MistakesPart({ name, mistakes }: { name: string; mistakes: readonly MistakeFacts[] }) {
  if (mistakes.length === 0) return null;
  return (
    <section>
      <h2>Likely mistakes</h2>
      <ul>
        {mistakes.map(({ slip, answer }) => (
          <li>
            <Words text={slip} on={name} />
            {answer !== "" && <span class="quiet"> (the first example would give {answer})</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
