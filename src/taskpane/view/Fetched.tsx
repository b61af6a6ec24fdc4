import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";

interface FetchedProps {
  readonly heading: string;
  readonly fetch: () => Promise<ComponentType>;
}

/**
 * A page of the pane whose code is fetched from the same site when it is opened for the first time. Its heading is
 * there from the beginning, so that the focus stays on it.
 */
export function Fetched({ heading, fetch }: FetchedProps) {
  const [found, setFound] = useState<{ readonly Page?: ComponentType; readonly failed?: true }>({});
  const load = (): void => {
    setFound({});
    fetch().then(
      (Page) => setFound({ Page }),
      () => setFound({ failed: true }),
    );
  };
  useEffect(load, [fetch]);
  const { Page, failed } = found;
  return (
    <div>
      <h1 tabIndex={-1}>{heading}</h1>
      {Page !== undefined ? (
        <Page />
      ) : (
        <div role="status">
          <p>{failed ? "This page did not arrive. Check the connection, then try again." : "Fetching this page."}</p>
          {failed && (
            <button type="button" onClick={load}>
              Try again
            </button>
          )}
        </div>
      )}
    </div>
  );
}
