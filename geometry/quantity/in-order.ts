/**
 * Puts a few numbers in rising order, in place, and gives them back. By insertion: for the dozen or two that a neck
 * has of them the platform's sort spends more on its own lists than on the numbers. Not for hundreds.
 *
 * @example inOrder([3, 1, 2]) // [1, 2, 3]
 */
export function inOrder(numbers: number[]): number[] {
  for (let index = 1; index < numbers.length; index++) {
    const here = numbers[index]!
    let place = index
    for (; place > 0 && numbers[place - 1]! > here; place--) numbers[place] = numbers[place - 1]!
    numbers[place] = here
  }
  return numbers
}
