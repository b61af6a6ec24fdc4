import { usePane } from "./context";
import { StartupPart } from "./StartupPart";

const CAUTIONS = [
  "Plants: a wrong minute dries or drowns them. Walk the lines on the first hot days; weigh a pot; catch a test.",
  "Chemical injection: install an approved backflow preventer or an air gap, and follow the local code and the product's label.",
  "Acid: always into water, with eye, hand and face protection; never with chlorine, nor with calcium nitrate concentrate.",
  "Recirculated water carries disease and is not for drinking: label the outlets.",
  "Water is heavy, 8.345 lb to the gallon: ask the maker of benches, floors and tanks. Electricity near water is work for a licensed electrician.",
];

export function AboutPage() {
  const { library, host } = usePane();
  return (
    <div>
      <h1 tabIndex={-1}>About Canyard</h1>
      <p>
        Version {library.VERSION}, {library.catalogue.length} functions, MIT licence. Irrigation arithmetic for
        container nurseries and greenhouses.
      </p>
      <p>
        <strong>Planning figures for people, not for automatic control.</strong> Check with a bucket, a scale and a
        meter before relying on them. Local codes, product labels and licensed practice come first.
      </p>
      {host.startup && <StartupPart startup={host.startup} />}
      <h2>What is sent</h2>
      <p>
        Nothing by us: the arithmetic runs on this computer, and no number leaves it.
        {host.kind === "Excel" ? " Excel's own library, which this page loads, has its maker's telemetry." : ""}
      </p>
      <h2>Cautions</h2>
      <ul>
        {CAUTIONS.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h2>Keys</h2>
      <ul>
        <li>In the search field: arrow down walks the results, Enter opens the first, Escape empties the field.</li>
        <li>Tab and Shift+Tab move between fields and buttons.</li>
        {host.kind === "browser sheet" && <li>F6 moves between the sheet, the line under it and this help.</li>}
        {host.kind === "Excel" && <li>F6 moves between the sheet and this help.</li>}
      </ul>
    </div>
  );
}
