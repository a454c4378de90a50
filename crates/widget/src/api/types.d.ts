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
  measured?: { item: string; port: string; dimension: string; mm: number; tool: "caliper" | "tape"; "plus-minus-mm"?: number; note?: string }[];
  looked?: { item: string; what: string; there: boolean }[];
  serials?: Record<string, number>;
  "on-hand"?: string[];
  trailer?: string;
  site?: string;
}

/** The whole answer; figures are metric and carry their unit in their name. */
export interface Report {
  format: number;
  verdict: Verdict;
  verdict_text: string;
  standing: "listed" | "off-guide" | null;
  complete: boolean;
  shopper: string[];
  findings: { code: string; verdict: Verdict; figures: Record<string, number | string | null>; [more: string]: unknown }[];
  joints: Record<string, unknown>[];
  footprint: Record<string, number | string | null>;
  bare: Record<string, number | string | null>;
  parts: Record<string, unknown>;
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

/** Detail of the `fitup-change` event. */
export interface FitupChange { build: BuildFile; link: string; report: Report; }
/** Detail of the `fitup-share` event. */
export interface FitupShare { link: string; address: string; }
/** Detail of the `fitup-error` event. */
export interface FitupError {
  kind: "no-address" | "unreachable" | "broken" | "newer-format" | "failed";
  address?: string;
  reason?: string;
  problems?: { code: string; severity: "error" | "warning"; path: string; row: string; line: number | null; column: number | null; args: Record<string, string> }[];
}
