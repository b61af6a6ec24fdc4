import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { VERSION } from "../../src/functions";

/** No script and nothing from elsewhere: the pages are text, and stay so in whatever folder they lie. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

interface FrameProps {
  readonly title: string;
  readonly description: string;
  /** The page of the help that belongs to this one. */
  readonly help: string;
  readonly children: ComponentChildren;
}

function Frame({ title, description, help, children }: FrameProps) {
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={POLICY} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{title}</title>
        <meta name="description" content={description} />
        <link rel="icon" href="../icons/icon-32.png" />
        <link rel="stylesheet" href="reference.css" />
      </head>
      <body>
        <a class="skip" href="#main">
          To the text
        </a>
        <header>
          <p class="brand">
            <a href="index.html">Canyard reference</a>
          </p>
          <nav aria-label="Canyard">
            <a href="../index.html">Browser sheet</a>
            <a href={help}>Help with your numbers</a>
          </nav>
        </header>
        <main id="main">{children}</main>
        <footer>
          <p>
            Canyard {VERSION}. Planning figures for people, not for automatic control: check with a bucket, a scale and
            a meter. Local codes, product labels and licensed practice come first.
          </p>
        </footer>
      </body>
    </html>
  );
}

export function pageText(props: FrameProps): string {
  return `<!doctype html>\n${renderToString(<Frame {...props} />)}\n`;
}
