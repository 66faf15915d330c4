/** Numbers that look random and are the same each time: a linear congruential generator, constants of Numerical Recipes. */

/** @returns what gives the next number, 0 to below 1 */
export function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 32;
  };
}
