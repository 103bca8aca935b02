import type { Drafts } from './stored-drafts.ts';

/**
 * One draft while a screen holds it.
 *
 * Every change is a step from what stands to what shall stand. It is shown at once and stored on top of whatever stands in
 * the store by then, in one stroke, so that two tabs of one thing lose nothing of each other. Stores follow one another; a
 * step that could not be stored stays in hand and goes with the next.
 */

/** How a draft stands: `nowhere` when this browser gives no storage. */
export type Saving = 'saved' | 'saving' | 'failed' | 'nowhere';

/** What a draft is called, where it begins, and when it is nothing that would be kept. */
export interface DraftKind<T> {
  readonly key: string;
  /** What is in hand where nothing is stored. */
  readonly begin: T;
  /** What was stored, as it is in hand; an earlier program may have stored less. */
  readonly read: (stored: unknown) => T;
  readonly isNothing: (value: T) => boolean;
}

export interface DraftShown<T> {
  readonly value: T;
  readonly saving: Saving;
  /** The draft stood here already when the screen opened: the program stopped, or the screen was left. */
  readonly cameBack: boolean;
}

/** A draft that has all its steps stored, ready to be closed by the entry made of it. */
export interface Settled {
  /** Keys to close in the same stroke as the entry. */
  readonly keys: readonly string[];
  /** To be called when that is written: what was said meanwhile goes on as a draft of its own. */
  written(): void;
}

interface Step<T> {
  readonly take: (value: T) => T;
  readonly alongside: Readonly<Record<string, unknown>>;
}

/** A change of a draft: given what stands by then, what shall stand. It may be asked more than once. */
export type TakeStep<T> = (value: T) => T;

export class OpenDraft<T> {
  readonly #drafts: Drafts | null;
  readonly #kind: DraftKind<T>;
  readonly #companions: readonly string[];
  readonly #listeners = new Set<() => void>();
  readonly #stop: () => void;
  #base: T;
  #waiting: Step<T>[] = [];
  #running: Promise<void> | null = null;
  /** Counts steps, so that a reading begun before one is not put over it. */
  #steps = 0;
  #shown: DraftShown<T>;

  /**
   * @param drafts null where this browser gives no storage: what is said lives as long as the screen
   * @param companions keys of drafts that are closed with this one
   */
  static async open<T>(
    drafts: Drafts | null,
    kind: DraftKind<T>,
    companions: readonly string[] = [],
  ): Promise<OpenDraft<T>> {
    const stored = (await drafts?.load(kind.key)) ?? null;
    const beside = await Promise.all(companions.map((key) => drafts?.load(key)));
    return new OpenDraft(
      drafts,
      kind,
      companions,
      stored,
      beside.some((one) => one != null),
    );
  }

  private constructor(
    drafts: Drafts | null,
    kind: DraftKind<T>,
    companions: readonly string[],
    stored: unknown,
    stoodBeside: boolean,
  ) {
    this.#drafts = drafts;
    this.#kind = kind;
    this.#companions = companions;
    this.#base = this.#read(stored);
    this.#shown = {
      value: this.#base,
      saving: drafts ? 'saved' : 'nowhere',
      cameBack: (stored !== null && !kind.isNothing(this.#base)) || stoodBeside,
    };
    this.#stop =
      drafts?.onElsewhere((keys) => {
        if (keys.includes(kind.key)) void this.#readAgain().catch(() => undefined); // a closed store has nothing to read
      }) ?? (() => undefined);
  }

  /** What is in hand now, with every step, stored or not. */
  now = (): DraftShown<T> => this.#shown;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Takes one step. @param alongside further drafts to store in the same stroke, by key */
  change(take: TakeStep<T>, alongside: Readonly<Record<string, unknown>> = {}): void {
    if (this.#drafts === null) {
      this.#base = take(this.#base);
      this.#show({});
      return;
    }
    this.#steps += 1;
    this.#waiting.push({ take, alongside });
    this.#show({ saving: 'saving' });
    this.#run();
  }

  #run(): void {
    this.#running ??= this.#store().finally(() => {
      this.#running = null;
    });
  }

  /** Forgets all of it. */
  forget(): void {
    this.change(() => this.#kind.begin);
    this.#show({ cameBack: false });
  }

  /** Waits until every step so far is stored, or has failed to be, and takes in what other tabs stored. */
  async settled(): Promise<Settled> {
    if (this.#waiting.length > 0) this.#run();
    await this.#readAgain();
    const given = JSON.stringify(this.#shown.value);
    return {
      keys: [this.#kind.key, ...this.#companions],
      written: () => {
        const { value } = this.#shown;
        this.#base = this.#kind.begin;
        this.#waiting = [];
        this.#show({ cameBack: false, saving: this.#drafts ? 'saved' : 'nowhere' });
        if (JSON.stringify(value) !== given) this.change(() => value);
      },
    };
  }

  /** Hears of other tabs no more. Steps that wait are still stored. */
  leave(): void {
    this.#stop();
  }

  #read(stored: unknown): T {
    return stored === null ? this.#kind.begin : this.#kind.read(stored);
  }

  async #readAgain(): Promise<void> {
    let steps: number;
    let stored: unknown;
    do {
      while (this.#running !== null) await this.#running;
      steps = this.#steps;
      stored = (await this.#drafts?.load(this.#kind.key)) ?? null;
    } while (steps !== this.#steps);
    this.#base = this.#standing(stored);
    this.#show({});
  }

  /** Stores what waits, again and again, until nothing waits: what came meanwhile goes together. */
  async #store(): Promise<void> {
    while (this.#waiting.length > 0) {
      const steps = [...this.#waiting];
      let after = this.#base;
      try {
        await this.#drafts?.change(
          this.#kind.key,
          (stored) => {
            after = steps.reduce((value, { take }) => take(value), this.#standing(stored));
            return this.#kind.isNothing(after) ? null : after;
          },
          Object.assign({}, ...steps.map(({ alongside }) => alongside)),
        );
      } catch {
        this.#show({ saving: 'failed' });
        return;
      }
      this.#base = after;
      this.#waiting = this.#waiting.slice(steps.length);
      if (this.#waiting.length === 0) this.#show({ saving: 'saved' });
    }
  }

  /** What stands: the store's, but for a draft that is nothing, which is not stored at all, and no storage. */
  #standing(stored: unknown): T {
    const isUnstored = this.#drafts === null || (stored === null && this.#kind.isNothing(this.#base));
    return isUnstored ? this.#base : this.#read(stored);
  }

  #show(change: Partial<Omit<DraftShown<T>, 'value'>>): void {
    const next = this.#waiting.reduce((value, { take }) => take(value), this.#base);
    const { value } = this.#shown;
    // The same value stays the same object, so that nobody takes a store's copy for a new tap.
    const same = JSON.stringify(next) === JSON.stringify(value);
    this.#shown = { ...this.#shown, ...change, value: same ? value : next };
    for (const listener of this.#listeners) listener();
  }
}
