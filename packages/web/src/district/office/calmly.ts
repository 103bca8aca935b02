/**
 * Does something at most so often: at once when it is asked for first, and once more after those askings that came close
 * behind it.
 */
export class Calmly {
  readonly #rest: number;
  readonly #does: () => void;
  #resting: ReturnType<typeof setTimeout> | undefined;
  #missed = false;

  /** @param rest between two times, in milliseconds */
  constructor(rest: number, does: () => void) {
    this.#rest = rest;
    this.#does = does;
  }

  act(): void {
    if (this.#resting !== undefined) {
      this.#missed = true;
      return;
    }
    this.#missed = false;
    this.#does();
    this.#resting = setTimeout(() => {
      this.#resting = undefined;
      if (this.#missed) this.act();
    }, this.#rest);
  }

  /** Forgets what was asked for and not done. */
  stop(): void {
    clearTimeout(this.#resting);
    this.#resting = undefined;
    this.#missed = false;
  }
}
