/** A list of numbers that is added to millions of times: one block of memory, doubled when it is full. */
export class GrowingList {
  private block = new Float64Array(1_024);
  private count = 0;

  push(value: number): void {
    if (this.count === this.block.length) {
      const larger = new Float64Array(2 * this.count);
      larger.set(this.block);
      this.block = larger;
    }
    this.block[this.count] = value;
    this.count += 1;
  }

  /** A copy of what was added so far. */
  values(): Float64Array {
    return this.block.slice(0, this.count);
  }
}
