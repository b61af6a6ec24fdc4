import fc from "fast-check";
import { catalogue } from "../../src/functions/catalogue";
import { boundsOf, FunctionError, inOrder, isOptional, isRange, limitsText, within } from "../../src/kernel";
import { isRepeating } from "../../src/kernel";
import type {
  ArgumentInput,
  CellInput,
  Entry,
  NumberParam,
  NumbersParam,
  Param,
  SwitchParam,
  TextParam,
  WordParam,
} from "../../src/kernel";
import { attempt, refusal, withArgument } from "../rig/calls";
import { callText } from "../rig/catalogueExamples";
import { nextAbove, nextBelow } from "../rig/nextNumber";
import { disorder } from "../rig/orderly";
import { inOtherSystem } from "../rig/otherSystem";
import { extremeNumbers, ordinaryNumbers, SEED, systemsOf, validInputs, type System } from "../rig/validInputs";

const ORDINARY_RUNS = 150;
const EXTREME_RUNS = 100;
/** What an error may say where the numbers run out, and at no other time. */
const BEYOND_CELLS = /beyond what a cell can hold$/;
/** Cross-argument rules (tmin above tmax) refuse some of the random calls; this part at least must be answered. */
const LEAST_ANSWERED = 0.1;

/** Functions that look at a number and answer a blank with words of its own, apart from 0; their own tests hold them. */
const BLANK_IS_ITS_OWN_ANSWER: ReadonlySet<string> = new Set(["CHECK_RANGE"]);

type Rows = readonly (readonly CellInput[])[];

/** A call that works, in a given system: the first example, brought into that system. */
function workingCall(entry: Entry, system: System): ArgumentInput[] {
  const [example] = entry.examples;
  const args = inOrder(entry, example.given);
  const written = args[Object.keys(entry.params).indexOf("units")];
  return system === null || written === system ? args : inOtherSystem(entry, args, written as "us" | "metric");
}

interface ArgumentCase<P extends Param> {
  readonly title: string;
  readonly entry: Entry;
  readonly name: string;
  readonly param: P;
  readonly system: System;
  readonly args: readonly ArgumentInput[];
  /** The call with this in the argument's place; of a range, in its first cell. */
  with(input: ArgumentInput): ArgumentInput[];
}

function putIn(param: Param, given: ArgumentInput, cell: ArgumentInput): ArgumentInput {
  if (param.kind !== "numbers" || !Array.isArray(given) || Array.isArray(cell)) return cell;
  return (given as Rows).map((row, index) => (index === 0 ? [cell as CellInput, ...row.slice(1)] : row));
}

/** A function that takes another's inputs gives that one's errors back as they are: it has tests of its own. */
const ownErrors = catalogue.filter(({ params }) => !Object.values(params).some(isRepeating));

const cases: readonly ArgumentCase<Param>[] = ownErrors.flatMap((entry) =>
  Object.entries(entry.params).flatMap(([name, param], index) =>
    systemsOf(entry).map((system) => {
      const args = workingCall(entry, system);
      return {
        title: `${entry.name}: ${name}${system === null ? "" : ` in ${system}`}`,
        entry,
        name,
        param,
        system,
        args,
        with: (input: ArgumentInput) => withArgument(entry, args, name, putIn(param, args[index], input)),
      };
    }),
  ),
);

function isNumeric(param: Param): param is NumberParam | NumbersParam {
  return param.kind === undefined || param.kind === "numbers";
}

function casesOf<P extends Param>(
  wanted: (param: Param) => param is P,
  also: (param: P, system: System) => boolean = () => true,
): ArgumentCase<P>[] {
  return cases.filter((one): one is ArgumentCase<P> => wanted(one.param) && also(one.param, one.system));
}

const isNumber = (param: Param): param is NumberParam => param.kind === undefined;
const isWord = (param: Param): param is WordParam => param.kind === "word";
const isSwitch = (param: Param): param is SwitchParam => param.kind === "switch";
const isText = (param: Param): param is TextParam => param.kind === "text";

function boundsIn(param: NumberParam | NumbersParam, system: System): ReturnType<typeof boundsOf> {
  return boundsOf(param, param.quantity, system);
}

/** Whether a blank cell of this range stands for 0, whatever the other arguments say. */
function blankCounts(param: NumberParam | NumbersParam): boolean {
  return param.kind === "numbers" && param.blanks === "zero";
}

function takesZero(param: NumberParam | NumbersParam, system: System): boolean {
  return within(0, boundsIn(param, system));
}

function expectRefused({ entry, name }: ArgumentCase<Param>, args: readonly ArgumentInput[]): FunctionError {
  const error = refusal(entry, args);
  expect(error).toMatchObject({ code: "#VALUE!", argument: name });
  expect(error.message).toMatch(new RegExp(`^${entry.name}: ${name} is `));
  return error;
}

