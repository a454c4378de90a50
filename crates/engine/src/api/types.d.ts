/** A verdict, best first. */
export type Verdict = "bolts-up" | "bolts-up-with-work" | "check-first" | "wont-mount";

/** A build by the ids of the catalogue's rows; all fields but `format` may be left out. */
export interface BuildFile {
  format: 1;
  machine?: string;
  frame?: string;
  /** The implement hangs on the three-point hitch, without a frame. */
  hitch?: boolean;
  seat?: string;
  implement?: string;
  adapters?: string[];
  changes?: unknown[];
  measured?: { item: string; port: string; dimension: string; mm: number; tool: "caliper" | "tape" | "photograph"; plus_minus_mm?: number; note?: string }[];
  looked?: { item: string; what: string; there: boolean }[];
  serials?: Record<string, number>;
  on_hand?: string[];
  trailer?: string;
  site?: string;
}

export type Question = "fit" | "work" | "travel" | "site";

/** The answer to one question. */
export interface QuestionAnswer {
  question: Question;
  question_text: string;
  /** `null` as long as it is not decided. */
  verdict: Verdict | null;
  /** In the question's own words. */
  answer: string;
  /** Index in `findings` of the finding that decides. */
  finding: number | null;
  /** In a few words, with its figure. */
  line: string | null;
}

/** What stands over the answer: of a complete build its own, else the best that is still reachable. */
export interface Headline {
  decided: boolean;
  verdict: Verdict | null;
  question: "fit" | "work" | null;
  /** Code of the finding that keeps it from being better. */
  finding: string | null;
  text: string;
  reason: string;
}

/** The whole answer; figures are metric and carry their unit in their name. */
export interface Report {
  format: number;
  /** What of the build is not in the catalogue; as long as there is any, nothing is decided. */
  unknown?: string[];
  /** The worse of fit and work; `null` as long as it is not decided. */
  verdict: Verdict | null;
  /** The headline's word. */
  verdict_text: string;
  headline: Headline;
  /** Fit, work, travel, site. */
  answers: QuestionAnswer[];
  standing: "listed" | "off-guide" | null;
  complete: boolean;
  shopper: string[];
  findings: { code: string; question: Question; verdict: Verdict; figures: Record<string, number | string | null>; [more: string]: unknown }[];
  joints: Record<string, unknown>[];
  footprint: Record<string, number | string | null>;
  bare: Record<string, number | string | null>;
  parts: Record<string, unknown>;
  /** The bolts of the joints; what is `null` is for the manual to say. */
  bolts: {
    role: string; carrier: string; carried: string; number: number | null; thread: string | null; size_mm: number | null;
    length_mm: number | null; grip_mm: number | null; class: string | null; torque_nm: number | null; text: string[]; [more: string]: unknown;
  }[];
  [more: string]: unknown;
}

export interface Completion {
  /** `null` is the bare three-point hitch. */
  id: string | null;
  verdict: Verdict | null;
  /** Completed builds at each verdict, best first. */
  counts: [number, number, number, number] | null;
  build: BuildFile | null;
}

export interface Completions {
  machines: Completion[];
  frames: Completion[];
  seats: Completion[];
  implements: Completion[];
}

export interface Remedy {
  build: BuildFile;
  /** What is done, a phrase for each step. */
  steps: string[];
  verdict: Verdict;
  /** Codes of the findings that are gone with it, and of those that keep it from a better verdict. */
  settles: string[];
  leaves: string[];
  /** In the catalogue's currency; `null` if a price is not known. */
  buy_more: number | null;
  work_more_h: number | null;
  length_more_mm: number | null;
  departure_more_deg: number | null;
}

/** What sets of one answer are ordered by first. */
export type SetOrder = "price" | "length" | "departure" | "hours" | "on-hand";

export interface Sets {
  order: SetOrder;
  /** Whether nothing was left out for being too much to look at. */
  exact: boolean;
  /** Best first, at most twenty. */
  sets: CompleteSet[];
}

export interface CompleteSet {
  build: BuildFile;
  verdict: Verdict;
  /** Whether no set is as good in answer, price, length, departure angle, hours and items to buy, and better in one. */
  unbeaten: boolean;
  /** What the parts with a price come to, in the catalogue's currency, and how many have none. */
  buy: number;
  without_price: number;
  length_mm: number | null;
  departure_deg: number | null;
  hours_h: number | null;
  /** Whether `hours_h` is only a part of the work. */
  at_least: boolean;
  items_to_buy: number;
  text: string[];
}

