/** One measured thing; `ratio` says how many times its yardstick it is. */
export interface Figure {
  readonly work: string;
  readonly takes: string;
  readonly yardstick: string;
  readonly ratio: number | undefined;
  /** What we want of it, and whether this run showed it. */
  readonly aim?: string;
  readonly isMet?: boolean;
}

/** Figures that share a yardstick. */
export interface Section {
  readonly title: string;
  readonly about: string;
  readonly yardstick: string;
  readonly figures: readonly Figure[];
}

export const milliseconds = (time: number): string =>
  `${time < 10 ? time.toFixed(2) : time.toFixed(0)} ms`;

export const kilobytes = (bytes: number): string =>
  `${(bytes / 1024).toFixed(1)} KB`;