describe("whatever lies within the limits gives an answer, or an error that says why not", () => {
  const calls = ownErrors.flatMap((entry) =>
    systemsOf(entry).map((system) => ({
      title: `${entry.name}${system === null ? "" : ` in ${system}`}`,
      entry,
      system,
    })),
  );

  test.each(calls)("$title, numbers of a sheet's size", ({ entry, system }) => {
    let answered = 0;
    fc.assert(
      fc.property(validInputs(entry, system, ordinaryNumbers), (args) => {
        const outcome = attempt(entry, args);
        if (!(outcome instanceof FunctionError)) answered += 1;
        const wrong = disorder(entry, outcome);
        if (wrong !== null) throw new Error(`${callText(entry, args)}: ${wrong}`);
      }),
      { seed: SEED, numRuns: ORDINARY_RUNS },
    );
    expect(answered).toBeGreaterThan(LEAST_ANSWERED * ORDINARY_RUNS);
  });

  test.each(calls)("$title, numbers of any size", ({ entry, system }) => {
    fc.assert(
      fc.property(validInputs(entry, system, extremeNumbers), (args) => {
        const outcome = attempt(entry, args);
        const beyondCells = outcome instanceof FunctionError && BEYOND_CELLS.test(outcome.message);
        const wrong = beyondCells ? null : disorder(entry, outcome);
        if (wrong !== null) throw new Error(`${callText(entry, args)}: ${wrong}`);
      }),
      { seed: SEED, numRuns: EXTREME_RUNS },
    );
  });
});

describe("just outside a limit is refused by name, and the limit itself is kept to", () => {
  const limited = casesOf(isNumeric, (param, system) => {
    const { low, high, whole } = boundsIn(param, system);
    return low > -Infinity || high < Infinity || whole;
  });

  test.each(limited)("$title", (one) => {
    const { entry, param, system } = one;
    const bounds = boundsIn(param, system);
    const { low, lowIncluded, high, highIncluded, whole } = bounds;
    const outside = [
      ...(low > -Infinity ? [lowIncluded ? nextBelow(low) : low] : []),
      ...(high < Infinity ? [highIncluded ? nextAbove(high) : high] : []),
      ...(whole ? [low + 0.5] : []),
    ];
    const itMust = `it must be ${limitsText(param, param.quantity, system)}`;
    for (const value of outside) {
      const { message } = expectRefused(one, one.with(value));
      expect(message).toContain(itMust);
    }
    for (const limit of [low, high].filter((value) => within(value, bounds))) {
      const outcome = attempt(entry, one.with(limit));
      if (outcome instanceof FunctionError) expect(outcome.message).not.toContain(itMust);
    }
  });
});

describe("a blank", () => {
  const blanks: CellInput[] = [null, undefined, "", "  "];
  const words = (one: ArgumentCase<Param>, inputs: readonly CellInput[]): Set<string> =>
    new Set(inputs.map((input) => expectRefused(one, one.with(input)).message));

  const needed = casesOf(
    isNumeric,
    (param) => !isOptional(param) && !("blankIsAnswered" in param) && !blankCounts(param),
  );

  test.each(needed.filter(({ param, system }) => !takesZero(param, system)))(
    "is refused in the words for 0 where 0 is no value: $title",
    (one) => {
      const said = words(one, [...blanks, 0]);
      expect(said.size).toBe(1);
      expect([...said][0]).toContain(`${one.name} is blank or 0`);
    },
  );

  test.each(needed.filter(({ param, system }) => takesZero(param, system)))(
    "is refused where 0 is a value, and 0 is taken: $title",
    (one) => {
      const said = words(one, blanks);
      expect(said.size).toBe(1);
      expect([...said][0]).toContain(`${one.name} is blank`);
      const outcome = attempt(one.entry, one.with(0));
      if (outcome instanceof FunctionError) expect(outcome.message).not.toContain(`${one.name} is blank`);
    },
  );

  const answered = casesOf(isNumber, ({ blankIsAnswered }) => blankIsAnswered === true);

  test.each(answered.filter(({ entry }) => !BLANK_IS_ITS_OWN_ANSWER.has(entry.name)))(
    "has one answer, that for 0, where the function speaks for itself: $title",
    (one) => {
      const said = [...blanks, 0].map((input) => refusal(one.entry, one.with(input)).message);
      expect(new Set(said).size).toBe(1);
      expect(said[0]).toContain(one.name);
    },
  );

  test.each(casesOf(isWord, (param) => !isOptional(param)))("is refused where a word belongs: $title", (one) => {
    const said = words(one, [...blanks, 0]);
    expect(said.size).toBe(1);
    for (const word of one.param.words) expect([...said][0]).toContain(`"${word}"`);
  });

  const optional = cases.filter(({ param }) => isOptional(param));

  test.each(optional)(
    "takes the default where the argument may be left out: $title",
    ({ entry, param, with: call }) => {
      const left = attempt(entry, call(undefined));
      expect(left).not.toBeInstanceOf(FunctionError);
      for (const input of blanks) expect(attempt(entry, call(input))).toEqual(left);
      if ("default" in param) expect(attempt(entry, call(param.default))).toEqual(left);
    },
  );

  test.each(casesOf(isNumber, (param, system) => isOptional(param) && !takesZero(param, system)))(
    "differs from 0 where an argument may be left out and 0 makes no sense: $title",
    (one) => {
      expect(expectRefused(one, one.with(0)).message).toContain(`${one.name} is blank or 0`);
    },
  );
});