/** What would settle something that is open. */
export interface Check {
  kind: string;
  items: string[];
  /** Indices in the report's `findings`. */
  findings: number[];
  chance: "at-every-value" | "as-stated" | "not-tried";
  text: string;
  [more: string]: unknown;
}

/** What is known of a connecting place of an unknown unit. */
export interface Observed {
  /** The kind of port: `bolt-pattern`, `pins`, `hook-rack` … */
  kind?: string;
  /** Of hooks and pins, the half that is seen. */
  half?: "bar" | "hook" | "lug" | "clevis";
  measured?: { dimension: string; mm: number; tool?: "caliper" | "tape" | "photograph"; plus_minus_mm?: number }[];
  numbers?: string[];
  /** How many holes or points there are. */
  count?: number;
}

export interface Identified {
  /** Likeliest first. */
  candidates: {
    item: string; port: string; likelihood: number; worst: number | null; compared: number; bears: boolean | null; counts: boolean | null;
    text: string[];
  }[];
  /** What would tell the first two apart. */
  next: { kind: "measure" | "read" | "count"; dimension?: string; text: string }[];
}

export interface Comparison {
  builds: { verdict: Verdict | null; answers: QuestionAnswer[] }[];
  /** The unit stands in the name; one value a build, `null` = not known. */
  rows: { name: string; label: string; values: (number | string | null)[]; text: string[]; same: boolean }[];
}

export interface ListsCompared {
  faults_first: ListFault[];
  faults_second: ListFault[];
  /** Those that bear a joint first. */
  assemblies: {
    heading: string;
    bears_joint: boolean;
    sameness:
      | "same" | "replaced-both-ways" | "second-serves-for-first" | "first-serves-for-second" | "quantities-differ" | "hardware-differs"
      | "differs" | "only-first" | "only-second";
    /** What it comes to, and what follows for a joint. */
    text: string[];
    /** Those that differ first. */
    lines: { first: ListRow | null; second: ListRow | null; sameness: string; hardware: boolean; text: string }[];
  }[];
}

export interface ListFault { line: number; code: "no-number" | "quantity" | "doubled" | "no-list" | "too-long" | "not-text"; text: string; }
export interface ListRow { position: string; part: string; description: string; quantity: number; }

/** Everything that a build may name. */
export interface Items {
  machines: Item[];
  frames: Item[];
  seats: Item[];
  implements: Item[];
  adapters: Item[];
  trailers: { id: string; label: string }[];
  sites: { id: string; label: string }[];
}

export interface Item {
  id: string;
  label: string;
  series: string;
  /** In the catalogue's currency; `null` = on request. */
  price: number | null;
  ports: { name: string; role: string; kind: string }[];
  /** Whether it has a parts list. */
  parts_list: boolean;
}

export interface Figures {
  footprint: Record<string, number | string | null>;
  bare: Record<string, number | string | null>;
  whole: Record<string, unknown>;
}

export interface Problem {
  code: string;
  severity: "error" | "warning";
  path: string;
  row: string;
  line: number | null;
  column: number | null;
  args: Record<string, string>;
}

/** A problem in words, with what mends it. */
export interface ToldProblem extends Problem { text: string; mend: string; }

/** Detail of the `fitup-change` event. */
export interface FitupChange { build: BuildFile; link: string; report: Report; }
/** Detail of the `fitup-share` event. */
export interface FitupShare {
  /** How it was handed over. */
  kind: "link" | "share" | "text" | "mail" | "print" | "csv" | "json";
  /** The build's own text, and the address that opens it. */
  link: string;
  address: string;
  build: BuildFile;
}
/** Detail of the `fitup-error` event. */
export interface FitupError {
  kind: "no-address" | "unreachable" | "broken" | "newer-format" | "engine-restarted" | "no-engine" | "failed";
  address?: string;
  reason?: string;
  problems?: Problem[];
}

/** What the interface throws. */
export interface FitupFailure extends Error {
  code: "catalogue" | "build" | "language" | "unknown" | "order" | "observed" | "list" | "view" | "link";
  /** With the code `catalogue`: everything that is wrong with the file. */
  problems?: Problem[];
  /** With the code `unknown`: what is not in the catalogue. */
  unknown?: string[];
}