describe("what is no number is refused by name", () => {
  test.each(casesOf(isNumeric))("$title", (one) => {
    for (const input of ["twelve", "12", true, false, NaN, Infinity, -Infinity]) expectRefused(one, one.with(input));
    expect(expectRefused(one, one.with("12")).message).toMatch(/: a number, not text/);
  });

  test.each(casesOf(isWord))("$title takes no number and no TRUE", (one) => {
    for (const input of [5, true]) expectRefused(one, one.with(input));
  });
});

describe("a range where one value belongs", () => {
  const takesAnything = (param: Param): boolean =>
    param.kind === "cell" || (param.kind === "text" && param.orNumber === true);
  const single = cases.filter(({ param }) => !isRange(param) && !takesAnything(param));
  const twoByThree: Rows = [
    [1, 2, 3],
    [4, 5, 6],
  ];

  test.each(single)("is refused, never spread: $title", (one) => {
    const { message } = expectRefused(one, one.with(twoByThree));
    expect(message).toBe(`${one.entry.name}: ${one.name} is a range of 2 x 3 cells; it must be a single value`);
  });

  test.each(single)("of one cell is that cell: $title", ({ entry, name, args, with: call }) => {
    const cell = args[Object.keys(entry.params).indexOf(name)] as CellInput;
    expect(attempt(entry, call([[cell]]))).toEqual(attempt(entry, args));
    expect(refusal(entry, call([[NaN]])).message).toBe(refusal(entry, call(NaN)).message);
  });
});

describe("a word", () => {
  test.each(casesOf(isWord))("that is unknown is refused with the list of those allowed: $title", (one) => {
    const { message } = expectRefused(one, one.with("sideways"));
    for (const word of one.param.words) expect(message).toContain(`"${word}"`);
    expect(message).toContain('the text "sideways"');
  });

  test.each(casesOf(isWord))("may be in any case, with blanks around it: $title", ({ entry, param, with: call }) => {
    for (const word of param.words) {
      const plainly = attempt(entry, call(word));
      for (const spelt of [word.toUpperCase(), `  ${word} `, ` ${word.charAt(0).toUpperCase()}${word.slice(1)}`]) {
        expect(attempt(entry, call(spelt))).toEqual(plainly);
      }
    }
  });
});

/** Whether a list has cases: a kind of argument that no function has yet has none. */
function describeEach<T extends { title: string }>(name: string, list: readonly T[], check: (one: T) => void): void {
  if (list.length > 0) describe(name, () => test.each(list as T[])("$title", check));
}

describeEach("a switch takes TRUE and FALSE alone", casesOf(isSwitch), (one) => {
  for (const input of ["yes", 1, 0, NaN])
    expect(expectRefused(one, one.with(input)).message).toContain("TRUE or FALSE");
});

describeEach(
  "a text is refused when blank, and a number is none",
  casesOf(isText, ({ orNumber }) => orNumber !== true),
  (one) => {
    const inputs = one.param.mayBeBlank === true ? [5, true] : [null, undefined, "", "  ", 5, true];
    for (const input of inputs) expect(expectRefused(one, one.with(input)).message).toContain("it must be a text");
  },
);

describeEach(
  "a blank cell is 0 in a range that says so",
  casesOf(isNumeric, (param) => param.kind === "numbers" && param.blanks === "zero"),
  ({ entry, with: call }) => {
    const zero = attempt(entry, call(0));
    for (const input of [null, undefined, "", "  "]) expect(attempt(entry, call(input))).toEqual(zero);
  },
);

describeEach(
  "a word that stands for leaving a number out",
  casesOf(isNumber, ({ orWord }) => orWord !== undefined),
  ({ entry, param: { orWord = "" }, with: call }) => {
    const left = attempt(entry, call(undefined));
    for (const word of [orWord, orWord.toUpperCase(), ` ${orWord} `]) expect(attempt(entry, call(word))).toEqual(left);
  },
);

describe("a percentage typed where a fraction belongs", () => {
  const fractions = casesOf(
    isNumeric,
    (param, system) => param.quantity === "fraction" && boundsIn(param, system).high <= 1,
  );

  test.each(fractions)("is answered with what to write: $title", (one) => {
    const { message } = expectRefused(one, one.with(15));
    expect(message).toMatch(new RegExp(`${one.name} is 15( in row 1[^;]*)?; `));
    expect(message).toMatch(/; write 0\.15 or 15%/);
  });
});
